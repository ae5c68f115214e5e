package words

import (
	"reflect"
	"slices"
	"testing"
)

// Every word of the close-out list is there in every language, and takes the
// same values.
func TestEveryCloseOutWordInEveryLanguage(t *testing.T) {
	en, es := reflect.ValueOf(closeOutInEnglish), reflect.ValueOf(closeOutInSpanish)
	for i := range en.NumField() {
		name, a, b := en.Type().Field(i).Name, en.Field(i).String(), es.Field(i).String()
		if a == "" || b == "" {
			t.Errorf("%s is empty: en %q, es %q", name, a, b)
		}
		if verbs(a) != verbs(b) || !slices.Equal(holes.FindAllString(a, -1), holes.FindAllString(b, -1)) {
			t.Errorf("%s takes other values: en %q, es %q", name, a, b)
		}
	}
}
