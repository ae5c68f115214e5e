package walk

import "baybinder/generator/model"

// applies looks for steps and acts that are done on no unit.
func (w *walk) applies() {
	for _, ph := range w.p.Phases {
		lead := w.leadOf[ph]
		if !lead.murky && !w.possible(lead.fn) {
			w.neverAt(ph.Lead.Links, guard{fn: yes}, nil)
			continue
		}
		for _, s := range ph.Steps {
			w.stepApplies(s, lead)
		}
	}
}

func (w *walk) stepApplies(s *model.Step, above guard) {
	g := w.guardOf[s]
	if g.murky {
		return
	}
	if !w.possible(g.fn) {
		w.neverAt(s.Links, above, s)
		return
	}
	for _, l := range s.Links {
		if l.Kind.Act != model.NoAct && !l.Bad && l.To != nil && !w.possible(w.and(g.fn, w.presentAt(l))) {
			w.never = append(w.never, l.At)
		}
	}
	for _, sub := range s.Subs {
		w.stepApplies(sub, g)
	}
}

// neverAt finds the condition that leaves no unit.
func (w *walk) neverAt(links []*model.Link, g guard, s *model.Step) {
	for _, l := range links {
		if s == nil && !l.Is("when") {
			continue
		}
		w.condition(&g, l, s)
		if !w.possible(g.fn) {
			w.never = append(w.never, l.At)
			return
		}
	}
}

// presentAt is where an act has something to act on.
func (w *walk) presentAt(l *model.Link) fn {
	switch n := l.To.(type) {
	case *model.Fastener:
		if l.Part != nil {
			return w.and(w.option(n.OnlyWith), w.present(w.lay.of[l.Part]))
		}
		return w.and(w.option(n.OnlyWith), w.anyPresent(n.Holds))
	case *model.Group:
		return w.anyPresent(n.Parts)
	case *model.Part, *model.Energy, *model.Point, *model.Fluid, *model.Setting:
		return w.present(w.lay.of[l.To])
	}
	return yes
}

func (w *walk) anyPresent(parts []*model.Part) fn {
	f := no
	for _, p := range parts {
		f = w.or(f, w.present(w.lay.of[p]))
	}
	if len(parts) == 0 {
		return yes
	}
	return f
}
