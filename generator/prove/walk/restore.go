package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong where an energy comes back.
var (
	RestoredWhileOpen = rule{
		Code:  "restored-while-open",
		Title: "An energy that comes back while something is open",
		Why:   "An energy that comes back to an open machine finds whoever is still at it, or the floor.",
		Mend:  "Put back, tighten, fill and bleed what is named before this step. A circuit that is bled with its energy on says bleed: live in the machine's file.",
	}
	LiveTest = rule{
		Code:  "live-test",
		Title: "A live test without its warning or its second person",
		Why:   "A test with parts off is the one moment when live work is meant; nobody does it unwarned or alone.",
		Mend:  "Add a hazard: of that energy, a sign or check hold and [](people:2) to the step.",
	}
)

// restore puts an energy, or a point, back on.
func (w *walk) restore(a aim) {
	w.find(&EnergyOrder, a.thing, w.And(a.where, w.stillLocked(a)), "brought back while it is locked")
	cut := w.cut(a)
	woken := make([]diagram.Func, len(cut))
	for i, r := range cut {
		woken[i] = w.And(w.affected(a, r), w.Is(w.energy(r), notLive))
	}
	for i, r := range cut {
		w.stillOpen(r, woken[i])
		w.notAsked(w.lay.asks(r.energy, beforeRestore), woken[i], "not done before this comes back on, and something was opened since")
		w.contained(r, woken[i], "it is put on without %s in place", containers(r))
	}
	w.wake(a)
	w.testOver(cut, a.where)
	for i, r := range cut {
		w.backInOrder(r, woken[i])
	}
}

// stillLocked says where a lock holds what is being switched on.
func (w *walk) stillLocked(a aim) diagram.Func {
	f := diagram.No
	for _, p := range a.points {
		if p.Padlocked() {
			f = w.Or(f, w.pointIs(p, lockedStates))
		}
	}
	for _, r := range w.cut(a) {
		all := w.And(w.affected(a, r), w.padlocked(r))
		for _, p := range r.points {
			if p.Padlocked() {
				all = w.AndNot(all, w.pointIs(p, ^lockedStates))
			}
		}
		f = w.Or(f, all)
	}
	return f
}

// wake makes the points of an aim live, and every energy that they cut.
func (w *walk) wake(a aim) {
	for _, p := range a.points {
		w.movePoint(a, p, move(live, isolated, locked, unknown))
	}
	for _, r := range w.cut(a) {
		x := w.lay.of[r.energy]
		g := w.affected(a, r)
		held := diagram.No
		if r.load && len(r.points) > 0 {
			held = w.blockedNow(r)
		}
		w.shift(x, w.AndNot(g, held), move(live, isolated, locked, released, dead, blocked, unknown))
		w.shift(x, w.And(g, held), move(early, live, isolated, locked, released, dead, blocked, unknown))
	}
}

// stillOpen looks for what is open when an energy comes back.
func (w *walk) stillOpen(r *energyRule, g diagram.Func) {
	if g == diagram.No {
		return
	}
	for _, p := range w.lay.naming[r.energy] {
		x := w.lay.of[p]
		g := w.And(g, w.present(x))
		w.findOnce(&RestoredWhileOpen, x, w.And(g, w.Is(w.get(x), offStates)), "")
		for _, f := range w.lay.held[p] {
			w.findOnce(&RestoredWhileOpen, f, w.And(g, w.looseAt(f, x)), "")
		}
	}
	for _, f := range w.lay.needing[r.energy] {
		x := w.lay.of[f]
		open := lowStates
		if f.Bleed && !f.BledLive {
			open |= states(unbled)
		}
		w.findOnce(&RestoredWhileOpen, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), open)), "")
	}
	for _, s := range w.lay.setFor[r.energy] {
		x := w.lay.of[s]
		w.findOnce(&RestoredWhileOpen, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), states(set))), "")
	}
}

// looseAt says where a fastener is loose at a part that is on.
func (w *walk) looseAt(f, part thing) diagram.Func {
	return w.And(w.present(f), w.And(w.Is(w.get(part), states(on)), w.Is(w.get(f), states(loose))))
}

// backInOrder looks for an energy that should have come back before this one.
func (w *walk) backInOrder(r *energyRule, g diagram.Func) {
	for _, first := range w.lay.machine.RestoreOrder {
		if first.To == r.energy || g == diagram.No {
			return
		}
		if first.To == nil {
			continue
		}
		x := w.lay.of[first.To]
		late := w.And(w.And(g, w.inOrder(r)), w.And(w.present(x), w.Is(w.get(x), notLive)))
		w.find(&EnergyOrder, x, late, "should come back before the %s", r.energy.Label())
	}
}

// inOrder says that the machine's order of coming back names the energy.
func (w *walk) inOrder(r *energyRule) diagram.Func {
	for _, e := range w.lay.machine.RestoreOrder {
		if e.To == r.energy {
			return diagram.Yes
		}
	}
	return diagram.No
}

// testOver is where energies are no longer on for a test.
func (w *walk) testOver(cut []*energyRule, g diagram.Func) {
	for _, r := range cut {
		x := w.lay.of[r.energy]
		w.tested[x] = w.AndNot(w.tested[x], g)
	}
}

// testLive puts an energy on for a test.
func (w *walk) testLive(a aim) {
	shut := diagram.No
	for _, p := range a.points {
		if p.Padlocked() {
			shut = w.Or(shut, w.pointIs(p, lockedStates))
		}
	}
	w.find(&EnergyOrder, a.thing, w.And(a.where, shut), "put on for a test while it is locked")
	if e := a.energy.energy; !w.hazardOf(w.here.step, e.ID) {
		w.find(&LiveTest, a.thing, a.where, "put on for a test, and the step meets no hazard of it")
	} else if !w.supervised(w.here.step) {
		w.find(&LiveTest, a.thing, a.where, "put on for a test, and the step has no sign or check hold")
	} else if n, known := w.here.step.Crew(); known && n < 2 {
		w.find(&LiveTest, a.thing, a.where, "put on for a test by one person alone")
	}
	for _, r := range w.cut(a) {
		g := w.affected(a, r)
		if r != a.energy {
			g = w.And(g, w.Is(w.energy(r), notLive))
		}
		w.contained(r, g, "it is tested without %s in place", containers(r))
	}
	w.wake(a)
	w.tested[a.thing] = w.Or(w.tested[a.thing], a.where)
	w.acted = w.Or(w.acted, a.where)
}

// supervised says that a second person has a part in the step.
func (w *walk) supervised(s *model.Step) bool {
	for _, l := range s.Links {
		if l.Is(model.LinkHold) {
			h, _ := l.To.(*model.Hold)
			if l.Bad || h == nil || h.Lost("kind") || h.Kind == "sign" || h.Kind == "check" {
				return true
			}
		}
	}
	return false
}
