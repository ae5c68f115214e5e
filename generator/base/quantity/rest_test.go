package quantity_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"baybinder/generator/base/quantity"
)

// What stands in place of a wrong piece is given only where one thing can be
// meant: an editor puts it in unasked.
func TestRightIsGivenWhereOneThingIsMeant(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  quantity.Dimension
		limit bool
		right string
	}{
		{"10 ml", quantity.Volume, false, "mL"},
		{"10 ml", quantity.None, false, "mL"},
		{"10 ml", quantity.Torque, false, ""}, // no torque is in mL
		{"10 stones", quantity.Mass, false, ""},
		{"007 bar", quantity.Pressure, false, "7"},
		{"00 bar", quantity.Pressure, false, "0"},
		{"00.5 bar", quantity.Pressure, false, "0.5"},
		{"6-8 bar", quantity.Pressure, true, "6 to 8 bar"},
		{"6 – 8 bar", quantity.Pressure, true, "6 to 8 bar"},
		{"6-8 bar", quantity.Pressure, false, ""}, // one amount is wanted: which of them is not known
		{"6- bar", quantity.Pressure, true, ""},
		{"3,5 kg", quantity.Mass, false, "3.5"},
		{"0,125 kg", quantity.Mass, false, "0.125"},
		{"1,500 kg", quantity.Mass, false, ""}, // 1.5 or 1500
		{"1,500,000 kg", quantity.Mass, false, ""},
		{"1,500.5 kg", quantity.Mass, false, ""},
		{"14", quantity.Mass, false, ""},
	} {
		_, err := quantity.Parse(c.text, c.want)
		if c.limit {
			_, err = quantity.ParseLimit(c.text, c.want)
		}
		var bad *quantity.Error
		if !errors.As(err, &bad) {
			t.Errorf("%q is read", c.text)
			continue
		}
		if got := bad.Right(); got != c.right {
			t.Errorf("%q: %q stands in place of %q, want %q", c.text, got, bad.Text, c.right)
		}
	}
}

// What is said of an amount that cannot be read, and how to write it.
func TestErrorsNobodyElseMeets(t *testing.T) {
	for _, c := range []struct {
		text, form string
		want       quantity.Dimension
		says, mend string
	}{
		{"", "limit", quantity.Length, "the limit is empty", "write a limit, such as 0.5 to 2 mm"},
		{"  ", "range", quantity.Torque, "the range is empty", "write a range, such as 20 to 100 N·m"},
		{"", "serials", quantity.Count, "the serial number is empty", "write a serial number or a range of them, such as 101 to 130"},
		{"", "amount", quantity.Calendar, "the calendar time is empty", "write a calendar time, such as 12 months"},
		{"6-x bar", "limit", quantity.Pressure, `"6-x bar" is a range with a dash`, "write the word to between the two ends, such as 20 to 100"},
		{"10 m", "limit", quantity.Torque, `"10 m" is a length, not a torque`, "write a limit, such as 20 to 100 N·m"},
		{"1,234,567 kg", "amount", quantity.Mass, `"1,234,567" has a comma in it`, "write 1234567 without commas"},
		{"1,500 kg", "amount", quantity.Mass, `"1,500" has a comma in it`, "write 1.500, with a decimal point, or 1500 without the comma"},
		{"10", "amount", quantity.Force, `"10" has no unit`, "write a force, such as 200 N; its units are N, kN, lbf and kgf"},
		{"10", "amount", quantity.Turbidity, `"10" has no unit`, "write a turbidity, such as 1 NTU"},
		{"10", "amount", quantity.None, `"10" has no unit`, "write its unit behind it, such as 10 bar or 10 min; of a count, 10 each"},
	} {
		var err error
		switch c.form {
		case "limit":
			_, err = quantity.ParseLimit(c.text, c.want)
		case "range":
			_, err = quantity.ParseRange(c.text, c.want)
		case "serials":
			_, _, err = quantity.ParseSerials(c.text)
		default:
			_, err = quantity.Parse(c.text, c.want)
		}
		var bad *quantity.Error
		if !errors.As(err, &bad) {
			t.Errorf("%q is read", c.text)
			continue
		}
		if bad.Error() != c.says || bad.Mend().String() != c.mend {
			t.Errorf("%q: %s\n\t%s\nwant %s\n\t%s", c.text, bad, bad.Mend(), c.says, c.mend)
		}
	}
	_, err := quantity.Parse("3 mm", quantity.Mass)
	var bad *quantity.Error
	if errors.As(err, &bad); bad != nil {
		bad.Like = "14 kg, a whole pump"
		if got := bad.Mend().String(); got != "write a mass, such as 14 kg, a whole pump" {
			t.Errorf("with an example of the place: %q", got)
		}
	}
}

