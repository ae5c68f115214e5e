package quantity_test

import (
	"math"
	"testing"

	"baybinder/generator/base/quantity"
)

func mustLimit(t testing.TB, text string) quantity.Limit {
	t.Helper()
	l, err := quantity.ParseLimit(text, quantity.None)
	if err != nil {
		t.Fatalf("ParseLimit(%q): %v", text, err)
	}
	return l
}

func TestParseLimit(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		text      string
		want      quantity.Dimension
		kind      quantity.LimitKind
		low, high float64
		print     string
	}{
		{"at most 5 V dc", quantity.Voltage, quantity.AtMost, -inf, 5, "at most 5 V dc"},
		{"at least 2 mm", quantity.Length, quantity.AtLeast, 2, inf, "at least 2 mm"},
		{"20 to 100 N·m", quantity.Torque, quantity.Between, 20, 100, "20 to 100 N·m"},
		{"20 Nm to 100 Nm", quantity.Torque, quantity.Between, 20, 100, "20 to 100 N·m"},
		{"500 mV to 2 V", quantity.Voltage, quantity.Between, 500, 2000, "500 mV to 2 V"},
		{"5 V dc to 10 V", quantity.Voltage, quantity.Between, 5, 10, "5 to 10 V dc"},
		{"-20 to 65 °C", quantity.Temperature, quantity.Between, -20, 65, "−20 to 65 °C"},
		{"-20 to -10 °C", quantity.Temperature, quantity.Between, -20, -10, "−20 to −10 °C"},
		{"30 min to 1 h 30 min", quantity.Duration, quantity.Between, 30, 90, "30 min to 1 h 30 min"},
		{"30 min to 2 h", quantity.Duration, quantity.Between, 30, 120, "30 min to 2 h"},
		{"2 to 4", quantity.Count, quantity.Between, 2, 4, "2 to 4 each"},
		{"2.0 ± 0.1 mm", quantity.Length, quantity.PlusMinus, 1.9, 2.1, "2.0 ± 0.1 mm"},
		{"2.0±0.1mm", quantity.Length, quantity.PlusMinus, 1.9, 2.1, "2.0 ± 0.1 mm"},
		{"2.0 +/- 0.1 mm", quantity.Length, quantity.PlusMinus, 1.9, 2.1, "2.0 ± 0.1 mm"},
		{"2.0 mm ± 0.1 mm", quantity.Length, quantity.PlusMinus, 1.9, 2.1, "2.0 ± 0.1 mm"},
		{"0.3 ± 0.1 mm", quantity.Length, quantity.PlusMinus, 0.2, 0.4, "0.3 ± 0.1 mm"},
		{"180 ± 4 bar", quantity.Pressure, quantity.PlusMinus, 176, 184, "180 ± 4 bar"},
		{"20 ± 2 °C", quantity.Temperature, quantity.PlusMinus, 18, 22, "20 ± 2 °C"},
		{"20 °C ± 2 K", quantity.Temperature, quantity.PlusMinus, 18, 22, "20 °C ± 2 K"},
		{"2 h ± 15 min", quantity.Duration, quantity.PlusMinus, 1.75, 2.25, "2 h ± 15 min"},
		{"200 N·m ± 4 %", quantity.Torque, quantity.PlusMinus, 192, 208, "200 N·m ± 4 %"},
		{"50 ± 5 %", quantity.Ratio, quantity.PlusMinus, 45, 55, "50 ± 5 %"},
		{"12.5 V dc ± 0.5 V", quantity.Voltage, quantity.PlusMinus, 12, 13, "12.5 ± 0.5 V dc"},
		{"5 bar", quantity.Pressure, quantity.Exact, 5, 5, "5 bar"},
		// A deviation goes both ways, of whatever it is one.
		{"-3 to 3 s", quantity.None, quantity.Between, -3, 3, "−3 to 3 s"},
		{"-3 s to 5 s", quantity.None, quantity.Between, -3, 5, "−3 to 5 s"},
		{"-0.5 to 0.5 g", quantity.None, quantity.Between, -0.5, 0.5, "−0.5 to 0.5 g"},
	} {
		l, err := quantity.ParseLimit(c.text, c.want)
		if err != nil {
			t.Errorf("ParseLimit(%q): %v", c.text, err)
			continue
		}
		if l.Kind != c.kind || l.Low != c.low || l.High != c.high || l.String() != c.print {
			t.Errorf("ParseLimit(%q) is kind %d, %g to %g, printed %q; want kind %d, %g to %g, %q",
				c.text, l.Kind, l.Low, l.High, l, c.kind, c.low, c.high, c.print)
		}
	}
}

