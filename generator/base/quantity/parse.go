package quantity

import (
	"strings"
	"unicode/utf8"
)

// Parse reads one amount, which must be all of text, spaces around it aside.
// With want None any dimension will do. A count may stand without its unit;
// nothing else may. The error is an *Error.
func Parse(text string, want Dimension) (Quantity, error) {
	r := reader{text: text, want: want}
	about := r.about()
	q, f := r.amount()
	q.about = about
	if !f.bad() {
		f = r.end()
	}
	if f.bad() {
		return Quantity{}, r.fail(f, anAmount)
	}
	return q, nil
}

// reader goes through a text once, from left to right.
type reader struct {
	text  string
	at    int // bytes read
	want  Dimension
	prose bool // in a sentence: what follows the amount is no concern of ours
	acid  bool // "pH" stands before the number
	split bool // the last number was a fraction
	point bool // a number had a decimal point: without a unit it is a plain ratio
}

// fault is an error before it is worth building: Find meets many numbers that
// are no amounts, and asks for no message.
type fault struct {
	kind     ErrorKind
	cause    cause
	from, to int       // bytes of the text
	got      Dimension // of WrongDimension
}

func (f fault) bad() bool { return f.kind != 0 }

// fail makes the fault an error.
func (r *reader) fail(f fault, form form) *Error {
	text := strings.TrimFunc(r.text[f.from:f.to], isSpace)
	from := f.from + strings.Index(r.text[f.from:f.to], text)
	return &Error{Kind: f.kind, Text: text, Start: from, End: from + len(text),
		Want: r.want, Got: f.got, form: form, cause: f.cause, whole: r.text}
}

func (r *reader) rest() string { return r.text[r.at:] }

// spaces skips them.
func (r *reader) spaces() {
	for r.at < len(r.text) {
		c, size := utf8.DecodeRuneInString(r.rest())
		if !isSpace(c) {
			return
		}
		r.at += size
	}
}

// digit reports whether a figure comes next.
func (r *reader) digit() bool { return r.at < len(r.text) && isDigit(r.text[r.at]) }

// end reports what is left over.
func (r *reader) end() fault {
	r.spaces()
	if r.at < len(r.text) {
		return fault{kind: TrailingText, from: r.at, to: len(r.text)}
	}
	return fault{}
}

// amount reads a number with its unit.
func (r *reader) amount() (Quantity, fault) {
	r.spaces()
	r.scale()
	from := r.at
	n, f := r.signed()
	if f.bad() {
		return Quantity{}, f
	}
	return r.measured(from, n)
}

// signed reads a number that may have a minus sign.
func (r *reader) signed() (number, fault) {
	minus := minusAt(r.rest())
	r.at += minus
	n, f := r.number()
	if minus > 0 {
		n.value = 0 - n.value // and zero stays without a sign
	}
	return n, f
}

// number reads a number without a sign.
func (r *reader) number() (number, fault) {
	n, size := r.fraction()
	r.split = size > 0
	if r.split {
		r.at += size
		return n, fault{}
	}
	token := numberToken(r.rest())
	if token == "" {
		return number{}, r.noNumber()
	}
	var c cause
	n, c = r.readToken(token)
	if c == unexplained && !r.prose {
		c = afterNumber(token, r.rest()[len(token):])
	}
	if c == inPieces || c == dashRange || c == notPlain {
		return number{}, fault{kind: BadNumber, cause: c, from: r.at, to: len(r.text)}
	}
	if c != unexplained {
		return number{}, fault{kind: BadNumber, cause: c, from: r.at, to: r.at + len(token)}
	}
	r.at += len(token)
	r.point = r.point || n.decimals > 0
	return n, fault{}
}

func (r *reader) readToken(token string) (number, cause) {
	if r.prose {
		plain, ok := fromComma(token)
		if !ok {
			return number{}, decimalComma
		}
		token = plain
	}
	return readNumber(token)
}

// noNumber tells a number that begins oddly from no number at all.
func (r *reader) noNumber() fault {
	rest := r.rest()
	if minus := minusAt(rest); minus > 0 && len(rest) > minus && isDigit(rest[minus]) {
		return fault{kind: BadNumber, cause: strayMinus, from: r.at, to: len(r.text)}
	}
	if len(rest) > 1 && isDigit(rest[1]) {
		switch rest[0] {
		case '+':
			return fault{kind: BadNumber, cause: plusSign, from: r.at, to: len(r.text)}
		case '.', ',':
			return fault{kind: BadNumber, cause: notPlain, from: r.at, to: len(r.text)}
		}
	}
	return fault{kind: NoNumber, from: 0, to: len(r.text)}
}

// measured reads an amount whose number began at from.
func (r *reader) measured(from int, n number) (Quantity, fault) {
	q, f := r.united(from, n)
	if c := q.refused(); !f.bad() && c != unexplained {
		return Quantity{}, fault{kind: BadNumber, cause: c, from: from, to: r.at}
	}
	return q, f
}

