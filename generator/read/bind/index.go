package bind

import (
	"cmp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// index finds the entries of one kind by id.
type index[T any] struct {
	of     string // whose, where it is a machine's: "Yard tug"
	what   string // "tool"
	where  string // "register/tools.yaml"
	least  string // what an entry needs behind its name; "" for the least of its register
	byID   map[string]*T
	beside []string // ids of another kind that would do as well: only to be offered
	broken bool     // a file of this kind could not be read: an unknown id says nothing
}

func newIndex[T any](what, where string) *index[T] {
	return &index[T]{what: what, where: where, byID: map[string]*T{}}
}

// find is the entry of an id. The finding is nil where there is one, and where
// nothing can be said.
func (x *index[T]) find(id string, at position.Pos) (*T, *finding.Finding) {
	if to := x.byID[id]; to != nil || x.broken {
		return to, nil
	}
	if to := x.misspelt(id); to != nil {
		return to, nil
	}
	f := UnknownReference.At(at, "there is no %s %s", finding.Say(x.what), id)
	if x.of != "" {
		f = UnknownReference.At(at, "the %s has no %s %s", x.of, finding.Say(x.what), id)
	}
	switch near := x.near(id); {
	case near != "":
		f = f.WithMend("did you mean %s?", near).WithFix(id, near)
	case x.inRegister() && decode.BadIDWhy(id).IsZero():
		f = f.WithMend("add to %s, or name one that is there: %s: { name: %s%s }", x.where, id, strings.ReplaceAll(id, "-", " "), cmp.Or(x.least, leastEntry[x.what]))
	case x.where != "":
		f = f.WithMend("write it in %s, or name one that is there", x.where)
	}
	return nil, &f
}

// misspelt is the entry whose id cannot be used and is this one as it should be
// written: that is told where it is made.
func (x *index[T]) misspelt(id string) *T {
	for _, made := range x.ids() {
		if made != id && syntax.PlainID(made) == id {
			return x.byID[made]
		}
	}
	return nil
}

// near is the id that another was probably meant for, or "".
func (x *index[T]) near(id string) string {
	return nearest.Of(id, sorted(slices.Concat(x.ids(), x.beside)))
}

// besides is the same index, where ids of another kind would do as well.
func (x *index[T]) besides(ids []string) *index[T] {
	same := *x
	same.beside = ids
	return &same
}

// asking is the same index, where an entry that is missing needs more than the
// least.
func (x *index[T]) asking(least string) *index[T] {
	same := *x
	same.least = least
	return &same
}

// inRegister says whether an entry is a line of a register.
func (x *index[T]) inRegister() bool { return strings.HasPrefix(x.where, "register/") }

// leastEntry is what the shortest entry of a register needs behind its name.
var leastEntry = map[string]string{
	"tool": ", kind: other", "hazard": ", harm: …, nature: …, consequence: …, avoid: [ … ]",
	"hold": ", kind: look, what: …", "supply": ", unit: each", "role": "",
}

func (x *index[T]) ids() []string {
	ids := make([]string, 0, len(x.byID))
	for id := range x.byID {
		ids = append(ids, id)
	}
	return sorted(ids)
}

// reader makes the references of one entry lead. A field that names what is not
// there is lost to the entry.
type reader struct {
	*notes
	of *model.Entry
}

// lead makes a reference lead to its entry; an empty one leads nowhere.
func lead[T any](r reader, field string, x *index[T], ref *model.Ref[T]) {
	if ref.ID == "" {
		return
	}
	to, f := x.find(ref.ID, ref.At)
	ref.To = to
	r.addIf(f)
	if to == nil {
		r.of.Lose(field)
	}
}

// leadAll makes every reference of a list lead to its entry.
func leadAll[T any](r reader, field string, x *index[T], refs []model.Ref[T]) {
	for i := range refs {
		lead(r, field, x, &refs[i])
	}
}

// leadUses makes every line of a list with amounts lead to its entry.
func leadUses[T any](r reader, field string, x *index[T], uses []model.Use[T]) {
	for i := range uses {
		lead(r, field, x, &uses[i].Ref)
	}
}

// notes keeps the findings of one piece of work; pieces that run at the same
// time have their own.
type notes struct {
	list []finding.Finding
}

func (n *notes) add(f finding.Finding) { n.list = append(n.list, f) }

func (n *notes) addIf(f *finding.Finding) {
	if f != nil {
		n.add(*f)
	}
}
