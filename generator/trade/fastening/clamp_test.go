package fastening

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/trade/internal/oracle"
	"baybinder/generator/trade/working"
)

// Known: SEEN.

// M10 8.8 at 50 N·m, K 0.20: 25 kN and 431 MPa on 58 mm², by "Bolt torque" of
// an engineering site. 0.5 MPa is half of the last place printed.
func TestClampLoadOfAnEngineeringSite(t *testing.T) {
	force := ClampLoad(50, 0.20, 0.010)
	if !near(force, 25000, 1e-9) || !within(force/58, 431, 0.5) {
		t.Errorf("%.1f N, %.2f MPa; printed: 25 kN, 431 MPa", force, force/58)
	}
}

// M12 8.8 at 70 % of its proof load, K 0.20: about 34 kN and about 82 N·m, by
// "Bolt torque", a public calculator; both to half of the last place.
func TestTorqueOfACalculator(t *testing.T) {
	load := 0.70 * 84.3 * 580
	if torque := TorqueFor(load, 0.20, 0.012); !within(load/1000, 34, 0.5) || !within(torque, 82, 0.5) {
		t.Errorf("%.2f kN, %.2f N·m; printed: 34 kN, 82 N·m", load/1000, torque)
	}
}

// 3/8-16 at a preload of 4940 lbf: 30 lb·ft at K 0.20 and 23 at 0.15, by "What
// does the nut factor K really encompass?", which drops the decimals: 1 lb·ft.
func TestTorqueOfANutFactorArticle(t *testing.T) {
	const newtons, metres, poundFoot = 4940 * 4.4482216152605, 0.375 * 0.0254, 1.3558179483314004
	for k, want := range map[float64]float64{0.20: 30, 0.15: 23} {
		if got := TorqueFor(newtons, k, metres) / poundFoot; !within(got, want, 1) {
			t.Errorf("K %.2f: %.1f lb·ft, printed %g", k, got, want)
		}
	}
}

// Class 8.8 at 75 % of the proof load, by the bolt table of a machine maker's
// service manual, p. 2-7, with its own tolerances. It prints 255 N·m for M16
// beside 166 lb·ft, which is 225: a slip, and 255 must not pass.
func TestTorqueOfAWorkshopTable(t *testing.T) {
	for _, c := range []struct {
		thread            string
		torque, tolerance float64
		right             bool
	}{{"M8", 26, 3, true}, {"M10", 52, 5, true}, {"M12", 90, 10, true}, {"M16", 225, 23, true}, {"M16", 255, 23, false}} {
		thread := mustThread(t, c.thread)
		p, _ := ProofOf(thread, mustClass(t, "8.8"))
		got := TorqueFor(0.75*p.Load, 0.20, thread.Diameter/1000)
		if within(got, c.torque, c.tolerance) != c.right {
			t.Errorf("%s: %.1f N·m against %g ± %g", c.thread, got, c.torque, c.tolerance)
		}
	}
}

// The nut factors of a fastener chart that quotes T = K·D·F, and the spans of
// an engineering site; the span of zinc has no source and is not judged.
func TestFrictionOf(t *testing.T) {
	for condition, want := range map[string]Friction{
		"dry": {"dry", 0.20, 0.20, 0.25}, "": {"dry", 0.20, 0.20, 0.25}, "lubricated": {"lubricated", 0.15, 0.12, 0.20},
	} {
		if got, ok := FrictionOf(condition); !ok || got != want {
			t.Errorf("%q is %v, %t; want %v", condition, got, ok, want)
		}
	}
	if zinc, ok := FrictionOf("zinc"); !ok || zinc.K != 0.17 {
		t.Errorf("zinc is %v", zinc)
	}
	if _, ok := FrictionOf("rusty"); ok {
		t.Error("a condition that the format does not have has a friction")
	}
	for _, f := range frictions {
		if f.K < f.Low || f.K > f.High {
			t.Errorf("%s: %g is outside %g to %g", f.Condition, f.K, f.Low, f.High)
		}
	}
}