func TestParseLimitRefuses(t *testing.T) {
	const pressure = "write a limit, such as 0 to 400 bar"
	for _, b := range []bad{
		{"", "the limit is empty", pressure, quantity.Pressure, quantity.NoNumber},
		{"at most", `there is no number in "at most"`, pressure, quantity.Pressure, quantity.NoNumber},
		{"≤ 5 bar", `"≤ 5 bar" does not begin with a number`, "write at most 5 bar", quantity.Pressure, quantity.NoNumber},
		{"max. 8 mm", `"max. 8 mm" does not begin with a number`, "write at most 8 mm", quantity.Length, quantity.NoNumber},
		{"At least 8 mm", `"At least 8 mm" does not begin with a number`, "write at least 8 mm", quantity.Length, quantity.NoNumber},
		{"max 8 bar", `"max 8 bar" does not begin with a number`, "write a limit, such as 0.5 to 2 mm", quantity.Length, quantity.NoNumber},
		{"less than 5 bar", `"less than 5 bar" does not begin with a number`, "write at most 5 bar", quantity.Pressure, quantity.NoNumber},
		{"between 3 and 5 bar", `"between 3 and 5 bar" does not begin with a number`, "write 3 to 5 bar", quantity.Pressure, quantity.NoNumber},
		{"at most 5 V", `"5 V" is a voltage, not a pressure`, pressure, quantity.Pressure, quantity.WrongDimension},
		{"5 to 10 V", `"10 V" is a voltage, not a pressure`, pressure, quantity.Pressure, quantity.WrongDimension},
		{"5 V to 10 A", `"5 V to 10 A" mixes units of two kinds`, "write both numbers in one unit", quantity.None, quantity.WrongDimension},
		{"5 V ac to 10 V dc", `"5 V ac to 10 V dc" mixes ac and dc`, "write ac or dc once, after the unit", quantity.Voltage, quantity.WrongDimension},
		{"20 °C ± 5 %", `"20 °C ± 5 %" mixes units of two kinds`, "write both numbers in one unit", quantity.None, quantity.WrongDimension},
		{"100 to 20 bar", `"100 to 20 bar" is in the wrong order`, "write the smaller end first", quantity.Pressure, quantity.OutOfOrder},
		{"5 to 5 bar", `"5 to 5 bar" is in the wrong order`, "write the smaller end first", quantity.Pressure, quantity.OutOfOrder},
		{"2 V to 500 mV", `"2 V to 500 mV" is in the wrong order`, "write the smaller end first", quantity.Voltage, quantity.OutOfOrder},
		{"-1 to 5 N·m", `"-1 to 5 N·m" cannot be below zero`, "write a limit, such as 20 to 100 N·m", quantity.Torque, quantity.BadNumber},
		{"-5 to -1 s", `"-1 s" cannot be below zero`, "write a limit, such as 20 to 100 N·m", quantity.None, quantity.BadNumber},
		{"-3 s", `"-3 s" cannot be below zero`, "write a limit, such as 20 to 100 N·m", quantity.None, quantity.BadNumber},
		{"at most -3 s", `"-3 s" cannot be below zero`, "write a limit, such as 20 to 100 N·m", quantity.None, quantity.BadNumber},
		{"1 to 1 h 30 min", `"1 to 1 h 30 min" has no unit`, "write the unit at both ends", quantity.Duration, quantity.NoUnit},
		{"5 to 10", `"10" has no unit`, pressure + "; its units are Pa, kPa, MPa, bar, mbar, psi, inHg and mmHg", quantity.Pressure, quantity.NoUnit},
		{"5 ± 1", `"1" has no unit`, pressure + "; its units are Pa, kPa, MPa, bar, mbar, psi, inHg and mmHg", quantity.Pressure, quantity.NoUnit},
		{"5 ± 1 V", `"1 V" is a voltage, not a pressure`, pressure, quantity.Pressure, quantity.WrongDimension},
		{"5 bar ± 1 V", `"1 V" is a voltage, not a pressure`, pressure, quantity.Pressure, quantity.WrongDimension},
		{"5 ± 0 bar", `"0 bar" is no tolerance`, "write a tolerance above zero, such as 2.0 ± 0.1 mm", quantity.Pressure, quantity.BadNumber},
		{"5 ± -1 bar", `"-1 bar" has a minus sign where there can be none`, "leave the minus sign out", quantity.Pressure, quantity.BadNumber},
		{"5 to 10 to 15 bar", `"to" is not a unit that the manual knows`, pressure, quantity.Pressure, quantity.UnknownUnit},
		{"5 bar gauge", `"gauge" is left over after the limit`, pressure, quantity.Pressure, quantity.TrailingText},
		{"20-", `"20-" is a range with a dash`, "write the word to between the two ends, such as 20 to 100", quantity.Pressure, quantity.BadNumber}, // nobody knows the other end
		{"20- bar", `"20- bar" is a range with a dash`, "write the word to between the two ends, such as 20 to 100", quantity.Pressure, quantity.BadNumber},
		{"20–100 bar", `"20–100 bar" is a range with a dash`, "write 20 to 100 bar", quantity.Pressure, quantity.BadNumber},
	} {
		_, err := quantity.ParseLimit(b.text, b.want)
		b.check(t, err)
	}
}

