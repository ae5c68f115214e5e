package page

import (
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
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
	text := q.String()
	for _, u := range s.others(q.Unit) {
		text += " (" + q.In(u).String() + ")"
	}
	return text
}

// bothLimit writes a limit with the shop's other units behind it: its numbers,
// or what a tolerance is around.
func (s *Site) bothLimit(l quantity.Limit) string {
	text := l.String()
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
func (s *Site) capacity(f *manual.Fluid) string {
	if f.Capacity.IsZero() {
		return ""
	}
	text := s.both(f.Capacity)
	if f.Supply.To == nil {
		return text
	}
	if stocked := f.Capacity.In(f.Supply.To.Stock()).String(); !strings.Contains(text, stocked) {
		text += " (" + stocked + ")"
	}
	return text
}
