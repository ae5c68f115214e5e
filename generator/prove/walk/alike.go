package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// NotMarked is told where the first of some that look alike is opened.
var NotMarked = rule{
	Code:  "not-marked",
	Title: "Parts that look alike, opened without a mark",
	Why:   "Swapped lines run the machine backwards.",
	Mend:  "Write mark: with the group before the first of them is opened.",
}

// opening is a part of a look-alike group that was opened.
type opening struct {
	group    thing
	part     thing
	where    diagram.Func
	first    diagram.Func // where it is the first of its link
	unmarked diagram.Func // where the group was not marked then
	at       event
	call     int // the call in which it was opened; 0 is the procedure itself
}

// unmarked notes that a part of a group is opened.
func (w *walk) unmarked(group *model.Group, p *model.Part, g diagram.Func) {
	x := w.lay.of[group]
	w.openAlike([]opening{{
		group: x, part: w.lay.of[p], where: g, first: g, unmarked: w.Is(w.get(x), states(idle)), at: w.here,
	}})
}

// openAlike looks whether what one link opens is the second of its group after
// a first that was not marked.
func (w *walk) openAlike(now []opening) {
	for _, o := range now {
		w.second(o)
	}
	for _, o := range now {
		first := w.firsts[o.group]
		w.openings = append(w.openings, o)
		n := diagram.Func(len(w.openings))
		w.firsts[o.group] = w.Ite(w.And(o.first, w.Equals(first, diagram.No)), n, first)
	}
}

func (w *walk) second(o opening) {
	for i, a := range w.openings {
		if a.group != o.group || a.part == o.part || a.call != 0 && a.call == o.call {
			continue
		}
		where := w.And(o.where, w.And(a.unmarked, w.Equals(w.firsts[o.group], diagram.Func(i+1))))
		if where != diagram.No {
			w.at(a.at, func() { w.findOnce(&NotMarked, o.group, where, "") })
		}
	}
}

// openedInAll is what of its look-alike groups a procedure opens, one opening a
// part.
func (w *walk) openedInAll() []opening {
	var out []opening
	of := map[thing]int{}
	for i, o := range w.openings {
		n, opened := of[o.part]
		if !opened {
			n = len(out)
			of[o.part] = n
			out = append(out, opening{group: o.group, part: o.part})
		}
		first := w.Equals(w.firsts[o.group], diagram.Func(i+1))
		out[n].where = w.Or(out[n].where, o.where)
		out[n].first = w.Or(out[n].first, first)
		out[n].unmarked = w.Ite(first, o.unmarked, out[n].unmarked)
	}
	for i := range out {
		o := &out[i]
		if w.inner(o.where) > fewInside || w.inner(o.first) > fewInside || w.inner(o.unmarked) > fewInside {
			o.where, o.first, o.unmarked = w.somehow(o.where), w.somehow(o.first), w.somehow(o.unmarked)
		}
	}
	return out
}

// at tells what is found at another link than the one under way.
func (w *walk) at(e event, tell func()) {
	here := w.here
	w.here = e
	tell()
	w.here = here
}
