package main

import (
	"slices"
	"strings"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

type readingsCommand struct {
	Due    dueCommand    `cmd:"" default:"withargs" help:"What is due, overdue and stale, which roles run out, and what is to be reviewed (without a word after readings, this)."`
	Plan   planCommand   `cmd:"" help:"A plan's readings in their order, with times, what each builds on, and who may witness."`
	Who    whoCommand    `cmd:"" help:"Who, by the record, may do a job on the day: who holds its roles, who has read it."`
	Audit  auditCommand  `cmd:"" help:"Which revision stood on the day, who had read it by then, and which jobs had been done by it."`
	Record recordCommand `cmd:"" help:"Record that someone read, watched, performed or taught a procedure, was told of it or inspected; of a class in one line."`
	People peopleCommand `cmd:"" help:"Who comes, leaves and comes back."`
	Role   roleCommand   `cmd:"" help:"Note a role that somebody gained, that was renewed, or that was withdrawn."`
}

type dueCommand struct {
	CSV    bool   `name:"csv" xor:"form" help:"As CSV."`
	ICal   bool   `name:"ical" xor:"form" help:"As a calendar (iCalendar, RFC 5545)."`
	Person string `placeholder:"WHO" help:"Of one person alone: an id of readings/people.csv."`
}

// Run tells what there is to read and to renew.
func (c *dueCommand) Run(g *globals, d *output) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	refuse, bad := d.tablesRead(r)
	if refuse {
		return bad
	}
	hall := training.NewStandings(r.Manual, o.Today)
	items := hall.Items()
	switch {
	case c.Person == "" && c.ICal:
		items = slices.Concat(items, hall.Reviews(), hall.Inspections())
	case c.Person == "":
		items = append(items, hall.ReviewsSoon()...)
	default:
		person, err := personNamed(r.Manual, c.Person)
		if err != nil {
			return err
		}
		items = slices.DeleteFunc(items, func(i training.Item) bool { return i.Person != person })
	}
	training.ByLateness(items)
	switch {
	case c.CSV:
		err = training.CSV(d.out, items)
	case c.ICal:
		if n := dateless(items); n > 0 {
			d.remark("%s no day, and so no place in the calendar; baybinder readings lists all.", finding.Count(n, "%d item has", "%d items have"))
		}
		err = training.ICal(d.out, items, o.Today)
	default:
		d.items(hall, items)
	}
	if err != nil {
		return err
	}
	return bad
}

func dateless(items []training.Item) int {
	n := 0
	for _, i := range items {
		if i.By.IsZero() {
			n++
		}
	}
	return n
}

// items tells what there is to do, what presses most first: of each person one
// line, then the rest, and below it what changed for those who must read again.
func (d *output) items(hall *training.Standings, items []training.Item) {
	if len(items) == 0 {
		d.inform("nothing is due")
	}
	first, rest := training.FirstOfEach(items)
	if len(first) <= 1 {
		first, rest = items, nil
	}
	for _, i := range first {
		d.item(i)
	}
	if len(rest) > 0 {
		d.say("")
		d.inform("and besides:")
	}
	for _, i := range rest {
		d.item(i)
	}
	for _, c := range hall.Changes(items) {
		d.say("")
		d.changed(c)
	}
}

func (d *output) item(i training.Item) {
	if i.Person == nil {
		d.say("%s: %s%s", told(d.tongue(), finding.Say(string(i.State))), told(d.tongue(), i.Says()), d.byDay(i))
		return
	}
	d.say("%s: %s: %s%s", i.Person.Label(), told(d.tongue(), finding.Say(string(i.State))), told(d.tongue(), i.Says()), d.byDay(i))
}

func (d *output) byDay(i training.Item) string {
	switch {
	case i.By.IsZero():
		return ""
	case i.State == training.RunOut:
		return d.inShop(", held until %s", i.By)
	}
	return d.inShop(" by %s", i.By)
}

// changed tells what changed since some people read a procedure.
func (d *output) changed(c training.Change) {
	who := d.someOf(labels(c.People))
	switch {
	case c.Read == nil:
		d.inform("%s, read by %s: what they read has the fingerprint %s, which was never issued here, so what changed cannot be said.", c.Procedure.Label(), who, c.Print)
		return
	case c.Unkept:
		d.inform("%s, read by %s as revision %s: its words are not in revisions/ as they were issued, so what changed cannot be said.", c.Procedure.Label(), who, c.Read.Number)
		return
	}
	d.inform("%s: what changed since revision %s of %s, which was read by %s:", c.Procedure.Label(), c.Read.Number, c.Read.Date, who)
	for _, step := range c.In(language.Of(d.language)) {
		d.say("  %s", step)
	}
	if len(c.Steps) == 0 {
		d.inform("  Nothing that a reader acts on.")
	}
}

// shownPeople is how many people one line names.
const shownPeople = 8

func (d *output) someOf(names []string) string {
	if n := len(names) - shownPeople; n > 0 {
		names = append(names[:shownPeople:shownPeople], d.inShop("and %d more", n))
	}
	return strings.Join(names, ", ")
}

func personNamed(m *model.Manual, id string) (*model.Person, error) {
	if p := model.ByID(m.People, id); p != nil {
		return p, nil
	}
	if near := model.WhoIsMeant(m.People, id); near != "" {
		return nil, finding.Refuse("there is no %s %s: did you mean %s?", finding.Say("person"), id, near)
	}
	return nil, finding.Refuse("there is no %s %s: they are in readings/people.csv", finding.Say("person"), id)
}
