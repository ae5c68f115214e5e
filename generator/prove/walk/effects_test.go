package walk

import (
	"os"
	"path/filepath"
	"strings"
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

// The reference walks every act too, from the contract alone.
func TestEveryActIsInTheReference(t *testing.T) {
	files, _ := filepath.Glob("reference_*_test.go")
	var text strings.Builder
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text.Write(data)
	}
	for _, k := range model.Kinds {
		if k.Act != model.NoAct && !strings.Contains(text.String(), `"`+k.Name+`"`) {
			t.Errorf("%s: the reference does not have it: write it into prove/walk/reference_*_test.go", k.Name)
		}
	}
}
