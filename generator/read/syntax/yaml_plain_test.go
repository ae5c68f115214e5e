package syntax

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/position"
)

// Known: DERIVED.

// alike reads a text both ways. What plainMap reads, the library reads to the
// same nodes at the same places, and finds nothing in.
func alike(t interface {
	Helper()
	Fatalf(string, ...any)
}, text string) (plain bool) {
	t.Helper()
	f := position.NewFile("a.yaml", text)
	node := plainMap(f, 0, len(f.Text))
	if node == nil {
		return false
	}
	want, findings := anyYAML(f, 0, len(f.Text))
	if len(findings) > 0 {
		t.Fatalf("%q is read, and the library finds: %s", text, findings[0].Message)
	}
	if !reflect.DeepEqual(node, want) {
		t.Fatalf("%q is read as %s, by the library as %s", text, shown(node), shown(want))
	}
	return true
}

// shown is a node with the places of its texts.
func shown(n *Node) string {
	if n == nil {
		return "nothing"
	}
	out := n.Kind.String() + " " + n.At.Text()
	for _, p := range n.Pairs {
		out += " (" + p.KeyAt.Text() + " → " + shown(p.Value) + ")"
	}
	for _, item := range n.Items {
		out += " (" + shown(item) + ")"
	}
	return out
}

// FuzzPlainMap tries texts of any kind.
func FuzzPlainMap(f *testing.F) {
	fuzz(f, func(t *testing.T, text string) { alike(t, text) },
		"title: Swap the pump\ntools: [socket-10, wheel-chock: 4]\nleaves: { supply: dead }\n", "a: b\na: c\n", "a: 010\nb: 1.5\nc: -1\n",
		"a: b c, d; e (f) g/h\n", "a: [b, c: d e, f]\n", "a: {b: c, d: e}\n", "a b: c\n", "1: 2\n", "ä: ñ\n", "null: x\n", "a: b \n", "a: b-\n", "a: b.\n")
}

// Texts that are nearly plain: of the pieces of front matter, in any order.
func TestPlainFrontMatterIsReadAsTheLibraryReadsIt(t *testing.T) {
	pieces := []string{
		"a", "b", "title", "tools", "x-y", "Job 1", "2", "010", "1.5", "2026-03-02", "ñu", "no", "Null", "true", "~", "0x1f", "1_0", "1e3", "e.g.", "a/b", "(c)", "Z",
		": ", ":", ", ", ",", "[", "]", "{", "}", "{ ", " }", "\n", "\n", " ", "  ", "-", "- ", ".", ";", "#", " #", "'", "\"", "%", "&", "*", "!", "|", ">", "?", "\t", "\u00a0", "°",
	}
	line := rapid.Custom(func(t *rapid.T) string {
		word := rapid.SampledFrom(pieces[:22])
		list := func(open, shut string, entry func() string) string {
			out := open + entry()
			for range rapid.IntRange(0, 3).Draw(t, "more") {
				out += ", " + entry()
			}
			return out + shut
		}
		one := func() string { return word.Draw(t, "word") }
		pair := func() string { return one() + ": " + one() }
		switch rapid.IntRange(0, 4).Draw(t, "line") {
		case 0:
			return one() + ": " + one() + " " + one() + "\n"
		case 1:
			return one() + ": " + list("[", "]", one) + "\n"
		case 2:
			return one() + ": " + list("[", "]", pair) + "\n"
		case 3:
			return one() + ": " + list("{ ", " }", pair) + "\n"
		}
		return strings.Join(rapid.SliceOfN(rapid.SampledFrom(pieces), 1, 8).Draw(t, "pieces"), "") + "\n"
	})
	plain, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		all++
		if alike(t, strings.Join(rapid.SliceOfN(line, 1, 4).Draw(t, "lines"), "")) {
			plain++
		}
	})
	if plain*10 < all {
		t.Errorf("of %d texts %d were plain: the others show nothing", all, plain)
	}
}

// The demo's own front matters are read alike, and most of them are plain.
func TestTheDemosFrontMatterIsPlain(t *testing.T) {
	names, err := filepath.Glob("../../../content/procedures/*/*.md")
	if err != nil || len(names) == 0 {
		t.Fatal("no procedure of the demo was found", err)
	}
	plain := 0
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if end := frontEnd(string(data)); alike(t, string(data[len(fence):end])) {
			plain++
		}
	}
	t.Logf("%d of %d are plain", plain, len(names))
	if plain*2 < len(names) {
		t.Errorf("of %d front matters %d are plain", len(names), plain)
	}
}
