package main

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator"
	"baybinder/generator/base/finding"
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
	d.speaks(&r.Verdict)
	refuse, bad := d.tablesRead(r, "records/")
	if refuse {
		return bad
	}
	hall := training.NewStandings(r.Manual, o.Today)
	switch {
	case c.Person != "" && c.Procedure != "":
		return finding.Refuse("ask for a person, or for a procedure or record, and not for both")
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
		return finding.Refuse("a job's evidence is no table: leave out --csv")
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
	d.inform("On %s:", today)
	for _, a := range list {
		if a.Stood == nil && len(a.Deeds) == 0 && len(a.Jobs) == 0 && !a.Procedure.Issued() {
			continue
		}
		d.inform("%s: %s, read by %d, used in %s", a.Procedure.Label(), d.stood(a.Stood), good(a), finding.Count(len(a.Jobs), "%d job", "%d jobs"))
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

// stood is "revision 1 of 2026-04-20, its words as issued".
func (d *output) stood(r *model.Revision) string {
	switch {
	case r == nil:
		return d.inShop("no revision was issued")
	case r.Readers == "retired":
		return d.inShop("retired on %s as revision %s, its words %s", r.Date, r.Number, finding.Say(string(training.WordsOf(r))))
	}
	return d.inShop("revision %s of %s, its words %s", r.Number, r.Date, finding.Say(string(training.WordsOf(r))))
}

// account tells all of one procedure.
func (d *output) account(a training.Account, today model.Date) {
	d.inform("%s (%s) on %s: %s", a.Procedure.Label(), a.Procedure.ID, today, d.stood(a.Stood))
	if r := a.Stood; r != nil {
		d.inform("  reason: %s", r.Reason)
		d.issuedBy(r)
	}
	switch {
	case a.InspectBy.IsZero():
	case a.InspectBy.Before(today):
		d.inform("  working by it was to be inspected by %s", a.InspectBy)
	default:
		d.inform("  working by it is to be inspected by %s", a.InspectBy)
	}
	if a.Since != nil {
		d.inform("  it stood until revision %s of %s: %s", a.Since.Number, a.Since.Date, a.Since.Reason)
	}
	for _, deed := range a.Deeds {
		d.say("%s %s%s", deed.Date, deed.Person.To.Label(), d.deed(deed, ""))
	}
	if len(a.Deeds) == 0 {
		d.inform("Nobody had read, watched or performed it.")
	}
	for _, use := range a.Jobs {
		d.say("%s", d.useLine(use))
	}
	if len(a.Jobs) == 0 {
		d.inform("No job in records/ had been done by it.")
	}
}

// issuedBy tells of a revision who wrote, checked, approved and walked it, who
// was to read it, and where its words are.
func (d *output) issuedBy(r *model.Revision) {
	d.inform("  written: %s; checked: %s; approved: %s; walked through: %s%s",
		d.orNobody(r.Written), d.orNobody(r.Checked), d.orNobody(r.Approved), d.orNobody(r.Walked), d.readers(r))
	d.inform("  fingerprint: %s", r.Fingerprint)
	if r.Kept != nil {
		d.inform("  words: %s", r.Kept.Path)
	}
}

func (d *output) readers(r *model.Revision) string {
	switch r.Readers {
	case "reread":
		return d.inShop("; readers: reread")
	case "tell":
		return d.inShop("; readers: tell")
	case "none":
		return d.inShop("; readers: none")
	case "retired":
		return d.inShop("; readers: retired")
	}
	return ""
}

// useLine is "2026-04-29 job by A.V. with revision 1, unit 112: records/job.json".
func (d *output) useLine(use record.Use) string {
	j := use.Job
	who := typedName(j)
	if who == "" {
		who = d.inShop("somebody who is not named")
	}
	line := d.inShop("%s job by %s %s", j.Day(), who, d.doneWith(use)) + d.withUnit(j) + ": records/" + j.Name + ".json"
	if len(j.Gaps) > 0 {
		line += ", " + told(d.tongue(), finding.Count(len(j.Gaps), "%d gap", "%d gaps"))
	}
	return line
}

// typedName is who did a job, on one line.
func typedName(j *model.Job) string { return oneLine(j.Worker) }

func (d *output) doneWith(use record.Use) string {
	switch {
	case use.Revision != "" && use.Issued == nil:
		return d.inShop("with revision %s, which had not been issued", use.Revision)
	case use.Revision == "" && use.Old():
		return d.inShop("with no revision, though revision %s stood", use.Stood.Number)
	case use.Revision == "":
		return d.inShop("before any revision was issued")
	case !use.Old():
		return d.inShop("with revision %s", use.Revision)
	case use.Stood == nil:
		return d.inShop("with revision %s, though none stood when it was begun", use.Revision)
	case use.Revision == use.Stood.Number:
		return d.inShop("with revision %s, in other words than were issued", use.Revision)
	}
	return d.inShop("with revision %s, though revision %s stood when it was begun", use.Revision, use.Stood.Number)
}

// unitOf is the serial number of a job's unit, else the options that it has.
func unitOf(j *model.Job) finding.Words {
	if j.Unit.Serial == "" && len(j.Unit.Options) > 0 {
		return finding.Say("with %s", finding.ListOf(" and ", j.Unit.Options))
	}
	return finding.Say("%s", j.Unit.Serial)
}

func (d *output) withUnit(j *model.Job) string {
	if j.Unit.Serial == "" && len(j.Unit.Options) == 0 {
		return ""
	}
	return d.inShop(", unit %s", unitOf(j))
}

// deed is what somebody did: " read revision 1, in es, seen by t-09: stale on the
// day". What it was done of is named where it does not stand before.
func (d *output) deed(deed training.Deed, of string) string {
	what := d.revision(deed, of)
	if what == "" {
		what = deed.Procedure.To.Label()
	}
	line := d.did(deed.Act, what)
	if deed.Language != "" {
		line += d.inShop(", in %s", deed.Language)
	}
	if deed.On != "" {
		line += d.inShop(", on %s", deed.On)
	}
	line += d.seenBy(deed)
	if deed.Score != "" {
		line += d.inShop(", score %s", deed.Score)
	}
	if deed.Note != "" {
		line += d.inShop(", note: %s", deed.Note)
	}
	switch {
	case deed.State == training.Stale:
		line += d.inShop(": stale on the day")
	case deed.Fault != "":
		line += d.inShop(": counts for nothing (%s)", deed.Fault)
	case !deed.Why.IsZero():
		line += d.inShop(": counts for no plan, as %s", deed.Why)
	}
	return line
}

// did is an act of the record and what it was done of.
func (d *output) did(act, what string) string {
	switch act {
	case "read":
		return d.inShop(" read %s", what)
	case "watched":
		return d.inShop(" watched %s", what)
	case "performed":
		return d.inShop(" performed %s", what)
	case "taught":
		return d.inShop(" was taught %s", what)
	case "told":
		return d.inShop(" was told of %s", what)
	case "inspected": // theirs was the work
		return d.inShop(" was inspected working by %s", what)
	}
	return " " + act + " " + what
}

// revision is "revision 1" or "Lid off revision 1"; what it is of alone, or
// nothing, where the row has no fingerprint.
func (d *output) revision(deed training.Deed, of string) string {
	switch {
	case deed.Revision != nil && of != "":
		return d.inShop("%s revision %s", of, deed.Revision.Number)
	case deed.Revision != nil:
		return d.inShop("revision %s", deed.Revision.Number)
	case deed.Fingerprint != "":
		return d.inShop("%s, which was never issued", strings.TrimSpace(of+" "+deed.Fingerprint))
	}
	return of
}

// seenBy says who witnessed a deed, or who inspected, taught or told.
func (d *output) seenBy(deed training.Deed) string {
	switch {
	case deed.By == "":
		return ""
	case slices.Contains([]string{"inspected", "taught", "told"}, deed.Act):
		return d.inShop(", by %s", deed.By)
	}
	return d.inShop(", seen by %s", deed.By)
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
			row(deed.Date.String(), deed.Person.ID, deed.Act, numberOf(deed.Revision), deed.By, string(deed.State), "", deed.On, "", deed.Note)
		}
		for _, use := range a.Jobs {
			state := ""
			if use.Old() {
				state = "other revision"
			}
			j := use.Job
			row(j.Day().String(), typedName(j), "job", use.Revision, "", state, "records/"+j.Name+".json", unitOf(j).String(), strconv.Itoa(len(j.Gaps)), "")
		}
	}
	return rows
}
