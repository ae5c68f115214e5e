package quantity

import "math"

// LimitKind is how a limit bounds an amount.
type LimitKind uint8

// The kinds of limit.
const (
	Exact     LimitKind = iota // "5 bar"
	AtMost                     // "at most 5 V dc"
	AtLeast                    // "at least 2 mm"
	Between                    // "20 to 100 N·m"
	PlusMinus                  // "2.0 ± 0.1 mm", "110 N·m ± 5 %"
)

// Limit bounds an amount. Both ends belong to it.
type Limit struct {
	Kind      LimitKind
	Low, High float64 // in Unit; an open end is infinite
	Nominal   float64 // in Unit; of Exact and PlusMinus
	Unit      Unit
	Flow      Flow

	first, second Quantity // as typed; second is the upper end or the tolerance
}

// Holds reports whether the amount is within the limit, the ends included; an
// amount that passes an end by less than a billionth of it is at the end. An
// amount of another dimension is never within, nor ac within a limit of dc.
func (l Limit) Holds(q Quantity) bool {
	q, ok := q.As(l.Unit.Dimension())
	if !ok || q.Flow.conflicts(l.Flow) {
		return false
	}
	low, high := l.Bounds()
	return q.Base() >= low-slack(low) && q.Base() <= high+slack(high)
}

// Contains reports whether all of another limit is within this one, the ends
// included. One of another dimension is not, nor ac within dc.
func (l Limit) Contains(part Limit) bool {
	if l.Unit.Dimension() != part.Unit.Dimension() || l.Flow.conflicts(part.Flow) {
		return false
	}
	low, high := l.Bounds()
	partLow, partHigh := part.Bounds()
	return partLow >= low-slack(low) && partHigh <= high+slack(high)
}

// slack is what the arithmetic of a conversion may lose at an end.
func slack(end float64) float64 {
	if math.IsInf(end, 0) {
		return 0
	}
	return sameness * math.Abs(end)
}

// Bounds returns the ends in the base unit of the dimension (see
// Quantity.Base), −Inf or +Inf where an end is open.
func (l Limit) Bounds() (low, high float64) {
	u := l.Unit.entry()
	return (l.Low + u.offset) * u.factor, (l.High + u.offset) * u.factor
}

// Numbers returns the amounts that the limit states, in the order typed: both
// ends of a range, else one. A tolerance is not an amount of the thing.
func (l Limit) Numbers() []Quantity {
	if l.Kind == Between {
		return []Quantity{l.first, l.second}
	}
	return []Quantity{l.first}
}

// Ends returns the least and the greatest amount of a range or a tolerance, of 210 ±
// 5 bar 205 bar and 215 bar; ok is false for other limits.
func (l Limit) Ends() (low, high Quantity, ok bool) {
	switch l.Kind {
	case Between:
		return l.first, l.second, true
	case PlusMinus:
		low, high = Of(l.Low, l.Unit, endDigits).trimmed(), Of(l.High, l.Unit, endDigits).trimmed()
		low.Flow, high.Flow = l.Flow, l.Flow
		return low, high, true
	}
	return Quantity{}, Quantity{}, false
}

// endDigits is how finely the end of a tolerance is computed, and more than anybody
// types of one.
const endDigits = 6

// Most returns the greatest amount within the limit; ok is false where there
// is none.
func (l Limit) Most() (most Quantity, ok bool) {
	switch {
	case l.IsZero() || l.Kind == AtLeast:
		return Quantity{}, false
	case l.Kind == Between:
		return l.second, true
	case l.Kind == PlusMinus:
		digits := max(l.first.Digits, l.second.Digits)
		most = Of(l.High, l.Unit, max(digits, 1))
		most.Flow = l.Flow
		return most, true
	}
	return l.first, true
}

// String returns the limit as it is printed, "20 to 100 N·m".
func (l Limit) String() string { return l.Worded("at most", "at least", "to") }

// Worded returns the limit with the words of another language for "at most",
// "at least" and "to".
func (l Limit) Worded(atMost, atLeast, to string) string {
	switch l.Kind {
	case AtMost:
		return atMost + " " + l.first.String()
	case AtLeast:
		return atLeast + " " + l.first.String()
	case Between:
		return l.first.until(l.second) + " " + to + " " + l.second.String()
	case PlusMinus:
		return l.first.until(l.second) + " ± " + l.second.String()
	}
	return l.first.String()
}

// until returns the amount as it is printed before another: with its unit only
// where the other's is not the same.
func (q Quantity) until(next Quantity) string {
	if q.Unit == next.Unit && q.written == "" && next.written == "" {
		return q.Number()
	}
	return q.String()
}

// exactly, oneSided, between and plusMinus make the kinds of limit.
func exactly(q Quantity) Limit {
	return Limit{Low: q.Value, High: q.Value, Nominal: q.Value, Unit: q.Unit, Flow: q.Flow, first: q}
}

func oneSided(kind LimitKind, q Quantity) Limit {
	l := Limit{Kind: kind, Low: math.Inf(-1), High: math.Inf(1), Unit: q.Unit, Flow: q.Flow, first: q}
	if kind == AtMost {
		l.High = q.Value
	} else {
		l.Low = q.Value
	}
	return l
}

func between(low, high Quantity) Limit {
	low, high = sharingFlow(low, high)
	return Limit{Kind: Between, Low: low.Value, High: high.valueIn(low.Unit), Unit: low.Unit,
		Flow: low.Flow, first: low, second: high}
}

// sharingFlow gives both amounts the flow that one of them says.
func sharingFlow(a, b Quantity) (Quantity, Quantity) {
	flow := max(a.Flow, b.Flow) // Unsaid is the least, and they do not conflict
	a.Flow, b.Flow = flow, flow
	return a, b
}

func plusMinus(nominal, tolerance Quantity) Limit {
	if nominal.Unit.Dimension() == tolerance.Unit.Dimension() {
		nominal, tolerance = sharingFlow(nominal, tolerance)
	}
	l := exactly(nominal)
	l.Kind, l.second = PlusMinus, tolerance
	// A tolerance is a difference: its unit converts without the zero point.
	width := tolerance.Value * tolerance.Unit.entry().factor / nominal.Unit.entry().factor
	if nominal.Unit != Percent && tolerance.Unit == Percent {
		width = math.Abs(nominal.Value) * tolerance.Value / 100
	}
	l.Low, l.High = nominal.Value-width, nominal.Value+width
	if nominal.Unit == tolerance.Unit && nominal.fraction+tolerance.fraction == "" {
		decimals := max(nominal.Decimals, tolerance.Decimals)
		l.Low, l.High = roundTo(l.Low, decimals), roundTo(l.High, decimals)
	}
	return l
}
