package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"
)

// watching is the program at work on a folder of its own.
type watching struct {
	t          *testing.T
	dir        string // with content, public, and tmp for temporary files
	url        string
	cmd        *exec.Cmd
	out, wrong said
}

// said is what a process says, while it runs.
type said struct {
	mu   sync.Mutex
	text bytes.Buffer
}

func (s *said) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.Write(p)
}

func (s *said) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.String()
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
func startWatch(t *testing.T, manual fs.FS) *watching {
	t.Helper()
	w := &watching{t: t, dir: t.TempDir()}
	do(t, os.CopyFS(filepath.Join(w.dir, "content"), manual))
	do(t, os.Mkdir(filepath.Join(w.dir, "tmp"), 0o755))
	w.start()
	w.built(1)
	return w
}

func (w *watching) start() {
	w.t.Helper()
	w.cmd = program(w.t, w.dir, "watch", "--today", "2026-05-04")
	w.cmd.Stdout, w.cmd.Stderr = &w.out, &w.wrong
	do(w.t, w.cmd.Start())
	w.t.Cleanup(func() { _ = w.cmd.Process.Kill() })
	address := regexp.MustCompile(`http://\S+/`)
	w.until("it serves", func() bool {
		w.url = address.FindString(w.out.String())
		return w.url != ""
	})
}

func (w *watching) until(what string, is func() bool) {
	w.t.Helper()
	for range 600 {
		if is() {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	w.t.Fatalf("never: %s\n%s%s", what, &w.out, &w.wrong)
}

var wholeSite = regexp.MustCompile(`(?m)^\d+ pages? in `)

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
	do(w.t, w.cmd.Process.Signal(os.Interrupt))
	ended := make(chan error, 1)
	go func() { ended <- w.cmd.Wait() }()
	select {
	case err := <-ended:
		if err != nil || w.wrong.String() != "" {
			w.t.Errorf("it ended with %v %s", err, &w.wrong)
		}
	case <-time.After(10 * time.Second):
		_ = w.cmd.Process.Signal(syscall.SIGQUIT)
		w.t.Fatalf("Ctrl-C does not end it\n%v%s", <-ended, &w.wrong)
	}
	for _, folder := range []string{"", "tmp"} {
		entries, err := os.ReadDir(filepath.Join(w.dir, folder))
		do(w.t, err)
		for _, e := range entries {
			switch name := e.Name(); {
			case folder == "" && (name == "content" || name == "public" || name == "tmp"):
			case folder == "tmp" && strings.HasSuffix(name, ".lock"): // stays, so that two builds agree on it
			default:
				w.t.Errorf("it leaves %s behind", filepath.Join(folder, name))
			}
		}
	}
}
