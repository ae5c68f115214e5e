package generator_test

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/base/kept"
)

// A fault that comes into procedures by an edit, and is mended by the next, is
// told as from nothing: every case of every rule is such an edit, among
// procedures that perform what is edited and others that do not.
func TestEveryFaultThatAnEditBringsIsTold(t *testing.T) {
	t.Parallel()
	alone, all := 0, 0
	for _, name := range caseFiles(t) {
		manuals := manualsOf(t, name)
		bad, good := manuals[0], manuals[1]
		for _, rest := range manuals {
			o := generator.Options{Manual: t.TempDir(), Today: demoDay, Kept: kept.Open(t.TempDir(), nil)}
			others := withOthers(rest)
			for _, procedures := range []map[string]string{good, bad, good} {
				fill(t, o.Manual, rest, procedures, others)
				toldAsFromNothing(t, o, name, &alone)
				all++
			}
		}
	}
	t.Logf("of %d edits %d were looked at alone", all, alone)
	if alone*20 < all {
		t.Errorf("of %d edits only %d were looked at alone", all, alone)
	}
}

// toldAsFromNothing compares what is told with what is from nothing, and counts
// where no more is looked at than an edit reaches.
func toldAsFromNothing(t *testing.T, o generator.Options, name string, alone *int) {
	t.Helper()
	if generator.Reached(o) {
		*alone++
	}
	v, err := generator.Judge(o)
	must(t, err)
	fresh, err := generator.Check(o)
	must(t, err)
	if got, want := saidOf(t, &generator.Result{Verdict: *v}), saidOf(t, fresh); got != want {
		t.Errorf("%s tells\n%s\nand from nothing\n%s", filepath.Base(name), got, want)
	}
}

// The same of a fault that comes into a register, where it stands in one.
func TestEveryFaultThatAnEntryBringsIsTold(t *testing.T) {
	t.Parallel()
	alone, all := 0, 0
	for _, name := range caseFiles(t) {
		manuals := manualsOf(t, name)
		bad, good := manuals[0], manuals[1]
		spoiled := maps.Clone(good)
		for path, text := range bad {
			if strings.HasPrefix(path, "register/") {
				spoiled[path] = text
			}
		}
		if maps.Equal(spoiled, good) {
			continue
		}
		o := generator.Options{Manual: t.TempDir(), Today: demoDay, Kept: kept.Open(t.TempDir(), nil)}
		for _, rest := range []map[string]string{good, spoiled, good} {
			fill(t, o.Manual, rest, good, withOthers(good))
			toldAsFromNothing(t, o, name, &alone)
			all++
		}
	}
	t.Logf("of %d edits %d were looked at alone", all, alone)
	if alone == 0 {
		t.Errorf("of %d edits none was looked at alone", all)
	}
}

var machineOf = regexp.MustCompile(`(?m)^for: .*\n`)

// withOthers are procedures of the same machines: for each one that performs it,
// and three that have nothing to do with any.
func withOthers(manual map[string]string) map[string]string {
	out := map[string]string{}
	for path, text := range manual {
		if id := strings.TrimSuffix(filepath.Base(path), ".md"); strings.HasPrefix(path, "procedures/") && !strings.Contains(id, ".") {
			out["procedures/others/performs-"+id+".md"] = fmt.Sprintf("---\ntitle: It performs %s\n%s---\n\n## Work\n\n1. [Do it](do:%[1]s). [](time:2min)\n", id, machineOf.FindString(text))
		}
	}
	for i := range 3 {
		out[fmt.Sprintf("procedures/others/apart-%d.md", i)] = "---\ntitle: Apart\n---\n\n## Work\n\n1. Look at the yard. [](time:2min)\n"
	}
	return out
}

// fill writes a manual of some files, the procedures of others, and more.
func fill(t *testing.T, dir string, rest, procedures, others map[string]string) {
	t.Helper()
	must(t, os.RemoveAll(filepath.Join(dir, "procedures")))
	files := maps.Clone(others)
	for path, text := range rest {
		if !strings.HasPrefix(path, "procedures/") {
			files[path] = text
		}
	}
	for path, text := range procedures {
		if strings.HasPrefix(path, "procedures/") {
			files[path] = text
		}
	}
	for path, text := range files {
		name := filepath.Join(dir, filepath.FromSlash(path))
		must(t, os.MkdirAll(filepath.Dir(name), 0o755))
		must(t, os.WriteFile(name, []byte(text), 0o644))
	}
}
