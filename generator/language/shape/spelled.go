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
type Counted struct {
	Start, End int
	Value      float64
}

// word is a word of a text, in small letters, or a part of one that is glued
// together of numbers.
type word struct {
	start, end int
	said       string
}

// longestNumber is more words than any number takes.
const longestNumber = 14

// Counted are the numbers that are written out in a text, in order: "two hundred and
// ten", "one and a half", "half a". What another word makes another number, "two
// point five", "a few hundred", is none. Most texts have none, and are gone through
// once.
func (n *Numbers) Counted(text string) []Counted {
	var out []Counted
	last := ""
	for w := nextWord(text, 0); w.start < w.end; w = nextWord(text, w.end) {
		if n.mayBegin(w.said) {
			run := n.behind(text, n.parted(w))
			if value, used := n.number(saidOf(run)); used > 0 {
				w.end = run[used-1].end
				if !n.Apart[last] && !n.makesAnother(saidOf(run[used:])) {
					out = append(out, Counted{w.start, w.end, value})
				}
			}
		}
		last = w.said
	}
	return out
}

// Counting are numbers that know with which words one begins: most words of a text
// are none of these.
func Counting(n Numbers) Numbers {
	n.First = Set{n.Thousand: true}
	for _, list := range []Spelled{n.Spelled, n.Hundreds} {
		for said := range list {
			n.First.begin(said)
		}
	}
	for _, p := range n.Parts {
		n.First.begin(p.Said)
	}
	return n
}

func (s Set) begin(phrase string) {
	first, _, _ := strings.Cut(phrase, " ")
	s[first] = true
}

// mayBegin says that a number may begin with a word, or with the first part of it.
func (n *Numbers) mayBegin(said string) bool {
	return n.First[said] ||
		slices.ContainsFunc(n.Glued, func(glue string) bool { return strings.Contains(said, glue) }) ||
		slices.ContainsFunc(n.Before, func(part string) bool { return strings.HasPrefix(said, part) })
}

// makesAnother says that the words behind a number make another of it.
func (n *Numbers) makesAnother(behind []string) bool {
	return len(behind) > 0 && (n.Apart[behind[0]] || n.Hundreds[behind[0]] > 0 || behind[0] == n.Thousand)
}

// number reads the number with which words begin, and how many of them it takes.
func (n *Numbers) number(words []string) (value float64, used int) {
	if part, used := partOf(words, n.Parts); used > 0 {
		return part, used
	}
	whole, used := n.below1000(words)
	if used < len(words) && words[used] == n.Thousand {
		used++
		rest, more := n.andBelow(words[used:], n.below1000)
		whole, used = max(whole, 1)*1000+rest, used+more
	}
	value = float64(whole)
	if used == 0 {
		return 0, 0
	}
	if part, more := partOf(words[used:], n.Parts); more > 0 && whole > 1 { // "three quarters"; the one of "one quarter" is no number of its own
		return value * part, used + more
	}
	part, more := partOf(words[used:], n.Plus)
	return value + part, used + more
}

// below1000 reads hundreds, tens and ones.
func (n *Numbers) below1000(words []string) (value, used int) {
	value, used = n.below100(words)
	if used == len(words) {
		return value, used
	}
	hundred := n.Hundreds[words[used]]
	if hundred == 0 || used > 0 && hundred > 100 {
		return value, used
	}
	used++
	rest, more := n.andBelow(words[used:], n.below100)
	return max(value, 1)*hundred + rest, used + more
}

// andBelow reads what stands behind a hundred or a thousand, with or without an
// "and": nothing where it is another number, "one hundred and two hundred".
func (n *Numbers) andBelow(words []string, below func([]string) (value, used int)) (value, used int) {
	and := 0
	if len(words) > 0 && words[0] == n.And {
		and = 1
	}
	value, used = below(words[and:])
	if used == 0 || n.makesAnother(words[and+used:]) {
		return 0, 0
	}
	return value, and + used
}

