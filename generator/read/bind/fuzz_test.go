package bind

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// FuzzManual binds a small manual of which one file of each kind is hostile:
// nothing panics, every place is inside its file, and a link is either bound
// or told of.
func FuzzManual(f *testing.F) {
	shop, tools, machine, procedure := example(f, "shop.yaml"), example(f, "register/tools.yaml"), example(f, "machines/yard-tug.yaml"), example(f, "procedures/replace-lift-pump.md")
	people := example(f, "readings/people.csv")
	f.Add(shop, tools, machine, procedure, people)
	for _, hostile := range []string{
		"", "\x00", "\ufeff", "---\r\n", "[]", "{}", "- a\n", "a: b: c", "a: &a [*a]\n", strings.Repeat("[", 10_000), strings.Repeat("> ", 10_000),
		"parts: { a: { under: [b] }, b: { under: [a] } }\n", "---\nfor: yard-tug\n---\n## W\n\n1. [](reverse:w!a,b) [](loosen:#) [](when:!!) [](if:=)\n",
		"person,name,roles,started,plans\n,,@,,\n", "a: {b: {c: {d: {e: f}}}}\n", "units: [{ serials: 9 to 1, options: [x] }]\n",
	} {
		f.Add(hostile, hostile, hostile, hostile, hostile)
		f.Add(shop, tools, hostile, procedure, people)
		f.Add(shop, tools, machine, hostile, hostile)
	}
	f.Fuzz(func(t *testing.T, shop, tools, machine, procedure, people string) {
		files := map[string]string{
			"shop.yaml": shop, "register/tools.yaml": tools, "machines/yard-tug.yaml": machine,
			"procedures/replace-lift-pump.md": procedure, "procedures/other.md": "---\ntitle: Other\n---\n## Work\n\n1. [Do it](do:replace-lift-pump).\n",
			"readings/people.csv": people, "register/hazards.yaml": tools, "register/holds.yaml": tools,
		}
		for name, text := range files {
			if !utf8.ValidString(text) || len(text) > 1<<15 {
				t.Skip() // what is not UTF-8 is not read at all
			}
			files[name] = text
		}
		m, findings := Manual(source.FromText(files))
		wellPlaced(t, findings)
		wellBound(t, m, findings)
	})
}

func wellPlaced(t *testing.T, findings []finding.Finding) {
	t.Helper()
	for _, f := range findings {
		if at := f.At; at.File == nil || at.Start < 0 || at.End < at.Start || at.End > len(at.File.Text) {
			t.Errorf("%s [%s] stands at %d to %d of %d bytes", f.Message, f.Code, at.Start, at.End, len(at.File.Text))
		}
		if f.Message == "" || f.Code == "" {
			t.Errorf("a finding without words: %+v", f)
		}
	}
}

// wellBound looks at every link of a manual: one that names something and does
// not lead to it is marked Bad, and where anything was read whole it is told.
func wellBound(t *testing.T, m *model.Manual, findings []finding.Finding) {
	t.Helper()
	if m == nil || m.Shop == nil {
		t.Fatal("there is no manual")
	}
	for _, p := range m.Procedures {
		for _, s := range p.Steps {
			for _, b := range s.Blocks {
				if len(b.Parts) != len(b.Links)+1 {
					t.Errorf("%s: %d parts and %d links", p.ID, len(b.Parts), len(b.Links))
				}
				for _, l := range b.Links {
					leadsSomewhere(t, l, findings)
				}
			}
		}
	}
}

func leadsSomewhere(t *testing.T, l *model.Link, findings []finding.Finding) {
	t.Helper()
	if l.Kind == nil {
		t.Fatalf("the link %s has no kind", l.Address)
	}
	if !l.Bad && l.Kind.Act != model.NoAct && l.Kind.Act != model.Reverse && l.To == nil {
		t.Errorf("%s leads nowhere and is not marked", l.Address)
	}
	if l.Bad && len(findings) == 0 {
		t.Errorf("%s is marked and nothing is told at all", l.Address)
	}
}

// example is a file of the examples in the format's description.
func example(t testing.TB, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "format", filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}
