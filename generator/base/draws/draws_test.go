package draws

import (
	"fmt"
	"sync"
	"testing"

	"pgregory.net/rapid"
)

// All draws are made, no case twice, and under CI the same ones each time.
func TestDrawsAreSplit(t *testing.T) {
	t.Setenv("CI", "true")
	drawn := func(total int) map[string]bool {
		var mu sync.Mutex
		n, seen := 0, map[string]bool{}
		Check(t, total, 7, func(t *rapid.T) {
			x := fmt.Sprint(rapid.SliceOfN(rapid.Uint64(), 4, 4).Draw(t, "x"))
			mu.Lock()
			defer mu.Unlock()
			n, seen[x] = n+1, true
		})
		if !testing.Short() && (n != total || len(seen) < total*9/10) {
			t.Errorf("%d cases are drawn of %d, %d of them other ones", n, total, len(seen))
		}
		return seen
	}
	first, again := drawn(40), drawn(40)
	for x := range first {
		if !again[x] {
			t.Errorf("%s is not drawn again", x)
		}
	}
	drawn(3)
}
