package quantity_test

import (
	"errors"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
)

// The forms are those of the format page; where it is silent the handbook
// says what is read.
func TestParse(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  quantity.Dimension
		value float64
		unit  quantity.Unit
		print string
	}{
		{"110 N·m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110 Nm", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110 N.m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110 N m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110 N\u22C5m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110 N\u0387m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110N·m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110\u00A0N\u00A0m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"110\u202FN·m", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"  110 N·m\n", quantity.Torque, 110, quantity.NewtonMetre, "110 N·m"},
		{"50 cNm", quantity.Torque, 50, quantity.CentinewtonMetre, "50 cN·m"},
		{"81 ft-lb", quantity.Torque, 81, quantity.PoundForceFoot, "81 lbf·ft"},
		{"81 lb-ft", quantity.Torque, 81, quantity.PoundForceFoot, "81 lbf·ft"},
		{"81 ft·lb", quantity.Torque, 81, quantity.PoundForceFoot, "81 lbf·ft"},
		{"81 lbf ft", quantity.Torque, 81, quantity.PoundForceFoot, "81 lbf·ft"},
		{"81 lbf·ft", quantity.Torque, 81, quantity.PoundForceFoot, "81 lbf·ft"},
		{"90 in-lb", quantity.Torque, 90, quantity.PoundForceInch, "90 lbf·in"},
		{"5 kgf m", quantity.Torque, 5, quantity.KilogramForceMetre, "5 kgf·m"},
		{"360 V dc", quantity.Voltage, 360, quantity.Volt, "360 V dc"},
		{"230 V a.c.", quantity.Voltage, 230, quantity.Volt, "230 V ac"},
		{"60 V d.c.", quantity.Voltage, 60, quantity.Volt, "60 V dc"},
		{"60 Vdc", quantity.Voltage, 60, quantity.Volt, "60 V dc"},
		{"60 V DC", quantity.Voltage, 60, quantity.Volt, "60 V dc"},
		{"10 A dc", quantity.Current, 10, quantity.Ampere, "10 A dc"},
		{"210 bar", quantity.Pressure, 210, quantity.Bar, "210 bar"},
		{"-0.8 bar", quantity.Pressure, -0.8, quantity.Bar, "−0.8 bar"},
		{"4.5 L", quantity.Volume, 4.5, quantity.Litre, "4.5 L"},
		{"2.0 mm", quantity.Length, 2, quantity.Millimetre, "2.0 mm"},
		{"0 mm", quantity.Length, 0, quantity.Millimetre, "0 mm"},
		{"0.50 mm", quantity.Length, 0.5, quantity.Millimetre, "0.50 mm"},
		{"1000 \u03BCF", quantity.Capacitance, 1000, quantity.Microfarad, "1000 µF"},
		{"1000 \u00B5F", quantity.Capacitance, 1000, quantity.Microfarad, "1000 µF"},
		{"100 k\u2126", quantity.Resistance, 100, quantity.Kilohm, "100 kΩ"},
		{"100 k\u03A9", quantity.Resistance, 100, quantity.Kilohm, "100 kΩ"},
		{"-20 °C", quantity.Temperature, -20, quantity.Celsius, "−20 °C"},
		{"\u221220 °C", quantity.Temperature, -20, quantity.Celsius, "−20 °C"},
		{"-0 °C", quantity.Temperature, 0, quantity.Celsius, "0 °C"},
		{"20 \u2103", quantity.Temperature, 20, quantity.Celsius, "20 °C"},
		{"293 \u212A", quantity.Temperature, 293, quantity.Kelvin, "293 K"},
		{"60°", quantity.Angle, 60, quantity.Degree, "60°"},
		{"60 °", quantity.Angle, 60, quantity.Degree, "60°"},
		{"5%", quantity.Ratio, 5, quantity.Percent, "5 %"},
		{"3 gal (US)", quantity.Volume, 3, quantity.Gallon, "3 gal"},
		{"5 min", quantity.Duration, 5, quantity.Minute, "5 min"},
		{"5 m", quantity.Length, 5, quantity.Metre, "5 m"},
		{"60 min", quantity.Duration, 60, quantity.Minute, "60 min"},
		{"90s", quantity.Duration, 90, quantity.Second, "90 s"},
		{"8min", quantity.Duration, 8, quantity.Minute, "8 min"},
		{"1 h 30 min", quantity.Duration, 90, quantity.Minute, "1 h 30 min"},
		{"1h30min", quantity.Duration, 90, quantity.Minute, "1 h 30 min"},
		{"1 min 0.5 s", quantity.Duration, 60.5, quantity.Second, "1 min 0.5 s"},
		{"2 d", quantity.Duration, 2, quantity.Day, "2 d"},
		{"1 day", quantity.None, 1, quantity.Day, "1 d"},
		{"14 days", quantity.Calendar, 14, quantity.CalendarDay, "14 days"},
		{"99999 days", quantity.Calendar, 99999, quantity.CalendarDay, "99999 days"},
		{"-273.15 °C", quantity.Temperature, -273.15, quantity.Celsius, "−273.15 °C"}, // absolute zero
		{"23 h 59 min 59 s", quantity.Duration, 86399, quantity.Second, "23 h 59 min 59 s"},
		{"1 d", quantity.Calendar, 1, quantity.CalendarDay, "1 day"},
		{"1 week", quantity.Calendar, 1, quantity.CalendarWeek, "1 week"},
		{"1 week", quantity.Duration, 1, quantity.Week, "1 week"},
		{"2 weeks", quantity.Duration, 2, quantity.Week, "2 weeks"},
		{"12 months", quantity.Calendar, 12, quantity.Month, "12 months"},
		{"1 month", quantity.None, 1, quantity.Month, "1 month"},
		{"1 year 6 months", quantity.Calendar, 18, quantity.Month, "1 year 6 months"},
		{"4 each", quantity.Count, 4, quantity.Each, "4 each"},
		{"4", quantity.Count, 4, quantity.Each, "4 each"},
		{"750 rpm", quantity.RotationalSpeed, 750, quantity.RevolutionPerMinute, "750 rpm"},
		{"6 km/h", quantity.Speed, 6, quantity.KilometrePerHour, "6 km/h"},
		{"999999999999999 Pa", quantity.Pressure, 999999999999999, quantity.Pascal, "999999999999999 Pa"},
	} {
		got, err := quantity.Parse(c.text, c.want)
		if err != nil {
			t.Errorf("Parse(%q, %s): %v", c.text, c.want, err)
			continue
		}
		if got.Value != c.value || got.Unit != c.unit || got.String() != c.print {
			t.Errorf("Parse(%q, %s) = %g %s, printed %q; want %g %s, printed %q", c.text, c.want,
				got.Value, got.Unit, got, c.value, c.unit, c.print)
		}
	}
}

