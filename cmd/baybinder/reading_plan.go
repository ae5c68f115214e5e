package main

import (
	"fmt"
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
		d.say("%d. %s, %d min%s", n+1, reading.Procedure.Label(), training.Minutes(reading.Seconds), actsOf(reading))
		for _, p := range reading.BuildsOn {
			d.say("   builds on %s", p.Label())
		}
	}
	d.say("In all %d min of reading.", max(1, sum))
	d.course(training.NewStandings(r.Manual, o.Today), r.Manual, plan)
	return bad
}

// actsOf is what is to be done besides reading: ", then watch it, then perform
// it 3 times under an eye".
func actsOf(r training.Reading) string {
	text := ""
	if r.Watch {
		text += ", then watch it"
	}
	switch {
	case r.Perform == 1:
		text += ", then perform it under an eye"
	case r.Perform > 1:
		text += fmt.Sprintf(", then perform it %d times under an eye", r.Perform)
	}
	return text
}

// course tells who may witness, which roles the plan gives, and who is in it.
func (d *output) course(hall *training.Standings, m *model.Manual, plan *model.Plan) {
	if len(plan.Perform) > 0 {
		witnesses := strings.Join(labels(hall.Witnesses(plan)), ", ")
		if witnesses == "" {
			witnesses = "nobody in readings/people.csv, on this day"
		}
		d.say("May witness: %s.", witnesses)
	}
	if roles := rolesOf(plan.Gives); roles != "" {
		d.say("It gives: %s.", roles)
	}
	for _, p := range hall.Here() {
		for i := range p.Plans {
			if p.Plans[i].To == plan {
				d.say("%s: %s", p.Label(), doneOn(hall.Finished(p, plan)))
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

func doneOn(days []model.Date) string {
	if len(days) == 0 {
		return "not finished"
	}
	return "finished on " + days[len(days)-1].String()
}
