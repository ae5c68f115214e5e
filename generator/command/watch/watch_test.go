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

// watched is a folder, and the calls about it.
type watched struct {
	t     *testing.T
	root  string
	calls <-chan []string
	marks int
}

// called waits for a call that names a file, and takes all that were made until
// now: they come in order, so what comes before a mark that is set now is old.
func (w *watched) called(after, name string) {
	w.t.Helper()
	for !slices.Contains(<-w.calls, name) {
	}
	w.marks++
	mark := fmt.Sprintf("mark-%d", w.marks)
	write(w.t, filepath.Join(w.root, mark), after)
	w.until(mark)
}

// until takes calls up to the one that names a file, and returns all names.
func (w *watched) until(name string) (names []string, calls int) {
	for {
		got := <-w.calls
		names, calls = append(names, got...), calls+1
		if slices.Contains(got, name) {
			return names, calls
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
	w := watched{t: t, root: root, calls: started(t, root, "")}
	write(t, page, "two")
	w.called("a save in place", "a.md")
	for range 2 { // the second time the watched file is another one
		write(t, filepath.Join(root, ".a.md.swp"), "three")
		do(t, os.Rename(filepath.Join(root, ".a.md.swp"), page))
		w.called("a save by rename", "a.md")
	}
	for range 2 {
		deep := filepath.Join(root, "new", "deeper")
		do(t, os.MkdirAll(deep, 0o755))
		w.called("a new folder", "new")
		write(t, filepath.Join(deep, "b.md"), "one")
		w.called("a file in a new folder's folder", "new/deeper/b.md")
		do(t, os.RemoveAll(filepath.Join(root, "new")))
		w.called("a folder that went", "new")
	}
}

func TestWhatNobodyReadsIsNoChange(t *testing.T) {
	root := t.TempDir()
	site, hidden := filepath.Join(root, "public"), filepath.Join(root, ".git")
	do(t, os.Mkdir(site, 0o755))
	do(t, os.Mkdir(hidden, 0o755))
	w := watched{t: t, root: root, calls: started(t, root, site)}
	write(t, filepath.Join(site, "index.html"), "page")
	write(t, filepath.Join(hidden, "index"), "x")
	write(t, filepath.Join(root, ".a.md.swp"), "x")
	write(t, filepath.Join(root, "shop.yaml"), "title: Test") // they come in order
	names, _ := w.until("shop.yaml")
	if names = slices.Compact(names); !slices.Equal(names, []string{"shop.yaml"}) {
		t.Errorf("called for %q: the site, hidden folders and hidden files are no change", names)
	}
}

// A thousand files at once, in new folders, are a few calls, and the last call
// comes after the last change.
func TestAStormIsAFewCalls(t *testing.T) {
	root := t.TempDir()
	w := watched{t: t, root: root, calls: started(t, root, "")}
	begin := time.Now()
	for i := range 1000 {
		folder := filepath.Join(root, fmt.Sprint(i%20))
		do(t, os.MkdirAll(folder, 0o755))
		write(t, filepath.Join(folder, fmt.Sprintf("%d.md", i)), "text")
	}
	write(t, filepath.Join(root, "last.md"), "text")
	_, n := w.until("last.md")
	if most := 1 + int(time.Since(begin)/quiet); n > most {
		t.Errorf("%d calls for 1,000 files; want at most %d", n, most)
	}
}

func TestAFolderThatIsNotThere(t *testing.T) {
	if _, err := Open(filepath.Join(t.TempDir(), "no"), ""); err == nil {
		t.Error("a folder that is not there is watched")
	}
}
