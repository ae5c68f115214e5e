package atomicfile

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// A file system on which a page is open for the first moves: the next one is
// made; where it stays open, the error says what to do, in a few seconds; another
// error is not tried again.
func TestPatient(t *testing.T) {
	busy, other := errors.New("sharing violation"), errors.New("no space")
	for _, c := range []struct {
		name  string
		fails int
		err   error
		want  string
		tries int
	}{
		{"never held", 0, busy, "", 1},
		{"held for three moves", 3, busy, "", 4},
		{"held on and on", 99, busy, "close it and try again", len(waits) + 1},
		{"another error", 99, other, "no space", 1},
	} {
		tries, waited := 0, time.Duration(0)
		err := patient(func() error {
			if tries++; tries <= c.fails {
				return c.err
			}
			return nil
		}, func(err error) bool { return errors.Is(err, busy) }, func(w time.Duration) { waited += w })
		if tries != c.tries || (err == nil) != (c.want == "") || err != nil && !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %d tries, %v", c.name, tries, err)
		}
		if err != nil && !errors.Is(err, c.err) {
			t.Errorf("%s: the cause is lost in %v", c.name, err)
		}
		if waited > 3*time.Second {
			t.Errorf("%s: waits for %v", c.name, waited)
		}
	}
}

func TestMove(t *testing.T) {
	folder := t.TempDir()
	from, to := filepath.Join(folder, "a"), filepath.Join(folder, "b")
	if err := os.WriteFile(from, []byte("new"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := Move(from, to); err != nil {
		t.Fatal(err)
	}
	if err := Move(from, to); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("a file that is not there is moved: %v", err)
	}
}
