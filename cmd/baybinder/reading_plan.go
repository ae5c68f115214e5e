package main

import (
	"strings"

	"baybinder/generator"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

type planCommand struct {
	Plan string `arg:"" help:"The plan's id."`
}

// Run tells a plan's order.
func (c *planCommand) Run(g *globals, d *output) error {
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
	plan, err := training.Named(r.Manual, c.Plan)
	if err != nil {
		return err
	}
	sum := 0
	for n, reading := range training.Order(plan) {
		sum += training.Minutes(reading.Seconds)
		d.say("%d. %s, %d min%s", n+1, reading.Procedure.Label(), training.Minutes(reading.Seconds), d.actsOf(reading))
		for _, p := range reading.BuildsOn {
			d.inform("   builds on %s", p.Label())
		}
	}
	d.inform("In all %d min of reading.", max(1, sum))
	d.course(training.NewStandings(r.Manual, o.Today), r.Manual, plan)
	return bad
}

// actsOf is what is to be done besides reading: ", then watch it, then perform
// it 3 times under an eye".
func (d *output) actsOf(r training.Reading) string {
	text := ""
	if r.Watch {
		text += d.inShop(", then watch it")
	}
	switch {
	case r.Perform == 1:
		text += d.inShop(", then perform it under an eye")
	case r.Perform > 1:
		text += d.inShop(", then perform it %d times under an eye", r.Perform)
	}
	return text
}

// course tells who may witness, which roles the plan gives, and who is in it.
func (d *output) course(hall *training.Standings, m *model.Manual, plan *model.Plan) {
	if len(plan.Perform) > 0 {
		witnesses := names(hall.Witnesses(plan))
		if witnesses == "" {
			witnesses = d.inShop("nobody in readings/people.csv, on this day")
		}
		d.inform("May witness: %s.", witnesses)
	}
	if roles := rolesOf(plan.Gives); roles != "" {
		d.inform("It gives: %s.", roles)
	}
	for _, p := range hall.Here() {
		for i := range p.Plans {
			if p.Plans[i].To == plan {
				d.say("%s: %s", p.Label(), d.doneOn(hall.Finished(p, plan)))
			}
		}
	}
}

func rolesOf(refs []model.Ref[model.Role]) string {
	var names []string
	for _, r := range refs {
		if r.To != nil {
			names = append(names, r.To.Label())
		}
	}
	return strings.Join(names, ", ")
}

func (d *output) doneOn(days []model.Date) string {
	if len(days) == 0 {
		return d.inShop("not finished")
	}
	return d.inShop("finished on %s", days[len(days)-1])
}
