package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// applies looks for steps and acts that are done on no unit.
func (w *walk) applies() {
	for _, ph := range w.p.Phases {
		lead := w.leadOf[ph]
		if !lead.unresolved && !w.possible(lead.Func) {
			w.neverAt(ph.Lead.Links, pathCondition{Func: diagram.Yes}, nil)
			continue
		}
		for _, s := range ph.Steps {
			w.stepApplies(s, lead)
		}
	}
}

func (w *walk) stepApplies(s *model.Step, above pathCondition) {
	g := w.guardOf[s]
	if g.unresolved {
		return
	}
	if !w.possible(g.Func) {
		w.neverAt(s.Links, above, s)
		return
	}
	for _, l := range s.Links {
		if l.Kind.Act != model.NoAct && !l.Bad && l.To != nil && !w.possible(w.And(g.Func, w.presentAt(l))) {
			w.never = append(w.never, l.At)
		}
	}
	for _, sub := range s.Subs {
		w.stepApplies(sub, g)
	}
}

// neverAt finds the condition that leaves no unit.
func (w *walk) neverAt(links []*model.Link, g pathCondition, s *model.Step) {
	for _, l := range links {
		if s == nil && !l.Is(model.LinkWhen) {
			continue
		}
		w.condition(&g, l, s)
		if !w.possible(g.Func) {
			w.never = append(w.never, l.At)
			return
		}
	}
}

// presentAt is where an act has something to act on; anywhere, for all that is
// known, where that could not be read.
func (w *walk) presentAt(l *model.Link) diagram.Func {
	switch n := l.To.(type) {
	case *model.Fastener:
		if w.anyUnread(w.named(n)) {
			return diagram.Yes
		}
		if l.Part() != nil {
			return w.And(w.option(n.OnlyWith), w.present(w.lay.of[l.Part()]))
		}
		return w.And(w.option(n.OnlyWith), w.anyPresent(n.Holds))
	case *model.Group:
		return w.anyPresent(n.Parts)
	case *model.Part, *model.Energy, *model.Point, *model.Fluid, *model.Setting:
		if x := w.lay.of[l.To]; !w.lay.things[x].unread && !w.lay.astray[l.To] {
			return w.present(x)
		}
	}
	return diagram.Yes
}

func (w *walk) anyUnread(list []thing) bool {
	return slices.ContainsFunc(list, func(x thing) bool { return w.lay.things[x].unread })
}

func (w *walk) anyPresent(parts []*model.Part) diagram.Func {
	f := diagram.No
	for _, p := range parts {
		f = w.Or(f, w.present(w.lay.of[p]))
	}
	if len(parts) == 0 {
		return diagram.Yes
	}
	return f
}
