package generator

import (
	"math"
	"runtime/debug"
	"testing"

	"baybinder/generator/read/source"
)

// The limit follows the text once a manual is large, and is never lowered. A
// process that has none gets none.
func TestALargeManualHasRoom(t *testing.T) {
	const megabyte = 1 << 20
	for text, want := range map[int]int64{0: SoftLimit, 28 * megabyte: SoftLimit, 100 * megabyte: 3300 * megabyte} {
		if got := limitFor(text); got != want {
			t.Errorf("%d bytes of text: a limit of %d, not %d", text, got, want)
		}
	}
	was := debug.SetMemoryLimit(-1)
	defer debug.SetMemoryLimit(was)
	for _, c := range []struct{ before, after int64 }{{1, SoftLimit}, {SoftLimit + 1, SoftLimit + 1}, {math.MaxInt64, math.MaxInt64}} {
		debug.SetMemoryLimit(c.before)
		makeRoom(source.FromText(map[string]string{"shop.yaml": "name: Shop"}))
		if got := debug.SetMemoryLimit(-1); got != c.after {
			t.Errorf("a limit of %d became %d, not %d", c.before, got, c.after)
		}
	}
}
