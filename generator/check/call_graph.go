package check

import (
	"slices"

	"baybinder/generator/base/graph"
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
	for i, ring := range graph.Components(procedures, g.callees) {
		for _, p := range ring {
			g.ring[p] = i
		}
	}
	return g
}

func (g *callGraph) callees(p *model.Procedure) []*model.Procedure {
	out := make([]*model.Procedure, len(g.calls[p]))
	for i, link := range g.calls[p] {
		out[i] = link.To.(*model.Procedure)
	}
	return out
}

// way is a shortest list of calls that leads from one procedure to another of
// the same ring, as one always does; none where they are the same.
func (g *callGraph) way(from, to *model.Procedure) []*model.Link {
	came := map[*model.Procedure][]*model.Link{from: {}}
	var queue []*model.Procedure
	for p := from; p != to; p, queue = queue[0], queue[1:] {
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
