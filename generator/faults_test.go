package generator_test

import (
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// The demo's fault codes stand in their index under their system, each with its
// class and a way to its step: P1, C1 and U1 are a maker's own, U0 is generic
// (SAE J2012, ISO 15031-6, as a code reader's manual prints it, p. 18).
func TestFaultCodesOfTheDemo(t *testing.T) {
	t.Parallel()
	site := pages(t, demoSite(t))
	doc, err := html.Parse(strings.NewReader(string(site["codes.html"])))
	must(t, err)
	for code, want := range map[string]string{
		"P1A01": "manufacturer's own; hybrid drive", "C1010": "manufacturer's own", "U1003": "manufacturer's own", "U0100": "generic",
	} {
		rows := all(doc, false, func(n *html.Node) bool { return n.Data == "li" && strings.Contains(linesOf(n), code+"\n") })
		if len(rows) != 1 || !strings.Contains(linesOf(rows[0]), want) {
			t.Errorf("%s: %d rows, want one with %q", code, len(rows), want)
			continue
		}
		link := all(rows[0], false, func(n *html.Node) bool { return n.Data == "a" })
		if len(link) != 1 || !strings.HasPrefix(attr(link[0], "href"), "procedures/read-tug-fault-codes.html#s2-") {
			t.Errorf("%s leads nowhere", code)
		}
	}
}
