package atomicfile

import (
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
)

// WriteAll makes all changes or none.
func TestWriteAllIsAllOrNothing(t *testing.T) {
	folder := t.TempDir()
	for name, text := range map[string]string{"a": "1", "b/c": "2", "b/d": "3", "taken": "4"} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o640); err != nil {
			t.Fatal(err)
		}
	}
	before := listing(t, folder)
	changes := []Change{{Path: "a", Was: []byte("1"), Now: []byte("one")}, {Path: "b/c", To: "b/e", Was: []byte("2"), Now: []byte("two")}}
	for name, bad := range map[string]Change{
		"a path that is taken": {Path: "b/d", To: "taken", Was: []byte("3"), Now: []byte("three")},
		"a file that is gone":  {Path: "gone", Was: []byte("5"), Now: []byte("five")},
		"a folder that is not": {Path: "b/d", To: "nowhere/d", Was: []byte("3"), Now: []byte("three")},
	} {
		if err := WriteAll(folder, append(slices.Clone(changes), bad)); err == nil {
			t.Errorf("%s: no error", name)
		}
		if after := listing(t, folder); after != before {
			t.Errorf("%s:\n%s\nbecame\n%s", name, before, after)
		}
	}
	if err := WriteAll(folder, changes); err != nil {
		t.Fatal(err)
	}
	if got, want := listing(t, folder), "a -rw-r----- one\nb/d -rw-r----- 3\nb/e -rw-r----- two\ntaken -rw-r----- 4\n"; got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	if err := putBack(folder, changes); err != nil {
		t.Fatal(err)
	}
	if got := listing(t, folder); strings.ReplaceAll(got, "-rw-r--r--", "-rw-r-----") != before {
		t.Errorf("put back as\n%s", got)
	}
}

// listing is every file of a folder with its mode and text.
func listing(t *testing.T, folder string) string {
	t.Helper()
	var b strings.Builder
	err := filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		text, err := os.ReadFile(name)
		rel, _ := filepath.Rel(folder, name)
		mode := info.Mode().String()
		if runtime.GOOS == "windows" {
			mode = "-rw-r-----"
		}
		b.WriteString(filepath.ToSlash(rel) + " " + mode + " " + string(text) + "\n")
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}
