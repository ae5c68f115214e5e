package model

import (
	"testing"
)

// What the reader writes, and what a template writes around it: worked out by
// hand from HTML's own rules.
func TestRunsOfATextWithLinks(t *testing.T) {
	b := &Block{Parts: []string{"Put <em>A &amp; B</em> on <code>X1</code>, ", " and ", ".<br />\nWait."}, Links: []*Link{{Text: "first"}, {Text: "second"}}}
	var got []string
	for r := range b.Runs() {
		switch {
		case r.Link != nil:
			got = append(got, "["+r.Link.Text+"]")
		case r.Mark:
			got = append(got, "<"+r.Name()+">")
		default:
			got = append(got, r.Words())
		}
	}
	want := []string{"Put ", "<em>", "A & B", "</em>", " on ", "<code>", "X1", "</code>", ", ", "[first]", " and ", "[second]", ".", "<br>", "\nWait."}
	if len(got) != len(want) {
		t.Fatalf("%q", got)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("%q, want %q", got[i], want[i])
		}
	}
	if got := Unmarked(`<pre tabindex="0">a &lt; b</pre>`); got != "a < b" {
		t.Errorf("%q", got)
	}
}
