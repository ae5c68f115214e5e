package quantity_test

import (
	"math"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
)

// Known: SEEN, DERIVED, FROM MEMORY.

// near reports whether got is want to a relative tolerance.
func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*math.Abs(want)
}

// mustParse reads an amount of any dimension.
func mustParse(t testing.TB, text string) quantity.Quantity {
	t.Helper()
	q, err := quantity.Parse(text, quantity.None)
	if err != nil {
		t.Fatalf("Parse(%q): %v", text, err)
	}
	return q
}

// mustUnit returns the unit of a symbol.
func mustUnit(t testing.TB, symbol string) quantity.Unit {
	t.Helper()
	u, ok := quantity.UnitNamed(symbol)
	if !ok {
		t.Fatalf("no unit %q", symbol)
	}
	return u
}

// sevenFigures is the tolerance of a factor printed to seven figures.
const sevenFigures = 5e-7

func TestFactorsOfSP811(t *testing.T) {
	for _, c := range []struct {
		amount string
		base   float64
		source string
	}{
		{"1 lbf·ft", 1.355818e+00, "NIST SP 811 App. B.8, as quoted"},
		{"1 lbf·in", 1.129848e-01, "NIST SP 811 App. B.8, as quoted"},
		{"1 kgf·m", 9.80665e+00, "NIST SP 811 App. B.8, as quoted"},
		{"1 psi", 6.894757e+03, "NIST SP 811 App. B.8, as quoted"},
		{"1.01325 bar", 1.01325e+05, "standard atmosphere, NIST SP 811 App. B.8, as quoted"},
		{"1 mbar", 100, "NIST SP 811 App. B.8, as quoted"},
		{"1 gal", 3.785412e-03, "NIST SP 811 App. B.8, from memory"},
		{"1 qt", 9.463529e-04, "liquid quart, NIST SP 811 App. B.8, from memory"},
		{"1 lb", 4.535924e-01, "NIST SP 811 App. B.8, from memory"},
		{"1 oz", 2.834952e-02, "NIST SP 811 App. B.8, from memory"},
		{"1 lbf", 4.448222e+00, "NIST SP 811 App. B.8, from memory"},
		{"1 kgf", 9.80665e+00, "NIST SP 811 App. B.8, from memory"},
		{"1 ft", 3.048e-01, "NIST SP 811 App. B.8, from memory"},
		{"1 in", 2.54e-02, "NIST SP 811 App. B.8, from memory"},
		{"1 thou", 2.54e-05, "mil, NIST SP 811 App. B.8, from memory"},
		{"1 mph", 4.4704e-01, "NIST SP 811 App. B.8, from memory"},
		{"1 km/h", 2.777778e-01, "NIST SP 811 App. B.8, from memory"},
		{"1 h", 3600, "NIST SP 811 App. B.8, from memory"},
		{"1 d", 86400, "NIST SP 811 App. B.8, from memory"},
	} {
		if got := mustParse(t, c.amount).Base(); !near(got, c.base, sevenFigures) {
			t.Errorf("%s is %.9g in base units, want %.7g (%s)", c.amount, got, c.base, c.source)
		}
	}
}

// NIST SP 811 App. B.8 gives 1 rpm as 1.047198 E-01 rad/s (from memory).
func TestRevolutionsOfSP811(t *testing.T) {
	if got := mustParse(t, "1 rpm").Base() * 2 * math.Pi; !near(got, 1.047198e-01, sevenFigures) {
		t.Errorf("1 rpm is %.9g rad/s", got)
	}
}

func TestExactFactors(t *testing.T) {
	for _, c := range []struct {
		amount string
		base   float64
		source string
	}{
		{"1 lbf·ft", 1.3558179483314004, "0.3048 × 4.4482216152605, exact by definition"},
		{"1 lbf·in", 0.1129848290276167, "0.0254 × 4.4482216152605, exact by definition"},
		{"1 psi", 6894.757293168361, "4.4482216152605 / 0.0254², by definition"},
		{"1 lbf", 4.4482216152605, "0.45359237 × 9.80665, exact by definition"},
		{"1 lb", 0.45359237, "international pound of 1959, exact by definition"},
		{"1 ft", 0.3048, "international foot of 1959, exact by definition"},
		{"1 in", 0.0254, "international inch of 1959, exact by definition"},
		{"1 gal", 3.785411784e-3, "231 in³, exact by definition"},
		{"1 mph", 0.44704, "5280 ft in 3600 s, exact by definition"},
		{"1 kgf·m", 9.80665, "standard gravity, CGPM 1901, exact by definition"},
		{"1 bar", 1e5, "exact by definition"},
		{"1 MPa", 1e6, "SI prefix"},
		{"1 kPa", 1e3, "SI prefix"},
		{"1 cN·m", 1e-2, "SI prefix"},
		{"1 mV", 1e-3, "SI prefix"},
		{"1 kV", 1e3, "SI prefix"},
		{"1 mA", 1e-3, "SI prefix"},
		{"1 kΩ", 1e3, "SI prefix"},
		{"1 MΩ", 1e6, "SI prefix"},
		{"1 µF", 1e-6, "SI prefix"},
		{"1 mF", 1e-3, "SI prefix"},
		{"1 kW", 1e3, "SI prefix"},
		{"1 kN", 1e3, "SI prefix"},
		{"1 L", 1e-3, "1 dm³, CGPM 1964"},
		{"1 mL", 1e-6, "1 cm³, CGPM 1964"},
		{"1 g", 1e-3, "SI prefix"},
		{"1 t", 1e3, "SI brochure, table of accepted units"},
		{"1 weeks", 604800, "seven days of 86 400 s"},
		{"1 %", 0.01, "a hundredth"},
	} {
		if got := mustParse(t, c.amount).Base(); !near(got, c.base, 1e-12) {
			t.Errorf("%s is %.17g in base units, want %.17g (%s)", c.amount, got, c.base, c.source)
		}
	}
}

