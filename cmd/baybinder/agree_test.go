package main

import "testing"

// A shop says yes in its own language, with its first letter or in English; all else
// is no, as nothing is written by it.
func TestYesIsSaidInTheShopsLanguage(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		language, answer string
		yes              bool
	}{
		{"", "y", true}, {"", "Yes", true}, {"", "j", false}, {"", "s", false}, {"", "", false}, {"", "n", false}, {"", "yesterday", false},
		{"de", "j", true}, {"de", "Ja", true}, {"de", "y", true}, {"de", "s", false}, {"de", "nein", false}, {"de", "jein", false}, {"de-CH", "j", true},
		{"es", "s", true}, {"es", "Sí", true}, {"es", "si", true}, {"es", "sí.", true}, {"es", "y", true}, {"es", "n", false}, {"es", "j", false}, {"es", "", false},
	} {
		if got := (&output{language: c.language}).saysYes(c.answer); got != c.yes {
			t.Errorf("%q in %q is yes: %v", c.answer, c.language, got)
		}
	}
}
