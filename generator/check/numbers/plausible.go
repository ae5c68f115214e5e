package numbers

import (
	"errors"
	"math"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/trade/domain"
	"baybinder/generator/trade/electrical"
	"baybinder/generator/trade/fastening"
)

// These findings are of the rules quantity and missing-field: numbers that
// parse, and that nothing can be. They stand at the field that is wrong.

// plausible looks through the machine files, the registers and the shop's limits.
func plausible(m *model.Manual, _ model.Date) []finding.Finding {
	var found []finding.Finding
	for _, x := range m.Machines {
		found = slices.Concat(found, eachRead(x.Fasteners, plausibleFastener), eachRead(x.Energies, plausibleEnergy), eachRead(x.Parts, plausiblePart))
	}
	found = append(found, eachRead([]*model.Shop{m.Shop}, plausibleShop)...)
	return slices.Concat(found, eachRead(m.Tools, plausibleTool), eachRead(m.Supplies, knownStatements))
}

// eachRead judges the entries that were read.
func eachRead[T model.Named](entries []T, judge func(T) []finding.Finding) []finding.Finding {
	var found []finding.Finding
	for _, e := range entries {
		if !e.Base().Unread {
			found = append(found, judge(e)...)
		}
	}
	return found
}

// amount is a field that holds an amount.
type amount struct {
	name string
	q    quantity.Quantity
}

// aboveZero asks that amounts which are given are more than nothing. The fields
// stand inside another where that is named.
func aboveZero(of model.Named, inside string, amounts ...amount) []finding.Finding {
	var found []finding.Finding
	for _, a := range amounts {
		if !a.q.IsZero() && a.q.Base() <= 0 {
			found = append(found, decode.Quantity.At(of.Base().FieldAt(inside+a.name), "%s is %s, which is nothing", a.name, a.q).
				WithMend("write what it is, or leave the field out"))
		}
	}
	return found
}

func plausibleFastener(f *model.Fastener) []finding.Finding {
	amounts := []amount{{"across-flats", f.AcrossFlats}}
	for _, q := range numbersOf(f.Torque) {
		amounts = append(amounts, amount{"torque", q})
	}
	for _, q := range f.Stages {
		amounts = append(amounts, amount{"stages", q})
	}
	found := append(aboveZero(f, "", amounts...), plausibleThread(f)...)
	if f.Drive != "" {
		_, err := fastening.ParseSize(f.Drive)
		found = append(found, refusal(err, f.FieldAt("drive"), "drive")...)
	}
	if order := f.Sequence; len(order) == 1 && order[0] != "star" && order[0] != "spiral" {
		found = append(found, decode.WrongType.At(f.FieldAt("sequence"), "sequence cannot be %q", order[0]).
			WithMend("write star, spiral, or the whole order as a list, such as sequence: [2, 3, 1, 4]"))
	}
	return found
}

// plausibleThread looks at a metric thread, and at the head on it: no hexagon
// is narrower than its own thread. Threads of other kinds are not known here.
func plausibleThread(f *model.Fastener) []finding.Finding {
	if !fastening.MeansMetric(f.Thread) {
		return nil
	}
	thread, err := fastening.ParseThread(f.Thread)
	if err != nil {
		return nil // not-judged
	}
	width := f.AcrossFlats.Base() * 1000
	if width <= 0 || width > thread.Diameter {
		return nil
	}
	return []finding.Finding{decode.Quantity.At(f.FieldAt("across-flats"), "across-flats: a head of %s is no wider than its thread, %s", f.AcrossFlats, f.Thread).
		WithMend("write the width of the head; for a key inside the head write drive: hex %s", f.AcrossFlats)}
}

// refusal is the finding for what a formula refuses.
func refusal(err error, at position.Pos, field string) []finding.Finding {
	var bad *domain.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{decode.BadAmount(bad, at, field)}
}

func plausibleEnergy(e *model.Energy) []finding.Finding {
	voltage := e.Voltage
	voltage.Value = math.Abs(voltage.Value) // -48 V dc, with plus at the frame, are as live
	found := append(aboveZero(e, "", amount{"voltage", voltage}),
		aboveZero(e, "stored.", amount{"capacitance", e.Stored.Capacitance}, amount{"resistance", e.Stored.Resistance})...)
	found = append(found, plausibleGas(e)...)
	found = append(found, plausibleSize(e)...)
	if e.Lost("kind") {
		return found
	}
	if c, r := e.Stored.Capacitance, e.Stored.Resistance; e.Kind != "electric" && !(c.IsZero() && r.IsZero()) {
		return append(found, decode.Quantity.At(e.FieldAt("stored"), "%s is of kind %s, and only an electric energy stores a charge", e.ID, e.Kind).
			WithMend("mend its kind, or write stored: yes"))
	}
	missing := func(what string, because finding.Words) {
		if e.Lost(what, "stored."+what) {
			return
		}
		found = append(found, decode.MissingField.At(e.At, "%s has %s and no %s, so its wait cannot be computed", e.ID, because, what).
			WithMend("write %s: …, or stored: yes", what))
	}
	c, r := !e.Stored.Capacitance.IsZero(), !e.Stored.Resistance.IsZero()
	switch {
	case c && !r:
		missing("resistance", finding.Say("a stored capacitance"))
	case r && !c:
		missing("capacitance", finding.Say("a stored resistance"))
	case c && e.Voltage.IsZero():
		missing("voltage", finding.Say("a stored charge"))
	case storeOf(e).Hardly():
		found = append(found, decode.Quantity.At(e.FieldAt("stored"), "the charge of %s would take more than a day to fall to 1 V: %s and %s are hardly both right", e.ID, e.Stored.Capacitance, e.Stored.Resistance).
			WithMend("look them up again: µF and mF, kΩ and MΩ; a store that nothing discharges has stored: yes"))
	}
	return found
}

