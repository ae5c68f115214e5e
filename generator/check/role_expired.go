package check

import (
	"baybinder/generator/finding"
	"baybinder/generator/training"
)

var roleExpired = finding.Rule{
	Code:  "role-expired",
	Level: finding.Advice,
	Title: "A role that ran out",
	Why:   "The shop still lists the person as someone who may do the work, and the licence or the yearly check behind it is over.",
	Mend:  "Renew it and write the new day, role@date, or take the role out. How long it lasts is renew-every: of the role.",
}

func runRoleExpired(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, p := range c.Manual.People {
		for i := range p.Roles {
			g := &p.Roles[i]
			until, runs := training.Until(g)
			if !runs || training.Holds(p, g.ID, c.Today) || c.Today.Before(g.On) {
				continue
			}
			found = append(found, roleExpired.At(g.At, "%s held %s until %s", p.Label(), g.To.Label(), until).
				WithMend("renew it and write the new day: %s@%s", g.ID, c.Today).See(g.To.At, "how long it lasts is said here"))
		}
	}
	return found
}
