package atomicfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

func TestNew(t *testing.T) {
	folder := t.TempDir()
	name := filepath.Join(folder, "a.md")
	if err := os.WriteFile(filepath.Join(folder, ".a.md.new"), []byte("of a run that was killed"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := New(name, []byte("whole"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := New(name, []byte("another"), 0o644); !errors.Is(err, fs.ErrExist) {
		t.Errorf("a file that is there: %v", err)
	}
	if text, err := os.ReadFile(name); string(text) != "whole" {
		t.Errorf("the file holds %q, %v", text, err)
	}
	if err := New(filepath.Join(folder, "no", "a.md"), nil, 0o644); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a folder that is not there: %v", err)
	}
	if left, _ := filepath.Glob(filepath.Join(folder, ".*")); len(left) > 0 {
		t.Errorf("left behind: %v", left)
	}
}

// A file stays also where the file system knows no second names, and a path that
// leads out of the folder is not written to.
func TestNewIn(t *testing.T) {
	folder := t.TempDir()
	root, err := os.OpenRoot(folder)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	ways := map[string]func(name string) error{
		"linked": func(name string) error { return NewIn(root, name, []byte("theirs"), 0o644) },
		"moved": func(name string) error {
			if err := root.WriteFile("aside", []byte("theirs"), 0o644); err != nil {
				return err
			}
			return move(root, "aside", name, 0o644)
		},
	}
	if err := root.WriteFile("first", []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	for way, put := range ways {
		if err := put("first"); !errors.Is(err, fs.ErrExist) {
			t.Errorf("%s over a file: %v", way, err)
		}
		if got, _ := root.ReadFile("first"); string(got) != "mine" {
			t.Errorf("%s: the file holds %q", way, got)
		}
		if err := put(way); err != nil {
			t.Fatal(err)
		}
		if got, _ := root.ReadFile(way); string(got) != "theirs" {
			t.Errorf("%s: %q", way, got)
		}
		if err := put("../" + way); err == nil {
			t.Errorf("%s: a file outside is written", way)
		}
	}
}
