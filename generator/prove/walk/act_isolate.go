package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// isolating switches an energy, or a point, off.
type isolating struct{ onEnergy }

func (isolating) does(w *walk, l *model.Link, g diagram.Func) {
	a := w.aimed(l, g)
	for _, r := range w.cut(a) {
		w.notAsked(w.lay.asks(r.energy, beforeIsolate), w.switchedOff(a, r), "not done before this is cut off")
	}
	for _, p := range a.points {
		if p.Kept {
			w.pull(a, p)
			continue
		}
		w.movePoint(a, p, move(isolated, live))
	}
	if a.energy != nil && len(a.points) == 0 {
		w.shift(a.thing, a.where, move(isolated, live).And(released, early))
	}
	for _, r := range w.cut(a) {
		w.settle(r, w.affected(a, r))
	}
	w.testOver(w.cut(a), a.where)
}
