package begin

import (
	"reflect"
	"strings"
	"testing"

	"baybinder/generator/model"
)

// Every phrase is said in every language, of as many things, and in its own
// words.
func TestSpeechIsWholeInEveryLanguage(t *testing.T) {
	en, es := reflect.ValueOf(english), reflect.ValueOf(spanish)
	for i := range en.NumField() {
		name, a, b := en.Type().Field(i).Name, en.Field(i).String(), es.Field(i).String()
		if a == "" || b == "" || a == b {
			t.Errorf("%s: %q in English and %q in Spanish", name, a, b)
		}
		if strings.Count(a, "%s") != strings.Count(b, "%s") {
			t.Errorf("%s: %q and %q do not name as many things", name, a, b)
		}
	}
}

func TestSpeechFollowsTheShop(t *testing.T) {
	for language, want := range map[string]*speech{"": &english, "en": &english, "es": &spanish, "es-MX": &spanish, "est": &english} {
		if speechOf(&model.Manual{Shop: &model.Shop{Language: language}}) != want {
			t.Errorf("a shop that writes %q is begun in another language", language)
		}
	}
}
