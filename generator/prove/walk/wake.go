package walk

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/prove/diagram"
)

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

// testOver is where energies are no longer on for a test.
func (w *walk) testOver(cut []*energyRule, g diagram.Func) {
	for _, r := range cut {
		x := w.lay.of[r.energy]
		w.tested[x] = w.AndNot(w.tested[x], g)
	}
}

// contained tells where an energy has none of the tools round it that must be.
func (w *walk) contained(r *energyRule, g diagram.Func, why string, of ...any) {
	if len(r.containers) == 0 {
		return
	}
	for _, t := range r.containers {
		g = w.AndNot(g, w.Is(w.get(w.lay.of[t]), states(set, unknown)))
	}
	w.find(&RestoredWhileOpen, w.lay.of[r.energy], g, why, of...)
}

// containers are the names of those tools.
func containers(r *energyRule) finding.List {
	var out []finding.Words
	for _, t := range r.containers {
		out = append(out, finding.Say("the %s", t.Label()))
	}
	return finding.ListOf(" or ", out)
}