// All of a part within a limit, the ends included; a difference that only the
// arithmetic of a conversion makes is none.
func TestContains(t *testing.T) {
	for _, c := range []struct {
		limit, part string
		holds       bool
	}{
		{"10 to 20 mm", "10 to 20 mm", true},
		{"10 to 20 mm", "12 to 15 mm", true},
		{"10 to 20 mm", "9.9 to 15 mm", false},
		{"10 to 20 mm", "12 to 20.1 mm", false},
		{"10 to 20 mm", "1.0 to 2.0 cm", true},
		{"1 to 2 in", "25.4 to 50.8 mm", true},
		{"25.4 to 50.8 mm", "1 to 2 in", true},
		{"10 to 20 mm", "10 to 20 bar", false},
		{"at most 5 V dc", "1 to 4 V ac", false},
		{"at most 5 V dc", "1 to 4 V", true},
		{"at most 5 mm", "at most 5 mm", true},
		{"at most 5 mm", "at most 6 mm", false},
		{"at least 5 mm", "at least 6 mm", true},
		{"at least 5 mm", "at least 4 mm", false},
		{"at most 5 mm", "at least 1 mm", false},
		{"10 ± 1 mm", "9.5 to 10.5 mm", true},
		{"10 ± 1 mm", "8.9 to 10 mm", false},
	} {
		if got := mustLimit(t, c.limit).Contains(mustLimit(t, c.part)); got != c.holds {
			t.Errorf("%s is within %s: %v", c.part, c.limit, got)
		}
	}
}

// The ends, by hand, as they are printed.
func TestEndsOfALimit(t *testing.T) {
	for text, want := range map[string][2]string{
		"6 to 8 bar": {"6 bar", "8 bar"}, "0.5 to 1 h": {"0.5 h", "1 h"}, "180 ± 4 bar": {"176 bar", "184 bar"}, "2.0 ± 0.1 mm": {"1.9 mm", "2.1 mm"},
		"110 N·m ± 5 %": {"104.5 N·m", "115.5 N·m"}, "7 bar ± 3.33333 %": {"6.76667 bar", "7.23333 bar"}, "24 ± 1 V dc": {"23 V dc", "25 V dc"}, "at most 8 bar": {}, "8 bar": {},
	} {
		low, high, ok := mustLimit(t, text).Ends()
		if got := [2]string{low.String(), high.String()}; ok != (want[0] != "") || ok && got != want {
			t.Errorf("the ends of %s are %v (%v), want %v", text, got, ok, want)
		}
	}
}

func TestMostOfALimit(t *testing.T) {
	for text, want := range map[string]string{
		"at most 8 bar": "8 bar", "6 to 8 bar": "8 bar", "8 bar": "8 bar", "7.5 ± 0.5 bar": "8 bar", "180 ± 4 bar": "184 bar",
		"2.0 ± 0.1 mm": "2.1 mm", "24 ± 1 V dc": "25 V dc", "9.9 ± 0.2 mm": "10.1 mm", "at least 6 bar": "",
	} {
		most, ok := mustLimit(t, text).Most()
		if got := most.String(); ok != (want != "") || ok && got != want && !near(most.Base(), mustParse(t, want).Base(), 1e-9) {
			t.Errorf("the most of %s is %s (%v), want %s", text, got, ok, want)
		}
	}
	if _, ok := (quantity.Limit{}).Most(); ok {
		t.Error("no limit has a most")
	}
}

// Units that are one but for the prefix (SI prefixes), and those that are not.
func TestLike(t *testing.T) {
	for _, c := range []struct {
		a, b string
		like bool
	}{
		{"mL", "L", true}, {"V", "kV", true}, {"mV", "kV", true}, {"mm", "m", true}, {"cm", "mm", true}, {"Pa", "MPa", true}, {"µF", "F", true}, {"g", "kg", true}, {"bar", "mbar", true},
		{"bar", "bar", true}, {"bar", "Pa", false}, {"min", "in", false}, {"m", "min", false}, {"L", "m³", false}, {"ft", "in", false}, {"kg", "lb", false}, {"N·m", "cN·m", true}, {"ppm", "m", false}, {"mi", "in", false}, {"months", "h", false},
	} {
		if got := mustUnit(t, c.a).Like(mustUnit(t, c.b)); got != c.like || mustUnit(t, c.b).Like(mustUnit(t, c.a)) != got {
			t.Errorf("%s is like %s: %v", c.a, c.b, got)
		}
	}
	for _, text := range []string{"", "N·m ", "N·mm", "stone", "5 mm"} {
		if u, ok := quantity.UnitNamed(text); ok {
			t.Errorf("%q is the unit %s", text, u.Symbol())
		}
	}
}

