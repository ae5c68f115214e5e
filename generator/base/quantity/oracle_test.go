package quantity_test

import (
	"bytes"
	"fmt"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
	"baybinder/generator/base/quantity"
)

// Known: SEEN.

// oracleNames says each unit in the words of GNU units. Units that are not
// here have no second unit of their dimension to convert to, or are months and
// years, whose length there is the tropical year's.
var oracleNames = map[quantity.Unit]string{
	quantity.NewtonMetre: "N m", quantity.CentinewtonMetre: "cN m", quantity.PoundForceFoot: "lbf ft",
	quantity.PoundForceInch: "lbf in", quantity.KilogramForceMetre: "kgf m",
	quantity.Pascal: "Pa", quantity.Kilopascal: "kPa", quantity.Megapascal: "MPa", quantity.Bar: "bar",
	quantity.Millibar: "mbar", quantity.PoundPerSquareInch: "psi",
	quantity.InchOfMercury: "inHg", quantity.MillimetreOfMercury: "mmHg", quantity.Microohm: "microohm", quantity.Milliohm: "milliohm", quantity.Micrometre: "micrometer", quantity.Mile: "mile",
	quantity.MilligramPerLitre: "mg/L", quantity.GramPerLitre: "g/L",
	quantity.Percent: "percent", quantity.PartPerMillion: "ppm",
	quantity.MicrosiemensPerCentimetre: "microS/cm", quantity.MillisiemensPerCentimetre: "mS/cm",
	quantity.Volt: "V", quantity.Millivolt: "mV", quantity.Kilovolt: "kV",
	quantity.Ampere: "A", quantity.Milliampere: "mA",
	quantity.Ohm: "ohm", quantity.Kilohm: "kohm", quantity.Megohm: "megohm",
	quantity.Farad: "F", quantity.Microfarad: "microF", quantity.Millifarad: "mF",
	quantity.Watt: "W", quantity.Kilowatt: "kW",
	quantity.Second: "s", quantity.Minute: "min", quantity.Hour: "hour", quantity.Day: "day", quantity.Week: "week",
	quantity.Millimetre: "mm", quantity.Centimetre: "cm", quantity.Metre: "m",
	quantity.Inch: "in", quantity.Foot: "ft", quantity.Thou: "mil",
	quantity.Gram: "g", quantity.Kilogram: "kg", quantity.Tonne: "tonne", quantity.Pound: "lb", quantity.Ounce: "oz",
	quantity.Millilitre: "mL", quantity.Litre: "L", quantity.CubicMetre: "m^3", quantity.Gallon: "gal", quantity.Quart: "qt",
	quantity.Newton: "N", quantity.Kilonewton: "kN", quantity.PoundForce: "lbf", quantity.KilogramForce: "kgf",
	quantity.KilometrePerHour: "km/hour", quantity.MilePerHour: "mph",
	quantity.Celsius: "tempC", quantity.Fahrenheit: "tempF", quantity.Kelvin: "K",
}

// pair is one conversion to ask for.
type pair struct {
	value    float64
	from, to quantity.Unit
}

// pairs lists every ordered pair of units that share a dimension.
func pairs() []pair {
	var list []pair
	for _, from := range quantity.Units(quantity.None) {
		for _, to := range quantity.Units(from.Dimension()) {
			if from != to && oracleNames[from] != "" && oracleNames[to] != "" {
				list = append(list, pair{37.5, from, to})
			}
		}
	}
	return list
}

// question returns the two lines that GNU units reads for a pair.
func (p pair) question() string {
	have := fmt.Sprintf("%g %s", p.value, oracleNames[p.from])
	if strings.HasPrefix(oracleNames[p.from], "temp") {
		have = fmt.Sprintf("%s(%g)", oracleNames[p.from], p.value)
	}
	return have + "\n" + oracleNames[p.to] + "\n"
}

// objection is how the oracle disagrees with a conversion, nothing if it does
// not. Both compute in double precision from exact definitions.
func objection(p pair, ours, theirs float64) string {
	if near(ours, theirs, 1e-12) {
		return ""
	}
	return fmt.Sprintf("%g %s is %.15g %s, and GNU units says %.15g", p.value, p.from, ours, p.to, theirs)
}

// ask puts all pairs to one run of GNU units.
func ask(t *testing.T, list []pair) []float64 {
	t.Helper()
	path, err := exec.LookPath("units")
	needed.Judge(t, err == nil, "GNU units")
	var in bytes.Buffer
	for _, p := range list {
		in.WriteString(p.question())
	}
	run := exec.Command(path, "-q", "-t", "-o", "%.17g")
	run.Stdin = &in
	out, err := run.Output()
	if err != nil {
		t.Fatalf("units: %v", err)
	}
	var answers []float64
	for line := range strings.Lines(string(out)) {
		answer, err := strconv.ParseFloat(strings.TrimSpace(line), 64)
		if err != nil {
			t.Fatalf("units said %q to question %d", line, len(answers))
		}
		answers = append(answers, answer)
	}
	if len(answers) != len(list) {
		t.Fatalf("%d answers to %d questions", len(answers), len(list))
	}
	return answers
}

func TestOracleAgreesOnEveryPair(t *testing.T) {
	list := pairs()
	if len(list) < 150 {
		t.Fatalf("only %d pairs of units", len(list))
	}
	for i, theirs := range ask(t, list) {
		p := list[i]
		ours := quantity.Of(p.value, p.from, 3).In(p.to).Value
		if said := objection(p, ours, theirs); said != "" {
			t.Error(said)
		}
	}
}

// An oracle that never objects proves nothing. A package of unit conversions
// in public use has 60 N·m as 44.2537251290 lbf·ft, which is wrong in the
// eighth figure.
func TestOracleObjectsToAWrongFactor(t *testing.T) {
	p := pair{60, quantity.NewtonMetre, quantity.PoundForceFoot}
	theirs := ask(t, []pair{p})[0]
	if said := objection(p, 44.2537251290, theirs); said == "" {
		t.Error("a wrong factor was let through")
	}
}

// Every pair that is asked for is of units that the table names, and no unit
// with a partner is left out.
func TestOracleKnowsEveryUnitWithAPartner(t *testing.T) {
	for _, u := range quantity.Units(quantity.None) {
		d := u.Dimension()
		if d != quantity.Calendar && len(quantity.Units(d)) > 1 && oracleNames[u] == "" {
			t.Errorf("%s is never put to the oracle", u)
		}
	}
}
