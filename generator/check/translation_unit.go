package check

import (
	"maps"
	"math"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/check/numbers"
)

// inLanguage are texts and their language.
type inLanguage struct {
	tag   string
	texts []string
}

// otherAmount is the first amount whose number stands on both sides, with another
// unit or as another bound; empty where there is none.
func otherAmount(original, here inLanguage) (want, have string) {
	if want, have = inAnotherUnit(original.byNumber(), here.byNumber()); want != "" {
		return want, have
	}
	return boundTurned(original.bounded(), here.bounded())
}

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

// boundTurned is the first amount that is at most on one side and at least on the
// other: "at least 2 L", "como máximo 2 L".
func boundTurned(original, here []numbers.Bounded) (want, have string) {
	for _, o := range original {
		same := func(h numbers.Bounded) bool { return sameAmount(o.Quantity, h.Quantity) }
		if slices.ContainsFunc(here, func(h numbers.Bounded) bool { return same(h) && h.Side == o.Side }) {
			continue
		}
		if i := slices.IndexFunc(here, same); i >= 0 {
			return o.Said, here[i].Said
		}
	}
	return "", ""
}

func (l inLanguage) bounded() []numbers.Bounded {
	var out []numbers.Bounded
	for _, text := range l.texts {
		out = append(out, numbers.BoundedIn(text, l.tag)...)
	}
	return out
}

// byNumber are the amounts of texts by their numbers, in figures or written out.
func (l inLanguage) byNumber() map[float64][]quantity.Quantity {
	out := map[float64][]quantity.Quantity{}
	for _, text := range l.texts {
		for _, q := range append(quantity.Find(text), numbers.Spelled(text, l.tag)...) {
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
