package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
)

var roleExpired = finding.Rule{
	Code:  "role-expired",
	Level: finding.Advice,
	Title: "A role that ran out",
	Why:   "The shop still lists the person as someone who may do the work, and the licence or the yearly check behind it is over.",
	Mend:  "Renew it and record that with readings role, or record there that it is withdrawn; one that a plan gave is renewed too by going through the plan again. How long it lasts is renew-every: of the role.",
}

func runRoleExpired(c *Context) []finding.Finding {
	var found []finding.Finding
	staff := c.staff()
	for _, p := range staff.Here() {
		told := map[string]bool{}
		roles := staff.Roles(p)
		for i := range roles {
			g := &roles[len(roles)-1-i] // the last time first
			until, runs := training.Until(g)
			if !runs || told[g.ID] || staff.HoldsRole(p, g.ID, c.Today) || c.Today.Before(g.On) || !g.Ended.IsZero() {
				continue
			}
			told[g.ID] = true
			found = append(found, roleExpired.At(g.At, "%s held %s until %s", p.Label(), g.To.Label(), until).
				WithMend("renew it, then: baybinder readings role %s %s renewed --by WHO", p.ID, g.ID).See(g.To.At, "how long it lasts is said here"))
		}
	}
	return found
}
