package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// unlocking takes the lock off.
type unlocking struct{ onEnergy }

func (unlocking) does(w *walk, l *model.Link, g diagram.Func) {
	a := w.aimed(l, g)
	was := diagram.No
	for _, p := range a.points {
		if p.Kept {
			continue
		}
		was = w.Or(was, w.pointIs(p, lockedStates))
		w.movePoint(a, p, move(isolated, locked))
	}
	for _, r := range w.cut(a) {
		g := w.affected(a, r)
		if r != a.energy {
			g = w.And(g, was)
		} else if len(r.points) == 0 {
			continue
		} else {
			g = w.AndNot(g, w.AndNot(w.hasKept(r), w.padlocked(r)))
		}
		x := w.lay.of[r.energy]
		held := diagram.No
		if r.load {
			held = w.blockedNow(r)
		}
		w.shift(x, w.AndNot(g, held), move(isolated, locked, released, dead))
		w.byLock(r, w.And(g, held), func(lockable bool, g diagram.Func) {
			w.shift(x, g, move(stillHeld(lockable), locked, released, dead))
		})
	}
}

// stillHeld is how a load stands that is unlocked while a tool holds it.
func stillHeld(lockable bool) diagram.Func {
	if lockable {
		return blocked
	}
	return released
}