func TestTemperaturePoints(t *testing.T) {
	for _, c := range []struct{ celsius, fahrenheit, kelvin, source string }{
		{"0 °C", "32 °F", "273 K", "ice point"},
		{"100 °C", "212 °F", "373 K", "steam point"},
		{"-40 °C", "−40 °F", "233 K", "where both scales meet"},
		{"65 °C", "149 °F", "338 K", "GNU units 2.22"},
	} {
		q := mustParse(t, c.celsius)
		if got := q.In(quantity.Fahrenheit).String(); got != c.fahrenheit {
			t.Errorf("%s is %s, want %s (%s)", c.celsius, got, c.fahrenheit, c.source)
		}
		if got := q.In(quantity.Kelvin).String(); got != c.kelvin {
			t.Errorf("%s is %s, want %s (%s)", c.celsius, got, c.kelvin, c.source)
		}
	}
	// Absolute zero is −273.15 °C and −459.67 °F, exact by definition.
	for _, cold := range []string{"-273.15 °C", "-459.67 °F"} {
		if got := mustParse(t, cold).Base(); math.Abs(got) > 1e-10 {
			t.Errorf("%s is %g K", cold, got)
		}
	}
}

// The numbers are invented; their second units were computed with GNU units
// 2.22 to nine figures.
func TestConvertedBySecondOpinion(t *testing.T) {
	for _, c := range []struct {
		amount, unit string
		want         float64
	}{
		{"9 N·m", "lbf·ft", 6.63805934},
		{"25 N·m", "lbf·ft", 18.4390537},
		{"48 N·m", "lbf·ft", 35.4029832},
		{"60 N·m", "lbf·ft", 44.2537289566},
		{"110 N·m", "lbf·ft", 81.1318364},
		{"240 N·m", "lbf·ft", 177.014916},
		{"10 bar", "psi", 145.037738},
		{"210 bar", "psi", 3045.79249},
		{"8.5 bar", "psi", 123.282077},
		{"350 psi", "bar", 24.13165053},
		{"250 kg", "lb", 551.155655},
		{"2.4 L", "gal", 0.634012926},
		{"0.35 mm", "thou", 13.7795276},
		{"65 °C", "°F", 149},
	} {
		got := mustParse(t, c.amount).In(mustUnit(t, c.unit))
		if !near(got.Value, c.want, 5e-9) {
			t.Errorf("%s is %.10g %s, want %.9g (GNU units 2.22)", c.amount, got.Value, c.unit, c.want)
		}
	}
}

// Every unit of the handbook's table converts to itself, and the sums over the
// table below keep a unit from being forgotten here.
func TestEveryUnitIsInATable(t *testing.T) {
	var symbols []string
	for _, u := range quantity.Units(quantity.None) {
		symbols = append(symbols, u.Symbol())
	}
	// The list is the one of the format page, calendar words said once more, with
	// g/L of a dose and µΩ of a contact.
	want := "N·m cN·m lbf·ft lbf·in kgf·m Pa kPa MPa bar mbar psi inHg mmHg V mV kV A mA Ω µΩ mΩ kΩ MΩ F µF mF W kW Hz " +
		"s min h d weeks days weeks months years µm mm cm m in ft thou mi g kg t lb oz mL L m³ gal qt N kN lbf kgf " +
		"°C °F K ° turns rpm km/h mph % ppm each pH mg/L g/L NTU µS/cm mS/cm dB drops"
	if got := strings.Join(symbols, " "); got != want {
		t.Errorf("the units are\n%s\nwant\n%s", got, want)
	}
}
