package settle

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	judge "baybinder/generator/base/needed"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var today = model.Date{Year: 2026, Month: 3, Day: 2}

// TestCases runs the files of cases/: a manual, what its files are after
// settle (want/…), and what settle says (said). A file without a want is not
// touched.
func TestCases(t *testing.T) {
	files, err := filepath.Glob("cases/*.txtar")
	if err != nil || len(files) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	for _, name := range files {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) { runCase(t, name) })
	}
}

func runCase(t *testing.T, name string) {
	archive, err := txtar.ParseFile(name)
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	want, said := map[string]string{}, ""
	for _, f := range append(shared(), archive.Files...) {
		switch rest, isWant := strings.CutPrefix(f.Name, "want/"); {
		case f.Name == "said":
			said = string(f.Data)
		case isWant:
			want[rest] = string(f.Data)
		default:
			want[f.Name] = string(f.Data)
			writeTo(t, dir, f.Name, f.Data)
		}
	}
	if got := tell(t, dir); got != said {
		t.Errorf("said:\n%s\nwant:\n%s", got, said)
	}
	for name, text := range want {
		if got := readFrom(t, dir, name); got != text {
			t.Errorf("%s is\n%s\nwant\n%s", name, got, text)
		}
	}
	again, err := Run(Options{Manual: dir, Today: today})
	if err != nil || slices.ContainsFunc(again, func(c Change) bool { return len(c.Did) > 0 }) {
		t.Errorf("a second time it did %v (%v)", again, err)
	}
}

// tell settles a manual and writes down what was said.
func tell(t *testing.T, dir string) string {
	t.Helper()
	changes, err := Run(Options{Manual: dir, Today: today})
	if err != nil {
		t.Fatal(err)
	}
	return told(changes)
}

func told(changes []Change) string {
	var b strings.Builder
	for _, c := range changes {
		fmt.Fprintln(&b, c.Path)
		for _, did := range c.Did {
			fmt.Fprintln(&b, "  did", place(did.At), did.Says)
		}
		for _, left := range c.Left {
			fmt.Fprintln(&b, "  left", place(left.At), left.Says)
		}
	}
	return b.String()
}

func place(at position.Pos) string {
	line, col := at.LineCol()
	return fmt.Sprintf("%d:%d", line, col)
}

// shared is the shop of every case.
func shared() []txtar.File {
	archive, err := txtar.ParseFile("cases/shop.txt")
	if err != nil {
		panic(err)
	}
	return archive.Files
}

func writeTo(t interface{ Fatal(...any) }, dir, name string, data []byte) {
	full := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, data, 0o644); err != nil {
		t.Fatal(err)
	}
}

func readFrom(t interface{ Fatal(...any) }, dir, name string) string {
	data, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

const settled = `---
title: Press
tools: [hammer]
---
## Work

1. Strike with the [hammer](tool:hammer).
`

// A file in which nothing is to do is not written: its time stays, and so does
// whatever hangs on it.
func TestASettledFileIsNotWritten(t *testing.T) {
	dir := shop(t)
	writeTo(t, dir, "procedures/press.md", []byte(settled))
	before := stat(t, dir, "procedures/press.md")
	if said := tell(t, dir); said != "" {
		t.Errorf("said %s", said)
	}
	if after := stat(t, dir, "procedures/press.md"); !os.SameFile(before, after) {
		t.Error("the file was replaced")
	}
}

func TestShowWritesNothing(t *testing.T) {
	dir := shop(t)
	text := strings.Replace(settled, "tools: [hammer]", "tools: []", 1)
	writeTo(t, dir, "procedures/press.md", []byte(text))
	changes, err := Run(Options{Manual: dir, Today: today, Show: true})
	if err != nil {
		t.Fatal(err)
	}
	if told(changes) != "procedures/press.md\n  did 1:1 added to tools: hammer\n" {
		t.Errorf("said %s", told(changes))
	}
	if got := readFrom(t, dir, "procedures/press.md"); got != text {
		t.Errorf("it is now %s", got)
	}
}

func TestASettledFileKeepsItsModeAndItsLink(t *testing.T) {
	dir := shop(t)
	writeTo(t, dir, "pictures/press.md", []byte(strings.Replace(settled, "tools: [hammer]", "tools: []", 1)))
	full := filepath.Join(dir, "pictures", "press.md")
	if err := os.Chmod(full, 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(filepath.Join(dir, "procedures"), 0o755); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "procedures", "press.md")
	judge.Judge(t, os.Symlink(filepath.Join("..", "pictures", "press.md"), link) == nil, "a file system with symbolic links")
	tell(t, dir)
	if readFrom(t, dir, "pictures/press.md") != settled {
		t.Error("the file behind the link was not settled")
	}
	if info, _ := os.Lstat(link); info.Mode()&os.ModeSymlink == 0 {
		t.Error("the link was replaced")
	}
	if stat(t, dir, "pictures/press.md").Mode().Perm() != 0o666 {
		t.Error("the file's mode was changed")
	}
}

func TestNoManual(t *testing.T) {
	if _, err := Run(Options{Manual: filepath.Join(t.TempDir(), "nothing"), Today: today}); err == nil || !strings.Contains(err.Error(), "there is no folder") {
		t.Errorf("got %v", err)
	}
}

func shop(t *testing.T) string {
	dir := t.TempDir()
	for _, f := range shared() {
		writeTo(t, dir, f.Name, f.Data)
	}
	return dir
}

func stat(t *testing.T, dir, name string) os.FileInfo {
	info, err := os.Stat(filepath.Join(dir, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return info
}
