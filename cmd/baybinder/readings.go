package main

import (
	"baybinder/generator"
	"baybinder/generator/training"
)

type readingsCommand struct {
	Due    dueCommand    `cmd:"" default:"withargs" help:"What is due, overdue and stale, and which roles run out (without a word after readings, this)."`
	Plan   planCommand   `cmd:"" help:"A plan's readings in their order, with times and what each builds on."`
	Record recordCommand `cmd:"" help:"Record that someone read, watched, performed or taught a procedure."`
}

type dueCommand struct {
	CSV  bool `name:"csv" xor:"form" help:"As CSV."`
	ICal bool `name:"ical" xor:"form" help:"As a calendar (iCalendar, RFC 5545)."`
}

// Run tells what there is to read and to renew.
func (c *dueCommand) Run(g *globals, d *desk) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	items := training.NewHall(r.Manual, o.Today).Items()
	switch {
	case c.CSV:
		return training.CSV(d.out, items)
	case c.ICal:
		return training.ICal(d.out, items, o.Today)
	case len(items) == 0:
		d.say("nothing is due")
	}
	for _, i := range items {
		by := ""
		if !i.By.IsZero() {
			by = " by " + i.By.String()
		}
		d.say("%s: %s: %s%s", i.Person.Label(), i.State, i.What.Label(), by)
	}
	return nil
}

type planCommand struct {
	Plan string `arg:"" help:"The plan's id."`
}

// Run tells a plan's order.
func (c *planCommand) Run(g *globals, d *desk) error {
	r, err := generator.Check(g.options())
	if err != nil {
		return err
	}
	plan, err := training.Named(r.Manual, c.Plan)
	if err != nil {
		return err
	}
	sum := 0
	for n, reading := range training.Order(plan) {
		sum += reading.Seconds
		d.say("%d. %s, %s", n+1, reading.Procedure.Label(), training.Minutes(reading.Seconds))
		for _, p := range reading.BuildsOn {
			d.say("   builds on %s", p.Label())
		}
	}
	d.say("In all %s of reading.", training.Minutes(sum))
	return nil
}

type recordCommand struct {
	Person    string `arg:"" help:"Who: an id of readings/people.csv."`
	Procedure string `arg:"" help:"The procedure's id."`
	Act       string `arg:"" enum:"read,watched,performed,taught" help:"What: read, watched, performed or taught."`
	By        string `placeholder:"WHO" help:"Under whose eye."`
}

// Run adds a row to the record.
func (c *recordCommand) Run(g *globals, d *desk) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	print, err := training.Record(r.Manual, training.Entry{
		Folder: g.Manual, Person: c.Person, Procedure: c.Procedure, Act: c.Act, By: c.By, Date: o.Today,
	})
	if err != nil {
		return err
	}
	d.say("%s, %s %s %s, fingerprint %s", o.Today, c.Person, c.Act, c.Procedure, print)
	return nil
}
