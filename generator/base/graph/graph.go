// Package graph finds what in a graph hangs together, in rings or along its arrows.
package graph

import "slices"

// Components are the strongly connected components of the graph that begins at
// some nodes and goes on with next, those that others lead to first (R. E.
// Tarjan, "Depth-first search and linear graph algorithms", SIAM J. Comput. 1,
// 1972). A component of one node is no ring, unless the node leads to itself.
func Components[N comparable](from []N, next func(N) []N) [][]N {
	s := &search[N]{next: next, index: map[N]int{}, low: map[N]int{}, done: map[N]bool{}}
	for _, n := range from {
		if s.index[n] == 0 {
			s.visit(n)
		}
	}
	return s.out
}

// search is a depth-first search on its way.
type search[N comparable] struct {
	next       func(N) []N
	index, low map[N]int // from 1, in the order of the visits
	stack      []N
	done       map[N]bool // in a component, and no more on the stack
	out        [][]N
}

func (s *search[N]) visit(n N) {
	s.index[n] = len(s.index) + 1
	s.low[n] = s.index[n]
	s.stack = append(s.stack, n)
	for _, m := range s.next(n) {
		switch {
		case s.index[m] == 0:
			s.visit(m)
			s.low[n] = min(s.low[n], s.low[m])
		case !s.done[m]:
			s.low[n] = min(s.low[n], s.index[m])
		}
	}
	if s.low[n] == s.index[n] {
		s.close(n)
	}
}

// close takes a whole component off the stack, down to the node that was met
// first.
func (s *search[N]) close(n N) {
	i := len(s.stack) - 1
	for s.stack[i] != n {
		i--
	}
	part := append([]N(nil), s.stack[i:]...)
	for _, m := range part {
		s.done[m] = true
	}
	s.stack, s.out = s.stack[:i], append(s.out, part)
}

// Reach are some nodes with all that they lead to, the nearer ones first, each once.
func Reach[N comparable](from []N, next func(N) []N) []N {
	seen := map[N]bool{}
	var out []N
	for queue := slices.Clone(from); len(queue) > 0; queue = queue[1:] {
		if n := queue[0]; !seen[n] {
			seen[n] = true
			out = append(out, n)
			queue = append(queue, next(n)...)
		}
	}
	return out
}