func TestTypedDigits(t *testing.T) {
	for _, c := range []struct {
		text             string
		digits, decimals int
	}{
		{"110 N·m", 3, 0}, {"9 N·m", 1, 0}, {"2.0 mm", 2, 1}, {"0.50 mm", 2, 2}, {"0.05 mm", 1, 2}, {"0 mm", 1, 0}, {"12.50 L", 4, 2}, {"1 h 30 min", 3, 0},
	} {
		q := mustParse(t, c.text)
		if q.Digits != c.digits || q.Decimals != c.decimals {
			t.Errorf("%s has %d digits and %d decimals, want %d and %d", c.text, q.Digits, q.Decimals, c.digits, c.decimals)
		}
	}
}

// What is counted has as many digits as are printed.
func TestDigitsOfElapsed(t *testing.T) {
	for seconds, digits := range map[int]int{0: 1, 9: 1, 10: 2, 59: 2, 9 * 60: 1, 10 * 60: 2, 99 * 3600: 2, 100 * 3600: 3} {
		if got := quantity.Elapsed(seconds); got.Digits != digits {
			t.Errorf("%s has %d digits, want %d", got, got.Digits, digits)
		}
	}
}

// bad is a text that is refused, with how the refusal speaks.
type bad struct {
	text, says, mend string
	want             quantity.Dimension
	kind             quantity.ErrorKind
}

