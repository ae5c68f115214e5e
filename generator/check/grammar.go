package check

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// grammar is that of a text's language.
type grammar struct{ shape.Grammar }

// grammars are those of the languages, by code; a text in another is read by
// none.
var grammars = byCode(func(l *shape.Language) *grammar { return &grammar{l.Grammar} })

// byCode makes something of each language, to be found by its code.
func byCode[T any](of func(*shape.Language) T) map[string]T {
	out := map[string]T{}
	for _, l := range language.All() {
		out[l.Code] = of(l)
	}
	return out
}

// verb says whether the word at i is an imperative. Behind and, a verb needs
// what it acts on: "and lift the lid", not "and lift".
func (g *grammar) verb(s sentence, i int, joined bool) bool {
	if g == nil || !g.Verbs[s[i].said] && !g.Either[s[i].said] {
		return false
	}
	noun := g.Either[s[i].said]
	if i+1 == len(s) {
		return !joined && !noun
	}
	next := s[i+1]
	switch {
	case g.Objects[next.said]:
		return true
	case next.link != nil && next.link != s[i].link: // the thing's own name
		return !noun
	case noun:
		return !joined && g.Toward[next.said] // "lift out", and not "release of the press"
	case next.said == "" || g.Ways[next.said]: // an amount, or whereto
		return true
	}
	return !joined
}

func (g *grammar) joins(said string) bool { return g != nil && g.Joiners[said] }

func (g *grammar) conditional(said string) bool { return g != nil && g.Conditions[said] }

// atOnce says that what a sentence asks for is done at the same time.
func (g *grammar) atOnce(s sentence) bool {
	for i := range s {
		for _, words := range g.Same {
			if says(s[i:], words) {
				return true
			}
		}
	}
	return false
}
