package numbers

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// longestUnit is more than any unit takes, with its space.
const longestUnit = 40

// Spelled are the amounts of a text whose number is written out in a language, in
// order: "three minutes", "cuarenta y cinco N·m", "a minute and a half".
func Spelled(text, tag string) []quantity.Found {
	spoken := language.Known(tag)
	if spoken == nil {
		return nil
	}
	var out []quantity.Found
	for _, c := range spoken.Numbers.Counted(text) {
		if f, is := spelledAmount(&spoken.Numbers, text, c); is {
			out = append(out, f)
		}
	}
	if more := andHalves(&spoken.Numbers, text, out); more != nil {
		out = append(out, more...)
		slices.SortFunc(out, func(a, b quantity.Found) int { return cmp.Compare(a.Start, b.Start) })
	}
	return out
}

// spelledAmount is the amount of a number that is written out, where a unit stands
// behind it, and behind that perhaps a half: "dos minutos y medio".
func spelledAmount(n *shape.Numbers, text string, c shape.Counted) (quantity.Found, bool) {
	f, is := amountAt(c.Value, text, c.End)
	if !is {
		return f, false
	}
	if half := n.HalfBehind(text, f.End); half > 0 {
		end := f.End + half
		f, _ = amountAt(c.Value+0.5, text, c.End) // the unit is still there
		f.End = end
	}
	f.Start = c.Start
	return f, true
}

// amountAt is the amount of a number and the unit that stands at a place in a text.
func amountAt(value float64, text string, at int) (quantity.Found, bool) {
	number := strconv.FormatFloat(value, 'f', -1, 64)
	found := quantity.Find(number + text[at:min(at+longestUnit, len(text))])
	if len(found) == 0 || found[0].Start > 0 {
		return quantity.Found{}, false
	}
	return quantity.Found{Quantity: found[0].Quantity, Start: at, End: at + found[0].End - len(number)}, true
}

// andHalves are the amounts of one and a half that have no number: "an hour and a
// half", "hora y media". Those that have one are known.
func andHalves(n *shape.Numbers, text string, known []quantity.Found) []quantity.Found {
	var out []quantity.Found
	for at := range text {
		if text[at] != ' ' || n.HalfBehind(text, at) == 0 {
			continue
		}
		start := strings.LastIndexByte(text[:at], ' ') + 1
		f, is := amountAt(1.5, " "+text[start:], 0)
		if !is || f.End != at-start+1 || slices.ContainsFunc(known, func(k quantity.Found) bool { return k.Start < at && at <= k.End }) {
			continue
		}
		f.Start, f.End = start, at+n.HalfBehind(text, at)
		before := strings.Fields(text[:start])
		if len(before) > 0 && n.One[strings.ToLower(before[len(before)-1])] {
			f.Start = strings.LastIndex(text[:start], before[len(before)-1])
		} else if len(before) > 0 && hasFigure(before[len(before)-1]) {
			continue // "2 horas y media"
		}
		out = append(out, f)
	}
	return out
}

// hasNumber says that a text of the procedure has a figure, or an amount whose number
// is written out.
func (j *job) hasNumber(text string) bool {
	return hasFigure(text) || len(Spelled(text, j.language())) > 0
}
