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
		return slices.ContainsFunc(words, func(x string) bool { return Among(list, x) })
	}
	switch {
	case noun == "":
		return Unsaid
	case Among(a.Switches, noun) && some(a.Earthing), Among(a.Valves, noun) && !some(a.Vents):
		return Closed
	case Among(a.Valves, noun) && some(a.Blocks), Among(a.Switches, noun) && some(a.Valves) && !a.NounFirst && Among(a.Valves, words[len(words)-1]):
		return Unsaid // a double block and bleed in one name
	}
	return Opened
}

// noun is the switch or the valve that a name names: the last word but for
// such as "left" and "Q1", in Spanish the first.
func (a *Acts) noun(words []string) string {
	isNoun := func(x string) bool { return Among(a.Switches, x) || Among(a.Valves, x) }
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

// Among says that a word stands in a list of words separated by spaces.
func Among(list, word string) bool {
	for w := range strings.FieldsSeq(list) {
		if w == word {
			return true
		}
	}
	return false
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