func TestClampLoadByGNUUnits(t *testing.T) {
	if got, want := ClampLoad(22, 0.20, 0.008), oracle.Units(t, "22 N m / (0.20 * 8 mm)", "N"); !near(got, want, 1e-12) {
		t.Errorf("%.12g N, GNU units says %.12g", got, want)
	}
}

// Torque and clamp load are inverses; more torque pulls more, more friction less.
func TestClampLoadTurnsRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		torque := rapid.Float64Range(0.1, 1000).Draw(t, "torque")
		k := rapid.Float64Range(0.1, 0.4).Draw(t, "k")
		d := rapid.Float64Range(0.002, 0.064).Draw(t, "diameter")
		load := ClampLoad(torque, k, d)
		if back := TorqueFor(load, k, d); !near(back, torque, 1e-12) {
			t.Fatalf("%g N·m comes back as %g", torque, back)
		}
		if ClampLoad(torque*1.01, k, d) <= load || ClampLoad(torque, k*1.01, d) >= load || ClampLoad(torque, k, d*1.01) >= load {
			t.Fatal("the load does not follow torque, friction and diameter")
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

// The working is read at the bay: 22 N·m on a dry M8 is 13.75 kN, 65 % of the
// 21.2 kN of the chart.
func TestLoadWithItsWorking(t *testing.T) {
	dry, _ := FrictionOf("dry")
	l, ok := LoadOf(mustThread(t, "M8"), mustClass(t, "8.8"), dry, amount(t, "22 N·m"))
	want := "F = T/(K·d) = 22 N·m/(0.20 · 8 mm) = 13.8 kN, 65 % of the proof load of 21.2 kN; source: T = K·d·F, short form of the trade; proof load ISO 898-1, tables 4 and 5"
	if !ok || l.Over() || explained(l).String() != want {
		t.Errorf("got %s, over: %t", explained(l), l.Over())
	}
	if got := l.Low.String() + " to " + l.High.String(); got != "11.0 kN to 13.8 kN" {
		t.Errorf("the span is %s", got)
	}
}

func explained(l Load) working.Working { return l.Explain(&language.Default().Worked.Bolt) }

func TestLoadInTheAuthorsUnit(t *testing.T) {
	dry, _ := FrictionOf("")
	l, ok := LoadOf(mustThread(t, "M12x1.5"), mustClass(t, "10.9"), dry, amount(t, "81 lbf·ft"))
	if !ok || !strings.HasPrefix(explained(l).Put, "81 lbf·ft/(0.20 · 12 mm)") || !strings.Contains(explained(l).Source, "As·Sp") {
		t.Errorf("got %+v", explained(l))
	}
}

func TestLoadIsOverProof(t *testing.T) {
	dry, _ := FrictionOf("dry")
	limit := TorqueFor(21200, dry.K, 0.008) // 33.92 N·m
	for torque, over := range map[float64]bool{limit * 0.999: false, limit * 1.001: true} {
		l, ok := LoadOf(mustThread(t, "M8"), mustClass(t, "8.8"), dry, quantity.Of(torque, quantity.NewtonMetre, 6))
		if !ok || l.Over() != over {
			t.Errorf("%g N·m: over %t, want %t", torque, l.Over(), over)
		}
	}
}

func TestLoadOfNoTorque(t *testing.T) {
	dry, _ := FrictionOf("dry")
	for _, text := range []string{"90°", "0 N·m", "5 bar"} {
		if l, ok := LoadOf(mustThread(t, "M8"), mustClass(t, "8.8"), dry, amount(t, text)); ok {
			t.Errorf("%s pulls %s", text, l.Clamp)
		}
	}
}

// TorqueFor is the torque, N·m, for a pull in N: ClampLoad turned round.
func TorqueFor(load, k, diameter float64) float64 { return load * k * diameter }