// below100 reads the longest of the words for one to ninety-nine.
func (n *Numbers) below100(words []string) (value, used int) {
	for i := 1; i <= min(3, len(words)); i++ {
		if v := n.Spelled[strings.Join(words[:i], " ")]; v > 0 {
			value, used = v, i
		}
	}
	return value, used
}

// partOf is the part of one with whose phrase words begin, and how many words it
// takes: none where they begin otherwise.
func partOf(words []string, phrases []Fraction) (part float64, used int) {
	for _, p := range phrases {
		if list := strings.Fields(p.Said); len(list) <= len(words) && slices.Equal(list, words[:len(list)]) {
			return p.Of, len(list)
		}
	}
	return 0, 0
}

// PlusBehind is the part of one that "and a half" adds at a place in a text, and how
// many bytes it takes: none where something else stands there.
func (n *Numbers) PlusBehind(text string, at int) (part float64, size int) {
	if at == len(text) || text[at] != ' ' {
		return 0, 0
	}
	rest := text[at+1:]
	for _, p := range n.Plus {
		if strings.HasPrefix(rest, p.Said) && !letterIn(rest, len(p.Said)) {
			return p.Of, 1 + len(p.Said)
		}
	}
	return 0, 0
}

func letterIn(text string, at int) bool {
	if at >= len(text) {
		return false
	}
	letter, _ := letterAt(text, at)
	return letter
}

func saidOf(words []word) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = w.said
	}
	return out
}

// behind is a word's parts with the words behind it, as far as a space or a hyphen
// alone stands between them.
func (n *Numbers) behind(text string, parts []word) []word {
	for len(parts) < longestNumber {
		end := parts[len(parts)-1].end
		next := nextWord(text, end)
		if next.start != end+1 || next.start == next.end || text[end] != ' ' && text[end] != '-' {
			break
		}
		parts = append(parts, n.parted(next)...)
	}
	return parts
}

// parted are the parts of a word that is glued together of numbers,
// "zweihundertdreißig", or of a part of one and its unit, "Viertelstunde"; of another,
// the word.
func (n *Numbers) parted(w word) []word {
	if len(w.said) != w.end-w.start {
		return []word{w} // small letters of another length
	}
	var out []word
	for _, glue := range n.Glued {
		if at := strings.Index(w.said, glue); at >= 0 && len(w.said) > len(glue) {
			for _, cut := range [][2]int{{0, at}, {at, at + len(glue)}, {at + len(glue), len(w.said)}} {
				if cut[0] < cut[1] {
					out = append(out, n.parted(w.part(cut[0], cut[1]))...)
				}
			}
			break
		}
	}
	if len(out) > 0 && !slices.ContainsFunc(out, func(p word) bool { return !n.First[p.said] && !isPart(p.said, n.Plus) }) {
		return out
	}
	for _, part := range n.Before {
		if strings.HasPrefix(w.said, part) && len(w.said) > len(part) {
			return []word{w.part(0, len(part)), w.part(len(part), len(w.said))}
		}
	}
	return []word{w}
}

func (w word) part(from, to int) word { return word{w.start + from, w.start + to, w.said[from:to]} }

func isPart(said string, list []Fraction) bool {
	return slices.ContainsFunc(list, func(p Fraction) bool { return p.Said == said })
}

// nextWord is the first word in a text from a place on, of letters alone.
func nextWord(text string, from int) word {
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
	return word{from, end, strings.ToLower(text[from:end])}
}

// letterAt says whether a letter stands at a place, and how many bytes it takes.
func letterAt(text string, at int) (letter bool, size int) {
	if c := text[at]; c < utf8.RuneSelf {
		return 'a' <= c|' ' && c|' ' <= 'z', 1
	}
	r, size := utf8.DecodeRuneInString(text[at:])
	return unicode.IsLetter(r), size
}
