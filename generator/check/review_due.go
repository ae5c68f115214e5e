package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var reviewDue = finding.Rule{
	Code:  "review-due",
	Level: finding.Advice,
	Title: "A procedure that nobody has looked over for too long",
	Why:   "Machines, supplies and ways of working change while the page stays. A date that somebody must answer for is how that comes out. Of energy control, 29 CFR 1910.147(c)(6) asks for an inspection at least yearly, by someone other than those who use the procedure. Local codes come first.",
	Mend:  "Walk it through at the machine with somebody who works by it. Where nothing is to be changed, that is a row of the record: baybinder readings record WHO PROCEDURE inspected --by INSPECTOR --note TEXT. Else change it and issue it. How often is review-every: in shop.yaml.",
}

func runReviewDue(c *Context) []finding.Finding {
	var found []finding.Finding
	for p, r := range lastRevisions(c.Manual) {
		due, ok := c.staff().ReviewBy(p)
		if !ok || !p.Issued() || !due.Before(c.Today) {
			continue
		}
		found = append(found, reviewDue.At(r.At, "%s was to be reviewed by %s", p.Label(), due).
			WithMend("walk it through, then, where it stays as it is: baybinder readings record WHO %s inspected --by INSPECTOR --note \"what was found\"; else change it and issue it", p.ID))
	}
	return found
}

// runInspectionDue tells of a procedure with locks that nobody watched people
// work by for too long.
func runInspectionDue(c *Context) []finding.Finding {
	var found []finding.Finding
	for p, list := range revisionsOf(c.Manual) {
		due, _, ok := c.staff().InspectBy(p)
		if !ok || !due.Before(c.Today) || inspectorUnread(c.Manual, p) {
			continue
		}
		found = append(found, reviewDue.At(list[len(list)-1].At, "working by %s was to be inspected by %s", p.Label(), due).
			WithMend("watch someone work by it, then: baybinder readings record WHO %s inspected --by INSPECTOR --on UNIT --note \"what was found\"", p.ID))
	}
	return found
}

// inspectorUnread says that it is not known whether an inspection of a procedure is
// one.
func inspectorUnread(m *model.Manual, p *model.Procedure) bool {
	return slices.ContainsFunc(m.Record, func(r model.Reading) bool {
		return r.Act == "inspected" && r.Procedure.To == p && rolesUnread(m, r.By)
	})
}