func TestParseRangeRefuses(t *testing.T) {
	const mend = "write a range, such as 20 to 100 N·m"
	for _, b := range []bad{
		{"at most 20 N·m", `"at most 20 N·m" is not a range`, mend, quantity.Torque, quantity.NotRange},
		{"20 N·m", `"20 N·m" is not a range`, mend, quantity.Torque, quantity.NotRange},
		{"20 ± 1 N·m", `"20 ± 1 N·m" is not a range`, mend, quantity.Torque, quantity.NotRange},
		{"20 to 100 bar", `"100 bar" is a pressure, not a torque`, mend, quantity.Torque, quantity.WrongDimension},
	} {
		_, err := quantity.ParseRange(b.text, b.want)
		b.check(t, err)
	}
}

func TestHolds(t *testing.T) {
	for _, c := range []struct {
		limit, amount string
		want          bool
	}{
		{"at most 5 V dc", "5 V dc", true},
		{"at most 5 V dc", "5.1 V dc", false},
		{"at most 5 V dc", "5000 mV", true},
		{"at most 5 V dc", "-100 V", true},
		{"at most 5 V dc", "3 V ac", false},
		{"at most 5 V dc", "3 A", false},
		{"at least 2 mm", "2 mm", true},
		{"at least 2 mm", "1.9 mm", false},
		{"20 to 100 N·m", "20 N·m", true},
		{"20 to 100 N·m", "100 N·m", true},
		{"20 to 100 N·m", "19.9 N·m", false},
		{"20 to 100 N·m", "100.1 N·m", false},
		{"20 to 100 N·m", "73 lbf·ft", true},  // 98.97 N·m by the exact factor
		{"20 to 100 N·m", "74 lbf·ft", false}, // 100.33 N·m
		{"0.3 ± 0.1 mm", "0.2 mm", true},
		{"0.3 ± 0.1 mm", "0.4 mm", true},
		{"0.3 ± 0.1 mm", "0.41 mm", false},
		{"0.1 to 0.3 m", "300 mm", true},
		{"at most 1 in", "25.4 mm", true},
		{"at most 3 in", "76.2 mm", true}, // whose last bits differ
		{"at most 212 °F", "100 °C", true},
		{"at least 32 °F", "0 °C", true},
		{"at least 32 °F", "-1 °C", false},
		{"at most 12 months", "1 year", true},
		{"at most 12 months", "13 months", false},
		{"at most 3 months", "14 days", true},
		{"14 days", "2 weeks", true},
		{"5 bar", "500 kPa", true},
		{"5 bar", "5.1 bar", false},
	} {
		if got := mustLimit(t, c.limit).Holds(mustParse(t, c.amount)); got != c.want {
			t.Errorf("%q holds %q: %t, want %t", c.limit, c.amount, got, c.want)
		}
	}
}

