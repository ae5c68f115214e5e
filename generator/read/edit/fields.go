package edit

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// Put is the piece that gives a field of a procedure's front matter a value of
// one word. It is false where no place is safe.
func Put(file *position.File, name, value string) (patch.Piece, bool) {
	return one(file, name, value, (*front).scalar)
}

// Drop is the piece that takes a field out of a procedure's front matter. It is
// false where it is not there, or not safe to take out.
func Drop(file *position.File, name string) (patch.Piece, bool) {
	return one(file, name, "", func(f *front, name, _ string) (patch.Piece, bool) { return f.without(name) })
}

// one makes a piece and judges it by reading the result: the field is as it is
// to be, and every other as it was.
func one(file *position.File, name, value string, make func(f *front, name, value string) (patch.Piece, bool)) (patch.Piece, bool) {
	doc, _ := syntax.Read(file)
	if doc.Front == nil {
		return patch.Piece{}, false
	}
	piece, ok := make(&front{file: doc.File, node: doc.Front}, name, value)
	if !ok {
		return piece, false
	}
	after, _ := syntax.Read(patch.Applied(doc.File, []patch.Piece{piece}))
	return piece, after.Front != nil && valued(after.Front.Get(name), value) && sameBut(doc.Front, after.Front, name)
}

func valued(n *syntax.Node, value string) bool {
	if value == "" {
		return n == nil
	}
	return n != nil && n.Kind == syntax.Scalar && n.Text == value
}

// sameBut says whether two front matters differ in nothing but one field.
func sameBut(before, after *syntax.Node, name string) bool {
	rest := func(n *syntax.Node) []syntax.Pair {
		return slices.DeleteFunc(slices.Clone(n.Pairs), func(p syntax.Pair) bool { return p.Key == name })
	}
	return slices.EqualFunc(rest(before), rest(after), func(a, b syntax.Pair) bool { return a.Key == b.Key && same(a.Value, b.Value) })
}

// PutMap is the piece that gives a field which is not there yet a map, written
// in one line: leaves: { supply: dead }. It is false where no place is safe.
func PutMap(file *position.File, name string, entries []string) (patch.Piece, bool) {
	doc, _ := syntax.Read(file)
	if doc.Front == nil || doc.Front.Get(name) != nil || !strings.HasPrefix(doc.File.Text, "---\n") {
		return patch.Piece{}, false
	}
	piece := (&front{file: doc.File, node: doc.Front}).newLine(name, nil)
	piece.Text = strings.TrimSuffix(piece.Text, "[]") + "{ " + strings.Join(entries, ", ") + " }"
	after, _ := syntax.Read(patch.Applied(doc.File, []patch.Piece{piece}))
	if after.Front == nil || !sameBut(doc.Front, after.Front, name) {
		return piece, false
	}
	value := after.Front.Get(name)
	return piece, value != nil && value.Kind == syntax.Map && len(value.Pairs) == len(entries)
}

// Say is the piece that gives a field of a procedure's front matter a text, in
// quotes where YAML needs them. It is false where no place is safe.
func Say(file *position.File, name, text string) (patch.Piece, bool) {
	text = strings.Join(strings.Fields(text), " ")
	if text == "" {
		return patch.Piece{}, false
	}
	return one(file, name, text, func(f *front, name, text string) (patch.Piece, bool) { return f.scalar(name, Quoted(text)) })
}

// Quoted is a text of one line as YAML, also between { and }: in quotes unless
// it is plainly none of YAML's own signs.
func Quoted(text string) string {
	for i, r := range text {
		plain := unicode.IsLetter(r) || unicode.IsDigit(r) || i > 0 && strings.ContainsRune(" -.·/()°%±", r)
		if !plain {
			return strconv.QuoteToGraphic(text)
		}
	}
	if text == "" || strings.HasSuffix(text, " ") || strings.Contains(text, "...") {
		return strconv.QuoteToGraphic(text)
	}
	return text
}
