package main

import (
	"strings"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	staff "baybinder/generator/command/people"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

type peopleCommand struct {
	Add   addPersonCommand `cmd:"" help:"Add somebody to readings/people.csv."`
	Leave leaveCommand     `cmd:"" help:"Note somebody's last day. Their rows stay, and they are in no list after it."`
	Back  backCommand      `cmd:"" help:"Note the first day of somebody who came back."`
}

type addPersonCommand struct {
	Person  string   `arg:"" help:"The id: letters, figures and hyphens."`
	Called  string   `arg:"" optional:"" name:"called" help:"The name, where --name does not say it."`
	Name    string   `placeholder:"TEXT" help:"The name."`
	Roles   []string `placeholder:"A,B@DAY" help:"Roles that they bring, each with the day on which it was gained where that is known."`
	Started day      `placeholder:"DAY" help:"The first day (default: that of --today)."`
	Plans   []string `placeholder:"X,Y" help:"Reading plans that they follow."`
}

// Run adds a person.
func (c *addPersonCommand) Run(g *globals, d *output) error {
	r, err := generator.Check(g.options())
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	n := staff.New{ID: c.Person, Name: c.Name, Roles: parted(c.Roles), Started: c.Started.Date, Plans: parted(c.Plans)}
	if n.Name == "" {
		n.Name = c.Called
	}
	if n.Started.IsZero() {
		n.Started = g.options().Today
	}
	if err := staff.Add(r.Manual, g.Manual, n); err != nil {
		return err
	}
	d.inform("%s is in readings/people.csv, from %s on.", n.ID, n.Started)
	if of := record.Named(r.Manual, n.Name); of.To != nil || of.Alike != nil {
		same := append(of.Alike, of.To)[0]
		d.inform("%s has that name too: in a job it says neither of them.", same.ID)
	}
	return nil
}

// parted are the words of a list that may be parted by spaces too.
func parted(list []string) []string { return strings.Fields(strings.Join(list, " ")) }

type leaveCommand struct {
	People []string `arg:"" help:"Who: ids of readings/people.csv."`
	On     day      `placeholder:"DAY" help:"The last day (default: that of --today)."`
}

// Run notes a last day.
func (c *leaveCommand) Run(g *globals, d *output) error {
	last, m, err := c.On.or(g, d)
	if err != nil {
		return err
	}
	if err := staff.Leave(m, g.Manual, parted(c.People), last); err != nil {
		return err
	}
	d.inform("The last day of %s is %s. What they did stands.", strings.Join(parted(c.People), ", "), last)
	return nil
}

type backCommand struct {
	People []string `arg:"" help:"Who: ids of readings/people.csv."`
	On     day      `placeholder:"DAY" help:"The first day (default: that of --today)."`
}

// Run notes a first day.
func (c *backCommand) Run(g *globals, d *output) error {
	first, m, err := c.On.or(g, d)
	if err != nil {
		return err
	}
	if err := staff.Back(m, g.Manual, parted(c.People), first); err != nil {
		return err
	}
	d.inform("%s: back on %s.", strings.Join(parted(c.People), ", "), first)
	return nil
}

type roleCommand struct {
	People string `arg:"" help:"Who: an id of readings/people.csv, or several with commas."`
	Role   string `arg:"" help:"The role: an id of register/roles.yaml."`
	Act    string `arg:"" enum:"gained,renewed,withdrawn" help:"gained, renewed or withdrawn."`
	By     string `placeholder:"WHO" help:"Who decided it."`
	Reason string `placeholder:"TEXT" help:"On what it rests, or why it was withdrawn."`
}

// Help is the longer text of readings role --help.
func (*roleCommand) Help() string {
	return "The row is of the day of --today, in readings/roles.csv. A role that a plan gives is noted by itself when the plan is finished; this is for licences, courses and tests from elsewhere, " +
		"and for what is taken away. What was withdrawn does not come back by itself."
}

// Run adds rows of roles.
func (c *roleCommand) Run(g *globals, d *output) error {
	today, m, err := day{}.or(g, d)
	if err != nil {
		return err
	}
	people := strings.FieldsFunc(c.People, func(r rune) bool { return r == ',' || r == ' ' })
	if err := training.Award(m, g.Manual, training.Grant{People: people, Role: c.Role, Act: c.Act, By: c.By, Reason: c.Reason, Date: today}); err != nil {
		return err
	}
	for _, id := range people {
		d.inform("%s, %s: %s %s", today, id, c.Role, finding.Say(c.Act))
	}
	return nil
}

// or is the day, else that of --today, and the manual as it is, whose language is
// spoken from here on.
func (on day) or(g *globals, d *output) (model.Date, *model.Manual, error) {
	r, err := generator.Check(g.options())
	if err != nil {
		return model.Date{}, nil, err
	}
	d.speaks(&r.Verdict)
	if on.IsZero() {
		return g.options().Today, r.Manual, nil
	}
	return on.Date, r.Manual, nil
}
