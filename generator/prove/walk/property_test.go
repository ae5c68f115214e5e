package walk_test

import (
	"fmt"
	"os"
	"runtime/debug"
	"sort"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/draws"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// TestMain lets garbage stand: what is alive is a few small manuals.
func TestMain(m *testing.M) {
	debug.SetGCPercent(800)
	os.Exit(m.Run())
}

// firstSeed is what the drawn manuals follow from.
const firstSeed = 1910147

// The walk, which goes through all worlds at once and applies a summary at
// each call, finds what the reference finds, which inlines every call and
// takes one world at a time. What is performed and leaves things in ways that
// depend on many outcomes of its own, which is wrong and told there, is taken
// more roughly by the walk.
func TestWalkAgreesWithReference(t *testing.T) {
	draws.Check(t, 160, firstSeed, func(t *rapid.T) {
		files := drawManual(t)
		m, found := bind.Manual(source.FromText(files))
		readable(t, files, found)
		dead := map[*model.Link]bool{}
		r := walk.Everything(m)
		for _, p := range m.Procedures {
			want, locked, all := referenceWalk(m, p, dead)
			if !all {
				return
			}
			got := foundBy(r.Of(p).Findings)
			if diff := difference(want, got); diff != "" && !r.Rough(p) {
				t.Fatalf("%s\n%s", diff, show(files))
			}
			if got := r.Of(p).Locked; got != locked {
				t.Fatalf("%s has %d points locked at once, by the reference %d\n%s", p.ID, got, locked, show(files))
			}
		}
	})
}

// Telling a fault once, and in short where there is much to tell, hides no
// procedure that has one, and adds no place.
func TestToldOnceHidesNothing(t *testing.T) {
	draws.Check(t, 120, firstSeed, func(t *rapid.T) {
		files := drawManual(t)
		m, found := bind.Manual(source.FromText(files))
		readable(t, files, found)
		short, long := walk.All(m), walk.Everything(m)
		for _, p := range m.Procedures {
			all, told := foundBy(long.Of(p).Findings), foundBy(short.Of(p).Findings)
			if len(all) > 0 && len(told) == 0 {
				t.Fatalf("nothing is told of %s\n%s", p.ID, show(files))
			}
			for f := range told {
				if !all[f] {
					t.Fatalf("%s is told and not found\n%s", f, show(files))
				}
			}
		}
	})
}

// readable says that the drawn text is a manual.
func readable(t *rapid.T, files map[string]string, found []finding.Finding) {
	for _, f := range found {
		t.Fatalf("%s: %s\n%s", f.At.Path(), f.Message, show(files))
	}
}

// foundBy is what the walk found, as the reference says it. What has to do
// with words and conditions alone is not compared, nor at which of several
// links a supply is missing.
func foundBy(list []finding.Finding) map[refFinding]bool {
	out := map[refFinding]bool{}
	for _, f := range list {
		switch f.Code {
		case "never-applies", "act-in-words":
			continue
		}
		k := at(f.At, f.Code)
		if f.Code == "not-supplied" && strings.Contains(f.Message, "none is") {
			k.line = 0
		}
		out[k] = true
	}
	return out
}

func difference(want, got map[refFinding]bool) string {
	var out []string
	for f := range want {
		if !got[f] {
			out = append(out, "missing: "+f.String())
		}
	}
	for f := range got {
		if !want[f] {
			out = append(out, "surplus: "+f.String())
		}
	}
	sort.Strings(out)
	return strings.Join(out, "\n")
}

func show(files map[string]string) string {
	var names []string
	for n := range files {
		if strings.HasPrefix(n, "procedures/") || n == "machines/rig.yaml" {
			names = append(names, n)
		}
	}
	sort.Strings(names)
	out := ""
	for _, n := range names {
		out += "-- " + n + " --\n"
		for i, line := range strings.Split(files[n], "\n") {
			out += fmt.Sprintf("%3d %s\n", i+1, line)
		}
	}
	if os.Getenv("KEEP") != "" {
		_ = os.WriteFile(os.Getenv("KEEP"), []byte(out), 0o644)
	}
	return out
}

// What cannot be read is walked around: no slip of the pen stops the walk.
func TestSlipsAreWalkedAround(t *testing.T) {
	draws.Check(t, 200, firstSeed, func(t *rapid.T) {
		files := drawManual(t)
		names := []string{"machines/rig.yaml", "procedures/p0.md", "procedures/p1.md", "procedures/p2.md", "register/holds.yaml", "register/tools.yaml"}
		for range 1 + rapid.IntRange(0, 3).Draw(t, "slips") {
			name := rapid.SampledFrom(names).Draw(t, "file")
			text := files[name]
			from := rapid.IntRange(0, len(text)).Draw(t, "from")
			to := min(len(text), from+rapid.IntRange(0, 8).Draw(t, "length"))
			files[name] = text[:from] + rapid.SampledFrom([]string{"", "x", "\n", ": ", "power", "lid"}).Draw(t, "slip") + text[to:]
		}
		m, _ := bind.Manual(source.FromText(files))
		r := walk.All(m)
		for _, p := range m.Procedures {
			for _, s := range p.Steps {
				r.Stand(p, s)
			}
		}
	})
}
