package quantity_test

import (
	"testing"
	"time"

	"baybinder/generator/base/quantity"
)

// Known: SEEN, FROM MEMORY.

func date(t *testing.T, text string) time.Time {
	t.Helper()
	d, err := time.Parse(time.DateOnly, text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func TestAddTo(t *testing.T) {
	for _, c := range []struct{ from, amount, want, source string }{
		{"2007-03-31", "1 month", "2007-04-30", "the worked case of a public calendar library's plusMonths, from memory"},
		{"2008-02-29", "1 year", "2009-02-28", "the same library's plusYears, from memory"},
		{"2026-01-31", "1 month", "2026-02-28", "2026 is no leap year"},
		{"2024-01-31", "1 month", "2024-02-29", "2024 is a leap year"},
		{"1900-01-31", "1 month", "1900-02-28", "1900 was no leap year, Gregorian rule"},
		{"2000-01-31", "1 month", "2000-02-29", "2000 was a leap year, Gregorian rule"},
		{"2026-12-31", "2 months", "2027-02-28", "over the year's end"},
		{"2026-01-31", "2 months", "2026-03-31", "the clamped month in between does not stick"},
		{"2024-02-29", "4 years", "2028-02-29", "leap year to leap year"},
		{"1858-11-17", "51544 days", "2000-01-01", "modified Julian day 51544, from memory"},
		{"1970-01-01", "11574 days", "2001-09-09", "Unix time 1 000 000 000 is 2001-09-09 01:46:40 UTC, from memory"},
		{"1970-01-01", "10957 days", "2000-01-01", "Unix time 946 684 800 is 2000-01-01, from memory"},
		{"1600-03-01", "400 years", "2000-03-01", "the Gregorian cycle"},
		{"2026-03-02", "12 months", "2027-03-02", "plain"},
		{"2026-03-02", "2 weeks", "2026-03-16", "plain"},
		{"2026-01-31", "1 month 1 day", "2026-03-01", "months first, then days"},
		{"2026-03-02", "1 year 6 months", "2027-09-02", "plain"},
	} {
		q, err := quantity.Parse(c.amount, quantity.Calendar)
		if err != nil {
			t.Fatal(err)
		}
		s, ok := q.Span()
		if got := s.AddTo(date(t, c.from)).Format(time.DateOnly); !ok || got != c.want {
			t.Errorf("%s and %s is %s, want %s (%s)", c.from, c.amount, got, c.want, c.source)
		}
	}
}

// 400 Gregorian years have 146 097 days (from memory), which is what makes the
// mean year of Base 365.2425 days long.
func TestMeanYear(t *testing.T) {
	from := date(t, "1600-03-01")
	to := (quantity.Span{Years: 400}).AddTo(from)
	if days := (to.Unix() - from.Unix()) / 86400; days != 146097 {
		t.Errorf("400 years have %d days", days)
	}
	if got := mustParse(t, "400 years").Base(); !near(got, 146097, 1e-12) {
		t.Errorf("400 years are %g days in the base unit", got)
	}
}

// The date is the one that the clock on the wall shows.
func TestAddToTakesTheDateAsShown(t *testing.T) {
	late := time.Date(2026, 1, 31, 23, 30, 0, 0, time.FixedZone("west", -8*3600))
	got := quantity.Span{Days: 1}.AddTo(late)
	if want := time.Date(2026, 2, 1, 0, 0, 0, 0, time.UTC); got != want {
		t.Errorf("the day after is %s, want %s", got, want)
	}
}

func TestSpanOf(t *testing.T) {
	for text, want := range map[string]quantity.Span{
		"12 months": {Months: 12}, "1 year 6 months": {Years: 1, Months: 6}, "2 weeks": {Days: 14},
		"14 days": {Days: 14}, "1 year 2 weeks": {Years: 1, Days: 14},
	} {
		if got, ok := mustParse(t, text).Span(); !ok || got != want {
			t.Errorf("%s spans %+v, %t; want %+v", text, got, ok, want)
		}
	}
	for _, text := range []string{"90 min", "5 V", "1.5 d"} {
		if got, ok := mustParse(t, text).Span(); ok {
			t.Errorf("%s spans %+v", text, got)
		}
	}
}
