package electrical

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/trade/internal/oracle"
	"baybinder/generator/trade/working"
)

// Known: SEEN.

func within(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// Three worked exercises: 0.63 mF and 2.4 kΩ from 120 V to 15 V in 3.14 s (a
// physics forum, UK exam question); 100 V to 1.00 V in 8.0 s, so that RC is
// 1.737 s (an exercise collection).
func TestDischargeTimeOfExercises(t *testing.T) {
	if got := DischargeTime(2400, 0.63e-3, 120, 15); !within(got, 3.14, 0.005) {
		t.Errorf("%.4f s, printed 3.14 s", got)
	}
	if got := 8.0 / DischargeTime(1, 1, 100, 1); !within(got, 1.737, 0.001) {
		t.Errorf("RC is %.4f s, printed 1.737 s", got)
	}
}

// The same exercise: 0.0178 V are left after 15.0 s. And 0.8 MΩ with 5 µF at
// 12 V: 4.41 V after RC = 4 s (an answers archive).
func TestVoltageAfterOfExercises(t *testing.T) {
	if got := VoltageAfter(1, 1.73718, 100, 15); !within(got, 0.0178, 0.0001) {
		t.Errorf("%.5f V, printed 0.0178 V", got)
	}
	if got := VoltageAfter(0.8e6, 5e-6, 12, 4); !within(got, 4.41, 0.005) {
		t.Errorf("%.4f V, printed 4.41 V", got)
	}
}

// The tolerances must see the common slip, a logarithm to the base of ten.
func TestExercisesSeeTheWrongLogarithm(t *testing.T) {
	if within(2400*0.63e-3*math.Log10(120.0/15), 3.14, 0.005) {
		t.Error("the decadic logarithm passes")
	}
}

func TestDischargeByGNUUnits(t *testing.T) {
	for _, c := range []struct {
		got              float64
		expression, unit string
	}{
		{DischargeTime(100e3, 1000e-6, 360, 60), "100 kohm * 1000 microF * ln(360|60)", "s"},
		{StoredEnergy(12e-3, 80), "12 mF * (80 V)^2 / 2", "J"},
		{DischargeTime(10e3, 470e-6, Peak(230), 60), "10 kohm * 470 microF * ln(230 * sqrt(2) / 60)", "s"},
	} {
		if want := oracle.Units(t, c.expression, c.unit); !within(c.got, want, 1e-12*want) {
			t.Errorf("%s: %.13g, GNU units says %.13g %s", c.expression, c.got, want, c.unit)
		}
	}
}

func TestWithTolerance(t *testing.T) {
	if got := WithTolerance(100, 0.05, 0.20); !within(got, 126, 1e-9) {
		t.Errorf("5 %% and 20 %% make %g of 100 s", got)
	}
}

// Time and voltage are inverses; more of R, C or voltage waits longer, a higher
// aim less, and what is below the aim already waits for nothing.
func TestDischargeTurnsRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(1, 1e6).Draw(t, "R")
		c := rapid.Float64Range(1e-7, 1).Draw(t, "C")
		from := rapid.Float64Range(61, 1500).Draw(t, "V")
		time := DischargeTime(r, c, from, 60)
		if left := VoltageAfter(r, c, from, time); !within(left, 60, 1e-6) {
			t.Fatalf("%g V are left", left)
		}
		if DischargeTime(r*1.1, c, from, 60) <= time || DischargeTime(r, c*1.1, from, 60) <= time ||
			DischargeTime(r, c, from*1.1, 60) <= time || DischargeTime(r, c, from, 60.5) >= time {
			t.Fatal("the time does not follow R, C and the voltages")
		}
		if DischargeTime(r, c, 60, from) != 0 || DischargeTime(r, c, 60, 60) != 0 {
			t.Fatal("what is safe already is waited for")
		}
	})
}

