package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// loosening undoes a fastener.
type loosening struct{ onFastener }

func (loosening) does(w *walk, l *model.Link, g diagram.Func) {
	f := l.To.(*model.Fastener)
	if len(f.Holds) == 0 {
		x := w.lay.of[f]
		g = w.And(g, w.present(x))
		tightHere := w.And(g, w.Is(w.get(x), states(tight)))
		w.undone(undoing{thing: x, where: tightHere})
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
		w.undone(undoing{thing: x, where: here})
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
