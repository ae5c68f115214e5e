package walk

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// summary is what a caller needs of a procedure: how things stand afterwards,
// and what goes wrong, by how they stood before.
type summary struct {
	vars     []variable
	nodes    []diagram.Node
	ends     []end
	needs    []need
	openings []opening
	taken    []taken
	looks    []look
	together diagram.Func
	acted    diagram.Func // where anything was changed
	acts     int
	moments  []moment
	demands  []demand
	waited   map[thing]diagram.Func // by energy, which of the tallies is so
	tallies  []tally
}

// taken is where a procedure takes a hold; nil is any.
type taken struct {
	hold  *model.Hold
	where diagram.Func
}

// end is how a thing stands afterwards.
type end struct {
	thing     thing
	to, moved diagram.Func
	so        diagram.Func // where it was moved, by how the holds went
	wrong     diagram.Func // where that is told already: walked alone, it is left otherwise than it should be
	open      diagram.Func // where it is told already that it is open, and not by what leaves says of it
	found     diagram.Func // where it was found open where it should be closed, and stands so still
}

// need is something that goes wrong where a caller's things stand badly, and
// not where the procedure is walked alone.
type need struct {
	rule  *rule
	thing thing
	where diagram.Func
	moved diagram.Func // where the procedure itself moved the thing before
	once  bool
	why   finding.Words
	at    event

	fault  int  // needs with one number are one fault
	before bool // of a line: it was opened before the procedure began
}

// summarize walks a procedure from every start at once.
func summarize(s *shared, p *model.Procedure, lay *layout) *summary {
	w := newWalk(s, p, lay, true)
	w.run()
	sum := &summary{needs: w.ownNeeds(), together: w.together, acted: w.somehow(w.acted), acts: len(w.actsOf(p))}
	w.lookAtLeaves()
	for _, x := range w.touched {
		e := end{thing: x, to: w.settled(x, w.state[x]), moved: w.somehow(w.moved[x]), so: w.fewer(w.moved[x]), found: w.fewer(w.foundOpen[x])}
		e.wrong = w.fewer(w.leftWrong(x, e.to))
		if !w.speaksOf(x) {
			e.open = e.wrong
		}
		if e.moved != diagram.No || e.wrong != diagram.No || e.found != diagram.No {
			sum.ends = append(sum.ends, e)
		}
	}
	sum.openings = w.openedInAll()
	sum.moments = w.fullest()
	for h, where := range w.taken {
		sum.taken = append(sum.taken, taken{h, w.fewer(where)})
	}
	slices.SortFunc(sum.taken, func(a, b taken) int { return strings.Compare(a.id(), b.id()) })
	sum.looks = w.looksInAll()
	sum.demands, sum.waited, sum.tallies = w.demandsInAll(), w.waitedInAll(), w.tallies
	w.pack(sum)
	w.Free()
	return sum
}

// lookAtLeaves brings what leaves names into the ledger: it may be left wrong
// though no link touches it.
func (w *walk) lookAtLeaves() {
	for _, s := range w.p.Leaves {
		if s.Thing == nil {
			continue
		}
		for _, x := range w.named(s.Thing) {
			w.look(x)
		}
	}
}

func (t taken) id() string {
	if t.hold == nil {
		return ""
	}
	return t.hold.ID
}

// fewer is a function that depends on few conditions of the procedure's own:
// where it depends on more, it holds where it can.
func (w *walk) fewer(f diagram.Func) diagram.Func {
	if w.inner(f) > fewInside {
		return w.somehow(f)
	}
	return f
}

// fewInside is on how many conditions of its own the end of a procedure may
// depend. A procedure that leaves things as it says depends on none, but for
// caps, marks and spills.
const fewInside = 3

// settled is an end without the procedure's own conditions, where there are
// too many of them: then each state counts that the thing may be left in, the
// most open last.
func (w *walk) settled(x thing, to diagram.Func) diagram.Func {
	if w.plain(to) || w.inner(to) <= fewInside {
		return to
	}
	order := []diagram.Func{0, 2, 4, 3, 1, 5, 6, 7}
	if w.lay.things[x].sort == aGroup || w.lay.things[x].sort == anAsked {
		order = []diagram.Func{1, 0, 7}
	}
	f := diagram.No
	for _, s := range order {
		f = w.Ite(w.somehow(w.Equals(to, s)), s, f)
	}
	return f
}

