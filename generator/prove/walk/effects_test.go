package walk

import (
	"testing"

	"baybinder/generator/model"
)

// Whatever a row of the table of link kinds does, the walk follows: an act that
// nothing follows must not be counted as checked.
func TestEveryActHasAnEffect(t *testing.T) {
	for _, k := range model.Kinds {
		if k.Act == model.NoAct || k.Act == model.Call { // a call is followed by walk.call
			continue
		}
		if e := effectOf(k.Act); e.does == nil || len(e.moves) == 0 {
			t.Errorf("%s: has no row in effects.go", k.Name)
		}
	}
	if effectOf(model.Reverse+1).does != nil {
		t.Error("an act that is not there has an effect")
	}
}
