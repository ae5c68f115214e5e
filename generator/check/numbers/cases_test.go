package numbers

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
)

// The catalogue's cases hold for these rules by themselves: each place at which
// one of their codes is wanted is found, and nothing else is, in the bad manual
// and in the mended one. What the writer accepts is taken out by others.
func TestCatalogueCases(t *testing.T) {
	names, err := filepath.Glob("../cases/*.txtar")
	if err != nil || len(names) < 100 {
		t.Fatalf("%d cases: %v", len(names), err)
	}
	for _, name := range names {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(text), "accepts:") {
			continue
		}
		archive := txtar.Parse(text)
		want := strings.Split(strings.TrimSpace(casefile.Part(archive, "")["want"]), "\n")
		for which, want := range map[string][]string{"bad/": want, "good/": nil} {
			found := placesIn(archive, which)
			for _, line := range found {
				if !slices.Contains(want, line) {
					t.Errorf("%s %s: surplus: %s", filepath.Base(name), which, line)
				}
			}
			for _, line := range want {
				if ours(line) && !slices.Contains(found, line) {
					t.Errorf("%s %s: missing: %s", filepath.Base(name), which, line)
				}
			}
		}
	}
}

// ours says that a code is of these rules alone.
func ours(line string) bool {
	return slices.ContainsFunc(Rules, func(r Rule) bool {
		return r.Rule != &decode.Quantity && r.Code != NotJudged.Code && strings.HasSuffix(line, ": "+r.Code)
	})
}

// placesIn are the findings of these rules alone in one of a case's manuals.
func placesIn(archive *txtar.Archive, folder string) []string {
	files := casefile.Part(archive, folder)
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Test shop\n"
	}
	m, _ := bind.Manual(source.FromText(files))
	found := Whole(m, model.Date{Year: 2026, Month: 11, Day: 25})
	book := new(Book)
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		found = append(found, Procedure(m, book, p)...)
	}
	var out []string
	for _, f := range finding.Sort(found) {
		line, col := f.At.LineCol()
		out = append(out, fmt.Sprintf("%s:%d:%d: %s", f.At.Path(), line, col, f.Code))
	}
	return out
}
