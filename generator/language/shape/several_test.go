package shape_test

import (
	"testing"

	"baybinder/generator/language"
)

// What is said of several, from memory.
//
// Known: FROM MEMORY.
func TestSeveral(t *testing.T) {
	for _, c := range []struct {
		tag, word, name string
		want            bool
	}{
		{"en", "four", "seat bolt", true}, {"en", "4", "seat bolt", true}, {"en", "Both", "wheel chock", true}, {"en", "twenty", "bolt, M8", true},
		{"en", "one", "seat bolt", false}, {"en", "1", "seat bolt", false}, {"en", "the", "seat bolt", false}, {"en", "", "seat bolt", false},
		{"en", "four", "seat bolts", false}, {"en", "four", "bolts of the lid", false}, {"en", "four", "bolt of the brackets", true}, {"en", "two", "bolts, M8", false}, {"en", "two", ",", false},
		{"es", "cuatro", "tornillo de las tapas", true}, {"es", "los", "tornillo", true}, {"es", "las", "tuercas de la rueda", false}, {"es", "el", "tornillo", false}, {"es", "un", "tornillo", false},
		{"de", "vier", "Deckelschraube", true}, {"de", "beide", "Keil", true}, {"de", "die", "Deckelschraube", false}, {"de", "eine", "Deckelschraube", false},
		{"de", "vier", "Deckelschrauben", false}, {"de", "vier", "Muttern am Flansch", false}, {"de", "vier", "Mutter am Flanschen", true},
	} {
		if got := language.Known(c.tag).OfSeveral(c.word, c.name); got != c.want {
			t.Errorf("%s: %q before %q: %v", c.tag, c.word, c.name, got)
		}
	}
}
