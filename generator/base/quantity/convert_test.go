package quantity_test

import (
	"testing"

	"baybinder/generator/base/quantity"
)

// What the second unit should read follows from the rule at In and the exact values of GNU
// units 2.22 given beside them.
func TestPrintedSecondUnit(t *testing.T) {
	for _, c := range []struct{ amount, unit, want, exact string }{
		{"110 N·m", "lbf·ft", "81 lbf·ft", "81.1318364"},
		{"25 N·m", "lbf·ft", "18.4 lbf·ft", "18.4390537: 18 would be 2.4 % low"},
		{"9 N·m", "lbf·ft", "6.6 lbf·ft", "6.63805934"},
		{"48 N·m", "lbf·ft", "35.4 lbf·ft", "35.4029832: 35 would be 1.1 % low"},
		{"240 N·m", "lbf·ft", "177 lbf·ft", "177.014916"},
		{"10 bar", "psi", "145 psi", "145.037738: 150 would be 3.4 % high"},
		{"210 bar", "psi", "3050 psi", "3045.79249"},
		{"8.5 bar", "psi", "123 psi", "123.282077"},
		{"250 kg", "lb", "551 lb", "551.155655"},
		{"2.4 L", "gal", "0.63 gal", "0.634012926"},
		{"0.35 mm", "thou", "13.8 thou", "13.7795276: 14 would be 1.6 % high"},
		{"1 mm", "m", "0.001 m", "exact: one digit is enough"},
		{"2 ft", "m", "0.61 m", "0.6096, exact by definition: 0.6 would have one digit"},
		{"0.5 m", "mm", "500 mm", "exact"},
		{"360 V dc", "kV", "0.360 kV dc", "exact"},
		{"0 bar", "psi", "0 psi", "zero"},
		{"-18 °C", "°F", "0 °F", "−0.4"},
		{"0 K", "°F", "−459.67 °F", "exact by definition: −460 would be too cold"},
		{"36.6 °C", "°F", "97.9 °F", "97.88"},
		{"1 h 30 min", "h", "1.50 h", "exact"},
		{"2 weeks", "d", "14 d", "exact"},
	} {
		got := mustParse(t, c.amount).In(mustUnit(t, c.unit))
		if got.String() != c.want {
			t.Errorf("%s is printed as %s, want %s (%s)", c.amount, got, c.want, c.exact)
		}
	}
}

func TestDigitsAfterIn(t *testing.T) {
	got := mustParse(t, "210 bar").In(quantity.PoundPerSquareInch)
	if got.Digits != 3 || got.Decimals != -1 {
		t.Errorf("3050 psi has %d digits and %d decimals", got.Digits, got.Decimals)
	}
	if back := got.In(quantity.Bar); !near(back.Value, 210, 1e-12) {
		t.Errorf("the way back gives %.15g bar", back.Value)
	}
}

// A unit of another kind changes nothing, and no month becomes a number of days.
func TestInLeavesWhatItCannotConvert(t *testing.T) {
	months, err := quantity.Parse("2 months", quantity.Calendar)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		q quantity.Quantity
		u quantity.Unit
	}{
		{mustParse(t, "5 V"), quantity.Ampere}, {mustParse(t, "5 V"), quantity.Bare},
		{months, quantity.CalendarDay}, {mustParse(t, "1 year 3 days"), quantity.Year},
		{mustParse(t, "1 year 3 days"), quantity.CalendarWeek},
	} {
		if got := c.q.In(c.u); got != c.q {
			t.Errorf("%s in %q became %s", c.q, c.u, got)
		}
	}
	if got := mustParse(t, "2 years").In(quantity.Month).String(); got != "24 months" {
		t.Errorf("2 years are %s", got)
	}
}

