package quantity

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"baybinder/generator/base/finding"
)

// What the trade writes otherwise than a number and its unit: inches and turns
// in fractions, pH before its number, a ratio without a unit, "about".

var (
	fractionForm = regexp.MustCompile(`^(?:([1-9][0-9]{0,3})[ \x{00A0}\x{2009}\x{202F}]+)?([1-9][0-9]{0,2})/([1-9][0-9]{0,2})`)
	articleForm  = regexp.MustCompile(`^ (?:the|a|an|this|that|each|its|your|our) `)
	plainNumber  = regexp.MustCompile(`^([0-9]{1,12}(?:\.[0-9]{1,12})?)((?:[ \x{00A0}].*)?)$`)
	aboutForm    = regexp.MustCompile(`^(?:about|approx\.|approximately|roughly|ca\.|circa)[ \x{00A0}]`)
)

// fractionDecimals is how finely an amount typed as a fraction is taken when it
// is converted or compared: 1/2 in is 12.7 mm, and 7/8 in is 22.2 mm.
const fractionDecimals = 2

// fraction reads a proper fraction, or a whole number and one, of inches or
// turns; size is none where there is no such thing. "7/8 kg" and "24/7" are
// left to number, which refuses them.
func (r *reader) fraction() (n number, size int) {
	if !mayBeFraction(r.rest()) {
		return number{}, 0
	}
	m := fractionForm.FindStringSubmatch(r.rest())
	if m == nil {
		return number{}, 0
	}
	whole, _ := strconv.Atoi(m[1]) // none is zero
	over, _ := strconv.Atoi(m[2])
	under, _ := strconv.Atoi(m[3])
	size = len(m[0]) + r.partOf(r.rest()[len(m[0]):])
	if over >= under || !r.fractional(r.rest()[size:]) {
		return number{}, 0
	}
	n = number{value: float64(whole) + float64(over)/float64(under), decimals: fractionDecimals, fraction: m[2] + "/" + m[3]}
	if whole > 0 {
		n.fraction = m[1] + " " + n.fraction
	}
	n.digits = max(1, leadingPlace(n.value)+1+fractionDecimals)
	return n, size
}

// partOf returns the bytes of the word of "3/4 of a turn" in a sentence.
func (r *reader) partOf(rest string) int {
	for _, of := range []string{" of a ", " of an ", " de "} {
		if r.prose && strings.HasPrefix(rest, of) {
			return len(of) - 1
		}
	}
	return 0
}

// mayBeFraction says that what follows the first figures is a stroke, or a space
// before further figures: nearly all numbers are followed by neither.
func mayBeFraction(text string) bool {
	behind := strings.TrimLeft(text, "0123456789")
	if strings.HasPrefix(behind, "/") {
		return true
	}
	spaced := strings.TrimLeftFunc(behind, isSpace)
	return len(spaced) < len(behind) && spaced != "" && isDigit(spaced[0])
}

// fractional reports whether what stands behind a fraction is a unit that is
// divided so, or joins it to a number that has one.
func (r *reader) fractional(rest string) bool {
	behind := strings.TrimLeftFunc(rest, isSpace)
	if unit, size := matchUnit(behind, None, glued); size > 0 {
		within := unit == Inch && r.prose && articleForm.MatchString(behind[size:])
		return r.divided(unit) && !within
	}
	next := reader{text: rest, prose: r.prose}
	if next.joiner() == Exact && !next.and() {
		return false
	}
	next.spaces()
	q, f := next.amount()
	return !f.bad() && r.divided(q.Unit)
}

// divided reports whether a unit is divided into fractions: inches and turns, and in
// a sentence what is measured in cups, by the clock and on the scales as well.
func (r *reader) divided(unit Unit) bool {
	switch unit {
	case Inch, Turn:
		return true
	case Gallon, Quart, Litre, Hour, Minute, Pound, Ounce, Foot, Mile:
		return r.prose
	}
	return false
}

// and passes over the word that joins two amounts in a sentence.
func (r *reader) and() bool {
	rest, ok := strings.CutPrefix(strings.TrimLeftFunc(r.rest(), isSpace), "and")
	if !ok || !r.prose || !startsWithSpace(rest) {
		return false
	}
	r.at = len(r.text) - len(rest)
	return true
}

// scale reads the "pH" before a number.
func (r *reader) scale() {
	rest, ok := strings.CutPrefix(r.rest(), "pH")
	if !ok || !startsWithSpace(rest) {
		return
	}
	r.acid = true
	r.at += len("pH")
	r.spaces()
}

// unsaid is the unit of a number with none behind it. A plain ratio has a
// decimal point, so that a forgotten unit is not read as one.
func (r *reader) unsaid(rest string, want Dimension) (Unit, bool) {
	switch {
	case r.acid && !strings.HasPrefix(rest, "pH"):
		return PH, true
	case rest != "" || r.prose:
		return Bare, false
	case want == Count:
		return Each, true
	case r.point && (want == None || want == Ratio):
		return Plain, true
	}
	return Bare, false
}

// about passes over the word before an amount that is not measured out.
func (r *reader) about() bool {
	r.spaces()
	rest, ok := strings.CutPrefix(r.rest(), "about")
	if !ok || !startsWithSpace(rest) {
		return false
	}
	r.at += len("about")
	return true
}

// roughly reports whether a limit says that it is none: "about 5 bar", "at
// most about 5 bar".
func (r *reader) roughly() bool {
	rest := r.rest()
	for _, bound := range [...]string{"at most", "at least"} {
		rest = strings.TrimPrefix(rest, bound)
	}
	return aboutForm.MatchString(strings.TrimLeftFunc(rest, isSpace))
}

// mendRough gives a limit that is only about something its bounds: as given
// where it has one, else for example one more and one less of the last digit.
func mendRough(text string) finding.Words {
	for _, bound := range [...]string{"at most ", "at least "} {
		if rest, has := strings.CutPrefix(text, bound); has {
			return finding.Say("write %s", bound+aboutForm.ReplaceAllString(rest, ""))
		}
	}
	m := plainNumber.FindStringSubmatch(aboutForm.ReplaceAllString(text, ""))
	if m == nil {
		return finding.Say("write the bounds, such as 4 to 6 bar or at most 6 bar")
	}
	_, after, _ := strings.Cut(m[1], ".")
	value, _ := strconv.ParseFloat(m[1], 64) // the pattern has figures alone
	step := math.Pow10(-len(after))
	end := func(v float64) string { return strconv.FormatFloat(v, 'f', len(after), 64) }
	return finding.Say("write the bounds, such as %s", end(value-step)+" to "+end(value+step)+m[2])
}

// startsWithSpace reports whether a text begins with any kind of space.
func startsWithSpace(text string) bool {
	r, size := utf8.DecodeRuneInString(text)
	return size > 0 && isSpace(r)
}
