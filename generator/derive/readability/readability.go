// Package readability says how hard a text is to read, by the published formulas over words, sentences and syllables.
//
// The formulas were made on running prose. No limit for a workshop's steps is
// published: what comes out is a figure to compare texts by, and no verdict.
//
// # Decided where the format is silent
//
// It is a figure on the snag list and no finding: no limit is published for a workshop's steps,
// and short orders read easily in any case. The texts are those of the advice on writing, counted
// by its rules. A number with its unit, a range, a code (a word with a figure in it) and a quote
// are one word each and have no part in the mean of syllables. A word without vowels has a
// syllable a letter; the parts of a hyphenated term are counted one by one. Under 100 words,
// Flesch's sample, no figure is given. Each language has its own table, for the values of two
// formulas do not compare; a translation counts by its own words.
package readability

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// Enough is how many words a text should have: Flesch counts samples of 100
// words (J. Applied Psychology 32, 1948, from memory).
const Enough = 100

// Count is what the formulas need of a text.
type Count struct {
	Words     int
	Sentences int
	Longest   int // words of the longest sentence
	Spoken    int // the words whose syllables are counted: those that are no figure, code or quote
	Syllables int
}

// Add counts another text behind this one.
func (c *Count) Add(o Count) {
	c.Words += o.Words
	c.Sentences += o.Sentences
	c.Longest = max(c.Longest, o.Longest)
	c.Spoken += o.Spoken
	c.Syllables += o.Syllables
}

// sentence is the mean length of a sentence in words.
func (c Count) sentence() float64 { return float64(c.Words) / float64(c.Sentences) }

// word is the mean length of a word in syllables.
func (c Count) word() float64 { return float64(c.Syllables) / float64(c.Spoken) }

// Ease is how easy a text is to read, about 0 (very hard) to 100 (very easy);
// short or long words lead beyond both. It is false for a text without words,
// and for a language that no formula here was made for. The values of two
// languages do not compare.
//
// The formulas stand with their languages.
func Ease(c Count, tag string) (ease float64, known bool) {
	return c.by(formulas(tag).Ease)
}

// Grade is the school year in the United States whose pupils read an English
// text; false as Ease is.
func Grade(c Count, tag string) (grade float64, known bool) {
	return c.by(formulas(tag).Grade)
}

func (c Count) by(f *shape.Formula) (value float64, known bool) {
	if f == nil || c.Sentences == 0 || c.Spoken == 0 {
		return 0, false
	}
	return f.Of(c.sentence(), c.word()), true
}

// formulas are a language's own; none are borrowed, for a formula says nothing
// of another language.
func formulas(tag string) *shape.Language {
	if l := language.Known(tag); l != nil {
		return l
	}
	return &shape.Language{}
}

// syllablesOf is the counter of a language, by words in small letters; nil
// where there is none.
func syllablesOf(tag string) func(word []byte) int { return formulas(tag).Syllables }
