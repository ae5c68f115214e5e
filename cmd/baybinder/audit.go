package main

import (
	"errors"
	"strconv"
	"strings"

	"baybinder/generator"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

type auditCommand struct {
	Procedure string `arg:"" optional:"" help:"The procedure's id, or one that it had before; or a job's file, whose whole evidence is shown (default: all procedures, one line each)."`
	Person    string `placeholder:"WHO" help:"A person: what they held, had read and performed, and which jobs they had done."`
	CSV       bool   `name:"csv" help:"As CSV, with a header line and a row for each act and each job."`
}

// Help is the longer text of readings audit --help.
func (*auditCommand) Help() string {
	return "With --today it answers for a day in the past, from the rows of that day and before: which revision stood, whether its words are still as they were issued, who had read, watched or performed it, and which jobs of records/ had been done by it. " +
		"A procedure's words are those of revisions/; what was never issued is not known for a day in the past. Who did a job is told as it was typed at the bay. " +
		"Of a job's file it shows which revision it was done with, what each who did it held and had read that day, what was measured and signed, and what is marked."
}

// Run tells what the files show of a day.
func (c *auditCommand) Run(g *globals, d *output) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	refuse, bad := d.tablesRead(r, "records/")
	if refuse {
		return bad
	}
	hall := training.NewStandings(r.Manual, o.Today)
	switch {
	case c.Person != "" && c.Procedure != "":
		return errors.New("ask for a person, or for a procedure or record, and not for both")
	case c.Person != "":
		return errors.Join(c.person(d, r.Manual, hall, o.Today), bad)
	case isRecord(c.Procedure):
		return errors.Join(c.record(d, r.Manual, hall, o.Today), bad)
	}
	list := r.Manual.Procedures
	if c.Procedure != "" {
		p, err := procedureNamed(r.Manual, c.Procedure)
		if err != nil {
			return err
		}
		list = []*model.Procedure{p}
	}
	var accounts []training.Account
	for _, p := range list {
		accounts = append(accounts, hall.Account(p))
	}
	switch {
	case c.CSV:
		err = d.table(auditRows(accounts))
	case c.Procedure != "":
		d.account(accounts[0], o.Today)
	default:
		d.accounts(accounts, o.Today)
	}
	if err != nil {
		return err
	}
	return bad
}

// person tells of a person.
func (c *auditCommand) person(d *output, m *model.Manual, hall *training.Standings, today model.Date) error {
	p, err := personNamed(m, c.Person)
	if err != nil {
		return err
	}
	a := hall.PersonAccount(p)
	if c.CSV {
		return d.table(personRows(a))
	}
	d.personAccount(a, today)
	return nil
}

// record tells of a job.
func (c *auditCommand) record(d *output, m *model.Manual, hall *training.Standings, today model.Date) error {
	if c.CSV {
		return errors.New("a job's evidence is no table: leave out --csv")
	}
	j, err := recordNamed(m, c.Procedure)
	if err != nil {
		return err
	}
	d.evidence(hall, m, j, today)
	return nil
}

// accounts tells one line a procedure; a draft that nothing was recorded of, and
// that no job was done by, is left out.
func (d *output) accounts(list []training.Account, today model.Date) {
	d.say("On %s:", today)
	for _, a := range list {
		if a.Stood == nil && len(a.Deeds) == 0 && len(a.Jobs) == 0 && !a.Procedure.Issued() {
			continue
		}
		d.say("%s: %s, read by %d, used in %s", a.Procedure.Label(), stood(a), good(a), count(len(a.Jobs), "job"))
	}
}

// good is how many people had read what stood.
func good(a training.Account) int {
	people := map[string]bool{}
	for _, deed := range a.Deeds {
		if deed.State == training.Good {
			people[deed.Person.ID] = true
		}
	}
	return len(people)
}

func stood(a training.Account) string {
	if a.Stood == nil {
		return "no revision was issued"
	}
	if a.Stood.Readers == "retired" {
		return "retired on " + a.Stood.Date.String() + " as revision " + a.Stood.Number + ", its words " + string(a.Words)
	}
	return "revision " + a.Stood.Number + " of " + a.Stood.Date.String() + ", its words " + string(a.Words)
}

// account tells all of one procedure.
func (d *output) account(a training.Account, today model.Date) {
	d.say("%s (%s) on %s: %s", a.Procedure.Label(), a.Procedure.ID, today, stood(a))
	if r := a.Stood; r != nil {
		d.say("  reason: %s", r.Reason)
		d.say("  written: %s; checked: %s; approved: %s; walked through: %s; readers: %s",
			orNobody(r.Written), orNobody(r.Checked), orNobody(r.Approved), orNobody(r.Walked), r.Readers)
		d.say("  fingerprint: %s", r.Fingerprint)
		if r.Kept != nil {
			d.say("  words: %s", r.Kept.Path)
		}
	}
	if !a.InspectBy.IsZero() {
		d.say("  working by it %s to be inspected by %s", map[bool]string{true: "was", false: "is"}[a.InspectBy.Before(today)], a.InspectBy)
	}
	if a.Since != nil {
		d.say("  it stood until revision %s of %s: %s", a.Since.Number, a.Since.Date, a.Since.Reason)
	}
	for _, deed := range a.Deeds {
		d.say("%s", deedLine(deed))
	}
	if len(a.Deeds) == 0 {
		d.say("Nobody had read, watched or performed it.")
	}
	for _, use := range a.Jobs {
		d.say("%s", useLine(use))
	}
	if len(a.Jobs) == 0 {
		d.say("No job in records/ had been done by it.")
	}
}

