package page

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// others are the shop's other units of an amount in a unit, in its order. A
// unit that differs from it in the prefix alone says nothing new.
func (s *Site) others(u quantity.Unit) []quantity.Unit {
	var out []quantity.Unit
	for _, shown := range s.Manual.Shop.ShowUnits {
		for _, other := range shown.Units {
			if shown.Dimension == u.Dimension() && !other.Like(u) {
				out = append(out, other)
			}
		}
	}
	return out
}

// both writes an amount with the shop's other units behind it.
func (s *Site) both(q quantity.Quantity) string {
	text := s.exactly(q)
	for _, u := range s.others(q.Unit) {
		text += " (" + q.In(u).String() + ")"
	}
	return text
}

// exactly writes an amount as it was typed, with the word for one that is not
// measured out.
func (s *Site) exactly(q quantity.Quantity) string {
	if q.About() {
		return s.speaks.Several.About + " " + q.String()
	}
	return q.String()
}

// bothLimit writes a limit with the shop's other units behind it: its numbers,
// or what a tolerance is around.
func (s *Site) bothLimit(l quantity.Limit) string {
	text := s.limit(l)
	for _, u := range s.others(l.Unit) {
		var numbers []string
		for _, n := range l.Numbers() {
			numbers = append(numbers, n.In(u).Number())
		}
		if len(numbers) > 0 {
			text += " (" + strings.Join(numbers, "–") + " " + u.Symbol() + ")"
		}
	}
	return text
}

// limit writes a limit in the words of the page.
func (s *Site) limit(l quantity.Limit) string {
	w := &s.speaks.Several
	return l.Worded(w.AtMost, w.AtLeast, w.To)
}

// amount writes an amount of a supply; of things that are counted only the
// number.
func (s *Site) amount(q quantity.Quantity) string {
	if q.Unit.Dimension() == quantity.Count {
		return q.Number()
	}
	return s.both(q)
}

// capacity is a fluid's, as the machine's file has it, with the unit in which
// the shop stocks the fluid and the shop's other units behind it.
func (s *Site) capacity(f *model.Fluid) string {
	if f.Capacity.IsZero() {
		return ""
	}
	text, others := s.exactly(f.Capacity), s.others(f.Capacity.Unit)
	if f.Supply.To != nil {
		stock := f.Supply.To.Stock()
		others = append([]quantity.Unit{stock}, slices.DeleteFunc(others, func(u quantity.Unit) bool { return u == stock })...)
	}
	for _, u := range others {
		if other := f.Capacity.In(u); other.Unit != f.Capacity.Unit {
			text += " (" + other.String() + ")"
		}
	}
	return text
}
