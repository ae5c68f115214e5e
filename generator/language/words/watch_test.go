package words

import (
	"reflect"
	"testing"
)

// Every word of the box of findings is there in every language.
func TestEveryWatchWordInEveryLanguage(t *testing.T) {
	everyWord(t, reflect.ValueOf(watchInEnglish), reflect.ValueOf(watchInSpanish))
}
