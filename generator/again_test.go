package generator_test

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator"
	"baybinder/generator/base/draws"
	"baybinder/generator/base/kept"
	"baybinder/generator/bigmanual"
)

// Whatever is edited, what is told where only what the edit reaches was looked at
// is what a check from nothing tells; and often it is no more that is looked at.
func TestWhatAnEditReachesIsToldAsFromNothing(t *testing.T) {
	var reached, all atomic.Int64
	draws.Check(t, 25, 1910, func(t *rapid.T) {
		top := mustTemp(t)
		defer os.RemoveAll(top)
		o := generator.Options{Manual: filepath.Join(top, "manual"), Today: demoDay, Kept: kept.Open(filepath.Join(top, "kept"), nil)}
		if err := bigmanual.Begun("../content", o.Manual); err != nil {
			t.Fatal(err)
		}
		if err := errors.Join(os.RemoveAll(filepath.Join(o.Manual, "readings")), os.RemoveAll(filepath.Join(o.Manual, "records"))); err != nil {
			t.Fatal(err)
		}
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
	if reached.Load()*5 < all.Load() {
		t.Errorf("of %d edits only %d were looked at alone", all.Load(), reached.Load())
	}
}

// word changes one procedure in a way that writers do all day: a word, a time, an
// amount, a sentence more or less.
func (w writer) word() {
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
	change := rapid.SampledFrom([][2]string{{" the ", " this "}, {".", ". Look at it twice."}, {"(time:", "(time:1"}, {" [", " then ["}, {"(tighten:", "(see:"}, {"](", " well]("}, {"1", "7"}, {"\n", "\n\n   This is said of it, too.\n"}, {"\n", "\n\n"}, {". ", " maybe. "}}).Draw(w.t, "change")
	lines[i] = strings.Replace(lines[i], change[0], change[1], 1)
	w.write(name, strings.Join(slices.Clip(lines), ""))
}
