package parallel

import (
	"runtime"
	"strings"
	"sync/atomic"
	"testing"
)

func TestEachDoesAllOnce(t *testing.T) {
	for _, n := range []int{0, 1, 2, 1000} {
		done := make([]int, n)
		Each(n, func(i int) { done[i]++ })
		for i, times := range done {
			if times != 1 {
				t.Errorf("of %d, number %d was done %d times", n, i, times)
			}
		}
	}
}

// A panic in a worker ends the caller's call, not the program, and tells where
// it was.
func TestAPanicReachesTheCaller(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(4))
	f := faultOf(t, func() { Each(100, breaks) })
	if f.Value != "broken" || f.Error() != "broken" {
		t.Errorf("the fault is %v", f.Value)
	}
	frame, _ := runtime.CallersFrames(f.Callers).Next()
	if !strings.HasSuffix(frame.Function, "parallel.breaks") {
		t.Errorf("it is said to be in %s", frame.Function)
	}
}

func TestAPanicOfAnInnerEachKeepsItsPlace(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(4))
	f := faultOf(t, func() { Each(3, func(int) { Each(100, breaks) }) })
	frame, _ := runtime.CallersFrames(f.Callers).Next()
	if f.Value != "broken" || !strings.HasSuffix(frame.Function, "parallel.breaks") {
		t.Errorf("the fault is %v in %s", f.Value, frame.Function)
	}
}

// After a panic the workers begin nothing more.
func TestAPanicStopsTheOthers(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(2))
	const n = 1 << 20
	var done atomic.Int64
	faultOf(t, func() {
		Each(n, func(i int) {
			if i == 0 {
				panic("broken")
			}
			done.Add(1)
			runtime.Gosched()
		})
	})
	if done.Load() == n-1 {
		t.Error("all the others were done")
	}
}

func breaks(i int) {
	if i == 7 {
		panic("broken")
	}
}

func faultOf(t *testing.T, do func()) (f *Fault) {
	t.Helper()
	defer func() {
		var is bool
		if f, is = recover().(*Fault); !is {
			t.Fatal("it did not panic with a fault")
		}
	}()
	do()
	return nil
}
