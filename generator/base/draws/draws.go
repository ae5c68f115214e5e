// Package draws splits the draws of a property test into parts, so that all
// processors draw at once. The cases are those of one part.
package draws

import (
	"flag"
	"fmt"
	"strconv"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/needed"
)

// parts is how many parts the draws are split into: more than most machines
// have processors, so that a slow part leaves none of them idle for long.
const parts = 8

// Check draws total cases of a property, each part of them in a test of its own
// beside the others, and returns when all have ended. Where CI is set the draws
// are the same each time, so that a run says something of the change that it
// judges; elsewhere they are new. -rapid.checks asks for another total, and with
// -rapid.seed all draws follow from that seed, in one part.
func Check(t *testing.T, total int, seed uint64, property func(*rapid.T)) {
	t.Helper()
	if n, given := asked("rapid.checks"); given {
		total = int(n)
	} else if testing.Short() {
		total = min(total, 50)
	}
	if first, given := asked("rapid.seed"); given {
		one(t, total, first, property)
		return
	}
	t.Run("draws", func(t *testing.T) {
		for part := range min(parts, total) {
			t.Run(fmt.Sprint("part ", part+1), func(t *testing.T) {
				t.Parallel()
				for k := part; k < total; k += parts {
					one(t, 1, seedOf(seed, k), property)
				}
			})
		}
	})
}

// asked is what the command line says of a flag of the library.
func asked(name string) (n uint64, given bool) {
	flags.Lock()
	defer flags.Unlock()
	f := flag.Lookup(name)
	n, _ = strconv.ParseUint(f.Value.String(), 0, 64)
	return n, f.Value.String() != f.DefValue
}

// seedOf is the seed of a case: the library counts on from its first seed by the
// number of the cases before. Outside of CI it is 0, which is a new one each time.
func seedOf(first uint64, k int) uint64 {
	if !needed.InCI() {
		return 0
	}
	return first + uint64(k)*uint64(k+1)/2
}

// flags is held while the library's flags, which are everybody's, are not what
// the command line made them.
var flags sync.Mutex

// one draws n cases from a seed. The library has read its flags when it asks the
// property for the first time: then the next part may set them.
func one(t *testing.T, n int, seed uint64, property func(*rapid.T)) {
	t.Helper()
	flags.Lock()
	checksWere, seedWas := set("rapid.checks", fmt.Sprint(n)), set("rapid.seed", fmt.Sprint(seed))
	read := sync.OnceFunc(func() {
		set("rapid.checks", checksWere)
		set("rapid.seed", seedWas)
		flags.Unlock()
	})
	defer read()
	rapid.Check(t, func(r *rapid.T) {
		read()
		property(r)
	})
}

// set gives a flag a value and returns what it was.
func set(name, value string) (was string) {
	f := flag.Lookup(name)
	was = f.Value.String()
	_ = f.Value.Set(value) // a number
	return was
}
