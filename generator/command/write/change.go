package write

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// asStands is the form of an entry that is there: what its fields say. A field
// that says more than the form can ask stays as it is in the file, and is not
// asked.
func asStands(f *Form, id string, n *syntax.Node) *Form {
	f.ID = id
	f.Fields = slices.DeleteFunc(f.Fields, func(field FormField) bool {
		v := n.Get(field.Key)
		return v != nil && v.Kind != syntax.Empty && !field.asks(v)
	})
	for i := range f.Fields {
		field := &f.Fields[i]
		field.Of = slices.DeleteFunc(field.Of, func(o Option) bool { return f.In == "parts" && field.Key == "under" && o.ID == id }) // nothing is under itself
		if v := n.Get(field.Key); v != nil {
			field.Now = field.saidBy(v)
		}
		field.offerWhatStands()
	}
	return f
}

// asks says whether a form can ask for what a value says.
func (f *FormField) asks(v *syntax.Node) bool {
	plain := func(n *syntax.Node) bool { return n.Kind == syntax.Scalar }
	switch f.Sort {
	case "yes":
		return plain(v) && slices.Contains([]string{"yes", "true", "no", "false"}, v.Text)
	case "many", "texts":
		return plain(v) || v.Kind == syntax.List && !slices.ContainsFunc(v.Items, func(n *syntax.Node) bool { return !plain(n) })
	case "counts":
		return v.Kind == syntax.Map && !slices.ContainsFunc(v.Pairs, func(p syntax.Pair) bool {
			n, err := strconv.Atoi(p.Value.Text)
			return !plain(p.Value) || err != nil || n < 1
		})
	case "pairs":
		return v.Kind == syntax.Map && !slices.ContainsFunc(v.Pairs, func(p syntax.Pair) bool { return !plain(p.Value) })
	}
	return plain(v)
}

// saidBy is what a value says, as the form answers it.
func (f *FormField) saidBy(v *syntax.Node) []string {
	between := ": "
	if f.Sort == "counts" {
		between = " "
	}
	var out []string
	if v.Kind == syntax.Scalar && (f.Sort != "yes" || v.Text == "yes" || v.Text == "true") {
		out = append(out, v.Text)
	}
	for _, n := range v.Items {
		out = append(out, n.Text)
	}
	for _, p := range v.Pairs {
		out = append(out, p.Key+between+p.Value.Text)
	}
	return out
}

// offerWhatStands lets what stands be chosen again, also where it means nothing.
func (f *FormField) offerWhatStands() {
	if f.Sort != "one" && f.Sort != "many" {
		return
	}
	for _, id := range f.Now {
		if !slices.ContainsFunc(f.Of, func(o Option) bool { return o.ID == id }) {
			f.Of = append(f.Of, Option{id, id})
		}
	}
}

// formFor is the form of an entry that is there, and the state of its file.
func (d *Desk) formFor(m *model.Machine, in, id string) (*Form, string, error) {
	f, err := formOf(d.bench(), m, in)
	if err != nil {
		return nil, "", err
	}
	path, keys := listAt(m, in)
	data, err := d.look(path)
	if err != nil {
		return nil, "", err
	}
	n := edit.Entry(d.fileOf(path), append(keys, id))
	if n == nil {
		return nil, "", noPlace
	}
	return asStands(f, id, n), stateOf(data), nil
}

// change changes those fields of an entry that have an answer.
func (d *Desk) change(a Asked, m *model.Machine) (*Told, error) {
	f, state, err := d.formFor(m, a.In, a.ID)
	if err != nil {
		return nil, err
	}
	if state != a.State {
		return nil, errChanged
	}
	path, keys := listAt(m, a.In)
	file := d.fileOf(path)
	now := file
	for _, field := range f.Fields {
		answer, given := a.Fields[field.Key]
		if !given {
			continue
		}
		to, err := field.yaml(inOrder(field, answer))
		if err != nil {
			return nil, err
		}
		if to.Text == "" && field.Need {
			return nil, missing(field.Key)
		}
		if to.Text == "" && a.In == "energies" && field.Key == "points" {
			to.Text = "[]" // nothing to switch off: that is said
		}
		if to.Text == "" && edit.Entry(now, append(keys, a.ID)).Get(field.Key) == nil {
			continue
		}
		next, ok := edit.Change(now, append(keys, a.ID), field.Key, to)
		if !ok {
			return nil, noPlace
		}
		now = next
	}
	if err := d.enter(&draft{file: file, text: now.Text}, state); err != nil {
		return nil, err
	}
	return d.written(a, a.ID)
}

// inOrder is an answer of several choices in the order of the file, what is new
// at its end.
func inOrder(f FormField, answer []string) []string {
	if f.Sort != "many" && f.Sort != "counts" {
		return answer
	}
	place := func(a string) int {
		id := func(said string) string { return strings.SplitN(said, " ", 2)[0] }
		i := slices.IndexFunc(f.Now, func(now string) bool { return id(now) == id(a) })
		if i < 0 {
			return len(f.Now)
		}
		return i
	}
	out := slices.Clone(answer)
	slices.SortStableFunc(out, func(a, b string) int { return place(a) - place(b) })
	return out
}
