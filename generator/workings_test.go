package generator_test

import (
	"bytes"
	"path"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// On every procedure's page of the demo the workings stand in one section at the
// foot, each with an equals sign and its source; each is led to by a number, no
// number leads to none, and none stands among the steps. Every time before the
// start leads to its own.
func TestWorkingsStandAtTheFoot(t *testing.T) {
	t.Parallel()
	seen := 0
	for name, data := range pages(t, demoSite(t)) {
		if path.Dir(name) != "procedures" {
			continue
		}
		doc, err := html.Parse(bytes.NewReader(data))
		must(t, err)
		sections := all(doc, false, func(n *html.Node) bool { return classed(n, "workings") })
		if len(sections) > 1 {
			t.Errorf("%s: %d sections of workings", name, len(sections))
		}
		known := map[string]bool{}
		for _, w := range all(doc, false, func(n *html.Node) bool { return classed(n, "worked-out") }) {
			id := attr(w, "id")
			if known[id] = true; len(sections) != 1 || w.Parent != sections[0] || !strings.HasPrefix(id, "working-") {
				t.Errorf("%s: a working stands elsewhere than at the foot: %s", name, textOf(w))
			}
			if text := textOf(w); !strings.Contains(text, " = ") || !strings.Contains(text, ": ") {
				t.Errorf("%s: no working: %s", name, text)
			}
			seen++
		}
		led := map[string]bool{}
		for _, a := range all(doc, false, func(n *html.Node) bool { return strings.HasPrefix(attr(n, "href"), "#working-") }) {
			led[strings.TrimPrefix(attr(a, "href"), "#")] = true
		}
		for id := range known {
			if !led[id] {
				t.Errorf("%s: nothing leads to %s", name, id)
			}
		}
		for id := range led {
			if !known[id] {
				t.Errorf("%s: %s is not there", name, id)
			}
		}
		for _, before := range all(doc, false, func(n *html.Node) bool { return classed(n, "before") }) {
			for _, b := range all(before, false, func(n *html.Node) bool { return n.Data == "b" }) {
				if seconds, only := secondsIn(textOf(b)); only && seconds > 0 && b.Parent.Data != "a" {
					t.Errorf("%s: %s has no working", name, textOf(b))
				}
			}
		}
	}
	if seen < 60 {
		t.Errorf("only %d workings", seen)
	}
}
