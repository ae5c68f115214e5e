package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// RestoredWhileOpen is told where an energy comes back to something open.
var RestoredWhileOpen = rule{
	Code:  "restored-while-open",
	Title: "An energy that comes back while something is open",
	Why:   "An energy that comes back to an open machine finds whoever is still at it, or the floor.",
	Mend:  "Put back, tighten, fill and bleed what is named before this step. A circuit that is bled with its energy on says bleed: live in the machine's file.",
}

// restoring puts an energy, or a point, back on.
type restoring struct{ onEnergy }

func (restoring) does(w *walk, l *model.Link, g diagram.Func) {
	a := w.aimed(l, g)
	w.find(&EnergyOrder, a.thing, w.And(a.where, w.stillLocked(a)), "brought back while it is locked")
	cut := w.cut(a)
	woken := make([]diagram.Func, len(cut))
	for i, r := range cut {
		woken[i] = w.And(w.affected(a, r), w.Is(w.energy(r), notLive))
	}
	for i, r := range cut {
		w.stillOpen(r, woken[i])
		w.notAsked(w.lay.asks(r.energy, beforeRestore), woken[i], notAskedBack)
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
		all := w.And(w.And(w.affected(a, r), w.padlocked(r)), w.Is(w.energy(r), notLive))
		for _, p := range r.points {
			if p.Padlocked() {
				all = w.AndNot(all, w.pointIs(p, ^lockedStates))
			}
		}
		f = w.Or(f, all)
	}
	return f
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
		w.find(&EnergyOrder, x, late, backEarlier, r.energy.Label())
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
