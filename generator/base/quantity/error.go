package quantity

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"
)

// ErrorKind says what is wrong with an amount.
type ErrorKind uint8

// The kinds of error.
const (
	NoNumber       ErrorKind = iota + 1 // nothing to count
	NoUnit                              // a number alone
	UnknownUnit                         // a unit that the manual does not have
	WrongDimension                      // a unit of the wrong kind
	BadNumber                           // a number that is not written as the manual writes it, or cannot be
	TrailingText                        // an amount, and then something else
	OutOfOrder                          // a range that runs downwards, a smaller part before a larger
	NotRange                            // a limit where a range is wanted
)

// Error is why a text is no amount, limit, range or pair of serial numbers.
type Error struct {
	Kind       ErrorKind
	Text       string    // the piece that is wrong
	Start, End int       // where it stands, in bytes of the text that was read
	Want       Dimension // what was asked for
	Got        Dimension // what a WrongDimension has instead

	form  form
	cause cause
	whole string
}

// Error says what is wrong in a fitter's words.
func (e *Error) Error() string {
	piece := quote(e.Text)
	switch e.Kind {
	case NoNumber:
		if strings.TrimSpace(e.whole) == "" {
			return "the " + e.form.noun(e.Want) + " is empty"
		}
		return "there is no number in " + piece
	case NoUnit:
		return piece + " has no unit"
	case UnknownUnit:
		return piece + " is not a unit that the manual knows"
	case WrongDimension:
		return e.wrongDimension()
	case TrailingText:
		return piece + " is left over after the " + e.form.noun(e.Want)
	case OutOfOrder:
		return piece + " is in the wrong order"
	case NotRange:
		return piece + " is not a range"
	}
	return piece + " " + e.cause.says()
}

func (e *Error) wrongDimension() string {
	switch e.cause {
	case mixedFlow:
		return quote(e.Text) + " mixes ac and dc"
	case mixedKinds:
		return quote(e.Text) + " mixes units of two kinds"
	}
	return quote(e.Text) + " is " + e.Got.Named() + ", not " + e.Want.Named()
}

// Mend says how to write it, "write a torque, such as 110 N·m".
func (e *Error) Mend() string {
	switch e.Kind {
	case UnknownUnit, WrongDimension:
		if unit, ok := e.meantUnit(); ok {
			if e.takes(unit) {
				return "write " + e.withPiece(unit)
			}
		}
	case NoNumber:
		if limit := e.meantLimit(); limit != "" {
			return "write " + limit
		}
	}
	if e.cause == dashRange && e.form == anAmount {
		return "write one amount, such as " + e.Want.Example()
	}
	if e.cause == notPlain && e.Want != None {
		return "write the number out in figures, such as " + e.Want.Example()
	}
	if e.cause == leadingZero {
		return "write " + e.withPiece(clip(withoutZeros(e.Text)))
	}
	if mend := e.cause.mend(e.Text); mend != "" {
		return mend
	}
	if e.Kind == NoUnit && e.Want == None {
		return "write its unit behind it, such as " + e.withUnit("bar") + " or " + e.withUnit("min") + "; of a count, " + e.withUnit("each")
	}
	if e.Kind == NoUnit {
		return e.form.mend(e.Want) + unitsThatFit(e.Want)
	}
	return e.form.mend(e.Want)
}

// withUnit is the whole text with a unit behind it.
func (e *Error) withUnit(symbol string) string {
	return clip(strings.TrimSpace(e.whole)) + " " + symbol
}

// unitsThatFit names the units of a dimension behind a mend, "; its units are N, kN,
// lbf and kgf"; "" where the mend's example has the only one.
func unitsThatFit(d Dimension) string {
	if d == None {
		return ""
	}
	var symbols []string
	for _, u := range Units(d) {
		symbols = append(symbols, u.Symbol())
	}
	last := len(symbols) - 1
	if last < 1 {
		return ""
	}
	return "; its units are " + strings.Join(symbols[:last], ", ") + " and " + symbols[last]
}

