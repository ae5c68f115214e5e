package check

import (
	"baybinder/generator/finding"
	"baybinder/generator/training"
)

var unwitnessed = finding.Rule{
	Code:  "unwitnessed",
	Level: finding.Advice,
	Title: "A performance that counts for no plan",
	Why:   "A plan asks for the job done under the eye of someone who may judge it. Seen by nobody, by oneself or by someone without the role on that day, it shows nothing.",
	Mend:  "Have it performed again before someone who holds the plan's assessor: role on the day. Rows stay as they are: they are what happened.",
}

func runUnwitnessed(c *Context) []finding.Finding {
	hall := training.NewHall(c.Manual, c.Today)
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		if r.Act != "performed" || r.Person.To == nil || r.Procedure.To == nil || c.Today.Before(r.Date) {
			continue
		}
		if why := hall.UncountedByAll(r); why != "" {
			found = append(found, unwitnessed.At(r.ByAt, "what %s performed on %s does not count: %s", r.Person.To.Label(), r.Date, why).
				WithMend("have %s performed again under the eye of an assessor, then: baybinder readings record %s %s performed --by WHO", r.Procedure.To.ID, r.Person.ID, r.Procedure.To.ID))
		}
	}
	return found
}
