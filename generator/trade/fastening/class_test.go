package fastening

import (
	"slices"
	"testing"

	"baybinder/generator/base/finding"
)

func sorted(list []float64) []float64 {
	slices.Sort(list)
	return list
}

// The meaning of the two numbers: a public page on bolt grades, whose 8.8 is
// 800 and 640 MPa. The others follow from the same rule.
func TestClassCode(t *testing.T) {
	for code, want := range map[string][2]float64{"8.8": {800, 640}, "10.9": {1000, 900}, "12.9": {1200, 1080}, "4.6": {400, 240}, "5.8": {500, 400}} {
		c, err := ParseClass(code)
		if err != nil || c.Strength != want[0] || c.Yield != want[1] {
			t.Errorf("%s: %g and %g MPa, %v; want %v", code, c.Strength, c.Yield, err, want)
		}
	}
}

func TestParseClassRefuses(t *testing.T) {
	all := "4.6, 4.8, 5.6, 5.8, 6.8, 8.8, 9.8, 10.9, 12.9"
	for text, mend := range map[string]string{
		"8,8":   "did you mean 8.8? It is one of: " + all,
		"8.9":   "did you mean 8.8? It is one of: " + all,
		"10.8":  "did you mean 10.9? It is one of: " + all,
		"A2-70": "write one of: " + all,
		"8":     "write one of: " + all,
		"":      "write one of: " + all,
	} {
		_, err := ParseClass(text)
		if err == nil {
			t.Errorf("%q is let through", text)
			continue
		}
		if said := err.(interface{ Mend() finding.Words }).Mend().String(); said != mend {
			t.Errorf("%q: the mend is %q, want %q", text, said, mend)
		}
	}
}

func TestMeansClass(t *testing.T) {
	for text, want := range map[string]bool{"8.8": true, "8,8": true, "8.9": true, "A2-70": false, "grade 5": false, "8": false, "": false, "88": true, "109": true, "10": false, "12": false, "14": false} {
		if MeansClass(text) != want {
			t.Errorf("%q sets out to be a class: %t, want %t", text, !want, want)
		}
	}
}

// The proof stress is below the yield strength in every class: a bolt that is
// loaded to its proof load must not stay stretched. (4.6: 225 of 240.)
func TestProofStressIsBelowYield(t *testing.T) {
	for _, c := range classes {
		for _, name := range []string{"M8", "M20"} {
			if p, ok := ProofOf(mustThread(t, name), c); ok && p.Stress >= c.Yield {
				t.Errorf("%s %s: proof stress %g MPa, yield %g", name, c.Code, p.Stress, c.Yield)
			}
		}
	}
}
