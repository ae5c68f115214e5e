package walk

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// LeakLookWithoutPressure is told at a look that no later one makes good.
var LeakLookWithoutPressure = rule{
	Code:  "leak-look-without-pressure",
	Level: finding.Advice,
	Title: "Looking for a leak with the pressure off",
	Why:   "A joint that is under no pressure does not leak; it does when the machine runs.",
	Mend:  "Look again once the pressure is back on.",
}

// look is a look for a leak of an energy or a fluid, until one finds the
// pressure on.
type look struct {
	of   thing
	dry  diagram.Func // where the pressure is off, and no later look was with it on
	good diagram.Func // where it is on
	at   event
}

// looked notes a look for a leak. What is under no pressure is no matter of
// this rule.
func (w *walk) looked(of thing, pushes []*model.Energy, g diagram.Func) {
	pressed, dry := diagram.No, w.And(g, w.present(of))
	for _, e := range pushes {
		x := w.lay.of[e]
		here := w.present(x)
		pressed = w.Or(pressed, here)
		dry = w.AndNot(dry, w.And(here, w.Is(w.get(x), liveStates|states(unknown))))
	}
	w.lookAgain(look{of, w.And(dry, pressed), w.AndNot(g, dry), w.here})
}

// lookAgain is a look, which makes up for earlier ones where the pressure is on.
func (w *walk) lookAgain(k look) {
	for i := range w.looks {
		if w.looks[i].of == k.of {
			w.looks[i].dry = w.AndNot(w.looks[i].dry, k.good)
		}
	}
	w.looks = append(w.looks, k)
}

// mayHaveLooked is a hold that could not be read: it may be the later look of any.
func (w *walk) mayHaveLooked(g diagram.Func) {
	for i := range w.looks {
		w.looks[i].dry = w.AndNot(w.looks[i].dry, g)
	}
}

// pushes are the pressures behind what a look is of.
func pushes(n model.Named) []*model.Energy {
	var out []*model.Energy
	switch n := n.(type) {
	case *model.Energy:
		out = append(out, n)
	case *model.Fluid:
		out = leads(n.NeededBy)
	}
	for _, e := range out {
		if e.Kind != "pressure" || e.Lost("kind") {
			return nil
		}
	}
	return out
}

// tellLooks tells of the looks after which none came with the pressure on.
func (w *walk) tellLooks() {
	for _, k := range w.looks {
		w.at(k.at, func() { w.find(&LeakLookWithoutPressure, k.of, k.dry, "") })
	}
}

// looksInAll are the looks of a procedure for its callers: what it finds
// without pressure when it is walked alone is told there.
func (w *walk) looksInAll() []look {
	var out []look
	for _, k := range w.looks {
		k.dry = w.AndNot(k.dry, w.somehow(w.homely(k.dry)))
		k.dry, k.good = w.fewer(k.dry), w.fewer(k.good)
		out = append(out, k)
	}
	return out
}

// later takes over the looks of a call.
func (w *walk) later(in *importer, g diagram.Func) {
	for _, k := range in.sum.looks {
		w.lookAgain(look{k.of, w.And(g, in.take(k.dry)), w.And(g, in.take(k.good)), w.here})
	}
}
