package bigmanual

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"baybinder/generator/show/search"
)

// Vocabulary is n invented words of three syllables.
func Vocabulary(n int) []string {
	parts := []string{"pum", "ra", "ves", "lo", "tik", "bar", "mon", "sel", "dri", "fan", "gor", "hu", "jek", "kal", "nip", "que", "sto", "tur", "win", "zed"}
	var out []string
	for i := range n {
		out = append(out, parts[i%20]+parts[i/20%20]+parts[i/400%20])
	}
	return out
}

// Documents are n pages as the search meets them, each of 136 words from a
// vocabulary of 8,000, the first of them said far more often than the last:
// a harder index than the few words of the other big manual give.
func Documents(n int, seed uint64) []search.Document {
	words, r := Vocabulary(8000), rand.New(rand.NewPCG(seed, 2))
	text := func(n int) string {
		var b strings.Builder
		for range n {
			b.WriteString(words[int(float64(len(words))*r.Float64()*r.Float64()*r.Float64())] + " ")
		}
		return b.String()
	}
	var docs []search.Document
	for i := range n {
		docs = append(docs, search.Document{
			Name: text(4), Address: fmt.Sprintf("procedures/procedure-%d.html", i), Note: text(12),
			Texts: []search.Text{{Weight: 12, Text: text(4)}, {Weight: 5, Text: text(12)}, {Weight: 1, Text: text(120)}},
		})
	}
	return docs
}
