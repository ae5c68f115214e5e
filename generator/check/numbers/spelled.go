package numbers

import (
	"cmp"
	"math"
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
	if more := oneAndParts(&spoken.Numbers, text, out); more != nil {
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
	if part, size := n.PlusBehind(text, f.End); size > 0 {
		end := f.End + size
		f, _ = amountAt(c.Value+part, text, c.End) // the unit is still there
		f.End = end
	}
	f.Start = c.Start
	return f, true
}

// amountAt is the amount of a number and the unit that stands at a place in a text.
func amountAt(value float64, text string, at int) (quantity.Found, bool) {
	number := strconv.FormatFloat(math.Round(value*100)/100, 'f', -1, 64) // a third is 0.33
	found := quantity.Find(number + text[at:min(at+longestUnit, len(text))])
	if len(found) == 0 || found[0].Start > 0 {
		return quantity.Found{}, false
	}
	return quantity.Found{Quantity: found[0].Quantity, Start: at, End: at + found[0].End - len(number)}, true
}

// oneAndParts are the amounts of one and a part of it that have no number: "an hour
// and a half", "hora y cuarto". Those that have one are known, or in figures.
func oneAndParts(n *shape.Numbers, text string, known []quantity.Found) []quantity.Found {
	var out []quantity.Found
	for at := range text {
		part, size := n.PlusBehind(text, at)
		if size == 0 || slices.ContainsFunc(known, func(k quantity.Found) bool { return k.Start < at && at < k.End }) {
			continue
		}
		before, unit := cutLastWord(text[:at])
		f, is := amountAt(1+part, " "+unit, 0)
		rest, last := cutLastWord(before)
		if !is || f.End != len(" "+unit) || hasFigure(last) {
			continue
		}
		f.Start, f.End = len(before), at+size
		if n.One[strings.ToLower(strings.TrimSpace(last))] {
			f.Start = len(rest)
		}
		out = append(out, f)
	}
	return out
}

// cutLastWord parts a text before its last word, which keeps the space behind it.
func cutLastWord(text string) (before, last string) {
	at := strings.LastIndexByte(strings.TrimRight(text, " "), ' ') + 1
	return text[:at], text[at:]
}

// hasNumber says that a text of the procedure has a figure, or an amount whose number
// is written out.
func (j *job) hasNumber(text string) bool {
	return hasFigure(text) || len(Spelled(text, j.language())) > 0
}
