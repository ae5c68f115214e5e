package walk

import (
	"maps"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Try walks a procedure that stands in no manual: one of its procedures as it
// would be. Nothing of the result changes; several may be tried at once.
func (r *Result) Try(p *model.Procedure) *Walk {
	s := r.shared.placing(p)
	if performsItself(p) {
		return &Walk{Words: wordsOnly(p)}
	}
	if s.walkable(p) {
		c := called{p, s.layouts[p.For.To]}
		if slices.ContainsFunc(s.calls(c), func(q called) bool { return s.summaries[q] == nil }) {
			copied := *s
			copied.summaries = maps.Clone(s.summaries)
			s = &copied
			s.summarizeBelow(c)
		}
	}
	return s.walk(p)
}

// TryCallers walks callers of a procedure with another in its place, which is
// the same as it would be. Findings stand in the callers, by them in their order.
func (r *Result) TryCallers(of, instead *model.Procedure, callers []*model.Procedure) []finding.Finding {
	if performsItself(instead) {
		return nil
	}
	s := *r.shared.placing(instead)
	s.summaries, s.elsewhere = maps.Clone(s.summaries), nil
	for _, c := range callers {
		if !s.walkable(c) {
			continue
		}
		lay := s.layouts[c.For.To]
		s.summarizeBelow(called{instead, lay})
		s.summaries[called{of, lay}] = summarize(&s, instead, lay)
	}
	var found []finding.Finding
	for _, c := range callers {
		if s.walkable(c) {
			s.summarizeBelow(called{c, s.layouts[c.For.To]})
		}
		found = append(found, s.walk(c).Findings...)
	}
	return found
}

// performsItself says that a procedure is not walked: it performs one that is not, or,
// by whichever others, the one in whose place it is tried.
func performsItself(p *model.Procedure) bool {
	return inCycle([]*model.Procedure{p})[p] || performs(p, p.ID, map[*model.Procedure]bool{})
}

func performs(p *model.Procedure, id string, seen map[*model.Procedure]bool) bool {
	return slices.ContainsFunc(calleesOf(p), func(q *model.Procedure) bool {
		if seen[q] {
			return false
		}
		seen[q] = true
		return q.ID == id || performs(q, id, seen)
	})
}

// placing is the same with layouts that hold what a procedure puts in place or
// takes away: a tool that no other does has no place in them yet.
func (s *shared) placing(p *model.Procedure) *shared {
	if len(s.unplaced(p)) == 0 {
		return s
	}
	copied := *s
	copied.layouts, copied.summaries = maps.Clone(s.layouts), maps.Clone(s.summaries)
	copied.place(p)
	return &copied
}

// place puts into the layout of a procedure's machine what it lacks.
func (s *shared) place(p *model.Procedure) {
	missing := s.unplaced(p)
	if len(missing) == 0 {
		return
	}
	old := s.layouts[p.For.To]
	var tools []*model.Tool
	for _, x := range old.things {
		if t, is := x.named.(*model.Tool); is {
			tools = append(tools, t)
		}
	}
	s.layouts[p.For.To] = newLayout(p.For.To, append(tools, missing...))
	s.layouts[p.For.To].timings(s.manual.Shop)
}

// unplaced are the tools that a procedure puts in place or takes away and that
// its layout lacks.
func (s *shared) unplaced(p *model.Procedure) []*model.Tool {
	lay, have := s.layouts[p.For.To]
	if !have {
		return nil
	}
	var out []*model.Tool
	for _, t := range Placed(&model.Manual{Procedures: []*model.Procedure{p}, Tools: s.manual.Tools}) {
		if _, known := lay.of[t]; !known {
			out = append(out, t)
		}
	}
	return out
}

// Stand is where things stand once so many steps and sub-steps are done.
func (w *Walk) Stand(steps int) []Standing { return w.standing(steps) }

// Leaves says that a rule is about how things are left, and stands at the link
// that began it: the act itself is no fault.
func Leaves(r *finding.Rule) bool {
	for sort := anEnergy; sort <= anAsked; sort++ {
		for _, of := range leftRules(sort) {
			if of == r {
				return true
			}
		}
	}
	return r == &NotSupplied || r == &StateMismatch || r == &NotMarked || r == &NotCapped
}
