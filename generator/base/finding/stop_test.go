package finding

import "testing"

func TestInitialsEndWithOneStop(t *testing.T) {
	for text, want := range map[string]string{
		"To be told: G.M., A.V..":     "To be told: G.M., A.V.",
		"From A.V. to G.M.. Locks 7.": "From A.V. to G.M. Locks 7.",
		"Wait ...":                    "Wait ...",
		"and so on...":                "and so on...",
		"open ../..":                  "open ../..",
		"Done.":                       "Done.",
	} {
		if got := OneStop(text); got != want {
			t.Errorf("%q: got %q, want %q", text, got, want)
		}
	}
}
