package training

import (
	"slices"

	"baybinder/generator/base/ledger"
	"baybinder/generator/model"
)

// broughtOrRowed are the roles that a person brought, and those that the rows of
// roles gave, up to the staff's day. A withdrawal ends what stands before it in
// the file.
func (h *Standings) broughtOrRowed(p *model.Person) []model.Gained {
	var out []model.Gained
	for _, g := range p.Roles {
		if g.On.IsZero() && p.StartUnread {
			continue // from when on is not known
		}
		if g.On.IsZero() {
			g.From = p.Started
		}
		out = append(out, g)
	}
	for _, a := range h.awardsOf(p) {
		if a.Act != "withdrawn" {
			out = append(out, model.Gained{Ref: model.Ref[model.Role]{ID: a.Role.To.ID, At: a.At, To: a.Role.To}, On: a.Date})
			continue
		}
		for i := range out {
			if g := &out[i]; g.To == a.Role.To && (g.Ended.IsZero() || a.Date.Before(g.Ended)) {
				g.Ended = a.Date
			}
		}
	}
	return out
}

// awardsOf are the rows of roles about a person up to the staff's day.
func (h *Standings) awardsOf(p *model.Person) []*model.Award {
	return slices.DeleteFunc(h.allAwardsOf(p), func(a *model.Award) bool { return h.today.Before(a.Date) })
}

// allAwardsOf are the rows of roles about a person, those of days to come too.
func (h *Standings) allAwardsOf(p *model.Person) []*model.Award {
	var out []*model.Award
	for i := range h.m.Awards {
		a := &h.m.Awards[i]
		if a.Person.To == p && a.Role.To != nil && !a.Bad {
			out = append(out, a)
		}
	}
	return out
}

// lostOf are the days on which a role that a plan gives was withdrawn.
func (h *Standings) lostOf(p *model.Person, plan *model.Plan) []model.Date {
	var out []model.Date
	for _, a := range h.awardsOf(p) {
		if a.Act == "withdrawn" && slices.ContainsFunc(plan.Gives, func(g model.Ref[model.Role]) bool { return g.To == a.Role.To }) {
			out = append(out, a.Date)
		}
	}
	return out
}

// forget drops what was done up to a withdrawal: what was withdrawn is gained
// again by what is done after it.
func (c *course) forget(day model.Date) {
	before := len(c.lost)
	c.lost = slices.DeleteFunc(c.lost, func(lost model.Date) bool { return lost.Before(day) })
	if len(c.lost) < before {
		c.begin()
	}
}

// gain gives the role of a plan that was finished on a day, unless a row of roles
// says so already. Where a withdrawal of that day or a later one stands in the
// file, no row is missing: behind it, that would bring the role back.
func (h *Standings) gain(c *course, role model.Ref[model.Role], day model.Date) bool {
	g := model.Gained{Ref: model.Ref[model.Role]{ID: role.ID, At: c.plan.At, To: role.To}, On: day}
	for _, a := range h.awardsOf(c.person) {
		switch {
		case a.Role.To != role.To:
		case a.Act == "withdrawn" && !a.Date.Before(day) && (g.Ended.IsZero() || a.Date.Before(g.Ended)):
			g.Ended = a.Date
		case a.Act != "withdrawn" && a.Date == day:
			return false
		}
	}
	h.held[c.person] = append(h.held[c.person], g)
	ends := func(a *model.Award) bool {
		return a.Role.To == role.To && a.Act == "withdrawn" && !a.Date.Before(day)
	}
	if slices.ContainsFunc(h.allAwardsOf(c.person), ends) {
		return true
	}
	act := "gained"
	if slices.ContainsFunc(h.held[c.person], func(o model.Gained) bool { return o.To == g.To && o.Ended.IsZero() && o.On.Before(day) }) {
		act = "renewed"
	}
	h.missing = append(h.missing, ledger.Row{
		"date": day.String(), "person": c.person.ID, "role": role.ID, "act": act, "by": c.by, "reason": "finished " + c.plan.ID,
	})
	return true
}
