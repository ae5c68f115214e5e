package walk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/model"
)

// Whatever a row of the table of link kinds does, the walk follows, in a file of
// its own: an act that nothing follows must not be counted as checked.
func TestEveryActHasAnEffect(t *testing.T) {
	named := map[model.Act]bool{}
	for _, k := range model.Kinds {
		if k.Act == model.NoAct || named[k.Act] { // the first row gives its name: disconnect: is remove:
			continue
		}
		named[k.Act] = true
		file := "act_" + strings.ReplaceAll(k.Name, "-", "_") + ".go"
		if _, err := os.Stat(file); err != nil {
			t.Errorf("%s: its effect has no file %s", k.Name, file)
		}
		if k.Act == model.Call { // a call is followed by walk.call
			continue
		}
		if e := effects[k.Act]; e == nil || len(e.moves()) == 0 {
			t.Errorf("%s: has no row in effects.go", k.Name)
		}
	}
	files, _ := filepath.Glob("act_*.go")
	if len(files) != len(named) {
		t.Errorf("%d files of effects for %d acts: %q", len(files), len(named), files)
	}
}

// The reference walks every act too, from the contract alone, and the random
// manuals on which both are compared draw it: what nobody draws is not compared.
func TestEveryActIsInTheReferenceAndDrawn(t *testing.T) {
	reference, random := textOf(t, "reference_*_test.go"), textOf(t, "random_*_test.go")
	named := map[model.Act]bool{}
	for _, k := range model.Kinds {
		if k.Act == model.NoAct {
			continue
		}
		if !strings.Contains(reference, `"`+k.Name+`"`) {
			t.Errorf("%s: the reference does not have it: write it into prove/walk/reference_*_test.go", k.Name)
		}
		if !named[k.Act] && !strings.Contains(random, `"`+k.Name+`"`) && !strings.Contains(random, "("+k.Name+":") {
			t.Errorf("%s: no random manual has it: write it into prove/walk/random_steps_test.go", k.Name)
		}
		named[k.Act] = true // another word for it is the same act
	}
}

func textOf(t *testing.T, pattern string) string {
	t.Helper()
	files, _ := filepath.Glob(pattern)
	var text strings.Builder
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text.Write(data)
	}
	return text.String()
}
