package numbers

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// toolsRange says whether an amount is an end of a range that a linked tool has.
func (b *beside) toolsRange(text string, found []amountIn, i int) bool {
	pair := func(low, high int) bool {
		if low < 0 || high >= len(found) || !joinRange(text[found[low].End:found[high].Start]) {
			return false
		}
		return slices.ContainsFunc(b.tools, func(t *model.Tool) bool {
			ends := numbersOf(t.Range)
			return len(ends) == 2 && quantity.Agrees(found[low].Quantity, ends[0]) && quantity.Agrees(found[high].Quantity, ends[1])
		})
	}
	return pair(i, i+1) || pair(i-1, i)
}

// joinRange says that what stands between two amounts makes one range of them.
func joinRange(between string) bool {
	between = strings.TrimSpace(between)
	return between == "-" || between == "–" || inAnyLanguage(func(l *shape.Language) bool {
		return slices.ContainsFunc(l.Asides.Ranges, func(r shape.Range) bool { return r.Between == between })
	})
}

// inAnyLanguage asks of the words of every language, as a shop writes more than one.
func inAnyLanguage(is func(l *shape.Language) bool) bool {
	return slices.ContainsFunc(language.All(), is)
}

// withLowerEnds are the amounts of a text, with the lower ends of ranges that have
// the unit of the upper one, "de 36 a 44 N·m", "between six and eight bar".
func withLowerEnds(text, tag string) []amountIn {
	var out []amountIn
	for _, q := range amountsIn(text, tag) {
		read := out
		for _, low := range lowerEnds(text, q, tag) {
			if !slices.ContainsFunc(read, func(a amountIn) bool { return a.End == low.End }) {
				out = append(out, low)
			}
		}
		out = append(out, q)
	}
	return out
}

// lowerEnds are the ways to read the number before the word that makes a range of it
// and an amount.
func lowerEnds(text string, q amountIn, tag string) []amountIn {
	before := strings.TrimRightFunc(text[:q.Start], unicode.IsSpace)
	for _, l := range language.All() {
		for _, r := range l.Asides.Ranges {
			head, joined := strings.CutSuffix(before, " "+r.Between)
			if !joined {
				continue
			}
			low, is := numberAtEnd(head, tag)
			if is && (r.Before == "" || endsIn(wordsBefore(head[:low.Start]), []string{r.Before})) {
				return sharing(text, low, q, tag)
			}
		}
	}
	return nil
}

// sharing are the ways to read a number in a text in the unit of the amount behind it. One
// below zero may be the lower end of a deviation alone.
func sharing(text string, number quantity.Place, upper amountIn, tag string) []amountIn {
	said := text[number.Start:number.End]
	all := amountsIn(said+" "+upper.Unit.Symbol(), tag)
	if len(all) == 0 && upper.Value > 0 {
		all = amountsIn(said+" to "+text[upper.Start:upper.End], tag)
		all = all[:max(0, len(all)-1)]
	}
	for i := range all {
		all[i].Start, all[i].End = number.Start, number.End
	}
	return all
}

// figuresAtEnd is a number in figures that stands alone at the end of a text.
var figuresAtEnd = regexp.MustCompile(`(?:^|[\s(\x01])([-−]?\d+(?:[.,]\d+)*)$`)

// numberAtEnd is the number with which a text ends, in figures or written out.
func numberAtEnd(text, tag string) (quantity.Place, bool) {
	if m := figuresAtEnd.FindStringSubmatchIndex(text); m != nil {
		return quantity.Place{Start: m[2], End: m[3]}, true
	}
	if spoken := language.Known(tag); spoken != nil {
		for _, w := range spoken.Numbers.Counted(text) {
			if w.End == len(text) {
				return quantity.Place{Start: w.Start, End: w.End}, true
			}
		}
	}
	return quantity.Place{}, false
}

// mostInWords is up to where both ends of a range are written out: "one to two bar".
const mostInWords = 12

// counts says whether what could be the lower end of a range is a count or a
// number of something: "all 4 to 40 N·m", "bolts 1 and 4 to 40 N·m", "one by one to
// 40 N·m".
func counts(text, tag string, found []amountIn, i int) bool {
	low := found[i]
	if i+1 == len(found) || !joinRange(text[low.End:found[i+1].Start]) {
		return false
	}
	if _, is := numberAtEnd(text[:low.End], tag); low.Decimals > 0 || !is && !isFigure(text[low.End-1]) {
		return false // it has a unit of its own, or is no count
	}
	before := strings.Fields(strings.ToLower(text[:low.Start]))
	n, written := len(before), !isFigure(text[low.Start])
	pair := written && !isFigure(text[found[i+1].Start]) && found[i+1].Value <= mostInWords
	switch {
	case written && !pair && low.Value == 1:
		return true // "con una a 40 N·m"
	case n == 0:
		return false
	case isDuration(low.Quantity):
		return inAnyLanguage(func(l *shape.Language) bool { return l.Asides.AllOf[before[n-1]] })
	case n > 1 && inAnyLanguage(func(l *shape.Language) bool { return isCount(l, before[n-2]) }):
		return true
	case pair || inAnyLanguage(func(l *shape.Language) bool { return l.Asides.RangeBehind[before[n-1]] }):
		return false
	}
	return written || !strings.HasSuffix(before[n-1], string(sentence.Hole)) && !strings.ContainsAny(before[n-1][len(before[n-1])-1:], ",;:(")
}

// isCount says that a word counts: "one" of "one by one", "each" of "each of four".
func isCount(l *shape.Language, word string) bool {
	return l.Numbers.Spelled[word] > 0 || l.Asides.AllOf[word]
}

func isFigure(c byte) bool { return c >= '0' && c <= '9' }
