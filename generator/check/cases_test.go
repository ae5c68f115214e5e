package check

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Every seeded fault is found at its place and nothing else is; the mended
// manual has no finding at all. The places were worked out from the texts.
func TestCases(t *testing.T) {
	for _, name := range caseNames(t) {
		t.Run(strings.TrimSuffix(name, ".txtar"), func(t *testing.T) {
			archive, err := caseNamed(name)
			if err != nil {
				t.Fatal(err)
			}
			compare(t, "bad", findIn(casefile.Part(archive, "bad/")), wanted(t, casefile.Part(archive, "")["want"]))
			compare(t, "good", findIn(casefile.Part(archive, "good/")), nil)
		})
	}
}

func caseNames(t testing.TB) []string {
	t.Helper()
	entries, err := fs.ReadDir(caseFiles, "cases")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	return names
}

// findIn runs everything over a manual, as the program does.
func findIn(files map[string]string) []finding.Finding {
	if _, has := files["shop.yaml"]; !has {
		files["shop.yaml"] = "title: Test shop\n"
	}
	m, unbound := bind.Manual(source.FromText(files))
	context := &Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}}
	found := slices.Concat(unbound, walk.All(m).Findings(m), Run(context))
	return finding.Sort(Soften(m, found))
}

// wanted reads the lines of a want file.
func wanted(t *testing.T, want string) []string {
	t.Helper()
	if !strings.Contains(want, ": ") {
		t.Fatalf("the case wants nothing: %q", want)
	}
	return strings.Split(strings.TrimSpace(want), "\n")
}

// compare matches findings and expectations one to one.
func compare(t *testing.T, which string, found []finding.Finding, want []string) {
	t.Helper()
	left := slices.Clone(want)
	for _, f := range found {
		line := place(f)
		if i := slices.Index(left, line); i >= 0 {
			left = slices.Delete(left, i, i+1)
			continue
		}
		t.Errorf("%s: surplus: %s (%s)", which, line, f.Message)
	}
	for _, line := range left {
		t.Errorf("%s: missing: %s", which, line)
	}
}

func place(f finding.Finding) string {
	line, col := f.At.LineCol()
	return fmt.Sprintf("%s:%d:%d: %s", f.At.Path(), line, col, f.Code)
}
