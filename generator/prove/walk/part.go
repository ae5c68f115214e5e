package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// LiveWork is told where hands go in before an energy is proved dead.
var LiveWork = rule{
	Code:  "live-work",
	Title: "Hands in while an energy is not proved dead",
	Why:   "This is where people are hurt.",
	Mend:  "Prove the energy dead before this step, or move the step behind the proof.",
}

// heldBack is why a part can neither come off nor go on: that nobody loosened
// what frees it is one fault, however many parts it holds back, off and on.
const heldBack = "still tight, and it comes off and goes on only with this loose"

// freed looks for fasteners elsewhere that are tight and that a part needs loose
// to come off or go on: a chain, and the bolts of its slide.
func (w *walk) freed(p *model.Part, g diagram.Func, r *rule) {
	for _, f := range leads(p.FreedBy) {
		for _, x := range w.named(f) {
			tightHere := w.And(w.present(x), w.Is(w.get(x), states(tight)))
			if q := w.lay.things[x].part; q != nil {
				tightHere = w.And(tightHere, w.Is(w.get(w.lay.of[q]), states(on)))
			}
			w.findOnce(r, x, w.And(g, tightHere), heldBack)
		}
	}
}

// handsIn looks for energies that are not proved dead where hands go.
func (w *walk) handsIn(p *model.Part, g diagram.Func) {
	for _, e := range leads(p.Dead()) {
		x := w.lay.of[e]
		w.findOnce(&LiveWork, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), notDead)), "")
	}
}