func TestBounds(t *testing.T) {
	for _, c := range []struct {
		limit     string
		low, high float64
	}{
		{"at most 5 V", math.Inf(-1), 5},
		{"at least 2 mm", 0.002, math.Inf(1)},
		{"20 to 100 cN·m", 0.2, 1},
		{"20 ± 2 °C", 291.15, 295.15},
	} {
		low, high := mustLimit(t, c.limit).Bounds()
		if low != c.low && !near(low, c.low, 1e-12) || high != c.high && !near(high, c.high, 1e-12) {
			t.Errorf("%s is bounded by %g and %g, want %g and %g", c.limit, low, high, c.low, c.high)
		}
	}
}

func TestNumbersOfALimit(t *testing.T) {
	for limit, want := range map[string][]string{
		"20 to 100 N·m": {"20 N·m", "100 N·m"}, "at most 5 V dc": {"5 V dc"}, "180 ± 4 bar": {"180 bar"}, "5 bar": {"5 bar"},
	} {
		numbers := mustLimit(t, limit).Numbers()
		var got []string
		for _, n := range numbers {
			got = append(got, n.String())
		}
		if len(got) != len(want) || got[0] != want[0] || got[len(got)-1] != want[len(want)-1] {
			t.Errorf("%s states %q, want %q", limit, got, want)
		}
	}
}

func TestParseSerials(t *testing.T) {
	for text, want := range map[string][2]int{
		"101 to 130": {101, 130}, "101": {101, 101}, " 7 to 7 ": {7, 7}, "999999999": {999999999, 999999999}, "0": {0, 0},
	} {
		from, to, err := quantity.ParseSerials(text)
		if err != nil || from != want[0] || to != want[1] {
			t.Errorf("ParseSerials(%q) = %d, %d, %v; want %v", text, from, to, err, want)
		}
	}
	const mend = "write a serial number or a range of them, such as 101 to 130"
	for _, b := range []bad{
		{"", "the serial number is empty", mend, 0, quantity.NoNumber},
		{"all", `there is no number in "all"`, mend, 0, quantity.NoNumber},
		{"-3", `"-3" has a minus sign where there can be none`, "leave the minus sign out", 0, quantity.BadNumber},
		{"010", `"010" begins with a zero`, "write 10", 0, quantity.BadNumber},
		{"101-130", `"101-130" is a range with a dash`, "write 101 to 130", 0, quantity.BadNumber},
		{"101.5", `"101.5" must be a whole number`, mend, 0, quantity.BadNumber},
		{"1234567890", `"1234567890" has too many digits`, "write at most 9 digits", 0, quantity.BadNumber},
		{"130 to 101", `"130 to 101" is in the wrong order`, "write the smaller end first", 0, quantity.OutOfOrder},
		{"101 to", `"to" is left over after the serial number`, mend, 0, quantity.TrailingText},
		{"101 to 010", `"010" begins with a zero`, "write 10", 0, quantity.BadNumber},
		{"101 up", `"up" is left over after the serial number`, mend, 0, quantity.TrailingText},
		{"101 ±", `"±" is left over after the serial number`, mend, 0, quantity.TrailingText},
	} {
		_, _, err := quantity.ParseSerials(b.text)
		b.check(t, err)
	}
}

// What can be below nothing, by what it is: a gauge in a vacuum, a length that points
// backwards, a temperature; no torque, no mass and no time.
func TestWhatCanBeBelowNothing(t *testing.T) {
	for text, can := range map[string]bool{
		"-1 N·m": false, "-1 Ω": false, "-1 µF": false, "-1 Hz": false, "-1 s": false, "-1 months": false, "-1 kg": false, "-1 L": false,
		"-1 each": false, "-1 mg/L": false, "-1 NTU": false, "-1 µS/cm": false, "-1 drops": false,
		"-1 bar": true, "-1 V dc": true, "-1 A": true, "-1 kW": true, "-1 mm": true, "-1 kN": true, "-1 °C": true, "-1°": true, "-1 rpm": true,
		"-1 km/h": true, "-1 %": true, "-1 pH": true, "-1 dB": true, "-1 turns": true,
	} {
		if q, err := quantity.Parse(text, quantity.None); (err == nil) != can {
			t.Errorf("%s: %s, %v", text, q, err)
		}
	}
}