// plausibleSize looks at what says how much of an energy there is.
func plausibleSize(e *model.Energy) []finding.Finding {
	var found []finding.Finding
	if _, bounded := e.Pressures.Most(); !bounded && !e.Pressures.IsZero() {
		found = append(found, decode.Quantity.At(e.FieldAt("pressure"), "the pressure of %s has no upper end: %s", e.ID, e.Pressures).
			WithMend("write the greatest that it can have, such as 10 bar or 8 to 10 bar"))
	}
	if !e.Temperature.IsZero() && e.Kind != "heat" && !e.Lost("kind") {
		found = append(found, decode.WrongType.At(e.FieldAt("temperature"), "%s is of kind %s, and only heat has a temperature", e.ID, e.Kind).
			WithMend("write kind: heat, or take its temperature out"))
	}
	return found
}

// plausibleGas looks at the gas that stores a pressure.
func plausibleGas(e *model.Energy) []finding.Finding {
	volume, precharge := e.Stored.GasVolume, e.Stored.Precharge
	if volume.IsZero() && precharge.IsZero() || e.Lost("kind") {
		return nil
	}
	if e.Kind != "pressure" {
		return []finding.Finding{decode.Quantity.At(e.FieldAt("stored"), "%s is of kind %s, and only a pressure is stored in a gas", e.ID, e.Kind).
			WithMend("mend its kind, or write stored: yes")}
	}
	found := append(aboveZero(e, "stored.", amount{"gas-volume", volume}, amount{"precharge", precharge}), aboveZero(e, "", amount{"pressure", e.Pressure})...)
	missing := func(what string, because finding.Words) {
		if e.Lost(what, "stored."+what) {
			return
		}
		found = append(found, decode.MissingField.At(e.At, "%s has %s and no %s, so what comes out of it cannot be computed", e.ID, because, what).
			WithMend("write %s: …, or stored: yes", what))
	}
	switch {
	case volume.IsZero():
		missing("gas-volume", finding.Say("a precharge"))
	case e.Pressure.IsZero():
		missing("pressure", finding.Say("a gas-volume"))
	case !precharge.IsZero() && precharge.Base() >= e.Pressure.Base() && e.Pressure.Value > 0:
		found = append(found, decode.Quantity.At(e.FieldAt("stored.precharge"), "the precharge of %s is %s, and its pressure only %s: no fluid would go in", e.ID, precharge, e.Pressure).
			WithMend("look both up again; the precharge is the pressure of the gas with the fluid out"))
	}
	return found
}

func plausiblePart(p *model.Part) []finding.Finding {
	found := aboveZero(p, "", amount{"mass", p.Mass})
	if p.Lift != nil {
		found = append(found, plausibleLift(p)...)
	}
	return found
}

func plausibleShop(s *model.Shop) []finding.Finding {
	dc, ac := s.Limits.SafeVoltageDC, s.Limits.SafeVoltageAC
	found := aboveZero(s, "limits.", amount{"safe-voltage-dc", dc}, amount{"safe-voltage-ac", ac}, amount{"safe-pressure", s.Limits.SafePressure}, amount{"lift", s.Limits.Lift})
	for _, v := range []struct {
		name  string
		q     quantity.Quantity
		wrong quantity.Flow
	}{{"safe-voltage-dc", dc, quantity.AC}, {"safe-voltage-ac", ac, quantity.DC}} {
		if v.q.Flow == v.wrong {
			found = append(found, decode.Quantity.At(s.FieldAt("limits."+v.name), "%s is %s", v.name, v.q).WithMend("write the voltage without ac or dc"))
		}
	}
	return found
}

func plausibleTool(t *model.Tool) []finding.Finding {
	found := aboveZero(t, "", amount{"length", t.Length})
	if _, ok := fastening.WrenchOf(t.Range); t.Kind == "torque-wrench" && !t.Lost("kind") && !t.Range.IsZero() && !ok {
		found = append(found, decode.Quantity.At(t.FieldAt("range"), "range: %s is not a range of torques", t.Range).
			WithMend("write a range, such as 20 to 100 N·m"))
	}
	for _, size := range t.Fits {
		_, err := fastening.ParseSize(size)
		found = append(found, refusal(err, t.FieldAt("fits"), "fits")...)
	}
	c := t.Calibration
	if c != nil && c.Last.IsZero() && len(c.Units) == 0 && !t.Lost("calibration") {
		found = append(found, decode.MissingField.At(t.At, "the calibration of %s has no day", t.ID).
			WithMend("write last: 2026-03-02, or units: with a day for each"))
	}
	if c != nil {
		found = append(found, aboveZero(t, "calibration.", amount{"every", c.Every})...)
	}
	return found
}

func storeOf(e *model.Energy) electrical.Store {
	return electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
}
