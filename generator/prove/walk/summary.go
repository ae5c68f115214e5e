package walk

import (
	"slices"
	"strings"

	"baybinder/generator/model"
)

// summary is what a caller needs of a procedure: how things stand afterwards,
// and what goes wrong, by how they stood before.
type summary struct {
	vars     []variable
	nodes    []node
	ends     []end
	needs    []need
	openings []opening
	taken    []taken
	looks    []look
	together fn
	acted    fn // where anything was changed
	acts     int
	moments  []moment
	demands  []demand
	waited   map[thing]fn // by energy, which of the tallies is so
	tallies  []tally
}

// taken is where a procedure takes a hold; nil is any.
type taken struct {
	hold  *model.Hold
	where fn
}

// end is how a thing stands afterwards.
type end struct {
	thing     thing
	to, moved fn
	wrong     fn // where that is told already: walked alone, it is left otherwise than it should be
}

// need is something that goes wrong where a caller's things stand badly, and
// not where the procedure is walked alone.
type need struct {
	rule  *rule
	thing thing
	where fn
	moved fn // where the procedure itself moved the thing before
	once  bool
	why   string
	at    event

	fault  int  // needs with one number are one fault
	before bool // of a line: it was opened before the procedure began
}

// summarize walks a procedure from every start at once.
func summarize(s *shared, p *model.Procedure, lay *layout) *summary {
	w := newWalk(s, p, lay, true)
	w.run()
	sum := &summary{needs: w.ownNeeds(), together: w.together, acted: w.somehow(w.acted), acts: len(w.actsOf(p))}
	for _, x := range w.touched {
		if to := w.settled(x, w.state[x]); to != w.start[x] || w.moved[x] != no {
			sum.ends = append(sum.ends, end{x, to, w.somehow(w.moved[x]), w.fewer(w.leftWrong(x))})
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
	w.giveBack()
	return sum
}

func (t taken) id() string {
	if t.hold == nil {
		return ""
	}
	return t.hold.ID
}

// fewer is a function that depends on few conditions of the procedure's own:
// where it depends on more, it holds where it can.
func (w *walk) fewer(f fn) fn {
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
func (w *walk) settled(x thing, to fn) fn {
	if w.plain(to) || w.inner(to) <= fewInside {
		return to
	}
	order := []fn{0, 2, 4, 3, 1, 5, 6, 7}
	if w.lay.things[x].sort == aGroup || w.lay.things[x].sort == anAsked {
		order = []fn{1, 0, 7}
	}
	f := no
	for _, s := range order {
		f = w.ite(w.somehow(w.equals(to, s)), s, f)
	}
	return f
}

// pack keeps the nodes that the summary needs and gives up the tables.
func (w *walk) pack(sum *summary) {
	t := tables.Get().(*table)
	t.values = append(t.values, w.values...)
	done := map[fn]fn{}
	var keep func(f fn) fn
	keep = func(f fn) fn {
		if f.constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *w.node(f)
		for i := range n.kids {
			n.kids[i] = keep(n.kids[i])
		}
		g := t.make(n.v, n.kids)
		done[f] = g
		return g
	}
	sum.together, sum.acted = keep(sum.together), keep(sum.acted)
	for i := range sum.ends {
		e := &sum.ends[i]
		e.to, e.moved, e.wrong = keep(e.to), keep(e.moved), keep(e.wrong)
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
	sum.vars, sum.nodes = w.vars, slices.Clone(t.nodes)
	t.giveBack()
}

// importer turns a summary's functions into functions of the caller's
// conditions: what depended on how a thing stood before depends now on how it
// stands at the call.
type importer struct {
	*walk
	sum  *summary
	done []fn         // by node: its function here, one up; 0 where it is not known yet
	vars map[int32]fn // where a condition of the callee's own holds
}

func (w *walk) importer(sum *summary) *importer {
	return &importer{walk: w, sum: sum, done: make([]fn, len(sum.nodes))}
}

func (in *importer) take(f fn) fn {
	if f.constant() {
		return f
	}
	if g := in.done[f-firstNode]; g != 0 {
		return g - 1
	}
	n := &in.sum.nodes[f-firstNode]
	var g fn
	if v := in.sum.vars[n.v]; v.kind == aStart {
		g = in.byStart(v.thing, n)
	} else {
		g = in.ite(in.where(n.v, v), in.take(n.kids[1]), in.take(n.kids[0]))
	}
	in.done[f-firstNode] = g + 1
	return g
}

// byStart chooses by how a thing stands at the call.
func (in *importer) byStart(x thing, n *node) fn {
	f := in.get(x)
	if f.constant() {
		return in.take(n.kids[f])
	}
	kids := n.kids
	for i, k := range kids {
		kids[i] = in.take(k)
	}
	return in.choose(f, kids)
}

// where is a condition of the callee here: an option is the caller's, what
// happens inside the call is the call's own.
func (in *importer) where(id int32, v variable) fn {
	switch v.kind {
	case anOption:
		return in.holds(v)
	case aLoner:
		return in.alone()
	}
	f, known := in.vars[id]
	if !known {
		f = in.literal(in.add(v, 2), 1)
		if in.vars == nil {
			in.vars = map[int32]fn{}
		}
		in.vars[id] = f
	}
	return f
}

// openings are the look-alike parts that a call opens.
func (in *importer) openings(g fn) []opening {
	out := make([]opening, 0, len(in.sum.openings))
	for _, o := range in.sum.openings {
		o.where, o.first, o.unmarked = in.and(g, in.take(o.where)), in.and(g, in.take(o.first)), in.take(o.unmarked)
		o.at, o.call = in.here, in.fresh
		out = append(out, o)
	}
	return out
}
