package edit

import (
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// front is a front matter as it was written. It finds the place where a list
// grows; whether the place was right is judged by reading the result.
type front struct {
	file *position.File
	node *syntax.Node
}

// adding is the piece that adds ids to a list. It is false where there is no
// front matter to write into.
func (f *front) adding(name string, ids []string) (patch.Piece, bool) {
	list := f.node.Get(name)
	switch {
	case !strings.HasPrefix(f.file.Text, "---\n"):
		return patch.Piece{}, false
	case list == nil:
		return f.newLine(name, ids), true
	case f.startsWith(list, "["), f.startsWith(list, "{"):
		return f.inBrackets(list, ids)
	case list.Kind == syntax.List, list.Kind == syntax.Map:
		return f.below(name, list, ids), true
	}
	return patch.Piece{}, false
}

func (f *front) startsWith(n *syntax.Node, sign string) bool {
	return strings.HasPrefix(f.file.Text[n.At.Start:], sign)
}

// newLine writes a list that was not there after the last of the fields that
// come before it in the format's order.
func (f *front) newLine(name string, ids []string) patch.Piece {
	at, indent := len("---"), ""
	if len(f.node.Pairs) > 0 {
		indent = f.indentAt(f.node.Pairs[0].KeyAt.Start)
	}
	for i, p := range f.node.Pairs {
		if rank(p.Key) < rank(name) {
			at = f.endOf(i)
		}
	}
	return patch.Piece{At: at, Text: "\n" + indent + name + ": [" + strings.Join(ids, ", ") + "]"}
}

func rank(field string) int { return slices.Index(fieldOrder, field) }

// indentAt is what stands in a line before an offset.
func (f *front) indentAt(offset int) string {
	return f.file.Text[strings.LastIndexByte(f.file.Text[:offset], '\n')+1 : offset]
}

// endOf is the end of the last line of the field at an index: comments at the
// margin and empty lines after it belong to what comes next.
func (f *front) endOf(i int) int {
	start := f.node.Pairs[i].KeyAt.Start
	end := f.end()
	if i+1 < len(f.node.Pairs) {
		end = f.node.Pairs[i+1].KeyAt.Start
	}
	lines := strings.Split(f.file.Text[start:end], "\n")
	lines = lines[:len(lines)-1] // the indent of what comes next
	for len(lines) > 1 && between(lines[len(lines)-1]) {
		lines = lines[:len(lines)-1]
	}
	return start + len(strings.Join(lines, "\n"))
}

func between(line string) bool {
	return strings.TrimSpace(line) == "" || strings.HasPrefix(line, "#")
}

// end is the offset of the line that closes the front matter.
func (f *front) end() int {
	from := len("---")
	for {
		i := strings.Index(f.file.Text[from:], "\n---")
		if i < 0 {
			return len(f.file.Text)
		}
		from += i + 1
		if line, _, _ := strings.Cut(f.file.Text[from:], "\n"); strings.TrimSpace(line) == "---" {
			return from
		}
	}
}

// below adds to a list whose entries stand one a line under its name.
func (f *front) below(name string, list *syntax.Node, ids []string) patch.Piece {
	i := slices.IndexFunc(f.node.Pairs, func(p syntax.Pair) bool { return p.Key == name })
	before := f.indentAt(list.At.Start)
	if list.Kind == syntax.List {
		before += f.dash(list)
	} else {
		ids = mapped(ids)
	}
	var text strings.Builder
	for _, id := range ids {
		text.WriteString("\n" + before + id)
	}
	return patch.Piece{At: f.endOf(i), Text: text.String()}
}

// dash is what stands before the first entry of a list, as the writer has it.
func (f *front) dash(list *syntax.Node) string {
	line, _, _ := strings.Cut(f.file.Text[list.At.Start:], "\n")
	entry := strings.TrimLeft(strings.TrimPrefix(line, "-"), " ")
	if entry == "" || entry[0] == '#' {
		return "- " // the entry stands in the next line
	}
	return line[:len(line)-len(entry)]
}

// inBrackets adds to a list in [ ] or { }, after its last entry.
func (f *front) inBrackets(list *syntax.Node, ids []string) (patch.Piece, bool) {
	last, comma, end := lastInside(f.file.Text[list.At.Start:])
	if end == 0 {
		return patch.Piece{}, false
	}
	if list.Kind == syntax.Map {
		ids = mapped(ids)
	}
	text := strings.Join(ids, ", ")
	switch {
	case comma:
		text = " " + text
	case len(list.Items)+len(list.Pairs) > 0:
		text = ", " + text
	}
	return patch.Piece{At: list.At.Start + last, Text: text}, true
}

// mapped writes ids as the keys of a map, those that bring none without an
// amount.
func mapped(ids []string) []string {
	out := make([]string, len(ids))
	for i, id := range ids {
		if out[i] = id; !strings.Contains(id, ": ") {
			out[i] += ":"
		}
	}
	return out
}

// lastInside finds where a list in brackets can grow: the offset after the
// last sign that is neither space nor comment, and whether that is a comma.
// The text begins with the list's bracket; end is behind the one that closes it,
// 0 where none does.
func lastInside(text string) (last int, comma bool, end int) {
	depth := 0
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case c == ' ' || c == '\n' || c == '\t':
			continue
		case c == '#' && strings.ContainsRune(" \t\n", rune(text[i-1])):
			i = lineEndFrom(text, i) - 1
			continue
		case (c == '"' || c == '\'') && startsToken(text[:i]):
			i = quoteEnd(text, i)
		case c == '[' || c == '{':
			depth++
		case c == ']' || c == '}':
			if depth--; depth == 0 {
				return last, comma, i + 1
			}
		}
		last, comma = i+1, i < len(text) && text[i] == ','
	}
	return 0, false, 0
}