// check reports how an error differs from what was expected of it.
func (b bad) check(t *testing.T, err error) {
	t.Helper()
	var e *quantity.Error
	if !errors.As(err, &e) {
		t.Errorf("%.40q gives %v, want an *Error", b.text, err)
		return
	}
	if e.Kind != b.kind || e.Error() != b.says || e.Mend().String() != b.mend {
		t.Errorf("%.40q gives kind %d\n\t%s\n\t%s\nwant kind %d\n\t%s\n\t%s", b.text, e.Kind, e, e.Mend(), b.kind, b.says, b.mend)
	}
	if e.Start < 0 || e.End < e.Start || e.End > len(b.text) || b.text[e.Start:e.End] != e.Text {
		t.Errorf("%.40q: the piece %.40q does not stand at %d to %d", b.text, e.Text, e.Start, e.End)
	}
}

const torque = "write a torque, such as 110 N·m"

func TestParseRefuses(t *testing.T) {
	for _, b := range []bad{
		{"", `the torque is empty`, torque, quantity.Torque, quantity.NoNumber},
		{"tight", `there is no number in "tight"`, torque, quantity.Torque, quantity.NoNumber},
		{"-", `there is no number in "-"`, torque, quantity.Torque, quantity.NoNumber}, // a dash for nothing, as tables have it
		{"+", `there is no number in "+"`, torque, quantity.Torque, quantity.NoNumber},
		{".", `there is no number in "."`, torque, quantity.Torque, quantity.NoNumber},
		{"NaN", `there is no number in "NaN"`, torque, quantity.Torque, quantity.NoNumber},
		{"Inf V", `there is no number in "Inf V"`, "write a voltage, such as 360 V dc", quantity.Voltage, quantity.NoNumber},
		{"- 20 °C", `"- 20 °C" does not begin with a number`, "write a temperature, such as 65 °C", quantity.Temperature, quantity.NoNumber},
		{"–5 V", `"–5 V" does not begin with a number`, "write a voltage, such as 360 V dc", quantity.Voltage, quantity.NoNumber}, // an en dash
		{"110", `"110" has no unit`, torque + "; its units are N·m, cN·m, lbf·ft, lbf·in and kgf·m", quantity.Torque, quantity.NoUnit},
		{"4", `"4" has no unit`, "write its unit behind it, such as 4 bar or 4 min; of a count, 4 each", quantity.None, quantity.NoUnit},
		{"1 h 30", `"30" has no unit`, "write a duration, such as 1 h 30 min; its units are s, min, h, d and weeks", quantity.Duration, quantity.NoUnit},
		{"60", `"60" has no unit`, "write a concentration, such as 50 mg/L; its units are mg/L and g/L", quantity.Concentration, quantity.NoUnit},
		{"4", `"4" has no unit`, "write a turbidity, such as 1 NTU", quantity.Turbidity, quantity.NoUnit},
		{"5 barg", `"barg" is not a unit that the manual knows`, "write a pressure, such as 210 bar", quantity.Pressure, quantity.UnknownUnit},
		{"5 lbs", `"lbs" is not a unit that the manual knows`, "write 5 lb", quantity.Mass, quantity.UnknownUnit},
		{"10 uF", `"uF" is not a unit that the manual knows`, "write 10 µF", quantity.Capacitance, quantity.UnknownUnit},
		{"5 N·mm", `"N·mm" is not a unit that the manual knows`, torque, quantity.Torque, quantity.UnknownUnit},
		{"5 kg/m³", `"kg/m³" is not a unit that the manual knows`, "write a mass, such as 14 kg", quantity.Mass, quantity.UnknownUnit},
		{"5 m2", `"m2" is not a unit that the manual knows`, "write a length, such as 2.5 mm", quantity.Length, quantity.UnknownUnit},
		{"110 V", `"110 V" is a voltage, not a torque`, torque, quantity.Torque, quantity.WrongDimension},
		{"60°", `"60°" is an angle, not a temperature`, "write a temperature, such as 65 °C", quantity.Temperature, quantity.WrongDimension},
		{"3 months", `"3 months" is a calendar time, not a duration`, "write a duration, such as 1 h 30 min", quantity.Duration, quantity.WrongDimension},
		{"90 min", `"90 min" is a duration, not a calendar time`, "write a calendar time, such as 12 months", quantity.Calendar, quantity.WrongDimension},
		{"10 kgf", `"10 kgf" is a force, not a mass`, "write a mass, such as 14 kg", quantity.Mass, quantity.WrongDimension},
		{"010 N·m", `"010" begins with a zero`, "write 10 N·m", quantity.Torque, quantity.BadNumber},
		{"00.5 mm", `"00.5" begins with a zero`, "write 0.5 mm", quantity.Length, quantity.BadNumber},
		{"00 mm", `"00" begins with a zero`, "write 0 mm", quantity.Length, quantity.BadNumber},
		{"1,5 bar", `"1,5" has a comma in it`, "write 1.5, with a decimal point", quantity.Pressure, quantity.BadNumber},
		{"1,500 psi", `"1,500" has a comma in it`, "write 1.500, with a decimal point, or 1500 without the comma", quantity.Pressure, quantity.BadNumber},
		{"1,500,000 Pa", `"1,500,000" has a comma in it`, "write 1500000 without commas", quantity.Pressure, quantity.BadNumber},
		{"1 000 N", `"1 000 N" is a number in pieces`, "write the number in one piece, such as 1000 or 1.5", quantity.Force, quantity.BadNumber},
		{"1_000 N", `"1_000 N" is a number in pieces`, "write the number in one piece, such as 1000 or 1.5", quantity.Force, quantity.BadNumber},
		{"1.2.3 V", `"1.2.3 V" is not a number as the manual writes it`, "write the number out in figures, such as 360 V dc", quantity.Voltage, quantity.BadNumber},
		{".5 bar", `".5 bar" is not a number as the manual writes it`, "write the number out in figures, such as 210 bar", quantity.Pressure, quantity.BadNumber},
		{"5. V", `"5. V" is not a number as the manual writes it`, "write the number out in figures, such as 360 V dc", quantity.Voltage, quantity.BadNumber},
		{"3/8 mm", `"3/8 mm" is not a number as the manual writes it`, "write the number out in figures, such as 2.5 mm", quantity.Length, quantity.BadNumber},
		{"1e3 Pa", `"1e3 Pa" is not a number as the manual writes it`, "write the number out in figures, such as 210 bar", quantity.Pressure, quantity.BadNumber},
		{"1e999 Pa", `"1e999 Pa" is not a number as the manual writes it`, "write the number out in figures, such as 210 bar", quantity.Pressure, quantity.BadNumber},
		{"0x10 V", `"0x10 V" is not a number as the manual writes it`, "write the number out in figures, such as 360 V dc", quantity.Voltage, quantity.BadNumber},
		{"+5 °C", `"+5 °C" is not a number as the manual writes it`, "leave the plus sign out", quantity.Temperature, quantity.BadNumber},
		{"20-100 N·m", `"20-100 N·m" is a range with a dash`, "write one amount, such as 110 N·m", quantity.Torque, quantity.BadNumber},
		{"1234567890123456 Pa", `"1234567890123456" has too many digits`, "write at most 15 digits, or a larger unit", quantity.Pressure, quantity.BadNumber},
		{"-5 N·m", `"-5 N·m" cannot be below zero`, torque, quantity.Torque, quantity.BadNumber},
		{"-300 °C", `"-300 °C" is below absolute zero`, "write a temperature, such as 65 °C", quantity.Temperature, quantity.BadNumber},
		{"2.5 each", `"2.5 each" must be a whole number`, "write a count, such as 4 each", quantity.Count, quantity.BadNumber},
		{"1.5 months", `"1.5 months" must be a whole number`, "write a calendar time, such as 12 months", quantity.Calendar, quantity.BadNumber},
		{"100000 days", `"100000 days" is too far ahead for a calendar`, "write a calendar time, such as 12 months", quantity.Calendar, quantity.BadNumber},
		{"1 h 60 min", `"60 min" belongs to the part before it`, "write the larger part first and whole, such as 1 h 30 min", quantity.Duration, quantity.BadNumber},
		{"1 h 1 h", `"1 h 1 h" is in the wrong order`, "write the larger part first and whole, such as 1 h 30 min", quantity.Duration, quantity.OutOfOrder},
		{"1 h 90 min", `"90 min" belongs to the part before it`, "write the larger part first and whole, such as 1 h 30 min", quantity.Duration, quantity.BadNumber},
		{"1.5 h 30 min", `"1.5 h" is a fraction, and a smaller part follows`, "write the larger part first and whole, such as 1 h 30 min", quantity.Duration, quantity.BadNumber},
		{"30 min 1 h", `"30 min 1 h" is in the wrong order`, "write the larger part first and whole, such as 1 h 30 min", quantity.Duration, quantity.OutOfOrder},
		{"1 h 1,5 min", `"1,5" has a comma in it`, "write 1.5, with a decimal point", quantity.Duration, quantity.BadNumber},
		{"1 h 5 mins", `"mins" is not a unit that the manual knows`, "write 1 h 5 min", quantity.Duration, quantity.UnknownUnit},
		{"--5 V", `"-5 V" has a minus sign where there can be none`, "leave the minus sign out", quantity.Voltage, quantity.BadNumber},
		{"5 min 30 N·m", `"30 N·m" is left over after the duration`, "write a duration, such as 1 h 30 min", quantity.Duration, quantity.TrailingText},
		{"120 ft lbs", `"120 ft" is a length, not a torque`, "write lbf·ft", quantity.Torque, quantity.WrongDimension},
		{"5 Ohm", `"Ohm" is not a unit that the manual knows`, "write 5 Ω", quantity.Resistance, quantity.UnknownUnit},
		{"5 m in", `"in" is left over after the length`, "write a length, such as 2.5 mm", quantity.Length, quantity.TrailingText},
		{"5 bar or so", `"or so" is left over after the pressure`, "write a pressure, such as 210 bar", quantity.Pressure, quantity.TrailingText},
		{"10 W dc", `"dc" is left over after the power`, "write a power, such as 5 kW", quantity.Power, quantity.TrailingText},
	} {
		_, err := quantity.Parse(b.text, b.want)
		b.check(t, err)
	}
}

