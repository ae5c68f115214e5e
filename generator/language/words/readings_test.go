package words

import (
	"reflect"
	"testing"
)

// Every word of the readings is there in every language, and takes the same
// values.
func TestEveryReadingsWordInEveryLanguage(t *testing.T) {
	en, es := reflect.ValueOf(readingsInEnglish), reflect.ValueOf(readingsInSpanish)
	for i := range en.NumField() {
		name := en.Type().Field(i).Name
		a, b := en.Field(i).String(), es.Field(i).String()
		if a == "" || b == "" {
			t.Errorf("%s is empty: en %q, es %q", name, a, b)
		}
		if verbs(a) != verbs(b) {
			t.Errorf("%s takes other values: en %q, es %q", name, a, b)
		}
	}
}
