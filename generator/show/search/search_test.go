package search_test

import (
	"strings"
	"testing"

	"baybinder/generator/bigmanual"
	"baybinder/generator/show/search"
)

// A query reads the list of shards, for each word one shard (three more where
// it is a slip), the list of words, and a chunk of names for each hit. At
// 10,000 procedures the dearest query of three words with a slip, 30 hits in 30
// chunks, stays within the 300 KB of the design.
func TestAQueryReadsLittle(t *testing.T) {
	files := search.Collect("en", bigmanual.Documents(10000, 1), nil).Files()
	largest := map[string]int{}
	for name, data := range files {
		kind, _, _ := strings.Cut(strings.TrimSuffix(name, ".js"), "-")
		largest[kind] = max(largest[kind], len(data))
	}
	t.Logf("%d files; the largest of each kind: %v", len(files), largest)
	if most := largest["main"] + largest["words"] + 5*largest["w"] + 30*largest["d"]; most > 300<<10 {
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

// A code and an amount are one word, beside their parts.
func TestCodesAndAmountsAreOneWord(t *testing.T) {
	docs := []search.Document{{Name: "x", Address: "x.html", Texts: []search.Text{{Weight: 1, Text: "T-06, T 07. Bring it to 9 N·m, 1.5 N·m, 20 bar; 4 bolts; step-by-step; V-belt 9"}}}}
	all := ""
	for _, data := range search.Collect("en", docs, nil).Files() {
		all += string(data)
	}
	for word, want := range map[string]bool{"t06": true, "t07": false, "9nm": true, "5nm": true, "20bar": true, "4bolts": false, "belt9": false, "9": true} {
		if got := strings.Contains(all, `"`+word+`":`); got != want {
			t.Errorf("%s is in the index: %v", word, got)
		}
	}
}

// The same documents give the same bytes.
func TestSameIndex(t *testing.T) {
	docs := []search.Document{
		{Name: "Replace the ropes", Address: "a.html", Texts: []search.Text{{Weight: 3, Text: "replace the ropes, replacing, replaced"}}},
		{Name: "Batteries", Address: "b.html", Texts: []search.Text{{Weight: 3, Text: "battery batteries"}}},
	}
	first := search.Collect("en", docs, nil).Files()
	for range 5 {
		for name, data := range search.Collect("en", docs, nil).Files() {
			if string(data) != string(first[name]) {
				t.Fatalf("%s differs", name)
			}
		}
	}
	if !strings.Contains(string(first["w-b.js"])+string(first["w-ba.js"]), `"batteries":"batteri","battery":"batteri"`) {
		t.Errorf("battery and batteries have no stem in common: %s", first["w-b.js"])
	}
}
