package quantity_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"baybinder/generator/base/quantity"
)

var epoch = time.Date(1900, 1, 1, 0, 0, 0, 0, time.UTC)

// hostile are texts that have broken readers of numbers elsewhere.
var hostile = []string{
	"", " ", "110 N·m", "1 h 30 min", "−20 °C", "360 V d.c.", "20 to 100 N·m", "2.0 ± 0.1 mm", "at most 5 V dc",
	"110 N·m ± 5 %", "010 V", "0x10 V", "1e999 V", "NaN V", "+Inf V", "1,5 bar", "1_0 V", "1 000 N", "99999999999999999999 V",
	"1h30x", "1 year 3 days", "5 \xff", "5 N\u22C5", "\u22125", "5\u00A0", "5 V d.c", "20–100 mm", "60°-90°", "between 2 and 3 mm", "4 in the",
	"1 week 1 d 1 h 1 min 1 s", "5 +/- 1 bar", "at least", "5 to", "5 ±", "0.000000000000001 h", "5 A\u030A",
}

func seed(f *testing.F) {
	for _, text := range hostile {
		f.Add(text)
	}
}

// refusal checks that an error is one that a writer can act on.
func refusal(t *testing.T, text string, err error) {
	t.Helper()
	var e *quantity.Error
	if !errors.As(err, &e) {
		t.Fatalf("%q: %v is no *Error", text, err)
	}
	if e.Error() == "" || e.Mend().IsZero() || text[e.Start:e.End] != e.Text {
		t.Fatalf("%q: %q, %q at %d to %d", text, e.Error(), e.Mend(), e.Start, e.End)
	}
}

func FuzzParse(f *testing.F) {
	seed(f)
	f.Fuzz(func(t *testing.T, text string) {
		for _, want := range []quantity.Dimension{quantity.None, quantity.Calendar, quantity.Count} {
			q, err := quantity.Parse(text, want)
			if err != nil {
				refusal(t, text, err)
				continue
			}
			again, err := quantity.Parse(q.String(), want)
			if err != nil || again != q {
				t.Fatalf("%q is printed %q and read again as %+v, %v", text, q, again, err)
			}
			if math.IsNaN(q.Base()) || math.IsInf(q.Base(), 0) {
				t.Fatalf("%q is %g", text, q.Base())
			}
			if !quantity.Agrees(q, q) {
				t.Fatalf("%q does not agree with itself", text)
			}
		}
	})
}

func FuzzParseLimit(f *testing.F) {
	seed(f)
	f.Fuzz(func(t *testing.T, text string) {
		l, err := quantity.ParseLimit(text, quantity.None)
		if err != nil {
			refusal(t, text, err)
			return
		}
		again, err := quantity.ParseLimit(l.String(), quantity.None)
		if err != nil || again != l {
			t.Fatalf("%q is printed %q and read again as %+v, %v; want %+v", text, l, again, err, l)
		}
		low, high := l.Bounds()
		if !(low <= high) || math.IsInf(low, 1) || math.IsInf(high, -1) {
			t.Fatalf("%q is bounded by %g and %g", text, low, high)
		}
		for _, n := range l.Numbers() {
			if !l.Holds(n) {
				t.Fatalf("%q does not hold %s", text, n)
			}
		}
	})
}

func FuzzFind(f *testing.F) {
	seed(f)
	f.Fuzz(func(t *testing.T, text string) {
		end := 0
		for _, found := range quantity.Find(text) {
			if found.Start < end || found.End <= found.Start || found.End > len(text) {
				t.Fatalf("%q: found %s at %d to %d, after %d", text, found.Quantity, found.Start, found.End, end)
			}
			end = found.End
			if again, err := quantity.Parse(found.String(), found.Unit.Dimension()); err != nil || again != found.Quantity {
				t.Fatalf("%q: found %q, read again as %+v, %v", text, found.Quantity, again, err)
			}
		}
	})
}
