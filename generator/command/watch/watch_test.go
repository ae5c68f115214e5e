package watch

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

// started watches a folder; the channel has the names of each call.
func started(t *testing.T, root, apart string) <-chan []string {
	t.Helper()
	f, err := Open(root, apart)
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	calls, ended := make(chan []string, 10_000), make(chan struct{})
	go func() {
		defer close(ended)
		f.Each(ctx, func(names []string) { calls <- names })
	}()
	t.Cleanup(func() {
		stop()
		<-ended
		_ = f.Close()
	})
	return calls
}

func called(t *testing.T, calls <-chan []string, after, name string) {
	t.Helper()
	select {
	case names := <-calls:
		if !slices.Contains(names, name) {
			t.Errorf("after %s the names are %q, without %s", after, names, name)
		}
	case <-time.After(5 * time.Second):
		t.Fatalf("no call after %s", after)
	}
	settle(calls)
}

// settle takes the calls that still come.
func settle(calls <-chan []string) (n int) {
	for {
		select {
		case <-calls:
			n++
		case <-time.After(10 * quiet):
			return n
		}
	}
}

func write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func do(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// The ways in which files change: saved in place, saved by rename, in folders
// that come, go and come again.
func TestEveryWayOfSavingIsSeen(t *testing.T) {
	root := t.TempDir()
	page := filepath.Join(root, "a.md")
	write(t, page, "one")
	calls := started(t, root, "")
	write(t, page, "two")
	called(t, calls, "a save in place", "a.md")
	for range 2 { // the second time the watched file is another one
		write(t, filepath.Join(root, ".a.md.swp"), "three")
		do(t, os.Rename(filepath.Join(root, ".a.md.swp"), page))
		called(t, calls, "a save by rename", "a.md")
	}
	for range 2 {
		deep := filepath.Join(root, "new", "deeper")
		do(t, os.MkdirAll(deep, 0o755))
		called(t, calls, "a new folder", "new")
		write(t, filepath.Join(deep, "b.md"), "one")
		called(t, calls, "a file in a new folder's folder", "new/deeper/b.md")
		do(t, os.RemoveAll(filepath.Join(root, "new")))
		called(t, calls, "a folder that went", "new")
	}
}

func TestWhatNobodyReadsIsNoChange(t *testing.T) {
	root := t.TempDir()
	site, hidden := filepath.Join(root, "public"), filepath.Join(root, ".git")
	do(t, os.Mkdir(site, 0o755))
	do(t, os.Mkdir(hidden, 0o755))
	calls := started(t, root, site)
	write(t, filepath.Join(site, "index.html"), "page")
	write(t, filepath.Join(hidden, "index"), "x")
	write(t, filepath.Join(root, ".a.md.swp"), "x")
	if n := settle(calls); n != 0 {
		t.Errorf("%d calls for the site, hidden folders and hidden files", n)
	}
	write(t, filepath.Join(root, "shop.yaml"), "title: Test")
	called(t, calls, "a file of the manual", "shop.yaml")
}

// A thousand files at once, in new folders, are a few calls, and the last call
// comes after the last change.
func TestAStormIsAFewCalls(t *testing.T) {
	root := t.TempDir()
	calls := started(t, root, "")
	begin := time.Now()
	for i := range 1000 {
		folder := filepath.Join(root, fmt.Sprint(i%20))
		do(t, os.MkdirAll(folder, 0o755))
		write(t, filepath.Join(folder, fmt.Sprintf("%d.md", i)), "text")
	}
	most := 2 + int(time.Since(begin)/quiet)
	if n := settle(calls); n < 1 || n > most {
		t.Errorf("%d calls for 1,000 files; want 1 to %d", n, most)
	}
}

func TestAFolderThatIsNotThere(t *testing.T) {
	if _, err := Open(filepath.Join(t.TempDir(), "no"), ""); err == nil {
		t.Error("a folder that is not there is watched")
	}
}
