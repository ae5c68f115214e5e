// Package ppe finds the mandatory sign of a piece of protective gear.
package ppe

import "strings"

// signs are ISO 7010 numbers with the words, English and Spanish, by which the
// trade calls the gear; the first that is found stands.
var signs = []struct {
	sign  string
	words []string
}{
	{"M013", []string{"face shield", "visor", "arc hood", "pantalla facial", "careta"}},
	{"M019", []string{"welding", "soldar", "soldadura"}},
	{"M004", []string{"goggles", "glasses", "eye protection", "spectacles", "gafas"}},
	{"M003", []string{"ear", "hearing", "oído", "auricular"}},
	{"M026", []string{"apron", "delantal", "mandil"}},
	{"M009", []string{"glove", "gauntlet", "guante"}},
	{"M017", []string{"respirator", "breathing", "respirador"}},
	{"M016", []string{"mask", "mascarilla"}},
	{"M008", []string{"boot", "shoe", "footwear", "calzado", "bota"}},
	{"M014", []string{"helmet", "hard hat", "casco"}},
	{"M018", []string{"harness", "arnés"}},
	{"M015", []string{"high-visibility", "hi-vis", "alta visibilidad"}},
	{"M010", []string{"overall", "coverall", "suit", "clothing", "ropa", "traje"}},
}

// Sign is the ISO 7010 number for gear of this name; M001, the general
// mandatory sign, where none is more exact.
func Sign(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return r == ' ' || r == ',' || r == '(' || r == ')' })
	joined := " " + strings.Join(words, " ")
	for _, s := range signs {
		for _, w := range s.words {
			if strings.Contains(joined, " "+w) {
				return s.sign
			}
		}
	}
	return "M001"
}
