package english_test

import (
	"testing"

	"baybinder/generator/language/english"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/spanish"
)

func TestCountedSaysWhatThereIs(t *testing.T) {
	of := map[string]*shape.Language{"en": &english.Language, "es": &spanish.Language}
	for _, c := range []struct {
		language             string
		links, calls, derive int
		want                 string
	}{
		{"en", 6, 1, 2, "6 in steps, 1 procedure performed, 2 steps that follow from the strip"},
		{"en", 1, 0, 0, "1 in a step"},
		{"es", 0, 2, 1, "2 procedimientos que se hacen, 1 paso que se deduce del desmontaje"},
		{"en", 0, 0, 0, ""},
	} {
		if got := of[c.language].Counted.Say(c.links, c.calls, c.derive); got != c.want {
			t.Errorf("%q, not %q", got, c.want)
		}
	}
}
