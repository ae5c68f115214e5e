package search

import (
	"encoding/json"
	"strings"
	"testing"
	"unicode/utf8"
)

// FuzzFiles makes the index of hostile pages: each of its files is one call that
// hands over JSON, and no text ends it early.
func FuzzFiles(f *testing.F) {
	for _, text := range []string{"pump", "</script><script>", "\u2028\u2029", "constructor __proto__", "9 N·m T-06", "Ü ﬀ İ", "\x00", strings.Repeat("ab ", 200)} {
		f.Add(text, text, "en", 3)
	}
	f.Fuzz(func(t *testing.T, name, text, language string, weight int) {
		if !utf8.ValidString(name+text+language) || len(name+text) > 1<<12 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		pages := []Document{
			{Name: name, Address: "procedures/a.html", Note: text, Texts: []Text{{Weight: 1 + weight&7, Text: text}}},
			{Name: text, Address: "procedures/b.html", Texts: []Text{{Weight: 1, Text: name + " " + text}}},
			{Name: name, Address: "procedures/b.es.html", Language: "es", Texts: []Text{{Weight: 1, Text: text}}},
		}
		for file, data := range Collect(language, pages, []Serials{{From: 1, To: weight, Name: name, Address: text}}).Files() {
			call, is := strings.CutPrefix(string(data), "'use strict';\nwindow.baybinder.shard(")
			_, value, parted := strings.Cut(call, ", ")
			value, ended := strings.CutSuffix(value, ");\n")
			if !is || !parted || !ended || !json.Valid([]byte(value)) || strings.Contains(value, "<") || strings.ContainsAny(value, "\u2028\u2029") {
				t.Errorf("%s is %q", file, data)
			}
		}
	})
}
