// Package parallel does the same work for each of many things, on all processors; the order of the results is the caller's.
package parallel

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// Each calls do(0) to do(n-1), some at once, and returns when all have
// returned. What do writes must be its own, such as one place of a slice.
func Each(n int, do func(i int)) {
	workers := min(n, runtime.GOMAXPROCS(0))
	if workers <= 1 {
		for i := range n {
			do(i)
		}
		return
	}
	var next atomic.Int64
	var wait sync.WaitGroup
	for range workers {
		wait.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				do(i)
			}
		})
	}
	wait.Wait()
}
