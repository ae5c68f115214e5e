package plot

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// Known: DERIVED, FROM MEMORY.

// The rows are worked out by hand from the rule of Heckbert's article: the least
// step of 1, 2 or 5 times a power of ten that encloses the data with no more
// ticks than asked. Its own figure, 105 to 543 as 100 to 600 by hundreds, is
// quoted from memory.
func TestScaleFor(t *testing.T) {
	for _, c := range []struct {
		values []float64
		want   string
	}{
		{[]float64{105, 543}, "100 200 300 400 500 600"},
		{[]float64{0, 5}, "0 1 2 3 4 5"},
		{[]float64{0.4, 5, 0.2}, "0 1 2 3 4 5"},
		{[]float64{0.02, 0.08}, "0.02 0.03 0.04 0.05 0.06 0.07 0.08"},
		{[]float64{225, 235, 231.5}, "224 226 228 230 232 234 236"},
		{[]float64{0.15, 0.03}, "0.02 0.04 0.06 0.08 0.10 0.12 0.14 0.16"},
		{[]float64{2.0}, "1.8 1.9 2.0 2.1 2.2"},
		{[]float64{0}, "0.0 0.2 0.4 0.6 0.8 1.0"},
		{nil, "0.0 0.2 0.4 0.6 0.8 1.0"},
		{[]float64{-12, 30}, "-20 -10 0 10 20 30"},
		{[]float64{-3, -3}, "-3.3 -3.2 -3.1 -3.0 -2.9 -2.8 -2.7"},
		{[]float64{1, 500}, "0 100 200 300 400 500"},
		{[]float64{0, 999999999999}, "0 200000000000 400000000000 600000000000 800000000000 1000000000000"},
		{[]float64{0.1, 0.1 + 0.2}, "0.10 0.15 0.20 0.25 0.30"},
	} {
		s := ScaleFor(c.values, 8)
		var got []string
		for _, tick := range s.Ticks {
			got = append(got, s.Label(tick))
		}
		if text := strings.Join(got, " "); text != c.want {
			t.Errorf("%v: %s, want %s", c.values, text, c.want)
		}
	}
}

// Whatever the values: every one is on the axis, its ticks are round, evenly
// apart, not too many and not far from what is needed.
func TestScaleHoldsEveryValue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		values := rapid.SliceOfN(rapid.Float64Range(-1e9, 1e9), 1, 9).Draw(t, "values")
		size := math.Pow10(rapid.IntRange(-9, 3).Draw(t, "size"))
		for i := range values {
			values[i] *= size
		}
		most := rapid.IntRange(3, 9).Draw(t, "most")
		s := ScaleFor(values, most)
		if n := len(s.Ticks); n < 2 || n > most {
			t.Fatalf("%d ticks", n)
		}
		step := s.Ticks[1] - s.Ticks[0]
		digit := step / math.Pow10(int(math.Floor(math.Log10(step)+1e-6)))
		if r := math.Round(digit); math.Abs(digit-r) > 1e-6 || r != 1 && r != 2 && r != 5 {
			t.Fatalf("the step is %g", step)
		}
		low, high := math.Inf(1), math.Inf(-1)
		for _, v := range values {
			low, high = min(low, v), max(high, v)
			if v < s.Low()-step*1e-6 || v > s.High()+step*1e-6 {
				t.Fatalf("%g is not between %g and %g", v, s.Low(), s.High())
			}
		}
		if low < high && (low-s.Low() > step || s.High()-high > step) {
			t.Fatalf("%v is too wide for %g to %g", s.Ticks, low, high)
		}
	})
}

func TestDatesFor(t *testing.T) {
	for _, c := range []struct{ first, last, want string }{
		{"2026-05-04", "2026-05-04", "01-02: 05-04"},
		{"2026-05-04", "2026-05-06", "01-02: 05-04 05-05 05-06"},
		{"2026-05-04", "2026-05-08", "01-02: 05-04 05-06 05-08"},
		{"2026-05-05", "2026-05-25", "01-02: 05-11 05-18 05-25"}, // 2026-05-11 is a Monday
		{"2026-02-25", "2026-03-02", "01-02: 02-25 02-27 03-01"},
		{"2026-05-04", "2026-06-20", "01-02: 05-04 05-18 06-01 06-15"},
		{"2026-05-04", "2026-08-20", "2006-01: 2026-06 2026-07 2026-08"},
		{"2026-04-01", "2026-11-25", "2006-01: 2026-04 2026-07 2026-10"},
		{"2026-04-02", "2027-11-25", "2006-01: 2026-07 2027-01 2027-07"},
		{"2024-02-29", "2028-02-29", "2006: 2025 2026 2027 2028"},
		{"2020-01-01", "2031-12-31", "2006: 2020 2025 2030"},
		{"2019-06-01", "2060-01-01", "2006: 2020 2040 2060"},
	} {
		most := 3
		if strings.Count(c.want, " ") > 3 {
			most = 4
		}
		first, _ := time.Parse(time.DateOnly, c.first)
		last, _ := time.Parse(time.DateOnly, c.last)
		d := DatesFor(first, last, most)
		got := d.Layout + ":"
		for _, at := range d.Ticks {
			got += " " + at.Format(d.Layout)
		}
		if got != c.want {
			t.Errorf("%s to %s: %s, want %s", c.first, c.last, got, c.want)
		}
	}
}

func TestDatesAreInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first := time.Date(2000, 1, 1, rapid.IntRange(0, 23).Draw(t, "hour"), 0, 0, 0, time.UTC).AddDate(0, 0, rapid.IntRange(0, 20000).Draw(t, "first"))
		last := first.AddDate(0, 0, rapid.IntRange(0, 20000).Draw(t, "days"))
		d := DatesFor(first, last, 3)
		if len(d.Ticks) < 1 || len(d.Ticks) > 3 {
			t.Fatalf("%v to %v: %d ticks", first, last, len(d.Ticks))
		}
		for i, at := range d.Ticks {
			if at.Before(first.AddDate(0, 0, -1)) || at.After(last) || i > 0 && !d.Ticks[i-1].Before(at) {
				t.Fatalf("%v to %v: %v", first, last, fmt.Sprint(d.Ticks))
			}
		}
	})
}
