package generator_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/txtar"
	"pgregory.net/rapid"

	"baybinder/generator"
	"baybinder/generator/base/draws"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/kept"
	"baybinder/generator/check"
	"baybinder/generator/model"
)

// shopOfOne writes the small manual of the golden pages, with a picture, into a
// folder.
func shopOfOne(folder string) error {
	archive, err := txtar.ParseFile(filepath.Join("testdata", "golden.txtar"))
	if err != nil {
		return err
	}
	files := map[string]string{"pictures/seal.svg": drawing("4")}
	for _, f := range archive.Files {
		if !strings.HasPrefix(f.Name, "site/") {
			files[f.Name] = string(f.Data)
		}
	}
	files["procedures/renew-seal.md"] += "\n![The seal](../pictures/seal.svg)\n"
	for name, text := range files {
		full := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}

func drawing(r string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><circle cx="4" cy="4" r="` + r + `"/></svg>`
}

// rewritten puts other words into a file, as many as there were, and its old time
// back: what an editor or a copy from elsewhere can do.
func rewritten(t *testing.T, name, old, fresh string) {
	t.Helper()
	info, err := os.Stat(name)
	must(t, err)
	data, err := os.ReadFile(name)
	must(t, err)
	if !bytes.Contains(data, []byte(old)) {
		t.Fatalf("%s has no %q", name, old)
	}
	must(t, os.WriteFile(name, bytes.Replace(data, []byte(old), []byte(fresh), 1), 0o644))
	must(t, os.Chtimes(name, info.ModTime(), info.ModTime()))
}

// After each thing that matters the site is made anew, and is that of a build
// from nothing; after each that does not, nothing is done.
func TestABuildEndsAtOnceWhereNothingChanged(t *testing.T) {
	t.Parallel()
	program := []byte("this program")
	for _, c := range []struct {
		what    string
		happens func(t *testing.T, o *generator.Options)
		same    bool
	}{
		{"nothing", func(*testing.T, *generator.Options) {}, true},
		{"the times of all files", func(t *testing.T, o *generator.Options) {
			must(t, filepath.WalkDir(o.Manual, func(full string, _ os.DirEntry, err error) error {
				return os.Chtimes(full, time.Unix(1, 0), time.Unix(1, 0))
			}))
		}, true},
		{"a hidden file", func(t *testing.T, o *generator.Options) {
			must(t, os.WriteFile(filepath.Join(o.Manual, ".notes"), nil, 0o644))
		}, true},
		{"a text", func(t *testing.T, o *generator.Options) {
			rewritten(t, filepath.Join(o.Manual, "procedures", "renew-seal.md"), "Do this", "Do that")
		}, false},
		{"line ends alone", func(t *testing.T, o *generator.Options) {
			rewritten(t, filepath.Join(o.Manual, "shop.yaml"), "\n", "\r\n")
		}, false},
		{"a picture", func(t *testing.T, o *generator.Options) {
			rewritten(t, filepath.Join(o.Manual, "pictures", "seal.svg"), `r="4"`, `r="3"`)
		}, false},
		{"a new file", func(t *testing.T, o *generator.Options) {
			must(t, os.WriteFile(filepath.Join(o.Manual, "pictures", "new.svg"), []byte(drawing("1")), 0o644))
		}, false},
		{"a procedure is renamed", func(t *testing.T, o *generator.Options) {
			must(t, os.Rename(filepath.Join(o.Manual, "procedures", "renew-seal.md"), filepath.Join(o.Manual, "procedures", "renew-a-seal.md")))
		}, false},
		{"another day, and nothing is dated", func(_ *testing.T, o *generator.Options) {
			o.Today = model.Date{Year: 2026, Month: time.May, Day: 5}
		}, true},
		{"a preview", func(_ *testing.T, o *generator.Options) { o.Preview = true }, false},
		{"another folder", func(_ *testing.T, o *generator.Options) { o.To += "-2" }, false},
		{"the readings too", func(_ *testing.T, o *generator.Options) { o.Readings = o.To + "-readings" }, false},
		{"another program", func(t *testing.T, o *generator.Options) {
			o.Kept = kept.Open(filepath.Join(filepath.Dir(o.To), "kept"), []byte("that program"))
		}, false},
		{"nothing is kept", func(_ *testing.T, o *generator.Options) { o.Kept = nil }, false},
		{"a page is lost", func(t *testing.T, o *generator.Options) {
			must(t, os.Remove(filepath.Join(o.To, "procedures", "renew-seal.html")))
		}, false},
		{"a page is changed", func(t *testing.T, o *generator.Options) {
			rewritten(t, filepath.Join(o.To, "procedures", "renew-seal.html"), "Renew", "Relax")
		}, false},
		{"a page is a folder", func(t *testing.T, o *generator.Options) {
			must(t, os.Remove(filepath.Join(o.To, "labels.html")))
			must(t, os.Mkdir(filepath.Join(o.To, "labels.html"), 0o755))
		}, false},
		{"the list of what was written", func(t *testing.T, o *generator.Options) {
			rewritten(t, filepath.Join(o.To, ".written"), "labels.html", "babels.html")
		}, false},
		{"the whole site", func(t *testing.T, o *generator.Options) { must(t, os.RemoveAll(o.To)) }, false},
		{"what is kept is damaged", func(t *testing.T, o *generator.Options) {
			must(t, filepath.WalkDir(filepath.Join(filepath.Dir(o.To), "kept"), func(full string, d os.DirEntry, err error) error {
				if err == nil && !d.IsDir() {
					err = os.Truncate(full, 40)
				}
				return err
			}))
		}, false},
	} {
		t.Run(c.what, func(t *testing.T) {
			top := t.TempDir()
			o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), program)}
			must(t, shopOfOne(o.Manual))
			first, err := generator.Build(o)
			must(t, err)
			if first.Unchanged || first.Errors() > 0 {
				t.Fatalf("the first build did nothing, or found an error: %v", first.Findings)
			}
			c.happens(t, &o)
			second, err := generator.Build(o)
			must(t, err)
			if second.Unchanged != c.same {
				t.Errorf("the second build did nothing: %v, want %v", second.Unchanged, c.same)
			}
			if second.Pages != first.Pages {
				t.Errorf("%d pages, then %d", first.Pages, second.Pages)
			}
			asFromNothing(t, o, second)
			if o.Kept == nil {
				return
			}
			third, err := generator.Build(o)
			must(t, err)
			if !third.Unchanged {
				t.Error("the build behind it does all again")
			}
			asFromNothing(t, o, third)
		})
	}
}

// fails is a test, or a drawn case of one.
type fails interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
}

// asFromNothing compares a site, and what was told, with those of a build that
// knows of no other.
func asFromNothing(t fails, o generator.Options, r *generator.Result) {
	t.Helper()
	top, err := os.MkdirTemp("", "nothing")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(top)
	clean := o
	clean.To, clean.Kept = filepath.Join(top, "site"), nil
	if o.Readings != "" {
		clean.Readings = filepath.Join(top, "readings")
	}
	want, err := generator.Build(clean)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := saidOf(t, r), saidOf(t, want); got != want {
		t.Errorf("it tells\n%s\nand not\n%s", got, want)
	}
	if r.Procedures != want.Procedures || r.InUse != want.InUse || r.Unissued != want.Unissued {
		t.Errorf("it counts %d, %d, %d procedures, and not %d, %d, %d", r.Procedures, r.InUse, r.Unissued, want.Procedures, want.InUse, want.Unissued)
	}
	if want.Stopped() {
		return
	}
	if r.Pages != want.Pages || r.ReadingsPages != want.ReadingsPages {
		t.Errorf("%d and %d pages, want %d and %d", r.Pages, r.ReadingsPages, want.Pages, want.ReadingsPages)
	}
	alike(t, o.To, clean.To)
	if o.Readings != "" {
		alike(t, o.Readings, clean.Readings)
	}
}

// alike compares two folders, but for what the program did not write.
func alike(t fails, got, want string) {
	t.Helper()
	err := filepath.WalkDir(want, func(full string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(want, full)
		if err != nil {
			return err
		}
		data, err := os.ReadFile(full)
		if err != nil {
			return err
		}
		if there, err := os.ReadFile(filepath.Join(got, rel)); err != nil || !bytes.Equal(there, data) {
			t.Errorf("%s is not as a build from nothing writes it: %v", rel, err)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// saidOf is all that the commands say of findings.
func saidOf(t fails, r *generator.Result) string {
	t.Helper()
	var out bytes.Buffer
	for _, all := range []bool{false, true} {
		if err := finding.Text(&out, r.Findings, finding.TextOptions{All: all, First: check.Causes(), Tongue: r.Tongue()}); err != nil {
			t.Fatal(err)
		}
	}
	if err := finding.SARIF(&out, r.Findings, check.Catalogue(), r.Tongue()); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// What the program did not write is told each time, and costs no build.
func TestWhatIsKeptInTheSiteIsToldEachTime(t *testing.T) {
	t.Parallel()
	top := t.TempDir()
	o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
	must(t, shopOfOne(o.Manual))
	_, err := generator.Build(o)
	must(t, err)
	for _, name := range []string{"mine.txt", ".gitkeep", "procedures/mine.html"} {
		must(t, os.WriteFile(filepath.Join(o.To, filepath.FromSlash(name)), nil, 0o644))
		r, err := generator.Build(o)
		must(t, err)
		full := o
		full.Kept = nil
		want, err := generator.Build(full)
		must(t, err)
		if !slices.Equal(r.Kept, want.Kept) || !r.Unchanged {
			t.Errorf("with %s: kept %q, and not %q; nothing done: %v", name, r.Kept, want.Kept, r.Unchanged)
		}
		_, err = generator.Build(o) // the build before this one wrote the site again
		must(t, err)
	}
}

// Whatever is edited, in the manual or in the site, and however often the same
// comes again, the site and what is told are those of a build from nothing.
func TestAKeptBuildIsABuildFromNothing(t *testing.T) {
	draws.Check(t, 25, 1910, func(t *rapid.T) {
		top := mustTemp(t)
		defer os.RemoveAll(top)
		o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		if err := shopOfOne(o.Manual); err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(2, 8).Draw(t, "builds") {
			for range rapid.IntRange(0, 2).Draw(t, "edits") {
				editSomething(t, &o)
			}
			r, err := generator.Build(o)
			if err != nil {
				t.Fatal(err)
			}
			asFromNothing(t, o, r)
			v, err := generator.Judge(o)
			if err != nil {
				t.Fatal(err)
			}
			fresh, err := generator.Check(o)
			if err != nil {
				t.Fatal(err)
			}
			if got, want := saidOf(t, &generator.Result{Verdict: *v}), saidOf(t, fresh); got != want {
				t.Fatalf("check tells\n%s\nand not\n%s", got, want)
			}
		}
	})
}

// editSomething changes the manual, the site or what is asked for, mostly to one
// of two states, so that earlier ones come again.
func editSomething(t *rapid.T, o *generator.Options) {
	turn := func(name, a, b string) {
		data, err := os.ReadFile(name)
		if err != nil {
			return // it is lost
		}
		text := strings.Replace(string(data), a, b, 1)
		if text == string(data) {
			text = strings.Replace(text, b, a, 1)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	manual := func(name string) string { return filepath.Join(o.Manual, filepath.FromSlash(name)) }
	site := func(name string) string { return filepath.Join(o.To, filepath.FromSlash(name)) }
	edits := map[string]func(){
		"words":      func() { turn(manual("procedures/renew-seal.md"), "Do this", "Do that") },
		"error":      func() { turn(manual("procedures/renew-seal.md"), "tool:socket-10", "tool:socket-99") },
		"advice":     func() { turn(manual("procedures/renew-seal.md"), "Close the oil valve", "Maybe close the oil valve") },
		"register":   func() { turn(manual("register/tools.yaml"), "kept: bench", "kept: crane") },
		"picture":    func() { turn(manual("pictures/seal.svg"), `r="4"`, `r="3"`) },
		"bad":        func() { turn(manual("pictures/seal.svg"), `<circle`, `<script`) },
		"day":        func() { o.Today.Day = 9 - o.Today.Day },
		"preview":    func() { o.Preview = !o.Preview },
		"page":       func() { turn(site("procedures/renew-seal.html"), "Renew", "Relax") },
		"lost page":  func() { _ = os.Remove(site("index.html")) },
		"style":      func() { turn(site("theme/page.js"), "a", "b") },
		"site":       func() { _ = os.RemoveAll(o.To) },
		"more files": func() { _ = os.WriteFile(site("mine.txt"), nil, 0o644) },
	}
	names := []string{}
	for name := range edits {
		names = append(names, name)
	}
	slices.Sort(names)
	edits[rapid.SampledFrom(names).Draw(t, "edit")]()
}

// Every finding of the rules' cases is told in the same words where it was kept.
func TestEveryFindingCanBeKept(t *testing.T) {
	t.Parallel()
	cases, err := filepath.Glob(filepath.Join("check", "cases", "*.txtar"))
	must(t, err)
	codes := map[string]bool{}
	top := t.TempDir()
	for i, name := range cases {
		archive, err := txtar.ParseFile(name)
		must(t, err)
		manual := filepath.Join(top, fmt.Sprint("manual-", i))
		for _, f := range archive.Files {
			full := filepath.Join(manual, filepath.FromSlash(strings.TrimPrefix(f.Name, "bad/")))
			must(t, os.MkdirAll(filepath.Dir(full), 0o755))
			must(t, os.WriteFile(full, f.Data, 0o644))
		}
		o := generator.Options{Manual: manual, To: filepath.Join(top, fmt.Sprint("site-", i)), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		first, err := generator.Build(o)
		must(t, err)
		second, err := generator.Build(o)
		must(t, err)
		if got, want := saidOf(t, second), saidOf(t, first); got != want || !second.Unchanged {
			t.Errorf("%s: nothing done: %v; it tells\n%s\nand not\n%s", name, second.Unchanged, got, want)
		}
		for _, f := range second.Findings {
			codes[f.Code] = true
		}
	}
	if len(codes) < 60 {
		t.Errorf("only %d kinds of findings were kept", len(codes))
	}
}
