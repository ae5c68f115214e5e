// Package ppe finds the mandatory sign of a piece of protective gear.
package ppe

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"slices"
	"strings"
)

// signs are ISO 7010 numbers of gear; the first of which a word is found stands.
var signs = []string{"M013", "M019", "M004", "M003", "M026", "M009", "M017", "M016", "M008", "M014", "M018", "M015", "M010"}

// Sign is the ISO 7010 number for gear of this name in any language; M001, the general
// mandatory sign, where none is more exact.
func Sign(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return r == ' ' || r == ',' || r == '(' || r == ')' })
	joined := " " + strings.Join(words, " ")
	for _, s := range signs {
		if slices.ContainsFunc(language.All(), func(l *shape.Language) bool { return calls(l.Gear[s], joined) }) {
			return s
		}
	}
	return "M001"
}

// calls says that one of these words begins in a name.
func calls(words []string, name string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(name, " "+w) })
}
