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
	for codes, want := range map[string]string{"H220 H280": "may leave out GHS04", "H314 H318": "said by another: H318", "H319": ""} {
		l, err := LabelOf(strings.Fields(codes))
		if err != nil {
			t.Fatal(err)
		}
		if said := strings.TrimSpace(strings.Join(l.Explain(say).Assumes, " ")); said != want {
			t.Errorf("%s: %q, want %q", codes, said, want)
		}
	}
}
