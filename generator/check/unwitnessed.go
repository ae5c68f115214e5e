package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var unwitnessed = finding.Rule{
	Code:  "unwitnessed",
	Level: finding.Advice,
	Ours:  true,
	Title: "A performance that counts for no plan",
	Why:   "A plan asks for the job done under the eye of someone who may judge it. Seen by nobody, by oneself or by someone without the role on that day, it shows nothing.",
	Mend:  "Have it performed again before someone who holds the plan's assessor: role on the day. Rows stay as they are: they are what happened.",
}

// runUnwitnessed is silent once the procedure was performed often enough:
// rows are never taken out, and nothing is left to mend.
func runUnwitnessed(c *Context) []finding.Finding {
	if len(c.Manual.Record) == 0 {
		return nil
	}
	staff := c.staff()
	lacking := map[deed]bool{}
	for _, s := range staff.Standings() {
		if s.Performed < s.Perform {
			lacking[deed{s.Person, s.Reading.Procedure}] = true
		}
	}
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		if r.Act != "performed" || c.Today.Before(r.Date) || !lacking[deed{r.Person.To, r.Procedure.To}] || assessorUnread(c.Manual.Plans, r.Procedure.To) || rolesUnread(c.Manual, r.By) {
			continue
		}
		if why := staff.UncountedByAll(r); !why.IsZero() {
			found = append(found, unwitnessed.At(r.ByAt, "what %s performed on %s does not count: %s", r.Person.To.Label(), r.Date, why).
				WithMend("have %s performed again under the eye of an assessor, then: baybinder readings record %s %s performed --by WHO", r.Procedure.To.ID, r.Person.ID, r.Procedure.To.ID))
		}
	}
	return found
}

// assessorUnread says that of a plan that has a procedure performed it is not
// known who assesses.
func assessorUnread(plans []*model.Plan, p *model.Procedure) bool {
	return slices.ContainsFunc(plans, func(plan *model.Plan) bool {
		return plan.Lost("assessor", "gives") && slices.ContainsFunc(plan.Perform, func(u model.Use[model.Procedure]) bool { return u.To == p })
	})
}

// deed is who did what.
type deed struct {
	person    *model.Person
	procedure *model.Procedure
}
