package quantity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
)

// What stands behind an amount is converted from what is printed. The exact
// values are those of GNU units 2.22; the rule, 1 % and no decimals that say
// nothing, is this project's own.
func TestBeside(t *testing.T) {
	for _, c := range []struct{ amount, unit, want, exact string }{
		{"22 N·m", "lbf·ft", "16.2 lbf·ft", "16.2263673"},
		{"25 N·m", "lbf·ft", "18.4 lbf·ft", "18.4390537"},
		{"4 N·m", "lbf·ft", "2.95 lbf·ft", "2.9502486"},
		{"2.5 N·m", "lbf·ft", "1.84 lbf·ft", "1.84390537"},
		{"48 N·m", "lbf·ft", "35.4 lbf·ft", "35.4029832"},
		{"40 N·m", "lbf·ft", "29.5 lbf·ft", "29.502486"},
		{"20 N·m", "lbf·ft", "14.8 lbf·ft", "14.751243"},
		{"55 N·m", "lbf·ft", "40.6 lbf·ft", "40.5659182"},
		{"0.3 bar", "psi", "4.35 psi", "4.35113213"},
		{"44.7 N·m", "lbf·ft", "33 lbf·ft", "32.969028: 33.0 says no more"},
		{"750 mL", "L", "0.75 L", "exact"},
	} {
		if got := mustParse(t, c.amount).Beside(mustUnit(t, c.unit)).String(); got != c.want {
			t.Errorf("%s (%s), want %s (%s)", c.amount, got, c.want, c.exact)
		}
	}
	computed := quantity.Of(18.1423, quantity.NewtonMetre, 2) // is printed as 18
	if got := computed.Beside(quantity.PoundForceFoot).String(); got != "13.3 lbf·ft" {
		t.Errorf("%s (%s), want 13.3, which is 18 and not 18.1423 N·m", computed, got)
	}
}

// A tolerance stays with its value, and the rounding is small beside it. Worked
// out by hand from 1 bar = 14.5037738 psi and 1 N·m = 0.737562149 lbf·ft.
func TestLimitBeside(t *testing.T) {
	for _, c := range []struct{ limit, unit, want string }{
		{"90 ± 3 bar", "psi", "1305 ± 43.5 psi"},
		{"180 ± 4 bar", "psi", "2610 ± 58 psi"},
		{"110 N·m ± 5 %", "lbf·ft", "81 ± 4.06 lbf·ft"}, // 4.0566: 4.1 would be 1.1 % high
		{"20 to 110 N·m", "lbf·ft", "14.8–81 lbf·ft"},
		{"210 to 214 bar", "psi", "3046–3104 psi"},
		{"at most 0.3 bar", "psi", "4.35 psi"},
		{"at most 0 bar", "psi", "0 psi"},
	} {
		u := mustUnit(t, c.unit)
		l, err := quantity.ParseLimit(c.limit, u.Dimension())
		if err != nil {
			t.Fatal(err)
		}
		if got := l.Beside(u); got != c.want {
			t.Errorf("%s (%s), want %s", c.limit, got, c.want)
		}
	}
}

// Small amounts are not shown in large units.
func TestSuits(t *testing.T) {
	for _, c := range []struct {
		first, second string
		want          bool
	}{{"g", "lb", false}, {"g", "oz", true}, {"kg", "lb", true}, {"mm", "ft", false}, {"cm", "m", true}, {"mm", "m", false}, {"mm", "in", true}, {"bar", "psi", true}, {"°C", "°F", true}, {"N·m", "psi", false}} {
		if got := mustUnit(t, c.first).Suits(mustUnit(t, c.second)); got != c.want {
			t.Errorf("%s (%s): %t", c.first, c.second, got)
		}
	}
}

// Whatever the amount, what is printed behind it is within 1 % of what is
// printed first, and agrees with it.
func TestBesideIsWithinOnePercent(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		u := drawOther(t, q)
		if q.Unit.Dimension() == quantity.Temperature {
			return
		}
		second, err := quantity.Parse(q.Beside(u).String(), q.Unit.Dimension())
		if err != nil {
			t.Fatalf("%s (%s): %v", text, q.Beside(u), err)
		}
		if math.Abs(second.Base()-q.Base()) > 0.01*math.Abs(q.Base())*(1+1e-9) || !quantity.Agrees(second, q) {
			t.Fatalf("%s (%s) is more than 1 %% apart, or does not agree", text, second)
		}
	})
}
