package kept_test

import (
	"bytes"
	"crypto/sha256"
	"os"
	"path/filepath"
	"runtime"
	"testing"

	"baybinder/generator/base/kept"
)

func files(t *testing.T, folder string) []string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(folder, "*"))
	if err != nil {
		t.Fatal(err)
	}
	return names
}

func TestAValueIsFoundByItsKeyAndProgram(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "a", "b")
	s := kept.Open(folder, []byte("one"))
	if s.Get([]byte("k")) != nil {
		t.Error("something is found in no folder")
	}
	if err := s.Put([]byte("k"), []byte("value")); err != nil {
		t.Fatal(err)
	}
	if got := s.Get([]byte("k")); string(got) != "value" {
		t.Errorf("found %q", got)
	}
	if got := s.Get([]byte("other")); got != nil {
		t.Errorf("another key finds %q", got)
	}
	if got := kept.Open(folder, []byte("two")).Get([]byte("k")); got != nil {
		t.Errorf("another program finds %q", got)
	}
	if info, err := os.Stat(folder); err != nil || runtime.GOOS != "windows" && info.Mode().Perm() != 0o700 {
		t.Errorf("the folder is open to others: %v %v", info.Mode(), err)
	}
}

// A file that is cut short or changed at any byte is as good as none.
func TestADamagedValueIsNotFound(t *testing.T) {
	folder := t.TempDir()
	s := kept.Open(folder, nil)
	if err := s.Put([]byte("k"), []byte("value")); err != nil {
		t.Fatal(err)
	}
	name := files(t, folder)[0]
	whole, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	for i := range whole {
		changed := bytes.Clone(whole)
		changed[i] ^= 1
		for _, bad := range [][]byte{whole[:i], changed} {
			if err := os.WriteFile(name, bad, 0o600); err != nil {
				t.Fatal(err)
			}
			if got := s.Get([]byte("k")); got != nil {
				t.Fatalf("byte %d: found %q in %d bytes", i, got, len(bad))
			}
		}
	}
}

func TestTheFolderStaysSmall(t *testing.T) {
	folder := t.TempDir()
	s := kept.Open(folder, nil)
	third := make([]byte, kept.Most/3)
	for _, key := range []string{"1", "2", "3", "4"} {
		if err := s.Put([]byte(key), third); err != nil {
			t.Fatal(err)
		}
	}
	total := int64(0)
	for _, name := range files(t, folder) {
		info, err := os.Stat(name)
		if err != nil {
			t.Fatal(err)
		}
		total += info.Size()
	}
	if total > kept.Most {
		t.Errorf("it holds %d bytes", total)
	}
	if err := s.Put([]byte("5"), make([]byte, kept.Most)); err != nil || s.Get([]byte("5")) != nil {
		t.Errorf("what is larger than the whole is kept: %v", err)
	}
}

func TestNoFolderIsNoTrouble(t *testing.T) {
	var none *kept.Store
	if err := none.Put([]byte("k"), []byte("v")); err != nil || none.Get([]byte("k")) != nil {
		t.Errorf("a store that is none: %v", err)
	}
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	s := kept.Open(filepath.Join(file, "below"), nil)
	if err := s.Put([]byte("k"), []byte("v")); err == nil || s.Get([]byte("k")) != nil {
		t.Error("something is kept below a file")
	}
}

// The running program finds what it kept, and no other program's.
func TestTheRunningProgramIsKnownAgain(t *testing.T) {
	folder := t.TempDir()
	for range 2 {
		if err := kept.Here(folder).Put([]byte("k"), []byte("v")); err != nil {
			t.Fatal(err)
		}
	}
	name, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	program, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	sum := sha256.Sum256(program)
	if got := kept.Open(folder, sum[:]).Get([]byte("k")); string(got) != "v" {
		t.Errorf("found %q", got)
	}
	if got := kept.Open(folder, []byte("another")).Get([]byte("k")); got != nil {
		t.Errorf("another program finds %q", got)
	}
}
