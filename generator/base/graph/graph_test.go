package graph

import (
	"slices"
	"testing"

	"gonum.org/v1/gonum/graph/simple"
	"gonum.org/v1/gonum/graph/topo"
	"pgregory.net/rapid"
)

// The components of random graphs are those that gonum finds, and what others
// lead to comes first.
func TestComponentsAreGonums(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "nodes")
		next := make([][]int, n)
		g := simple.NewDirectedGraph()
		var all []int
		for i := range n {
			all = append(all, i)
			g.AddNode(simple.Node(i))
		}
		for i := range n {
			next[i] = rapid.SliceOfNDistinct(rapid.IntRange(0, n-1), 0, 3, rapid.ID).Draw(t, "next")
			for _, j := range next[i] {
				if i != j {
					g.SetEdge(g.NewEdge(simple.Node(i), simple.Node(j)))
				}
			}
		}
		got, place := Components(all, func(i int) []int { return next[i] }), map[int]int{}
		for i, part := range got {
			for _, node := range part {
				place[node] = i
			}
			slices.Sort(part)
		}
		for i := range n {
			for _, j := range next[i] {
				if place[j] > place[i] {
					t.Fatalf("%d leads to %d, whose component comes later: %v", i, j, got)
				}
			}
		}
		if want := gonums(g); !slices.EqualFunc(sorted(got), want, slices.Equal) {
			t.Fatalf("%v, gonum has %v", got, want)
		}
	})
}

func gonums(g *simple.DirectedGraph) [][]int {
	var out [][]int
	for _, part := range topo.TarjanSCC(g) {
		var ids []int
		for _, node := range part {
			ids = append(ids, int(node.ID()))
		}
		slices.Sort(ids)
		out = append(out, ids)
	}
	return sorted(out)
}

func sorted(parts [][]int) [][]int {
	slices.SortFunc(parts, slices.Compare)
	return parts
}

// Of 1 → 2 → 3 → 1, 2 → 4 and 5 → 1, followed by hand.
func TestWhatIsReached(t *testing.T) {
	leads := map[int][]int{1: {2}, 2: {3, 4, 3}, 3: {1}, 5: {1}}
	for _, c := range []struct{ from, want []int }{
		{nil, nil},
		{[]int{4}, []int{4}},
		{[]int{1}, []int{1, 2, 3, 4}},
		{[]int{5, 3}, []int{5, 3, 1, 2, 4}},
	} {
		if got := Reach(c.from, func(n int) []int { return leads[n] }); !slices.Equal(got, c.want) {
			t.Errorf("from %v: %v, want %v", c.from, got, c.want)
		}
	}
}
