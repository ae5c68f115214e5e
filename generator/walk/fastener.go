package walk

import (
	"slices"

	"baybinder/generator/manual"
)

// scope is where a fastener act works: the fastening named, those of the parts
// that the step takes off or puts back, else all.
func (w *walk) scope(l *manual.Link, f *manual.Fastener) (parts []*manual.Part, all bool) {
	if l.Part != nil {
		return []*manual.Part{l.Part}, false
	}
	for _, other := range w.here.step.Links {
		p, is := other.To.(*manual.Part)
		if is && !other.Bad && takesOffOrOn(other.Kind.Act) && w.fastens(f, p) && !contains(parts, p) {
			parts = append(parts, p)
		}
	}
	if len(parts) > 0 {
		return parts, false
	}
	return f.Holds, true
}

func contains(parts []*manual.Part, p *manual.Part) bool {
	for _, q := range parts {
		if q == p {
			return true
		}
	}
	return false
}

func takesOffOrOn(a manual.Act) bool {
	return a == manual.Remove || a == manual.Refit || a == manual.Renew
}

func (w *walk) fastens(f *manual.Fastener, p *manual.Part) bool {
	_, there := w.lay.at[fastening{f, p}]
	return there
}

func (w *walk) loosen(l *manual.Link, f *manual.Fastener, g fn) {
	if len(f.Holds) == 0 {
		x := w.lay.of[f]
		w.undone(undoing{verb: manual.Tighten, thing: x, where: w.and(g, w.is(w.get(x), states(tight)))})
		w.put(x, g, loose)
		return
	}
	parts, _ := w.scope(l, f)
	for _, p := range parts {
		x, there := w.lay.at[fastening{f, p}]
		if !there {
			continue
		}
		part := w.lay.of[p]
		here := w.and(w.and(g, w.present(part)), w.is(w.get(part), states(on)))
		here = w.and(here, w.is(w.get(x), states(tight)))
		if !w.bleeding(p) {
			w.handsIn(p, here)
		}
		w.undone(undoing{verb: manual.Tighten, thing: x, where: here})
		w.put(x, here, loose)
	}
}

// bleeding says that the step, or one that it is a part of, bleeds the fluid
// that a part carries, and that a hazard of the energies at it is met.
func (w *walk) bleeding(p *manual.Part) bool {
	for s := w.here.step; s != nil; s = s.Parent {
		for _, l := range s.Links {
			if l.Kind.Act != manual.Bleed {
				continue
			}
			f, _ := l.To.(*manual.Fluid)
			if l.Bad || carries(p, f) && w.warned(p, s) {
				return true
			}
		}
	}
	return false
}

// carries says that a line carries a fluid, or that it is not known what it
// carries.
func carries(p *manual.Part, f *manual.Fluid) bool {
	if p.Carries.To == nil {
		return p.Carries.ID != ""
	}
	return p.Carries.To == f
}

// warned says that a hazard of every energy at the part is met in the step
// under way or in the one that bleeds.
func (w *walk) warned(p *manual.Part, bleeds *manual.Step) bool {
	for _, e := range leads(p.ProveDead) {
		if !w.hazardOf(w.here.step, e.ID) && !w.hazardOf(bleeds, e.ID) {
			return false
		}
	}
	return true
}

func (w *walk) tighten(l *manual.Link, f *manual.Fastener, g fn) {
	if len(f.Holds) == 0 {
		w.put(w.lay.of[f], g, tight)
		return
	}
	parts, all := w.scope(l, f)
	some := no
	for _, p := range parts {
		some = w.or(some, w.tightenAt(f, p, g))
	}
	for _, p := range parts {
		x, there := w.lay.at[fastening{f, p}]
		if !there {
			if slices.ContainsFunc(p.HeldBy, func(h manual.Use[manual.Fastener]) bool { return h.To == nil }) {
				continue
			}
			w.find(&ActOrder, w.lay.of[p], g, "tightened at a part that the "+f.Label()+" does not hold")
			continue
		}
		part := w.lay.of[p]
		early := w.and(w.and(g, w.present(part)), w.is(w.get(part), offStates))
		if all {
			early = w.andNot(early, some)
		}
		w.tightenedOff(x, p, early)
	}
}

// tightenAt tightens where the part is on, and says where that is.
func (w *walk) tightenAt(f *manual.Fastener, p *manual.Part, g fn) fn {
	x, there := w.lay.at[fastening{f, p}]
	if !there {
		return no
	}
	part := w.lay.of[p]
	here := w.and(w.and(g, w.present(part)), w.is(w.get(part), states(on, unknown)))
	w.put(x, here, tight)
	return here
}

// tooEarly is a fastener that was tightened while its part was off. It is told
// where the part goes on afterwards; where it never does, that is told instead.
type tooEarly struct {
	fastening thing
	part      *manual.Part
	where     fn
	at        event
}

// tightenedOff remembers it.
func (w *walk) tightenedOff(x thing, p *manual.Part, where fn) {
	if where != no {
		w.waiting = append(w.waiting, tooEarly{x, p, where, w.here})
	}
}

// tightenedEarly tells of fasteners that were tightened before their part was
// on.
func (w *walk) tightenedEarly(p *manual.Part, g fn) {
	for i := range w.waiting {
		t := &w.waiting[i]
		if t.part != p {
			continue
		}
		now := w.and(g, t.where)
		if now == no {
			continue
		}
		t.where = w.andNot(t.where, g)
		w.at(t.at, func() { w.find(&ActOrder, t.fastening, now, "tightened while its part is off") })
		w.put(t.fastening, now, tight)
	}
}
