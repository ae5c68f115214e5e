package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

// watching is the program at work on a folder of its own.
type watching struct {
	t   *testing.T
	dir string // with content, public, and tmp for temporary files
	url string
	*running
}

func do(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// program is a run of the program (see TestMain) in a folder.
func program(t *testing.T, dir string, args ...string) *exec.Cmd {
	t.Helper()
	self, err := os.Executable()
	do(t, err)
	cmd := exec.Command(self)
	cmd.Args, cmd.Dir = append([]string{"baybinder"}, args...), dir
	cmd.Env = append(os.Environ(), "TMPDIR="+filepath.Join(dir, "tmp"))
	return cmd
}

// startWatch watches a copy of a manual, and returns once it was built.
func startWatch(t *testing.T, manual fs.FS, more ...string) *watching {
	t.Helper()
	w := &watching{t: t, dir: t.TempDir()}
	do(t, os.CopyFS(filepath.Join(w.dir, "content"), manual))
	do(t, os.Mkdir(filepath.Join(w.dir, "tmp"), 0o755))
	w.start(more...)
	w.built(1)
	return w
}

func (w *watching) start(more ...string) {
	w.t.Helper()
	var err error
	w.running, err = begun(program(w.t, w.dir, append([]string{"watch", "--today", "2026-05-04"}, more...)...))
	do(w.t, err)
	w.t.Cleanup(w.kill)
	w.until("it serves", func() bool {
		w.url = w.address()
		return w.url != ""
	})
}

// until waits for what the program does; it says a line after all that it does.
func (w *watching) until(what string, is func() bool) {
	w.t.Helper()
	if !w.running.until(is) {
		w.t.Fatalf("it ended, and never: %s\n%s%s", what, &w.out, &w.wrong)
	}
}

// wholeSite is told in the shop's language.
var wholeSite = regexp.MustCompile(`(?m)^\d+ \pL+ (in|en) `)

// built waits until so many builds of the whole site are done.
func (w *watching) built(n int) {
	w.t.Helper()
	w.until("that many builds", func() bool { return len(wholeSite.FindAllString(w.out.String(), -1)) >= n })
}

func (w *watching) path(name string) string {
	return filepath.Join(w.dir, "content", filepath.FromSlash(name))
}

func (w *watching) write(name, text string) {
	w.t.Helper()
	do(w.t, os.MkdirAll(filepath.Dir(w.path(name)), 0o755))
	do(w.t, os.WriteFile(w.path(name), []byte(text), 0o644))
}

// replace saves a file with some of its words replaced, as editors do that
// write a new file and rename it.
func (w *watching) replace(name, old, with string) {
	w.t.Helper()
	data, err := os.ReadFile(w.path(name))
	do(w.t, err)
	if !strings.Contains(string(data), old) {
		w.t.Fatalf("%s does not hold %q", name, old)
	}
	do(w.t, os.WriteFile(w.path(name)+".new", []byte(strings.Replace(string(data), old, with, 1)), 0o644))
	do(w.t, os.Rename(w.path(name)+".new", w.path(name)))
}

// page is a file of the site, "" where there is none.
func (w *watching) page(name string) string {
	w.t.Helper()
	data, err := os.ReadFile(filepath.Join(w.dir, "public", filepath.FromSlash(name)))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		w.t.Fatal(err)
	}
	return string(data)
}

// interrupt is Ctrl-C. It asks for a clean end, with nothing left behind.
func (w *watching) interrupt() {
	w.t.Helper()
	if err := w.running.interrupt(); err != nil || w.wrong.String() != "" {
		w.t.Errorf("it ended with %v %s", err, &w.wrong)
	}
	for _, folder := range []string{"", "tmp"} {
		entries, err := os.ReadDir(filepath.Join(w.dir, folder))
		do(w.t, err)
		for _, e := range entries {
			switch name := e.Name(); {
			case folder == "" && (name == "content" || name == "public" || name == "tmp"):
			default:
				w.t.Errorf("it leaves %s behind", filepath.Join(folder, name))
			}
		}
	}
}

