package walk_test

import (
	"fmt"
	"runtime"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// generated is a manual of n procedures of thirty steps, most of which call
// two others. It has no findings.
func generated(tb testing.TB, n int) *model.Manual {
	files := shopFiles(tb)
	for i := range 500 {
		files["register/tools.yaml"] += fmt.Sprintf("tool-%d: { name: tool %d, kind: aid }\n", i, i)
	}
	for i := range n {
		files[fmt.Sprintf("procedures/topic-%d/job-%d.md", i%50, i)] = generatedProcedure(i)
	}
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		tb.Fatal(found[0].Message)
	}
	return m
}

func generatedProcedure(i int) string {
	var b strings.Builder
	fmt.Fprintf(&b, "---\ntitle: Job %d\nfor: yard-tug\nsupplies: [new-seat-bolt: 4]\n---\n\n## Make safe\n\n", i)
	n := 0
	step := func(format string, args ...any) {
		n++
		fmt.Fprintf(&b, "%d. %s\n", n, fmt.Sprintf(format, args...))
	}
	step("Park it. [](tool:tool-%d) [](tool:tool-%d)", i%500, i*7%500)
	if i >= 10 {
		step("[First](do:job-%d).", i/2)
		step("[Then](do:job-%d).", i*2/3)
	}
	step("[Pull the plug](isolate:traction) and [lock it](lock:traction).")
	step("[Wait](hold:capacitor-wait).")
	step("[Prove it](prove:traction). [](hold:bus-dead)")
	step("[If it is above](if-not:bus-dead), do this.")
	b.WriteString("   1. [Wait once more](hold:capacitor-wait).\n   2. [Measure again](again:bus-dead).\n")
	b.WriteString("\n## Strip\n\n")
	n = 0
	step("[With a cab](when:cab), [lift the door off](remove:cab-door).")
	step("[Take the seat base off](remove:seat-base). [](hazard:charged-capacitors)")
	step("[Take the lid off](remove:inverter-lid). [](hazard:charged-capacitors)")
	step("[If wanted](optional:), [take the inverter out](remove:inverter).")
	for k := range 12 {
		step("Look at place %d with the [tool](tool:tool-%d). [](hazard:oil-under-pressure)", k, (i+k)%500)
	}
	b.WriteString("\n## Refit\n\n")
	n = 0
	step("[In reverse](reverse:strip).")
	step("[Take the lock off](unlock:traction).")
	step("[Put the plug in](restore:traction).")
	return b.String()
}

func TestGeneratedManualIsClean(t *testing.T) {
	m := generated(t, 60)
	for _, f := range walk.All(m).Findings(m) {
		t.Errorf("%s: %s", placed(f), f.Message)
	}
}

func benchmark(b *testing.B, n int) {
	m := generated(b, n)
	b.ReportAllocs()
	for b.Loop() {
		walk.All(m)
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(n), "ns/procedure")
}

func BenchmarkAll1000(b *testing.B)  { benchmark(b, 1000) }
func BenchmarkAll10000(b *testing.B) { benchmark(b, 10000) }

// The cost grows with the number of procedures, however deep they call, and what
// is kept of 10,000 is modest.
func TestCostIsLinear(t *testing.T) {
	if testing.Short() {
		t.Skip("takes some seconds")
	}
	small, large := generated(t, 200), generated(t, 2000)
	cost := func(m *model.Manual) float64 { return testing.AllocsPerRun(1, func() { walk.All(m) }) }
	one, ten := cost(small), cost(large)
	t.Logf("%.0f allocations for 200 procedures, %.0f for 2,000", one, ten)
	if ten > 11*one {
		t.Errorf("ten times the procedures cost %.1f times as much", ten/one)
	}
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	r := walk.All(large)
	runtime.GC()
	runtime.ReadMemStats(&after)
	kept := 5 * float64(int64(after.HeapAlloc)-int64(before.HeapAlloc)) / (1 << 20)
	t.Logf("the result of 10,000 keeps %.0f MiB", kept)
	if kept > 200 {
		t.Errorf("the result of 10,000 keeps %.0f MiB; the whole program has 1 GiB", kept)
	}
	runtime.KeepAlive(r)
}
