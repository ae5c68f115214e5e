package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong where a part comes off or goes back.
var (
	LiveWork = rule{
		Code:  "live-work",
		Title: "Hands in while an energy is not proved dead",
		Why:   "This is where people are hurt.",
		Mend:  "Prove the energy dead before this step, or move the step behind the proof.",
	}
	GuardOffLive = rule{
		Code:  "guard-off-live",
		Title: "A guard that comes off while what it guards is live",
		Why:   "The guard is what keeps hands from it; and until it is proved dead, whoever takes the guard off must be warned.",
		Mend:  "Isolate and lock the energy first, and add a hazard: of it to the step.",
	}
	NotReachable = rule{
		Code:  "not-reachable",
		Title: "Taken off before what is in the way",
		Why:   "The step cannot be done as written, so it is done in some other way.",
		Mend:  "Take off what is over it first.",
	}
	RefitOverOpen = rule{
		Code:  "refit-over-open",
		Title: "Put back over something open",
		Why:   "What is forgotten under a cover is found by the machine.",
		Mend:  "Put back and tighten what is under it first.",
	}
	RemovedTwice = rule{
		Code:  "removed-twice",
		Title: "Taken off twice",
		Why:   "One of the two steps is wrong, and the reader cannot know which.",
		Mend:  "Take one of the two out, or put the part back between them.",
	}
	RefitNotRemoved = rule{
		Code:  "refit-not-removed",
		Title: "Put back without having been off",
		Why:   "Either a step that takes it off is missing, or this one is too many.",
		Mend:  "Write the step that takes it off, or take this one out.",
	}
)

// remove takes a part off; for good where a new one is to be fitted.
func (w *walk) remove(p *model.Part, g diagram.Func, forGood bool) {
	x := w.lay.of[p]
	g = w.And(g, w.present(x))
	f := w.get(x)
	w.find(&RemovedTwice, x, w.And(g, w.Is(f, offStates)), "taken off, and off already")
	g = w.AndNot(g, w.Is(f, offStates))
	known := w.And(g, w.Is(f, states(on)))
	w.reach(p, known)
	w.handsIn(p, known)
	w.guardsOff(p, known)
	w.undone(undoing{verb: model.Refit, thing: x, where: known, new: forGood})
	w.put(x, g, off)
	w.byHand[p] = w.AndNot(w.byHand[p], g)
	for _, h := range w.lay.held[p] {
		w.put(h, w.And(g, w.present(h)), loose)
	}
	gap := idle
	if forGood {
		gap = set
	}
	w.put(w.lay.gap[p], g, gap)
	w.opened(p, g)
	w.openedAnew(g)
}

// reach looks for what is in the way.
func (w *walk) reach(p *model.Part, g diagram.Func) {
	for _, u := range leads(p.Under) {
		x := w.lay.of[u]
		w.findOnce(&NotReachable, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), states(on))), "")
	}
	w.freed(p, g, &NotReachable)
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

// guardsOff judges a part that keeps hands from an energy: the energy is
// isolated and locked, and until it is dead the step meets a hazard of it.
func (w *walk) guardsOff(p *model.Part, g diagram.Func) {
	for _, e := range leads(p.Guards) {
		if provesDead(p, e) {
			continue
		}
		r, x := w.lay.energy[e], w.lay.of[e]
		here := w.And(g, w.present(x))
		w.byLock(r, here, func(lockable bool, here diagram.Func) {
			open := r.unguarded(lockable)
			w.findOnce(&GuardOffLive, x, w.And(here, w.Is(w.get(x), open)), "")
			if !w.hazardOf(w.here.step, e.ID) {
				bare := w.And(here, w.Is(w.get(x), notDead&^open))
				w.find(&GuardOffLive, x, bare, "its guard comes off before it is proved dead, and the step meets no hazard of it")
			}
		})
	}
}

// unguarded is the states of an energy in which its guard stays on.
func (r *energyRule) unguarded(lockable bool) diagram.Set {
	switch {
	case len(r.points) == 0: // nothing to switch off: only the proof says that it is out
		return notDead
	case lockable:
		return notLocked
	}
	return liveStates
}

func provesDead(p *model.Part, e *model.Energy) bool {
	for _, d := range p.Dead() {
		if d.To == e {
			return true
		}
	}
	return false
}

// opened is what opening a line does to its fluid, and to parts that look like
// others.
func (w *walk) opened(p *model.Part, g diagram.Func) {
	if f := p.Carries.To; f != nil {
		g := w.And(g, w.present(w.lay.of[f]))
		w.shift(w.lay.of[f], g, move(low, full, unbled))
		w.put(w.lay.spill[f], g, set)
	}
	if p.Alike != "" {
		if group, is := w.lay.machine.Find(p.Alike).(*model.Group); is {
			w.unmarked(group, p, g)
		}
	}
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
// tightened.
func (w *walk) coveredLoose(p *model.Part, g diagram.Func, begun, later []undoing) {
	for _, q := range p.Over {
		x := w.lay.of[q]
		here := w.And(g, w.present(x))
		for _, u := range begun {
			if u.thing == x {
				here = w.AndNot(here, u.where)
			}
		}
		for _, h := range w.lay.held[q] {
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

// capLine closes the open end of a line.
func (w *walk) capLine(p *model.Part, g diagram.Func) {
	x := w.lay.of[p]
	g = w.And(g, w.present(x))
	f := w.get(x)
	if p.Lost("kind") {
		w.put(x, g, unknown)
		return
	}
	if p.Kind != "line" && p.Kind != "wire" && p.Kind != "connector" {
		w.find(&ActOrder, x, g, "capped, and no line, wire or connector")
		return
	}
	w.find(&ActOrder, x, w.And(g, w.Is(f, states(on))), "capped while it is on")
	w.find(&ActOrder, x, w.And(g, w.Is(f, states(capped))), "capped twice")
	w.shift(x, g, move(capped, off))
}