// sweep is a procedure of one step.
func sweep(n int, step string) string {
	return fmt.Sprintf("---\ntitle: Sweep bay %d\n---\n## Work\n\n1. %s\n", n, step)
}

func bay(n int) string { return fmt.Sprintf("procedures/area-%d/sweep-%d.md", n%20, n) }

// bays is a manual of so many procedures.
func bays(n int) fstest.MapFS {
	files := fstest.MapFS{"shop.yaml": {Data: []byte("title: Test shop\n")}}
	for i := range n {
		files[bay(i)] = &fstest.MapFile{Data: []byte(sweep(i, "Sweep the floor."))}
	}
	return files
}

// isABuild holds the site against one that is built from nothing, file by file.
func (w *watching) isABuild() {
	w.t.Helper()
	for _, said := range w.differs() {
		w.t.Error(said)
	}
}

// differs says what is not as in a site that is built from nothing.
func (w *watching) differs() (said []string) {
	w.t.Helper()
	built := filepath.Join(w.t.TempDir(), "built")
	if out, err := program(w.t, w.dir, "build", "--preview", "--today", "2026-05-04", "--to", built).CombinedOutput(); err != nil {
		w.t.Fatalf("%v: %s", err, out)
	}
	want, got := filesOf(w.t, built), filesOf(w.t, filepath.Join(w.dir, "public"))
	for name, text := range want {
		if got[name] != text {
			said = append(said, name+" is not a build's")
		}
	}
	if len(got) != len(want) {
		said = append(said, fmt.Sprintf("%d files; a build has %d", len(got), len(want)))
	}
	return said
}

func filesOf(t *testing.T, folder string) map[string]string {
	t.Helper()
	files := map[string]string{}
	do(t, filepath.WalkDir(folder, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(full)
		files[strings.TrimPrefix(full, folder)] = string(data)
		return err
	}))
	return files
}

// A version-control switch changes a thousand files at once: some change, some
// go, some come, in folders that come and go. What stands at the end is a
// build's, and few builds were made on the way.
func TestAStormOfChanges(t *testing.T) {
	t.Parallel()
	w := startWatch(t, bays(600))
	begin := time.Now()
	for i := range 400 {
		w.write(bay(i), sweep(i, "Rinse the floor."))
	}
	for i := 400; i < 600; i++ {
		do(t, os.Remove(w.path(bay(i))))
	}
	do(t, os.RemoveAll(w.path("procedures/area-19")))
	for i := range 400 {
		w.write(fmt.Sprintf("procedures/yard/part-%d/yard-%d.md", i%10, i), sweep(i, "Sweep the yard."))
	}
	most := 10 + int(time.Since(begin)/(500*time.Millisecond)) // a build begins half a second after the first change at the latest
	w.until("the last file is shown", func() bool {
		return w.page("procedures/yard-399.html") != "" && w.page("procedures/sweep-599.html") == "" && strings.Contains(w.page("procedures/sweep-398.html"), "Rinse")
	})
	// The last build may repeat what a page that came first showed.
	w.until("the site is a build's", func() bool { return len(w.differs()) == 0 })
	if n := len(wholeSite.FindAllString(w.out.String(), -1)); n > most {
		t.Errorf("%d builds for 1,000 changes; want at most %d", n, most)
	}
	w.interrupt()
}

