package walk

import (
	"testing"

	"pgregory.net/rapid"
)

// formula is a random function of four variables, as a diagram and as a table
// of its values.
type formula struct {
	f     fn
	value func(world [4]int) fn
}

func drawFormula(t *rapid.T, tab *table, depth int) formula {
	if depth == 0 || rapid.IntRange(0, 3).Draw(t, "leaf") == 0 {
		c := fn(rapid.IntRange(0, 1).Draw(t, "constant"))
		v := int32(rapid.IntRange(0, 3).Draw(t, "variable"))
		if rapid.Bool().Draw(t, "is constant") {
			return formula{c, func([4]int) fn { return c }}
		}
		return formula{tab.literal(v, 1), func(w [4]int) fn { return fn(w[v]) }}
	}
	a, b, c := drawFormula(t, tab, depth-1), drawFormula(t, tab, depth-1), drawFormula(t, tab, depth-1)
	switch rapid.IntRange(0, 3).Draw(t, "operation") {
	case 0:
		return formula{tab.ite(a.f, b.f, c.f), func(w [4]int) fn {
			if a.value(w) == yes {
				return b.value(w)
			}
			return c.value(w)
		}}
	case 1:
		return formula{tab.differs(a.f, b.f), func(w [4]int) fn { return a.value(w) ^ b.value(w) }}
	case 2:
		return formula{tab.not(a.f), func(w [4]int) fn { return 1 - a.value(w) }}
	}
	return formula{tab.andNot(a.f, b.f), func(w [4]int) fn { return a.value(w) &^ b.value(w) }}
}

func eachWorld(do func(w [4]int, way map[int32]int)) {
	for bits := range 16 {
		w, way := [4]int{}, map[int32]int{}
		for i := range w {
			w[i] = bits >> i & 1
			way[int32(i)] = w[i]
		}
		do(w, way)
	}
}

// Diagrams are the functions that they stand for, and equal functions are one
// reference.
func TestDiagramsAreFunctions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tab := newTable()
		for range 4 {
			tab.variable(2)
		}
		a, b := drawFormula(t, tab, 4), drawFormula(t, tab, 4)
		same := true
		eachWorld(func(w [4]int, way map[int32]int) {
			if got := tab.value(a.f, way); got != a.value(w) {
				t.Fatalf("in %v the diagram is %d, not %d", w, got, a.value(w))
			}
			same = same && a.value(w) == b.value(w)
		})
		if same != (a.f == b.f) {
			t.Fatal("equal functions have different references, or different ones the same")
		}
		if way := tab.path(a.f); (way == nil) != (a.f == no) || way != nil && tab.value(a.f, way) != yes {
			t.Fatal("the path to yes leads elsewhere")
		}
	})
}

// choose takes the kid that the state names.
func TestChoose(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tab := newTable()
		for range 4 {
			tab.variable(2)
		}
		a, b := drawFormula(t, tab, 3), drawFormula(t, tab, 3)
		state := tab.ite(a.f, dead, tab.ite(b.f, locked, live))
		var kids [maxKids]fn
		of := map[fn]formula{}
		for _, s := range []fn{live, locked, dead} {
			of[s] = drawFormula(t, tab, 3)
			kids[s] = of[s].f
		}
		f := tab.choose(state, kids)
		eachWorld(func(w [4]int, way map[int32]int) {
			if want := of[tab.value(state, way)].value(w); tab.value(f, way) != want {
				t.Fatalf("in %v the choice is wrong", w)
			}
		})
	})
}
