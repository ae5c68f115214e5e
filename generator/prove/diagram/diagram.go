// Package diagram holds functions of variables with few values as reduced, shared decision diagrams.
//
// The method is Bryant's (R. E. Bryant, "Graph-Based Algorithms for Boolean
// Function Manipulation", IEEE Transactions on Computers C-35(8), 1986), with up
// to eight values a variable and a result instead of two. Equal functions of
// one table have equal references, so that whether something holds in no world,
// or in all, is one comparison.
package diagram

import "sync"

// Func is a function of the conditions of a walk, as a reference into a table.
// Below FirstNode it is a constant: a state, or 0 and 1 for no and yes. Equal
// functions have equal references.
type Func int32

// The constants no and yes, the first function that is none, and how many values
// a variable has at the most.
const (
	No        Func = 0
	Yes       Func = 1
	FirstNode Func = 1 << 16
	MaxKids        = 8
)

// Node decides by the value of a variable. Kids beyond the variable's values
// are 0.
type Node struct {
	Var  int32
	Kids [MaxKids]Func
}

// Table holds the nodes of one walk. Nodes are shared and reduced: a function
// depends on exactly the variables that it mentions.
type Table struct {
	Nodes  []Node
	index  map[Node]Func
	memo   map[[3]Func]Func
	Values []uint8 // of each variable: how many values it has
	seen   []int32 // by node, the round of Support that saw it last
	round  int32
}

// tables are used again: growing the maps anew for each walk costs more than
// the walk.
var tables = sync.Pool{New: func() any { return &Table{index: map[Node]Func{}, memo: map[[3]Func]Func{}} }}

// New is a table without nodes.
func New() *Table { return tables.Get().(*Table) }

// Free gives a table back. No function of it may be used any more.
func (t *Table) Free() {
	t.Nodes, t.Values, t.seen, t.round = t.Nodes[:0], t.Values[:0], t.seen[:0], 0
	clear(t.index)
	clear(t.memo)
	tables.Put(t)
}

// Constant says that a function depends on nothing.
func (f Func) Constant() bool { return f < FirstNode }

// Node is where a function that is not constant decides.
func (t *Table) Node(f Func) *Node { return &t.Nodes[f-FirstNode] }

// Variable adds a variable; later ones stand below earlier ones.
func (t *Table) Variable(values int) int32 {
	t.Values = append(t.Values, uint8(values))
	return int32(len(t.Values) - 1)
}

// Make is the node of a variable over functions of later variables.
func (t *Table) Make(v int32, kids [MaxKids]Func) Func {
	same := true
	for i := 1; i < int(t.Values[v]); i++ {
		same = same && kids[i] == kids[0]
	}
	if same {
		return kids[0]
	}
	n := Node{v, kids}
	f, there := t.index[n]
	if !there {
		f = FirstNode + Func(len(t.Nodes))
		t.Nodes = append(t.Nodes, n)
		t.index[n] = f
	}
	return f
}

// Literal says yes where the variable has the value.
func (t *Table) Literal(v int32, value int) Func {
	var kids [MaxKids]Func
	kids[value] = Yes
	return t.Make(v, kids)
}

// Itself is the function that is the variable's value.
func (t *Table) Itself(v int32) Func {
	var kids [MaxKids]Func
	for i := range int(t.Values[v]) {
		kids[i] = Func(i)
	}
	return t.Make(v, kids)
}

const noVariable = int32(1<<31 - 1)

// top is the first variable that a function depends on.
func (t *Table) top(f Func) int32 {
	if f.Constant() {
		return noVariable
	}
	return t.Node(f).Var
}

// cofactor is the function where the variable, which none of f's stands above, has
// the value.
func (t *Table) cofactor(f Func, v int32, value int) Func {
	if t.top(f) != v {
		return f
	}
	return t.Node(f).Kids[value]
}

// Ite is a where cond holds, else b.
func (t *Table) Ite(cond, a, b Func) Func {
	switch {
	case cond == Yes || a == b:
		return a
	case cond == No:
		return b
	case a == Yes && b == No:
		return cond
	}
	key := [3]Func{cond, a, b}
	if f, known := t.memo[key]; known {
		return f
	}
	v := min(t.top(cond), t.top(a), t.top(b))
	var kids [MaxKids]Func
	for i := range int(t.Values[v]) {
		kids[i] = t.Ite(t.cofactor(cond, v, i), t.cofactor(a, v, i), t.cofactor(b, v, i))
	}
	f := t.Make(v, kids)
	t.memo[key] = f
	return f
}

// Choose is the kid that a state function names.
func (t *Table) Choose(state Func, kids [MaxKids]Func) Func {
	if state.Constant() {
		return kids[state]
	}
	v := t.top(state)
	fixed := true
	for _, k := range kids {
		fixed = fixed && k.Constant()
		v = min(v, t.top(k))
	}
	if fixed {
		return t.Apply(state, func(s Func) Func { return kids[s] })
	}
	var out [MaxKids]Func
	for i := range int(t.Values[v]) {
		at := kids
		for j := range at {
			at[j] = t.cofactor(at[j], v, i)
		}
		out[i] = t.Choose(t.cofactor(state, v, i), at)
	}
	return t.Make(v, out)
}

// And, Or, Not and AndNot (a and not b) are of functions that are no or yes.
func (t *Table) And(a, b Func) Func    { return t.Ite(a, b, No) }
func (t *Table) Or(a, b Func) Func     { return t.Ite(a, Yes, b) }
func (t *Table) Not(a Func) Func       { return t.Ite(a, No, Yes) }
func (t *Table) AndNot(a, b Func) Func { return t.Ite(b, No, a) }