// useLine is "2026-04-29 job by A.V. with revision 1, unit 112: records/job.json".
func useLine(use record.Use) string {
	j := use.Job
	who := "somebody who is not named"
	if name := typedName(j); name != "" {
		who = name
	}
	line := j.Day().String() + " job by " + who + " " + doneWith(use)
	if unit := unitOf(j); unit != "" {
		line += ", unit " + unit
	}
	line += ": records/" + j.Name + ".json"
	if len(j.Gaps) > 0 {
		line += ", " + count(len(j.Gaps), "gap")
	}
	return line
}

// typedName is who did a job, on one line.
func typedName(j *model.Job) string { return strings.Join(strings.Fields(j.Worker), " ") }

func doneWith(use record.Use) string {
	line := "before any revision was issued"
	if use.Revision != "" {
		line = "with revision " + use.Revision
	}
	switch {
	case use.Revision != "" && use.Issued == nil:
		line += ", which had not been issued"
	case !use.Old():
	case use.Revision == "":
		line = "with no revision, though revision " + use.Stood.Number + " stood"
	case use.Stood == nil:
		line += ", though none stood when it was begun"
	case use.Revision == use.Stood.Number:
		line += ", in other words than were issued"
	default:
		line += ", though revision " + use.Stood.Number + " stood when it was begun"
	}
	return line
}

// unitOf is the serial number of a job's unit, else the options that it has.
func unitOf(j *model.Job) string {
	if j.Unit.Serial == "" && len(j.Unit.Options) > 0 {
		return "with " + strings.Join(j.Unit.Options, " and ")
	}
	return j.Unit.Serial
}

// deedLine is "2026-04-21 First Trainee read revision 1".
func deedLine(deed training.Deed) string {
	return deed.Date.String() + " " + deed.Person.To.Label() + " " + did(deed) + deedRest(deed)
}

// did is what somebody did: of an inspection, that theirs was the work.
func did(deed training.Deed) string {
	if deed.Act == "inspected" {
		return "was inspected working by"
	}
	return deed.Act
}

// deedRest is " revision 1, seen by t-09: stale on the day".
func deedRest(deed training.Deed) string {
	line := ""
	switch {
	case deed.Revision != nil:
		line += " revision " + deed.Revision.Number
	case deed.Fingerprint != "":
		line += " " + deed.Fingerprint + ", which was never issued"
	}
	if deed.Language != "" {
		line += ", in " + deed.Language
	}
	if deed.On != "" {
		line += ", on " + deed.On
	}
	if deed.By != "" {
		line += map[bool]string{true: ", by ", false: ", seen by "}[deed.Act == "inspected"] + deed.By
	}
	if deed.Score != "" {
		line += ", score " + deed.Score
	}
	if deed.Note != "" {
		line += ", note: " + deed.Note
	}
	switch {
	case deed.State == training.Stale:
		line += ": stale on the day"
	case deed.Act == "inspected" && deed.Why != "":
		line += ": counts for nothing (" + deed.Why + ")"
	case deed.Why != "":
		line += ": counts for no plan, as " + deed.Why
	}
	return line
}

func auditRows(list []training.Account) [][]string {
	rows := [][]string{{"procedure", "revision", "issued", "fingerprint", "words", "date", "person", "act", "read", "by", "state", "record", "unit", "gaps", "note"}}
	for _, a := range list {
		head := []string{a.Procedure.ID, "", "", "", ""}
		if r := a.Stood; r != nil {
			head = []string{a.Procedure.ID, r.Number, r.Date.String(), r.Fingerprint, string(a.Words)}
		}
		row := func(cells ...string) { rows = append(rows, append(head[:5:5], cells...)) }
		if len(a.Deeds)+len(a.Jobs) == 0 {
			row("", "", "", "", "", "", "", "", "", "")
		}
		for _, deed := range a.Deeds {
			number := ""
			if deed.Revision != nil {
				number = deed.Revision.Number
			}
			row(deed.Date.String(), deed.Person.ID, deed.Act, number, deed.By, string(deed.State), "", deed.On, "", deed.Note)
		}
		for _, use := range a.Jobs {
			state := ""
			if use.Old() {
				state = "other revision"
			}
			j := use.Job
			row(j.Day().String(), typedName(j), "job", use.Revision, "", state, "records/"+j.Name+".json", unitOf(j), strconv.Itoa(len(j.Gaps)), "")
		}
	}
	return rows
}
