package walk_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// shopFiles is the shop that every case adds its files to.
func shopFiles(t testing.TB) map[string]string {
	tree, err := source.Read("testdata/shop")
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for _, f := range tree.Files {
		files[f.Path] = f.Text
	}
	return files
}

// A case is a file of testdata: a manual that has the findings of its want
// section, and one that has none. The files are named for the code.
func TestCases(t *testing.T) {
	names, _ := filepath.Glob("testdata/*.txtar")
	if len(names) == 0 {
		t.Fatal("there are no cases")
	}
	for _, name := range names {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			archive, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			checkCase(t, archive)
		})
	}
}

func checkCase(t *testing.T, archive *txtar.Archive) {
	bad, good, want := shopFiles(t), shopFiles(t), ""
	for _, f := range archive.Files {
		if name, is := strings.CutPrefix(f.Name, "bad/"); is {
			bad[name] = string(f.Data)
		} else if name, is := strings.CutPrefix(f.Name, "good/"); is {
			good[name] = string(f.Data)
		} else if f.Name == "want" {
			want = string(f.Data)
		}
	}
	silent := strings.HasPrefix(filepath.Base(t.Name()), "silent-")
	if want != "" {
		compare(t, "bad", want, walked(t, bad, silent))
	}
	compare(t, "good", "", walked(t, good, silent))
}

// walked is what the walk finds in a manual. A case that is not about what
// cannot be read must be readable.
func walked(t *testing.T, files map[string]string, unreadable bool) []finding.Finding {
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 && !unreadable {
		t.Fatalf("the case cannot be read: %s: %s", found[0].At.Path(), found[0].Message)
	}
	if len(found) == 0 && unreadable {
		t.Fatal("a case of silence must have something that cannot be read")
	}
	return finding.Sort(walk.All(m).Findings(m))
}

func compare(t *testing.T, side, want string, got []finding.Finding) {
	t.Helper()
	wanted := strings.Split(strings.TrimSpace(want), "\n")
	for _, f := range got {
		place := placed(f)
		if i := slices.Index(wanted, place); i >= 0 {
			wanted = slices.Delete(wanted, i, i+1)
			t.Logf("%s: %s", place, f.Message)
			continue
		}
		t.Errorf("%s: surplus %s: %s", side, place, f.Message)
	}
	for _, w := range wanted {
		if w != "" {
			t.Errorf("%s: missing %s", side, w)
		}
	}
}

// A case that is named for no code is about right practice or about silence.
func TestEveryCaseIsNamedForACode(t *testing.T) {
	names, _ := filepath.Glob("testdata/*.txtar")
	for _, n := range names {
		base := strings.TrimSuffix(filepath.Base(n), ".txtar")
		about := strings.HasPrefix(base, "practice-") || strings.HasPrefix(base, "silent-")
		if !about && !slices.ContainsFunc(check.Catalogue(), func(r *finding.Rule) bool { return wantsCode(t, n, r.Code) }) {
			t.Errorf("%s is named for no code that it wants", base)
		}
	}
}

// wantsCode says that a case is named for a code and wants it.
func wantsCode(t *testing.T, name, code string) bool {
	if !strings.HasPrefix(filepath.Base(name), code) {
		return false
	}
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return strings.Contains(string(data), ": "+code+"\n")
}

// only is the procedure that a test is about.
func only(t testing.TB, m *model.Manual, id string) *model.Procedure {
	for _, p := range m.Procedures {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("there is no procedure %s", id)
	return nil
}

// placed is a finding as a case wants it.
func placed(f finding.Finding) string {
	line, col := f.At.LineCol()
	return fmt.Sprintf("%s:%d:%d: %s", f.At.Path(), line, col, f.Code)
}

// Who asks for an example of a code gets the case of its own name, then the shortest.
func TestCasesOfACode(t *testing.T) {
	cases := walk.CasesOf("not-marked")
	own, err := os.ReadFile("testdata/not-marked.txtar")
	if err != nil {
		t.Fatal(err)
	}
	more, err := filepath.Glob("testdata/not-marked-*.txtar")
	if err != nil || len(cases) != 1+len(more) || string(cases[0]) != string(own) {
		t.Fatalf("%d cases, and %d files beside its own; %v", len(cases), len(more), err)
	}
	if !slices.IsSortedFunc(cases[1:], func(a, b []byte) int { return len(a) - len(b) }) {
		t.Error("a longer one comes first")
	}
	if cases := walk.CasesOf("act-in-words-points"); len(cases) != 2 || walk.CasesOf("nothing") != nil {
		t.Errorf("%d cases of a name that another begins with", len(cases))
	}
}
