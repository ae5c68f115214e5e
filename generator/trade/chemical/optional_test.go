package chemical

import (
	"strings"
	"testing"

	"baybinder/generator/language/words"
)

// The working says what the label may leave out: the gas cylinder beside the
// flame, and what a graver statement says too (as TestPrecedence has them).
func TestTheWorkingSaysWhatMayBeLeftOut(t *testing.T) {
	say := &words.Chemical{Optional: "may leave out %s", Covered: "said by another: %s"}
	for codes, want := range map[string]string{
		"H220 H280": "may leave out GHS04", "H280 H330": "may leave out GHS04", "H280": "", "H280 H302": "", "H220": "",
		"H314 H318": "said by another: H318", "H400 H410": "said by another: H400", "H318": "", "H400": "", "H319": "",
	} {
		l, err := LabelOf(strings.Fields(codes))
		if err != nil {
			t.Fatal(err)
		}
		if said := strings.TrimSpace(strings.Join(l.Explain(say).Assumes, " ")); said != want {
			t.Errorf("%s: %q, want %q", codes, said, want)
		}
	}
}

// Each statement with its word and its pictogram, or why that is not on the label:
// the words and signs of the published table, the precedence as TestPrecedence has it.
func TestTheWorkingNamesEachStatement(t *testing.T) {
	for codes, want := range map[string]string{
		"H412":           "none: H412: no pictogram",
		"H319":           "Warning: H319 Warning: GHS07, exclamation mark",
		"H318 H314 H302": "Danger: H314 Danger, H302 Warning, H318 Danger: GHS05, corrosion; GHS07, exclamation mark; GHS05, corrosion",
		"H301 H302":      "Danger: H301 Danger, H302 Warning: GHS06, skull and crossbones; GHS07 gives way to a graver pictogram",
	} {
		l, err := LabelOf(strings.Fields(codes))
		if err != nil {
			t.Fatal(err)
		}
		w := l.Explain(english)
		var signs []string
		for _, term := range w.Terms {
			signs = append(signs, term.Value)
		}
		if got := w.Result + ": " + w.Put + ": " + strings.Join(signs, "; "); got != want {
			t.Errorf("%s: %q, want %q", codes, got, want)
		}
	}
}