// withPiece is the whole text with the piece that could not be read written as
// it was meant; the piece alone where that would not be read either.
func (e *Error) withPiece(meant string) string {
	at := strings.LastIndex(e.whole, e.Text)
	if at < 0 {
		return meant
	}
	whole := strings.TrimSpace(e.whole[:at] + meant + e.whole[at+len(e.Text):])
	if _, err := ParseLimit(whole, e.Want); err != nil || len(whole) > 40 {
		return meant
	}
	return whole
}

// Right is what stands in place of the wrong piece, where only one thing can be
// meant; "" elsewhere.
func (e *Error) Right() string {
	switch {
	case e.Kind == UnknownUnit:
		if unit, ok := MeantUnit(e.Text); ok && e.takes(unit) {
			return unit
		}
	case e.cause == leadingZero:
		return clip(withoutZeros(e.Text))
	case e.cause == dashRange && e.form != anAmount:
		if right := strings.TrimPrefix(mendDash(e.Text), "write "); !strings.HasPrefix(right, "the ") {
			return right
		}
	case e.cause == decimalComma:
		if number, only := strings.CutSuffix(strings.TrimPrefix(mendComma(e.Text), "write "), ", with a decimal point"); only {
			return number
		}
	}
	return ""
}

// takes says that a unit is of the kind that is wanted.
func (e *Error) takes(symbol string) bool {
	unit, _ := UnitNamed(symbol)
	return e.Want == None || unit.Dimension() == e.Want
}

// meantUnit is the unit that was meant by one which is not read: as it stands,
// in small letters, or with the words behind it, "ft lbs".
func (e *Error) meantUnit() (string, bool) {
	if unit, ok := MeantUnit(e.Text); ok {
		return unit, true
	}
	meant, ok := MeantUnit(strings.TrimLeft(e.whole, "0123456789. "))
	unit, _ := UnitNamed(meant)
	return meant, ok && unit.Dimension() == e.Want
}

// MeantUnit is the unit that was meant by a spelling which is not read, "mL" by
// "ml".
func MeantUnit(text string) (string, bool) {
	if unit, ok := slips[text]; ok {
		return unit, true
	}
	unit, ok := slips[strings.ToLower(text)]
	return unit, ok
}

// boundSlips are ways to say a one-sided limit that are not read, the longer of
// two that begin alike first.
var boundSlips = []struct{ words, meant string }{
	{"at most", "at most"}, {"max.", "at most"}, {"maximum", "at most"}, {"max", "at most"}, {"up to", "at most"},
	{"not more than", "at most"}, {"no more than", "at most"}, {"<=", "at most"}, {"≤", "at most"}, {"<", "at most"},
	{"at least", "at least"}, {"min.", "at least"}, {"minimum", "at least"}, {"min", "at least"},
	{"not less than", "at least"}, {"no less than", "at least"}, {">=", "at least"}, {"≥", "at least"}, {">", "at least"},
	{"máx.", "at most"}, {"máximo", "at most"}, {"mín.", "at least"}, {"mínimo", "at least"},
}

// meantLimit is the one-sided limit that was meant by "max. 8 mm", or "".
func (e *Error) meantLimit() string {
	if e.form != aLimit {
		return ""
	}
	text := strings.TrimSpace(e.whole)
	for _, slip := range boundSlips {
		if len(text) <= len(slip.words) || !strings.EqualFold(text[:len(slip.words)], slip.words) {
			continue
		}
		limit := slip.meant + " " + strings.TrimLeft(text[len(slip.words):], " :=")
		if _, err := ParseLimit(limit, e.Want); err == nil {
			return clip(limit)
		}
	}
	return ""
}

// form is what was being read.
type form uint8

const (
	anAmount form = iota
	aLimit
	aRange
	serialNumbers
)

func (f form) noun(want Dimension) string {
	switch f {
	case aLimit:
		return "limit"
	case aRange:
		return "range"
	case serialNumbers:
		return "serial number"
	}
	return want.String()
}

func (f form) mend(want Dimension) string {
	switch f {
	case aLimit:
		return fmt.Sprintf("write a limit, such as %s", want.RangeExample())
	case aRange:
		return fmt.Sprintf("write a range, such as %s", want.RangeExample())
	case serialNumbers:
		return "write a serial number or a range of them, such as 101 to 130"
	}
	return fmt.Sprintf("write %s, such as %s", want.Named(), want.Example())
}

// cause says more closely why a number or an order is refused.
type cause uint8

