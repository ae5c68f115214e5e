package begin

import (
	"os"
	"path/filepath"
	"testing"
)

// A begin that is killed at any file, or within one, can be run again; what
// somebody else wrote is not touched.
func TestABeginThatWasKilledIsRunAgain(t *testing.T) {
	whole := filepath.Join(t.TempDir(), "whole")
	files, err := Manual(whole)
	if err != nil {
		t.Fatal(err)
	}
	for at := 1; at < len(files); at += 3 {
		folder := filepath.Join(t.TempDir(), "manual")
		for i, name := range files[:at] {
			data, err := os.ReadFile(filepath.Join(whole, name))
			if i == at-1 {
				data = data[:len(data)/2]
			}
			full := filepath.Join(folder, name)
			if err := firstOf(err, os.MkdirAll(filepath.Dir(full), 0o755), os.WriteFile(full, data, 0o644)); err != nil {
				t.Fatal(err)
			}
		}
		if _, err := Manual(folder); err != nil && at > 1 {
			t.Errorf("killed at %s: %v", files[at-1], err)
			continue
		}
		for _, name := range files {
			got, _ := os.ReadFile(filepath.Join(folder, name))
			if want, _ := os.ReadFile(filepath.Join(whole, name)); at > 1 && string(got) != string(want) {
				t.Errorf("killed at %s: %s is not whole", files[at-1], name)
			}
		}
	}
	if _, err := Manual(whole); err == nil {
		t.Error("a manual that stands is begun again")
	}
	mine := t.TempDir()
	for name, text := range map[string]string{"shop.yaml": "title: Mine\n", "letter.txt": "mine"} {
		if err := os.WriteFile(filepath.Join(mine, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := Manual(mine); err == nil {
		t.Error("another's folder is written into")
	}
}

func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
