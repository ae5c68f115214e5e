package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// GuardOffLive is told where a guard comes off while what it guards is live.
var GuardOffLive = rule{
	Code:  "guard-off-live",
	Title: "A guard that comes off while what it guards is live",
	Why:   "The guard is what keeps hands from it; and until it is proved dead, whoever takes the guard off must be warned.",
	Mend:  "Isolate and lock the energy first, and add a hazard: of it to the step.",
}

// NotReachable is told at a part that comes off before what is in the way.
var NotReachable = rule{
	Code:  "not-reachable",
	Title: "Taken off before what is in the way",
	Why:   "The step cannot be done as written, so it is done in some other way.",
	Mend:  "Take off what is over it first.",
}

// RemovedTwice is told at a part that comes off and was off.
var RemovedTwice = rule{
	Code:  "removed-twice",
	Title: "Taken off twice",
	Why:   "One of the two steps is wrong, and the reader cannot know which.",
	Mend:  "Take one of the two out, or put the part back between them.",
}

// removing takes a part off.
type removing struct{ onPart }

func (removing) does(w *walk, l *model.Link, g diagram.Func) {
	w.remove(l.To.(*model.Part), g, false)
}

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
	w.undone(undoing{thing: x, where: known, new: forGood})
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
			w.findOnce(&GuardOffLive, x, w.And(here, w.Is(w.get(x), open)), r.guardKept())
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

// guardKept is what is wrong where a guard comes off too soon, where that is not
// what the rule says.
func (r *energyRule) guardKept() string {
	if len(r.points) == 0 {
		return "its guard comes off before it is proved dead"
	}
	return ""
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
