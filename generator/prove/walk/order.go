package walk

import (
	"baybinder/generator/base/parallel"
	"baybinder/generator/model"
)

// ringed is every procedure in a ring of calls, or that calls into one.
func ringed(all []*model.Procedure) map[*model.Procedure]bool {
	r := &rings{
		index: map[*model.Procedure]int{}, low: map[*model.Procedure]int{},
		on: map[*model.Procedure]bool{}, bad: map[*model.Procedure]bool{},
	}
	for _, p := range all {
		if r.index[p] == 0 {
			r.visit(p)
		}
	}
	return r.bad
}

// rings finds the strongly connected components of the calls, callees first.
type rings struct {
	index, low map[*model.Procedure]int
	stack      []*model.Procedure
	on         map[*model.Procedure]bool // on the stack
	bad        map[*model.Procedure]bool
}

func (r *rings) visit(p *model.Procedure) {
	r.index[p] = len(r.index) + 1
	r.low[p] = r.index[p]
	r.stack, r.on[p] = append(r.stack, p), true
	own := false
	for _, q := range calleesOf(p) {
		own = own || q == p
		switch {
		case r.index[q] == 0:
			r.visit(q)
			r.low[p] = min(r.low[p], r.low[q])
		case r.on[q]:
			r.low[p] = min(r.low[p], r.index[q])
		}
	}
	if r.low[p] == r.index[p] {
		r.close(p, own)
	}
}

// close takes a component off the stack and judges it.
func (r *rings) close(p *model.Procedure, own bool) {
	i := len(r.stack) - 1
	for r.stack[i] != p {
		i--
	}
	part := r.stack[i:]
	bad := own || len(part) > 1
	for _, q := range part {
		for _, c := range calleesOf(q) {
			bad = bad || r.bad[c]
		}
	}
	for _, q := range part {
		r.on[q] = false
		if bad {
			r.bad[q] = true
		}
	}
	r.stack = r.stack[:i]
}

func calleesOf(p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	for _, l := range p.Calls {
		if q, is := l.To.(*model.Procedure); is {
			out = append(out, q)
		}
	}
	return out
}

// summarizeAll makes the summary of everything that is called, callees first,
// some at once.
func (s *shared) summarizeAll() {
	depth := map[called]int{}
	var waves [][]called
	var visit func(c called) int
	visit = func(c called) int {
		if d, known := depth[c]; known {
			return d
		}
		d := 0
		for _, q := range s.calls(c) {
			d = max(d, visit(q)+1)
		}
		depth[c] = d
		for len(waves) <= d {
			waves = append(waves, nil)
		}
		waves[d] = append(waves[d], c)
		return d
	}
	for _, p := range s.manual.Procedures {
		if s.walkable(p) {
			for _, c := range s.calls(called{p, s.layouts[p.For.To]}) {
				visit(c)
			}
		}
	}
	for _, wave := range waves {
		sums := make([]*summary, len(wave))
		parallel.Each(len(wave), func(i int) { sums[i] = summarize(s, wave[i].procedure, wave[i].layout) })
		for i, c := range wave {
			s.summaries[c] = sums[i]
		}
	}
}

// calls are the procedures that a procedure performs and that can be walked,
// as it calls them.
func (s *shared) calls(c called) []called {
	var out []called
	for _, q := range calleesOf(c.procedure) {
		if s.walkable(q) && (q.For.To == nil || q.For.To == c.layout.machine) {
			out = append(out, called{q, c.layout})
		}
	}
	return out
}
