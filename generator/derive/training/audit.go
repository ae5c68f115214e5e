package training

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/read/record"
)

// Account is what the files show of a procedure on a day: which revision
// stood, who had read, watched, performed or taught it by then, and which jobs
// had been done by it.
type Account struct {
	Procedure *model.Procedure
	Stood     *model.Revision // nil where none had been issued
	Words     Words           // of the revision that stood
	Since     *model.Revision // the next, issued after the day; nil where there is none
	Deeds     []Deed          // by day
	Jobs      []record.Use    // the oldest first
	InspectBy model.Date      // by when working by it is to be inspected; zero where nothing asks
}

// Words says what is left of the words of a revision.
type Words string

// As they were; another than they were; not there.
const (
	AsIssued Words = "as issued"
	Altered  Words = "altered"
	NotKept  Words = "not kept"
)

// Deed is a row of the record, and the revision that it was done by.
type Deed struct {
	*model.Reading
	Revision *model.Revision // nil where none has its fingerprint
	State    State           // of a reading, on the day; "" of another act
	Why      finding.Words   // a performance counts for no plan because of this; no words where it counts
	Fault    string          // an inspection is none because of this; "" where it is one
}

// Account is what the files show of a procedure on the staff's day.
func (h *Standings) Account(p *model.Procedure) Account {
	a := Account{Procedure: p}
	if n := len(h.since[p]); n > 0 {
		a.Stood = h.since[p][n-1]
		a.Words = WordsOf(a.Stood)
	}
	for i := range h.m.Revisions {
		if r := &h.m.Revisions[i]; a.Since == nil && r.Procedure.To == p && h.today.Before(r.Date) {
			a.Since = r
		}
	}
	for i := range h.m.Record {
		if r := &h.m.Record[i]; r.Procedure.To == p && h.counts(r) {
			a.Deeds = append(a.Deeds, h.deed(r))
		}
	}
	slices.SortStableFunc(a.Deeds, func(x, y Deed) int { return x.Date.Time().Compare(y.Date.Time()) })
	a.Jobs = record.Used(h.m, p, h.today)
	a.InspectBy, _, _ = h.InspectBy(p)
	return a
}

func (h *Standings) deed(r *model.Reading) Deed {
	d := Deed{Reading: r, Revision: h.RevisionRead(r)}
	switch r.Act {
	case "read":
		d.State = Stale
		if h.Holds(r) {
			d.State = Good
		}
	case "performed":
		d.Why = h.UncountedByAll(r)
	case "inspected":
		d.Fault = h.InspectionFault(r)
	}
	return d
}

// UncountedByAll says why a performance counts towards none of the person's
// plans that ask for it; no words where it counts, and where no plan asks.
func (h *Standings) UncountedByAll(r *model.Reading) finding.Words {
	var why finding.Words
	for i := range r.Person.To.Plans {
		plan := r.Person.To.Plans[i].To
		if plan == nil || !slices.ContainsFunc(plan.Perform, func(u model.Use[model.Procedure]) bool { return u.To == r.Procedure.To }) {
			continue
		}
		if why = h.Uncounted(plan, r); why.IsZero() {
			return why
		}
	}
	return why
}

// WordsOf says what is left of the words of a revision.
func WordsOf(r *model.Revision) Words {
	switch {
	case r.Kept == nil:
		return NotKept
	case !fingerprint.Intact(r):
		return Altered
	}
	return AsIssued
}
