package quantity_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
)

// drawNumber draws a number as people type them, up to nine digits.
func drawNumber(t *rapid.T) string {
	text := fmt.Sprint(rapid.IntRange(0, 99999).Draw(t, "whole"))
	if rapid.Bool().Draw(t, "point") {
		text += "." + rapid.StringMatching(`[0-9]{1,4}`).Draw(t, "decimals")
	}
	return text
}

// drawSign draws a minus sign where an amount may have one. No temperature is
// drawn below zero: nine in ten would be colder than cold.
func drawSign(t *rapid.T, d quantity.Dimension) string {
	switch d {
	case quantity.Voltage, quantity.Pressure, quantity.Length, quantity.Angle:
		return rapid.SampledFrom([]string{"", "-", "−"}).Draw(t, "sign")
	}
	return ""
}

// drawAmount draws an amount that can be, as its author wrote it. Counts and
// calendar amounts are whole, and are drawn by their own tests.
func drawAmount(t *rapid.T) (string, quantity.Quantity) {
	u := rapid.SampledFrom(quantity.Units(quantity.None)).Filter(func(u quantity.Unit) bool {
		return u != quantity.Each && u.Dimension() != quantity.Calendar
	}).Draw(t, "unit")
	text := drawSign(t, u.Dimension()) + drawNumber(t) + rapid.SampledFrom([]string{"", " ", "\u00A0", "\u202F"}).Draw(t, "space") + u.Symbol()
	q, err := quantity.Parse(text, u.Dimension())
	if err != nil {
		t.Fatalf("Parse(%q): %v", text, err)
	}
	if q.Unit != u {
		t.Fatalf("%q has the unit %s", text, q.Unit)
	}
	return text, q
}

// drawOther draws a unit of the same dimension.
func drawOther(t *rapid.T, q quantity.Quantity) quantity.Unit {
	return rapid.SampledFrom(quantity.Units(q.Unit.Dimension())).Draw(t, "other")
}

func TestConversionAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		u := drawOther(t, q)
		back := q.In(u).In(q.Unit)
		// A temperature loses the last bits of its distance from absolute zero.
		if math.Abs(back.Value-q.Value) > 1e-12*math.Abs(q.Value)+1e-11 && !near(back.Value, q.Value, 1e-12) {
			t.Fatalf("%s in %s and back is %.17g", text, u, back.Value)
		}
		if there := q.In(u); !near(there.Base(), q.Base(), 1e-12) {
			t.Fatalf("%s in %s is another amount: %.17g and %.17g", text, u, there.Base(), q.Base())
		}
	})
}

func TestPrintedAndReadAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		again, err := quantity.Parse(q.String(), q.Unit.Dimension())
		if err != nil || again != q {
			t.Fatalf("%q is printed %q and read again as %+v, %v; want %+v", text, q, again, err, q)
		}
	})
}

// The manual's own check must accept what the manual prints.
func TestPrintedSecondUnitAgrees(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		second := q.In(drawOther(t, q))
		typed, err := quantity.Parse(second.String(), q.Unit.Dimension())
		if err != nil {
			t.Fatalf("%s is printed as %s, which cannot be read: %v", text, second, err)
		}
		if !quantity.Agrees(typed, q) {
			t.Fatalf("%s is printed as %s, which does not agree", text, second)
		}
		moved := math.Abs(typed.Value - second.Value)
		if q.Unit.Dimension() != quantity.Temperature && moved > 0.01*math.Abs(second.Value)*(1+1e-9) {
			t.Fatalf("%s is printed as %s, and is %.9g", text, second, second.Value)
		}
	})
}

// A number that is off by more than the last typed digit never agrees in the
// register's own unit.
func TestOtherNumbersDoNotAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		other := q
		other.Value += math.Pow10(-q.Decimals) * float64(rapid.IntRange(1, 50).Draw(t, "steps"))
		if quantity.Agrees(other, q) {
			t.Fatalf("%s agrees with %s", other, text)
		}
	})
}

func drawLimit(t *rapid.T) quantity.Limit {
	n := rapid.IntRange(1, 500).Draw(t, "n")
	text := rapid.SampledFrom([]string{
		fmt.Sprintf("at most %d bar", n), fmt.Sprintf("at least %d bar", n), fmt.Sprintf("%d bar", n),
		fmt.Sprintf("%d to %d bar", n, n+7), fmt.Sprintf("%d ± 3 bar", n), fmt.Sprintf("%d bar ± 5 %%", n),
		fmt.Sprintf("%d.5 ± 0.25 bar", n), fmt.Sprintf("%d kPa to %d bar", n, n),
	}).Draw(t, "limit")
	l, err := quantity.ParseLimit(text, quantity.Pressure)
	if err != nil {
		t.Fatalf("ParseLimit(%q): %v", text, err)
	}
	return l
}

