package words

import (
	"reflect"
	"strings"
	"testing"

	"baybinder/generator/manual"
)

// Every kind that the format has is said in both languages.
func TestEveryKindHasWords(t *testing.T) {
	for _, of := range []any{manual.Tool{}, manual.Hold{}, manual.Energy{}} {
		field, _ := reflect.TypeOf(of).FieldByName("Kind")
		for _, kind := range strings.Fields(field.Tag.Get("one")) {
			if both := kinds[kind]; both[0] == "" || both[1] == "" {
				t.Errorf("no words for the kind %s of a %T", kind, of)
			}
		}
	}
}
