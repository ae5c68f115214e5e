package page

import (
	"strings"
	"testing"

	"baybinder/generator/model"
)

// One is no plural, in either language; the numbers are those of the hold.
func TestTriesAreCounted(t *testing.T) {
	for lang, want := range map[string][3]string{
		"en": {"", "One try only.", "At most 2 tries."},
		"es": {"", "Un solo intento.", "Intentos: 2 como máximo."},
	} {
		s := siteOf(t, map[string]string{"shop.yaml": "title: Shop\nlanguage: " + lang + "\n"})
		for n, text := range want {
			var v Hold
			s.triesAndCall(&v, &model.Hold{Tries: n})
			if got := strings.Join(v.After, " "); got != text || v.Tries != n {
				t.Errorf("%s, %d: %q", lang, n, got)
			}
		}
	}
}
