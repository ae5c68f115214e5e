package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// unlocking takes the lock off.
type unlocking struct{ onEnergy }

func (unlocking) does(w *walk, l *model.Link, g diagram.Func) {
	a := w.aimed(l, g)
	was := map[*model.Point]diagram.Func{}
	for _, p := range a.points {
		if p.Kept {
			continue
		}
		was[p] = w.pointIs(p, lockedStates)
		w.movePoint(a, p, move(isolated, locked))
	}
	for _, r := range w.cut(a) {
		g := w.affected(a, r)
		if r != a.energy {
			g = w.And(g, w.unlockedAt(r, was))
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

// unlockedAt is where a lock came off one of an energy's own points.
func (w *walk) unlockedAt(r *energyRule, was map[*model.Point]diagram.Func) diagram.Func {
	off := diagram.No
	for _, p := range r.points {
		if locked, is := was[p]; is {
			off = w.Or(off, locked)
		}
	}
	return off
}

// stillHeld is how a load stands that is unlocked while a tool holds it.
func stillHeld(lockable bool) diagram.Func {
	if lockable {
		return blocked
	}
	return released
}
