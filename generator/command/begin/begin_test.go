package begin

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/command/schema"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// A year after the day a template was written, it must be as clean as then.
var days = []model.Date{{Year: 2020, Month: 1, Day: 1}, {Year: 2040, Month: 12, Day: 31}}

// wantClean asks that a manual has no finding at all, and returns it.
func wantClean(t interface{ Fatalf(string, ...any) }, folder string) *model.Manual {
	tree, err := source.Read(folder)
	if err != nil {
		t.Fatalf("%v", err)
	}
	m, found := bind.Manual(tree)
	for _, today := range days {
		found = append(found, check.Run(&check.Context{Manual: m, Today: today})...)
	}
	for _, f := range finding.Sort(found) {
		line, col := f.At.LineCol()
		t.Fatalf("%s:%d:%d: %s [%s]\n%s", f.At.Path(), line, col, f.Message, f.Code, f.At.File.Text)
	}
	return m
}

func TestANewManualIsClean(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "a", "manual")
	files, err := Manual(folder)
	if err != nil {
		t.Fatal(err)
	}
	m := wantClean(t, folder)
	if len(m.Tools)*len(m.Hazards)*len(m.Holds)*len(m.Supplies)*len(m.Roles)*len(m.Machines)*len(m.Procedures) == 0 {
		t.Error("something of the manual is empty")
	}
	if !slices.Contains(files, ".gitattributes") || !slices.IsSorted(files) {
		t.Errorf("it says that it wrote %v", files)
	}
	for _, name := range files {
		text, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
		if err != nil {
			t.Errorf("it says that it wrote %s: %v", name, err)
		}
		if described, is := schema.Of(name); is {
			_, leads, _ := strings.Cut(strings.SplitN(string(text), "\n", 2)[0], "# yaml-language-server: $schema=")
			if to := path.Join(path.Dir(name), leads); to != described.Path() || !slices.Contains(files, to) {
				t.Errorf("the first line of %s leads an editor to %q", name, to)
			}
		}
		headAlone := strings.HasSuffix(name, ".csv") && strings.Count(string(text), "\n") == 1 // a table without a row has no values
		if !strings.HasPrefix(name, ".") && !headAlone && !strings.Contains(strings.ToLower(string(text)), "invented") {
			t.Errorf("%s does not say that its values are invented", name)
		}
	}
}

// What stands in the new manual is used by it: an entry that nothing uses
// would teach nothing.
func TestEveryEntryOfANewManualIsUsed(t *testing.T) {
	folder := t.TempDir()
	if _, err := Manual(folder); err != nil {
		t.Fatal(err)
	}
	m := wantClean(t, folder)
	var all strings.Builder
	for name := range m.Files {
		text, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		all.Write(text)
	}
	var ids []string
	for _, e := range m.Tools {
		ids = append(ids, e.ID)
	}
	for _, e := range m.Hazards {
		ids = append(ids, e.ID)
	}
	for _, e := range m.Holds {
		ids = append(ids, e.ID)
	}
	for _, e := range m.Supplies {
		ids = append(ids, e.ID)
	}
	for _, e := range m.Roles {
		ids = append(ids, e.ID)
	}
	for _, id := range ids {
		if strings.Count(all.String(), id) < 2 {
			t.Errorf("nothing uses %s", id)
		}
	}
}

// Whatever the manual holds and the title says, a new procedure is clean and
// says what it was given.
func TestANewProcedureIsCleanInAnyManual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		folder, err := os.MkdirTemp("", "begin")
		if err != nil {
			t.Fatal(err)
		}
		defer os.RemoveAll(folder)
		n := drawManual(t, folder)
		name, err := Procedure(n)
		if err != nil {
			t.Fatal(err)
		}
		m := wantClean(t, folder)
		p := m.Procedures[0]
		if p.File.Path != name || p.ID != n.ID || p.For.ID != n.Machine || !p.Draft() {
			t.Errorf("wrote %s for %q: %s", name, p.For.ID, p.File.Text)
		}
		if want := strings.Join(strings.Fields(n.Title), " "); want != "" && p.Title != want {
			t.Errorf("the title is %q, want %q", p.Title, want)
		}
	})
}