// united reads the unit of the number that began at from, and for a time the
// parts that follow. Whether there are such amounts is not asked.
func (r *reader) united(from int, n number) (Quantity, fault) {
	q, f := r.part(from, n, r.want)
	if f.bad() {
		return Quantity{}, f
	}
	if q.Unit.isTime() {
		q, f = r.compound(q)
	} else {
		q.Flow = r.flow(q.Unit)
	}
	if f.bad() {
		return Quantity{}, f
	}
	if r.want != None && q.Unit.Dimension() != r.want {
		return Quantity{}, fault{kind: WrongDimension, from: from, to: r.at, got: q.Unit.Dimension()}
	}
	return q, fault{}
}

// part reads a unit and puts the number before it.
func (r *reader) part(from int, n number, want Dimension) (Quantity, fault) {
	unit, f := r.unit(from, want)
	if f.bad() {
		return Quantity{}, f
	}
	q := Quantity{Value: n.value, Unit: unit, Digits: n.digits, Decimals: n.decimals, fraction: n.fraction}
	q.span = spanOf(q.Value, unit)
	return q, fault{}
}

// unit reads the unit of the number that began at from.
func (r *reader) unit(from int, want Dimension) (Unit, fault) {
	number := r.at
	r.spaces()
	rest := r.rest()
	if unit, ok := r.unsaid(rest, want); ok {
		return unit, fault{}
	}
	if rest == "" {
		return Bare, fault{kind: NoUnit, from: from, to: number}
	}
	unit, size := matchUnit(rest, want, r.wording(number))
	if size == 0 && r.prose {
		return Bare, fault{kind: UnknownUnit} // nobody asks for the word
	}
	if size == 0 {
		return Bare, fault{kind: UnknownUnit, from: r.at, to: r.at + wordEnd(rest)}
	}
	r.at += size
	return unit, fault{}
}

// wording returns how the unit is to be read behind a number that ends there.
func (r *reader) wording(number int) wording {
	switch {
	case !r.prose:
		return field
	case number == r.at || r.split: // "the 7/8 in spanner" is no "in" of a sentence
		return glued
	}
	return sentence
}

// wordEnd returns the bytes before the first space.
func wordEnd(text string) int {
	if end := strings.IndexFunc(text, isSpace); end >= 0 {
		return end
	}
	return len(text)
}

// compound reads the smaller parts of a time behind its first, "1 h 30 min".
func (r *reader) compound(sum Quantity) (Quantity, fault) {
	for {
		mark := r.at
		r.spaces()
		if !r.digit() {
			r.at = mark
			return sum, fault{}
		}
		glued := mark == r.at
		next, f := r.nextPart(sum)
		if f.bad() && r.prose && !glued {
			r.at = mark // "wait 5 min 30 N·m": an amount of its own
			return sum, fault{}
		}
		if f.bad() {
			return Quantity{}, f
		}
		sum = sum.followedBy(next)
	}
}

// nextPart reads one smaller part of a time.
func (r *reader) nextPart(sum Quantity) (Quantity, fault) {
	from := r.at
	n, f := r.number()
	if f.bad() {
		return Quantity{}, f
	}
	part, f := r.part(from, n, sum.Unit.Dimension())
	above, below := sum.Unit.entry(), part.Unit.entry()
	switch {
	case f.bad():
		return Quantity{}, f
	case above.dimension != below.dimension:
		return Quantity{}, fault{kind: TrailingText, from: from, to: len(r.text)}
	case below.factor >= above.factor:
		return Quantity{}, fault{kind: OutOfOrder, cause: partsOutOfOrder, from: 0, to: r.at}
	case part.Value*below.factor >= above.factor:
		return Quantity{}, fault{kind: BadNumber, cause: partTooLarge, from: from, to: r.at}
	case sum.Decimals > 0:
		return Quantity{}, fault{kind: BadNumber, cause: partNotWhole, from: 0, to: from}
	}
	return part, fault{}
}

// longestCalendar bounds calendar amounts, in the unit typed: enough for any
// date that a shop plans with, and small enough that no date overflows.
const longestCalendar = 99999

// refused returns why there is no such amount.
func (q Quantity) refused() cause {
	d := q.Unit.Dimension()
	switch {
	case q.Value < 0 && !d.row().signed:
		return belowZero
	case q.Decimals > 0 && (d == Count || d == Calendar):
		return notWhole
	case d == Calendar && q.Value > longestCalendar:
		return tooFar
	case d == Temperature && q.Base() < 0:
		return tooCold
	}
	return unexplained
}

// deviates says that an amount and another are the ends of a deviation, "-3 to 3 s":
// there is one of every kind of amount, of those too that cannot be below zero.
func (q Quantity) deviates(high Quantity) bool {
	return q.refused() == belowZero && high.Value > 0
}
