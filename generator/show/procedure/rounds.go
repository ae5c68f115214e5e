package procedure

import (
	"slices"
	"strconv"

	"baybinder/generator/model"
)

// orderOf is the order that a step is repeated in, or nil.
func orderOf(st *model.Step) *model.Order {
	for _, l := range st.Links {
		if o, ok := l.To.(*model.Order); ok { // each: alone leads to one
			return o
		}
	}
	return nil
}

// entriesOf are the entries of an order where the step itself is what is
// repeated.
func (s *Pages) entriesOf(o *model.Order, st *model.Step) []string {
	if o == nil || len(st.Subs) > 0 {
		return nil
	}
	return s.entries(o)
}

// entries are the places of an order in the site's language.
func (s *Pages) entries(o *model.Order) []string { return s.SayAll(o, "labels", o.Labels) }

// rounds shows the sub-steps once for each entry of an order, in its order. A
// sub-step with between: is left out after the last. The first round has the
// sub-steps' own anchors, so that see: and the indexes lead to it.
func (s *Pages) rounds(up string, c *course, st *model.Step, o *model.Order) []Step {
	var out []Step
	for i, label := range s.entries(o) {
		for _, sub := range st.Subs {
			if i == len(o.Labels)-1 && isBetween(sub) {
				continue
			}
			v := s.step(up, c, sub)
			v.Round = label
			if i > 0 {
				v.inRound(i + 1)
			}
			out = append(out, *v)
		}
	}
	return out
}

func isBetween(st *model.Step) bool {
	return slices.ContainsFunc(st.Links, func(l *model.Link) bool { return l.Is(model.LinkBetween) })
}

// inRound gives a step of a later round anchors of its own.
func (v *Step) inRound(n int) {
	v.Anchor += "-round-" + strconv.Itoa(n)
	for i := range v.Derived {
		v.Derived[i].Anchor += "-round-" + strconv.Itoa(n)
	}
	for i := range v.Subs {
		v.Subs[i].inRound(n)
	}
}
