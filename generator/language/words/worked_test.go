package words

import (
	"reflect"
	"testing"
)

// Every one of these words is there in every language, and takes the same
// values.
func TestEveryWorkedWordInEveryLanguage(t *testing.T) {
	en, es := reflect.ValueOf(workedInEnglish), reflect.ValueOf(workedInSpanish)
	for i := range en.NumField() {
		name := en.Type().Field(i).Name
		a, b := en.Field(i).String(), es.Field(i).String()
		if a == "" || b == "" || verbs(a) != verbs(b) {
			t.Errorf("%s: en %q, es %q", name, a, b)
		}
	}
}
