package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// moment is how the points stand that take a padlock, at one time of a walk:
// where each of those that were touched is locked.
type moment []lockedPoint

type lockedPoint struct {
	point thing
	where diagram.Func
}

// lockedAt is where a point is locked at a moment. One that is not in it stands
// as at the start.
func (w *walk) lockedAt(m moment, x thing) diagram.Func {
	for _, p := range m {
		if p.point == x {
			return p.where
		}
	}
	w.look(x)
	return w.Is(w.start[x], lockedStates)
}

// notices keeps the moment after an act that may have locked something: a lock,
// or a call.
func (w *walk) notices() { w.moments = append(w.moments, w.momentNow()) }

// momentNow is how the points stand now.
func (w *walk) momentNow() moment {
	var m moment
	for _, x := range w.touched {
		if p, is := w.lay.things[x].named.(*model.Point); is && p.Padlocked() {
			m = append(m, lockedPoint{x, w.Is(w.state[x], lockedStates)})
		}
	}
	return m
}

// momentsInside are the moments of a call, as they come up here where g holds:
// what the callee does not touch stands as it does at the call.
func (w *walk) momentsInside(in *importer, g diagram.Func) {
	for _, inside := range in.sum.moments {
		for _, p := range inside {
			w.look(p.point)
		}
		m := w.momentNow()
		for _, p := range inside {
			i := slices.IndexFunc(m, func(q lockedPoint) bool { return q.point == p.point })
			m[i].where = w.Ite(g, in.take(p.where), m[i].where)
		}
		w.moments = append(w.moments, m)
	}
}

// fullest are the moments that a caller has to know: none that has locked what
// another has too, or what is locked at the start.
func (w *walk) fullest() []moment {
	var out []moment
	for _, m := range w.moments {
		if w.within(m, nil) || slices.ContainsFunc(out, func(o moment) bool { return w.within(m, o) }) {
			continue
		}
		out = slices.DeleteFunc(out, func(o moment) bool { return w.within(o, m) })
		out = append(out, m)
	}
	return out
}

// within says that whatever is locked at one moment is so at the other.
func (w *walk) within(a, b moment) bool {
	for _, p := range slices.Concat(a, b) {
		if w.AndNot(w.lockedAt(a, p.point), w.lockedAt(b, p.point)) != diagram.No {
			return false
		}
	}
	return true
}

// mostLocked is how many points stand locked at once, in the world with the
// most, by locks that were not there at the start.
func (w *walk) mostLocked() int {
	most := 0
	for _, m := range w.moments {
		var by []diagram.Func
		for _, p := range m {
			if f := w.AndNot(p.where, w.Is(w.start[p.point], lockedStates)); w.possible(f) {
				by = append(by, f)
			}
		}
		w.mostOf(by, w.all(), 0, &most)
	}
	return most
}

// mostOf raises most to how many of the functions hold in one world.
func (w *walk) mostOf(of []diagram.Func, world diagram.Func, n int, most *int) {
	if world == diagram.No || n+len(of) <= *most {
		return
	}
	if len(of) == 0 {
		*most = n
		return
	}
	w.mostOf(of[1:], w.And(world, of[0]), n+1, most)
	w.mostOf(of[1:], w.AndNot(world, of[0]), n, most)
}