// Meet says whether both hold somewhere. It ends where they first do, and makes
// nothing.
func (t *Table) Meet(a, b Func) bool {
	switch {
	case a == No || b == No:
		return false
	case a == Yes || b == Yes || a == b:
		return true
	}
	key := [3]Func{a, b, No} // as And has it
	if f, known := t.memo[key]; known {
		return f != No
	}
	v := min(t.top(a), t.top(b))
	for i := range int(t.Values[v]) {
		if t.Meet(t.cofactor(a, v, i), t.cofactor(b, v, i)) {
			return true
		}
	}
	t.memo[key] = No
	return false
}

// Apply changes every constant of a function.
func (t *Table) Apply(f Func, change func(Func) Func) Func {
	if f.Constant() {
		return change(f)
	}
	if n := *t.Node(f); t.Flat(&n) {
		for i := range int(t.Values[n.Var]) {
			n.Kids[i] = change(n.Kids[i])
		}
		return t.Make(n.Var, n.Kids)
	}
	done := map[Func]Func{}
	var rec func(f Func) Func
	rec = func(f Func) Func {
		if f.Constant() {
			return change(f)
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.Node(f)
		for i := range int(t.Values[n.Var]) {
			n.Kids[i] = rec(n.Kids[i])
		}
		g := t.Make(n.Var, n.Kids)
		done[f] = g
		return g
	}
	return rec(f)
}

// Flat says that a node depends on its own variable alone.
func (t *Table) Flat(n *Node) bool {
	for _, k := range n.Kids {
		if !k.Constant() {
			return false
		}
	}
	return true
}

// Differs says yes where two functions are not the same.
func (t *Table) Differs(a, b Func) Func {
	if a == b {
		return No
	}
	if a.Constant() && b.Constant() {
		return Yes
	}
	key := [3]Func{-1, a, b}
	if f, known := t.memo[key]; known {
		return f
	}
	v := min(t.top(a), t.top(b))
	var kids [MaxKids]Func
	for i := range int(t.Values[v]) {
		kids[i] = t.Differs(t.cofactor(a, v, i), t.cofactor(b, v, i))
	}
	f := t.Make(v, kids)
	t.memo[key] = f
	return f
}

// Restrict is the function where some variables have fixed values; fixed gives -1
// for the others.
func (t *Table) Restrict(f Func, fixed func(v int32) int) Func {
	if f.Constant() {
		return f
	}
	done := map[Func]Func{}
	var rec func(f Func) Func
	rec = func(f Func) Func {
		if f.Constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.Node(f)
		var g Func
		if value := fixed(n.Var); value >= 0 {
			g = rec(n.Kids[value])
		} else {
			for i := range int(t.Values[n.Var]) {
				n.Kids[i] = rec(n.Kids[i])
			}
			g = t.Make(n.Var, n.Kids)
		}
		done[f] = g
		return g
	}
	return rec(f)
}

// Compose is the function where some variables are functions of others.
func (t *Table) Compose(f Func, of func(v int32) (Func, bool)) Func {
	done := map[Func]Func{}
	var rec func(f Func) Func
	rec = func(f Func) Func {
		if f.Constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.Node(f)
		for i := range int(t.Values[n.Var]) {
			n.Kids[i] = rec(n.Kids[i])
		}
		state, is := of(n.Var)
		if !is {
			state = t.Itself(n.Var)
		}
		g := t.Choose(state, n.Kids)
		done[f] = g
		return g
	}
	return rec(f)
}

// Support visits the variables that a function depends on, some of them more
// than once.
func (t *Table) Support(f Func, visit func(v int32)) {
	if f.Constant() {
		return
	}
	for len(t.seen) < len(t.Nodes) {
		t.seen = append(t.seen, 0)
	}
	t.round++
	t.visit(f, visit)
}

func (t *Table) visit(f Func, visit func(v int32)) {
	if f.Constant() || t.seen[f-FirstNode] == t.round {
		return
	}
	t.seen[f-FirstNode] = t.round
	n := t.Node(f)
	visit(n.Var)
	for i := range int(t.Values[n.Var]) {
		t.visit(n.Kids[i], visit)
	}
}

// Witness is one way to yes, as values of variables; nil where there is none.
// Where it has the choice it takes the lowest values: without an option, with
// a hold passed.
func (t *Table) Witness(f Func) map[int32]int {
	if f == No {
		return nil
	}
	way := map[int32]int{}
	for !f.Constant() {
		n := t.Node(f)
		for i := range int(t.Values[n.Var]) {
			if n.Kids[i] != No {
				way[n.Var] = i
				f = n.Kids[i]
				break
			}
		}
	}
	return way
}

// Value is what a function is in a world; variables that the world leaves open
// have their lowest value.
func (t *Table) Value(f Func, way map[int32]int) Func {
	for !f.Constant() {
		n := t.Node(f)
		f = n.Kids[way[n.Var]]
	}
	return f
}

// Set is a set of states.
type Set uint8

// Has says that a state is in the set.
func (s Set) Has(f Func) bool { return s>>f&1 == 1 }

// Is says yes where a state is one of the set.
func (t *Table) Is(f Func, s Set) Func {
	return t.Apply(f, func(f Func) Func {
		if s.Has(f) {
			return Yes
		}
		return No
	})
}

// Map maps states to the states that an act takes them to.
type Map [MaxKids]Func

// And takes more states to another.
func (m Map) And(to Func, from ...Func) Map {
	for _, f := range from {
		m[f] = to
	}
	return m
}

// After is a state after an act.
func (t *Table) After(f Func, m Map) Func {
	return t.Apply(f, func(f Func) Func { return m[f] })
}

// Equals says yes where a function is one constant.
func (t *Table) Equals(f, constant Func) Func {
	return t.Apply(f, func(f Func) Func {
		if f == constant {
			return Yes
		}
		return No
	})
}
