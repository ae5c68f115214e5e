package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// RefitOverOpen is told where a part goes back on over what is off or loose under it.
var RefitOverOpen = rule{
	Code:  "refit-over-open",
	Title: "Put back over something open",
	Why:   "What is forgotten under a cover is found by the machine.",
	Mend:  "Put back and tighten what is under it first.",
}

// RefitNotRemoved is told at a part that goes back and was on.
var RefitNotRemoved = rule{
	Code:  "refit-not-removed",
	Title: "Put back without having been off",
	Why:   "Either a step that takes it off is missing, or this one is too many.",
	Mend:  "Write the step that takes it off, or take this one out.",
}

// refitting puts a part back.
type refitting struct{ onPart }

func (refitting) does(w *walk, l *model.Link, g diagram.Func) {
	w.refit(l.To.(*model.Part), g, nil, nil)
}

// refit puts a part back. What was begun by hand in the same run need only be
// on, and what is taken back later in the same reverse: was loosened with the
// part on: it is tightened so too.
func (w *walk) refit(p *model.Part, g diagram.Func, begun, later []undoing) {
	x := w.lay.of[p]
	g = w.And(g, w.present(x))
	f := w.get(x)
	w.find(&RefitNotRemoved, x, w.And(g, w.Is(f, states(on))), "put back, and on already")
	g = w.AndNot(g, w.Is(f, states(on)))
	known := w.And(g, w.Is(f, offStates))
	w.handsIn(p, known)
	w.covered(p, known)
	if begunByHand(p) && !w.deriving {
		w.byHand[p] = w.Or(w.byHand[p], known)
	} else {
		w.coveredLoose(p, known, begun, later)
	}
	w.freed(p, known, &RefitOverOpen)
	w.newPart(p, w.And(known, w.Is(w.get(w.lay.gap[p]), states(set))))
	w.newFasteners(p, known)
	w.put(x, g, on)
	for _, h := range w.lay.held[p] {
		w.look(h) // a caller asks how they are left
	}
	w.put(w.lay.gap[p], g, idle)
	w.tightenedEarly(p, g)
}

// covered looks for what is still off under a part that goes back on.
func (w *walk) covered(p *model.Part, g diagram.Func) {
	for _, q := range p.Over {
		x := w.lay.of[q]
		here := w.And(g, w.present(x))
		w.findOnce(&RefitOverOpen, x, w.And(here, w.Is(w.get(x), offStates)), "")
	}
}

// coveredLoose looks for what is on and loose under a part that goes on and is
// tightened. What the part goes on only with loose is tightened after it: the
// bolts of a slide that lies under its chain.
func (w *walk) coveredLoose(p *model.Part, g diagram.Func, begun, later []undoing) {
	if p.Lost("freed-by") {
		return
	}
	for _, q := range p.Over {
		x := w.lay.of[q]
		here := w.And(g, w.present(x))
		for _, u := range begun {
			if u.thing == x {
				here = w.AndNot(here, u.where)
			}
		}
		for _, h := range w.lay.held[q] {
			if slices.Contains(leads(p.FreedBy), w.lay.things[h].named.(*model.Fastener)) {
				continue
			}
			open := w.And(here, w.looseAt(h, x))
			for _, u := range later {
				if u.thing == h && u.verb == model.Tighten {
					open = w.AndNot(open, u.where)
				}
			}
			w.findOnce(&RefitOverOpen, h, open, "")
		}
	}
}
