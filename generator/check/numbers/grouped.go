package numbers

import (
	"cmp"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
)

// amountIn is an amount in a text, with each way in which its number can be
// read. Where the sign between groups of three may be another ("1,500", "1.500"
// in a language with a decimal comma, "bolt 3 120 N·m"), any of them may be meant.
type amountIn struct {
	quantity.Found
	said  string // as a message says it
	other []quantity.Quantity

	width   *quantity.Quantity // how far it may be off, where that stands behind it
	nominal *quantity.Quantity // what may be so far off, of a tolerance
}

// amountsIn are the amounts of a text in a language, in order.
func amountsIn(text, tag string) []amountIn {
	parted := quantity.FindInThrees(text)
	var out []amountIn
	for _, f := range quantity.Find(text) {
		i := slices.IndexFunc(parted, func(p quantity.InThrees) bool { return f.End == p.End }) // the unit is one
		switch {
		case i < 0:
			out = append(out, amountIn{Found: f, said: f.String()})
		case f.Start != parted[i].Start: // "500,5 bar" of "1 500,5 bar"
		case language.Marker(tag) == quantity.Point:
			out = append(out, amountIn{Found: f, said: f.String()})
			parted = slices.Delete(parted, i, i+1)
		}
	}
	for _, p := range parted {
		out = append(out, amountIn{Found: p.Found, said: text[p.Start:p.End], other: p.Other})
	}
	for _, f := range Spelled(text, tag) {
		out = append(out, amountIn{Found: f, said: text[f.Start:f.End]})
	}
	slices.SortFunc(out, func(a, b amountIn) int { return cmp.Compare(a.Start, b.Start) })
	return withTolerances(out, text, tag)
}

// readAnyWay says whether an amount is right in one of the ways that it can be read.
func (a amountIn) readAnyWay(right func(quantity.Quantity) bool) bool {
	return right(a.Quantity) || slices.ContainsFunc(a.other, right)
}
