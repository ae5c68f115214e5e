package begin

import (
	"math"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/electrical"
)

// cut is an energy that is made safe, and with what.
type cut struct {
	energy *model.Energy
	on     conditions
	hazard *model.Hazard // of it; nil where there is none
	proof  *model.Hold   // shows that it is dead; nil where there is none
	wait   *model.Hold   // lets out what is stored
	block  *model.Tool   // holds what is stored
	proved int           // after how many parts are off it is proved dead; guards come off before
}

// early says that what is stored is let out before the energy is switched off:
// a load comes down under power.
func (c *cut) early() bool {
	return c.energy.Kind == "gravity" && c.energy.Stored.Yes && c.wait == nil && c.block == nil
}

// stays says that there is nothing to put back on: what holds the load is taken
// away.
func (c *cut) stays() bool { return len(c.energy.Points) == 0 && c.block != nil }

// findCuts are the energies that hands would meet, in the machine file's order.
func (r *reach) findCuts() []*cut {
	var out []*cut
	for _, e := range r.machine.Energies {
		if c := r.cut(e); c != nil {
			out = append(out, c)
		}
	}
	return out
}

// cut is how an energy is made safe; nil where nothing on the way meets it.
func (r *reach) cut(e *model.Energy) *cut {
	c := &cut{energy: e}
	own, met := conditionOf(e.OnlyWith), false
	for _, p := range r.way.touched() {
		if !refers(p.Dead(), e) && !refers(p.Guards, e) || !r.meets(p, e) {
			continue
		}
		on := own.and(r.on[p]).without(r.here)
		if met {
			on = c.on.common(on)
		}
		c.on, met = on, true
	}
	if !met {
		return nil
	}
	r.unread(e)
	r.equip(c)
	c.proved = r.provedAfter(c)
	return c
}

func refers[T any](refs []model.Ref[T], to *T) bool {
	return slices.ContainsFunc(refs, func(r model.Ref[T]) bool { return r.To == to })
}

// meets says that a unit has both the part and the energy.
func (r *reach) meets(p *model.Part, e *model.Energy) bool {
	return anyUnit(r.machine, r.here.and(r.on[p], conditionOf(e.OnlyWith)))
}

// equip finds in the registers what makes an energy safe and shows it.
func (r *reach) equip(c *cut) {
	c.hazard = first(r.manual.Hazards, func(h *model.Hazard) bool { return h.Of.ID == c.energy.ID && whole(h) })
	c.proof = r.proofOf(c.energy)
	if c.energy.Stored.Yes {
		r.letOut(c)
	}
}

// whole says that a hazard says all that its box must.
func whole(h *model.Hazard) bool {
	return !h.Misread && h.Nature != "" && h.Consequence != "" && len(h.Avoid) > 0
}

func first[T any](list []*T, is func(*T) bool) *T {
	if i := slices.IndexFunc(list, is); i >= 0 {
		return list[i]
	}
	return nil
}

// letOut finds how what is stored is let out or held: a load is held by its
// tool, else there is a wait, else the worker releases it.
func (r *reach) letOut(c *cut) {
	for _, tool := range c.energy.BlockedBy {
		if tool.To != nil && !tool.To.Misread {
			c.block = tool.To
			return
		}
	}
	waits := func(h *model.Hold) bool {
		return h.Kind == "wait" && h.Of.ID == c.energy.ID && !h.Misread && !h.For.IsZero()
	}
	enough := func(h *model.Hold) bool { return waits(h) && r.longEnough(h, c.energy) }
	if c.wait = first(r.manual.Holds, enough); c.wait == nil && first(r.manual.Holds, waits) != nil {
		r.lack("a wait of %s that is as long as its charge takes to fall: the one in register/holds.yaml is too short", c.energy.ID)
	}
}

