package begin

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode"

	"golang.org/x/tools/txtar"
	"pgregory.net/rapid"

	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

const jotted = "../../read/jotting/testdata"

// shopOf copies the manual of a text's shop.
func shopOf(t *testing.T, shop string) string {
	t.Helper()
	dir := t.TempDir()
	if shop == "demo" {
		if err := os.CopyFS(dir, os.DirFS("../../../content")); err != nil {
			t.Fatal(err)
		}
		return dir
	}
	archive, err := txtar.ParseFile(filepath.Join(jotted, "shops", shop+".txt"))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range archive.Files {
		name := filepath.Join(dir, f.Name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, f.Data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// Of each of the twenty texts a draft is made that can be read: its form is
// right, every id is there and every listed tool was named.
func TestDraftsOfTwentyTexts(t *testing.T) {
	files, _ := filepath.Glob(filepath.Join(jotted, "texts", "*.txt"))
	if len(files) != 20 {
		t.Fatalf("%d texts", len(files))
	}
	shops := map[string]string{}
	for _, f := range files {
		shop, machine, notes := sheetOf(t, f)
		if shops[shop] == "" {
			shops[shop] = shopOf(t, shop)
		}
		from := filepath.Join(t.TempDir(), "notes.txt")
		if err := os.WriteFile(from, []byte(notes), 0o644); err != nil {
			t.Fatal(err)
		}
		id := "text-" + strings.TrimSuffix(filepath.Base(f), ".txt")
		n := New{Manual: shops[shop], ID: id, Machine: machine, Today: model.Date{Year: 2026, Month: 5, Day: 4}}
		if _, err := Notes(n, from); err != nil {
			t.Fatalf("%s: %v", f, err)
		}
		data, err := os.ReadFile(filepath.Join(shops[shop], "procedures", id+".md"))
		if err != nil {
			t.Fatal(err)
		}
		wantWords(t, notes, string(data))
	}
	for _, dir := range shops {
		wantReadable(t, dir)
	}
}

func sheetOf(t *testing.T, file string) (shop, machine, notes string) {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	head, body, _ := strings.Cut(string(data), "---\n")
	for h := range strings.Lines(head) {
		switch key, value, _ := strings.Cut(strings.TrimSpace(h), ": "); key {
		case "shop":
			shop = value
		case "machine":
			machine = value
		}
	}
	var b strings.Builder
	for l := range strings.Lines(body) {
		text, _, _ := strings.Cut(strings.TrimSuffix(l, "\n"), " ==> ")
		fmt.Fprintln(&b, text)
	}
	return shop, machine, b.String()
}

// wantReadable asks for no finding that says that a draft cannot be read, and
// for none of a tool that a step uses and the list lacks.
func wantReadable(t *testing.T, dir string) {
	t.Helper()
	tree, err := source.Read(dir)
	if err != nil {
		t.Fatal(err)
	}
	m, found := bind.Manual(tree)
	found = append(found, check.Run(&check.Context{Manual: m, Today: model.Date{Year: 2026, Month: 5, Day: 4}})...)
	for _, f := range found {
		if !strings.Contains(f.At.File.Path, "text-") {
			continue
		}
		switch f.Code {
		case "syntax", "heading", "no-steps", "raw-html", "unsafe-link", "unknown-reference", "unknown-kind", "signal-word-typed", "wrong-type", "unknown-field", "broken-link":
			t.Errorf("%v: %s %s", f.At, f.Code, f.Message)
		}
	}
}

// markers are the words that only number or mark a line.
var markers = map[string]bool{"step": true, "paso": true}

// wantWords asks that every word of the notes stands in the draft, as often.
func wantWords(t interface{ Errorf(string, ...any) }, notes, draft string) {
	has := map[string]int{}
	for _, w := range wordsOf(draft) {
		has[w]++
	}
	for _, w := range wordsOf(notes) {
		if has[w]--; has[w] < 0 && !markers[strings.ToLower(w)] {
			t.Errorf("the word %q of the notes is not in the draft:\n%s\n---\n%s", w, notes, draft)
			return
		}
	}
}

// wordsOf are the words of a text that have two letters at least.
func wordsOf(text string) []string {
	all := strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) })
	return slices.DeleteFunc(all, func(w string) bool { return len([]rune(w)) < 2 })
}

// Lines of any order give a draft that can be read and that has every word.
func TestAnyNotesKeepTheirWords(t *testing.T) {
	dir := shopOf(t, "mixer")
	tree, err := source.Read(dir)
	if err != nil {
		t.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	texts := map[string]string{}
	archive, _ := txtar.ParseFile(filepath.Join(jotted, "shops", "mixer.txt"))
	for _, f := range archive.Files {
		texts[f.Name] = string(f.Data)
	}
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.SampledFrom([]string{
			"MAKE SAFE", "Strip:", "# Refit", "## Strip", "1. Remove the rear cover.", "2) undo the motor bolts", "Step 3: Lift the motor out", "- take the rear cover off",
			"  - a bullet below", "(a) Loosen the **tension bolt** now", "2.1 Unplug the speed sensor plug", "WARNING: it bites", "**DANGER!**", "  CAUTION - hot", "", "",
			"| Tool | Where |", "|---|---|", "| lamp | shelf |", "Tools needed:", "lamp", "see <b>here</b> [x] and [y](z.md)", "-----", "plain words here.", "+ more", "> quoted",
			"    indented far", "`Remove the rear cover.`", "Refit in reverse order.", "*Remove the rear cover", "the **rear cover off**", "1986. was a year", "\ttabbed", "===", "``` fence",
		})
		notes := strings.Join(rapid.SliceOfN(line, 1, 12).Draw(t, "lines"), "\n")
		if strings.TrimSpace(notes) == "" {
			return
		}
		d := draftOf(New{ID: "job", Machine: "dough-mixer"}, m, notes)
		wantWords(t, notes, d.text.String())
		texts["procedures/job.md"] = d.text.String()
		bound, found := bind.Manual(source.FromText(texts))
		found = append(found, check.Run(&check.Context{Manual: bound, Today: model.Date{Year: 2026, Month: 5, Day: 4}})...)
		for _, f := range found {
			switch f.Code {
			case "syntax", "heading", "raw-html", "unknown-reference", "unknown-kind", "wrong-type", "signal-word-typed":
				t.Fatalf("%q: %s %s\n%s", notes, f.Code, f.Message, d.text.String())
			}
		}
		if got := len(links(bound.Procedures[0])); got < d.Acts {
			t.Fatalf("%q: %d links of %d acts\n%s", notes, got, d.Acts, d.text.String())
		}
	})
}

func links(p *model.Procedure) (all []*model.Link) {
	for _, s := range p.Steps {
		all = append(all, s.Links...)
	}
	return all
}

// What is no text, or is not there, is refused, and nothing is written.
func TestNotesThatAreNoText(t *testing.T) {
	dir := shopOf(t, "mixer")
	for name, c := range map[string]struct{ data, want string }{
		"empty": {" \n", "is empty"}, "bytes": {"\xff\xfe", "no plain text"}, "zero": {"a\x00b", "no plain text"},
	} {
		from := filepath.Join(t.TempDir(), name)
		if err := os.WriteFile(from, []byte(c.data), 0o644); err != nil {
			t.Fatal(err)
		}
		if _, err := Notes(New{Manual: dir, ID: "job"}, from); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "procedures")); err == nil {
		t.Error("something was written")
	}
}
