package main

import (
	"strings"

	"baybinder/generator"
	"baybinder/generator/base/finding"
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
	d.speaks(&r.Verdict)
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
	d.crew(training.NewStandings(r.Manual, o.Today), p, o.Today)
	return bad
}

// crew tells who may do a procedure on a day.
func (d *output) crew(staff *training.Standings, p *model.Procedure, today model.Date) {
	crew := staff.Crew(p)
	d.inform("%s, %s: %s at once. They hold between them:", p.Label(), today, finding.Count(crew.People, "%d person", "%d people"))
	if gone, on := staff.Retired(p); gone {
		d.outOfUse(p, on)
	}
	for _, post := range crew.Roles {
		d.say("  %s: %s%s", post.Role.Label(), d.orNobody(d.holders(post.Holds)), d.ranOut(post.RanOut))
	}
	if len(crew.Roles) == 0 {
		d.inform("  no role")
	}
	d.inform("have read what stands now, and all that it performs: %s", d.orNobody(names(crew.Readers)))
	for _, p := range crew.Partly {
		d.inform("%s has read it, and is still to read: %s", p.Person.Label(), names(p.Lacks))
	}
	if len(crew.Stale) > 0 {
		d.inform("read it before it changed: %s", names(crew.Stale))
	}
	d.inform("may witness and teach it: %s", d.orNobody(names(crew.Teach)))
	d.inform("This is what the record shows. Local codes and licensed practice come first.")
}

// outOfUse says since when a procedure is retired, where a day is written, and
// what stands in its place.
func (d *output) outOfUse(p *model.Procedure, on model.Date) {
	line := d.inShop("it is retired")
	if !on.IsZero() {
		line = d.inShop("it was retired on %s", on)
	}
	if p.Instead.To != nil {
		line += d.inShop("; in its place stands %s", p.Instead.To.Label())
	}
	d.say("  %s", line)
}

func names[T model.Named](list []T) string { return strings.Join(labels(list), ", ") }

func (d *output) orNobody(names string) string {
	if names == "" {
		return d.inShop("nobody")
	}
	return names
}

func (d *output) holders(list []training.Holder) string {
	var out []string
	for _, h := range list {
		out = append(out, h.Person.Label()+d.until(h.Until))
	}
	return strings.Join(out, ", ")
}

// until is " (until 2027-01-12)", and nothing for what does not run out.
func (d *output) until(day model.Date) string {
	if day.IsZero() {
		return ""
	}
	return d.inShop(" (until %s)", day)
}

func (d *output) ranOut(list []training.Holder) string {
	if len(list) == 0 {
		return ""
	}
	return d.inShop("; ran out: %s", d.holders(list))
}
