package generator_test

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator"
	"baybinder/generator/base/draws"
	"baybinder/generator/base/kept"
	"baybinder/generator/base/needed"
	"baybinder/generator/bigmanual"
	"baybinder/generator/command/issue"
)

// Whatever is edited, what is told where only what the edit reaches was looked at
// is what a check from nothing tells; and often it is no more that is looked at.
func TestWhatAnEditReachesIsToldAsFromNothing(t *testing.T) {
	var reached, all atomic.Int64
	draws.Check(t, 6, 1910, func(t *rapid.T) {
		top := mustTemp(t)
		defer os.RemoveAll(top)
		o := generator.Options{Manual: filepath.Join(top, "manual"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		if err := bigmanual.Begun("../content", o.Manual); err != nil {
			t.Fatal(err)
		}
		withoutPeople(t, o.Manual)
		w := writer{t, o.Manual}
		if _, err := generator.Judge(o); err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(1, 8).Draw(t, "edits") {
			if rapid.IntRange(0, 3).Draw(t, "kind of edit") == 0 {
				w.edit()
			} else {
				w.word()
			}
			all.Add(1)
			if generator.Reached(o) {
				reached.Add(1)
			}
			v, err := generator.Judge(o)
			if err != nil {
				t.Fatal(err)
			}
			fresh, err := generator.Check(o)
			if err != nil {
				t.Fatal(err)
			}
			same(t, "what is told", saidOf(t, &generator.Result{Verdict: *v}), saidOf(t, fresh))
			if v.Procedures != fresh.Procedures || v.InUse != fresh.InUse || v.Unissued != fresh.Unissued {
				t.Fatal("the procedures are counted otherwise")
			}
		}
	})
	t.Logf("of %d edits %d were looked at alone", all.Load(), reached.Load())
	if needed.InCI() && reached.Load()*5 < all.Load() { // there the draws are the same each time
		t.Errorf("of %d edits only %d were looked at alone", all.Load(), reached.Load())
	}
}

// withoutPeople takes what names people out of a manual.
func withoutPeople(t *rapid.T, manual string) {
	if err := errors.Join(os.RemoveAll(filepath.Join(manual, "readings")), os.RemoveAll(filepath.Join(manual, "records"))); err != nil {
		t.Fatal(err)
	}
}

// Where procedures or entries of registers are edited, issued or not, what they
// reach is made, and that is a build from nothing.
func TestEditsAreBuiltAlone(t *testing.T) {
	var alone, all atomic.Int64
	draws.Check(t, 4, 1910, func(t *rapid.T) {
		top := mustTemp(t)
		defer os.RemoveAll(top)
		o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Preview: true, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		if err := bigmanual.Write(o.Manual, 24, 1); err != nil {
			t.Fatal(err)
		}
		if rapid.Bool().Draw(t, "issued") {
			issueAll(t, o)
		}
		w := writer{t, o.Manual}
		if r, err := generator.Build(o); err != nil || r.Stopped() {
			t.Fatalf("nothing was published: %v %v", err, r.Findings)
		}
		for range rapid.IntRange(1, 4).Draw(t, "edits") {
			w.few()
			r, err := generator.Build(o)
			if err != nil {
				t.Fatal(err)
			}
			all.Add(1)
			if r.Manual == nil {
				alone.Add(1)
			}
			asFromNothing(t, o, r)
		}
	})
	t.Logf("of %d edits %d were built alone", all.Load(), alone.Load())
	if needed.InCI() && alone.Load()*4 < all.Load() {
		t.Errorf("of %d edits only %d were built alone", all.Load(), alone.Load())
	}
}

// few makes one of the changes that reach few pages.
func (w writer) few() {
	switch rapid.IntRange(0, 3).Draw(w.t, "kind of edit") {
	case 0:
		w.line(prose)
	case 1:
		w.word()
	case 2:
		w.edit()
	case 3:
		w.entry()
	}
}

// fields are what is changed in entries of registers.
var fields = [][2]string{{"kept: ", "kept: beside "}, {"name: ", "name: the other "}, {"harm: damage", "harm: death"}, {"harm: ", "harm: minor-injury # "}, {"note: ", "note: Well, "}, {"range: ", "range: 1"}, {"for: ", "for: 1"}, {"limit: ", "limit: near "}, {"kind: ", "owned: 3, kind: "}, {"with: ", "with: a-"}, {"\n", "\n# "}}

// entry makes one of some changes in a register.
func (w writer) entry() {
	name := rapid.SampledFrom(w.files("register/*.yaml")).Draw(w.t, "register")
	data, err := os.ReadFile(name)
	if err != nil {
		w.t.Fatal(err)
	}
	change := rapid.SampledFrom(fields).Draw(w.t, "field")
	parts := strings.Split(string(data), change[0])
	if len(parts) == 1 {
		return
	}
	at := rapid.IntRange(1, len(parts)-1).Draw(w.t, "which")
	w.write(name, strings.Join(parts[:at], change[0])+change[1]+strings.Join(parts[at:], change[0]))
}

// issueAll issues all procedures of a manual.
func issueAll(t *rapid.T, o generator.Options) {
	r, err := generator.Check(o)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := issueNow(r.Manual, r.Findings, issue.Order{Folder: o.Manual, All: true, Date: o.Today, Reason: "First.", Readers: "tell"}); err != nil {
		t.Fatal(err)
	}
}

// inOneLanguage takes the translations out of a manual.
func inOneLanguage(t *rapid.T, manual string) {
	w := writer{t, manual}
	for _, pattern := range []string{"procedures/*/*.es.md", "*/*.es.yaml", "shop.es.yaml"} {
		for _, name := range w.files(pattern) {
			if err := os.Remove(name); err != nil {
				t.Fatal(err)
			}
		}
	}
	shop := filepath.Join(manual, "shop.yaml")
	data, err := os.ReadFile(shop)
	if err != nil {
		t.Fatal(err)
	}
	w.write(shop, regexp.MustCompile(`(?m)^also:.*\n`).ReplaceAllString(string(data), ""))
}

// What an edit does to a procedure that performs the edited one is told, and no
// more than what it reaches is looked at once it is put right.
func TestWhatAnEditDoesToCallersIsTold(t *testing.T) {
	t.Parallel()
	top := t.TempDir()
	o := generator.Options{Manual: filepath.Join(top, "manual"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
	must(t, bigmanual.Write(o.Manual, 8, 1))
	_, err := generator.Judge(o)
	must(t, err)
	inner := filepath.Join(o.Manual, "procedures", "area-00", "job-00000.md")
	whole, err := os.ReadFile(inner)
	must(t, err)
	const caller = "procedures/area-03/job-00003.md"
	for _, refit := range []string{"Put the lid back; [tighten", "[Put the lid back](refit:lid), then [tighten"} {
		must(t, os.WriteFile(inner, bytes.Replace(whole, []byte("[Put the lid back](refit:lid); [tighten"), []byte(refit), 1), 0o644))
		v, err := generator.Judge(o)
		must(t, err)
		fresh, err := generator.Check(o)
		must(t, err)
		got, want := saidOf(t, &generator.Result{Verdict: *v}), saidOf(t, fresh)
		if got != want {
			t.Errorf("with %q it tells\n%s\nand not\n%s", refit, got, want)
		}
		if told := strings.Contains(want, caller); told != !strings.Contains(refit, "refit:") {
			t.Errorf("with %q the caller is told of: %v", refit, told)
		}
	}
}

// The page of a plan tells how long everything in it is to read: also what only a
// procedure that it names performs.
func TestAPlanTellsOfWhatItsProceduresPerform(t *testing.T) {
	t.Parallel()
	top := t.TempDir()
	o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Preview: true, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
	must(t, bigmanual.Begun("../content", o.Manual))
	_, err := generator.Build(o)
	must(t, err)
	inner := filepath.Join(o.Manual, "procedures", "press", "renew-gas-valve-core.md") // which charge-accumulator, of a plan, performs
	text, err := os.ReadFile(inner)
	must(t, err)
	for range 2 {
		text = bytes.Replace(text, []byte(". "), []byte(". Look at it twice. "), 1)
		must(t, os.WriteFile(inner, text, 0o644))
		r, err := generator.Build(o)
		must(t, err)
		asFromNothing(t, o, r)
	}
}

// Without people, records, revisions and dates a manual is told of and built in
// the same way on any day, also by who knows of no such manuals; with a date each
// day is looked at.
func TestWhereNothingIsDatedADayChangesNothing(t *testing.T) {
	t.Parallel()
	top := t.TempDir()
	o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
	must(t, bigmanual.Begun("../content", o.Manual))
	for _, name := range []string{"readings", "records", "revisions", "revisions.csv"} {
		must(t, os.RemoveAll(filepath.Join(o.Manual, name)))
	}
	tools := filepath.Join(o.Manual, "register", "tools.yaml")
	dated, err := os.ReadFile(tools)
	must(t, err)
	for _, name := range []string{tools, filepath.Join(o.Manual, "shop.yaml")} {
		data, err := os.ReadFile(name)
		must(t, err)
		must(t, os.WriteFile(name, regexp.MustCompile(`(?m)^.*[0-9]{4}-[0-9]{2}-[0-9]{2}.*\n`).ReplaceAll(data, nil), 0o644))
	}
	_, err = generator.Build(o)
	must(t, err)
	var told [2]string
	for i := range told {
		r, err := generator.Check(o)
		must(t, err)
		told[i] = saidOf(t, r)
		b, err := generator.Build(o)
		must(t, err)
		if !b.Unchanged {
			t.Errorf("on %s the build is made again", o.Today)
		}
		asFromNothing(t, o, b)
		o.Today.Year += 7
	}
	if told[0] != told[1] {
		t.Errorf("one day tells\n%s\nthe other\n%s", told[0], told[1])
	}
	must(t, os.WriteFile(tools, dated, 0o644))
	for range 2 {
		b, err := generator.Build(o)
		must(t, err)
		if b.Unchanged {
			t.Errorf("on %s a dated manual is not looked at", o.Today)
		}
		o.Today.Day++
	}
}

// What writers do all day: words, a sentence, a time, an amount, a link.
var (
	prose = [][2]string{{" the ", " this "}, {".", ". Look at it twice."}, {". ", " maybe. "}, {", ", " and "}}
	acts  = [][2]string{{"(time:", "(time:1"}, {" [", " then ["}, {"(tighten:", "(see:"}, {"](", " well]("}, {"1", "7"}, {"\n", "\n\n   This is said of it, too.\n"}, {"\n", "\n\n"}}
)

// word changes one procedure in such a way.
func (w writer) word() { w.line(slices.Concat(prose, acts)) }

// line makes one of some changes in a step.
func (w writer) line(changes [][2]string) {
	name := rapid.SampledFrom(w.files("procedures/*/*.md")).Draw(w.t, "file")
	data, err := os.ReadFile(name)
	if err != nil {
		w.t.Fatal(err)
	}
	lines := strings.SplitAfter(string(data), "\n")
	steps := []int{}
	for i, line := range lines {
		if line != "" && (line[0] >= '1' && line[0] <= '9' || strings.HasPrefix(line, "   ")) {
			steps = append(steps, i)
		}
	}
	if len(steps) == 0 {
		return
	}
	i := rapid.SampledFrom(steps).Draw(w.t, "step")
	change := rapid.SampledFrom(changes).Draw(w.t, "change")
	lines[i] = strings.Replace(lines[i], change[0], change[1], 1)
	w.write(name, strings.Join(slices.Clip(lines), ""))
}

// Whatever is edited, the site and what is told are those of a build from
// nothing, and most pages of procedures are not made again.
func TestPagesThatStandAreThoseOfABuildFromNothing(t *testing.T) {
	var stood, all, alone atomic.Int64
	draws.Check(t, 6, 1910, func(t *rapid.T) {
		top := mustTemp(t)
		defer os.RemoveAll(top)
		o := generator.Options{Manual: filepath.Join(top, "manual"), To: filepath.Join(top, "site"), Today: demoDay, Preview: true, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		if err := bigmanual.Begun("../content", o.Manual); err != nil {
			t.Fatal(err)
		}
		if rapid.Bool().Draw(t, "without people and translations") {
			withoutPeople(t, o.Manual)
			inOneLanguage(t, o.Manual)
		}
		w := writer{t, o.Manual}
		if _, err := generator.Build(o); err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(1, 4).Draw(t, "edits") {
			w.anything(&o)
			r, err := generator.Build(o)
			if err != nil {
				t.Fatal(err)
			}
			stood.Add(int64(r.Stood))
			all.Add(int64(r.Pages))
			if r.Manual == nil && !r.Unchanged {
				alone.Add(1)
			}
			asFromNothing(t, o, r)
		}
	})
	t.Logf("of %d pages %d stood, and %d builds looked at nothing else", all.Load(), stood.Load(), alone.Load())
	if needed.InCI() && (stood.Load()*4 < all.Load() || alone.Load() == 0) {
		t.Errorf("of %d pages only %d stood, and %d builds looked at nothing else", all.Load(), stood.Load(), alone.Load())
	}
}

// anything changes whatever there is to change.
func (w writer) anything(o *generator.Options) {
	file := func(pattern string) string { return rapid.SampledFrom(w.files(pattern)).Draw(w.t, "file") }
	lines := func(pattern, old, fresh string) {
		name := file(pattern)
		data, err := os.ReadFile(name)
		if err != nil {
			w.t.Fatal(err)
		}
		w.write(name, strings.Replace(string(data), old, fresh, 1+rapid.IntRange(0, 3).Draw(w.t, "how often")))
	}
	switch rapid.SampledFrom([]string{"word", "word", "word", "edit", "title", "status", "translation", "register", "entry", "entry", "shop", "picture", "day", "added", "removed", "renamed"}).Draw(w.t, "what") {
	case "word":
		w.word()
	case "edit":
		w.edit()
	case "title":
		lines("procedures/*/*.md", "title: ", "title: Another ")
	case "status":
		lines("procedures/*/*.md", "title: ", "status: draft\ntitle: ")
	case "entry":
		w.entry()
	case "translation":
		if _, err := os.Stat(w.path("shop.es.yaml")); err != nil {
			return // it is in one language
		}
		lines("procedures/*/*.es.md", " la ", " una ")
	case "register":
		lines("register/*.yaml", "name: ", "name: other ")
	case "shop":
		lines("shop*.yaml", "title: ", "title: The ")
	case "picture":
		lines("pictures/*.svg", "<svg ", "<svg data-of=\"x\" ")
	case "day":
		o.Today.Day++
	case "added":
		w.write(w.path("procedures/general/one-more.md"), "---\ntitle: One more\nstatus: draft\n---\n\n## Work\n\n1. Look at it, and see [the other](see:return-to-service). [](time:2min)\n")
	case "removed":
		if err := os.Remove(file("procedures/*/*.md")); err != nil {
			w.t.Fatal(err)
		}
	case "renamed":
		name := file("procedures/*/*.md")
		if err := os.Rename(name, strings.TrimSuffix(name, ".md")+"-2.md"); err != nil {
			w.t.Fatal(err)
		}
	}
}
