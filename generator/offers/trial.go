package offers

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/edit"
)

// Apply is a file's text with edits in it, which do not overlap. Those of other
// files are left out.
func Apply(f *position.File, edits []Edit) string {
	list := slices.DeleteFunc(slices.Clone(edits), func(e Edit) bool { return e.At.Path() != f.Path })
	slices.SortStableFunc(list, func(a, b Edit) int { return cmp.Compare(a.At.Start, b.At.Start) })
	var out strings.Builder
	last := 0
	for _, e := range list {
		out.WriteString(f.Text[last:e.At.Start])
		out.WriteString(e.Text)
		last = e.At.End
	}
	out.WriteString(f.Text[last:])
	return out.String()
}

// now is where an offset of a file stands once edits are in it.
func now(offset int, edits []Edit) int {
	by := 0
	for _, e := range edits {
		if e.At.Start < offset || e.At.Start == offset && e.At.End == e.At.Start {
			by += len(e.Text) - (e.At.End - e.At.Start)
		}
	}
	return offset + by
}

// tried is a procedure as it would be, and what is found in it.
type tried struct {
	*model.Procedure
	walk  *walk.Walk
	found []finding.Finding
}

// try binds, walks and checks a procedure with another text, in no manual.
func (b *Bench) try(path, text string) *tried {
	p, found := b.Bound.Try(position.NewFile(path, text))
	w := b.Walks.Try(p)
	found = slices.Concat(found, w.Findings, check.Procedure(b.Context, p))
	return &tried{p, w, b.tongue().TellAll(finding.Sort(found))}
}

// asWritten is a procedure as it stands.
func (b *Bench) asWritten(p *model.Procedure) *tried { return b.try(p.File.Path, p.File.Text) }

// weigh tries an offer, and says what is in the way and what it brings. found is
// what is found in the procedure as it stands.
func (b *Bench) weigh(o *Offer, slot Slot, found []finding.Finding, above callers) {
	lists, step := b.grown(slot.Procedure, o.Needs, o.amounts), Edit{slot.At, slot.Before + o.Sentence + slot.After}
	o.Edits = append(lists, step)
	t := b.try(slot.Procedure.File.Path, Apply(slot.Procedure.File, o.Edits))
	from := now(slot.At.Start, lists)
	old := stillThere(found, slot.Procedure.File.Path, o.Edits)
	for _, f := range t.found {
		switch inside := f.At.Path() == slot.Procedure.File.Path && from <= f.At.Start && f.At.Start < from+len(step.Text); {
		case inside && f.Level == finding.Error && !walk.Leaves(f.Rule):
			o.InTheWay = append(o.InTheWay, f.Message)
		case !inside && old[keyOf(f, f.At.Start)] > 0:
			old[keyOf(f, f.At.Start)]--
		default:
			o.Brings = append(o.Brings, f)
		}
	}
	if o.Possible() {
		o.Brings = append(o.Brings, above.brought(b, slot.Procedure, t.Procedure)...)
	}
}

// callers are the procedures that perform one, with what is found in them as
// things stand.
type callers struct {
	list  []*model.Procedure
	found map[string]int
}

// mostCallers is how many callers are looked at with each offer: a writer waits
// for it.
const mostCallers = 4

// callersOf are the first callers of a procedure.
func (b *Bench) callersOf(p *model.Procedure) callers {
	var c callers
	for _, q := range b.Manual().Procedures {
		if len(c.list) < mostCallers && q != p && slices.ContainsFunc(q.Calls, func(l *model.Link) bool { return l.To == model.Named(p) }) {
			c.list = append(c.list, q)
		}
	}
	if len(c.list) > 0 {
		c.found = stillThere(b.Walks.TryCallers(p, p, c.list), "", nil)
	}
	return c
}

// brought is what would be found in the callers besides, with a procedure as it
// would be in place of the one that they perform.
func (c callers) brought(b *Bench, of, instead *model.Procedure) []finding.Finding {
	if len(c.list) == 0 {
		return nil
	}
	var out []finding.Finding
	old := maps.Clone(c.found)
	for _, f := range b.Walks.TryCallers(of, instead, c.list) {
		if key := keyOf(f, f.At.Start); old[key] > 0 {
			old[key]--
		} else {
			out = append(out, b.tongue().Tell(f))
		}
	}
	return out
}

// stillThere counts findings by code and by the place that they have once edits
// are in their file. Their words may hold the numbers of steps, which move.
func stillThere(found []finding.Finding, path string, edits []Edit) map[string]int {
	out := map[string]int{}
	for _, f := range found {
		start := f.At.Start
		if f.At.Path() == path {
			start = now(start, edits)
		}
		out[keyOf(f, start)]++
	}
	return out
}

func keyOf(f finding.Finding, start int) string {
	return fmt.Sprintf("%s %s %d", f.Code, f.At.Path(), start)
}

// lists are the reconciled lists by the kind of a need's link, in the format's
// order, and the roles.
var lists = []struct{ name, kind string }{
	{"needs", model.LinkRole}, {"hazards", model.LinkHazard}, {"tools", model.LinkTool}, {"supplies", "supply"}, {"holds", model.LinkHold},
}

// grown are the edits that add to a procedure's lists what they lack of some
// needs, with amounts of those that have one. What finds no safe place is left to the check to tell.
func (b *Bench) grown(p *model.Procedure, needs []Need, amounts map[model.Named]string) []Edit {
	var out []Edit
	if p.Broken || p.Misread {
		return nil
	}
	for _, list := range lists {
		var ids []string
		for _, n := range needs {
			id, amount := n.Entry.Base().ID, amounts[n.Entry]
			if n.Kind != list.kind || listed(p, list.name, id) {
				continue
			}
			if amount != "" {
				id += ": " + amount
			}
			if !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
		if len(ids) == 0 {
			continue
		}
		if piece, ok := edit.Grow(p.File, list.name, ids); ok {
			out = append(out, Edit{p.File.At(piece.At, piece.At+piece.Cut), piece.Text})
		}
	}
	return merged(out)
}

// merged puts edits at one place into one: their order there is that of the
// lists.
func merged(edits []Edit) []Edit {
	var out []Edit
	for _, e := range edits {
		if n := len(out); n > 0 && out[n-1].At == e.At {
			out[n-1].Text += e.Text
			continue
		}
		out = append(out, e)
	}
	return out
}

// listed says whether a list of the front matter has an id.
func listed(p *model.Procedure, list, id string) bool {
	switch list {
	case "needs":
		return slices.ContainsFunc(p.Needs, func(r model.Ref[model.Role]) bool { return r.ID == id })
	case "hazards":
		return slices.ContainsFunc(p.Hazards, func(u model.HazardUse) bool { return u.ID == id })
	case "tools":
		return slices.ContainsFunc(p.Tools, func(u model.Use[model.Tool]) bool { return u.ID == id })
	case "supplies":
		return slices.ContainsFunc(p.Supplies, func(u model.Use[model.Supply]) bool { return u.ID == id })
	}
	return slices.ContainsFunc(p.Holds, func(r model.Ref[model.Hold]) bool { return r.ID == id })
}
