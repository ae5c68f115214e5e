package rename

import (
	"testing"
	"unicode/utf8"

	"baybinder/generator/read/source"
)

// FuzzRename renames in a manual of which a machine's file, a procedure and both
// ids are hostile: it refuses, or it works out whole files. Each input is a whole
// manual that is bound twice and checked twice, some milliseconds: a thousand a
// second is out of reach.
func FuzzRename(f *testing.F) {
	texts := shop(f)
	m, p := "", ""
	for name := range texts {
		switch {
		case len(name) > 9 && name[:9] == "machines/" && (m == "" || name < m):
			m = name
		case len(name) > 11 && name[:11] == "procedures/" && (p == "" || name < p):
			p = name
		}
	}
	for _, kind := range []string{"procedure", "machine", "tool", "hazard", "hold", "part", "energy", "option", "supply", "role"} {
		f.Add(texts[m], texts[p], kind, "a", "b")
		f.Add("a: [b", "---\n---\n## W\n\n1. [](tool:a)\n", kind, "", "\x00/..")
	}
	f.Fuzz(func(t *testing.T, machine, procedure, kind, from, to string) {
		if !utf8.ValidString(machine+procedure+kind+from+to) || len(machine+procedure) > 1<<14 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		hostile := map[string]string{}
		for name, text := range texts {
			hostile[name] = text
		}
		hostile[m], hostile[p] = machine, procedure
		plan, r, err := prepare(source.FromText(hostile), Options{Kind: kind, Old: from, New: to})
		if err == nil && (plan == nil || r == nil || len(r.Files) == 0) {
			t.Errorf("%s %q to %q: nothing is done, and nothing is said", kind, from, to)
		}
	})
}
