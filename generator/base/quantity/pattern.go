package quantity

import (
	"regexp"
	"slices"
	"strings"
)

// Pattern is a regular expression of what Parse reads as an amount of a
// dimension, for editors: it refuses no text that Parse reads, and lets some
// pass that Parse refuses (too many digits, the parts of a time in the wrong
// order). It is written in what ECMA-262 and Go have in common.
func Pattern(d Dimension) string {
	return anchored("(?:about" + someSpace + ")?" + amountPattern(d))
}

// LimitPattern is the same of what ParseLimit reads.
func LimitPattern(d Dimension) string {
	joined := either(someSpace+"to"+someSpace+anySpace, anySpace+`(?:±|\+/-)`+anySpace)
	first := either(amountPattern(d), numberPattern(d), `[-−]?(?:`+wholeNumber+someSpace+`)?[0-9]+/[0-9]+`, "pH"+someSpace+numberPattern(Acidity))
	ways := []string{
		either("at most", "at least") + someSpace + anySpace + amountPattern(d),
		amountPattern(d),
		first + someSpace + "to" + someSpace + anySpace + amountPattern(d),
		first + anySpace + `(?:±|\+/-)` + anySpace + either(amountPattern(d), amountPattern(Ratio)),
		plainRatio + someSpace + "to" + someSpace + numberPattern(Ratio), // "1.2 to 2"
	}
	if d == None || d == Acidity { // "pH 6.8 to 7.4"
		ways = append(ways, "pH"+someSpace+numberPattern(Acidity)+joined+numberPattern(Acidity))
	}
	return anchored(either(ways...))
}

// StretchPattern is the same of what ParseStretch reads.
func StretchPattern(d Dimension) string {
	first := either(amountPattern(d), numberPattern(d))
	return either(Pattern(d), anchored(first+someSpace+"to"+someSpace+anySpace+amountPattern(d)))
}

// StagePattern is the same of one stage of a tightening: a torque or an angle.
func StagePattern() string { return anchored(either(amountPattern(Torque), amountPattern(Angle))) }

// SerialsPattern is the same of what ParseSerials reads.
func SerialsPattern() string {
	return anchored(wholeNumber + "(?:" + someSpace + "to" + someSpace + wholeNumber + ")?")
}

// UnitPattern is the same of what UnitNamed reads as a unit of a dimension.
func UnitPattern(d Dimension) string { return "^" + unitPattern(d, false) + "$" }

const (
	spaceSigns  = " \t\n\r\u00A0\u2009\u202F" // what fold makes a space
	anySpace    = "[" + spaceSigns + "]*"
	someSpace   = "[" + spaceSigns + "]+"
	wholeNumber = `(?:0|[1-9][0-9]*)`
	plainRatio  = `[-−]?` + wholeNumber + `\.[0-9]+`
)

// anchored is a pattern of a text that is all of it, spaces around it aside.
func anchored(pattern string) string { return "^" + anySpace + pattern + anySpace + "$" }

func either(ways ...string) string { return "(?:" + strings.Join(ways, "|") + ")" }

// numberPattern is a number, with a sign where one has a meaning. Zero may have
// one anywhere.
func numberPattern(d Dimension) string {
	number := wholeNumber + `(?:\.[0-9]+)?`
	if d == Count || d == Calendar {
		number = wholeNumber
	}
	if d.row().signed {
		return "(?:[-−]?" + number + ")"
	}
	return either(number, `[-−]0(?:\.0+)?`)
}

// unusualPatterns are what is written otherwise than a number and its unit.
func unusualPatterns(d Dimension) []string {
	var ways []string
	if d == None || d == Ratio {
		ways = append(ways, plainRatio)
	}
	if d == None || d == Acidity {
		ways = append(ways, "pH"+someSpace+numberPattern(Acidity)+"(?:"+anySpace+"pH)?")
	}
	for _, u := range []Unit{Inch, Turn} {
		if u.spells(d) {
			ways = append(ways, `[-−]?(?:`+wholeNumber+someSpace+")?[0-9]+/[0-9]+"+anySpace+spelled(func(s spelling) bool { return s.unit == u }, false))
		}
	}
	return ways
}

func amountPattern(d Dimension) string {
	unit := unitPattern(d, true)
	amount := numberPattern(d) + anySpace + unit
	for _, way := range unusualPatterns(d) {
		amount = either(amount, way)
	}
	switch d {
	case Count:
		return numberPattern(d) + "(?:" + anySpace + unit + ")?"
	case Duration, Calendar, None:
		return amount + "(?:" + anySpace + wholeNumber + `(?:\.[0-9]+)?` + anySpace + unit + ")*"
	}
	return amount
}

// unitPattern is any spelling of a unit of the dimension; of a voltage or a
// current with its flow, where asked.
func unitPattern(d Dimension, flow bool) string {
	return spelled(func(s spelling) bool { return s.unit.spells(d) }, flow)
}

// spelled is any of the spellings that are wanted.
func spelled(wanted func(spelling) bool, flow bool) string {
	var ways []string
	for _, list := range spellings {
		for _, s := range list {
			if !s.prose && wanted(s) {
				ways = append(ways, s.pattern(flow))
			}
		}
	}
	slices.Sort(ways) // the index is a map
	return either(ways...)
}

// spells says whether a spelling that is read as u can stand for a unit of d.
func (u Unit) spells(d Dimension) bool {
	_, onCalendar := u.onCalendar()
	return d == None || u.Dimension() == d || d == Calendar && onCalendar
}

func (s spelling) pattern(flow bool) string {
	var b strings.Builder
	for _, r := range s.text {
		b.WriteString(signPattern(r))
	}
	if d := s.unit.Dimension(); flow && (d == Voltage || d == Current) {
		b.WriteString("(?:" + anySpace + flowPattern() + ")?")
	}
	return b.String()
}

func flowPattern() string {
	var ways []string
	for _, f := range flows {
		ways = append(ways, regexp.QuoteMeta(f.text))
	}
	return either(ways...)
}

// signPattern is every sign that fold makes this one.
func signPattern(r rune) string {
	switch r {
	case '·':
		return "[·\u22C5\u0387]"
	case 'µ':
		return "[µ\u03BC]"
	case 'Ω':
		return "[Ω\u2126]"
	case 'K':
		return "[K\u212A]"
	case ' ':
		return "[" + spaceSigns + "]"
	case '-':
		return "-" // which no reader of ECMA-262's strict mode takes behind a backslash
	}
	return regexp.QuoteMeta(string(r))
}
