package walk

import (
	"baybinder/generator/base/graph"
	"baybinder/generator/base/parallel"
	"baybinder/generator/model"
)

// inCycle is every procedure in a ring of calls, or that calls into one.
func inCycle(all []*model.Procedure) map[*model.Procedure]bool {
	in := map[*model.Procedure]bool{}
	for _, part := range graph.Components(all, calleesOf) { // callees first
		bad := len(part) > 1
		for _, p := range part {
			for _, q := range calleesOf(p) {
				bad = bad || q == p || in[q]
			}
		}
		for _, p := range part {
			if bad {
				in[p] = true
			}
		}
	}
	return in
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