// longEnough says that a wait outlasts the charge of an electric energy.
func (r *reach) longEnough(h *model.Hold, e *model.Energy) bool {
	if h.For.Least.Base() < e.Stored.Wait.Base() {
		return false
	}
	if e.Kind != "electric" {
		return true
	}
	store := electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
	wait, known := store.WaitFor(r.manual.Shop.Limits.SafeVoltageDC)
	return !known || wait.Enough(h.For.Least.Base())
}

// proofOf finds the hold that shows an energy dead. Above the safe voltage only
// a measurement does, with a tester that is proved before and after.
func (r *reach) proofOf(e *model.Energy) *model.Hold {
	if r.aboveSafe(e) {
		proof := first(r.manual.Holds, func(h *model.Hold) bool { return r.measuresSafe(h, e) })
		if proof == nil {
			r.lack("a hold of kind measure with of: %s, a limit at or below the safe voltage, %s, and proved-on: in register/holds.yaml", e.ID, r.safe(e))
			if e.Voltage.Flow == quantity.Unsaid {
				r.lack("ac or dc behind the voltage of %s, in %s", e.ID, e.At.Path())
			}
		}
		return proof
	}
	return first(r.manual.Holds, func(h *model.Hold) bool { return h.Of.ID == e.ID && !h.Misread && shows(h) })
}

// shows says that a hold can show that something is dead: it is measured,
// looked at, or checked by a second person.
func shows(h *model.Hold) bool {
	switch h.Kind {
	case "measure":
		return h.What != "" && !h.Limit.IsZero()
	case "look":
		return h.What != ""
	}
	return h.Kind == "check" && h.By.To != nil
}

// safe is the limit that a measurement of an electric energy is held against.
func (r *reach) safe(e *model.Energy) quantity.Quantity {
	if e.Voltage.Flow == quantity.DC {
		return r.manual.Shop.Limits.SafeVoltageDC
	}
	return r.manual.Shop.Limits.SafeVoltageAC
}

// aboveSafe says that an electric energy is above the safe voltage. What is
// stored of an alternating one is at its peak.
func (r *reach) aboveSafe(e *model.Energy) bool {
	if e.Kind != "electric" || e.Voltage.IsZero() {
		return false
	}
	volts := math.Abs(e.Voltage.Base())
	peak := e.Voltage.Flow != quantity.DC && e.Stored.Yes && electrical.Peak(volts) > r.manual.Shop.Limits.SafeVoltageDC.Base()
	return volts > r.safe(e).Base() || peak
}

func (r *reach) measuresSafe(h *model.Hold, e *model.Energy) bool {
	if h.Kind != "measure" || h.Of.ID != e.ID || h.Misread || h.What == "" || h.ProvedOn.To == nil {
		return false
	}
	_, high := h.Limit.Bounds()
	return h.Limit.Unit.Dimension() == quantity.Voltage && h.Limit.Flow == e.Voltage.Flow && high <= r.safe(e).Base()
}

// provedAfter is how many parts are off when an energy is proved dead: as many
// as it takes to have its guards off, for behind them is where it is measured,
// but none that is only taken off once it is dead. A guard that no hazard can
// be told at stays on until the proof; so does every guard of what cannot be
// switched off, for only the proof says that it is out.
func (r *reach) provedAfter(c *cut) int {
	if len(c.energy.Points) == 0 {
		return 0
	}
	after := 0
	for i, p := range r.off {
		if !r.meets(p, c.energy) {
			continue
		}
		if refers(p.Dead(), c.energy) {
			break
		}
		if refers(p.Guards, c.energy) {
			after = i + 1
		}
	}
	if after > 0 && c.hazard == nil {
		r.lack("a hazard with of: %s in register/hazards.yaml: its guard comes off before it is proved dead, and nothing can be said of the danger", c.energy.ID)
		return 0
	}
	return after
}

// mindful says that a part's step meets the hazard of an energy: the part
// guards it, and it is not proved dead yet.
func (r *reach) mindful(c *cut, i int) bool {
	return i < c.proved && refers(r.off[i].Guards, c.energy) && r.meets(r.off[i], c.energy)
}
