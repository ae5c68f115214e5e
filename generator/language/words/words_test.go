package words

import (
	"reflect"
	"strings"
	"testing"
)

// Every word is there in every language, and takes the same values.
func TestEveryWordInEveryLanguage(t *testing.T) {
	everyWord(t, reflect.ValueOf(english), reflect.ValueOf(spanish))
	everyWord(t, reflect.ValueOf(jobsInEnglish), reflect.ValueOf(jobsInSpanish))
}

func everyWord(t *testing.T, en, es reflect.Value) {
	t.Helper()
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

// verbs are the %s and %d of a text, in order.
func verbs(text string) string {
	var out strings.Builder
	for i := 0; i+1 < len(text); i++ {
		if text[i] == '%' {
			out.WriteByte(text[i+1])
		}
	}
	return out.String()
}
