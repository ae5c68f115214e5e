package shape

import (
	"slices"
	"strings"
	"unicode"
)

// Cutting is how a point cuts an energy.
type Cutting uint8

// How points cut.
const (
	Unsaid Cutting = iota
	Opened         // a switch, a vent valve
	Closed         // a valve, an earthing switch
)

// Cutting reads the name of a point by its noun: of "plug valve" the valve, of
// "switch of the vent" the switch.
func (a *Acts) Cutting(name string) Cutting {
	words := PlainWords(name)
	if end := slices.IndexFunc(words, func(x string) bool { return Among(a.Prepositions, x) }); end > 0 && !a.NounFirst {
		words = words[:end]
	}
	noun := a.noun(words)
	some := func(list string) bool {
		return slices.ContainsFunc(words, func(x string) bool { return a.Ends(list, x) || a.begins(list, x) })
	}
	switch {
	case noun == "":
		return Unsaid
	case a.Ends(a.Switches, noun) && some(a.Earthing), a.Ends(a.Valves, noun) && !some(a.Vents):
		return Closed
	case a.Ends(a.Valves, noun) && some(a.Blocks), a.Ends(a.Switches, noun) && some(a.Valves) && !a.NounFirst && a.Ends(a.Valves, words[len(words)-1]):
		return Unsaid // a double block and bleed in one name
	}
	return Opened
}

// noun is the switch or the valve that a name names: the last word but for
// such as "left" and "Q1", in Spanish the first.
func (a *Acts) noun(words []string) string {
	isNoun := func(x string) bool { return a.Ends(a.Switches, x) || a.Ends(a.Valves, x) }
	if a.NounFirst {
		if i := slices.IndexFunc(words, isNoun); i >= 0 {
			return words[i]
		}
		return ""
	}
	for _, x := range slices.Backward(words) {
		switch {
		case isNoun(x):
			return x
		case len(x) > 2 && !Among(a.Sides, x) && !strings.ContainsAny(x, "0123456789"):
			return ""
		}
	}
	return ""
}

// Ends says that a word is one of a list or, where nouns are glued together, ends
// in one: "Gashahn".
func (a *Acts) Ends(list, word string) bool {
	return Among(list, word) || a.Glued && anyOf(list, word, strings.HasSuffix)
}

// begins says that nouns are glued together and a word begins with one of a list:
// "Ablasshahn".
func (a *Acts) begins(list, word string) bool { return a.Glued && anyOf(list, word, strings.HasPrefix) }

func anyOf(list, word string, is func(word, part string) bool) bool {
	for w := range strings.FieldsSeq(list) {
		if is(word, w) {
			return true
		}
	}
	return false
}

// Among says that a word stands in a list of words separated by spaces.
func Among(list, word string) bool {
	return anyOf(list, word, func(word, one string) bool { return word == one })
}

// PlainWords are the words of a text, small and without the signs around them.
func PlainWords(text string) []string {
	var out []string
	for raw := range strings.FieldsSeq(text) {
		if w := PlainWord(raw); w != "" {
			out = append(out, w)
		}
	}
	return out
}

// PlainWord is a word, small and without the signs around it.
func PlainWord(w string) string {
	return strings.TrimFunc(strings.ToLower(w), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}
