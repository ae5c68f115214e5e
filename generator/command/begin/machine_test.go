package begin

import (
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
)

// Every pattern of a new machine's file can be read once its # is taken away,
// names what is there or what a shop would add to its registers, and shows every
// section of the format but the two that only tell the program an order.
func TestThePatternsOfANewMachineCanBeRead(t *testing.T) {
	folder := t.TempDir()
	if _, err := Manual(folder); err != nil {
		t.Fatal(err)
	}
	name, err := Machine(folder, "parts-washer", "")
	if err != nil {
		t.Fatal(err)
	}
	full := filepath.Join(folder, filepath.FromSlash(name))
	text, err := os.ReadFile(full)
	if err != nil {
		t.Fatal(err)
	}
	_, body, _ := strings.Cut(string(text), "\n") // without the line for editors
	patterns := regexp.MustCompile(`(?m)^#(  )?([a-z-]+:|- \{)`).ReplaceAllString(body, "$1$2")
	if err := os.WriteFile(full, []byte(patterns), 0o644); err != nil {
		t.Fatal(err)
	}
	tree, err := source.Read(folder)
	if err != nil {
		t.Fatal(err)
	}
	m, found := bind.Manual(tree)
	for _, f := range finding.Sort(found) {
		if f.Code != "unknown-reference" || !strings.Contains(f.Mend, "register/supplies.yaml") {
			t.Errorf("%s [%s]\n%s", f.Message, f.Code, patterns)
		}
	}
	for _, machine := range m.Machines {
		if machine.ID != "parts-washer" {
			continue
		}
		v := reflect.ValueOf(machine).Elem()
		for _, f := range decode.Fields(reflect.TypeFor[model.Machine]()) {
			rare := slices.Contains([]string{"restore-order", "only-one-of", "before-isolate", "before-restore"}, f.Name)
			if v.FieldByIndex(f.Index).IsZero() && !rare {
				t.Errorf("no pattern shows %s", f.Name)
			}
		}
	}
}
