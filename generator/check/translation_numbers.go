package check

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
)

// counted are the numbers of texts in a language.
type counted struct {
	figures []string          // each once, sorted
	large   map[string]string // what a figure is where its points part the thousands: "2.000" may be 2000
	words   []spelled         // as often as they are written out
}

// spelled is a number that is written out.
type spelled struct{ value, said string }

func countedIn(tag string, texts []string) counted {
	out := counted{figures: figures(tag, texts), large: largeFigures(tag, texts)}
	spoken := language.Known(tag)
	if spoken == nil {
		return out
	}
	for _, text := range texts {
		for _, c := range spoken.Numbers.Counted(text) {
			if whole := int(c.Value); whole > 0 { // a half stands elsewhere in another language: "dos vueltas y media"
				out.words = append(out.words, spelled{strconv.Itoa(whole), text[c.Start:c.End]})
			}
		}
	}
	return out
}

// otherFigures says which numbers stand on one side only; no words where none
// does. A number may be in figures on one side and written out on the other. What
// is written out on one side alone may be said without a number on the other
// ("both", "ambos"); it is told where the other side has another one.
func otherFigures(original, here counted) finding.Words {
	return apartWords(figuresApart(original, here))
}

// figuresApart are the numbers that only the original has, and those that only the
// other text has.
func figuresApart(original, here counted) (lost, more []string) {
	lost, more = original.figuresWithout(here), here.figuresWithout(original)
	lostWords, moreWords := original.wordsWithout(here), here.wordsWithout(original)
	if len(lostWords) > 0 && len(moreWords) > 0 {
		lost, more = append(lost, lostWords...), append(more, moreWords...)
	}
	return lost, more
}

func apartWords(lost, more []string) finding.Words {
	gone, added := strings.Join(lost, " "), strings.Join(more, " ")
	switch {
	case gone != "" && added != "":
		return finding.Say("%s is missing; %s is new", gone, added)
	case gone != "":
		return finding.Say("%s is missing", gone)
	case added != "":
		return finding.Say("%s is new", added)
	}
	return finding.Words{}
}

// figuresWithout are the figures that the other side has in no form.
func (n counted) figuresWithout(other counted) []string {
	return slices.DeleteFunc(less(n.figures, other.figures), func(figure string) bool {
		large, maybe := n.large[figure]
		return maybe && slices.Contains(other.figures, large) ||
			slices.ContainsFunc(other.figures, func(f string) bool { return other.large[f] == figure }) ||
			slices.ContainsFunc(other.words, func(w spelled) bool { return w.value == figure })
	})
}

// wordsWithout are the numbers written out that the other side has less often, and
// not in figures. One is an article or a pronoun as often, and is left out.
func (n counted) wordsWithout(other counted) []string {
	left := slices.Clone(other.words)
	var out []string
	for _, w := range n.words {
		if w.value == "1" {
			continue
		}
		i := slices.IndexFunc(left, func(o spelled) bool { return o.value == w.value })
		switch {
		case i >= 0:
			left = slices.Delete(left, i, i+1)
		case !slices.Contains(other.figures, w.value):
			out = append(out, w.said)
		}
	}
	return out
}
