package search_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"baybinder/generator/search"
)

// vocabulary is n words of two or three syllables, the first ones said far
// more often than the last.
func vocabulary(n int) []string {
	parts := []string{"pum", "ra", "ves", "lo", "tik", "bar", "mon", "sel", "dri", "fan", "gor", "hu", "jek", "kal", "nip", "que", "sto", "tur", "win", "zed"}
	var out []string
	for i := range n {
		w := parts[i%20] + parts[i/20%20] + parts[i/400%20]
		out = append(out, w)
	}
	return out
}

// A query reads the list of shards, for each word one shard (two where it is
// the end of another's slip), the list of words, and a chunk of names for each
// hit. At 10,000 procedures the dearest query of three words with a slip, ten
// hits in ten chunks, stays within 300 KB.
func TestAQueryReadsLittle(t *testing.T) {
	words, r := vocabulary(8000), rand.New(rand.NewPCG(1, 2))
	word := func() string { return words[int(float64(len(words))*r.Float64()*r.Float64()*r.Float64())] }
	text := func(n int) string {
		var b strings.Builder
		for range n {
			b.WriteString(word() + " ")
		}
		return b.String()
	}
	var docs []search.Document
	for i := range 10000 {
		docs = append(docs, search.Document{
			Name: text(4), Address: fmt.Sprintf("procedures/procedure-%d.html", i), Note: text(12),
			Texts: []search.Text{{Weight: 12, Text: text(4)}, {Weight: 5, Text: text(12)}, {Weight: 1, Text: text(120)}},
		})
	}
	files := search.Files("en", docs, nil)
	largest := map[string]int{}
	for name, data := range files {
		kind, _, _ := strings.Cut(strings.TrimSuffix(name, ".js"), "-")
		largest[kind] = max(largest[kind], len(data))
	}
	t.Logf("%d files; the largest of each kind: %v", len(files), largest)
	if most := largest["main"] + largest["words"] + 3*largest["w"] + 10*largest["d"]; most > 300<<10 {
		t.Errorf("a query may read %d KB", most>>10)
	}
}

func TestWordsAreSplitAsTheBrowserDoes(t *testing.T) {
	for text, want := range map[string]string{
		"Oil, under the TUG!": "oil under the tug", "Batería: sácala": "bateria sacala", "T-06 (M8×1.25)": "t 06 m8 1 25", "": "", "ñandú Ωm": "nandu ωm",
	} {
		if got := strings.Join(search.Words(text), " "); got != want {
			t.Errorf("%q is split into %q, want %q", text, got, want)
		}
	}
}

// The same documents give the same bytes.
func TestSameIndex(t *testing.T) {
	docs := []search.Document{
		{Name: "Replace the ropes", Address: "a.html", Texts: []search.Text{{Weight: 3, Text: "replace the ropes, replacing, replaced"}}},
		{Name: "Batteries", Address: "b.html", Texts: []search.Text{{Weight: 3, Text: "battery batteries"}}},
	}
	first := search.Files("en", docs, nil)
	for range 5 {
		for name, data := range search.Files("en", docs, nil) {
			if string(data) != string(first[name]) {
				t.Fatalf("%s differs", name)
			}
		}
	}
	if !strings.Contains(string(first["w-b.js"])+string(first["w-ba.js"]), `"batteries":"batteri","battery":"batteri"`) {
		t.Errorf("battery and batteries have no stem in common: %s", first["w-b.js"])
	}
}