// drawManual writes a manual whose registers hold this and that, and says what
// to begin in it.
func drawManual(t *rapid.T, folder string) New {
	files := map[string]string{"shop.yaml": "title: Shop\nlanguage: " + rapid.SampledFrom([]string{"en", "es", "de"}).Draw(t, "language") + "\n"}
	maybe := func(name, text string) bool {
		is := rapid.Bool().Draw(t, name)
		if is {
			files[name] += text
		}
		return is
	}
	files["register/tools.yaml"] = "gloves: { name: gloves, kind: ppe }\n"
	files["register/roles.yaml"] = "lifter: { name: Lifter }\n"
	maybe("register/tools.yaml", "hoist: { name: hoist, kind: lifting, needs: [lifter] }\n")
	maybe("register/tools.yaml", "tester: { name: \"tester [a] *b* `c`\", kind: tester }\n")
	maybe("register/hazards.yaml", "noise: { name: \"noise_x_ | <b>\", nature: It is loud., harm: minor-injury, consequence: It deafens., avoid: [Stand back.] }\n")
	maybe("register/hazards.yaml", "sparks: { name: sparks, nature: They fly., harm: minor-injury, consequence: They burn., avoid: [Stand back.], wear: [gloves] }\n")
	n := New{Manual: folder, ID: "new-one", Topic: rapid.SampledFrom([]string{"", "press", "press/drive/"}).Draw(t, "topic")}
	n.Title = rapid.OneOf(rapid.Just(""), rapid.StringMatching(`[ -~äñ½“🔧]{1,30}`)).Draw(t, "title")
	if maybe("machines/press.yaml", "name: Press\n") {
		n.Machine = "press"
	}
	for name, text := range files {
		full := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return n
}

func TestTitleOfAnID(t *testing.T) {
	if got := (New{ID: "renew-ram-seal"}).title(); got != "Renew ram seal" {
		t.Errorf("got %q", got)
	}
}

// What was written before a failure is taken away again; what was there before
// stays.
func TestAFailureLeavesNothing(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "mine"), []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	w := &writer{root: folder}
	if err := w.write("new/one.md", "text"); err != nil {
		t.Fatal(err)
	}
	if err := w.write("mine/two.md", "text"); err == nil {
		t.Fatal("a file was taken for a folder")
	}
	if err := w.write("mine", "other"); err == nil {
		t.Fatal("a file was written over")
	}
	w.undo()
	var left []string
	_ = filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		rel, _ := filepath.Rel(folder, name)
		left = append(left, rel)
		return err
	})
	if !slices.Equal(left, []string{".", "mine"}) {
		t.Errorf("left %v", left)
	}
	if text, _ := os.ReadFile(filepath.Join(folder, "mine")); string(text) != "mine" {
		t.Errorf("mine is %q", text)
	}
}

// Where a file of the manual cannot be read nothing is begun: the draft would
// leave out what stands in it. (A link that leads nowhere stands for a file that
// the disk does not give, since nothing is kept from root.)
func TestWhatCannotBeReadBeginsNothing(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "content")
	if _, err := Manual(folder); err != nil {
		t.Fatal(err)
	}
	tools := filepath.Join(folder, "register", "tools.yaml")
	if err := os.Remove(tools); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(filepath.Join(folder, "nowhere"), tools); err != nil {
		t.Fatal(err)
	}
	if _, err := Procedure(New{Manual: folder, ID: "wash-bay"}); err == nil || !strings.Contains(err.Error(), "register/tools.yaml") {
		t.Errorf("a procedure: %v", err)
	}
	if _, err := Machine(folder, "other-press", ""); err == nil || !strings.Contains(err.Error(), "register/tools.yaml") {
		t.Errorf("a machine: %v", err)
	}
}
