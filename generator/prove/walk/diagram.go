package walk

import "sync"

// fn is a function of the conditions of a walk, as a reference into a table.
// Below firstNode it is a constant: a state, or 0 and 1 for no and yes. Equal
// functions have equal references.
type fn int32

const (
	no        fn = 0
	yes       fn = 1
	firstNode fn = 1 << 16
	maxKids      = 8
)

// node decides by the value of a variable. Kids beyond the variable's values
// are 0.
type node struct {
	v    int32
	kids [maxKids]fn
}

// table holds the nodes of one walk. Nodes are shared and reduced: a function
// depends on exactly the variables that it mentions.
type table struct {
	nodes  []node
	index  map[node]fn
	memo   map[[3]fn]fn
	values []uint8 // of each variable: how many values it has
	seen   []int32 // by node, the round of depends that saw it last
	round  int32
}

func newTable() *table {
	return &table{index: map[node]fn{}, memo: map[[3]fn]fn{}}
}

// tables are used again: growing the maps anew for each walk costs more than
// the walk.
var tables = sync.Pool{New: func() any { return newTable() }}

// giveBack gives a table back. No function of it may be used any more.
func (t *table) giveBack() {
	t.nodes, t.values, t.seen, t.round = t.nodes[:0], t.values[:0], t.seen[:0], 0
	clear(t.index)
	clear(t.memo)
	tables.Put(t)
}

func (f fn) constant() bool { return f < firstNode }

func (t *table) node(f fn) *node { return &t.nodes[f-firstNode] }

// variable adds a variable; later ones stand below earlier ones.
func (t *table) variable(values int) int32 {
	t.values = append(t.values, uint8(values))
	return int32(len(t.values) - 1)
}

// make is the node of a variable over functions of later variables.
func (t *table) make(v int32, kids [maxKids]fn) fn {
	same := true
	for i := 1; i < int(t.values[v]); i++ {
		same = same && kids[i] == kids[0]
	}
	if same {
		return kids[0]
	}
	n := node{v, kids}
	f, there := t.index[n]
	if !there {
		f = firstNode + fn(len(t.nodes))
		t.nodes = append(t.nodes, n)
		t.index[n] = f
	}
	return f
}

// literal says yes where the variable has the value.
func (t *table) literal(v int32, value int) fn {
	var kids [maxKids]fn
	kids[value] = yes
	return t.make(v, kids)
}

// itself is the function that is the variable's value.
func (t *table) itself(v int32) fn {
	var kids [maxKids]fn
	for i := range int(t.values[v]) {
		kids[i] = fn(i)
	}
	return t.make(v, kids)
}

const noVariable = int32(1<<31 - 1)

// top is the first variable that a function depends on.
func (t *table) top(f fn) int32 {
	if f.constant() {
		return noVariable
	}
	return t.node(f).v
}

// at is the function where the variable, which none of f's stands above, has
// the value.
func (t *table) at(f fn, v int32, value int) fn {
	if t.top(f) != v {
		return f
	}
	return t.node(f).kids[value]
}

// ite is a where cond holds, else b.
func (t *table) ite(cond, a, b fn) fn {
	switch {
	case cond == yes || a == b:
		return a
	case cond == no:
		return b
	case a == yes && b == no:
		return cond
	}
	key := [3]fn{cond, a, b}
	if f, known := t.memo[key]; known {
		return f
	}
	v := min(t.top(cond), t.top(a), t.top(b))
	var kids [maxKids]fn
	for i := range int(t.values[v]) {
		kids[i] = t.ite(t.at(cond, v, i), t.at(a, v, i), t.at(b, v, i))
	}
	f := t.make(v, kids)
	t.memo[key] = f
	return f
}

// choose is the kid that a state function names.
func (t *table) choose(state fn, kids [maxKids]fn) fn {
	if state.constant() {
		return kids[state]
	}
	v := t.top(state)
	fixed := true
	for _, k := range kids {
		fixed = fixed && k.constant()
		v = min(v, t.top(k))
	}
	if fixed {
		return t.apply(state, func(s fn) fn { return kids[s] })
	}
	var out [maxKids]fn
	for i := range int(t.values[v]) {
		at := kids
		for j := range at {
			at[j] = t.at(at[j], v, i)
		}
		out[i] = t.choose(t.at(state, v, i), at)
	}
	return t.make(v, out)
}

