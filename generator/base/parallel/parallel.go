// Package parallel does the same work for each of many things, on all processors; the order of the results is the caller's.
package parallel

import (
	"fmt"
	"runtime"
	"sync"
	"sync/atomic"
)

// Fault is a panic of a worker, as the caller sees it.
type Fault struct {
	Value   any       // what was panicked with
	Callers []uintptr // where, as runtime.Callers tells it
}

func (f *Fault) Error() string { return fmt.Sprint(f.Value) }

// Each calls do(0) to do(n-1), some at once, and returns when all have
// returned. What do writes must be its own, such as one place of a slice. A
// panic in do is one of a *Fault in the caller: there it can be told of, and
// the caller's defers run.
func Each(n int, do func(i int)) {
	workers := min(n, runtime.GOMAXPROCS(0))
	if workers <= 1 {
		for i := range n {
			do(i)
		}
		return
	}
	var next atomic.Int64
	var fault atomic.Pointer[Fault]
	var wait sync.WaitGroup
	for range workers {
		wait.Go(func() {
			defer catch(&fault)
			for i := int(next.Add(1)) - 1; i < n && fault.Load() == nil; i = int(next.Add(1)) - 1 {
				do(i)
			}
		})
	}
	wait.Wait()
	if f := fault.Load(); f != nil {
		panic(f)
	}
}

// Do calls different work, some at once, as Each does.
func Do(work ...func()) { Each(len(work), func(i int) { work[i]() }) }

// catch keeps the first panic of the workers; the others stop before their
// next.
func catch(fault *atomic.Pointer[Fault]) {
	value := recover()
	if value == nil {
		return
	}
	f, inner := value.(*Fault) // of an Each inside this one: its place is the one to tell
	if !inner {
		callers := make([]uintptr, 64)
		f = &Fault{Value: value, Callers: callers[:runtime.Callers(3, callers)]}
	}
	fault.CompareAndSwap(nil, f)
}
