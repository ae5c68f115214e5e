package schedule

import (
	"slices"

	"baybinder/generator/model"
)

// Move is a step that the writer could put below a step with a wait, as a
// sub-step: at the bay it is done while the clock runs. It is a thought for the
// writer; nobody has looked at the machine.
type Move struct {
	Step, Wait *model.Step
	Hold       *model.Hold
	Gain       int // seconds
}

// Moves are the steps at the top that could go on during an earlier wait. A wait
// must say what it is of, or nobody knows what it is waited for. A step that
// moves has a time and an act, applies to the same units and outcomes as the
// wait, brings no energy back, calls nothing, and shares nothing with the wait
// or with a step that it would pass. It passes no step of words only, and no
// hold but the measuring of something else. While an energy is waited for, hands
// stay out: nothing is taken off, put back, loosened, tightened, drained, filled
// or set.
func (b *Cache) Moves(p *model.Procedure) []Move {
	var steps []*model.Step
	for _, phase := range p.Phases {
		steps = append(steps, phase.Steps...)
	}
	var out []Move
	var moved []*model.Step
	m := everything(b).line(p)
	for i, wait := range steps {
		hold := onlyWait(wait)
		if hold == nil || len(wait.Subs) > 0 || reversed(wait) {
			continue
		}
		passed, left := m.whole(wait), int(hold.For.Least.Base())
		for _, s := range steps[i+1:] {
			if slices.Contains(moved, s) {
				continue
			}
			t, seconds := m.whole(s), m.seconds(s)
			if left > 0 && seconds > 0 && !reversed(s) && sameCase(s, wait) && idle(p, hold, t) && !wordsOnly(s) && !t.clash(passed) {
				out, moved = append(out, Move{s, wait, hold, min(seconds, left)}), append(moved, s)
				left -= min(seconds, left)
				continue
			}
			if passed.add(t); passed.all || wordsOnly(s) {
				break
			}
		}
	}
	return out
}

// onlyWait is the wait of a step that takes one and does nothing else.
func onlyWait(s *model.Step) *model.Hold {
	var hold *model.Hold
	for _, l := range s.Links {
		switch {
		case waitOf(l) != nil && hold == nil:
			hold = waitOf(l)
		case l.Is(model.LinkHold) || l.Kind.Act != model.NoAct:
			return nil
		}
	}
	return hold
}

// wordsOnly says that nobody knows what a step, or one of its sub-steps, touches.
func wordsOnly(s *model.Step) bool {
	typed := func(l *model.Link) bool { return l.Kind.Act != model.NoAct || l.Kind.Stops }
	return len(s.Subs) == 0 && !slices.ContainsFunc(s.Links, typed) || slices.ContainsFunc(s.Subs, wordsOnly)
}

// sidesteps says that a step's sub-steps go on during its wait: they take no
// wait and no procedure, stop for nothing, and have nothing to do with what is
// waited for.
func (v *view) sidesteps(s *model.Step) bool {
	waits := 0
	for _, l := range s.Links {
		if l.Kind.Act == model.Call {
			return false
		}
		hold := waitOf(l)
		if hold == nil {
			continue
		}
		waits++
		for _, sub := range s.Subs {
			if t := v.whole(sub); v.done(sub) && !idle(s.Of, hold, t) {
				return false
			}
		}
	}
	return waits == 1
}

// idle says that what is touched has nothing to do with what is waited for.
func idle(p *model.Procedure, wait *model.Hold, t *touches) bool {
	if t.all || t.calls {
		return false
	}
	for _, n := range t.things {
		if h, is := n.Named.(*model.Hold); is && h.Kind == "wait" {
			return false
		}
	}
	of := newTouches()
	switch n := p.For.To.Find(wait.Of.ID).(type) {
	case nil:
		return true
	case *model.Energy:
		of.change(n)
		return !t.hands && !t.clash(of)
	default:
		of.change(n)
		return !t.clash(of)
	}
}

// reversed says that a reverse: link names the phase of a step: what it brings
// back, and in which order, hangs on the order in that phase.
func reversed(s *model.Step) bool {
	return slices.ContainsFunc(s.Of.Steps, func(other *model.Step) bool {
		return slices.ContainsFunc(other.Links, func(l *model.Link) bool { return l.Kind.Act == model.Reverse && l.Phase() == s.Phase })
	})
}

// sameCase says that two steps apply to the same units and outcomes.
func sameCase(a, b *model.Step) bool {
	return slices.Equal(conditions(a), conditions(b))
}

func conditions(s *model.Step) []string {
	links := s.Links
	if s.Phase.Lead != nil {
		links = slices.Concat(links, s.Phase.Lead.Links)
	}
	var out []string
	for _, l := range links {
		if l.Kind.Conditional {
			out = append(out, l.Address)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// seconds is how long a step takes with its sub-steps.
func (m *line) seconds(s *model.Step) int {
	seconds := m.own(s)
	for _, sub := range s.Subs {
		seconds += m.seconds(sub)
	}
	return seconds
}

// Free says that two steps of a phase, with their sub-steps, may be done in
// either order as far as is typed: they touch nothing in common that either of
// them changes, and no refit follows from their order.
func (b *Cache) Free(x, y *model.Step) bool {
	all := everything(b)
	return !reversed(x) && !all.whole(x).clash(all.whole(y))
}
