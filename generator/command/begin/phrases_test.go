package begin

import (
	"testing"

	"baybinder/generator/language/english"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/spanish"
	"baybinder/generator/model"
)

func TestSpeechFollowsTheShop(t *testing.T) {
	for tag, want := range map[string]*shape.Language{"": &english.Language, "en": &english.Language, "es": &spanish.Language, "es-MX": &spanish.Language, "ES-419": &spanish.Language, "est": &english.Language} {
		if speechOf(&model.Manual{Shop: &model.Shop{Language: tag}}) != &want.Speech {
			t.Errorf("a shop that writes %q is begun in another language", tag)
		}
	}
}
