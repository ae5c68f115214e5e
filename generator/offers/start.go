package offers

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Start is how a procedure can find things, as another one has them.
type Start struct {
	Of     *model.Procedure
	At     *model.Step // that performs it, where it finds them so; nil: at the end of the other
	States []State
}

// State is a thing with how it stands, as a line of expects has it.
type State struct {
	Thing model.Named
	Word  string
}

// Line is the state as it is written: "main-switch: locked".
func (s State) Line() string { return s.Thing.Base().ID + ": " + s.Word }

// Starts are the ways in which a procedure can find its machine: first as it
// stands where it is performed, then as other procedures leave it. Each is said
// once.
func (b *Bench) Starts(p *model.Procedure) []Start {
	if p.Broken || p.For.To == nil {
		return nil
	}
	var out []Start
	add := func(q *model.Procedure, at *model.Step, stand []walk.Standing) {
		states := Expected(stand)
		same := func(s Start) bool { return slices.Equal(s.States, states) }
		if len(states) > 0 && !slices.ContainsFunc(out, same) {
			out = append(out, Start{q, at, states})
		}
	}
	others := slices.DeleteFunc(slices.Clone(b.Manual().Procedures), func(q *model.Procedure) bool {
		return q.ID == p.ID || q.For.To != p.For.To || q.Status == "retired" || !b.Walks.Of(q).Done
	})
	for _, q := range others {
		for i, s := range q.Steps {
			if slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Kind.Act == model.Call && l.To == model.Named(p) }) {
				add(q, s, b.Walks.Of(q).Stand(i))
			}
		}
	}
	for _, q := range others {
		if !performing(q, p.ID) {
			add(q, nil, b.Walks.Stand(q, nil))
		}
	}
	return out
}

// Expected are the lines of expects for how things stand. Of an energy they say
// how its points stand: a job in between may have let it out or proved it dead,
// and is brought back all the same. What stands so on some units only is left
// out.
func Expected(stand []walk.Standing) []State {
	var out []State
	add := func(n model.Named, word string) {
		if !slices.ContainsFunc(out, func(s State) bool { return s.Thing == n }) {
			out = append(out, State{n, word})
		}
	}
	stand = slices.DeleteFunc(slices.Clone(stand), func(s walk.Standing) bool { return s.When != "" || s.Word == "live" || isGroup(s.Thing) })
	for _, s := range stand {
		if _, point := s.Thing.(*model.Point); point {
			add(s.Thing, s.Word)
		}
	}
	for _, s := range stand {
		e, energy := s.Thing.(*model.Energy)
		switch {
		case s.Word == "capped":
			add(s.Thing, "off")
		case !energy || len(e.Points) == 0:
			add(s.Thing, s.Word)
		default:
			for _, p := range cutBy(e) {
				add(p, pointWord(p, s.Word))
			}
		}
	}
	return out
}

func isGroup(n model.Named) bool { _, is := n.(*model.Group); return is }

func cutBy(e *model.Energy) []*model.Point {
	var out []*model.Point
	for _, p := range e.Points {
		if p.To != nil {
			out = append(out, p.To)
		}
	}
	return out
}

// pointWord is how a point stands while an energy that it cuts stands so.
func pointWord(p *model.Point, energy string) string {
	if p.Padlocked() && energy != "isolated" {
		return "locked"
	}
	return "isolated"
}
