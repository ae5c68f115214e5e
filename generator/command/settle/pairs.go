package settle

import (
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/source"
)

// state is how things stand between the two procedures of a pair, to be written
// into the front matter of one of them.
type state struct {
	of    *model.Procedure
	field string // leaves, or expects
	lines []string
}

// pairs finds procedures of which one only switches off, says nothing of what it
// leaves, and has another for the same machine that only brings back all that it
// leaves: what the walk finds between them is what the one leaves and the other
// expects. Of an energy the other expects how its points stand: a job in between
// may have let it out or proved it dead, and is brought back all the same.
func pairs(m *model.Manual) []state {
	var out []state
	walks := walk.All(m)
	for _, p := range m.Procedures {
		left := leftBy(walks, p)
		if len(left) == 0 {
			continue
		}
		backs := slices.DeleteFunc(slices.Clone(m.Procedures), func(q *model.Procedure) bool { return !bringsBack(q, p, left) })
		if len(backs) == 0 {
			continue
		}
		var lines []string
		for _, s := range left {
			lines = append(lines, s.Thing.Base().ID+": "+s.Word)
		}
		out = append(out, state{p, "leaves", lines})
		for _, q := range backs {
			if len(q.Expects) == 0 && !q.Lost("expects") && !slices.ContainsFunc(out, func(s state) bool { return s.of == q }) {
				out = append(out, state{q, "expects", expected(left)})
			}
		}
	}
	return out
}

// expected are the lines of expects for what a procedure leaves.
func expected(left []walk.Standing) []string {
	var out []string
	for _, s := range offers.Expected(left) {
		out = append(out, s.Line())
	}
	return out
}

// leftBy is how a procedure that only switches off leaves things: nothing where
// it does more, says it itself, or leaves them otherwise on some units.
func leftBy(walks *walk.Result, p *model.Procedure) []walk.Standing {
	if !pairable(p) || !doesAny(p, model.Isolate) || doesAny(p, model.Restore, model.TestLive, model.Remove, model.Renew) || len(p.Leaves) > 0 || p.Lost("leaves") || !walks.Of(p).Done {
		return nil
	}
	left := slices.DeleteFunc(walks.Stand(p, nil), func(s walk.Standing) bool {
		_, point := s.Thing.(*model.Point)
		return point || s.Word == "live" // an energy's word says how its points stand
	})
	for _, s := range left {
		_, energy := s.Thing.(*model.Energy)
		if s.When != "" || !energy && s.Word != "placed" {
			return nil
		}
	}
	return left
}

func pairable(p *model.Procedure) bool {
	return !p.Broken && !p.Misread && p.Status != "retired" && p.For.To != nil && len(p.Calls) == 0 && len(p.Expects) == 0
}

func doesAny(p *model.Procedure, acts ...model.Act) bool {
	return slices.ContainsFunc(p.Steps, func(s *model.Step) bool {
		return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return !l.Bad && slices.Contains(acts, l.Kind.Act) })
	})
}

// bringsBack says that a procedure only brings back what another leaves, all
// of it.
func bringsBack(q, p *model.Procedure, left []walk.Standing) bool {
	if q == p || q.For.To != p.For.To || !pairable(q) || doesAny(q, model.Isolate, model.Remove, model.Renew) || q.Draft() != p.Draft() {
		return false
	}
	for _, s := range left {
		if e, is := s.Thing.(*model.Energy); is && !restores(q, e) {
			return false
		}
		if t, is := s.Thing.(*model.Tool); is && !clears(q, t) {
			return false
		}
	}
	return len(left) > 0
}

func clears(q *model.Procedure, t *model.Tool) bool {
	return slices.ContainsFunc(q.Steps, func(s *model.Step) bool {
		return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Kind.Act == model.Clear && l.To == model.Named(t) })
	})
}

// restores says that a procedure brings an energy back, by its name or by each
// of its points.
func restores(q *model.Procedure, e *model.Energy) bool {
	back := map[model.Named]bool{}
	for _, s := range q.Steps {
		for _, l := range s.Links {
			if l.Kind.Act == model.Restore && l.To != nil {
				back[l.To] = true
				if other, is := l.To.(*model.Energy); is {
					for _, p := range other.Points {
						back[p.To] = true
					}
				}
			}
		}
	}
	if back[e] {
		return true
	}
	return len(e.Points) > 0 && !slices.ContainsFunc(e.Points, func(p model.Ref[model.Point]) bool { return p.To == nil || !back[p.To] })
}

// piece writes the state into a front matter that says nothing of it yet.
func (s state) piece() (patch.Piece, bool) {
	return edit.PutMap(s.of.File, s.field, s.lines)
}

// paired gives the tree with the states of the pairs in it, as far as no error
// comes of one.
func (a *actor) paired(tree *source.Tree, m *model.Manual) (*source.Tree, []state) {
	var done []state
	a.tree, a.accepted = tree, nil
	_, a.errors = a.try(nil)
	byFirst := map[string][]state{}
	var order []string
	list := pairs(m)
	for _, s := range list {
		key := strings.Join(s.lines, " ") + s.of.For.ID
		if byFirst[key] == nil {
			order = append(order, key)
		}
		byFirst[key] = append(byFirst[key], s)
	}
	for _, key := range order {
		byPath := map[string][]patch.Piece{}
		for _, s := range byFirst[key] {
			if piece, ok := s.piece(); ok {
				byPath[s.of.File.Path] = append(byPath[s.of.File.Path], piece)
			}
		}
		was := a.tree
		a.tree = patched(was, byPath)
		grown, errors := a.try(nil)
		if grown || len(byPath) == 0 {
			a.tree = was
			continue
		}
		a.errors = errors
		done = append(done, byFirst[key]...)
	}
	return a.tree, done
}
