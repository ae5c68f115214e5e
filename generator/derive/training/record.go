package training

import (
	"fmt"
	"path/filepath"
	"slices"

	"baybinder/generator/base/ledger"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
)

// columns are those of readings/record.csv, and rolesColumns those of
// readings/roles.csv.
var (
	columns      = ledger.Columns{Need: bind.RecordColumns.Need, Later: bind.RecordColumns.Later, After: "after"}
	rolesColumns = ledger.Columns{Need: bind.RolesColumns.Need}
)

// Entry is what is to be recorded.
type Entry struct {
	Folder    string // the manual's
	Person    string
	Procedure string
	Act       string // read, watched, performed, taught
	By        string // under whose eye
	Date      model.Date
}

// Recorded is what was recorded, and what comes of it.
type Recorded struct {
	Fingerprint string
	Revision    *model.Revision // that has it; nil where none was issued
	Why         string          // it counts for no plan because of this; "" where it does
	Finished    []*model.Plan   // that it finished
}

// Record adds a row to the record.
func Record(m *model.Manual, e Entry) (*Recorded, error) {
	p, err := recordable(m, e)
	if err != nil {
		return nil, err
	}
	hall := NewHall(m, e.Date)
	print := hall.Fingerprint(p)
	row := ledger.Row{
		"date": e.Date.String(), "person": e.Person, "procedure": e.Procedure, "act": e.Act, "fingerprint": print, "by": e.By,
	}
	if err := ledger.Append(filepath.Join(e.Folder, "readings", "record.csv"), columns, []ledger.Row{row}, nil); err != nil {
		return nil, err
	}
	return hall.cameOf(p, e, print), nil
}

// cameOf is what comes of a row that was added.
func (h *Hall) cameOf(p *model.Procedure, e Entry, print string) *Recorded {
	r := model.Reading{
		Date: e.Date, Act: e.Act, Fingerprint: print, By: e.By,
		Person:    model.Ref[model.Person]{ID: e.Person, To: h.person(e.Person)},
		Procedure: model.Ref[model.Procedure]{ID: e.Procedure, To: p},
	}
	after := *h.m
	after.Record = append(slices.Clone(h.m.Record), r)
	now := NewHall(&after, e.Date)
	done := &Recorded{Fingerprint: print, Revision: now.revisionRead(&r)}
	if e.Act == "performed" {
		done.Why = now.UncountedByAll(&r)
	}
	for i := range r.Person.To.Plans {
		plan := r.Person.To.Plans[i].To
		if plan != nil && len(now.Finished(r.Person.To, plan)) > len(h.Finished(r.Person.To, plan)) {
			done.Finished = append(done.Finished, plan)
		}
	}
	return done
}

// recordable finds the procedure and refuses what cannot have been.
func recordable(m *model.Manual, e Entry) (*model.Procedure, error) {
	at := slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == e.Procedure })
	switch {
	case !known(m, e.Person):
		return nil, notInPeople(m, e.Person)
	case at < 0:
		return nil, fmt.Errorf("there is no procedure %s", e.Procedure)
	case !m.Procedures[at].Issued():
		return nil, fmt.Errorf("%s is %s: only what is issued is read for work", e.Procedure, m.Procedures[at].Status)
	case e.By != "" && !known(m, e.By):
		return nil, fmt.Errorf("who is to have seen it is not known: %w", notInPeople(m, e.By))
	case e.By == e.Person:
		return nil, fmt.Errorf("%s cannot witness what they did themselves", e.By)
	}
	return m.Procedures[at], nil
}

func notInPeople(m *model.Manual, id string) error {
	var ids []string
	for _, p := range m.People {
		ids = append(ids, p.ID)
	}
	if near := nearest.Of(id, ids); near != "" {
		return fmt.Errorf("%s is not in readings/people.csv: did you mean %s?", id, near)
	}
	return fmt.Errorf("%s is not in readings/people.csv: add a row with that id first", id)
}

func known(m *model.Manual, person string) bool {
	return slices.ContainsFunc(m.People, func(p *model.Person) bool { return p.ID == person })
}
