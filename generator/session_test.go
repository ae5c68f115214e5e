package generator_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator"
	"baybinder/generator/base/draws"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/bigmanual"
)

// writer edits a copy of the demo manual as writers do, at random.
type writer struct {
	t    *rapid.T
	from string
}

func (w writer) path(name string) string { return filepath.Join(w.from, filepath.FromSlash(name)) }

func (w writer) files(pattern string) []string {
	files, err := filepath.Glob(w.path(pattern))
	if err != nil || len(files) == 0 {
		w.t.Fatalf("no files %s: %v", pattern, err)
	}
	return files
}

// edit changes one procedure, or now and then another file, and says which
// files changed.
func (w writer) edit() []string {
	pattern := "procedures/*/*.md"
	if rapid.IntRange(0, 9).Draw(w.t, "kind") == 0 {
		pattern = "*/*.yaml"
	}
	name := rapid.SampledFrom(w.files(pattern)).Draw(w.t, "file")
	data, err := os.ReadFile(name)
	if err != nil {
		w.t.Fatal(err)
	}
	lines := strings.SplitAfter(string(data), "\n")
	i := rapid.IntRange(0, len(lines)-1).Draw(w.t, "line")
	j := rapid.IntRange(0, len(lines)-1).Draw(w.t, "other line")
	switch rapid.SampledFrom([]string{"drop", "twice", "swap", "words", "link", "type"}).Draw(w.t, "edit") {
	case "drop":
		lines = slices.Delete(lines, i, i+1)
	case "twice":
		lines = slices.Insert(lines, i, lines[i])
	case "swap":
		lines[i], lines[j] = lines[j], lines[i]
	case "words":
		lines[i] = strings.Replace(lines[i], " the ", " this ", 1)
	case "link":
		lines[i] = strings.Replace(lines[i], "](", "x](", 1)
	case "type":
		lines[i] = strings.TrimRight(lines[i], "\n") + " See [the other job](see:isolate-pump).\n"
	}
	w.write(name, strings.Join(lines, ""))
	rel, err := filepath.Rel(w.from, name)
	if err != nil {
		w.t.Fatal(err)
	}
	return []string{filepath.ToSlash(rel)}
}

func (w writer) write(name, text string) {
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		w.t.Fatal(err)
	}
}

// Whatever is edited, the page that comes first is the one that a build from
// nothing would write, and after the build behind it the site and the findings
// are that build's, byte for byte. Where there is an error the last good site
// stays.
func TestWatchingEndsAsABuildFromNothing(t *testing.T) {
	var shown atomic.Int64
	draws.Check(t, 12, 1910, func(t *rapid.T) { // each builds the demo several times
		from := mustTemp(t)
		defer os.RemoveAll(from)
		if err := bigmanual.Begun("../content", filepath.Join(from, "manual")); err != nil {
			t.Fatal(err)
		}
		w := writer{t, filepath.Join(from, "manual")}
		o := generator.Options{Manual: w.from, To: filepath.Join(from, "site"), Today: demoDay, Preview: true}
		s := generator.NewSession(o)
		if r, err := s.Build(t.Context()); err != nil || r.Errors() > 0 {
			t.Fatalf("the demo: %v", err)
		}
		good := siteOf(t, o.To)
		for range rapid.IntRange(1, 4).Draw(t, "edits") {
			_, saved, err := s.Saved(w.edit())
			if err != nil {
				t.Fatal(err)
			}
			clean, err := generator.Build(generator.Options{Manual: w.from, To: filepath.Join(from, "clean"), Today: demoDay, Preview: true})
			if err != nil {
				t.Fatal(err)
			}
			if clean.Errors() == 0 {
				good = siteOf(t, filepath.Join(from, "clean"))
				for _, page := range saved {
					shown.Add(1)
					same(t, "the page that came first, "+page.Page, readFile(t, filepath.Join(o.To, filepath.FromSlash(page.Page))), good[page.Page])
				}
			}
			r, err := s.Build(t.Context())
			if err != nil {
				t.Fatal(err)
			}
			same(t, "the findings", findingsOf(r), findingsOf(clean))
			if clean.Errors() > 0 {
				continue // a page that came first may be newer than the last good site
			}
			now := siteOf(t, o.To)
			for name := range good {
				same(t, name, now[name], good[name])
			}
			if len(now) != len(good) {
				t.Fatalf("%d files, want %d", len(now), len(good))
			}
		}
	})
	if needed.InCI() && shown.Load() == 0 { // there the draws are the same each time
		t.Error("no page ever came first")
	}
}

// What a saved procedure does to those that perform it is told with it, before
// the build behind it.
func TestWhatCallersGetIsToldWithTheSavedPage(t *testing.T) {
	t.Parallel()
	top := t.TempDir()
	o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay}
	inner := filepath.Join(o.Manual, "procedures", "inner.md")
	for name, text := range map[string]string{
		"shop.yaml":            "title: A shop\nemergency: Call for help.\n",
		"register/roles.yaml":  "lifting: { name: Lifting }\n",
		"procedures/outer.md":  "---\ntitle: Outer job\n---\n\n## Work\n\n1. [Do the middle job](do:middle). [](time:1min)\n",
		"procedures/middle.md": "---\ntitle: Middle job\n---\n\n## Work\n\n1. [Do the inner job](do:inner). [](time:1min)\n",
		"procedures/inner.md":  "---\ntitle: Inner job\n---\n\n## Work\n\n1. Look at it. [](time:1min)\n",
	} {
		full := filepath.Join(o.Manual, filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, []byte(text), 0o644))
	}
	s := generator.NewSession(o)
	r, err := s.Build(t.Context())
	must(t, err)
	if r.Errors() > 0 {
		t.Fatal(findingsOf(r))
	}
	before := findingsOf(r)
	text, err := os.ReadFile(inner)
	must(t, err)
	for _, c := range []struct{ front, want string }{{"title: Inner job\nneeds: [lifting]", "procedures/middle.md"}, {"title: Inner job", ""}} {
		must(t, os.WriteFile(inner, []byte(strings.Replace(string(text), "title: Inner job", c.front, 1)), 0o644))
		saved, _, err := s.Saved([]string{"procedures/inner.md"})
		must(t, err)
		clean, err := generator.Check(o)
		must(t, err)
		if got, want := findingsOf(saved), findingsOf(clean); got != want || !strings.Contains(got, c.want) || c.want == "" && got != before {
			t.Errorf("with %q it tells\n%s\nand not\n%s", c.front, got, want)
		}
	}
}

func mustTemp(t *rapid.T) string {
	dir, err := os.MkdirTemp("", "session")
	if err != nil {
		t.Fatal(err)
	}
	return dir
}

func readFile(t *rapid.T, name string) string {
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func siteOf(t *rapid.T, to string) map[string]string {
	site := map[string]string{}
	err := filepath.WalkDir(to, func(full string, d os.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			rel, _ := filepath.Rel(to, full)
			site[filepath.ToSlash(rel)] = readFile(t, full)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return site
}

func findingsOf(r *generator.Result) string {
	var out strings.Builder
	if err := finding.Text(&out, r.Findings, finding.TextOptions{}); err != nil {
		return fmt.Sprint(err)
	}
	return out.String()
}

func same(t *rapid.T, what, got, want string) {
	if got == want {
		return
	}
	i := 0
	for i < min(len(got), len(want)) && got[i] == want[i] {
		i++
	}
	cut := func(s string) string { return s[max(0, i-60):min(len(s), i+60)] }
	t.Fatalf("%s differs at byte %d:\n…%s…\nwant\n…%s…", what, i, cut(got), cut(want))
}
