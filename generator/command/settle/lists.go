package settle

import (
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/command/patch"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// lists completes the four lists of the front matter: what the steps use and a
// list lacks is added at its end.
func (t *text) lists() {
	if t.procedure.Broken || t.procedure.Misread {
		t.leave(t.procedure.At, "its front matter cannot all be read, so its lists stay as they are: see baybinder check")
		return
	}
	if len(t.roles) > 0 && !t.procedure.Lost("needs") {
		t.complete("needs", t.roles)
	}
	for _, name := range listNames {
		if missing := t.missing(name); len(missing) > 0 {
			t.complete(name, missing)
		}
	}
}

// listNames are the reconciled lists, in the format's order.
var listNames = []string{"hazards", "tools", "supplies", "holds"}

func listName(l model.List) string {
	switch l {
	case model.ListTools:
		return "tools"
	case model.ListSupplies:
		return "supplies"
	case model.ListHazards:
		return "hazards"
	case model.ListHolds:
		return "holds"
	}
	return ""
}

// missing are the ids that a list lacks, in the order in which steps use them.
// A supply that is not counted by the piece needs an amount, which nobody but
// the writer knows.
func (t *text) missing(name string) []string {
	var ids []string
	for _, f := range t.found {
		link := t.linkAt(f.At.Start)
		if f.Code != notListed || link == nil {
			continue
		}
		if name == "hazards" {
			ids = t.withSupplied(ids, link)
		}
		if listName(link.Kind.List) != name || slices.Contains(ids, link.ID) {
			continue
		}
		if t.hasSupply(link) {
			continue // it is a hazard of the supply that is not listed
		}
		if supply, is := link.To.(*model.Supply); is && !byThePiece(supply) {
			t.leave(link.At, "%s is used and not listed: write how much into supplies, in %s", supply.ID, supply.Unit)
			continue
		}
		ids = append(ids, link.ID)
	}
	return ids
}

// hasSupply says that the supply which a link names is in the list.
func (t *text) hasSupply(link *model.Link) bool {
	return link.Kind.List == model.ListSupplies &&
		slices.ContainsFunc(t.procedure.Supplies, func(use model.Use[model.Supply]) bool { return use.ID == link.ID })
}

// withSupplied adds the hazards that come with what a link uses, where the list
// lacks them.
func (t *text) withSupplied(ids []string, link *model.Link) []string {
	for _, h := range model.SuppliedHazards([]*model.Link{link}) {
		listed := slices.ContainsFunc(t.procedure.Hazards, func(use model.HazardUse) bool { return use.ID == h.ID })
		if !listed && !h.Unread && !slices.Contains(ids, h.ID) {
			ids = append(ids, h.ID)
		}
	}
	return ids
}

func (t *text) linkAt(start int) *model.Link {
	for _, link := range links(t.procedure) {
		if link.At.Start == start {
			return link
		}
	}
	return nil
}

func byThePiece(s *model.Supply) bool {
	unit, known := quantity.UnitNamed(s.Unit)
	return known && unit.Dimension() == quantity.Count
}

// complete adds ids to a list, if the front matter means afterwards what it
// meant before, and them.
func (t *text) complete(name string, ids []string) {
	piece, ok := Grow(t.procedure.File, name, ids)
	if !ok {
		t.leave(t.procedure.At, "%s lacks %s, and there is no safe place to write it: write it in by hand", name, strings.Join(ids, ", "))
		return
	}
	t.inserts = append(t.inserts, piece)
	t.done(t.procedure.At, "added to %s: %s", name, strings.Join(ids, ", "))
}

// Grow is the piece that adds ids to a list of a procedure's front matter, at
// its end. It is false where no place is safe.
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
	for _, id := range ids {
		if a.Kind == syntax.Map {
			want.Pairs = append(want.Pairs, syntax.Pair{Key: id, Value: &syntax.Node{}})
		} else {
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