func TestLongTextsAreCutInMessages(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("9", 1<<20) + " V", "5 " + strings.Repeat("µ", 1<<20), "5 x" + strings.Repeat("µ", 1<<20), strings.Repeat("x", 1<<20), "0." + strings.Repeat("0", 1<<20) + "1 V",
	} {
		_, err := quantity.Parse(text, quantity.Voltage)
		var e *quantity.Error
		if !errors.As(err, &e) {
			t.Fatalf("%.20q…: %v", text, err)
		}
		if len(e.Error()) > 200 || len(e.Mend().String()) > 200 || !strings.Contains(e.Error(), "…") || strings.Contains(e.Error(), `\x`) {
			t.Errorf("%.20q…: the message has %d bytes: %.60s", text, len(e.Error()), e)
		}
	}
}

// Each dimension's own examples must be read as that dimension, since they are
// what a mend tells people to write.
func TestExamplesAreRead(t *testing.T) {
	for _, d := range allDimensions() {
		q, err := quantity.Parse(d.Example(), d)
		if err != nil || q.String() != d.Example() {
			t.Errorf("%s: %q is read as %s, %v", d, d.Example(), q, err)
		}
		l, err := quantity.ParseRange(d.RangeExample(), d)
		if err != nil || l.String() != d.RangeExample() {
			t.Errorf("%s: %q is read as %s, %v", d, d.RangeExample(), l, err)
		}
	}
}

