package shape

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Spelled are numbers that are written out, in words of their own or in several
// ("treinta y cinco"): a hyphen in one is a space here.
type Spelled map[string]int

// SpelledOf are the words for one to twenty, and for all that is made of a ten and
// one to nine. What joins them takes their places in the lists.
func SpelledOf(ones, tens []string, joined func(ten, one int) string) Spelled {
	out := Spelled{}
	for i, w := range ones {
		out[w] = i + 1
	}
	for i, ten := range tens {
		out[ten] = 20 + 10*i
		for one := range 9 {
			out[joined(i, one)] = out[ten] + one + 1
		}
	}
	return out
}

// Counted is a number that is written out in a text: the bytes of it, and its value.
type Counted struct{ Start, End, Value int }

// Counted are the numbers below a hundred that are written out in a text, in order.
// What another word makes larger, or a decimal, is none: "a hundred and ten".
func (n *Numbers) Counted(text string) []Counted {
	var out []Counted
	var last, before string
	for w := nextWord(text, 0); w.Start < w.End; w = nextWord(text, w.End) {
		if w = n.counted(text, w); w.Value > 0 && !n.Hundreds[last] && !n.Hundreds[before] && !n.Hundreds[nextWord(text, w.End).of(text)] {
			out = append(out, w)
		}
		before, last = last, w.of(text)
	}
	return out
}

// of is a word in small letters.
func (w Counted) of(text string) string { return strings.ToLower(text[w.Start:w.End]) }

// counted is a word with its value, with the words behind it that belong to its
// number.
func (n *Numbers) counted(text string, w Counted) Counted {
	w.Value = n.Spelled[w.of(text)]
	if w.Value == 0 {
		return w
	}
	phrase, end := w.of(text), w.End
	for range 2 {
		next := nextWord(text, end)
		if next.Start != end+1 || text[end] != ' ' && text[end] != '-' {
			break
		}
		phrase, end = phrase+" "+next.of(text), next.End
		if value := n.Spelled[phrase]; value > 0 {
			w.End, w.Value = end, value
		}
	}
	return w
}

// nextWord is the first word in a text from a place on, of letters alone.
func nextWord(text string, from int) Counted {
	start := strings.IndexFunc(text[from:], unicode.IsLetter)
	if start < 0 {
		return Counted{}
	}
	start += from
	end := start
	for end < len(text) {
		r, size := utf8.DecodeRuneInString(text[end:])
		if !unicode.IsLetter(r) {
			break
		}
		end += size
	}
	return Counted{Start: start, End: end}
}