// Two amounts that make one range are one place of a sentence.
func TestPlaces(t *testing.T) {
	for text, want := range map[string]string{
		"Tighten to 20 N·m to 30 N·m, then 60°.": "20 N·m to 30 N·m|60°",
		"20 to 30 N·m":     "20 to 30 N·m",
		"2.0 ± 0.1 mm":     "2.0 ± 0.1 mm",
		"5 bar – 6 bar":    "5 bar – 6 bar",
		"de 5 bar a 6 bar": "5 bar a 6 bar",
		"5 bar, 6 bar":     "5 bar|6 bar",
		"5 bar and 6 bar":  "5 bar|6 bar",
		"no figures":       "",
	} {
		var got []string
		for _, p := range quantity.Places(text) {
			got = append(got, text[p.Start:p.End])
		}
		if strings.Join(got, "|") != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// A dimension is known by its word, and what is none is None.
func TestDimensionNamed(t *testing.T) {
	for word, want := range map[string]quantity.Dimension{"torque": quantity.Torque, "calendar time": quantity.Calendar, "count": quantity.Count, "conductivity": quantity.Conductivity, "number of drops": quantity.Drops, "amount": quantity.None, "colour": quantity.None, "": quantity.None} {
		if got := quantity.DimensionNamed(word); got != want {
			t.Errorf("%q is %s", word, got)
		}
	}
	for d, want := range map[quantity.Dimension]string{quantity.Torque: "a torque", quantity.Angle: "an angle", quantity.Acidity: "an acidity", quantity.None: "an amount", quantity.Drops: "a number of drops"} {
		if got := d.InWords().String(); got != want {
			t.Errorf("in words %q, want %q", got, want)
		}
	}
}

// Calendar amounts lead from date to date: years and months first, then days;
// a day that a month does not have is its last. The dates are of the Gregorian
// calendar, 2028 a leap year.
func TestSpansLeadToDates(t *testing.T) {
	for _, c := range []struct{ from, span, to string }{
		{"2027-01-31", "1 months", "2027-02-28"}, {"2028-01-31", "1 months", "2028-02-29"}, {"2028-02-29", "1 years", "2029-02-28"}, {"2028-02-29", "4 years", "2032-02-29"},
		{"2027-12-31", "2 months", "2028-02-29"}, {"2027-03-30", "11 months", "2028-02-29"}, {"2027-11-30", "1 months", "2027-12-30"}, {"2027-12-15", "1 months", "2028-01-15"},
		{"2027-12-31", "1 days", "2028-01-01"}, {"2028-02-28", "1 days", "2028-02-29"}, {"2027-02-22", "1 weeks", "2027-03-01"}, {"2027-01-01", "365 days", "2028-01-01"},
		{"2027-05-31", "6 months", "2027-11-30"}, {"2027-08-31", "12 months", "2028-08-31"}, {"2027-08-31", "18 months", "2029-02-28"},
	} {
		q, err := quantity.Parse(c.span, quantity.Calendar)
		if err != nil {
			t.Fatal(err)
		}
		span, ok := q.Span()
		from, _ := time.Parse(time.DateOnly, c.from)
		if got := span.AddTo(from).Format(time.DateOnly); !ok || got != c.to {
			t.Errorf("%s and %s is %s (%v), want %s", c.from, c.span, got, ok, c.to)
		}
	}
	if _, ok := mustParse(t, "90 min").Span(); ok {
		t.Error("90 min is a calendar amount")
	}
}

// Sums have the decimals of the finer, as typed, and no zeros that nobody
// typed; another dimension is left out.
func TestPlus(t *testing.T) {
	for _, c := range []struct{ a, b, sum string }{
		{"1.5 L", "250 mL", "1.75 L"}, {"1.50 L", "0.5 L", "2.0 L"}, {"2 L", "3 L", "5 L"}, {"1.25 L", "0.75 L", "2.00 L"}, {"9 kg", "1 kg", "10 kg"}, {"1 kg", "100 g", "1.1 kg"},
		{"1 L", "1 kg", "1 L"}, {"500 mL", "1 L", "1500 mL"}, {"0.4 L", "0.6 L", "1.0 L"},
	} {
		if got := mustParse(t, c.a).Plus(mustParse(t, c.b)); got.String() != c.sum {
			t.Errorf("%s and %s are %s, want %s", c.a, c.b, got, c.sum)
		}
	}
}

// A text of forty signs and more is not offered whole, and what a message
// repeats of it is cut between two letters.
func TestLongTextsAreCut(t *testing.T) {
	long := strings.Repeat("ä", 30)
	_, err := quantity.Parse("5 "+long, quantity.Length)
	if said := fmt.Sprint(err); !strings.Contains(said, strings.Repeat("ä", 20)+"…") || strings.Contains(said, strings.Repeat("ä", 21)) {
		t.Errorf("said: %s", said)
	}
	_, err = quantity.ParseLimit("20 ft-lbf to 000000000000000000000000000000000000030 Nm", quantity.Torque)
	if err == nil {
		t.Error("zeros before a number are read")
	}
}