// Between two amounts that a limit holds, it holds every amount.
func TestHoldsHasNoGap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLimit(t)
		amount := func(name string) quantity.Quantity {
			u := rapid.SampledFrom(quantity.Units(quantity.Pressure)).Draw(t, name+" unit")
			bar := rapid.Float64Range(0, 600).Draw(t, name)
			return quantity.Of(bar, quantity.Bar, 3).In(u)
		}
		a, b, c := amount("a"), amount("b"), amount("c")
		if a.Base() <= b.Base() && b.Base() <= c.Base() && l.Holds(a) && l.Holds(c) && !l.Holds(b) {
			t.Fatalf("%s holds %s and %s, not %s between them", l, a, c, b)
		}
	})
}

func TestHoldsItsOwnEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLimit(t)
		for _, end := range []float64{l.Low, l.High} {
			if math.IsInf(end, 0) {
				continue
			}
			for _, u := range quantity.Units(quantity.Pressure) {
				if q := quantity.Of(end, l.Unit, 6).In(u); !l.Holds(q) {
					t.Fatalf("%s does not hold its end %.17g %s", l, q.Value, u)
				}
			}
			beyond := quantity.Of(end*1.001, l.Unit, 6)
			if end == l.High && l.Holds(beyond) {
				t.Fatalf("%s holds %.17g", l, beyond.Value)
			}
		}
	})
}

func TestLimitPrintedAndReadAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLimit(t)
		again, err := quantity.ParseLimit(l.String(), quantity.Pressure)
		if err != nil || again != l {
			t.Fatalf("%q is read again as %+v, %v; want %+v", l, again, err, l)
		}
	})
}

// An amount in a sentence is found where it stands, and nothing else is.
func TestFindsWhatIsWrittenInASentence(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, q := drawAmount(t)
		before := rapid.SampledFrom([]string{"", "Set it to ", "At step 4, (", "M8x1.25: "}).Draw(t, "before")
		after := rapid.SampledFrom([]string{"", ".", ", then 4 bolts", ") and stop"}).Draw(t, "after")
		found := quantity.Find(before + text + after)
		if len(found) != 1 || found[0].Quantity != q || found[0].Start != len(before) || found[0].End != len(before)+len(text) {
			t.Fatalf("in %q: found %+v, want %+v", before+text+after, found, q)
		}
	})
}

// Durations add up: the parts of a compound are worth the whole.
func TestCompoundIsTheSumOfItsParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h, m, s := rapid.IntRange(0, 9999).Draw(t, "h"), rapid.IntRange(0, 59).Draw(t, "min"), rapid.IntRange(0, 59).Draw(t, "s")
		text := fmt.Sprintf("%d h %d min %d s", h, m, s)
		q, err := quantity.Parse(text, quantity.Duration)
		if err != nil || q.Base() != float64(3600*h+60*m+s) {
			t.Fatalf("%s is %g s, %v", text, q.Base(), err)
		}
		if tight, err := quantity.Parse(strings.ReplaceAll(text, " ", ""), quantity.Duration); err != nil || tight != q {
			t.Fatalf("%s without spaces is %+v, %v", text, tight, err)
		}
	})
}

// Adding a span never goes back, and days come back exactly.
func TestAddToGoesForward(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := quantity.Span{Days: rapid.IntRange(0, 200000).Draw(t, "from")}.AddTo(epoch)
		s := quantity.Span{
			Years: rapid.IntRange(0, 50).Draw(t, "years"), Months: rapid.IntRange(0, 30).Draw(t, "months"), Days: rapid.IntRange(0, 900).Draw(t, "days"),
		}
		to := s.AddTo(from)
		months := (to.Year()-from.Year())*12 + int(to.Month()-from.Month())
		if to.Before(from) || s.Days == 0 && (months != 12*s.Years+s.Months || to.Day() > from.Day()) {
			t.Fatalf("%+v after %s is %s", s, from, to)
		}
		if back := (quantity.Span{Days: -s.Days}).AddTo(to); back != (quantity.Span{Years: s.Years, Months: s.Months}).AddTo(from) {
			t.Fatalf("%+v after %s is %s, and %s without the days", s, from, to, back)
		}
	})
}