func (t *table) and(a, b fn) fn    { return t.ite(a, b, no) }
func (t *table) or(a, b fn) fn     { return t.ite(a, yes, b) }
func (t *table) not(a fn) fn       { return t.ite(a, no, yes) }
func (t *table) andNot(a, b fn) fn { return t.ite(b, no, a) }

// apply changes every constant of a function.
func (t *table) apply(f fn, change func(fn) fn) fn {
	if f.constant() {
		return change(f)
	}
	if n := *t.node(f); t.flat(&n) {
		for i := range int(t.values[n.v]) {
			n.kids[i] = change(n.kids[i])
		}
		return t.make(n.v, n.kids)
	}
	done := map[fn]fn{}
	var rec func(f fn) fn
	rec = func(f fn) fn {
		if f.constant() {
			return change(f)
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.node(f)
		for i := range int(t.values[n.v]) {
			n.kids[i] = rec(n.kids[i])
		}
		g := t.make(n.v, n.kids)
		done[f] = g
		return g
	}
	return rec(f)
}

// flat says that a node depends on its own variable alone.
func (t *table) flat(n *node) bool {
	for _, k := range n.kids {
		if !k.constant() {
			return false
		}
	}
	return true
}

// differs says yes where two functions are not the same.
func (t *table) differs(a, b fn) fn {
	if a == b {
		return no
	}
	if a.constant() && b.constant() {
		return yes
	}
	key := [3]fn{-1, a, b}
	if f, known := t.memo[key]; known {
		return f
	}
	v := min(t.top(a), t.top(b))
	var kids [maxKids]fn
	for i := range int(t.values[v]) {
		kids[i] = t.differs(t.at(a, v, i), t.at(b, v, i))
	}
	f := t.make(v, kids)
	t.memo[key] = f
	return f
}

// with is the function where some variables have fixed values; fixed gives -1
// for the others.
func (t *table) with(f fn, fixed func(v int32) int) fn {
	if f.constant() {
		return f
	}
	done := map[fn]fn{}
	var rec func(f fn) fn
	rec = func(f fn) fn {
		if f.constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.node(f)
		var g fn
		if value := fixed(n.v); value >= 0 {
			g = rec(n.kids[value])
		} else {
			for i := range int(t.values[n.v]) {
				n.kids[i] = rec(n.kids[i])
			}
			g = t.make(n.v, n.kids)
		}
		done[f] = g
		return g
	}
	return rec(f)
}

// compose is the function where some variables are functions of others.
func (t *table) compose(f fn, of func(v int32) (fn, bool)) fn {
	done := map[fn]fn{}
	var rec func(f fn) fn
	rec = func(f fn) fn {
		if f.constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *t.node(f)
		for i := range int(t.values[n.v]) {
			n.kids[i] = rec(n.kids[i])
		}
		state, is := of(n.v)
		if !is {
			state = t.itself(n.v)
		}
		g := t.choose(state, n.kids)
		done[f] = g
		return g
	}
	return rec(f)
}

// depends visits the variables that a function depends on, some of them more
// than once.
func (t *table) depends(f fn, visit func(v int32)) {
	if f.constant() {
		return
	}
	for len(t.seen) < len(t.nodes) {
		t.seen = append(t.seen, 0)
	}
	t.round++
	t.visit(f, visit)
}

func (t *table) visit(f fn, visit func(v int32)) {
	if f.constant() || t.seen[f-firstNode] == t.round {
		return
	}
	t.seen[f-firstNode] = t.round
	n := t.node(f)
	visit(n.v)
	for i := range int(t.values[n.v]) {
		t.visit(n.kids[i], visit)
	}
}

// path is one way to yes, as values of variables; nil where there is none.
// Where it has the choice it takes the lowest values: without an option, with
// a hold passed.
func (t *table) path(f fn) map[int32]int {
	if f == no {
		return nil
	}
	way := map[int32]int{}
	for !f.constant() {
		n := t.node(f)
		for i := range int(t.values[n.v]) {
			if n.kids[i] != no {
				way[n.v] = i
				f = n.kids[i]
				break
			}
		}
	}
	return way
}

// value is what a function is on a path; variables that the path leaves open
// have their lowest value.
func (t *table) value(f fn, way map[int32]int) fn {
	for !f.constant() {
		n := t.node(f)
		f = n.kids[way[n.v]]
	}
	return f
}
