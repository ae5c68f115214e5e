package quantity_test

import (
	"testing"

	"baybinder/generator/base/quantity"
)

// A step without figures is the common case, a step with two amounts the rich one.
const (
	plainStep = "Lift out the seat base and set it down on the bench with the terminals up, clear of the edge."
	richStep  = "Undo the 4 bolts of M8x1.25, then tighten them in order to 22 N·m (16 lbf·ft) and wait 1 h 30 min at step 4."
)

func BenchmarkFindPlain(b *testing.B) { benchmarkFind(b, plainStep, 0) }

func BenchmarkFindRich(b *testing.B) { benchmarkFind(b, richStep, 3) }

func benchmarkFind(b *testing.B, text string, want int) {
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if got := len(quantity.Find(text)); got != want {
			b.Fatalf("found %d amounts, want %d", got, want)
		}
	}
}

func BenchmarkParse(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := quantity.Parse("110 N·m", quantity.Torque); err != nil {
			b.Fatal(err)
		}
	}
}
