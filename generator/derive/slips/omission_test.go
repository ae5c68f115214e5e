package slips_test

import (
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/derive/slips"
)

// Known: DERIVED.

// The score is monotone: one sign more is one point more, and never takes a
// step off the list.
func TestScoreIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) bool { return rapid.Bool().Draw(t, name) }
		f := slips.Flags{
			After: draw("after"), Follows: draw("follows"), Repeats: draw("repeats"), NoTrace: draw("no trace"),
			Hidden: draw("hidden"), Different: draw("different"), Small: draw("small"),
		}
		for i := range 7 {
			more := f
			sign := []*bool{&more.After, &more.Follows, &more.Repeats, &more.NoTrace, &more.Hidden, &more.Different, &more.Small}[i]
			had := *sign
			*sign = true
			want := f.Score() + 1
			if had {
				want = f.Score()
			}
			if got := more.Score(); got != want {
				t.Fatalf("%+v scores %d, want %d", more, got, want)
			}
			if f.Easily() && !more.Easily() {
				t.Fatalf("%+v is off the list, %+v is on it", more, f)
			}
		}
	})
}

// The ends of the scale: no sign is no point, all seven are seven, and three
// are needed.
func TestScoreEnds(t *testing.T) {
	for want, f := range map[int]slips.Flags{
		0: {}, 2: {After: true, Small: true}, 3: {After: true, Small: true, Hidden: true},
		7: {After: true, Follows: true, Repeats: true, NoTrace: true, Hidden: true, Different: true, Small: true},
	} {
		if got := f.Score(); got != want || f.Easily() != (want >= 3) {
			t.Errorf("%+v scores %d (easily missed: %v), want %d", f, got, f.Easily(), want)
		}
	}
}
