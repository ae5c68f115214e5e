package diagram

import (
	"testing"

	"pgregory.net/rapid"
)

// Three states.
const (
	live   Func = 0
	locked Func = 2
	dead   Func = 4
)

// formula is a random function of four variables, as a diagram and as a table
// of its values.
type formula struct {
	f     Func
	value func(world [4]int) Func
}

func drawFormula(t *rapid.T, tab *Table, depth int) formula {
	if depth == 0 || rapid.IntRange(0, 3).Draw(t, "leaf") == 0 {
		c := Func(rapid.IntRange(0, 1).Draw(t, "constant"))
		v := int32(rapid.IntRange(0, 3).Draw(t, "variable"))
		if rapid.Bool().Draw(t, "is constant") {
			return formula{c, func([4]int) Func { return c }}
		}
		return formula{tab.Literal(v, 1), func(w [4]int) Func { return Func(w[v]) }}
	}
	a, b, c := drawFormula(t, tab, depth-1), drawFormula(t, tab, depth-1), drawFormula(t, tab, depth-1)
	switch rapid.IntRange(0, 3).Draw(t, "operation") {
	case 0:
		return formula{tab.Ite(a.f, b.f, c.f), func(w [4]int) Func {
			if a.value(w) == Yes {
				return b.value(w)
			}
			return c.value(w)
		}}
	case 1:
		return formula{tab.Differs(a.f, b.f), func(w [4]int) Func { return a.value(w) ^ b.value(w) }}
	case 2:
		return formula{tab.Not(a.f), func(w [4]int) Func { return 1 - a.value(w) }}
	}
	return formula{tab.AndNot(a.f, b.f), func(w [4]int) Func { return a.value(w) &^ b.value(w) }}
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
		tab := New()
		for range 4 {
			tab.Variable(2)
		}
		a, b := drawFormula(t, tab, 4), drawFormula(t, tab, 4)
		same, meet := true, false
		eachWorld(func(w [4]int, way map[int32]int) {
			if got := tab.Value(a.f, way); got != a.value(w) {
				t.Fatalf("in %v the diagram is %d, not %d", w, got, a.value(w))
			}
			same = same && a.value(w) == b.value(w)
			meet = meet || a.value(w) == Yes && b.value(w) == Yes
		})
		if same != (a.f == b.f) {
			t.Fatal("equal functions have different references, or different ones the same")
		}
		if tab.Meet(a.f, b.f) != meet || (tab.And(a.f, b.f) != No) != meet || tab.Meet(a.f, b.f) != meet {
			t.Fatalf("that both hold somewhere is %v", meet)
		}
		if way := tab.Witness(a.f); (way == nil) != (a.f == No) || way != nil && tab.Value(a.f, way) != Yes {
			t.Fatal("the path to yes leads elsewhere")
		}
	})
}

// Choose takes the kid that the state names.
func TestChoose(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tab := New()
		for range 4 {
			tab.Variable(2)
		}
		a, b := drawFormula(t, tab, 3), drawFormula(t, tab, 3)
		state := tab.Ite(a.f, dead, tab.Ite(b.f, locked, live))
		var kids [MaxKids]Func
		of := map[Func]formula{}
		for _, s := range []Func{live, locked, dead} {
			of[s] = drawFormula(t, tab, 3)
			kids[s] = of[s].f
		}
		f := tab.Choose(state, kids)
		eachWorld(func(w [4]int, way map[int32]int) {
			if want := of[tab.Value(state, way)].value(w); tab.Value(f, way) != want {
				t.Fatalf("in %v the choice is wrong", w)
			}
		})
	})
}