func lineEndFrom(text string, from int) int {
	if i := strings.IndexByte(text[from:], '\n'); i >= 0 {
		return from + i
	}
	return len(text)
}

// startsToken says whether a quote here begins a text: inside a plain text it
// is a sign like any other.
func startsToken(before string) bool {
	trimmed := strings.TrimRight(before, " \t\n")
	return trimmed != "" && strings.ContainsRune("[{,:", rune(trimmed[len(trimmed)-1]))
}

// quoteEnd is the offset of the quote that closes a text. A quote in a text is
// written twice, or after a backslash in double quotes.
func quoteEnd(text string, from int) int {
	quote := text[from]
	for i := from + 1; i < len(text); i++ {
		switch {
		case text[i] == '\\' && quote == '"':
			i++
		case text[i] == quote && quote == '\'' && i+1 < len(text) && text[i+1] == quote:
			i++
		case text[i] == quote:
			return i
		}
	}
	return len(text)
}

// scalar is the piece that gives a field of one word its value.
func (f *front) scalar(name, value string) (patch.Piece, bool) {
	had := f.node.Get(name)
	switch {
	case !strings.HasPrefix(f.file.Text, "---\n"):
		return patch.Piece{}, false
	case had == nil:
		piece := f.newLine(name, nil)
		piece.Text = strings.TrimSuffix(piece.Text, "[]") + value
		return piece, true
	}
	return patch.Piece{At: had.At.Start, Cut: had.At.End - had.At.Start, Text: value}, had.Kind == syntax.Scalar
}

// without is the piece that takes a field's lines out.
func (f *front) without(name string) (patch.Piece, bool) {
	i := slices.IndexFunc(f.node.Pairs, func(p syntax.Pair) bool { return p.Key == name })
	if i < 0 || !strings.HasPrefix(f.file.Text, "---\n") {
		return patch.Piece{}, false
	}
	start := strings.LastIndexByte(f.file.Text[:f.node.Pairs[i].KeyAt.Start], '\n') + 1
	end := lineEndFrom(f.file.Text, f.endOf(i)) + 1
	return patch.Piece{At: start, Cut: end - start}, true
}
