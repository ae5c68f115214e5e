package walk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: FROM MEMORY, DERIVED.

// stack is a product whose parts lie over each other: under[i] are the parts
// that come off before part i. legal is in how many orders it can be stripped.
type stack struct {
	about  string
	source string
	under  [][]int
	legal  int
}

// zigzag is the fence a0 < a1 > a2 < a3 ...: each odd part lies under its
// neighbours.
func zigzag(n int) [][]int {
	under := make([][]int, n)
	for i := 1; i < n; i += 2 {
		under[i] = append(under[i], i-1)
		if i+1 < n {
			under[i] = append(under[i], i+1)
		}
	}
	return under
}

// ladder is two chains of n parts, each part of the second under its neighbour
// in the first.
func ladder(n int) [][]int {
	under := make([][]int, 2*n)
	for i := range n {
		if i > 0 {
			under[i], under[n+i] = []int{i - 1}, []int{n + i - 1}
		}
		under[n+i] = append(under[n+i], i)
	}
	return under
}

// forest has the parent of each part, -1 for a root, which comes off first.
func forest(parents ...int) [][]int {
	under := make([][]int, len(parents))
	for i, p := range parents {
		if p >= 0 {
			under[i] = []int{p}
		}
	}
	return under
}

// stacks are precedence graphs whose number of legal orders is published.
var stacks = []stack{
	{"nothing covers anything", "n! orders", forest(-1, -1, -1, -1, -1), 120},
	{"a chain", "one order", forest(-1, 0, 1, 2, 3), 1},
	{"a fence of four", "Euler zigzag numbers, OEIS A000111: 1, 1, 1, 2, 5, 16, 61, 272", zigzag(4), 5},
	{"a fence of five", "Euler zigzag numbers, OEIS A000111", zigzag(5), 16},
	{"a fence of six", "Euler zigzag numbers, OEIS A000111", zigzag(6), 61},
	{"a ladder of four", "Catalan numbers, OEIS A000108: 1, 1, 2, 5, 14", ladder(2), 2},
	{"a ladder of six", "Catalan numbers, OEIS A000108", ladder(3), 5},
	{"a tree of six", "hook lengths of a forest, n! over the product of the sizes of its subtrees: Knuth, TAOCP vol. 3, 5.1.4, exercise 20, from memory: 720/(6·3·2)", forest(-1, 0, 0, 1, 1, 2), 20},
	{"two chains of three", "binomial(6, 3)", forest(-1, 0, 1, -1, 3, 4), 20},
	{"a root with five on it", "hook lengths of a forest: 720/6", forest(-1, 0, 0, 0, 0, 0), 120},
}

// machine has the parts of the stack, p0 to pn.
func (s stack) machine() string {
	var b strings.Builder
	b.WriteString("name: Product\nparts:\n")
	for i, under := range s.under {
		var ids []string
		for _, u := range under {
			ids = append(ids, fmt.Sprintf("p%d", u))
		}
		fmt.Fprintf(&b, "  p%d: { name: piece %d, under: [%s] }\n", i, i, strings.Join(ids, ", "))
	}
	return b.String()
}

// orders gives every order of n parts.
func orders(n int) [][]int {
	out := [][]int{nil}
	for range n {
		var longer [][]int
		for _, o := range out {
			for i := range n {
				if !slices.Contains(o, i) {
					longer = append(longer, append(slices.Clone(o), i))
				}
			}
		}
		out = longer
	}
	return out
}

// work is the text of a procedure that takes the parts off in an order, or puts
// them on.
func work(verb string, order []int, leaves string) string {
	var b, acts strings.Builder
	var parts []string
	for i, p := range order {
		fmt.Fprintf(&acts, "%d. [](%s:p%d)\n", i+1, verb, p)
		parts = append(parts, fmt.Sprintf("p%d: %s", p, leaves))
	}
	at := "leaves"
	if verb == "refit" {
		at = "expects"
	}
	fmt.Fprintf(&b, "---\ntitle: Job\nfor: product\n%s: { %s }\n---\n\n## Work\n\n%s", at, strings.Join(parts, ", "), acts.String())
	return b.String()
}

// inTheWay is what an order that is not legal is told by.
var inTheWay = map[string]string{"remove": "not-reachable", "refit": "refit-over-open"}

// countLegal is in how many orders the walk lets the acts pass, all orders
// being procedures of one manual.
func (s stack) countLegal(t *testing.T, verb string) int {
	files := map[string]string{"shop.yaml": "title: Shop\n", "machines/product.yaml": s.machine()}
	all := orders(len(s.under))
	for i, o := range all {
		files[fmt.Sprintf("procedures/o%04d.md", i)] = work(verb, o, "off")
	}
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%s: %s", found[0].At.Path(), found[0].Message)
	}
	res, legal := walk.All(m), 0
	for _, p := range m.Procedures {
		list := res.Of(p).Findings
		if len(list) == 0 {
			legal++
		}
		for _, f := range list {
			if f.Code != inTheWay[verb] || f.Level != finding.Error {
				t.Fatalf("%s: %s: %s", s.about, f.Code, f.Message)
			}
		}
	}
	return legal
}

// TestLegalOrdersAreAsManyAsPublished counts the orders in which a product can
// be taken apart, and put together, as the walk lets them pass: the linear
// extensions of what lies under what.
func TestLegalOrdersAreAsManyAsPublished(t *testing.T) {
	for _, s := range stacks {
		for _, verb := range []string{"remove", "refit"} {
			if got := s.countLegal(t, verb); got != s.legal {
				t.Errorf("%s: %d orders to %s, published %d (%s)", s.about, got, verb, s.legal, s.source)
			}
		}
	}
}
