package walk

import (
	"math"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong with a proof.
var (
	ProofWithoutMeasure = rule{
		Code:  "proof-without-measure",
		Title: "Proved dead without anything that shows it",
		Why:   "Only a reading, a look or a check says that an energy is dead; above the safe voltage only a meter does, and a limit that the live energy meets says nothing.",
		Mend:  "Add a measure hold of that energy to the step, or, at or below the safe voltage and for what is not electric, a look or a check of it. The limit is one that the live energy does not meet: an electric one at or below the safe voltage, in its own ac or dc; a pressure within safe-pressure of nothing; a temperature at or below safe-touch.",
	}
	TesterNotProved = rule{
		Code:  "tester-not-proved",
		Title: "A tester that is not proved before and after",
		Why:   "A broken tester reads zero on a live bus.",
		Mend:  "Write proved-on: in the hold, with the proving unit.",
	}
)

// showsDead looks for the hold beside a proof that shows it: a measurement, a look
// or a check of that energy in its step. It says where none does.
func (w *walk) showsDead(e *model.Energy, x thing, g diagram.Func) (unshown diagram.Func) {
	holds, read := holdsOf(w.here.step, e)
	if !read || e.Lost("voltage", "kind") || w.manual.Shop.Lost("limits") {
		return diagram.No
	}
	switch why := w.unshown(e, holds); {
	case why != "":
		w.find(&ProofWithoutMeasure, x, g, why)
	case w.aboveSafe(e) && !w.testerProved(e, holds):
		w.find(&TesterNotProved, x, g, "measured with a tester that is not proved before and after")
	default:
		return diagram.No
	}
	return g
}

// holdsOf are the measurements, looks and checks of an energy that a step
// takes; false where one of its holds could not be read.
func holdsOf(s *model.Step, e *model.Energy) (holds []*model.Hold, read bool) {
	for _, l := range s.Links {
		if _, maybe := l.Near().(*model.Hold); maybe && (l.Odd || l.Kind == model.UnknownLink) {
			return nil, false
		}
		if !takes(l) {
			continue
		}
		h, _ := l.To.(*model.Hold)
		if l.Bad || h == nil || h.Lost("kind", "of", "limit") {
			return nil, false
		}
		if h.Of.ID == e.ID && h.Kind == "measure" && (h.Limit.IsZero() || !e.ShownIn(h.Limit.Unit.Dimension())) {
			return nil, false // its own rules tell
		}
		if h.Of.ID == e.ID && (h.Kind == "measure" || h.Kind == "look" || h.Kind == "check") {
			holds = append(holds, h)
		}
	}
	return holds, true
}

// unshown is why nothing beside a proof shows that an energy is dead; "" where
// something does.
func (w *walk) unshown(e *model.Energy, holds []*model.Hold) string {
	measured := false
	for _, h := range holds {
		if h.Kind != "measure" {
			continue
		}
		if measured = true; w.measures(h, e) {
			return ""
		}
	}
	switch {
	case w.aboveSafe(e) && e.Voltage.Flow == quantity.Unsaid:
		return "proved dead without a measurement beside it that shows it; its voltage in the machine's file says neither ac nor dc"
	case measured || w.aboveSafe(e):
		return "proved dead without a measurement beside it that shows it"
	case len(holds) == 0:
		return "proved dead without a measurement, a look or a check of it in the step"
	}
	return ""
}

// testerProved says that one of the measurements that show an energy dead is
// taken with a tester that is proved before and after.
func (w *walk) testerProved(e *model.Energy, holds []*model.Hold) bool {
	for _, h := range holds {
		if h.Kind == "measure" && w.measures(h, e) && (h.ProvedOn.ID != "" || h.Lost("proved-on")) {
			return true
		}
	}
	return false
}

// aboveSafe says whether an electric energy is above the safe voltage.
func (w *walk) aboveSafe(e *model.Energy) bool {
	if e.Kind != "electric" || e.Voltage.Unit == quantity.Bare {
		return false
	}
	limits := w.manual.Shop.Limits
	v := math.Abs(e.Voltage.Base())
	if e.Voltage.Flow == quantity.DC {
		return v > limits.SafeVoltageDC.Base()
	}
	return v > limits.SafeVoltageAC.Base() || e.Stored.Yes && v*math.Sqrt2 > limits.SafeVoltageDC.Base()
}

// measures says that the limit of a measurement can show that an energy is
// dead: what is live does not meet it. A limit of another kind than the energy
// is told by its own rule.
func (w *walk) measures(h *model.Hold, e *model.Energy) bool {
	limits := w.manual.Shop.Limits
	low, high := h.Limit.Bounds()
	dim := h.Limit.Unit.Dimension()
	switch e.Kind {
	case "electric":
		return w.measuresVoltage(h, e)
	case "pressure":
		return dim != quantity.Pressure || high <= limits.SafePressure.Base()
	case "vacuum":
		return dim != quantity.Pressure || low >= -limits.SafePressure.Base()
	case "heat":
		return dim != quantity.Temperature || high <= limits.SafeTouch.Base()
	}
	return true
}

// measuresVoltage says that a measurement shows an electric energy dead: at or
// below the safe voltage, in the energy's own ac or dc where that matters.
func (w *walk) measuresVoltage(h *model.Hold, e *model.Energy) bool {
	_, high := h.Limit.Bounds()
	above := w.aboveSafe(e)
	if h.Limit.Unit.Dimension() != quantity.Voltage {
		return !above
	}
	if above && h.Limit.Flow != e.Voltage.Flow {
		return false
	}
	safe := w.manual.Shop.Limits.SafeVoltageAC
	if h.Limit.Flow == quantity.DC || !above && h.Limit.Flow == quantity.Unsaid {
		safe = w.manual.Shop.Limits.SafeVoltageDC
	}
	return high <= safe.Base()
}