const (
	unexplained cause = iota
	leadingZero
	decimalComma
	inPieces
	tooLong
	serialTooLong
	notPlain
	plusSign
	strayMinus
	dashRange
	runsDown
	partsOutOfOrder
	partTooLarge
	partNotWhole
	belowZero
	notWhole
	tooCold
	tooFar
	noTolerance
	roughLimit
	mixedFlow
	mixedKinds
	unitAtBothEnds
)

// says ends the sentence that begins with the piece.
func (c cause) says() string {
	switch c {
	case leadingZero:
		return "begins with a zero"
	case decimalComma:
		return "has a comma in it"
	case inPieces:
		return "is a number in pieces"
	case tooLong, serialTooLong:
		return "has too many digits"
	case strayMinus:
		return "has a minus sign where there can be none"
	case dashRange:
		return "is a range with a dash"
	case partTooLarge:
		return "belongs to the part before it"
	case partNotWhole:
		return "is a fraction, and a smaller part follows"
	case belowZero:
		return "cannot be below zero"
	case notWhole:
		return "must be a whole number"
	case tooCold:
		return "is below absolute zero"
	case tooFar:
		return "is too far ahead for a calendar"
	case noTolerance:
		return "is no tolerance"
	case roughLimit:
		return "has no bounds"
	}
	return "is not a number as the manual writes it"
}

// mend says how to write the piece, where the cause makes that plain.
func (c cause) mend(piece string) string {
	switch c {
	case leadingZero:
		return "write " + clip(withoutZeros(piece))
	case decimalComma:
		return mendComma(piece)
	case inPieces:
		return "write the number in one piece, such as 1000 or 1.5"
	case tooLong:
		return "write at most " + strconv.Itoa(maxDigits) + " digits, or a larger unit"
	case serialTooLong:
		return "write at most " + strconv.Itoa(maxSerial) + " digits"
	case notPlain:
		return "write the number out in figures, with a decimal point, such as 0.5"
	case plusSign:
		return "leave the plus sign out"
	case strayMinus:
		return "leave the minus sign out"
	case dashRange:
		return mendDash(piece)
	case runsDown:
		return "write the smaller end first"
	case partsOutOfOrder, partTooLarge, partNotWhole:
		return "write the larger part first and whole, such as 1 h 30 min"
	case noTolerance:
		return "write a tolerance above zero, such as 2.0 ± 0.1 mm"
	case roughLimit:
		return mendRough(piece)
	case mixedFlow:
		return "write ac or dc once, after the unit"
	case mixedKinds:
		return "write both numbers in one unit"
	case unitAtBothEnds:
		return "write the unit at both ends"
	}
	return ""
}

// mendDash puts the word where the dash of a range stands.
func mendDash(piece string) string {
	low := numberToken(piece)
	rest := strings.TrimLeftFunc(piece[len(low):], isSpace)
	high := strings.TrimLeftFunc(rest[dashAt(rest):], isSpace)
	if low == "" || high == "" || !isDigit(high[0]) {
		return "write the word to between the two ends, such as 20 to 100"
	}
	return "write " + clip(low+" to "+high)
}

func withoutZeros(piece string) string {
	short := strings.TrimLeft(piece, "0")
	if short == "" || short[0] == '.' {
		return "0" + short
	}
	return short
}

// mendComma offers both readings where a comma may have parted the thousands.
func mendComma(piece string) string {
	before, after, _ := strings.Cut(piece, ",")
	if strings.ContainsAny(after, ",.") {
		return "write " + clip(strings.ReplaceAll(piece, ",", "")) + " without commas"
	}
	point := "write " + clip(before+"."+after) + ", with a decimal point"
	if len(after) == 3 && before != "0" {
		return point + ", or " + clip(before+after) + " without the comma"
	}
	return point
}

// maxQuoted bounds what a message repeats of a hostile text, in bytes.
const maxQuoted = 40

func quote(text string) string { return strconv.Quote(clip(text)) }

func clip(text string) string {
	if len(text) <= maxQuoted {
		return text
	}
	cut := maxQuoted
	for cut > maxQuoted-utf8.UTFMax && !utf8.RuneStart(text[cut]) {
		cut--
	}
	return text[:cut] + "…"
}
