// Package plot draws values that were measured over time, with their limit, as SVG.
package plot

import (
	"math"
	"strconv"
	"time"
)

// Scale is an axis of numbers: round ticks from its lower end to its upper.
type Scale struct {
	Ticks    []float64
	Decimals int // that the ticks need
}

// Low and High are the ends of the axis.
func (s Scale) Low() float64  { return s.Ticks[0] }
func (s Scale) High() float64 { return s.Ticks[len(s.Ticks)-1] }

// Label is a tick as it is printed.
func (s Scale) Label(tick float64) string { return strconv.FormatFloat(tick, 'f', s.Decimals, 64) }

// ScaleFor is the axis that holds all values: its step is 1, 2 or 5 times a
// power of ten, the least with which at most most ticks (3 or more) reach from
// below the least value to above the greatest: loose labels, as in Heckbert,
// "Nice numbers for graph labels", Graphics Gems, 1990. Where all values are
// one, the axis is a tenth of it wide to both sides; of zero it is 0 to 1.
func ScaleFor(values []float64, most int) Scale {
	low, high := math.Inf(1), math.Inf(-1)
	for _, v := range values {
		low, high = min(low, v), max(high, v)
	}
	switch {
	case low > high, low == 0 && high == 0:
		low, high = 0, 1
	case low == high:
		low, high = low-math.Abs(low)/10, high+math.Abs(high)/10
	}
	exponent := int(math.Floor(math.Log10((high - low) / float64(most))))
	for {
		for _, digit := range []float64{1, 2, 5} {
			if s, fits := ticks(low, high, digit, exponent, most); fits {
				return s
			}
		}
		exponent++
	}
}

// slack keeps a value that stands at a tick from asking for one more, where the
// division leaves a last bit over.
const slack = 1e-9

func ticks(low, high, digit float64, exponent, most int) (Scale, bool) {
	step := digit * math.Pow10(exponent)
	first, last := math.Floor(low/step+slack), math.Ceil(high/step-slack)
	if last-first+1 > float64(most) || last <= first {
		return Scale{}, false
	}
	s := Scale{Decimals: max(0, -exponent)}
	for i := first; i <= last; i++ {
		tick, _ := strconv.ParseFloat(strconv.FormatFloat(i*step, 'f', s.Decimals, 64), 64)
		s.Ticks = append(s.Ticks, tick+0) // never −0
	}
	return s, true
}

// Dates are the days at which an axis of time has its ticks, and how they are
// written, as a layout of package time.
type Dates struct {
	Ticks  []time.Time
	Layout string
}

// daySteps and monthSteps are the distances of ticks that people count in.
var (
	daySteps   = []int{1, 2, 7, 14}
	monthSteps = []int{1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 2400, 6000, 12000}
)

// DatesFor are the ticks between two days, both included: at most most of them,
// with the least step that people count in. Weeks begin on Mondays, months and
// years on their first day.
func DatesFor(first, last time.Time, most int) Dates {
	first, last = midnight(first), midnight(last)
	for _, step := range daySteps {
		if t := everyDays(first, last, step, most); len(t) <= most {
			return Dates{t, "01-02"}
		}
	}
	for _, step := range monthSteps {
		layout := "2006-01"
		if step >= 12 {
			layout = "2006"
		}
		if t := everyMonths(first, last, step, most); len(t) <= most {
			return Dates{t, layout}
		}
	}
	return Dates{[]time.Time{first}, "2006"}
}

// midnight is the day of a time, as the clock at the bay showed it.
func midnight(t time.Time) time.Time {
	y, m, d := t.Date()
	return time.Date(y, m, d, 0, 0, 0, 0, time.UTC)
}

func everyDays(first, last time.Time, step, most int) []time.Time {
	at := first
	if step >= 7 {
		at = at.AddDate(0, 0, (8-int(at.Weekday()))%7) // the next Monday, or today
	}
	var out []time.Time
	for ; !at.After(last) && len(out) <= most; at = at.AddDate(0, 0, step) {
		out = append(out, at)
	}
	return out
}

func everyMonths(first, last time.Time, step, most int) []time.Time {
	months := first.Year()*12 + int(first.Month()) - 1
	if first.Day() > 1 {
		months++
	}
	months = (months + step - 1) / step * step
	var out []time.Time
	for ; len(out) <= most; months += step {
		at := time.Date(months/12, time.Month(months%12+1), 1, 0, 0, 0, 0, time.UTC)
		if at.After(last) {
			break
		}
		out = append(out, at)
	}
	return out
}
