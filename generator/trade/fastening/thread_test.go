package fastening

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/trade/internal/oracle"
)

// Known: SEEN, FROM MEMORY.

// near reports whether got is want to a relative tolerance.
func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance*math.Abs(want) }

// within reports whether got is want to a tolerance in its own unit.
func within(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

func mustThread(t testing.TB, text string) Thread {
	t.Helper()
	thread, err := ParseThread(text)
	if err != nil {
		t.Fatal(err)
	}
	return thread
}

func TestParseThread(t *testing.T) {
	for text, want := range map[string]Thread{
		"M8": {8, 1.25}, "M8x1.25": {8, 1.25}, "M8×1.25": {8, 1.25}, "M8 x 1": {8, 1}, "M8X1": {8, 1}, " M12 ": {12, 1.75},
		"M22x1.5": {22, 1.5}, "M8x1-6g": {8, 1}, "M10-6H": {10, 1.5}, "M9x1.25": {9, 1.25}, "M1.6": {1.6, 0.35},
	} {
		if got, err := ParseThread(text); err != nil || got != want {
			t.Errorf("%s is %v, %v; want %v", text, got, err, want)
		}
	}
}

// The coarse pitches of ISO 261 once more, from memory.
func TestCoarsePitches(t *testing.T) {
	sizes := 0
	for _, row := range []struct {
		pitch float64
		sizes []float64
	}{
		{0.35, []float64{1.6}}, {0.4, []float64{2}}, {0.45, []float64{2.5}}, {0.5, []float64{3}}, {0.6, []float64{3.5}}, {0.7, []float64{4}}, {0.8, []float64{5}},
		{1, []float64{6, 7}}, {1.25, []float64{8}}, {1.5, []float64{10}}, {1.75, []float64{12}}, {2, []float64{14, 16}}, {2.5, []float64{18, 20, 22}},
		{3, []float64{24, 27}}, {3.5, []float64{30, 33}}, {4, []float64{36, 39}}, {4.5, []float64{42, 45}}, {5, []float64{48, 52}}, {5.5, []float64{56, 60}}, {6, []float64{64}},
	} {
		for _, size := range row.sizes {
			sizes++
			if pitch, ok := CoarsePitch(size); !ok || pitch != row.pitch {
				t.Errorf("M%g has %g mm, not %g", size, pitch, row.pitch)
			}
		}
	}
	if sizes != len(coarse) {
		t.Errorf("%d sizes are asked, %d in the table", sizes, len(coarse))
	}
}

func TestParseThreadRefuses(t *testing.T) {
	for text, mend := range map[string]string{
		"M8x25":    "write M8x1.25, or a finer pitch; a length does not belong here",
		"M8x1.5":   "write M8x1.25, or a finer pitch; a length does not belong here",
		"M8x0":     "write M8x1.25, or a finer pitch; a length does not belong here",
		"M9x30":    "write the pitch behind the x, and no length, as in M9x1.25",
		"M9":       "write the pitch too, as in M9x1.25",
		"M8x1,25":  "write it as M8 or M8x1.25, with a decimal point",
		"m8":       "write it as M8 or M8x1.25, with a decimal point",
		"3/8-16":   "write it as M8 or M8x1.25, with a decimal point",
		"M8x1x40":  "write it as M8 or M8x1.25, with a decimal point",
		"":         "write it as M8 or M8x1.25, with a decimal point",
		"M0":       "write the pitch too, as in M9x1.25",
		"G1/4":     "write it as M8 or M8x1.25, with a decimal point",
		"M8 x 1 L": "write it as M8 or M8x1.25, with a decimal point",
	} {
		got, err := ParseThread(text)
		if err == nil {
			t.Errorf("%s is let through as %v", text, got)
			continue
		}
		if said := err.(interface{ Mend() finding.Words }).Mend().String(); said != mend {
			t.Errorf("%s: the mend is %q, want %q", text, said, mend)
		}
	}
}

// A slip in a metric thread is told from a thread of another kind, of which
// nothing can be said.
func TestMeansMetric(t *testing.T) {
	for text, want := range map[string]bool{"M8": true, "M 8x25": true, "m8": true, "M8,5": true, "3/8-16 UNC": false, "G1/4": false, "Morse": false, "M": false, "": false} {
		if MeansMetric(text) != want {
			t.Errorf("%q sets out to be metric: %t, want %t", text, !want, want)
		}
	}
}

// printedAreas are the nominal stress areas of coarse threads, mm², as "ISO
// Metric Pitch Thread Proof Loads" ("According to EN ISO 898-1") and "Tensile
// Strength" print them, both alike. They round to three figures: 0.4 %.
var printedAreas = map[string]float64{
	"M5": 14.2, "M6": 20.1, "M8": 36.6, "M10": 58.0, "M12": 84.3, "M14": 115, "M16": 157, "M18": 192, "M20": 245, "M22": 303, "M24": 353,
}

func TestStressAreaIsThePrintedOne(t *testing.T) {
	for name, want := range printedAreas {
		if got := mustThread(t, name).StressArea(); !near(got, want, 0.004) {
			t.Errorf("%s: %.2f mm², the chart prints %g", name, got, want)
		}
	}
}

// The area at the nominal diameter is the common slip; the tolerance must see it.
func TestStressAreaIsNotTheNominalSection(t *testing.T) {
	for name, printed := range printedAreas {
		d := mustThread(t, name).Diameter
		if near(math.Pi/4*d*d, printed, 0.004) {
			t.Errorf("%s: the section at the nominal diameter passes for the stress area", name)
		}
	}
}

func TestStressAreaByGNUUnits(t *testing.T) {
	for _, c := range []struct{ thread, expression string }{
		{"M8x1.25", "(pi/4) * (8 mm - 0.9382*1.25 mm)^2"}, {"M22x1.5", "(pi/4) * (22 mm - 0.9382*1.5 mm)^2"},
	} {
		if got, want := mustThread(t, c.thread).StressArea(), oracle.Units(t, c.expression, "mm^2"); !near(got, want, 1e-12) {
			t.Errorf("%s: %.12g mm², GNU units says %.12g", c.thread, got, want)
		}
	}
}

func drawThread(t *rapid.T) Thread {
	var sizes []float64
	for d := range coarse {
		sizes = append(sizes, d)
	}
	d := rapid.SampledFrom(sorted(sizes)).Draw(t, "diameter")
	return Thread{d, coarse[d] * rapid.SampledFrom([]float64{1, 0.8, 0.5}).Draw(t, "part of the coarse pitch")}
}

func TestThreadIsReadAsItIsPrinted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := drawThread(t)
		if got, err := ParseThread(want.String()); err != nil || got != want {
			t.Fatalf("%s is read as %v, %v", want, got, err)
		}
	})
}

// A finer pitch leaves more of the section; no section is as large as that of
// the nominal diameter.
func TestStressAreaGrowsWithFinerPitch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		thread := drawThread(t)
		finer := Thread{thread.Diameter, thread.Pitch * 0.9}
		if thread.StressArea() >= finer.StressArea() || finer.StressArea() >= math.Pi/4*finer.Diameter*finer.Diameter {
			t.Fatalf("%s has %g mm², %s %g", thread, thread.StressArea(), finer, finer.StressArea())
		}
	})
}
