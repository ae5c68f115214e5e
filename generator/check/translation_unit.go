package check

import (
	"maps"
	"math"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/check/numbers"
)

// inAnotherUnit is the first amount whose number stands on both sides with another
// unit: "4 h" and "4 min". Of a number that has a unit on one side alone, or more
// of them there, nothing is said: a language may write a unit out in words.
func inAnotherUnit(wanted, had map[float64][]quantity.Quantity) (want, have string) {
	for _, number := range slices.Sorted(maps.Keys(wanted)) {
		a, b := wanted[number], had[number]
		if len(a) != len(b) {
			continue
		}
		for _, q := range a {
			if !slices.ContainsFunc(b, func(o quantity.Quantity) bool { return sameAmount(q, o) }) {
				i := slices.IndexFunc(b, func(o quantity.Quantity) bool {
					return !slices.ContainsFunc(a, func(q quantity.Quantity) bool { return sameAmount(q, o) })
				})
				return q.String(), b[max(0, i)].String()
			}
		}
	}
	return "", ""
}

// byNumber are the amounts of texts in a language by their numbers, in figures or
// written out.
func byNumber(tag string, texts []string) map[float64][]quantity.Quantity {
	out := map[float64][]quantity.Quantity{}
	for _, text := range texts {
		for _, q := range append(quantity.Find(text), numbers.Spelled(text, tag)...) {
			out[q.Value] = append(out[q.Value], q.Quantity)
		}
	}
	return out
}

// sameAmount says that two amounts are one, whatever their units are called. Where
// one of them does not say ac or dc it is as the other.
func sameAmount(a, b quantity.Quantity) bool {
	flows := a.Flow == b.Flow || a.Flow == quantity.Unsaid || b.Flow == quantity.Unsaid
	return flows && a.Fits(b.Unit.Dimension()) && math.Abs(a.Base()-b.Base()) <= 1e-9*math.Abs(a.Base())
}
