package page

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// others are the shop's other units of an amount in a unit, in its order. A
// unit that differs from it in the prefix alone says nothing new, and one that
// is far larger says little.
func (s *Site) others(u quantity.Unit) []quantity.Unit {
	var out []quantity.Unit
	for _, shown := range s.Manual.Shop.ShowUnits {
		for _, other := range shown.Units {
			if shown.Dimension == u.Dimension() && !other.Like(u) && u.Suits(other) {
				out = append(out, other)
			}
		}
	}
	return out
}

// Written writes the amounts of a text as the page's language does: its marker,
// and its words for direct and alternating.
func (s *Site) Written(text string) string {
	w := &s.Speaks.Several
	for _, flow := range [...]struct{ typed, said string }{{quantity.DC.String(), w.Direct}, {quantity.AC.String(), w.Alternating}} {
		if flow.said != flow.typed {
			text = strings.ReplaceAll(text, " "+flow.typed, " "+flow.said)
		}
	}
	return s.Marker.Write(text)
}

// Both writes an amount with the shop's other units behind it.
func (s *Site) Both(q quantity.Quantity) string { return s.withOthers(s.exactly(q), q) }

// withOthers puts the shop's other units behind an amount that is written.
func (s *Site) withOthers(text string, q quantity.Quantity) string {
	for _, u := range s.others(q.Unit) {
		text += " (" + s.converted(s.exactly(q), q.Unit, s.Written(q.Beside(u).String()), u) + ")"
	}
	return text
}

// exactly writes an amount with the digits that were typed and the page's marker,
// with the word for one that is not measured out.
func (s *Site) exactly(q quantity.Quantity) string {
	text := s.Written(q.String())
	if unit := s.calendar(q); unit != "" {
		text = s.Written(q.Number() + " " + unit)
	}
	if q.About() {
		return s.Speaks.Several.About + " " + text
	}
	return text
}

// calendar is the word for a unit of the calendar, which has no symbol; "" for
// any other.
func (s *Site) calendar(q quantity.Quantity) string {
	w := &s.Speaks.Several
	one, many := "", ""
	switch q.Unit {
	case quantity.CalendarDay:
		one, many = w.Day, w.Days
	case quantity.Week, quantity.CalendarWeek:
		one, many = w.Week, w.Weeks
	case quantity.Month:
		one, many = w.Month, w.Months
	case quantity.Year:
		one, many = w.Year, w.Years
	default: // it has a symbol
	}
	if q.Value == 1 {
		return one
	}
	return many
}

// BothLimit writes a limit with the shop's other units behind it: its numbers,
// and a value with its tolerance.
func (s *Site) BothLimit(l quantity.Limit) string {
	text := s.Limit(l)
	for _, u := range s.others(l.Unit) {
		if other := l.Beside(u); other != "" {
			text += " (" + s.converted(s.Limit(l), l.Unit, s.Written(other), u) + ")"
		}
	}
	return text
}

// Limit writes a limit in the words of the page.
func (s *Site) Limit(l quantity.Limit) string {
	w := &s.Speaks.Several
	return s.Written(l.Worded(w.AtMost, w.AtLeast, w.To))
}

// Value is what a setting is set to: an amount with the page's marker, any other
// text as it was typed.
func (s *Site) Value(set *model.Setting) string {
	if _, err := quantity.ParseLimit(set.Value, quantity.None); err != nil {
		return s.Say(set, "value", set.Value)
	}
	return s.Written(set.Value)
}

// AmountWorked writes an amount of a supply that is worked out.
func (s *Site) AmountWorked(q quantity.Quantity, c Computed) string {
	if q.Unit.Dimension() == quantity.Count {
		return Worked(s.Written(q.Number()), c)
	}
	return s.withOthers(Worked(s.exactly(q), c), q)
}

// Amount writes an amount of a supply; of things that are counted only the
// number.
func (s *Site) Amount(q quantity.Quantity) string {
	if q.Unit.Dimension() == quantity.Count {
		return s.Written(q.Number())
	}
	return s.Both(q)
}

// Capacity is a fluid's, as the machine's file has it, with the unit in which
// the shop stocks the fluid and the shop's other units behind it.
func (s *Site) Capacity(f *model.Fluid) string {
	if f.Capacity.IsZero() {
		return ""
	}
	text, others := s.exactly(f.Capacity), s.others(f.Capacity.Unit)
	if f.Supply.To != nil {
		stock := f.Supply.To.Stock()
		others = append([]quantity.Unit{stock}, slices.DeleteFunc(s.others(stock), func(u quantity.Unit) bool { return u == stock })...)
	}
	for _, u := range others {
		if other := f.Capacity.Beside(u); other.Unit != f.Capacity.Unit {
			text += " (" + s.converted(s.exactly(f.Capacity), f.Capacity.Unit, s.Written(other.String()), u) + ")"
		}
	}
	return text
}
