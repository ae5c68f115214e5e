package theme

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"
)

// The templates' Go code is what the templates say.
func TestTemplatesAreGenerated(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "theme") // the package takes the folder's name
	if err := os.Mkdir(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("*.qtpl")
	if err != nil || len(files) == 0 {
		t.Fatal("no templates", err)
	}
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, f), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if out, err := exec.Command("go", "tool", "qtc", "-dir="+folder, "-skipLineComments").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	for _, f := range files {
		want, errA := os.ReadFile(filepath.Join(folder, f+".go"))
		got, errB := os.ReadFile(f + ".go")
		if errA != nil || errB != nil || string(want) != string(got) {
			t.Errorf("%s.go is old: go generate ./theme", f)
		}
	}
}

// longest is how many letters a line of a template may have.
const longest = 120

// A template's line can be read without moving it sideways.
func TestLinesOfTemplatesAreShort(t *testing.T) {
	files, err := filepath.Glob("*.qtpl")
	if err != nil || len(files) == 0 {
		t.Fatal("no templates", err)
	}
	for _, f := range files {
		for i, line := range strings.Split(read(t, f), "\n") {
			if n := utf8.RuneCountInString(line); n > longest {
				t.Errorf("%s:%d has %d letters, at most %d", f, i+1, n, longest)
			}
		}
	}
}
