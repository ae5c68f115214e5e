package shape

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Spelled are numbers that are written out, in words of their own or in several
// ("treinta y cinco"): a hyphen in one is a space here.
type Spelled map[string]int

// SpelledOf are the words for one to twenty, and for all that is made of a ten and
// one to nine. What joins them takes their places in the lists. Articles are words
// for one as well.
func SpelledOf(ones, tens []string, joined func(ten, one int) string, articles ...string) Spelled {
	out := Spelled{}
	for _, w := range articles {
		out[w] = 1
	}
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
// What another word makes larger, or a decimal, is none: "a hundred and ten". Most
// texts have none, and are gone through once.
func (n *Numbers) Counted(text string) []Counted {
	var out []Counted
	var last, before Counted
	for w := nextWord(text, 0); w.Start < w.End; w = nextWord(text, w.End) {
		if value := n.Spelled[w.of(text)]; value > 0 {
			w = n.whole(text, w, value)
			if !n.larger(text, before, last, nextWord(text, w.End)) {
				out = append(out, w)
			}
		}
		before, last = last, w
	}
	return out
}

// of is a word in small letters.
func (w Counted) of(text string) string { return strings.ToLower(text[w.Start:w.End]) }

// larger says that one of the words beside a number makes another of it.
func (n *Numbers) larger(text string, beside ...Counted) bool {
	return slices.ContainsFunc(beside, func(w Counted) bool { return n.Hundreds[w.of(text)] })
}

// whole is a number's first word with those behind it that belong to the number.
func (n *Numbers) whole(text string, w Counted, value int) Counted {
	w.Value = value
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
	for size := 0; from < len(text); from += size {
		var letter bool
		if letter, size = letterAt(text, from); letter {
			break
		}
	}
	end := from
	for end < len(text) {
		letter, size := letterAt(text, end)
		if !letter {
			break
		}
		end += size
	}
	return Counted{Start: from, End: end}
}

// letterAt says whether a letter stands at a place, and how many bytes it takes.
func letterAt(text string, at int) (letter bool, size int) {
	if c := text[at]; c < utf8.RuneSelf {
		return 'a' <= c|' ' && c|' ' <= 'z', 1
	}
	r, size := utf8.DecodeRuneInString(text[at:])
	return unicode.IsLetter(r), size
}
