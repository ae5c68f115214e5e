package check

import (
	"slices"

	"baybinder/generator/model"
)

// callGraph is what performs what. Two procedures have the same ring where
// each performs the other, by whatever way.
type callGraph struct {
	calls map[*model.Procedure][]*model.Link
	ring  map[*model.Procedure]int
}

func callGraphOf(procedures []*model.Procedure) *callGraph {
	g := &callGraph{calls: map[*model.Procedure][]*model.Link{}, ring: map[*model.Procedure]int{}}
	for _, p := range procedures {
		g.calls[p] = callsOf(p)
	}
	t := &tarjan{callGraph: g, index: map[*model.Procedure]int{}, low: map[*model.Procedure]int{}}
	for _, p := range procedures {
		if t.index[p] == 0 {
			t.visit(p)
		}
	}
	return g
}

// tarjan finds the rings of a graph (R. E. Tarjan, "Depth-first search and
// linear graph algorithms", SIAM J. Comput. 1, 1972).
type tarjan struct {
	*callGraph
	index, low map[*model.Procedure]int // from 1, in the order of the visits
	stack      []*model.Procedure
	rings      int
}

func (t *tarjan) visit(p *model.Procedure) {
	t.index[p] = len(t.index) + 1
	t.low[p] = t.index[p]
	t.stack = append(t.stack, p)
	for _, link := range t.calls[p] {
		callee := link.To.(*model.Procedure)
		switch {
		case t.index[callee] == 0:
			t.visit(callee)
			t.low[p] = min(t.low[p], t.low[callee])
		case t.ring[callee] == 0: // still on the stack
			t.low[p] = min(t.low[p], t.index[callee])
		}
	}
	if t.low[p] == t.index[p] {
		t.close(p)
	}
}

// close takes a whole ring off the stack, p last.
func (t *tarjan) close(p *model.Procedure) {
	t.rings++
	for {
		last := t.stack[len(t.stack)-1]
		t.stack = t.stack[:len(t.stack)-1]
		t.ring[last] = t.rings
		if last == p {
			return
		}
	}
}

// way is a shortest list of calls that leads from one procedure to another of
// the same ring; none where they are the same.
func (g *callGraph) way(from, to *model.Procedure) []*model.Link {
	came := map[*model.Procedure][]*model.Link{from: {}}
	for queue := []*model.Procedure{from}; len(queue) > 0; queue = queue[1:] {
		p := queue[0]
		if p == to {
			break
		}
		for _, link := range g.calls[p] {
			callee := link.To.(*model.Procedure)
			if _, been := came[callee]; !been && g.ring[callee] == g.ring[from] {
				came[callee] = append(slices.Clone(came[p]), link)
				queue = append(queue, callee)
			}
		}
	}
	return came[to]
}
