package syntax

import (
	"fmt"
	"slices"
	"testing"
	"unicode"

	"baybinder/generator/base/position"
)

// Known: SEEN, FROM MEMORY.

// The first sign that no text needs is told, and none that one needs.
func TestStray(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ text, want string }{
		{"a plain text\twith a tab\nand ± µ ° Ω – “ ” ’ \u00a0\u2009\u202f\u2011", ""},
		{"a\r\nb\rc", ""}, // line ends all
		{"\ufeffa byte-order mark, and\ufeff one within", ""},
		{"so\u00adft, zero\u200bwidth, no\u200cn, jo\u200din, w\u2060ord, \u200e\u200f\u061c", ""},
		{"👩🏽‍🔧️, é, ש\u05c1", ""},
		{"ab\x1b[31m\x07", "1:3 U+001B"},
		{"a\n\u00a0\x7f", "2:2 U+007F"},
		{"a\u0085b", "1:2 U+0085"},
		{"2 \ufffd 1", "1:3 U+FFFD"},
		{"2 \x00 1", "1:3 U+FFFD"}, // as CommonMark reads it
		{"a\u202eb\u202c", "1:2 U+202E"},
		{"a \u2066b\u2069", "1:3 U+2066"},                               // nothing needs it
		{"א \u2066b\u2069 א", ""},                                       // here something does
		{"א \u202ab \u2067א\u2069\u202c א", ""},                         // one in the other
		{"א \u2066b א", "1:3 U+2066"},                                   // without an end
		{"א \u2066b\nא\u2069", "1:3 U+2066"},                            // without one in its line
		{"א b\u2069 א", "1:4 U+2069"},                                   // an end alone
		{"א \u2066b\u202c א", "1:3 U+2066"},                             // another's end
		{"א \u202db\u202c א", "1:3 U+202D"},                             // against the letters' own direction
		{"א \u2066b\u2069\nc \u2068d\u2069", "2:3 U+2068"},              // each line by itself
		{"א \u202b\u2066b\u202c\u2069 א", "1:3 U+202B"},                 // crossed
		{"\u2067\u2069א, ܐ, ހ, ߊ, 𞤀: \u2068x\u2069, \u202by\u202c", ""}, // of five scripts
	} {
		got := ""
		for _, f := range stray(position.NewFile("a.md", c.text)) {
			line, col := f.At.LineCol()
			got += fmt.Sprintf("%d:%d U+%04X", line, col, []rune(f.At.Text())[0])
		}
		if got != c.want {
			t.Errorf("%q: %q, want %q", c.text, got, c.want)
		}
	}
}

// What steers the order of letters is listed by the Unicode Character
// Database (Bidi_Control), as the standard library has it: all of it is judged but
// the three marks, which turn nothing. Which of them a line may need is from memory
// of UAX #9.
func TestWhatTurnsIsWhatUnicodeLists(t *testing.T) {
	t.Parallel()
	marks := []rune{'\u061c', '\u200e', '\u200f'}
	for r := rune(0); r <= unicode.MaxRune; r++ {
		if want := unicode.Is(unicode.Bidi_Control, r) && !slices.Contains(marks, r); turns(r) != want {
			t.Errorf("U+%04X turns: %v, want %v", r, turns(r), want)
		}
	}
}
