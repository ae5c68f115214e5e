package numbers

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// bareNumber is one word for "to" or "at" behind a link and a number that has
// no unit, with what may make a range of it.
var bareNumber = regexp.MustCompile(`^\s*(?:to|at|a|hasta|en|auf|bis|mit)\s+(-?\d+(?:[.,]\d+)?)(?:\s*(?:to|a|bis|-|–)\s*(-?\d+(?:[.,]\d+)?)|\s*±\s*\d+(?:[.,]\d+)?)?`)

// noNoun says that a word can stand behind a number that is an amount: all others
// are taken for the noun of a count, "to 2 corners". The words are those of every
// language, as a shop writes more than one.
func noNoun(word string) bool {
	return slices.ContainsFunc(language.All(), func(l *shape.Language) bool { return l.Verbs.After[word] })
}

// bareNumbers are the numbers without a unit that a sentence has behind an act
// that sets something to a value: they are read in the register's unit.
func bareNumbers(s sentence.Sentence) []typed {
	var out []typed
	for _, l := range s.Links {
		behind := s.Text[min(l.End, len(s.Text)):nameless(s, l.End)] // a link may stand behind the end of its sentence
		m := bareNumber.FindStringSubmatchIndex(behind)
		if !l.Kind.Sets || m == nil || !alone(behind[m[1]:]) {
			continue
		}
		for g := range slices.Chunk(m[2:], 2) {
			if g[0] >= 0 {
				out = append(out, bare(s.Text, l, l.End+g[0], l.End+g[1]))
			}
		}
	}
	return out
}

// nameless is where the first link behind a place stands that prints no name of a thing,
// as time: and people: without words: what is before it ends there. Where there is none
// it is the end of the sentence.
func nameless(s sentence.Sentence, behind int) int {
	for _, l := range s.Links {
		if l.Start >= behind && l.Start <= len(s.Text) && l.Text == "" && l.To == nil && !l.Bad {
			return l.Start
		}
	}
	return len(s.Text)
}

// plainRange is a range without a unit, one end of which has decimals: "1.22 to
// 1.28", "between 1.22 and 1.28".
var plainRange = regexp.MustCompile(`(?:^|[\s(,:])(?:(\d+[.,]\d+|\d+)\s*(?:to|a|hasta|bis|-|–)\s*(\d+[.,]\d+|\d+)|(?:[Bb]etween|[Ee]ntre|[Zz]wischen)\s+(\d+[.,]\d+|\d+)\s+(?:and|y|und)\s+(\d+[.,]\d+|\d+))`)

// plainRanges are the ranges without a unit in a sentence that stops at a
// measurement without one, a density or a pH.
func plainRanges(s sentence.Sentence) []typed {
	var out []typed
	for _, l := range s.Links {
		if !isPlain(l.Link) {
			continue
		}
		for _, m := range plainRange.FindAllStringSubmatchIndex(s.Text, -1) {
			if m[2] < 0 {
				m = append(m[:2], m[6:]...) // "between" them
			}
			if strings.ContainsAny(s.Text[m[2]:m[5]], ".,") && alone(s.Text[m[1]:]) {
				out = append(out, bare(s.Text, l, m[2], m[3]), bare(s.Text, l, m[4], m[5]))
			}
		}
	}
	return out
}

// plainEnd is a number with decimals.
var plainEnd = regexp.MustCompile(`(?:^|[\s(,:])(\d+[.,]\d+)`)

// plainBounds are the numbers without a unit that such a sentence bounds: "at least
// 1.22".
func plainBounds(s sentence.Sentence, tag string) []typed {
	var out []typed
	for _, l := range s.Links {
		if !isPlain(l.Link) {
			continue
		}
		for _, m := range plainEnd.FindAllStringSubmatchIndex(s.Text, -1) {
			if t := bare(s.Text, l, m[2], m[3]); alone(s.Text[m[3]:]) && t.sided(s.Text, tag, spoken{}).side != quantity.Exact {
				out = append(out, t)
			}
		}
	}
	return out
}

// isPlain says that a link stops at a measurement without a unit, a density or a pH.
func isPlain(l *model.Link) bool {
	h, is := l.To.(*model.Hold)
	return is && (h.Limit.Unit == quantity.Plain || h.Limit.Unit == quantity.PH)
}

// bare is a number without a unit: it has one once it is held against a value.
func bare(text string, l sentence.Placed, start, end int) typed {
	number := strings.ReplaceAll(text[start:end], ",", ".")
	value, _ := strconv.ParseFloat(number, 64) // the pattern has figures alone
	_, after, _ := strings.Cut(number, ".")
	q := quantity.Quantity{Value: value, Digits: len(number), Decimals: len(after)}
	return typed{amountIn: amountIn{Found: quantity.Found{Quantity: q, Start: start, End: end}, said: text[start:end]}, bare: l.To}
}

// alone says whether a number is followed by no unit and no noun.
func alone(rest string) bool {
	rest = strings.TrimRight(strings.TrimLeft(rest, "*_"), " \n\t")
	if rest == "" || strings.ContainsAny(rest[:1], ",.;:)!?") {
		return !hasFigure(rest[:min(2, len(rest))]) // "10:00" is one number
	}
	if !strings.ContainsAny(rest[:1], " \n\t") {
		return false
	}
	first := strings.ToLower(strings.Fields(rest)[0])
	return noNoun(strings.TrimRight(first, ",.;:")) || strings.IndexAny(first, "(–—") == 0
}

// bareAgainst reads a number in the unit of each value that is stated of the
// thing that the link acts on.
func (b *beside) bareAgainst(t typed) []rival {
	rivals, most := ofThing(b.rivals, t.bare), ofThing(b.most, t.bare)
	if slices.ContainsFunc(rivals, func(r rival) bool { return quantity.Agrees(t.inUnitOf(r.Quantity), r.Quantity) }) ||
		slices.ContainsFunc(most, func(r rival) bool { return t.Value <= r.Value }) {
		return nil
	}
	return append(rivals, most...)
}

// inUnitOf is a number without a unit, in that of a value.
func (t typed) inUnitOf(q quantity.Quantity) quantity.Quantity {
	q.Value, q.Digits, q.Decimals = t.Value, t.Digits, t.Decimals
	return q
}

func ofThing(list []rival, n model.Named) []rival {
	var out []rival
	for _, r := range list {
		if r.of == n {
			out = append(out, r)
		}
	}
	return out
}