// pack keeps the nodes that the summary needs and gives up the tables.
func (w *walk) pack(sum *summary) {
	t := diagram.New()
	t.Values = append(t.Values, w.Values...)
	done := map[diagram.Func]diagram.Func{}
	var keep func(f diagram.Func) diagram.Func
	keep = func(f diagram.Func) diagram.Func {
		if f.Constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *w.Node(f)
		for i := range n.Kids {
			n.Kids[i] = keep(n.Kids[i])
		}
		g := t.Make(n.Var, n.Kids)
		done[f] = g
		return g
	}
	sum.together, sum.acted = keep(sum.together), keep(sum.acted)
	for i := range sum.ends {
		e := &sum.ends[i]
		e.to, e.moved, e.so, e.wrong, e.open, e.found = keep(e.to), keep(e.moved), keep(e.so), keep(e.wrong), keep(e.open), keep(e.found)
	}
	for i := range sum.needs {
		n := &sum.needs[i]
		n.where, n.moved = keep(n.where), keep(n.moved)
	}
	for i := range sum.taken {
		sum.taken[i].where = keep(sum.taken[i].where)
	}
	for i := range sum.looks {
		k := &sum.looks[i]
		k.dry, k.good = keep(k.dry), keep(k.good)
	}
	for i := range sum.demands {
		sum.demands[i].where = keep(sum.demands[i].where)
	}
	for _, x := range w.lay.slow {
		if f, there := sum.waited[x]; there {
			sum.waited[x] = keep(f)
		}
	}
	for i := range sum.openings {
		o := &sum.openings[i]
		o.where, o.first, o.unmarked = keep(o.where), keep(o.first), keep(o.unmarked)
	}
	for _, m := range sum.moments {
		for i := range m {
			m[i].where = keep(m[i].where)
		}
	}
	sum.vars, sum.nodes = w.vars, slices.Clone(t.Nodes)
	t.Free()
}

// importer turns a summary's functions into functions of the caller's
// conditions: what depended on how a thing stood before depends now on how it
// stands at the call.
type importer struct {
	*walk
	sum  *summary
	done []diagram.Func         // by node: its function here, one up; 0 where it is not known yet
	vars map[int32]diagram.Func // where a condition of the callee's own holds
}

func (w *walk) importer(sum *summary) *importer {
	return &importer{walk: w, sum: sum, done: make([]diagram.Func, len(sum.nodes))}
}

func (in *importer) take(f diagram.Func) diagram.Func {
	if f.Constant() {
		return f
	}
	if g := in.done[f-diagram.FirstNode]; g != 0 {
		return g - 1
	}
	n := &in.sum.nodes[f-diagram.FirstNode]
	var g diagram.Func
	if v := in.sum.vars[n.Var]; v.kind == aStart {
		g = in.byStart(v.thing, n)
	} else {
		g = in.Ite(in.where(n.Var, v), in.take(n.Kids[1]), in.take(n.Kids[0]))
	}
	in.done[f-diagram.FirstNode] = g + 1
	return g
}

// byStart chooses by how a thing stands at the call.
func (in *importer) byStart(x thing, n *diagram.Node) diagram.Func {
	f := in.get(x)
	if f.Constant() {
		return in.take(n.Kids[f])
	}
	kids := n.Kids
	for i, k := range kids {
		kids[i] = in.take(k)
	}
	return in.Choose(f, kids)
}

// where is a condition of the callee here: an option is the caller's, what
// happens inside the call is the call's own.
func (in *importer) where(id int32, v variable) diagram.Func {
	switch v.kind {
	case anOption:
		return in.holds(v)
	case aLoner:
		return in.alone()
	case anOutcome, anAnswer, anOptional, aStart:
	}
	f, known := in.vars[id]
	if !known {
		f = in.Literal(in.add(v, 2), 1)
		if in.vars == nil {
			in.vars = map[int32]diagram.Func{}
		}
		in.vars[id] = f
	}
	return f
}

// openings are the look-alike parts that a call opens.
func (in *importer) openings(g diagram.Func) []opening {
	out := make([]opening, 0, len(in.sum.openings))
	for _, o := range in.sum.openings {
		o.where, o.first, o.unmarked = in.And(g, in.take(o.where)), in.And(g, in.take(o.first)), in.take(o.unmarked)
		o.at, o.call = in.here, in.fresh
		out = append(out, o)
	}
	return out
}
