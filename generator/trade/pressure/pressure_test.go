package pressure

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/trade/internal/oracle"
)

// Known: SEEN, DERIVED, FROM MEMORY.

func within(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// Boyle's law in two worked examples, both from memory: 30.0 mL at 6.5 psi are
// 17.7 mL at 11.0 psi (OpenStax, Chemistry 2e, 9.2), and 50 L at 200 bar above
// that of the air fill about 10 000 L at 1 bar, the rule of thumb for a
// cylinder, which takes 1 bar for the air and so is 1.3 % high.
func TestBoyleFromMemory(t *testing.T) {
	const psi = 6894.757
	// V·(1 − p0/p): what is left of 30.0 mL at the higher pressure.
	if left := 30.0 - FluidOut(30.0, 6.5*psi, 11.0*psi); !within(left, 17.7, 0.05) {
		t.Errorf("%.3f mL are left, printed 17.7", left)
	}
	if out := GasOut(50, 200e5); !within(out, 10000, 0.014*10000) {
		t.Errorf("%.0f L come out of a cylinder", out)
	}
}

func TestReleaseByGNUUnits(t *testing.T) {
	for _, c := range []struct {
		got              float64
		expression, unit string
	}{
		{GasOut(0.270, 10e5), "270 L * 10 bar / atm", "m^3"},
		{FluidOut(0.004, 90e5+Atmosphere, 230e5+Atmosphere), "4 L * (1 - (90 bar + atm)/(230 bar + atm))", "m^3"},
		{Work(0.270, 10e5+Atmosphere, Atmosphere), "(10 bar + atm) * 270 L / 0.4 * (1 - (atm/(10 bar + atm))^(2|7))", "J"},
	} {
		if want := oracle.Units(t, c.expression, c.unit); !within(c.got, want, 1e-10*want) {
			t.Errorf("%s: %.13g, GNU units says %.13g %s", c.expression, c.got, want, c.unit)
		}
	}
}

// The work is the integral of p·dV along p·V^k = constant, by the definition of
// work: summed here in 200 000 strips.
func TestWorkIsTheAreaUnderTheCurve(t *testing.T) {
	const volume, from, to, strips = 0.02, 91e5, 1e5, 200_000
	end := volume * math.Pow(from/to, 1/diatomic)
	sum, width := 0.0, (end-volume)/strips
	for i := range strips {
		v := volume + (float64(i)+0.5)*width
		sum += from * math.Pow(volume/v, diatomic) * width
	}
	if got := Work(volume, from, to); !within(got, sum, 1e-6*sum) {
		t.Errorf("%.6g J, the strips have %.6g J", got, sum)
	}
}

// What is out and what stays obey p·V = constant; more volume or pressure lets
// out more, more precharge less; the fluid never exceeds the volume of the gas;
// and no expansion without heat does more than one that is kept warm.
func TestReleaseFollowsItsInputs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(0.1e-3, 1).Draw(t, "V")
		p0 := rapid.Float64Range(2e5, 200e5).Draw(t, "p0")
		p := p0 + rapid.Float64Range(1e4, 200e5).Draw(t, "more")
		out := FluidOut(v, p0, p)
		if out <= 0 || out >= v || !within(p*(v-out), p0*v, 1e-9*p0*v) {
			t.Fatalf("%g of %g m³ come out", out, v)
		}
		if FluidOut(v, p0, p*1.1) <= out || FluidOut(v*1.1, p0, p) <= out || FluidOut(v, p0*0.9, p) <= out || FluidOut(v, p, p0) != 0 {
			t.Fatal("the fluid does not follow volume, pressure and precharge")
		}
		gas := GasOut(v, p-Atmosphere)
		if !within(p*v, Atmosphere*(v+gas), 1e-9*p*v) {
			t.Fatalf("%g m³ of gas come out", gas)
		}
		if w := Work(v, p, p0); w <= 0 || w >= p*v*math.Log(p/p0) || Work(v, p0, p) != 0 {
			t.Fatalf("%g J", w)
		}
	})
}

func amount(t testing.TB, text string) (q quantity.Quantity) {
	t.Helper()
	if text == "" {
		return q
	}
	q, err := quantity.Parse(text, quantity.None)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func store(t testing.TB, volume, pressure, precharge string) Store {
	return Store{amount(t, volume), amount(t, pressure), amount(t, precharge)}
}

// By hand: 270 · 10/1.01325 = 2664.7 L; 4 · (1 − 91.01325/231.01325) = 2.4241 L;
// 1 − (1450.38 + 14.70)/(3000 + 14.70) = 0.5140.
func TestReleaseWithItsWorking(t *testing.T) {
	for _, c := range []struct {
		store              Store
		out, line, assumes string
	}{
		{store(t, "270 L", "10 bar", ""), "2700 L",
			"Vout = V·p/pa = 270 L · 10 bar/1.013 bar = 2700 L of gas, at the pressure of the air", "370 kJ"},
		{store(t, "4 L", "230 bar", "90 bar"), "2.4 L",
			"Vout = V·(1 − (p0 + pa)/(p + pa)) = 4 L · (1 − (90 bar + 1.013 bar)/(230 bar + 1.013 bar)) = 2.4 L of fluid", "21 kJ"},
		{store(t, "1 gal", "3000 psi", "100 bar"), "0.51 gal", "(1450 psi + 14.70 psi)", ""},
	} {
		r, ok := c.store.Release()
		w := r.Explain(&language.Default().Worked.Gas)
		if !ok || r.Out.String() != c.out || !strings.Contains(w.String(), c.line) || !strings.Contains(strings.Join(w.Assumes, " "), c.assumes) {
			t.Errorf("%s: %s\n%s", r.Out, w, strings.Join(w.Assumes, " "))
		}
	}
}

func TestReleaseOfTheUnknown(t *testing.T) {
	for name, s := range map[string]Store{
		"no volume":           store(t, "", "10 bar", ""),
		"no pressure":         store(t, "10 L", "", ""),
		"a vacuum":            store(t, "10 L", "-0.5 bar", ""),
		"as much precharge":   store(t, "10 L", "90 bar", "90 bar"),
		"more precharge":      store(t, "10 L", "90 bar", "100 bar"),
		"precharge below air": store(t, "10 L", "90 bar", "-0.2 bar"),
	} {
		if r, ok := s.Release(); ok {
			t.Errorf("%s lets out %s", name, r.Out)
		}
	}
}

// An energy is said in joules, and from a kilojoule on in those.
func TestEnergyIsSaidInItsUnit(t *testing.T) {
	say := &language.Default().Worked.Gas
	for energy, want := range map[float64]string{5: "5.0 J", 990: "990 J", 1000: "1.0 kJ", 1000.5: "1.0 kJ", 1451: "1.5 kJ", 45600: "46 kJ"} {
		if got := holds(say, energy); !strings.Contains(got, " "+want) {
			t.Errorf("%g J: %s", energy, got)
		}
	}
}
