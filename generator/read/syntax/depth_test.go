package syntax

import (
	"strings"
	"testing"

	"baybinder/generator/base/position"
)

// What nests without end is told before the library sees it, whose time grows
// with the square of what stands open; as much as a text may hold is read.
func TestBracketsThatNestAreTold(t *testing.T) {
	const head = "---\ntitle: A\n---\n## Work\n\n1. "
	for name, c := range map[string]struct {
		text string
		at   int // where it is told, in the text; -1 for nowhere
	}{
		"open":            {strings.Repeat("[", 400_000), maxOpen},
		"nested":          {strings.Repeat("[", 200_000) + strings.Repeat("]", 200_000), maxOpen},
		"pictures":        {strings.Repeat("![", 100_000), 2*maxOpen + 1},
		"addresses":       {strings.Repeat("[a](", 100_000), 4 * maxOpen},
		"over lines":      {strings.Repeat("[a\n   ", 1_000), 6 * maxOpen},
		"as many as may":  {strings.Repeat("[", maxOpen) + "x" + strings.Repeat("]", maxOpen), -1},
		"closed":          {strings.Repeat("[a](b) ", 10_000), -1},
		"escaped":         {strings.Repeat(`\[`, 10_000), -1},
		"in paragraphs":   {strings.Repeat("(a\n\n   ", 1_000), -1},
		"counted with 1)": {strings.Repeat("a) b ", 1_000), -1},
	} {
		_, found := Read(position.NewFile("procedures/a.md", head+c.text+"\n"))
		at := -1
		for _, f := range found {
			if f.Code == "syntax" && strings.Contains(f.Message, "stand open") {
				at = f.At.Start - len(head)
			}
		}
		if at != c.at {
			t.Errorf("%s: told at %d, want %d", name, at, c.at)
		}
	}
}

// A map that grows without end is told at the first entry too many, at any depth;
// many maps with few entries each are not.
func TestEntriesWithoutEndAreTold(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		line int // where it is told, from 1; 0 for nowhere
	}{
		"options":         {"options:\n" + strings.Repeat("  a: b\n", maxEntries+1), maxEntries + 2},
		"at the top":      {strings.Repeat("a: b\n# of no account\n\n", maxEntries+1), 3*maxEntries + 1},
		"as many as may":  {"options:\n" + strings.Repeat("  a: b\n", maxEntries), 0},
		"many small ones": {strings.Repeat("a:\n  b: c\n  d: e\n", maxEntries), 0},
		"after a deeper":  {"a:\n" + strings.Repeat("  b:\n    c: d\n", maxEntries+1), 2*maxEntries + 2},
	} {
		at, many := tooMany(c.text)
		if line := 1 + strings.Count(c.text[:at], "\n"); many != (c.line > 0) || many && line != c.line {
			t.Errorf("%s: told %t at line %d, want line %d", name, many, line, c.line)
		}
	}
	text := "options:\n" + strings.Repeat("  a: b\n", maxEntries+1)
	if _, found := YAML(position.NewFile("machines/a.yaml", text), 0, len(text)); len(found) != 1 || found[0].Code != "syntax" {
		t.Errorf("told %v", found)
	}
}
