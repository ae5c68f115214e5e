package main

import (
	"baybinder/generator"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

type recordCommand struct {
	Person    string `arg:"" help:"Who: an id of readings/people.csv."`
	Procedure string `arg:"" help:"The procedure's id."`
	Act       string `arg:"" enum:"read,watched,performed,taught" help:"What: read, watched, performed or taught."`
	By        string `placeholder:"WHO" help:"Under whose eye."`
}

// Help is the longer text of readings record --help.
func (*recordCommand) Help() string {
	return "The row is of the day of --today. A reading is one of the last issued revision, which is what is published. Two who record at once lose nothing."
}

// Run adds a row to the record.
func (c *recordCommand) Run(g *globals, d *desk) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	done, err := training.Record(r.Manual, training.Entry{
		Folder: g.Manual, Person: c.Person, Procedure: c.Procedure, Act: c.Act, By: c.By, Date: o.Today,
	})
	if err != nil {
		return err
	}
	revision := ""
	if done.Revision != nil {
		revision = ", revision " + done.Revision.Number
	}
	d.say("%s, %s %s %s%s, fingerprint %s", o.Today, c.Person, c.Act, c.Procedure, revision, done.Fingerprint)
	if done.Why != "" {
		d.say("It counts for no plan: %s.", done.Why)
	}
	for _, plan := range done.Finished {
		d.say("With this %s has finished %s.%s", c.Person, plan.Label(), gained(plan))
	}
	return nil
}

func gained(plan *model.Plan) string {
	if roles := rolesOf(plan.Gives); roles != "" {
		return " The role gained: " + roles + "."
	}
	return ""
}
