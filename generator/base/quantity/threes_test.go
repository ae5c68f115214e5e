package quantity_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
)

// The groups of three are those of NIST SP 811, 10.5.3 (a space), and of common
// practice in English (a comma) and in Spanish and German (a point). Each amount
// is given as it is printed, behind a stroke its other reading, with the text that
// it stands for in quotes.
func TestFindInThrees(t *testing.T) {
	for _, c := range []struct {
		text string
		want []string
	}{
		{"It weighs 81 000 g.", []string{`81000 g "81 000 g"`}},
		{"81\u00A0000\u00A0g or 81\u202F000 g", []string{"81000 g \"81\u00A0000\u00A0g\"", "81000 g \"81\u202F000 g\""}},
		{"1 500 psi", []string{`1500 psi | 500 psi "1 500 psi"`}},
		{"1,500 psi", []string{`1500 psi | 1.500 psi "1,500 psi"`}},
		{"1.500 bar", []string{`1500 bar | 1.500 bar "1.500 bar"`}},
		{"1 200 000 Pa", []string{`1200000 Pa "1 200 000 Pa"`}},
		{"1,200,000 Pa and 1.200.000 Pa", []string{`1200000 Pa "1,200,000 Pa"`, `1200000 Pa "1.200.000 Pa"`}},
		{"1.500,5 bar or 1,500.5 bar or 1 500,5 bar", []string{`1500.5 bar "1.500,5 bar"`, `1500.5 bar "1,500.5 bar"`, `1500.5 bar "1 500,5 bar"`}},

		{"1500 psi, 150 psi, 1.5 bar", nil},
		{"1.500.2 bar", nil},
		{"0,500 mm and 0.500 mm", nil},
		{"12 1500 N", nil},
		{"1 5000 N", nil},
		{"up to 1,500", nil},
		{"up to 1,500. psi", nil},
		{"12345 000 g", nil}, // NIST SP 811, 10.5.3: the groups are counted from the decimal marker
		{"the 2026 500 g", nil},
		{"1 500 bolts", nil},
		{"the 1 000 that fail", nil},
		{"M8 500 g", nil},
		{"TG-1 500 g", nil},
		{"2026-11-02", nil},
		{"-1 500 N", nil},
		{"", nil},
	} {
		var got []string
		for _, f := range quantity.FindInThrees(c.text) {
			said := f.String()
			for _, o := range f.Other {
				said += " | " + o.String()
			}
			got = append(got, said+` "`+c.text[f.Start:f.End]+`"`)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("in %q: found %q, want %q", c.text, got, c.want)
		}
	}
}

// A long text is gone through once, as TestFindIsLinear asks of Find.
func TestFindInThreesReadsALongText(t *testing.T) {
	for _, piece := range []string{"1 000", "1 000 ", "1,000 g ", "999.", "1 "} {
		quantity.FindInThrees(strings.Repeat(piece, 1<<20/len(piece)))
	}
}
