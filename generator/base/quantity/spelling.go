package quantity

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// spelling is one way to write a unit.
type spelling struct {
	text  string
	unit  Unit
	prose bool // read in sentences only
}

// spellings holds every spelling by its first sign, the longest first, so that
// "N m" is tried before "N" and "min" before "m".
var spellings = indexSpellings()

func indexSpellings() map[rune][]spelling {
	index := map[rune][]spelling{}
	add := func(s spelling) {
		first, _ := utf8.DecodeRuneInString(s.text)
		index[first] = append(index[first], s)
	}
	for _, u := range Units(None) {
		if _, twin := u.onClock(); twin {
			continue
		}
		add(spelling{text: u.Symbol(), unit: u})
		for _, text := range u.entry().also {
			add(spelling{text: text, unit: u})
		}
		for _, text := range proseWords[u] {
			add(spelling{text: text, unit: u, prose: true})
		}
	}
	for _, list := range index {
		slices.SortStableFunc(list, func(a, b spelling) int { return cmp.Compare(len(b.text), len(a.text)) })
	}
	return index
}

// wording is where a unit stands.
type wording uint8

const (
	field    wording = iota // in a field of the manual
	sentence                // in a sentence, apart from its number
	glued                   // in a sentence, set against its number
)

// matchUnit returns the unit at the start of text and the bytes that it takes,
// none if there is no unit. Where a spelling has two meanings, want decides.
func matchUnit(text string, want Dimension, w wording) (Unit, int) {
	first, _ := utf8.DecodeRuneInString(text)
	for _, s := range spellings[fold(first)] {
		size := s.match(text)
		if size == 0 || s.prose && w == field || !unitEnds(text[size:], s.unit) {
			continue
		}
		if s.text == "in." && w != field {
			continue // the dot ends the sentence
		}
		if w == sentence && s.endsInch() && !inchEnds(text[size:]) {
			continue
		}
		if s.prose && !s.unit.isTime() && isRate(text[size:]) || s.unit == RevolutionPerMinute && s.prose && isTimeNext(text[size:]) {
			continue
		}
		return s.unit.meant(want), size
	}
	return Bare, 0
}

// UnitAt returns how many bytes at the start of a text spell a unit, none where it
// begins otherwise.
func UnitAt(text string) int {
	_, size := matchUnit(text, None, field)
	return size
}

// isRate reports whether what stands behind a unit's word makes a rate of it, "two
// litres per minute".
func isRate(rest string) bool {
	behind := strings.TrimLeftFunc(rest, isSpace)
	return slices.ContainsFunc([]string{"per ", "por ", "pro ", "je "}, func(word string) bool { return strings.HasPrefix(behind, word) })
}

// isTimeNext reports whether a unit of time stands behind "min-1": it is the end of
// "30 min-1 h".
func isTimeNext(rest string) bool {
	unit, size := matchUnit(strings.TrimLeftFunc(rest, isSpace), None, glued)
	return size > 0 && unit.isTime()
}

// meant returns the calendar's day or week where a calendar amount is wanted.
func (u Unit) meant(want Dimension) Unit {
	if twin, ok := u.onCalendar(); ok && want == Calendar {
		return twin
	}
	return u
}

// match returns the bytes of text that spell s, none if it begins otherwise.
func (s spelling) match(text string) int {
	same := 0 // nearly all are written with the signs of the list, or differ in a letter
	for same < min(len(s.text), len(text)) && text[same] == s.text[same] {
		same++
	}
	switch {
	case same == len(s.text):
		return same
	case same == len(text), ' ' < text[same] && text[same] < utf8.RuneSelf:
		return 0
	}
	at := 0
	for _, r := range s.text {
		got, size := utf8.DecodeRuneInString(text[at:])
		if fold(got) != r {
			return 0
		}
		at += size
	}
	return at
}

// fold returns the sign that r stands for: its own compatibility form, and a
// plain space for every kind of space that may stand before a unit.
func fold(r rune) rune {
	switch r {
	case '\u22C5', '\u0387':
		return '·'
	case '\u03BC':
		return 'µ'
	case '\u2126':
		return 'Ω'
	case '\u212A':
		return 'K'
	case '\t', '\n', '\r', '\u00A0', '\u2009', '\u202F':
		return ' '
	}
	return r
}

// unitEnds reports whether a unit may end before rest. It may not within a
// word, nor before a sign that makes another unit of it: N·mm, kg/m³, m². A
// time may be followed by the digits of its next part, "1h30min".
func unitEnds(rest string, unit Unit) bool {
	r, size := utf8.DecodeRuneInString(rest)
	switch {
	case size == 0:
		return true
	case isDigit(rest[0]) && unit.isTime():
		return true
	case unicode.IsLetter(r) || unicode.IsNumber(r) || unicode.IsMark(r):
		return isFlow(rest, unit)
	case strings.ContainsRune("_^*", fold(r)) || fold(r) == '·':
		return false
	case strings.ContainsRune("/-'’", r):
		next, _ := utf8.DecodeRuneInString(rest[size:])
		return !unicode.IsLetter(next)
	}
	return true
}

// endsInch reports whether the spelling ends in the word "in", which is more
// often no unit in a sentence.
func (s spelling) endsInch() bool { return s.text == "in" || strings.HasSuffix(s.text, " in") }

// afterInch are words that follow a length and hardly ever the word "in".
var afterInch = []string{"long", "wide", "deep", "thick", "high", "apart", "drive", "square", "bore", "pipe", "hose", "from", "by", "x", "to"}

// inchEnds reports whether an "in" before rest is the unit: it ends the
// phrase, or a word that speaks of length follows.
func inchEnds(rest string) bool {
	after := strings.TrimLeftFunc(rest, isSpace)
	if len(after) == len(rest) {
		return true
	}
	r, _ := utf8.DecodeRuneInString(after)
	if !unicode.IsLetter(r) {
		return !unicode.IsNumber(r)
	}
	return slices.ContainsFunc(afterInch, func(word string) bool {
		rest, ok := strings.CutPrefix(after, word)
		next, _ := utf8.DecodeRuneInString(rest)
		return ok && !unicode.IsLetter(next)
	})
}

func isSpace(r rune) bool { return fold(r) == ' ' }

func isDigit(b byte) bool { return '0' <= b && b <= '9' }
