package quantity

import (
	"cmp"
	"strconv"
	"strings"
	"unicode/utf8"

	"baybinder/generator/base/finding"
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
	Like       string    // an amount that the place could have, for the mend; "" is any of the dimension

	form  form
	cause cause
	whole string
}

// Error says what is wrong in a fitter's words.
func (e *Error) Error() string { return e.Says().String() }

// Says is what is wrong, as words.
func (e *Error) Says() finding.Words {
	piece := quote(e.Text)
	switch e.Kind {
	case NoNumber:
		if strings.TrimSpace(e.whole) == "" {
			return finding.Say("the %s is empty", e.form.noun(e.Want))
		}
		if strings.ContainsAny(e.Text, "0123456789") {
			return finding.Say("%s does not begin with a number", piece)
		}
		return finding.Say("there is no number in %s", piece)
	case NoUnit:
		return finding.Say("%s has no unit", piece)
	case UnknownUnit:
		return finding.Say("%s is not a unit that the manual knows", piece)
	case WrongDimension:
		return e.wrongDimension()
	case TrailingText:
		return finding.Say("%s is left over after the %s", piece, e.form.noun(e.Want))
	case OutOfOrder:
		return finding.Say("%s is in the wrong order", piece)
	case NotRange:
		return finding.Say("%s is not a range", piece)
	}
	return finding.Say("%s %s", piece, e.cause.says())
}

func (e *Error) wrongDimension() finding.Words {
	switch e.cause {
	case mixedFlow:
		return finding.Say("%s mixes ac and dc", quote(e.Text))
	case mixedKinds:
		return finding.Say("%s mixes units of two kinds", quote(e.Text))
	}
	return finding.Say("%s is %s, not %s", quote(e.Text), e.Got.InWords(), e.Want.InWords())
}

// Mend says how to write it, "write a torque, such as 110 N·m".
func (e *Error) Mend() finding.Words {
	switch e.Kind {
	case UnknownUnit, WrongDimension:
		if unit, ok := e.meantUnit(); ok {
			if e.takes(unit) {
				return finding.Say("write %s", e.withPiece(unit))
			}
		}
	case NoNumber:
		if limit := e.meantLimit(); limit != "" {
			return finding.Say("write %s", limit)
		}
	}
	if e.cause == dashRange && e.form == anAmount {
		return finding.Say("write one amount, such as %s", e.example())
	}
	if e.cause == notPlain && e.Want != None {
		return finding.Say("write the number out in figures, such as %s", e.example())
	}
	if e.cause == leadingZero {
		return finding.Say("write %s", e.withPiece(clip(withoutZeros(e.Text))))
	}
	if mend := e.cause.mend(e.Text); !mend.IsZero() {
		return mend
	}
	if e.Kind == NoUnit && e.Want == None && e.Like == "" {
		return finding.Say("write its unit behind it, such as %s or %s; of a count, %s", e.withUnit("bar"), e.withUnit("min"), e.withUnit("each"))
	}
	if e.Kind == NoUnit {
		return finding.Say("%s%s", e.formMend(), unitsThatFit(e.Want))
	}
	return e.formMend()
}

// withUnit is the whole text with a unit behind it.
func (e *Error) withUnit(symbol string) string {
	return clip(strings.TrimSpace(e.whole)) + " " + symbol
}