func amount(t testing.TB, text string) quantity.Quantity {
	t.Helper()
	q, err := quantity.Parse(text, quantity.None)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func store(t testing.TB, voltage, capacitance, resistance string) Store {
	return Store{amount(t, voltage), amount(t, capacitance), amount(t, resistance)}
}

// 100 kΩ · 1000 µF · ln 6 = 179.2 s: derived, and what the format's own machine
// needs.
func explained(w Wait) working.Working { return w.Explain(&language.Default().Worked.Discharge) }

func TestWaitForWithItsWorking(t *testing.T) {
	w, ok := store(t, "360 V dc", "1000 µF", "100 kΩ").WaitFor(amount(t, "60 V"))
	want := "t = R·C·ln(V/safe) = 100 kΩ · 1000 µF · ln(360 V dc/60 V) = 179 s, so at least 3 min; source: exponential discharge, V = V0·e^(−t/RC)"
	if !ok || explained(w).String() != want || !within(w.Seconds, 179.176, 0.001) {
		t.Errorf("got %s, %g s", explained(w), w.Seconds)
	}
	if said := strings.Join(explained(w).Assumes, " "); !strings.Contains(said, "64.8 J") || !strings.Contains(said, "3 min 46 s") {
		t.Errorf("it assumes: %s", said)
	}
	for seconds, want := range map[float64]bool{179: false, math.Nextafter(w.Seconds, 0): false, w.Seconds: true, 179.2: true, 3600: true} {
		if w.Enough(seconds) != want {
			t.Errorf("%g s are enough: %t", seconds, !want)
		}
	}
}

// An alternating voltage charges to its peak: 230 V to 325.3 V.
func TestWaitForTakesAlternatingAtItsPeak(t *testing.T) {
	dc, _ := store(t, "230 V dc", "470 µF", "10 kΩ").WaitFor(amount(t, "60 V"))
	ac, ok := store(t, "230 V ac", "470 µF", "10 kΩ").WaitFor(amount(t, "60 V"))
	if !ok || !within(ac.Seconds-dc.Seconds, 4.7*math.Log(math.Sqrt2), 1e-9) {
		t.Errorf("ac waits %g s, dc %g s", ac.Seconds, dc.Seconds)
	}
	if !strings.Contains(explained(ac).Put, "ln(√2 · 230 V ac/60 V)") {
		t.Errorf("put in: %s", explained(ac).Put)
	}
}

func TestWaitForWhatIsSafeAlready(t *testing.T) {
	w, ok := store(t, "48 V dc", "12 mF", "120 kΩ").WaitFor(amount(t, "60 V"))
	if !ok || w.Seconds != 0 || !w.Enough(0) || w.Least.String() != "0 min" {
		t.Errorf("48 V wait %s, %t", w.Least, ok)
	}
}

func TestWaitForTheUnknown(t *testing.T) {
	full := store(t, "360 V dc", "1000 µF", "100 kΩ")
	for name, s := range map[string]Store{
		"voltage": {Capacitance: full.Capacitance, Resistance: full.Resistance},
		"C":       {Voltage: full.Voltage, Resistance: full.Resistance},
		"R":       {Voltage: full.Voltage, Capacitance: full.Capacitance},
		"no C":    {full.Voltage, amount(t, "0 F"), full.Resistance},
	} {
		if w, ok := s.WaitFor(amount(t, "60 V")); ok {
			t.Errorf("%s: waits %s", name, w.Least)
		}
	}
	if _, ok := full.WaitFor(amount(t, "0 V")); ok {
		t.Error("no wait reaches 0 V")
	}
	if w, ok := full.WaitFor(amount(t, "0.5 V")); !ok || !within(w.Seconds, 657.925, 0.001) { // 100 s · ln 720
		t.Errorf("%g s to 0.5 V, %t", w.Seconds, ok)
	}
}

// However little is there, it can be computed with; where one is lacking,
// nothing can.
func TestKnownHoweverLittle(t *testing.T) {
	if s := store(t, "0.5 V dc", "1 µF", "0.5 Ω"); !s.Known() {
		t.Error("little is taken for nothing")
	}
	for _, s := range []Store{store(t, "0 V dc", "1 µF", "0.5 Ω"), store(t, "0.5 V dc", "0 µF", "0.5 Ω"), store(t, "0.5 V dc", "1 µF", "0 Ω"), {}} {
		if s.Known() {
			t.Errorf("%v can be computed with", s)
		}
	}
}

// A day is 86,400 s: by t = R·C·ln(V), worked out by hand, 360 V fall to a volt in
// 86,396 s through 1 MΩ from 14,678 µF, and in 86,408 s from 14,680 µF. The rule is
// ours.
func TestADayForAChargeIsHardlyMeant(t *testing.T) {
	for capacitance, hardly := range map[string]bool{"14678 µF": false, "14680 µF": true} {
		if s := store(t, "360 V dc", capacitance, "1 MΩ"); s.Hardly() != hardly {
			t.Errorf("%s: %v, not %v", capacitance, s.Hardly(), hardly)
		}
	}
}
