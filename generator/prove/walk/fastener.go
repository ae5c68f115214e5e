package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// scope is where a fastener act works: the fastening named, those of the parts
// that the step takes off or puts back, else all.
func (w *walk) scope(l *model.Link, f *model.Fastener) (parts []*model.Part, all bool) {
	if l.Part != nil {
		return []*model.Part{l.Part}, false
	}
	for _, other := range w.here.step.Links {
		p, is := other.To.(*model.Part)
		if is && !other.Bad && takesOffOrOn(other.Kind.Act) && w.fastens(f, p) && !contains(parts, p) {
			parts = append(parts, p)
		}
	}
	if len(parts) > 0 {
		return parts, false
	}
	return f.Holds, true
}

func contains(parts []*model.Part, p *model.Part) bool {
	for _, q := range parts {
		if q == p {
			return true
		}
	}
	return false
}

func takesOffOrOn(a model.Act) bool {
	return a == model.Remove || a == model.Refit || a == model.Renew
}

func (w *walk) fastens(f *model.Fastener, p *model.Part) bool {
	_, there := w.lay.at[fastening{f, p}]
	return there
}

func (w *walk) loosen(l *model.Link, f *model.Fastener, g diagram.Func) {
	if len(f.Holds) == 0 {
		x := w.lay.of[f]
		g = w.And(g, w.present(x))
		tightHere := w.And(g, w.Is(w.get(x), states(tight)))
		w.undone(undoing{verb: model.Tighten, thing: x, where: tightHere})
		w.put(x, g, loose)
		w.openedAnew(tightHere)
		w.screws = append(w.screws, x)
		return
	}
	parts, _ := w.scope(l, f)
	for _, p := range parts {
		x, there := w.lay.at[fastening{f, p}]
		if !there {
			continue
		}
		part := w.lay.of[p]
		here := w.And(w.And(g, w.present(x)), w.Is(w.get(part), states(on)))
		here = w.And(here, w.Is(w.get(x), states(tight)))
		if !w.bleeding(p) {
			w.handsIn(p, here)
		}
		w.undone(undoing{verb: model.Tighten, thing: x, where: here})
		w.put(x, here, loose)
		w.openedAnew(here)
	}
}

// bleeding says that the step, or one that it is a part of, bleeds the fluid
// that a part carries, and that a hazard of the energies at it is met.
func (w *walk) bleeding(p *model.Part) bool {
	for s := w.here.step; s != nil; s = s.Parent {
		for _, l := range s.Links {
			if l.Kind.Act != model.Bleed {
				continue
			}
			f, _ := l.To.(*model.Fluid)
			if l.Bad || carries(p, f) && w.warned(p, s) {
				return true
			}
		}
	}
	return false
}

// carries says that a line carries a fluid, or that it is not known what it
// carries.
func carries(p *model.Part, f *model.Fluid) bool {
	if p.Carries.To == nil {
		return p.Carries.ID != ""
	}
	return p.Carries.To == f
}

// warned says that a hazard of every energy at the part is met in the step
// under way or in the one that bleeds.
func (w *walk) warned(p *model.Part, bleeds *model.Step) bool {
	for _, e := range leads(p.Dead()) {
		if !w.hazardOf(w.here.step, e.ID) && !w.hazardOf(bleeds, e.ID) {
			return false
		}
	}
	return true
}

func (w *walk) tighten(l *model.Link, f *model.Fastener, g diagram.Func) {
	if len(f.Holds) == 0 {
		x := w.lay.of[f]
		w.put(x, w.And(g, w.present(x)), tight)
		return
	}
	parts, all := w.scope(l, f)
	some := diagram.No
	for _, p := range parts {
		some = w.Or(some, w.tightenAt(f, p, g))
	}
	for _, p := range parts {
		w.tightenedByHand(f, p, g)
	}
	for _, p := range parts {
		x, there := w.lay.at[fastening{f, p}]
		if !there {
			if slices.ContainsFunc(p.HeldBy, func(h model.Use[model.Fastener]) bool { return h.To == nil }) {
				continue
			}
			w.find(&ActOrder, w.lay.of[p], g, "tightened at a part that the %s does not hold", f.Label())
			continue
		}
		part := w.lay.of[p]
		early := w.And(w.And(g, w.present(x)), w.Is(w.get(part), offStates))
		if all {
			early = w.AndNot(early, some)
		}
		w.tightenedOff(x, p, early)
	}
}

// tightenAt tightens where the part is on, and says where that is.
func (w *walk) tightenAt(f *model.Fastener, p *model.Part, g diagram.Func) diagram.Func {
	x, there := w.lay.at[fastening{f, p}]
	if !there {
		return diagram.No
	}
	part := w.lay.of[p]
	here := w.And(w.And(g, w.present(x)), w.Is(w.get(part), states(on, unknown)))
	w.put(x, here, tight)
	return here
}

// tightenedByHand looks for what is loose under a part whose fasteners were
// begun by hand, now that they are tightened.
func (w *walk) tightenedByHand(f *model.Fastener, p *model.Part, g diagram.Func) {
	x, there := w.lay.at[fastening{f, p}]
	if !there || w.byHand[p] == diagram.No {
		return
	}
	here := w.And(w.And(g, w.present(x)), w.And(w.byHand[p], w.Is(w.get(w.lay.of[p]), states(on, unknown))))
	w.byHand[p] = w.AndNot(w.byHand[p], here)
	w.coveredLoose(p, w.And(here, w.Is(w.get(w.lay.of[p]), states(on))), nil, nil)
}

// tooEarly is a fastener that was tightened while its part was off. It is told
// where the part goes on afterwards; where it never does, that is told instead.
type tooEarly struct {
	fastening thing
	part      *model.Part
	where     diagram.Func
	at        event
}

// tightenedOff remembers it.
func (w *walk) tightenedOff(x thing, p *model.Part, where diagram.Func) {
	if where != diagram.No {
		w.waiting = append(w.waiting, tooEarly{x, p, where, w.here})
	}
}

// tightenedEarly tells of fasteners that were tightened before their part was
// on.
func (w *walk) tightenedEarly(p *model.Part, g diagram.Func) {
	for i := range w.waiting {
		t := &w.waiting[i]
		if t.part != p {
			continue
		}
		now := w.And(g, t.where)
		if now == diagram.No {
			continue
		}
		t.where = w.AndNot(t.where, g)
		w.at(t.at, func() { w.find(&ActOrder, t.fastening, now, "tightened while its part is off") })
		w.put(t.fastening, now, tight)
	}
}
