package check

import (
	"strings"
	"testing"
)

// "Text is quoted where it contains a colon and a space, a space and #, or starts
// with one of … ; in { } and [ ] also where it contains a comma or a bracket; the
// mend of such a syntax, unknown-field or wrong-type says so."
func TestMendsSpeakOfQuotes(t *testing.T) {
	for _, title := range []string{
		"Hose: the long one", "Hose #2", "#2 hose", "! Hose", "& Hose", "*Hose", "@ Hose", "% Hose", "> 5 bar", "| 5 bar", "[2] hoses", "{2} hoses",
	} {
		asked(t, map[string]string{"procedures/fit.md": "---\ntitle: " + title + "\n---\n## Work\n\n1. Fit it.\n"})
	}
	for _, name := range []string{"hose, long", "hose: long", "hose #2", "[2] hoses", "hose # 2"} {
		asked(t, map[string]string{"register/tools.yaml": "hose: { name: " + name + ", kind: other }\n"})
	}
}

// asked wants a finding, whose mend speaks of quotes.
func asked(t *testing.T, files map[string]string) {
	t.Helper()
	files["shop.yaml"] = "title: Shop\n"
	found := findIn(files)
	if len(found) == 0 {
		t.Errorf("nothing is told of %v", files)
	}
	for _, f := range found {
		if !strings.Contains(f.Mend, "quotes") {
			t.Errorf("%v: %s: the mend is %q", files, f.Message, f.Mend)
		}
	}
}
