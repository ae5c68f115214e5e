package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// locking fits a lock to a point, or to those of an energy.
type locking struct{ onEnergy }

func (locking) does(w *walk, l *model.Link, g diagram.Func) {
	w.lock(w.aimed(l, g))
	w.notices()
}

func (w *walk) lock(a aim) {
	if a.energy == nil && !a.points[0].Lock {
		return
	}
	open := diagram.No
	for _, p := range a.points {
		open = w.Or(open, w.pointIs(p, states(live)))
	}
	w.find(&EnergyOrder, a.thing, w.And(a.where, open), "locked before it is isolated")
	for _, p := range a.points {
		switch {
		case p.Kept:
			w.pull(a, p)
		case p.Lock:
			w.movePoint(a, p, move(locked, live, isolated))
		default:
			w.movePoint(a, p, move(isolated, live))
		}
	}
	for _, r := range w.cut(a) {
		w.settle(r, w.affected(a, r))
	}
}
