package procedure

import (
	"fmt"
	"slices"

	"baybinder/generator/model"
)

// keptPlugs says of each plug that a step takes out, and that takes no padlock,
// what makes it a lock: whoever works alone keeps it.
func (s *Pages) keptPlugs(st *model.Step) []string {
	w := s.Speaks.Several
	say := w.KeptAlone
	if st.Of.People > 1 {
		say = w.KeptByNobody
	}
	var out []string
	for _, l := range st.Links {
		if l.Kind.Act != model.Isolate || l.Bad {
			continue
		}
		for _, p := range pointsOf(l.To) {
			if text := fmt.Sprintf(say, s.Name(p)); p.Kept && !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}

// pointsOf are the points that an act on an energy or a point moves.
func pointsOf(n model.Named) []*model.Point {
	switch n := n.(type) {
	case *model.Point:
		return []*model.Point{n}
	case *model.Energy:
		var out []*model.Point
		for _, p := range n.Points {
			if p.To != nil {
				out = append(out, p.To)
			}
		}
		return out
	}
	return nil
}

// testedAltered names the settings that an energy needs and that are altered
// while it is on for a test.
func (s *Pages) testedAltered(st *model.Step) []string {
	var out []string
	for _, l := range st.Links {
		e, is := l.To.(*model.Energy)
		if !is || l.Bad || l.Kind.Act != model.TestLive {
			continue
		}
		for _, set := range s.alteredIn(st) {
			needed := slices.ContainsFunc(set.NeededBy, func(r model.Ref[model.Energy]) bool { return r.To == e })
			if text := fmt.Sprintf(s.Speaks.Several.TestedAltered, s.Name(set)); needed && !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}

// alteredIn are the settings that are altered after a step, or altered by it.
func (s *Pages) alteredIn(st *model.Step) []*model.Setting {
	var out []*model.Setting
	for _, still := range s.Walks.Stand(st.Of, st) {
		if set, is := still.Thing.(*model.Setting); is {
			out = append(out, set)
		}
	}
	for _, l := range st.Links {
		if set, is := l.To.(*model.Setting); is && l.Kind.Act == model.Alter && !l.Bad {
			out = append(out, set)
		}
	}
	return out
}