// unitsThatFit names the units of a dimension behind a mend, "; its units are N, kN,
// lbf and kgf"; "" where the mend's example has the only one.
func unitsThatFit(d Dimension) finding.Words {
	units := Units(d)
	if d == None || len(units) < 2 {
		return finding.Words{}
	}
	var symbols []string
	for _, u := range units {
		symbols = append(symbols, u.Symbol())
	}
	return finding.Say("; its units are %s", finding.ListOf(" and ", symbols))
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
		return withoutDash(e.Text)
	case e.cause == decimalComma:
		if number, other := withPoint(e.Text); other == "" {
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
	{"less than", "at most"}, {"below", "at most"}, {"under", "at most"},
	{"more than", "at least"}, {"above", "at least"}, {"over", "at least"},
	{"máx.", "at most"}, {"máximo", "at most"}, {"mín.", "at least"}, {"mínimo", "at least"},
}

// meantLimit is the limit that was meant by "max. 8 mm" or "between 3 and 5 V",
// or "".
func (e *Error) meantLimit() string {
	if e.form != aLimit {
		return ""
	}
	text := strings.TrimSpace(e.whole)
	if ends, is := strings.CutPrefix(text, "between "); is {
		if limit := strings.Replace(ends, " and ", " to ", 1); reads(limit, e.Want) {
			return clip(limit)
		}
	}
	for _, slip := range boundSlips {
		if len(text) <= len(slip.words) || !strings.EqualFold(text[:len(slip.words)], slip.words) {
			continue
		}
		limit := slip.meant + " " + strings.TrimLeft(text[len(slip.words):], " :=")
		if reads(limit, e.Want) {
			return clip(limit)
		}
	}
	return ""
}

// reads says that a text is a limit of a dimension.
func reads(limit string, want Dimension) bool {
	_, err := ParseLimit(limit, want)
	return err == nil
}

// form is what was being read.
type form uint8

const (
	anAmount form = iota
	aLimit
	aRange
	serialNumbers
)

func (f form) noun(want Dimension) finding.Words {
	switch f {
	case aLimit:
		return finding.Say("limit")
	case aRange:
		return finding.Say("range")
	case serialNumbers:
		return finding.Say("serial number")
	}
	return finding.Say(want.String())
}

func (e *Error) formMend() finding.Words {
	switch e.form {
	case aLimit:
		if e.Like != "" {
			break
		}
		return finding.Say("write a limit, such as %s", e.Want.RangeExample())
	case aRange:
		return finding.Say("write a range, such as %s", e.Want.RangeExample())
	case serialNumbers:
		return finding.Say("write a serial number or a range of them, such as 101 to 130")
	}
	return finding.Say("write %s, such as %s", e.Want.InWords(), e.example())
}

func (e *Error) example() string { return cmp.Or(e.Like, e.Want.Example()) }

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
func (c cause) says() finding.Words {
	switch c {
	case leadingZero:
		return finding.Say("begins with a zero")
	case decimalComma:
		return finding.Say("has a comma in it")
	case inPieces:
		return finding.Say("is a number in pieces")
	case tooLong, serialTooLong:
		return finding.Say("has too many digits")
	case strayMinus:
		return finding.Say("has a minus sign where there can be none")
	case dashRange:
		return finding.Say("is a range with a dash")
	case partTooLarge:
		return finding.Say("belongs to the part before it")
	case partNotWhole:
		return finding.Say("is a fraction, and a smaller part follows")
	case belowZero:
		return finding.Say("cannot be below zero")
	case notWhole:
		return finding.Say("must be a whole number")
	case tooCold:
		return finding.Say("is below absolute zero")
	case tooFar:
		return finding.Say("is too far ahead for a calendar")
	case noTolerance:
		return finding.Say("is no tolerance")
	case roughLimit:
		return finding.Say("has no bounds")
	}
	return finding.Say("is not a number as the manual writes it")
}

// mend says how to write the piece, where the cause makes that plain.
func (c cause) mend(piece string) finding.Words {
	switch c {
	case decimalComma:
		return mendComma(piece)
	case inPieces:
		return finding.Say("write the number in one piece, such as 1000 or 1.5")
	case tooLong:
		return finding.Say("write at most %d digits, or a larger unit", maxDigits)
	case serialTooLong:
		return finding.Say("write at most %d digits", maxSerial)
	case notPlain:
		return finding.Say("write the number out in figures, with a decimal point, such as 0.5")
	case plusSign:
		return finding.Say("leave the plus sign out")
	case strayMinus:
		return finding.Say("leave the minus sign out")
	case dashRange:
		return mendDash(piece)
	case runsDown:
		return finding.Say("write the smaller end first")
	case partsOutOfOrder, partTooLarge, partNotWhole:
		return finding.Say("write the larger part first and whole, such as 1 h 30 min")
	case noTolerance:
		return finding.Say("write a tolerance above zero, such as 2.0 ± 0.1 mm")
	case roughLimit:
		return mendRough(piece)
	case mixedFlow:
		return finding.Say("write ac or dc once, after the unit")
	case mixedKinds:
		return finding.Say("write both numbers in one unit")
	case unitAtBothEnds:
		return finding.Say("write the unit at both ends")
	}
	return finding.Words{}
}

// withoutDash is a range with the word where its dash stands; "" where its ends
// are not plain.
func withoutDash(piece string) string {
	low := numberToken(piece)
	rest := strings.TrimLeftFunc(piece[len(low):], isSpace)
	high := strings.TrimLeftFunc(rest[dashAt(rest):], isSpace)
	if low == "" || high == "" || !isDigit(high[0]) {
		return ""
	}
	return clip(low + " to " + high)
}

func mendDash(piece string) finding.Words {
	if right := withoutDash(piece); right != "" {
		return finding.Say("write %s", right)
	}
	return finding.Say("write the word to between the two ends, such as 20 to 100")
}

func withoutZeros(piece string) string {
	short := strings.TrimLeft(piece, "0")
	if short == "" || short[0] == '.' {
		return "0" + short
	}
	return short
}

// withPoint is a number with a point in place of its comma, and without it where
// it may have parted the thousands. Of two signs one did: there is no first then.
func withPoint(piece string) (point, whole string) {
	before, after, _ := strings.Cut(piece, ",")
	if strings.ContainsAny(after, ",.") {
		return "", clip(strings.ReplaceAll(piece, ",", ""))
	}
	if len(after) == 3 && before != "0" {
		whole = clip(before + after)
	}
	return clip(before + "." + after), whole
}

// mendComma offers both readings where a comma may have parted the thousands.
func mendComma(piece string) finding.Words {
	switch point, whole := withPoint(piece); {
	case point == "":
		return finding.Say("write %s without commas", whole)
	case whole == "":
		return finding.Say("write %s, with a decimal point", point)
	default:
		return finding.Say("write %s, with a decimal point, or %s without the comma", point, whole)
	}
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
