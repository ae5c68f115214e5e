package quantity

import "math"

// Base returns the amount in the base unit of its dimension: N·m, Pa, V, A, Ω,
// F, W, Hz, s, m, kg, m³, N, K, degrees for an angle, revolutions per second,
// m/s, and 1 for a percentage or a count. A calendar amount is in days, a year
// of 365.2425: good for putting amounts in order; for dates use Span.
func (q Quantity) Base() float64 {
	u := q.Unit.entry()
	if u.dimension == Calendar && q.written != "" {
		return q.span.meanDays()
	}
	return (q.Value + u.offset) * u.factor
}

// maxRounding is how far the printing of a converted amount may move it, as a
// part of its value. A torque is commonly given to 5 %, and the second unit
// may not use up more than a fifth of that: 110 N·m may be shown as 81 lbf·ft
// (0.2 % low), and 25 N·m may not be shown as 18 lbf·ft (2.4 % low).
const maxRounding = 0.01

// In returns the amount in another unit of its dimension. The Value is exact.
// It prints with as many digits as the typed number supports: the last place
// is the power of ten nearest to what the last typed place is worth in u, and
// one place finer as long as fewer than two significant digits would be shown
// or the rounding would move the amount by more than 1 %. So 110 N·m is
// 81 lbf·ft, 9 N·m is 6.6 lbf·ft and 210 bar is 3050 psi. Temperatures follow
// the nearest place alone, for their zero says nothing of their precision, and
// are never rounded to below absolute zero.
//
// A unit of another dimension leaves the amount as it is, and so do months
// where days are asked for, and days where months are.
func (q Quantity) In(u Unit) Quantity {
	if u == q.Unit || !q.Unit.converts(u) || q.span.mixed() {
		return q
	}
	c := Quantity{Value: q.valueIn(u), Unit: u, Flow: q.Flow, span: q.span}
	c.Decimals = q.Decimals - nearestPower(q.Unit.entry().factor/u.entry().factor)
	for c.tooCoarse() {
		c.Decimals++
	}
	c.Digits = max(1, leadingPlace(c.shown())+1+c.Decimals)
	return c
}

// valueIn returns the number of u in q, which must be of one dimension.
func (q Quantity) valueIn(u Unit) float64 {
	if u == q.Unit {
		return q.Value
	}
	from, to := q.Unit.entry(), u.entry()
	return (q.Value+from.offset)*from.factor/to.factor - to.offset
}

// nearestPower returns the exponent of the power of ten nearest to a positive ratio.
func nearestPower(ratio float64) int { return int(math.Round(math.Log10(ratio))) }

// tooCoarse reports whether the printed number says too little of the value.
func (q Quantity) tooCoarse() bool {
	shown := q.shown()
	switch {
	case q.Value == 0 || q.Decimals >= maxDigits:
		return false
	case q.Unit.Dimension() == Temperature:
		return Quantity{Value: shown, Unit: q.Unit}.Base() < 0
	}
	moved := math.Abs(shown-q.Value) / math.Abs(q.Value)
	if moved < sameness {
		return false // 1 mm is 0.001 m, with one digit
	}
	return moved > maxRounding || leadingPlace(shown)+1+q.Decimals < 2
}

// sameness is the relative difference below which two amounts are the same:
// far below any instrument, far above the last bit of the arithmetic.
const sameness = 1e-9

// shown returns the value as it is printed.
func (q Quantity) shown() float64 { return roundTo(q.Value, q.Decimals) }

// leadingPlace returns the power of ten of the first digit: 2 for 110, −1 for
// 0.5, and 0 for 0.
func leadingPlace(value float64) int {
	if value == 0 {
		return 0
	}
	return int(math.Floor(math.Log10(math.Abs(value)) + sameness))
}

// decimalsFor returns the decimals that show so many significant digits.
func decimalsFor(value float64, digits int) int {
	if math.IsNaN(value) || math.IsInf(value, 0) {
		return 0
	}
	decimals := digits - 1 - leadingPlace(value)
	if leadingPlace(roundTo(value, decimals)) > leadingPlace(value) {
		decimals-- // 9.96 to two digits is 10
	}
	return min(decimals, maxDigits)
}

// roundTo rounds half away from zero to a number of decimals, to tens where
// it is −1. Zero comes out without a sign.
func roundTo(value float64, decimals int) float64 {
	if decimals < 0 {
		ten := math.Pow10(-decimals)
		return math.Round(value/ten)*ten + 0
	}
	ten := math.Pow10(decimals)
	return math.Round(value*ten)/ten + 0
}

// Agrees reports whether a number that was typed beside a reference says what
// the register says: the register's value, in the typed unit and rounded to
// the typed decimals, is the typed number. Half way between two numbers both
// agree, since both ways of rounding are in use; and so does the number that
// this package prints for the value in the typed unit, such as 3050 psi for
// 210 bar. Amounts of different dimensions never agree, nor ac with dc.
func Agrees(typed, value Quantity) bool {
	typed, ok := typed.As(value.Unit.Dimension())
	if !ok || typed.Flow.conflicts(value.Flow) {
		return false
	}
	if typed.Unit.Dimension() == Calendar {
		return typed.span.same(value.span)
	}
	exact := value.valueIn(typed.Unit)
	step := math.Pow10(-typed.Decimals)
	slack := step*sameness + math.Abs(exact)*1e-12
	if math.Abs(exact-typed.Value) <= step/2+slack {
		return true
	}
	return typed.Unit != value.Unit && math.Abs(value.Beside(typed.Unit).shown()-typed.Value) <= slack
}
