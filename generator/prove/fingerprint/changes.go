package fingerprint

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"baybinder/generator/language/words"
)

// block is a step, a phase's opening or the procedure's own lines.
type block struct {
	in    *words.Changes // the words of what is told of it
	name  string         // "step 2.1.3"
	depth string         // of a step
	ids   bool           // of the first form: what its links name has its id there
	lines []string
}

func (b block) same(other block) bool {
	return b.depth == other.depth && slices.Equal(b.lines, other.lines)
}

// blocks parts a form and numbers its steps as the page does.
func blocks(f Form, in *words.Changes) []block {
	var out []block
	var at []int // phase, step, sub-step …
	add := func(name, depth string) {
		out = append(out, block{in: in, name: name, depth: depth, ids: f.number() == firstForm})
	}
	for _, line := range f {
		switch word, rest, _ := strings.Cut(line, " "); {
		case word == "":
			if n := len(out); n > 0 {
				out[n-1].lines = append(out[n-1].lines, strings.TrimPrefix(line, " "))
			}
		case word == "phase":
			at = []int{first(at) + 1}
			add(fmt.Sprintf(in.Phase, at[0]), "")
		case word == "step":
			at = next(at, rest)
			add(fmt.Sprintf(in.Step, dotted(at)), rest)
		case word == "procedure":
			add(in.Job, "")
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
func Changes(before, now Form, in *words.Changes) []string {
	old, new := blocks(before.Own(), in), blocks(now.Own(), in)
	var out []string
	i, j := 0, 0
	for _, m := range append(matches(old, new), [2]int{len(old), len(new)}) {
		out = append(out, between(old[i:m[0]], new[j:m[1]])...)
		i, j = m[0]+1, m[1]+1
	}
	return append(out, calleeChanges(before, now, in)...)
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
		out = append(out, fmt.Sprintf(b.in.Gone, b.name, b.says()))
	}
	for _, b := range new[n:] {
		out = append(out, fmt.Sprintf(b.in.New, b.name, b.says()))
	}
	return out
}

func (b block) says() string {
	if len(b.lines) == 0 {
		return b.in.Silent
	}
	return b.statements(b.in)[0].String()
}

// within tells of the lines of a block that changed: what is another now, what
// came and what went.
func within(old, new block) []string {
	if old.depth != new.depth && slices.Equal(old.lines, new.lines) {
		return []string{fmt.Sprintf(new.in.Renumbered, new.name, old.name)}
	}
	was, is := old.statements(new.in), new.statements(new.in)
	pairUp(was, is)
	gone, come := without(was, is), without(is, was)
	if len(gone)+len(come) == 0 {
		return []string{fmt.Sprintf(new.in.Reordered, new.name)}
	}
	var out []string
	for _, c := range come {
		if i := slices.IndexFunc(gone, c.isAbout); i >= 0 {
			out = append(out, fmt.Sprintf(new.in.Other, new.name, c, gone[i].value))
			gone = slices.Delete(gone, i, i+1)
			continue
		}
		if !c.toldBy(come) {
			out = append(out, fmt.Sprintf(new.in.Also, new.name, c))
		}
	}
	for _, g := range gone {
		if !g.toldBy(gone) {
			out = append(out, fmt.Sprintf(new.in.NoLonger, new.name, g))
		}
	}
	return out
}

// statement is one line of a block, for a reader.
type statement struct {
	link  string // of a link and of its fields: kind and id
	field string // "" of the link itself
	about string // "hold capacitor wait, for:"
	value string // "60 min"
}

// String has no value of a link without a name.
func (s statement) String() string { return strings.TrimSpace(s.about + " " + s.value) }

func (s statement) isAbout(o statement) bool { return s.link == o.link && s.field == o.field }

func (s statement) same(o statement) bool { return s.isAbout(o) && s.value == o.value }

// toldBy says that a field's link is in the list too, and tells of it.
func (s statement) toldBy(list []statement) bool {
	return s.link != "" && s.field != "" && slices.ContainsFunc(list, statement{link: s.link}.isAbout)
}

// without is the statements of a that b has not.
func without(a, b []statement) []statement {
	var out []statement
	rest := slices.Clone(b)
	for _, s := range a {
		if i := slices.IndexFunc(rest, s.same); i >= 0 {
			rest = slices.Delete(rest, i, i+1)
			continue
		}
		out = append(out, s)
	}
	return out
}

// pairUp lays links that are called otherwise now beside those of their kind
// that are gone, in their order, so that what else changed of them is told.
func pairUp(was, is []statement) {
	links := func(of, other []statement) []string {
		var out []string
		for _, s := range of {
			if s.field == "" && !slices.ContainsFunc(other, s.isAbout) {
				out = append(out, s.link)
			}
		}
		return out
	}
	gone := links(was, is)
	for _, come := range links(is, was) {
		kind, _, _ := strings.Cut(come, " ")
		i := slices.IndexFunc(gone, func(link string) bool { return strings.HasPrefix(link, kind+" ") })
		if i < 0 {
			continue
		}
		for k := range is {
			if is[k].link == come {
				is[k].link = gone[i]
			}
		}
		gone = slices.Delete(gone, i, i+1)
	}
}

// statements are a block's lines. What a link names is called by its name, and
// with what is said beside it: "bolt at tray".
func (b block) statements(in *words.Changes) []statement {
	var out []statement
	var link, kind, name string
	for i, line := range b.lines {
		word, rest, _ := strings.Cut(strings.TrimSpace(line), " ")
		switch {
		case word == "link" && !strings.HasPrefix(line, " "):
			link = rest
			kind, name, _ = strings.Cut(rest, " ")
			if b.ids && !strings.ContainsAny(name, "#=!") {
				name = cmp.Or(nameIn(b.lines[i+1:]), name)
			}
			out = append(out, statement{link: link, about: in.Term(kind), value: name})
		case strings.HasPrefix(line, " "):
			field, value, _ := strings.Cut(strings.TrimSpace(line), ": ")
			if field != "name" && (b.ids || field != "option") { // it is what the link is called
				out = append(out, statement{link, field, strings.TrimSpace(in.Term(kind)+" "+name) + ", " + in.Term(field) + ":", value})
			}
		default:
			out = append(out, said(word, rest, in))
		}
	}
	return out
}

// said is a line that is no link's.
func said(word, rest string, in *words.Changes) statement {
	switch word {
	case "words":
		return statement{field: word, about: in.Says, value: quoted(rest)}
	case "because":
		return statement{field: word, about: in.Reason, value: quoted(rest)}
	case "at":
		return statement{field: word, about: in.AtRefit, value: quoted(strings.TrimPrefix(rest, "the refit "))}
	case "post", "expects", "leaves":
		of, value, _ := strings.Cut(rest, " ")
		return statement{field: word + " " + of, about: in.Term(word) + " " + of + ":", value: value}
	}
	return statement{field: word, about: in.Term(word) + ":", value: rest}
}

func quoted(text string) string { return "“" + text + "”" }

// nameIn is the name among the fields of a link, which follow it: the first.
func nameIn(after []string) string {
	if len(after) == 0 {
		return ""
	}
	called, is := strings.CutPrefix(after[0], " name: ")
	if !is {
		return ""
	}
	return called
}

func calleeChanges(before, now Form, in *words.Changes) []string {
	old := map[string]string{}
	for _, c := range before.callees() {
		old[c.id] = c.print
	}
	var out []string
	for _, c := range now.callees() {
		was, had := old[c.id]
		if !had {
			out = append(out, fmt.Sprintf(in.Performs, c.id))
		} else if was != c.print {
			out = append(out, fmt.Sprintf(in.Performed, c.id))
		}
		delete(old, c.id)
	}
	for _, id := range slices.Sorted(maps.Keys(old)) {
		out = append(out, fmt.Sprintf(in.NotPerformed, id))
	}
	return out
}
