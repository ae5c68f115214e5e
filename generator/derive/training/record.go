package training

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
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
	Act       string // read, watched, performed, taught, told, inspected
	By        string // under whose eye
	On        string // the machine or unit
	Language  string // that was read; "" for the original's
	Score     string
	Note      string
	Date      model.Date
	Where     string // file and line that it was read from; "" of what was typed
}

// Recorded is what was recorded, and what comes of it.
type Recorded struct {
	Entry
	Fingerprint string
	Revision    *model.Revision // that has it; nil where none was issued
	Twice       bool            // the same row stands already
	Why         finding.Words   // it counts for no plan because of this; no words where it does
	Finished    []*model.Plan   // that it finished
}

// RecordAll adds rows to the record, all of them or, where one is wrong, none;
// then the rows of roles that the record shows and readings/roles.csv lacks.
func RecordAll(m *model.Manual, folder string, entries []Entry) ([]*Recorded, error) {
	done, err := Prepare(m, entries)
	if err != nil {
		return nil, err
	}
	var rows []ledger.Row
	after := *m
	after.Record = slices.Clone(m.Record)
	for _, d := range done {
		rows = append(rows, d.row())
		after.Record = append(after.Record, d.reading(m))
	}
	if err := ledger.Append(filepath.Join(folder, "readings", "record.csv"), columns, rows, nil); err != nil {
		return nil, err
	}
	last := entries[0].Date
	halls := map[model.Date]both{}
	told := map[finish]bool{}
	for i, d := range slices.Backward(done) {
		if halls[d.Date].was == nil {
			halls[d.Date] = both{NewStandings(m, d.Date), NewStandings(&after, d.Date)}
		}
		d.cameOf(halls[d.Date], &after.Record[len(m.Record)+i], told)
		if last.Before(d.Date) {
			last = d.Date
		}
	}
	return done, awards(&after, folder, last)
}

// Prepare says what would be recorded, and refuses what cannot have been.
func Prepare(m *model.Manual, entries []Entry) ([]*Recorded, error) {
	var done []*Recorded
	var wrong []error
	halls := map[model.Date]*Standings{}
	for _, e := range entries {
		p, err := recordable(m, e)
		if err != nil {
			wrong = append(wrong, e.placed(err))
			continue
		}
		if halls[e.Date] == nil {
			halls[e.Date] = NewStandings(m, e.Date)
		}
		d := &Recorded{Entry: e, Fingerprint: halls[e.Date].Fingerprint(p)}
		r := d.reading(m)
		if e.Act == "inspected" && halls[e.Date].InspectionFault(&r) != "" {
			wrong = append(wrong, e.placed(finding.Refuse("%s held none of the roles on %s that %s needs, and so cannot have inspected it", e.By, e.Date, e.Procedure)))
			continue
		}
		d.Revision, d.Twice = halls[e.Date].RevisionRead(&r), twice(m.Record, done, d)
		done = append(done, d)
	}
	return done, errors.Join(wrong...)
}

// placed says where the entry was read from, too.
func (e Entry) placed(err error) error {
	if e.Where == "" {
		return err
	}
	return finding.Refuse("%s: %s", e.Where, err)
}

// twice says whether the same was recorded already, or is to be.
func twice(stands []model.Reading, before []*Recorded, d *Recorded) bool {
	same := func(r model.Reading) bool {
		return r.Date == d.Date && r.Person.ID == d.Person && r.Procedure.ID == d.Procedure && r.Act == d.Act && r.By == d.By && r.On == d.On &&
			r.Language == d.Language && r.Score == d.Score && r.Note == d.Note
	}
	again := func(o *Recorded) bool {
		there := o.Entry
		there.Where = d.Where
		return there == d.Entry
	}
	return d.Act != "performed" && (slices.ContainsFunc(stands, same) || slices.ContainsFunc(before, again))
}

func (d *Recorded) row() ledger.Row {
	return ledger.Row{
		"date": d.Date.String(), "person": d.Person, "procedure": d.Procedure, "act": d.Act, "fingerprint": d.Fingerprint, "by": d.By,
		"on": d.On, "language": d.Language, "score": d.Score, "note": d.Note,
	}
}

