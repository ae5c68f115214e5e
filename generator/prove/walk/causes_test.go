package walk_test

import (
	"os"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Of what many leave undone the finding says in how many, and leads to each do:
// that performs it.
func TestCommonCauseCountsCallers(t *testing.T) {
	data, err := os.ReadFile("testdata/left-isolated-common.txtar")
	if err != nil {
		t.Fatal(err)
	}
	files := shopFiles(t)
	for _, f := range txtar.Parse(data).Files {
		if name, is := strings.CutPrefix(f.Name, "bad/"); is {
			files[name] = string(f.Data)
		}
	}
	m, _ := bind.Manual(source.FromText(files))
	found := walk.All(m).Common
	if len(found) != 1 {
		t.Fatalf("told %v", found)
	}
	if want := "in 4 procedures that perform this: traction battery"; !strings.Contains(found[0].Message, want) {
		t.Errorf("%q does not say %q", found[0].Message, want)
	}
	var at []string
	for _, r := range found[0].Related {
		at = append(at, r.At.Path()+" "+r.At.Text())
	}
	want := "procedures/one.md [Make it safe](do:safe), procedures/three.md [Make it safe](do:safe), procedures/two.md [Make it safe](do:safe), procedures/whole.md [Do one](do:one)"
	if got := strings.Join(at, ", "); got != want {
		t.Errorf("related: %s\nwant: %s", got, want)
	}
}
