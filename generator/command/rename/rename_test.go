package rename

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"
	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

var today = model.Date{Year: 2026, Month: 5, Day: 4}

func demo(t testing.TB) *source.Tree {
	t.Helper()
	tree, err := source.Read(filepath.Join("..", "..", "..", "content"))
	needed.Judge(t, err == nil, "the demo manual")
	return tree
}

// everything is all that a manual has and that can be renamed.
func everything(m *model.Manual) []Options {
	var out []Options
	for _, kind := range Kinds {
		machines := []*model.Machine{nil}
		if ofMachine(kind) {
			machines = m.Machines
		}
		for _, machine := range machines {
			o := Options{Kind: kind, Today: today}
			if machine != nil {
				o.Machine = machine.ID
			}
			for _, id := range (target{kind: kind, machine: machine}).ids(m) {
				o.Old = id
				out = append(out, o)
			}
		}
	}
	return out
}

// there renames and says what it did as a tree.
func there(t interface {
	Fatalf(string, ...any)
}, tree *source.Tree, o Options) *source.Tree {
	p, _, err := prepare(tree, o)
	if err != nil {
		t.Fatalf("%s %s: %v", o.Kind, o.Old, err)
	}
	return p.tree(tree)
}

func textsOf(tree *source.Tree) map[string]string {
	out := map[string]string{}
	for _, f := range tree.Files {
		out[f.Path] = f.Text
	}
	return out
}

// A new id that stands nowhere in a manual goes in wherever the old one was and
// nowhere else: with the old one written in its place, every file is what it
// was, but for was:. And there and back is the same.
func TestNothingButTheIDIsTouched(t *testing.T) {
	fresh, err := source.Read(filepath.Join("..", "begin", "manual"))
	if err != nil {
		t.Fatal(err)
	}
	for _, tree := range []*source.Tree{source.FromText(shop(t)), fresh} {
		touchesNothingElse(t, tree)
	}
}

func touchesNothingElse(t *testing.T, tree *source.Tree) {
	m, _ := bind.Manual(tree)
	list := everything(m)
	before := textsOf(tree)
	rapid.Check(t, func(rt *rapid.T) {
		o := rapid.SampledFrom(list).Draw(rt, "thing")
		onlyTheID(rt, tree, before, o)
	})
}

// The same in the demo manual, of one thing in sixty; of every one, which takes
// minutes, where it is asked for.
func TestNothingButTheIDIsTouchedInTheDemo(t *testing.T) {
	every := 60
	if os.Getenv("BAYBINDER_LONG") != "" {
		every = 1
	}
	tree := demo(t)
	m, _ := bind.Manual(tree)
	before := textsOf(tree)
	for i, o := range everything(m) {
		if i%every == every/2 {
			onlyTheID(t, tree, before, o)
		}
	}
}

const fresh = "a-fresh-name-7"

func onlyTheID(t interface {
	Fatalf(string, ...any)
}, tree *source.Tree, before map[string]string, o Options) {
	o.New = fresh
	after := there(t, tree, o)
	changed := 0
	for name, text := range textsOf(after) {
		was := strings.Replace(name, fresh, o.Old, 1)
		if o.Kind == "procedure" {
			text = strings.Replace(strings.Replace(text, "was: ["+o.Old+"]\n", "", 1), ", "+o.Old+"]\nstatus: draft", "]\nstatus: draft", 1)
		}
		text = withoutWas(o, o.Old, text)
		if strings.Contains(text, fresh) || was != name {
			changed++
		}
		if strings.ReplaceAll(text, fresh, o.Old) != before[was] {
			t.Fatalf("%s %s: %s is not what it was:\n%s", o.Kind, o.Old, name, text)
		}
	}
	if changed == 0 || len(after.Files) != len(before) || len(after.Paths) != len(tree.Paths) {
		t.Fatalf("%s %s: %d files changed, %d of %d are there", o.Kind, o.Old, changed, len(after.Files), len(before))
	}
	back := o
	back.Old, back.New = fresh, o.Old
	for name, text := range textsOf(there(t, after, back)) {
		text = withoutWas(o, o.Old+", "+fresh, text)
		if text = strings.Replace(strings.Replace(text, "was: ["+o.Old+", "+fresh+"]\n", "", 1), ", "+o.Old+", "+fresh+"]\n", "]\n", 1); text != before[name] {
			t.Fatalf("%s %s: there and back %s is not what it was:\n%s", o.Kind, o.Old, name, text)
		}
	}
}

