package quantity

import "testing"

// Sums by hand, with the exact factors of the SI prefixes and of the hour.
func TestPlus(t *testing.T) {
	for _, c := range []struct{ a, b, want string }{
		{"4 L", "500 mL", "4.5 L"},
		{"4.5 L", "0.25 L", "4.75 L"},
		{"500 mL", "4 L", "4500 mL"},
		{"0.5 L", "250 mL", "0.75 L"},
		{"0.250 L", "0.5 L", "0.75 L"}, // either way round
		{"0.5 L", "0.250 L", "0.75 L"},
		{"1.50 L", "0.50 L", "2.00 L"},
		{"1 h", "30 min", "1.5 h"},
		{"2 each", "3 each", "5 each"},
		{"4 L", "2 kg", "4 L"}, // another dimension is left out
		{"80 V dc", "5 V dc", "85 V dc"},
	} {
		a, errA := Parse(c.a, None)
		b, errB := Parse(c.b, None)
		if errA != nil || errB != nil {
			t.Fatal(errA, errB)
		}
		if got := a.Plus(b).String(); got != c.want {
			t.Errorf("%s and %s are %s, want %s", c.a, c.b, got, c.want)
		}
	}
}

func TestIsZero(t *testing.T) {
	q, _ := Parse("0 V dc", Voltage)
	l, _ := ParseLimit("0 bar", Pressure)
	if q.IsZero() || l.IsZero() || !(Quantity{}).IsZero() || !(Limit{}).IsZero() {
		t.Error("an amount of nothing is an amount; none is none")
	}
}
