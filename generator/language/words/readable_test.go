package words

import (
	"reflect"
	"testing"
)

// Every word of the tables on reading is there in every language.
func TestEveryReadableWordInEveryLanguage(t *testing.T) {
	everyWord(t, reflect.ValueOf(readableInEnglish), reflect.ValueOf(readableInSpanish))
}
