package fingerprint

import (
	"fmt"
	"slices"
	"strings"
)

// block is a step, a phase's opening or the procedure's own lines.
type block struct {
	name  string // "step 2.1.3"
	lines []string
}

func (b block) same(other block) bool { return slices.Equal(b.lines, other.lines) }

// blocks parts a form and numbers its steps as the page does.
func blocks(f Form) []block {
	var out []block
	var at []int // phase, step, sub-step …
	for _, line := range f {
		switch word, rest, _ := strings.Cut(line, " "); {
		case word == "":
			if n := len(out); n > 0 {
				out[n-1].lines = append(out[n-1].lines, strings.TrimPrefix(line, " "))
			}
		case word == "phase":
			at = []int{first(at) + 1}
			out = append(out, block{name: fmt.Sprintf("phase %d", at[0])})
		case word == "step":
			at = next(at, rest)
			out = append(out, block{name: "step " + dotted(at)})
		case word == "procedure":
			out = append(out, block{name: "the whole job"})
		}
	}
	return out
}

func first(at []int) int {
	if len(at) == 0 {
		return 0
	}
	return at[0]
}

// next is the number after at, at a depth that is written in figures.
func next(at []int, depth string) []int {
	d := 1
	fmt.Sscan(depth, &d) // what is no figure leaves it a step
	for len(at) <= d {
		at = append(at, 0)
	}
	at = slices.Clone(at[:d+1])
	at[d]++
	return at
}

func dotted(at []int) string {
	return strings.Trim(strings.ReplaceAll(fmt.Sprint(at), " ", "."), "[]")
}

// Changes says, step by step and in words, what is another for the reader.
func Changes(before, now Form) []string {
	old, new := blocks(before.Own()), blocks(now.Own())
	var out []string
	i, j := 0, 0
	for _, m := range append(matches(old, new), [2]int{len(old), len(new)}) {
		out = append(out, between(old[i:m[0]], new[j:m[1]])...)
		i, j = m[0]+1, m[1]+1
	}
	return append(out, calleeChanges(before, now)...)
}

// matches is the longest row of blocks that both have, as pairs of places.
func matches(old, new []block) [][2]int {
	most := make([][]int, len(old)+1)
	for i := range most {
		most[i] = make([]int, len(new)+1)
	}
	for i := len(old) - 1; i >= 0; i-- {
		for j := len(new) - 1; j >= 0; j-- {
			if most[i][j] = max(most[i+1][j], most[i][j+1]); old[i].same(new[j]) {
				most[i][j] = 1 + most[i+1][j+1]
			}
		}
	}
	var out [][2]int
	for i, j := 0, 0; i < len(old) && j < len(new); {
		switch {
		case old[i].same(new[j]):
			out = append(out, [2]int{i, j})
			i, j = i+1, j+1
		case most[i+1][j] >= most[i][j+1]:
			i++
		default:
			j++
		}
	}
	return out
}

// between tells of a stretch that both have no block of in common: changed in
// pairs, the rest new or gone.
func between(old, new []block) []string {
	var out []string
	n := min(len(old), len(new))
	for k := range n {
		out = append(out, within(old[k], new[k])...)
	}
	for _, b := range old[n:] {
		out = append(out, fmt.Sprintf("%s is gone: %s", b.name, b.says()))
	}
	for _, b := range new[n:] {
		out = append(out, fmt.Sprintf("%s is new: %s", b.name, b.says()))
	}
	return out
}

func (b block) says() string {
	if len(b.lines) == 0 {
		return "it says nothing"
	}
	return strings.TrimPrefix(b.lines[0], "words ")
}

// within tells of the lines of a block that changed.
func within(old, new block) []string {
	var out []string
	gone, come := without(old.lines, new.lines), without(new.lines, old.lines)
	if len(gone)+len(come) == 0 {
		return []string{new.name + " has the same in another order"}
	}
	for k := range max(len(gone), len(come)) {
		switch {
		case k >= len(gone):
			out = append(out, fmt.Sprintf("%s has now: %s", new.name, come[k]))
		case k >= len(come):
			out = append(out, fmt.Sprintf("%s has no longer: %s", new.name, gone[k]))
		default:
			out = append(out, fmt.Sprintf("%s: was: %s; is: %s", new.name, gone[k], come[k]))
		}
	}
	return out
}

// without is the lines of a that b has not; a field stands with its link.
func without(a, b []string) []string {
	var out []string
	rest := named(b)
	for _, line := range named(a) {
		if i := slices.Index(rest, line); i >= 0 {
			rest = slices.Delete(rest, i, i+1)
			continue
		}
		out = append(out, line)
	}
	return out
}

// named are a block's lines, each field with the id of the link before it.
func named(lines []string) []string {
	var out []string
	of := ""
	for _, line := range lines {
		switch {
		case strings.HasPrefix(line, "link "):
			of = strings.TrimPrefix(line, "link ")
			out = append(out, of)
		case strings.HasPrefix(line, " "):
			out = append(out, of+","+line)
		default:
			out = append(out, line)
		}
	}
	return out
}

func calleeChanges(before, now Form) []string {
	old := map[string]string{}
	for _, line := range before {
		if rest, is := strings.CutPrefix(line, calleeLine); is {
			id, print, _ := strings.Cut(rest, " ")
			old[id] = print
		}
	}
	var out []string
	for _, line := range now {
		rest, is := strings.CutPrefix(line, calleeLine)
		id, print, _ := strings.Cut(rest, " ")
		if was, had := old[id]; is && had && was != print {
			out = append(out, "what it performs changed: "+id)
		}
	}
	return out
}