func TestAs(t *testing.T) {
	for _, c := range []struct {
		text string
		read quantity.Dimension
		as   quantity.Dimension
		want string // nothing where it cannot be
	}{
		{"14 days", quantity.Duration, quantity.Calendar, "14 days"},
		{"14 days", quantity.Calendar, quantity.Duration, "14 d"},
		{"2 weeks", quantity.Duration, quantity.Calendar, "2 weeks"},
		{"2 weeks 3 days", quantity.Duration, quantity.Calendar, "2 weeks 3 d"},
		{"1.5 d", quantity.Duration, quantity.Calendar, ""},
		{"48 h", quantity.Duration, quantity.Calendar, ""},
		{"200000 d", quantity.Duration, quantity.Calendar, ""},
		{"2 months", quantity.Calendar, quantity.Duration, ""},
		{"1 month 3 days", quantity.Calendar, quantity.Duration, ""},
		{"5 V", quantity.Voltage, quantity.Current, ""},
		{"5 V", quantity.Voltage, quantity.Voltage, "5 V"},
	} {
		q, err := quantity.Parse(c.text, c.read)
		if err != nil {
			t.Fatal(err)
		}
		got, ok := q.As(c.as)
		if ok != (c.want != "") || ok && got.String() != c.want || q.Fits(c.as) != ok {
			t.Errorf("%s as %s is %s, %t; want %q", c.text, c.as, got, ok, c.want)
		}
	}
}

func TestAgrees(t *testing.T) {
	for _, c := range []struct {
		typed, register string
		want            bool
	}{
		{"110 N·m", "110 N·m", true},
		{"100 N·m", "110 N·m", false},
		{"81 lbf·ft", "110 N·m", true},
		{"81.1 lbf·ft", "110 N·m", true},  // 81.1318364
		{"81.13 lbf·ft", "110 N·m", true}, // 81.1318364
		{"81.14 lbf·ft", "110 N·m", false},
		{"82 lbf·ft", "110 N·m", false},
		{"80 lbf·ft", "110 N·m", false},
		{"3046 psi", "210 bar", true},  // 3045.79249
		{"3050 psi", "210 bar", true},  // as it is printed beside the bar
		{"3045 psi", "210 bar", false}, //
		{"3000 psi", "210 bar", false},
		{"212 °F", "100 °C", true}, // 211.99999999999997 in some arithmetic
		{"211 °F", "100 °C", false},
		{"149 °F", "65 °C", true},
		{"2 mm", "2.4 mm", true},
		{"2 mm", "2.5 mm", true}, // half way: both ways of rounding are in use
		{"3 mm", "2.5 mm", true},
		{"2 mm", "2.6 mm", false},
		{"2.0 mm", "2.04 mm", true},
		{"2.0 mm", "2.06 mm", false},
		{"0.4 mm", "0.35 mm", true},
		{"0 bar", "0.3 bar", true}, // rounded to the typed digits
		{"0 psi", "0 bar", true},
		{"32 °F", "0 °C", true},
		{"-20 °C", "-20 °C", true},
		{"20 °C", "-20 °C", false},
		{"360 V", "360 V dc", true},
		{"360 V dc", "360 V", true},
		{"360 V ac", "360 V dc", false},
		{"0.36 kV", "360 V dc", true},
		{"360 A", "360 V dc", false},
		{"60 min", "1 h", true},
		{"90 min", "1 h 30 min", true},
		{"1 h 30 min", "90 min", true},
		{"1 h 31 min", "90 min", false},
		{"1.5 h", "90 min", true},
		{"2 weeks", "14 days", true},
		{"1 year", "12 months", true},
		{"1 year", "11 months", false},
		{"30 days", "1 month", false},
	} {
		if got := quantity.Agrees(mustParse(t, c.typed), mustParse(t, c.register)); got != c.want {
			t.Errorf("%s typed for %s agrees: %t, want %t", c.typed, c.register, got, c.want)
		}
	}
}

// What a sentence calls days is a duration until it is compared with a
// register's calendar time.
func TestAgreesAcrossDaysOfClockAndCalendar(t *testing.T) {
	register, err := quantity.Parse("14 days", quantity.Calendar)
	if err != nil {
		t.Fatal(err)
	}
	for typed, want := range map[string]bool{"14 days": true, "2 weeks": true, "15 days": false, "1.5 weeks": false} {
		if got := quantity.Agrees(mustParse(t, typed), register); got != want {
			t.Errorf("%s typed for %s agrees: %t", typed, register, got)
		}
	}
}
