// Package edit makes pieces that change a procedure's file: a list of its front matter grows, words stand in a link.
package edit

import (
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// LinkText is a text written so that between the brackets of a Markdown link
// it means itself.
func LinkText(words string) string {
	var b strings.Builder
	for i, r := range words {
		if strings.ContainsRune("\\[]*_`<|", r) || r == '&' && strings.Contains(words[i:], ";") {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// Grow is the piece that adds ids to a list of a procedure's front matter, at
// its end; an id may bring its amount, "hydraulic-oil: 4 L". It is false where no
// place is safe.
func Grow(file *position.File, name string, ids []string) (patch.Piece, bool) {
	doc, _ := syntax.Read(file)
	if doc.Front == nil {
		return patch.Piece{}, false
	}
	f := &front{file: doc.File, node: doc.Front}
	piece, ok := f.adding(name, ids)
	if !ok {
		return piece, false
	}
	after, _ := syntax.Read(patch.Applied(doc.File, []patch.Piece{piece}))
	return piece, grown(doc.Front, after.Front, name, ids)
}

// grown says whether a front matter is another one with the ids added at the
// end of a list, and nothing else.
func grown(before, after *syntax.Node, name string, ids []string) bool {
	if after == nil || len(after.Pairs) < len(before.Pairs) {
		return false
	}
	rest := slices.Clone(after.Pairs)
	for _, p := range before.Pairs {
		i := slices.IndexFunc(rest, func(q syntax.Pair) bool { return q.Key == p.Key })
		if i < 0 || p.Key != name && !same(p.Value, rest[i].Value) {
			return false
		}
		if p.Key == name && !longer(p.Value, rest[i].Value, ids) {
			return false
		}
		rest = slices.Delete(rest, i, i+1)
	}
	if before.Get(name) != nil {
		return len(rest) == 0
	}
	return len(rest) == 1 && rest[0].Key == name && longer(&syntax.Node{Kind: syntax.List}, rest[0].Value, ids)
}

// longer says whether b is the list a with the ids added.
func longer(a, b *syntax.Node, ids []string) bool {
	if a.Kind != b.Kind {
		return false
	}
	want := *a
	want.Items, want.Pairs = slices.Clone(a.Items), slices.Clone(a.Pairs)
	for _, entry := range ids {
		id, amount, counted := strings.Cut(entry, ": ")
		pair := syntax.Pair{Key: id, Value: &syntax.Node{}}
		if counted {
			pair.Value = &syntax.Node{Kind: syntax.Scalar, Text: amount}
		}
		switch {
		case a.Kind == syntax.Map:
			want.Pairs = append(want.Pairs, pair)
		case counted:
			want.Items = append(want.Items, &syntax.Node{Kind: syntax.Map, Pairs: []syntax.Pair{pair}})
		default:
			want.Items = append(want.Items, &syntax.Node{Kind: syntax.Scalar, Text: id})
		}
	}
	return same(&want, b)
}

// same says whether two values mean the same, wherever they stand.
func same(a, b *syntax.Node) bool {
	if a.Kind != b.Kind || a.Text != b.Text {
		return false
	}
	return slices.EqualFunc(a.Items, b.Items, same) && slices.EqualFunc(a.Pairs, b.Pairs, func(p, q syntax.Pair) bool {
		return p.Key == q.Key && same(p.Value, q.Value)
	})
}

// fieldOrder is the order in which the format shows a front matter's fields.
var fieldOrder = func() []string {
	var names []string
	t := reflect.TypeFor[model.Procedure]()
	for i := range t.NumField() {
		name, _, _ := strings.Cut(t.Field(i).Tag.Get("yaml"), ",")
		names = append(names, name)
	}
	return names
}()
