package quantity_test

import (
	"testing"

	"baybinder/generator/base/quantity"
)

// Only what stands between two figures is a marker.
func TestMarkerWritesAmounts(t *testing.T) {
	for text, want := range map[string]string{
		"22.5 N·m":           "22,5 N·m",
		"at most 0.05 mm":    "at most 0,05 mm",
		"1.5 to 2.25 bar":    "1,5 to 2,25 bar",
		"2.0 ± 0.1 mm":       "2,0 ± 0,1 mm",
		"−0.5 bar":           "−0,5 bar",
		"0.2 · 12.5 mm/(3.)": "0,2 · 12,5 mm/(3.)",
		"pH 7.":              "pH 7.",
		"1 1/2 in":           "1 1/2 in",
		"110 N·m":            "110 N·m",
	} {
		if got := quantity.Comma.Write(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
		if got := quantity.Point.Write(text); got != text {
			t.Errorf("with a point %q became %q", text, got)
		}
	}
}
