package fastening

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
)

// Known: SEEN.

func TestParseSize(t *testing.T) {
	for text, want := range map[string]Size{
		"13 mm": {"", 13}, "13mm": {"", 13}, "1/2 in": {"", 12.7}, "9/16 in": {"", 14.2875}, "1 1/8 in": {"", 28.575}, "0.5 in": {"", 12.7},
		"hex 6 mm": {"hex", 6}, "Hex 6 mm": {"hex", 6}, "hex 1/4 in": {"hex", 6.35}, "square 1/2 in": {"square", 12.7}, "slot 8 mm": {"slot", 8},
		"T30": {"t30", 0}, "TX30": {"t30", 0}, "T 30": {"t30", 0}, "PH2": {"ph2", 0}, "PZ 2": {"pz2", 0},
	} {
		if got, err := ParseSize(text); err != nil || got.Form != want.Form || !near(got.Width, want.Width, 1e-12) {
			t.Errorf("%s is %v, %v; want %v", text, got, err, want)
		}
	}
}

func TestParseSizeRefuses(t *testing.T) {
	for text, mend := range map[string]string{
		"13": "write 13 mm, or 13 in", "9/16": "write 9/16 mm, or 9/16 in", "hex 6": "write hex 6 mm, or hex 6 in",
		"M8": "write the width across flats, as in 13 mm", "": "write 13 mm, hex 6 mm or T30",
		"13 bar": "write 13 mm, hex 6 mm or T30", "0 mm": "write 13 mm, hex 6 mm or T30", "1/0 in": "write 13 mm, hex 6 mm or T30",
	} {
		got, err := ParseSize(text)
		if err == nil {
			t.Errorf("%q is let through as %v", text, got)
			continue
		}
		if said := err.(interface{ Mend() finding.Words }).Mend().String(); said != mend {
			t.Errorf("%q: the mend is %q, want %q", text, said, mend)
		}
	}
}

func TestFits(t *testing.T) {
	set := Sizes([]string{"10 mm", "13 mm", "hex 6 mm", "T30", "nonsense 3", "17"})
	for _, c := range []struct {
		flats, drive string
		want         bool
	}{
		{"13 mm", "", true}, {"1.3 cm", "", true}, {"12 mm", "", false}, {"0.5 in", "", false}, // 12.7 mm is not 13
		{"", "hex 6 mm", true}, {"", "hex 5 mm", false}, {"", "T30", true}, {"", "tx30", true}, {"", "T25", false},
		{"6 mm", "", false}, // a hexagon from outside is not one from inside
		{"17 mm", "T30", true},
	} {
		if got := FitsAny(set, Heads(length(t, c.flats), c.drive)); got != c.want {
			t.Errorf("%s %s: fits %t, want %t", c.flats, c.drive, got, c.want)
		}
	}
	if FitsAny(Sizes([]string{"19 mm"}), Heads(length(t, "0.75 in"), "")) {
		t.Error("19 mm is taken for 3/4 in")
	}
	if got := Heads(quantity.Quantity{}, ""); len(got) != 0 {
		t.Errorf("a clip is turned by %v", got)
	}
}

func length(t testing.TB, text string) quantity.Quantity {
	t.Helper()
	if text == "" {
		return quantity.Quantity{}
	}
	return amount(t, text)
}

// Five nuts go 1-3-5-2-4 (derived; the pictures of star patterns have no
// numbers). Four go in diagonal pairs, six opposite then diagonal: two owners'
// manuals.
func TestStar(t *testing.T) {
	for n, want := range map[int][]int{
		0: nil, 1: {0}, 2: {0, 1}, 3: {0, 1, 2}, 4: {0, 2, 1, 3}, 5: {0, 2, 4, 1, 3}, 6: {0, 3, 1, 4, 2, 5}, 8: {0, 4, 2, 6, 1, 5, 3, 7},
	} {
		if got := Star(n); !slices.Equal(got, want) {
			t.Errorf("%d: %v, want %v", n, got, want)
		}
	}
}

// everyOnce says whether an order holds each place from 0 once.
func everyOnce(order []int, n int) bool {
	places := slices.Clone(order)
	slices.Sort(places)
	for i, place := range places {
		if i != place {
			return false
		}
	}
	return len(places) == n
}

func TestStarGoesAcross(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 200).Draw(t, "n")
		order := Star(n)
		if !everyOnce(order, n) {
			t.Fatalf("%d: %v", n, order)
		}
		for i := 1; i < n && n >= 5; i++ {
			if apart := (order[i] - order[i-1] + n) % n; apart == 1 || apart == n-1 {
				t.Fatalf("%d: %d follows its neighbour %d", n, order[i], order[i-1])
			}
			if n%2 == 0 && i%2 == 1 && (order[i]-order[i-1]+n)%n != n/2 {
				t.Fatalf("%d: %d is not opposite %d", n, order[i], order[i-1])
			}
		}
	})
}

func TestSpiral(t *testing.T) {
	for _, c := range []struct {
		rows, columns int
		want          []int
	}{
		{0, 4, nil}, {1, 1, []int{0}}, {1, 5, []int{2, 3, 1, 4, 0}}, {3, 3, []int{4, 5, 8, 7, 6, 3, 0, 1, 2}},
		{2, 5, []int{2, 3, 8, 7, 6, 1, 4, 9, 5, 0}},
	} {
		if got := Spiral(c.rows, c.columns); !slices.Equal(got, c.want) {
			t.Errorf("%d × %d: %v, want %v", c.rows, c.columns, got, c.want)
		}
	}
}

// Each place comes once, and no ring begins before the one inside it is done.
func TestSpiralGoesOutwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows, columns := rapid.IntRange(1, 6).Draw(t, "rows"), rapid.IntRange(1, 12).Draw(t, "columns")
		order := Spiral(rows, columns)
		if !everyOnce(order, rows*columns) {
			t.Fatalf("%d × %d: %v", rows, columns, order)
		}
		last := 0
		for _, place := range order {
			down, right := place/columns-(rows-1)/2, place%columns-(columns-1)/2
			ring := max(down, -down, right, -right)
			if ring < last {
				t.Fatalf("%d × %d: %v goes back inwards at %d", rows, columns, order, place)
			}
			last = ring
		}
	})
}
