// Package quantity reads, converts and prints amounts as the trade writes them.
//
// An amount is a number and a unit: "110 N·m", "1 h 30 min", "−20 °C",
// "360 V dc". A limit bounds an amount: "at most 5 V dc", "20 to 100 N·m",
// "2.0 ± 0.1 mm". Parse and ParseLimit read a field of the manual, which must
// hold the amount and nothing else; Find picks the amounts out of a sentence.
//
// Nothing is guessed. A unit of the wrong kind, a decimal comma, a leading
// zero and a number in pieces are errors, and each error says how to write it.
// An amount keeps the unit and the digits that its author typed; In converts
// it and says how many digits of the result mean anything.
//
// The package reads no file and imports nothing from the project.
//
// # Decided where the format is silent
//
// A plain ratio has a decimal point at least once, `1.26` or `1.2 to 2`: a whole number alone is a
// forgotten unit. `pH 7.4` is read as `7.4 pH`. Fractions are read of inches and turns, and are
// taken to a hundredth when they are converted or compared. Turns and drops are dimensions of
// their own; ppm and plain ratios are ratios, mg/L and g/L are not. In a sentence a fraction before `in` is
// a length unless an article follows. A measure `of` an id that several machines have is told only
// where it shows it on none of them.
package quantity

import "strconv"

import "math"

// Quantity is an amount in the unit that its author wrote. Quantities are
// plain values and may be compared with ==, which compares how they were
// written too: 1 h and 60 min differ. Compare Base to compare the amounts.
type Quantity struct {
	Value    float64 // in Unit; exact after In, where only the printing is rounded
	Unit     Unit
	Flow     Flow // of a voltage or a current
	Digits   int  // significant digits typed, trailing zeros counted: 3 in "110", 2 in "0.50"
	Decimals int  // digits typed after the point; below zero after In, where tens are rounded

	about    bool   // typed behind the word; judged as if it were not
	fraction string // the number as typed, "1 1/2"
	written  string // of a compound such as "1 h 30 min", whose Value is in the last unit
	span     Span   // of a calendar amount
}

// Of returns a computed amount that prints with that many significant digits.
func Of(value float64, unit Unit, digits int) Quantity {
	q := Quantity{Value: value, Unit: unit, Digits: digits}
	q.Decimals = decimalsFor(value, digits)
	q.span = spanOf(value, unit)
	return q
}

// Elapsed returns whole seconds as hours, minutes and seconds, "2 h 5 min".
// It never uses days, whose length in a shop is anybody's guess; seconds below
// zero count as none.
func Elapsed(seconds int) Quantity {
	seconds = max(seconds, 0)
	parts := [...]struct {
		count int
		unit  Unit
	}{{seconds / 3600, Hour}, {seconds / 60 % 60, Minute}, {seconds % 60, Second}}
	var sum Quantity
	for _, p := range parts {
		if p.count > 0 {
			sum = sum.followedBy(whole(p.count, p.unit))
		}
	}
	if sum.Unit == Bare {
		return whole(0, Minute)
	}
	return sum
}

// ElapsedText is Elapsed as it is printed: pages are full of times, and few of
// them are reckoned with.
func ElapsedText(seconds int) string {
	seconds = max(seconds, 0)
	if seconds == 0 {
		return whole(0, Minute).String()
	}
	var room [32]byte
	out := room[:0]
	part := func(count int, unit Unit) {
		if count == 0 {
			return
		}
		if len(out) > 0 {
			out = append(out, ' ')
		}
		out = append(append(strconv.AppendInt(out, int64(count), 10), ' '), unit.Symbol()...)
	}
	part(seconds/3600, Hour)
	part(seconds/60%60, Minute)
	part(seconds%60, Second)
	return string(out)
}

// whole returns a count of a unit as if it had been typed.
func whole(count int, unit Unit) Quantity {
	digits := 1
	for n := count; n >= 10; n /= 10 {
		digits++
	}
	return Quantity{Value: float64(count), Unit: unit, Digits: digits}
}

// As returns the amount as one of dimension d. Days and weeks are both a
// duration and a calendar amount, so "14 days" can be read as either; every
// other amount has one dimension only, and ok is false for all others.
func (q Quantity) As(d Dimension) (as Quantity, ok bool) {
	switch from := q.Unit.Dimension(); {
	case from == d:
		return q, true
	case from == Duration && d == Calendar:
		return q.asCalendar()
	case from == Calendar && d == Duration:
		return q.asDuration()
	}
	return Quantity{}, false
}

// Fits reports whether the amount can be read as one of dimension d.
func (q Quantity) Fits(d Dimension) bool {
	_, ok := q.As(d)
	return ok
}

func (q Quantity) asCalendar() (Quantity, bool) {
	unit, ok := q.Unit.onCalendar()
	days := q.Base() / secondsPerDay
	if !ok || days != math.Trunc(days) || days > longestCalendar {
		return Quantity{}, false
	}
	q.Unit, q.span = unit, Span{Days: int(days)}
	return q, true
}

func (q Quantity) asDuration() (Quantity, bool) {
	unit, ok := q.Unit.onClock()
	if !ok || q.span.months() != 0 {
		return Quantity{}, false
	}
	q.Unit, q.span = unit, Span{}
	return q, true
}

// followedBy adds the next, smaller part of a compound to what was read so far.
func (q Quantity) followedBy(part Quantity) Quantity {
	if q.Unit == Bare {
		return part
	}
	sum := Quantity{Unit: part.Unit, Decimals: part.Decimals, Digits: q.Digits + part.Digits}
	sum.written = q.String() + " " + part.String()
	sum.span = q.span.plus(part.span)
	sum.Value = (q.Base() + part.Base()) / part.Unit.entry().factor
	if !sum.span.mixed() {
		sum.Value = roundTo(sum.Value, sum.Decimals) // the division leaves a last bit over
	}
	return sum
}