func TestDimensionInWords(t *testing.T) {
	for d, want := range map[quantity.Dimension]string{
		quantity.None: "an amount", quantity.Angle: "an angle", quantity.Torque: "a torque",
		quantity.RotationalSpeed: "a rotational speed", quantity.Drops + 1: "an amount",
	} {
		if got := d.Named(); got != want {
			t.Errorf("dimension %d is %q, want %q", d, got, want)
		}
	}
	if got := quantity.DimensionNamed("pressure"); got != quantity.Pressure {
		t.Errorf("pressure names %s", got)
	}
	if got := quantity.DimensionNamed("tightness"); got != quantity.None {
		t.Errorf("tightness names %s", got)
	}
}

func TestUnitNamed(t *testing.T) {
	for symbol, want := range map[string]quantity.Unit{
		"N·m": quantity.NewtonMetre, "ft-lb": quantity.PoundForceFoot, "days": quantity.Day, "gal (US)": quantity.Gallon,
	} {
		if got, ok := quantity.UnitNamed(symbol); !ok || got != want {
			t.Errorf("UnitNamed(%q) = %s, %t", symbol, got, ok)
		}
	}
	for _, symbol := range []string{"", "furlong", "bar ", "N·mm", "minutes"} {
		if got, ok := quantity.UnitNamed(symbol); ok {
			t.Errorf("UnitNamed(%q) = %s", symbol, got)
		}
	}
	if got := quantity.Unit(255).Symbol(); got != "" {
		t.Errorf("no unit has the symbol %q", got)
	}
}