func (d *Recorded) reading(m *model.Manual) model.Reading {
	r := model.Reading{
		Date: d.Date, Act: d.Act, Fingerprint: d.Fingerprint, By: d.By, On: d.On, Language: d.Language, Score: d.Score, Note: d.Note,
		Person: model.Ref[model.Person]{ID: d.Person}, Procedure: model.Ref[model.Procedure]{ID: d.Procedure},
	}
	r.Person.To, r.Procedure.To = model.ByID(m.People, d.Person), model.ByID(m.Procedures, d.Procedure)
	return r
}

// both are how people stand on a day without the rows that are added, and with
// them.
type both struct{ was, now *Standings }

// finish is who finished what on which day.
type finish struct {
	person *model.Person
	plan   *model.Plan
	day    model.Date
}

// cameOf is what comes of a row that was added. A plan that several rows finish is
// told at the last of them.
func (d *Recorded) cameOf(h both, r *model.Reading, told map[finish]bool) {
	if d.Act == "performed" {
		d.Why = h.now.UncountedByAll(r)
	}
	for i := range r.Person.To.Plans {
		plan := r.Person.To.Plans[i].To
		this := finish{r.Person.To, plan, d.Date}
		if plan != nil && !told[this] && len(h.now.Finished(r.Person.To, plan)) > len(h.was.Finished(r.Person.To, plan)) {
			told[this] = true
			d.Finished = append(d.Finished, plan)
		}
	}
}

// awards adds the rows of roles that are missing of anybody, so that a later
// change of a plan, a person or an assessor does not undo a role.
func awards(m *model.Manual, folder string, day model.Date) error {
	h := NewStandings(m, day)
	h.gains()
	if err := ledger.Append(filepath.Join(folder, "readings", "roles.csv"), rolesColumns, h.missing, nil); err != nil {
		return err
	}
	return ledger.Union(folder, "readings/roles.csv")
}

// BeginRoles puts the table of roles there with its header alone, where it is not
// there, and has version control keep both sides' rows of it.
func BeginRoles(folder string) error {
	if err := ledger.Append(filepath.Join(folder, "readings", "roles.csv"), rolesColumns, nil, nil); err != nil {
		return err
	}
	return ledger.Union(folder, "readings/roles.csv")
}

// recordable finds the procedure and refuses what cannot have been.
func recordable(m *model.Manual, e Entry) (*model.Procedure, error) {
	p, who := model.ByID(m.Procedures, e.Procedure), model.ByID(m.People, e.Person)
	switch {
	case who == nil:
		return nil, NotInPeople(m, e.Person)
	case p == nil:
		return nil, NoProcedure(m, e.Procedure)
	case !slices.Contains(Acts, e.Act):
		return nil, finding.Refuse("%q is none of %s", e.Act, strings.Join(Acts, ", "))
	case !p.Issued():
		return nil, finding.Refuse("%s is %s: only what is issued is read for work", e.Procedure, p.Status)
	case e.By != "" && model.ByID(m.People, e.By) == nil:
		return nil, finding.Refuse("who is to have seen it is not known: %s", NotInPeople(m, e.By))
	case !who.There(e.Date):
		return nil, finding.Refuse("%s was not there on %s: mend started or left in readings/people.csv, or give the day with --today", e.Person, e.Date)
	case e.Act == "inspected" && e.By == "":
		return nil, finding.Refuse("say with --by who inspected")
	case e.By == e.Person:
		return nil, finding.Refuse("%s cannot witness what they did themselves", e.By)
	}
	return p, nil
}

// Acts are what can be recorded.
var Acts = []string{"read", "watched", "performed", "taught", "told", "inspected"}

// NoProcedure says that there is no such procedure, and which one may be meant.
func NoProcedure(m *model.Manual, id string) error {
	if near := nearest.Of(id, model.IDs(m.Procedures)); near != "" {
		return finding.Refuse("there is no procedure %s: did you mean %s?", id, near)
	}
	return finding.Refuse("there is no procedure %s", id)
}

// NotInPeople says that nobody has that id, and whose may be meant.
func NotInPeople(m *model.Manual, id string) error {
	if near := model.WhoIsMeant(m.People, id); near != "" {
		return finding.Refuse("%s is not in readings/people.csv: did you mean %s?", id, near)
	}
	return finding.Refuse("%s is not in readings/people.csv: add a row with that id first", id)
}
