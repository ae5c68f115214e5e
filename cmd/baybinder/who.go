package main

import (
	"fmt"
	"strings"

	"baybinder/generator"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

type whoCommand struct {
	Procedure string `arg:"" help:"The procedure's id."`
}

// Help is the longer text of readings who --help.
func (*whoCommand) Help() string {
	return "It says what readings/ shows on the day of --today, and does not say that anybody is fit for the job. Local codes and licensed practice come first."
}

// Run tells who may do a job.
func (c *whoCommand) Run(g *globals, d *output) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	p, err := procedureNamed(r.Manual, c.Procedure)
	if err != nil {
		return err
	}
	if err := d.whole(r, p); err != nil {
		return err
	}
	refuse, bad := d.tablesRead(r)
	if refuse {
		return bad
	}
	staff := training.NewStandings(r.Manual, o.Today)
	crew := staff.Crew(p)
	d.say("%s, %s: %s at once. They hold between them:", p.Label(), o.Today, people(crew.People))
	if gone, on := staff.Retired(p); gone {
		d.say("  %s", outOfUse(p, on))
	}
	for _, post := range crew.Roles {
		d.say("  %s: %s%s", post.Role.Label(), orNobody(holders(post.Holds)), ranOut(post.RanOut))
	}
	if len(crew.Roles) == 0 {
		d.say("  no role")
	}
	d.say("have read what stands now, and all that it performs: %s", orNobody(strings.Join(labels(crew.Readers), ", ")))
	for _, p := range crew.Partly {
		d.say("%s has read it, and is still to read: %s", p.Person.Label(), procedureNames(p.Lacks))
	}
	if len(crew.Stale) > 0 {
		d.say("read it before it changed: %s", strings.Join(labels(crew.Stale), ", "))
	}
	d.say("may witness and teach it: %s", orNobody(strings.Join(labels(crew.Teach), ", ")))
	d.say("This is what the record shows. Local codes and licensed practice come first.")
	return bad
}

// outOfUse says since when a procedure is retired, where a day is written, and
// what stands in its place.
func outOfUse(p *model.Procedure, on model.Date) string {
	line := "it is retired"
	if !on.IsZero() {
		line = "it was retired on " + on.String()
	}
	if p.Instead.To != nil {
		line += "; in its place stands " + p.Instead.To.Label()
	}
	return line
}

func procedureNames(list []*model.Procedure) string {
	var out []string
	for _, p := range list {
		out = append(out, p.Label())
	}
	return strings.Join(out, ", ")
}

func people(n int) string {
	if n == 1 {
		return "1 person"
	}
	return fmt.Sprintf("%d people", n)
}

func orNobody(names string) string {
	if names == "" {
		return "nobody"
	}
	return names
}

func holders(list []training.Holder) string {
	var out []string
	for _, h := range list {
		name := h.Person.Label()
		if !h.Until.IsZero() {
			name += " (until " + h.Until.String() + ")"
		}
		out = append(out, name)
	}
	return strings.Join(out, ", ")
}

func ranOut(list []training.Holder) string {
	if len(list) == 0 {
		return ""
	}
	return "; ran out: " + holders(list)
}
