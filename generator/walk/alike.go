package walk

import "baybinder/generator/manual"

// opening is a part of a look-alike group that was opened.
type opening struct {
	group    thing
	part     thing
	where    fn
	unmarked fn // where the group was not marked then
	at       event
	call     int // the call in which it was opened; 0 is the procedure itself
}

// unmarked notes that a part of a group is opened.
func (w *walk) unmarked(group *manual.Group, p *manual.Part, g fn) {
	x := w.lay.of[group]
	w.openAlike(opening{
		group: x, part: w.lay.of[p], where: g,
		unmarked: w.and(g, w.is(w.get(x), states(idle))), at: w.here,
	})
}

// openAlike looks whether the opening is the second of its group, and the first
// was not marked.
func (w *walk) openAlike(o opening) {
	if o.where == no {
		return
	}
	first := w.firsts[o.group]
	for i, a := range w.openings {
		if a.group != o.group || a.part == o.part || a.call != 0 && a.call == o.call {
			continue
		}
		where := w.and(o.where, w.and(a.unmarked, w.equals(first, fn(i+1))))
		if where != no {
			w.at(a.at, func() { w.findOnce(&NotMarked, o.group, where) })
		}
	}
	w.openings = append(w.openings, o)
	n := fn(len(w.openings))
	w.firsts[o.group] = w.ite(w.and(o.where, w.equals(first, no)), n, first)
}

// equals says yes where a function is one constant.
func (t *table) equals(f, constant fn) fn {
	return t.apply(f, func(f fn) fn {
		if f == constant {
			return yes
		}
		return no
	})
}

// at tells what is found at another link than the one under way.
func (w *walk) at(e event, tell func()) {
	here := w.here
	w.here = e
	tell()
	w.here = here
}
