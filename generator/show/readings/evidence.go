package readings

import (
	"cmp"
	"fmt"
	"slices"

	"baybinder/generator/model"
)

// Revised is a revision of a procedure, with who answers for it.
type Revised struct {
	Number, Date, Reason               string
	Written, Checked, Approved, Walked string
	Readers                            string // what they were to do
}

// Inspection is one time that somebody was seen to work by a procedure.
type Inspection struct {
	Date, Worked, By, On, Found string
	Fault                       string // why it is none; "" where it is one
}

// bookRevisions notes the revisions of each procedure and its translations, the
// last first.
func (r *Readings) bookRevisions() {
	r.revised = map[*model.Procedure][]Revised{}
	for _, rev := range slices.Backward(slices.Concat(r.Manual.Revisions, r.Manual.Renditions)) {
		p := rev.Procedure.To
		if p == nil || r.Today.Before(rev.Date) {
			continue
		}
		v := Revised{Number: rev.Number, Date: rev.Date.String(), Reason: rev.Reason, Readers: r.readersOf(&rev)}
		if rev.Language != "" {
			v.Number += " " + rev.Language
		}
		v.Written, v.Checked, v.Approved, v.Walked = r.nameOf(rev.Written), r.nameOf(rev.Checked), r.nameOf(rev.Approved), r.nameOf(rev.Walked)
		r.revised[p] = append(r.revised[p], v)
	}
	for _, list := range r.revised {
		slices.SortStableFunc(list, func(a, b Revised) int { return cmp.Compare(b.Date, a.Date) })
	}
}

// readersOf is what the readers of a revision were to do.
func (r *Readings) readersOf(rev *model.Revision) string {
	switch {
	case rev.Readers == "retired":
		return r.words.RetiredThen
	case rev.Readers == "tell":
		return r.words.Tell
	case rev.Readers == "none":
		return r.words.Spared
	case rev.Number == "1":
		return r.words.ToAll
	}
	return r.words.Reread
}

// bookInspections notes the inspections of each procedure, the last first, and by
// when the next is to be; nothing where the shop does not say, or nothing locks.
func (r *Readings) bookInspections() {
	r.inspected, r.inspectBy = map[*model.Procedure][]Inspection{}, map[*model.Procedure]string{}
	for _, row := range slices.Backward(r.Manual.Record) {
		p := row.Procedure.To
		if p == nil || row.Act != "inspected" || row.Bad || row.Person.To == nil || r.Today.Before(row.Date) {
			continue
		}
		v := Inspection{Date: row.Date.String(), Worked: row.Person.To.Label(), By: r.nameOf(row.By), On: row.On, Found: row.Note}
		v.Fault = r.staff.InspectionFault(&row)
		r.inspected[p] = append(r.inspected[p], v)
	}
	for _, list := range r.inspected {
		slices.SortStableFunc(list, func(a, b Inspection) int { return cmp.Compare(b.Date, a.Date) })
	}
	for _, p := range r.Procedures {
		if day, last, asked := r.staff.InspectBy(p); asked {
			r.inspectBy[p] = r.Until(fmt.Sprintf(r.words.InspectBy, day), r.inspectedFrom(p, last), r.Both(r.Manual.Shop.Inspect), day)
		}
	}
}

// inspectedFrom is the day from which the next inspection is counted: the last
// one's, else that of the first issue.
func (r *Readings) inspectedFrom(p *model.Procedure, last *model.Reading) model.Date {
	if last != nil {
		return last.Date
	}
	i := slices.IndexFunc(r.Manual.Revisions, func(rev model.Revision) bool { return rev.Procedure.To == p })
	return r.Manual.Revisions[i].Date
}

// withdrawn is when and why a role of somebody was taken away.
func (r *Readings) withdrawn(p *model.Person, g *model.Gained) string {
	says := fmt.Sprintf(r.words.Withdrawn, g.Ended)
	for _, a := range r.Manual.Awards {
		if a.Person.To == p && a.Role.To == g.To && a.Act == "withdrawn" && a.Date == g.Ended && a.Reason != "" {
			return says + ": " + a.Reason
		}
	}
	return says
}
