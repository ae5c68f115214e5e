package turn

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"baybinder/generator/base/needed"
)

// One at a time has the turn, who waits is told for whom, and nothing is left.
func TestOneAtATime(t *testing.T) {
	name := filepath.Join(t.TempDir(), ".lock")
	first, err := Take(name, func(string) { t.Error("the first one waits") })
	if err != nil {
		t.Fatal(err)
	}
	told := make(chan string, 8)
	var inside, had atomic.Int32
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() {
			done, err := Take(name, func(who string) { told <- who })
			if err != nil {
				t.Error(err)
				return
			}
			if inside.Add(1) != 1 {
				t.Error("two have the turn at once")
			}
			had.Add(1)
			inside.Add(-1)
			done()
		})
	}
	if who := <-told; !strings.Contains(who, "process ") {
		t.Errorf("it waits for %q", who)
	}
	if had.Load() != 0 {
		t.Error("another one has the turn too")
	}
	first()
	all.Wait()
	if n := had.Load(); n != 8 {
		t.Errorf("%d of 8 had their turn", n)
	}
	if _, err := os.Lstat(name); err == nil {
		t.Error("the lock file is left")
	}
}

// What a killed run left keeps nobody out, and is taken away.
func TestAFileThatIsLeft(t *testing.T) {
	name := filepath.Join(t.TempDir(), ".lock")
	if err := os.WriteFile(name, []byte("a killed one"), 0o644); err != nil {
		t.Fatal(err)
	}
	done, err := Take(name, func(who string) { t.Errorf("it waits for %s", who) })
	if err != nil {
		t.Fatal(err)
	}
	done()
	if _, err := os.Lstat(name); err == nil {
		t.Error("the lock file is left")
	}
}

// The lock file may be written by every account that comes to it.
func TestEverybodyMayTakeATurn(t *testing.T) {
	name := filepath.Join(t.TempDir(), ".lock")
	done, err := Take(name, nil)
	if err != nil {
		t.Fatal(err)
	}
	defer done()
	info, err := os.Stat(name)
	if err != nil || info.Mode().Perm()&0o222 == 0 {
		t.Errorf("%v: %v", info.Mode(), err)
	}
}

// What is no plain file is not opened, not followed and not taken away.
func TestSomethingElseIsInTheWay(t *testing.T) {
	folder := t.TempDir()
	name, theirs := filepath.Join(folder, ".lock"), filepath.Join(folder, "theirs")
	if err := os.WriteFile(theirs, []byte("theirs"), 0o644); err != nil {
		t.Fatal(err)
	}
	needed.Judge(t, os.Symlink(theirs, name) == nil, "a file system with symbolic links")
	if done, err := Take(name, nil); err == nil {
		done()
		t.Error("a link is a lock")
	}
	if text, err := os.ReadFile(theirs); err != nil || string(text) != "theirs" {
		t.Errorf("what it leads to: %q, %v", text, err)
	}
}
