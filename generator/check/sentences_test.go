package check

import (
	"os"
	"slices"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
)

// Forty right sentences, in English and in Spanish, with lengths, times,
// temperatures and amounts beside tools, holds and supplies: what reads the
// words of a step has nothing to say of them. They were written from the
// format's text before the rules were.
func TestRightSentences(t *testing.T) {
	data, err := os.ReadFile("testdata/right-sentences.txtar")
	if err != nil {
		t.Fatal(err)
	}
	files := casefile.Part(txtar.Parse(data), "")
	readsWords := []string{"value-disagrees", "count-disagrees", "words-disagree", "act-in-words"}
	unread := []string{"syntax", "unknown-reference", "unknown-field", "wrong-type", "quantity", "unknown-kind", "missing-field", "heading"}
	for _, f := range findIn(files) {
		if slices.Contains(readsWords, f.Code) || slices.Contains(unread, f.Code) {
			t.Errorf("%s: %s (%s)", place(f), f.Message, f.Mend)
		}
	}
}
