package people

import (
	"os"
	"path/filepath"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// shop is a manual on the disk, with a file of people.
func shop(t *testing.T, people string) string {
	t.Helper()
	root := t.TempDir()
	for name, text := range map[string]string{
		"shop.yaml": "title: Shop\n", "register/roles.yaml": "fitter: { name: Fitter }\n",
		"readings/plans/start.yaml": "title: Start\n", "readings/people.csv": people,
	} {
		full := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return root
}

func bound(t *testing.T, root string) *model.Manual {
	t.Helper()
	tree, err := source.Read(root)
	if err != nil {
		t.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	return m
}

func day(t *testing.T, text string) model.Date {
	t.Helper()
	d, ok := model.ParseDate(text)
	if !ok {
		t.Fatal(text)
	}
	return d
}

func text(t *testing.T, root string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root, "readings", "people.csv"))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// What stands in the file stays byte for byte, but for the row in question: the
// mark at its beginning, its line ends, quotes, and a last line without an end.
func TestNothingElseInTheFileChanges(t *testing.T) {
	root := shop(t, "\ufeffperson,name,roles,started,plans\r\nt-01,\"First, A.\",fitter,2026-01-05,\r\n\r\nt-02,\"Sec\"\"ond\",,2026-01-06,start")
	if err := Leave(bound(t, root), root, []string{"t-02"}, day(t, "2026-03-31")); err != nil {
		t.Fatal(err)
	}
	want := "\ufeffperson,name,roles,started,plans,left\r\nt-01,\"First, A.\",fitter,2026-01-05,\r\n\r\nt-02,\"Sec\"\"ond\",,2026-01-06,start,2026-03-31"
	if got := text(t, root); got != want {
		t.Errorf("got %q\nwant %q", got, want)
	}
	if err := Back(bound(t, root), root, []string{"t-02"}, day(t, "2026-08-02")); err != nil {
		t.Fatal(err)
	}
	if err := Add(bound(t, root), root, New{ID: "t-03", Name: "Third", Roles: []string{"fitter@2026-02-01"}, Started: day(t, "2026-08-03"), Plans: []string{"start"}}); err != nil {
		t.Fatal(err)
	}
	want = want[:len(want)-len("2026-03-31")] + "2026-03-31..2026-08-02\r\nt-03,Third,fitter@2026-02-01,2026-08-03,start,\r\n"
	if got := text(t, root); got != want {
		t.Errorf("got %q\nwant %q", got, want)
	}
}

// What cannot be is refused, and then nothing is written: of several, of none.
func TestWhatCannotBeIsRefused(t *testing.T) {
	const file = "person,name,roles,started,plans,left\nt-01,First,,2026-01-05,,2026-03-31\nt-02,Second,,2026-01-05,,\n"
	root := shop(t, file)
	m := bound(t, root)
	for what, err := range map[string]error{
		"left already":     Leave(m, root, []string{"t-02", "t-01"}, day(t, "2026-04-30")),
		"has a last day":   Leave(m, root, []string{"t-01"}, day(t, "2026-02-28")),
		"not come yet":     Leave(m, root, []string{"t-02"}, day(t, "2025-12-31")),
		"nobody":           Leave(m, root, []string{"t-99"}, day(t, "2026-04-30")),
		"has not left":     Back(m, root, []string{"t-02"}, day(t, "2026-04-30")),
		"still there":      Back(m, root, []string{"t-01"}, day(t, "2026-03-31")),
		"there already":    Add(m, root, New{ID: "t-01", Started: day(t, "2026-05-01")}),
		"no id":            Add(m, root, New{ID: "T 1", Started: day(t, "2026-05-01")}),
		"no role":          Add(m, root, New{ID: "t-03", Roles: []string{"fiter"}, Started: day(t, "2026-05-01")}),
		"no day of a role": Add(m, root, New{ID: "t-03", Roles: []string{"fitter@2026-02-30"}, Started: day(t, "2026-05-01")}),
		"no plan":          Add(m, root, New{ID: "t-03", Plans: []string{"stop"}, Started: day(t, "2026-05-01")}),
	} {
		if err == nil {
			t.Errorf("%s: it was not refused", what)
		}
	}
	if got := text(t, root); got != file {
		t.Errorf("the file was changed: %q", got)
	}
}

func TestAFileOfSemicolonsIsToldWithItsMend(t *testing.T) {
	const file = "person;name;roles;started;plans\nt-01;First;;2026-01-05;\n"
	root := shop(t, file)
	if err := Add(bound(t, root), root, New{ID: "t-02", Started: day(t, "2026-05-01")}); err == nil || text(t, root) != file {
		t.Errorf("%v, and the file is %q", err, text(t, root))
	}
}
