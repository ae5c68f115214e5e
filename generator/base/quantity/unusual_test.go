package quantity_test

import (
	"testing"

	"baybinder/generator/base/quantity"
)

// Known: DERIVED, FROM MEMORY.

// The factors are published: NIST SP 811 App. B.8 has 1 inHg as 3.386389 E+03
// Pa and 1 mmHg as 1.333224 E+02 Pa (conventional, from memory); the mile is
// 5280 ft of 1959; 1 S/m is 10 mS/cm by the prefixes. GNU units judges every
// pair in oracle_test.go.
func TestFactorsOfTheBaysOtherUnits(t *testing.T) {
	for _, c := range []struct {
		amount string
		base   float64
	}{
		{"1 inHg", 3386.389}, {"760 mmHg", 101325}, {"1 mi", 1609.344}, {"250 mΩ", 0.25}, {"40 µΩ", 40e-6}, {"25 µm", 25e-6},
		{"50 mg/L", 0.05}, {"0.6 g/L", 0.6}, {"100 ppm", 1e-4}, {"10 mS/cm", 1}, {"500 µS/cm", 0.05}, {"7.2 pH", 7.2}, {"4 NTU", 4},
		{"60 dB", 60}, {"3 turns", 3}, {"2 drops", 2}, {"1.26", 1.26},
	} {
		if got := mustParse(t, c.amount).Base(); !near(got, c.base, 5e-6) {
			t.Errorf("%s is %.9g in base units, want %.9g", c.amount, got, c.base)
		}
	}
}

// Fractions of an inch are what a rule is divided into: 7/8 in is 22.225 mm.
func TestFractionsAreLengths(t *testing.T) {
	for _, c := range []struct {
		text   string
		mm     float64
		prints string
	}{
		{"7/8 in", 22.225, "7/8 in"}, {"1 1/2 in", 38.1, "1 1/2 in"}, {"1/64 in", 0.396875, "1/64 in"},
		{"7/8 in.", 22.225, "7/8 in"}, {"-1/4 in", -6.35, "−1/4 in"}, {"7/8in", 22.225, "7/8 in"},
	} {
		q, err := quantity.Parse(c.text, quantity.Length)
		if err != nil || !near(q.Base()*1000, c.mm, 1e-12) || q.String() != c.prints {
			t.Errorf("%q: %v mm, %q, %v", c.text, q.Base()*1000, q, err)
		}
	}
	for _, text := range []string{"7/8", "7/8 kg", "9/8 in", "8/8 in", "7/0 in", "1/2/3 in", "7/8 mm"} {
		if q, err := quantity.Parse(text, quantity.None); err == nil {
			t.Errorf("%q is read as %s", text, q)
		}
	}
	if got := mustParse(t, "7/8 in").In(mustUnit(t, "mm")).String(); got != "22.2 mm" {
		t.Errorf("7/8 in is shown as %s", got)
	}
}

func TestFractionsBoundLimits(t *testing.T) {
	for text, ends := range map[string][2]float64{
		"7/8 to 1 1/8 in": {0.875, 1.125}, "1/2 to 3/4 in": {0.5, 0.75}, "7/8 ± 1/64 in": {0.859375, 0.890625}, "1 1/2 to 2 turns": {1.5, 2},
		"pH 6.8 to 7.4": {6.8, 7.4}, "6.8 to 7.4 pH": {6.8, 7.4}, "1.10 to 1.30": {1.1, 1.3}, "1.26 ± 0.02": {1.24, 1.28},
	} {
		l, err := quantity.ParseLimit(text, quantity.None)
		if err != nil || !near(l.Low, ends[0], 1e-12) || !near(l.High, ends[1], 1e-12) {
			t.Errorf("%q is %v to %v, %v", text, l.Low, l.High, err)
		}
	}
}

// A forgotten unit is no ratio.
func TestPlainRatiosHaveAPoint(t *testing.T) {
	for _, text := range []string{"at most 5", "5", "2 to 3"} {
		if l, err := quantity.ParseLimit(text, quantity.None); err == nil {
			t.Errorf("%q is read as %s", text, l)
		}
	}
	if _, err := quantity.Parse("1.26", quantity.Voltage); err == nil {
		t.Error("1.26 is read as a voltage")
	}
}

func TestAboutIsNoMeasure(t *testing.T) {
	q, err := quantity.Parse("about 0.8 L", quantity.Volume)
	if err != nil || q.String() != "0.8 L" || !q.About() || q.Base() != mustParse(t, "0.8 L").Base() {
		t.Errorf("about 0.8 L is %s, %v", q, err)
	}
	for text, want := range map[string]string{
		"about 5 bar": "the bounds, such as 4 to 6 bar", "at most about 5 bar": "at most 5 bar",
		"about 1.25": "the bounds, such as 1.24 to 1.26", "about half": "the bounds, such as 4 to 6 bar or at most 6 bar",
	} {
		_, err := quantity.ParseLimit(text, quantity.None)
		said, ok := err.(*quantity.Error)
		if !ok || said.Mend().String() != "write "+want {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestOtherSpellings(t *testing.T) {
	for text, same := range map[string]string{"35 ft-lbs": "35 lbf·ft", "3 in.": "3 in", "1 turn": "1 turns", "1 drop": "1 drops", "pH 7.4": "7.4 pH"} {
		if a, b := mustParse(t, text), mustParse(t, same); a.Base() != b.Base() || a.Unit != b.Unit {
			t.Errorf("%q is %s", text, a)
		}
	}
}

func TestFractionsAndAcidityInASentence(t *testing.T) {
	for text, want := range map[string][]string{
		"Hold it with the 7/8 in spanner.":       {"7/8 in"},
		"A gap of 1 1/2 in. Then go on.":         {"1 1/2 in"},
		"Leave between 1/2 and 3/4 in free.":     {"1/2 in", "3/4 in"},
		"Bring it to pH 7.4 with acid.":          {"7.4 pH"},
		"It must be pH 6.8 to 7.4 at 25 °C.":     {"6.8 pH", "7.4 pH", "25 °C"},
		"Sheet 3/4 in the folder, mixed 1/2.":    nil,
		"A ratio of 1.26 is no amount by itself": nil,
		"Two drops; 2 drops at the seal.":        {"2 drops"},
	} {
		var got []string
		for _, f := range quantity.Find(text) {
			got = append(got, f.String())
		}
		if len(got) != len(want) {
			t.Errorf("%q: %q", text, got)
			continue
		}
		for i := range got {
			if got[i] != want[i] {
				t.Errorf("%q: %q, want %q", text, got, want)
			}
		}
	}
}
