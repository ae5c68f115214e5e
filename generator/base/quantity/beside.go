package quantity

import (
	"math"
	"strings"
)

// tolerancePart is how much of a tolerance the rounding of a second unit may
// use up. With maxRounding it is the rule of this project; no source.
const tolerancePart = 0.1

// mostApart is how many times larger a second unit may be than the first: small
// amounts say little in a large unit, grams in pounds, millimetres in feet.
const mostApart = 100

// Suits reports whether an amount in a unit may be printed in another behind it.
func (u Unit) Suits(other Unit) bool {
	return u.converts(other) && (u.Dimension() == Temperature || other.entry().factor <= mostApart*u.entry().factor)
}

// Beside returns the amount as it is printed in another unit behind q: converted
// from q as q is printed, so that a reader who converts it finds the same, with
// no decimals that say nothing.
func (q Quantity) Beside(u Unit) Quantity { return q.besideWithin(u, math.Inf(1)) }

// besideWithin is Beside where the rounding may also move the amount by no more
// than so many of q's unit.
func (q Quantity) besideWithin(u Unit, most float64) Quantity {
	if q.fraction == "" && q.written == "" {
		q.Value = q.shown()
	}
	c := q.In(u)
	if c.Unit == q.Unit {
		return q
	}
	most *= q.Unit.entry().factor / u.entry().factor
	for math.Abs(c.shown()-c.Value) > most*(1+sameness) && c.Decimals < maxDigits {
		c.Decimals++
	}
	return c.trimmed()
}

// trimmed is a computed amount without the decimals that say nothing: 176.000 bar
// is 176 bar.
func (q Quantity) trimmed() Quantity {
	for q.Decimals > 0 && roundTo(q.shown(), q.Decimals-1) == q.shown() {
		q.Decimals--
	}
	q.Digits = max(1, leadingPlace(q.shown())+1+q.Decimals)
	return q
}

// Beside returns the limit as it is printed in another unit behind it: one
// number, both ends of a range, or a value with its tolerance; "" where it does
// not convert.
func (l Limit) Beside(u Unit) string {
	if l.IsZero() || u == l.Unit || !l.Unit.converts(u) {
		return ""
	}
	var numbers []string
	for _, n := range l.Numbers() {
		numbers = append(numbers, n.besideWithin(u, l.leeway()).Number())
	}
	text := strings.Join(numbers, "–")
	if l.Kind == PlusMinus {
		text += " ± " + l.toleranceIn(u)
	}
	return attach(text, u.Symbol(), l.Flow)
}

// leeway is how far rounding may move a number of the limit, in its unit: a
// tenth of its tolerance, or of half its range.
func (l Limit) leeway() float64 {
	if l.Kind != PlusMinus && l.Kind != Between {
		return math.Inf(1)
	}
	return tolerancePart * (l.High - l.Low) / 2
}

// toleranceIn is the tolerance's number in a unit. It is a difference: the zero
// point does not count.
func (l Limit) toleranceIn(u Unit) string {
	t := Of((l.High-l.Low)/2*l.Unit.entry().factor/u.entry().factor, u, 2)
	for t.tooCoarse() {
		t.Decimals++
	}
	return t.trimmed().Number()
}
