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
