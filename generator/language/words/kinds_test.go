package words

import (
	"reflect"
	"strings"
	"testing"

	"baybinder/generator/model"
)

// Every kind that the format has is said in both languages.
func TestEveryKindHasWords(t *testing.T) {
	for _, of := range []any{model.Tool{}, model.Hold{}, model.Energy{}} {
		field, _ := reflect.TypeOf(of).FieldByName("Kind")
		for _, kind := range strings.Fields(field.Tag.Get("one")) {
			if both := kinds[kind]; both[0] == "" || both[1] == "" {
				t.Errorf("no words for the kind %s of a %T", kind, of)
			}
		}
	}
}
