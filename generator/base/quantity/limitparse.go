package quantity

import "strings"

// ParseLimit reads a limit, which must be all of text: "at most Q", "at least
// Q", "a to b UNIT", "n ± t UNIT", or a plain amount. Both numbers may carry
// units of the dimension, and a tolerance may be in %. The error is an *Error.
func ParseLimit(text string, want Dimension) (Limit, error) {
	return parseLimit(text, want, aLimit)
}

// ParseRange reads a range, "a to b UNIT", and no other limit. The error is an
// *Error.
func ParseRange(text string, want Dimension) (Limit, error) {
	return parseLimit(text, want, aRange)
}

func parseLimit(text string, want Dimension, form form) (Limit, error) {
	r := reader{text: text, want: want}
	l, f := r.limit()
	if !f.bad() {
		f = r.end()
	}
	if !f.bad() && form == aRange && l.Kind != Between {
		f = fault{kind: NotRange, to: len(text)}
	}
	if f.bad() {
		return Limit{}, r.fail(f, form)
	}
	return l, nil
}

func (r *reader) limit() (Limit, fault) {
	r.spaces()
	from := r.at
	if r.roughly() {
		return Limit{}, fault{kind: BadNumber, cause: roughLimit, from: from, to: len(r.text)}
	}
	if kind := r.bound(); kind != Exact {
		q, f := r.amount()
		return oneSided(kind, q), f
	}
	r.scale()
	at := r.at
	first, f := r.firstEnd()
	if f.bad() {
		return Limit{}, f
	}
	mark := r.at
	joined := r.joiner()
	low := joined == Between && r.want == None // of a deviation, perhaps
	if c := first.refused(); first.Unit != Bare && c != unexplained && !(low && c == belowZero) {
		return Limit{}, fault{kind: BadNumber, cause: c, from: at, to: mark}
	}
	switch joined {
	case Between:
		return r.between(from, first)
	case PlusMinus:
		return r.plusMinus(from, first)
	}
	return exactly(first), fault{}
}

// bound reads the words of a one-sided limit, and returns Exact if there are none.
func (r *reader) bound() LimitKind {
	for _, b := range [...]struct {
		word string
		kind LimitKind
	}{{"at most", AtMost}, {"at least", AtLeast}} {
		if rest, ok := strings.CutPrefix(r.rest(), b.word); ok && startsWithSpace(rest) {
			r.at += len(b.word)
			return b.kind
		}
	}
	return Exact
}

// firstEnd reads an amount, or before a joiner the number alone, whose unit is
// that of the second. Whether there is such an amount is known with what follows.
func (r *reader) firstEnd() (Quantity, fault) {
	from := r.at
	n, f := r.signed()
	if f.bad() {
		return Quantity{}, f
	}
	mark := r.at
	joined := r.joiner() != Exact
	r.at = mark
	if joined {
		return Quantity{Value: n.value, Digits: n.digits, Decimals: n.decimals, fraction: n.fraction}, fault{}
	}
	return r.united(from, n)
}

// joiner reads what stands between the two numbers of a limit, and returns
// Exact if the limit has but one.
func (r *reader) joiner() LimitKind {
	mark := r.at
	r.spaces()
	for _, sign := range [...]string{"±", "+/-"} {
		if strings.HasPrefix(r.rest(), sign) {
			r.at += len(sign)
			return PlusMinus
		}
	}
	if rest, ok := strings.CutPrefix(r.rest(), "to"); ok && mark < r.at && startsWithSpace(rest) {
		r.at += len("to")
		return Between
	}
	r.at = mark
	return Exact
}

// between reads the upper end.
func (r *reader) between(from int, low Quantity) (Limit, fault) {
	high, f := r.amount()
	if f.bad() {
		return Limit{}, f
	}
	if low, f = r.adopt(from, low, high); f.bad() {
		return Limit{}, f
	}
	l := between(low, high)
	if l.Low >= l.High {
		return Limit{}, fault{kind: OutOfOrder, cause: runsDown, from: from, to: r.at}
	}
	return l, fault{}
}

// adopt gives the first number the unit of the second, and checks what they
// say together.
func (r *reader) adopt(from int, first, second Quantity) (Quantity, fault) {
	together := fault{from: from, to: r.at}
	if first.Unit == Bare && second.written != "" {
		together.kind, together.cause = NoUnit, unitAtBothEnds
		return Quantity{}, together
	}
	if first.Unit == Bare {
		first.Unit, first.span = second.Unit, spanOf(first.Value, second.Unit)
	}
	if first.Flow.conflicts(second.Flow) {
		together.kind, together.cause = WrongDimension, mixedFlow
		return Quantity{}, together
	}
	if first.Unit.Dimension() != second.Unit.Dimension() {
		together.kind, together.cause = WrongDimension, mixedKinds
		return Quantity{}, together
	}
	if c := first.refused(); c != unexplained && !(r.want == None && first.deviates(second)) {
		together.kind, together.cause = BadNumber, c
		return Quantity{}, together
	}
	return first, fault{}
}

// plusMinus reads the tolerance, in the unit's dimension or in % of an amount
// that has a true zero.
func (r *reader) plusMinus(from int, nominal Quantity) (Limit, fault) {
	r.spaces()
	start := r.at
	n, f := r.number()
	if f.bad() {
		return Limit{}, f
	}
	tolerance, f := r.tolerance(start, n, nominal)
	if f.bad() {
		return Limit{}, f
	}
	if tolerance.Value == 0 {
		return Limit{}, fault{kind: BadNumber, cause: noTolerance, from: start, to: r.at}
	}
	if tolerance.Unit != Percent || !takesPercent(nominal) {
		nominal, f = r.adopt(from, nominal, tolerance)
	}
	return plusMinus(nominal, tolerance), f
}

// takesPercent reports whether a tolerance in % is a part of the amount. A
// temperature has no true zero on its scale, and a bare number no unit yet.
func takesPercent(nominal Quantity) bool {
	d := nominal.Unit.Dimension()
	return d != None && d != Temperature
}

// tolerance reads the unit of a tolerance. Behind an amount with a unit of its
// own, % is a part of that amount, whatever dimension is wanted.
func (r *reader) tolerance(from int, n number, nominal Quantity) (Quantity, fault) {
	if !takesPercent(nominal) {
		return r.measured(from, n)
	}
	part := *r
	part.want = Ratio
	if q, f := part.measured(from, n); !f.bad() {
		r.at = part.at
		return q, fault{}
	}
	return r.measured(from, n)
}
