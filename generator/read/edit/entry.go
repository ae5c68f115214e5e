package edit

import (
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// Value is what a field of an entry is to have.
type Value struct {
	Text  string   // as YAML in one line; "" takes the field out
	Items []string // of a list or a map, each as YAML; nil of one text
}

// Entry is the entry of a register or of a machine's file at the end of the
// keys that lead to it; nil where there is none with fields.
func Entry(file *position.File, keys []string) *syntax.Node {
	node, _ := syntax.YAML(file, 0, len(file.Text))
	for _, key := range keys {
		node = node.Get(key)
	}
	if node == nil || node.Kind != syntax.Map || len(node.Pairs) == 0 {
		return nil
	}
	return node
}

// Change is a file with one field of an entry changed: of a list or a map those
// of its items that differ. What results is judged by reading it; it is false
// where no place is safe.
func Change(file *position.File, keys []string, field string, to Value) (*position.File, bool) {
	node := Entry(file, keys)
	if node == nil {
		return nil, false
	}
	before, _ := syntax.YAML(file, 0, len(file.Text))
	i := slices.IndexFunc(node.Pairs, func(p syntax.Pair) bool { return p.Key == field })
	for _, piece := range changes(file.Text, node, i, field, to) {
		now := patch.Applied(file, []patch.Piece{piece})
		after, _ := syntax.YAML(now, 0, len(now.Text))
		if after != nil && differs(before, after, keys, field) && hasValue(Entry(now, keys), field, to.Text) {
			return now, true
		}
	}
	return nil, false
}

// changes are the ways to change a field, the one that moves least first. i is
// the field's place in its entry; less than 0 where it is not there.
func changes(text string, node *syntax.Node, i int, field string, to Value) []patch.Piece {
	switch {
	case i < 0 && to.Text == "":
		return nil
	case i < 0:
		return added(text, node, field+": "+to.Text)
	}
	p := node.Pairs[i]
	start, end := p.KeyAt.Start, valueEnd(text, p)
	switch {
	case to.Text == "" && text[node.At.Start] == '{':
		return append(lastCut(text, start, end), cuts(text, position.Pos{File: p.KeyAt.File, Start: start, End: end})...)
	case to.Text == "":
		return []patch.Piece{lineCut(text, start, end)}
	}
	var out []patch.Piece
	if len(to.Items) > 0 && len(itemsOf(p.Value)) > 0 {
		out = append(out, itemwise(text, p, end, to.Items))
	}
	if p.Value.Kind != syntax.Empty {
		out = append(out, patch.Piece{At: p.Value.At.Start, Cut: p.Value.At.End - p.Value.At.Start, Text: to.Text})
	}
	colon := start + strings.IndexByte(text[start:], ':') + 1
	return append(out, patch.Piece{At: colon, Cut: max(0, end-colon), Text: " " + to.Text})
}

// lastCut takes the last field between brackets out, with the comma before it:
// the space before the bracket stays.
func lastCut(text string, start, end int) []patch.Piece {
	before := strings.TrimRight(text[:start], " \n")
	if !strings.HasSuffix(before, ",") || !strings.HasPrefix(strings.TrimLeft(text[end:], " \n"), "}") {
		return nil
	}
	return []patch.Piece{{At: len(before) - 1, Cut: end - len(before) + 1}}
}

// added are the ways to put a new field at the end of an entry.
func added(text string, node *syntax.Node, line string) []patch.Piece {
	if text[node.At.Start] == '{' {
		last, comma, end := lastInside(text[node.At.Start:])
		switch {
		case end == 0:
			return nil
		case comma:
			line = " " + line
		default:
			line = ", " + line
		}
		return []patch.Piece{{At: node.At.Start + last, Text: line}}
	}
	first, last := node.Pairs[0], node.Pairs[len(node.Pairs)-1]
	at := lineEndFrom(text, valueEnd(text, last))
	return []patch.Piece{{At: at, Text: "\n" + strings.Repeat(" ", column(text, first.KeyAt.Start)) + line}}
}

// column is how many bytes stand before an offset in its line.
func column(text string, at int) int { return at - (strings.LastIndexByte(text[:at], '\n') + 1) }

// lineCut takes the whole lines of a field out.
func lineCut(text string, start, end int) patch.Piece {
	from := start - column(text, start)
	return patch.Piece{At: from, Cut: min(lineEndFrom(text, end)+1, len(text)) - from}
}

// valueEnd is where a field's value ends: behind its bracket, its text, or the
// last of its lines.
func valueEnd(text string, p syntax.Pair) int {
	v := p.Value
	if v.Kind >= syntax.Map && v.At.Start < len(text) && strings.ContainsRune("[{", rune(text[v.At.Start])) {
		if _, _, end := lastInside(text[v.At.Start:]); end > 0 {
			return v.At.Start + end
		}
	}
	start, end := p.KeyAt.Start, lineEndFrom(text, p.KeyAt.Start)
	if v.Kind == syntax.Scalar && v.At.End <= end && !strings.ContainsRune("|>", rune(text[v.At.Start])) {
		return v.At.End
	}
	deep := column(text, start)
	for from := end + 1; from < len(text); {
		to := lineEndFrom(text, from)
		line := text[from:to]
		in := len(line) - len(strings.TrimLeft(line, " "))
		inside := in > deep || in == deep && strings.HasPrefix(line[in:], "- ")
		if !between(line) && !inside {
			break
		}
		if inside && strings.TrimSpace(line) != "" {
			end = to
		}
		from = to + 1
	}
	return end
}

// itemwise changes the items of a list or a map that differ. Those that stay
// keep how they are written; one a line, they keep what stands behind them.
func itemwise(text string, p syntax.Pair, end int, items []string) patch.Piece {
	had := itemsOf(p.Value)
	if strings.ContainsRune("[{", rune(text[p.Value.At.Start])) {
		return inPlace(text, had, items)
	}
	return byLine(text, end, had, items)
}

// item is one of a list's items, or of a map's fields.
type item struct {
	start, end int
	key        string // of a map
	value      *syntax.Node
}

func itemsOf(n *syntax.Node) []item {
	var out []item
	for _, v := range n.Items {
		out = append(out, item{start: v.At.Start, end: v.At.End, value: v})
	}
	for _, p := range n.Pairs {
		out = append(out, item{start: p.KeyAt.Start, end: max(p.KeyAt.End, p.Value.At.End), key: p.Key, value: p.Value})
	}
	return out
}

// is says whether an item means what another says as YAML.
func (it item) is(text string) bool {
	f := position.NewFile("", "x: { "+text+" }\n")
	if it.key == "" {
		f = position.NewFile("", "x: ["+text+"]\n")
	}
	n, _ := syntax.YAML(f, 0, len(f.Text))
	list := n.Get("x")
	if list == nil {
		return false
	}
	other := itemsOf(list)
	return len(other) == 1 && other[0].key == it.key && same(other[0].value, it.value)
}

// inPlace changes a list between brackets from one item to the next.
func inPlace(text string, had []item, items []string) patch.Piece {
	var b strings.Builder
	for i, now := range items {
		for _, it := range had {
			if it.is(now) {
				now = text[it.start:it.end]
				break
			}
		}
		switch {
		case i > 0 && i < len(had):
			b.WriteString(text[had[i-1].end:had[i].start])
		case i > 0:
			b.WriteString(", ")
		}
		b.WriteString(now)
	}
	return patch.Piece{At: had[0].start, Cut: had[len(had)-1].end - had[0].start, Text: b.String()}
}

// byLine changes a list whose items stand one a line.
func byLine(text string, end int, had []item, items []string) patch.Piece {
	lineOf := func(i int) int {
		if i == len(had) {
			return min(end+1, len(text))
		}
		return had[i].start - column(text, had[i].start)
	}
	first := lineOf(0)
	head := text[first:had[0].start] // the indent, and the dash of a list
	var out []string
	for _, now := range items {
		line := head + now
		for i, it := range had {
			whole := strings.TrimSuffix(text[lineOf(i):lineOf(i+1)], "\n")
			if it.is(now) {
				line = whole
				break
			}
			if key, _, _ := strings.Cut(now, ":"); key == it.key {
				line = text[lineOf(i):it.start] + now + whole[it.end-lineOf(i):]
			}
		}
		out = append(out, line)
	}
	return patch.Piece{At: first, Cut: max(0, end-first), Text: strings.Join(out, "\n")}
}

// differs says whether two files differ in nothing but one field of an entry.
func differs(before, after *syntax.Node, keys []string, field string) bool {
	if before == nil || after == nil {
		return false
	}
	if len(keys) == 0 {
		return before.Kind == after.Kind && sameBut(before, after, field)
	}
	return before.Kind == after.Kind && sameBut(before, after, keys[0]) && differs(before.Get(keys[0]), after.Get(keys[0]), keys[1:], field)
}

// hasValue says whether a field means what is said as YAML.
func hasValue(n *syntax.Node, field, text string) bool {
	if text == "" {
		return n.Get(field) == nil
	}
	f := position.NewFile("", "x: { y: "+text+" }\n")
	want, _ := syntax.YAML(f, 0, len(f.Text))
	got := n.Get(field)
	return got != nil && want.Get("x").Get("y") != nil && same(got, want.Get("x").Get("y"))
}
