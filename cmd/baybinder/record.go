package main

import (
	"errors"
	"os"
	"slices"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
)

type recordCommand struct {
	Person    string   `arg:"" optional:"" help:"Who: an id of readings/people.csv."`
	Procedure string   `arg:"" optional:"" help:"The procedure's id."`
	Act       string   `arg:"" optional:"" enum:"read,watched,performed,taught,told,inspected," default:"" help:"What: read, watched, performed, taught, told or inspected."`
	People    []string `placeholder:"A,B" help:"Several people, of a class."`
	Did       string   `enum:"read,watched,performed,taught,told,inspected," default:"" placeholder:"ACT" help:"What they did."`
	Of        []string `placeholder:"X,Y" help:"Several procedures: each of the people did it of each."`
	By        string   `placeholder:"WHO" help:"Under whose eye; of an inspection, who inspected."`
	On        string   `placeholder:"UNIT" help:"On which machine or unit."`
	Language  string   `placeholder:"TAG" help:"In which language it was read, where not in the manual's own."`
	Score     string   `placeholder:"TEXT" help:"The score of an exercise."`
	Note      string   `placeholder:"TEXT" help:"What an inspection found, or why somebody was trained again."`
	From      string   `placeholder:"FILE" help:"Rows of a CSV file: date,person,procedure,act,by,on,language,score,note, any of them, without fingerprints."`
	Yes       bool     `help:"Write several rows without asking."`
}

// Help is the longer text of readings record --help.
func (*recordCommand) Help() string {
	return "The row is of the day of --today. A reading is one of the last issued revision, which is what is published. Two who record at once lose nothing. " +
		"A class is one line: readings record --people a,b,c --did read --of x,y. It says what it will write and asks once; where one row is wrong, none is written. " +
		"With --from FILE the rows stand in a file, and what a row leaves open is as the flags and --today say."
}

// entries are the rows that were asked for: each of the people, each procedure.
func (c *recordCommand) entries(g *globals) ([]training.Entry, error) {
	people, of, act := c.People, c.Of, c.Did
	all := training.Entry{Folder: g.Manual, Act: act, By: c.By, On: c.On, Language: c.Language, Score: c.Score, Note: c.Note, Date: g.options().Today}
	single := c.Person != "" || c.Procedure != "" || c.Act != ""
	switch {
	case c.From != "" && (single || len(people) > 0 || len(of) > 0):
		return nil, finding.Refuse("the rows are in the file of --from: name nobody and nothing beside it")
	case c.From != "":
		text, err := os.ReadFile(c.From)
		if err != nil {
			return nil, err
		}
		return training.From(c.From, text, all)
	case single && (len(people) > 0 || len(of) > 0 || act != ""):
		return nil, finding.Refuse("name one person, one procedure and what was done, or write --people, --did and --of, and not both")
	case single:
		people, of, act = []string{c.Person}, []string{c.Procedure}, c.Act
	}
	if len(people) == 0 || len(of) == 0 || act == "" || slices.Contains(of, "") {
		return nil, finding.Refuse("say who, of what, and what was done: readings record PERSON PROCEDURE read, or readings record --people a,b --did read --of x,y")
	}
	var out []training.Entry
	for _, procedure := range of {
		for _, person := range people {
			e := all
			e.Person, e.Procedure, e.Act = person, procedure, act
			out = append(out, e)
		}
	}
	return out, nil
}

// Run adds rows to the record.
func (c *recordCommand) Run(g *globals, d *output) error {
	entries, wrong := c.entries(g)
	if wrong != nil && len(entries) == 0 {
		return finding.Refuse("nothing was written: %s", wrong)
	}
	r, err := generator.Check(g.options())
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	rows, err := training.Prepare(r.Manual, entries)
	if err := errors.Join(wrong, err); err != nil {
		return finding.Refuse("nothing was written: %s", err)
	}
	if len(rows) > 1 && !c.Yes {
		for _, row := range rows {
			d.say("%s%s", d.rowOf(row), d.already(row))
		}
		if yes, err := d.agreed(d.inShop("Write these %s?", finding.Count(len(rows), "%d row", "%d rows")), "--yes"); err != nil || !yes {
			return err
		}
	}
	done, err := training.RecordAll(r.Manual, g.Manual, entries)
	if err != nil {
		return err
	}
	for _, row := range done {
		d.recorded(row)
	}
	return nil
}

// rowOf is "2026-04-21, t-01 read lid, revision 1".
func (d *output) rowOf(row *training.Recorded) string {
	what := row.Procedure
	if row.Revision != nil {
		what += d.inShop(", revision %s", row.Revision.Number)
	}
	return row.Date.String() + ", " + row.Person + d.did(row.Act, what)
}

func (d *output) already(row *training.Recorded) string {
	if row.Twice {
		return d.inShop(": the same row stands already")
	}
	return ""
}

// recorded tells of a row that was written, and what came of it.
func (d *output) recorded(row *training.Recorded) {
	d.say("%s%s", d.rowOf(row), d.inShop(", fingerprint %s", row.Fingerprint))
	if row.Twice {
		d.inform("The same row stood already.")
	}
	if !row.Why.IsZero() {
		d.inform("It counts for no plan: %s.", row.Why)
	}
	for _, plan := range row.Finished {
		line := d.inShop("With this %s has finished %s.", row.Person, plan.Label())
		if roles := rolesOf(plan.Gives); roles != "" {
			line += d.inShop(" The role gained: %s.", roles)
		}
		d.say("%s", line)
	}
}
