package chemical

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/language/words"
	"baybinder/generator/trade/working"
)

// In is the word as a label in a language has it. Source: CLP in each language,
// from memory.
func (w Word) In(say *words.Chemical) string {
	switch w {
	case Danger:
		return say.Danger
	case Warning:
		return say.Warning
	}
	return ""
}

// In is the statement in a language; in English where that has none.
func (s Statement) In(say *words.Chemical) string { return cmp.Or(say.Statements[s.Code], s.Text) }

// In is the precaution in a language; in English where that has none.
func (p Precaution) In(say *words.Chemical) string { return cmp.Or(say.Precautions[p.ID], p.Text) }

// Explain is the label with its working: the signal word from those of all
// statements, and which pictograms and statements give way to which.
func (l Label) Explain(say *words.Chemical) working.Working {
	all := slices.Concat(l.Statements, l.Covered)
	w := working.Working{Formula: say.Formula, Result: l.wordOrNone(say), Source: say.Source}
	var put []string
	for _, s := range all {
		put = append(put, strings.TrimSpace(s.Code+" "+s.Word.In(say)))
		w.Terms = append(w.Terms, working.Term{Sign: s.Code, Words: s.In(say), Value: signWords(say, s, all)})
	}
	w.Put = strings.Join(put, ", ")
	w.Assumes = l.Unsaid(say)
	for _, s := range l.Covered {
		w.Assumes = append(w.Assumes, fmt.Sprintf(say.Covered, s.Code))
	}
	if len(l.Optional) > 0 {
		w.Assumes = append(w.Assumes, fmt.Sprintf(say.Optional, l.Optional[0]))
	}
	w.Assumes = append(w.Assumes, say.OfTheChemical)
	return w
}

// Unsaid says of which statements the category is not known, so that the graver
// one is shown: a label must say it.
func (l Label) Unsaid(say *words.Chemical) []string {
	var out []string
	for _, s := range slices.Concat(l.Statements, l.Covered) {
		if c, is := twofold[s.Code]; is {
			out = append(out, fmt.Sprintf(say.Twofold, s.Code, c[0].Number, c[0].words(say), c[1].Number, c[1].words(say)))
		}
	}
	return out
}

// words are what a category brings onto a label: "Danger, GHS02".
func (c category) words(say *words.Chemical) string {
	if c.Sign == NoSign {
		return fmt.Sprintf(say.NoPictogram, c.Word.In(say))
	}
	return fmt.Sprintf(say.WithSign, c.Word.In(say), c.Sign)
}

func (l Label) wordOrNone(say *words.Chemical) string {
	if l.Word == NoWord {
		return say.None
	}
	return l.Word.In(say)
}

// signWords are the pictogram of a statement, or why it is not on the label.
func signWords(say *words.Chemical, s Statement, all []Statement) string {
	switch {
	case s.Sign == NoSign:
		return say.NoSign
	case outranked(s, all):
		return fmt.Sprintf(say.GivesWay, s.Sign)
	}
	return s.Sign.String() + ", " + say.Signs[s.Sign.String()]
}
