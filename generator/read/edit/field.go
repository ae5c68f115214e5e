package edit

import (
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// Front is a procedure's file with one field of its front matter changed: of a
// map or a list those of its items that differ; without a text the field goes.
// What results is judged by reading it; it is false where no place is safe.
func Front(file *position.File, name string, to Value) (*position.File, bool) {
	doc, _ := syntax.Read(file)
	if doc.Front == nil || !strings.HasPrefix(doc.File.Text, "---\n") {
		return nil, false
	}
	f := &front{file: doc.File, node: doc.Front}
	for _, piece := range f.ways(name, to) {
		now := patch.Applied(doc.File, []patch.Piece{piece})
		after, _ := syntax.Read(now)
		if after.Front != nil && sameBut(doc.Front, after.Front, name) && hasValue(after.Front, name, to.Text) {
			return now, true
		}
	}
	return nil, false
}

// ways are those in which a field comes to a value, the one that moves least
// first.
func (f *front) ways(name string, to Value) []patch.Piece {
	i := slices.IndexFunc(f.node.Pairs, func(p syntax.Pair) bool { return p.Key == name })
	switch {
	case i < 0 && to.Text == "":
		return []patch.Piece{{}} // there is nothing to take out
	case i < 0:
		piece := f.newLine(name, nil)
		piece.Text = strings.TrimSuffix(piece.Text, "[]") + to.Text
		return []patch.Piece{piece}
	case to.Text == "":
		piece, _ := f.without(name)
		return []patch.Piece{piece}
	}
	return changes(f.file.Text, f.node, i, name, to)
}