// The ways of saving, and what a writer does wrong meanwhile.
func TestHardCasesOfSaving(t *testing.T) {
	t.Parallel()
	w := startWatch(t, bays(3))
	w.replace(bay(0), "Sweep the floor.", "Rinse the floor.") // by rename
	w.until("a save by rename is shown", func() bool { return strings.Contains(w.page("procedures/sweep-0.html"), "Rinse") })
	w.replace(bay(0), "Rinse the floor.", "Dry the floor.") // the watched file is another one now
	w.until("another one", func() bool { return strings.Contains(w.page("procedures/sweep-0.html"), "Dry") })
	for range 2 {
		w.write("procedures/new/deeper/sweep-yard.md", "---\ntitle: Sweep the yard\nstatus: draft\n---\n## Work\n\n1. Sweep.\n")
		w.until("a new folder is shown", func() bool { return strings.Contains(w.page("index.html"), "sweep-yard.html") })
		if page := w.page("procedures/sweep-yard.html"); !strings.Contains(page, `<p class="preview">`) || !strings.Contains(page, "draft") {
			t.Errorf("a draft is not marked:\n%s", page)
		}
		do(t, os.RemoveAll(w.path("procedures/new")))
		w.until("a folder that went is gone", func() bool {
			return w.page("procedures/sweep-yard.html") == "" && !strings.Contains(w.page("index.html"), "sweep-yard.html")
		})
	}
	good := w.page("procedures/sweep-1.html")
	w.replace(bay(1), "Sweep the floor.", "Sweep with the [broom](tool:no-such-broom).")
	w.until("the error is told", func() bool {
		return strings.Contains(w.out.String(), "no tool no-such-broom") && strings.Contains(w.out.String(), "nothing was published: 1 error")
	})
	before := strings.Count(w.out.String(), "nothing was published")
	w.replace(bay(2), "Sweep the floor.", "Mop the floor.") // elsewhere; the error stays
	w.until("it looked again", func() bool { return strings.Count(w.out.String(), "nothing was published") > before })
	if w.page("procedures/sweep-1.html") != good || strings.Contains(w.page("procedures/sweep-2.html"), "Mop") {
		t.Error("with an error in the manual something was published")
	}
	if n := strings.Count(w.out.String(), "no tool no-such-broom"); n != 1 {
		t.Errorf("one error is told %d times", n)
	}
	w.replace(bay(1), "Sweep with the [broom](tool:no-such-broom).", "Sweep the gangway.")
	w.until("the mend is shown", func() bool {
		return strings.Contains(w.page("procedures/sweep-1.html"), "gangway") && strings.Contains(w.page("procedures/sweep-2.html"), "Mop")
	})
	w.replace("shop.yaml", "Test shop", "Another shop")
	w.until("every page is built anew", func() bool { return strings.Contains(w.page("procedures/sweep-0.html"), "Another shop") })
	w.isABuild()
	w.interrupt()
}

// Ctrl-C during a build, the first one and a later one: the last good site
// stays whole, and nothing lies beside it.
func TestCtrlCDuringABuild(t *testing.T) {
	t.Parallel()
	if runtime.GOOS == "windows" {
		t.Skip("a test cannot press Ctrl-C there")
	}
	w := startWatch(t, bays(1500))
	good := filesOf(t, filepath.Join(w.dir, "public"))
	for n := 2; ; n++ { // a build that was done before it was seen is asked for again
		w.replace("shop.yaml", "title: ", "title: Another ")
		if w.seenAtWork(n) {
			break
		}
		good = filesOf(t, filepath.Join(w.dir, "public"))
	}
	w.interrupt()
	now := filesOf(t, filepath.Join(w.dir, "public"))
	for name, text := range good {
		if now[name] != text {
			t.Fatalf("%s is not what it was", name)
		}
	}
	if len(now) != len(good) {
		t.Errorf("%d files, there were %d", len(now), len(good))
	}
	w.start() // the first build of a run
	w.seenAtWork(1)
	w.interrupt()
}

// seenAtWork looks until a build writes pages, or until the n-th of this run is
// done before that was seen: then it is false.
func (w *watching) seenAtWork(n int) bool {
	for {
		entries, err := os.ReadDir(filepath.Join(w.dir, ".public.new", "procedures"))
		if err == nil && len(entries) > 10 {
			return true
		}
		if len(wholeSite.FindAllString(w.out.String(), -1)) >= n {
			return false
		}
		runtime.Gosched()
	}
}