// The text of a time is that of its amount.
func TestElapsedTextIsThatOfTheAmount(t *testing.T) {
	for _, seconds := range []int{-5, 0, 1, 59, 60, 61, 599, 600, 3599, 3600, 3601, 3660, 3661, 7325, 86400, 360000, 1234567} {
		if got, want := quantity.ElapsedText(seconds), quantity.Elapsed(seconds).String(); got != want {
			t.Errorf("%d s is printed %q, want %q", seconds, got, want)
		}
	}
}

func TestElapsed(t *testing.T) {
	for seconds, want := range map[int]string{
		0: "0 min", -5: "0 min", 59: "59 s", 60: "1 min", 3600: "1 h", 5400: "1 h 30 min", 3661: "1 h 1 min 1 s", 90000: "25 h",
	} {
		got := quantity.Elapsed(seconds)
		if got.String() != want {
			t.Errorf("%d seconds are %s, want %s", seconds, got, want)
		}
		if got != mustParse(t, want) {
			t.Errorf("%s is not the amount that is read from it", want)
		}
	}
}

func TestOf(t *testing.T) {
	for _, c := range []struct {
		value  float64
		digits int
		want   string
	}{{589.36, 2, "590 s"}, {9.96, 2, "10 s"}, {0.01234, 2, "0.012 s"}, {0, 2, "0.0 s"}, {-3.14159, 3, "−3.14 s"}} {
		if got := quantity.Of(c.value, quantity.Second, c.digits).String(); got != c.want {
			t.Errorf("%g to %d digits is %s, want %s", c.value, c.digits, got, c.want)
		}
	}
}