// withoutWas takes out what the rename of a role writes into its entry: the ids
// that it had.
func withoutWas(o Options, ids, text string) string {
	if o.Kind != "role" {
		return text
	}
	line := "was: [" + ids + "]"
	return strings.Replace(strings.Replace(text, line+", ", "", 1), "  "+line+"\n", "", 1)
}

// shop is a small manual that names things in every way that there is.
func shop(t testing.TB) map[string]string {
	t.Helper()
	archive, err := txtar.ParseFile(filepath.Join("testdata", "shop.txtar"))
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for _, f := range archive.Files {
		texts[f.Name] = string(f.Data)
	}
	return texts
}

// lines are the lines that differ, as "path:line: text" of what is there now.
func lines(before, after map[string]string, newPath func(string) string) []string {
	var out []string
	for name, text := range before {
		now, has := after[newPath(name)]
		if !has {
			out = append(out, name+" is gone")
			continue
		}
		old := strings.Split(text, "\n")
		for i, line := range strings.Split(now, "\n") {
			if i >= len(old) || old[i] != line {
				out = append(out, fmt.Sprintf("%s:%d: %s", newPath(name), i+1, strings.TrimSpace(line)))
			}
		}
	}
	slices.Sort(out)
	return out
}

// Each kind of thing, named in every way that the format has: the lines were
// written down by hand.
func TestEveryWayOfNaming(t *testing.T) {
	archive, err := txtar.ParseFile(filepath.Join("testdata", "ways.txtar"))
	if err != nil {
		t.Fatal(err)
	}
	before := shop(t)
	for _, c := range archive.Files {
		t.Run(c.Name, func(t *testing.T) {
			words := append(strings.Fields(c.Name), "")
			o := Options{Kind: words[0], Old: words[1], New: words[2], Machine: words[3], Today: today}
			tree := source.FromText(before)
			p, r, err := prepare(tree, o)
			if err != nil {
				t.Fatal(err)
			}
			after := p.tree(tree)
			got := lines(before, textsOf(after), func(name string) string { return p.c.newPath(name, o.New) })
			want := strings.Split(strings.TrimSpace(string(c.Data)), "\n")
			slices.Sort(want)
			if !slices.Equal(got, want) {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
			}
			if r.Places == 0 && len(p.c.files) == 0 {
				t.Error("it says that it did nothing")
			}
		})
	}
}

