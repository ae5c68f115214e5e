package walk_test

import (
	"math"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// lost is a proof that a failed measurement took back.
type lost struct {
	energy string
	told   bool // what is wrong with it
}

// failedBeside says that a measurement beside a proof failed; again: may take
// it anew.
func (x *run) failedBeside(e *model.Energy, s *model.Step, told bool) bool {
	for _, l := range s.Links {
		if (l.Is("hold") || l.Is("again")) && x.judges(l.To.(*model.Hold), e) && x.branchTaken(l) {
			k := x.frame().path + "|" + l.ID
			x.lost[k] = append(x.lost[k], lost{e.ID, told})
			return true
		}
	}
	return false
}

// prove says whether something is wrong with a proof; what was told of it is not told
// again.
func (x *run) prove(e *model.Energy, s *model.Step, told bool) bool {
	k := key("energy", e.ID)
	st := x.get(k)
	if st != "dead" {
		x.judgeWait(e)
	}
	if told {
		return true
	}
	switch {
	case st == "released" || st == "dead":
	case len(e.Points) > 0 && !x.atRest(e, st):
		x.fault("energy-order", k)
		return true
	case e.Stored.Yes:
		x.fault("not-released", k)
		return true
	}
	code := x.proofOf(e, s)
	if code != "" {
		x.fault(code, k)
	}
	return code != ""
}

// proofOf is what is wrong with the holds beside a proof.
func (x *run) proofOf(e *model.Energy, s *model.Step) string {
	limits := x.m.Shop.Limits
	safe := limits.SafeVoltageAC
	if e.Voltage.Flow == quantity.DC {
		safe = limits.SafeVoltageDC
	}
	dangerous := e.Kind == "electric" && e.Voltage.Value != 0 && (e.Voltage.Base() > safe.Base() ||
		e.Voltage.Flow == quantity.AC && e.Stored.Yes && e.Voltage.Base()*math.Sqrt2 > limits.SafeVoltageDC.Base())
	some, measured, good, proved := false, false, false, false
	for _, l := range s.Links {
		h, is := l.To.(*model.Hold)
		if !is || !l.Is("hold") && !l.Is("again") || h.Of.ID != e.ID {
			continue
		}
		some = some || h.Kind == "look" || h.Kind == "check"
		if h.Kind != "measure" {
			continue
		}
		measured = true
		low, high := h.Limit.Bounds()
		ok := true
		switch dim := h.Limit.Unit.Dimension(); {
		case dangerous:
			ok = dim == quantity.Voltage && h.Limit.Flow == e.Voltage.Flow && high <= safe.Base()
		case e.Kind == "electric" && dim == quantity.Voltage:
			ok = h.Limit.Flow == quantity.AC && high <= limits.SafeVoltageAC.Base() || h.Limit.Flow != quantity.AC && high <= limits.SafeVoltageDC.Base()
		case e.Kind == "pressure" && dim == quantity.Pressure:
			ok = high <= 0.5e5
		case e.Kind == "vacuum" && dim == quantity.Pressure:
			ok = low >= -0.5e5
		case e.Kind == "heat" && dim == quantity.Temperature:
			ok = high <= 48+273.15
		}
		good = good || ok
		proved = proved || ok && h.ProvedOn.ID != ""
	}
	switch {
	case !good && (measured || dangerous || !some):
		return "proof-without-measure"
	case dangerous && !proved:
		return "tester-not-proved"
	}
	return ""
}

// judges says that a hold beside a proof judges it.
func (x *run) judges(h *model.Hold, e *model.Energy) bool {
	if h.Of.ID == "" || h.Of.ID == e.ID {
		return true
	}
	for _, o := range x.machine.Energies {
		if o.ID == h.Of.ID {
			return false
		}
	}
	for _, f := range x.machine.Fluids {
		if f.ID == h.Of.ID {
			return false
		}
	}
	return true
}

func meets(s *model.Step, of string) bool {
	links := s.Links
	if s.Phase.Lead != nil {
		links = append(append([]*model.Link{}, links...), s.Phase.Lead.Links...)
	}
	for _, l := range links {
		if h, is := l.To.(*model.Hazard); is && h.Of.ID == of {
			return true
		}
	}
	return false
}