// What is refused, and what is said.
func TestRefusals(t *testing.T) {
	for _, c := range []struct{ words, at, text, want string }{
		{"tool broom Wide_Broom", "", "", `the id "Wide_Broom" is not a to z`},
		{"tool broom mop", "", "", "there is a tool mop already"},
		{"tool brom besom", "", "", "there is no tool brom: did you mean broom?"},
		{"tool xyzzy besom", "", "", "there is no tool xyzzy"},
		{"wheel a b", "", "", "there is no kind wheel: the kinds are procedure, machine"},
		{"part lid battery tug", "", "", "the Yard tug has battery already"},
		{"part lid cover tugg", "", "", "there is no machine tugg: did you mean tug?"},
		{"part ldi cover tug", "", "", "no machine has the part ldi: did you mean lid?"},
		{"energy battery cells", "", "", "several machines have the energy battery: write --machine cart or --machine tug"},
		{"tool broom besom tug", "", "", "a tool belongs to no machine"},
		{"procedure sweep old-wipe", "", "", "old-wipe was the id of wipe once"},
		{"procedure sweep con", "", "", "Windows keeps for itself"},
		{"tool broom besom", "procedures/x.md", "---\ntitle: [x\n---\n", "procedures/x.md:2: "},
		{"tool broom besom", "register/roles.yaml", "sweeper: { name: Sweeper, tool: broom }\n", "register/roles.yaml:1: sweeper has no field tool: mend this first"},
		{"tool broom besom", "procedures/x.md", "---\ntitle: x\nstatus: draft\n---\n## Work\n\n1. Take [it](tool:besom).\n", "procedures/x.md:7 names besom already"},
		{"tool broom besom", "procedures/x.md", "---\ntitle: x\nstatus: draft\n---\n## Work\n\n1. Take [it](&#116;ool:broom).\n", "procedures/x.md:7: broom is named here in a way"},
		{"energy battery cells cart", "procedures/x.md", "---\ntitle: x\nfor: tug\nstatus: draft\nhazards: [cart-shock]\n---\n## Work\n\n1. Look.\n", "cart-shock is about battery, and is used on the Yard tug as well"},
	} {
		texts := shop(t)
		if c.at != "" {
			texts[c.at] = c.text
		}
		words := append(strings.Fields(c.words), "")
		_, _, err := prepare(source.FromText(texts), Options{Kind: words[0], Old: words[1], New: words[2], Machine: words[3], Today: today})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s %s: %v, want %s", c.words, c.at, err, c.want)
		}
	}
}

// The shop that the tests rename in has no finding that hides a reference.
func TestTheShopIsReadable(t *testing.T) {
	m, found := bind.Manual(source.FromText(shop(t)))
	for _, f := range finding.Sort(found) {
		t.Errorf("%s: %s [%s]", where(f.At), f.Message, f.Code)
	}
	if len(m.Translated) != 1 || len(m.Words) == 0 {
		t.Error("something of the shop is not read")
	}
}

// On the disk: byte-order mark and line ends stay, a file gets its new name,
// and what is only shown is not written.
func TestRun(t *testing.T) {
	folder := t.TempDir()
	texts := shop(t)
	texts["register/tools.yaml"] = "\ufeff" + strings.ReplaceAll(texts["register/tools.yaml"], "\n", "\r\n")
	for name, text := range texts {
		full := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	run := func(kind, old, new string, show bool) *Result {
		t.Helper()
		r, err := Run(Options{Manual: folder, Kind: kind, Old: old, New: new, Today: today, Show: show})
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	run("tool", "broom", "besom", true)
	if got := onDisk(t, folder, "register/tools.yaml"); got != texts["register/tools.yaml"] {
		t.Errorf("shown, and written: %q", got)
	}
	run("tool", "broom", "besom", false)
	if got, want := onDisk(t, folder, "register/tools.yaml"), strings.ReplaceAll(strings.ReplaceAll(texts["register/tools.yaml"], "[broom]", "[besom]"), "\nbroom:", "\nbesom:"); got != want {
		t.Errorf("%q\nwant\n%q", got, want)
	}
	r := run("procedure", "sweep", "clean-up", false)
	if _, err := os.Stat(filepath.Join(folder, "procedures", "yard", "sweep.md")); err == nil {
		t.Error("the old file is still there")
	}
	if got := onDisk(t, folder, "procedures/yard/clean-up.md"); !strings.Contains(got, "\nwas: [sweep]\n") || len(r.Files) < 4 {
		t.Errorf("%v\n%s", r.Files, got)
	}
	for _, name := range []string{"readings/record.csv", "revisions.csv"} {
		if onDisk(t, folder, name) != texts[name] {
			t.Errorf("%s was changed", name)
		}
	}
}

func onDisk(t *testing.T, folder, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}
