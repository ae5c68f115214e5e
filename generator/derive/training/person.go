package training

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

// PersonAccount is what the files show of a person on a day.
type PersonAccount struct {
	Person  *model.Person
	There   bool
	Started model.Date      // zero where it is not known, or was later
	Left    []model.Absence // that had begun; Back is zero where they were not back
	Roles   []RoleOn
	Deeds   []Deed // by day
	Jobs    []Done // the oldest first
}

// RoleOn is a role of a person, as it stood on a day.
type RoleOn struct {
	Role  *model.Role
	From  model.Date // zero where it is not known
	Until model.Date // zero where it does not run out
	Ended model.Date // withdrawn; zero where it was not, or later
	Why   string     // it was withdrawn
	Held  bool
	Anew  bool // not held by this, and held by another: it was renewed
}

// Done is a job, what it was done with, and how its people stood.
type Done struct {
	record.Use
	Fitness Fitness
}

// PersonAccount is what the files show of a person on the staff's day: what they
// held, had read, watched and performed, and which jobs they had done. What came
// later is not in it, though the files have it.
func (h *Standings) PersonAccount(p *model.Person) PersonAccount {
	a := PersonAccount{Person: p, There: p.There(h.today), Left: leftBy(p, h.today)}
	if !h.today.Before(p.Started) {
		a.Started = p.Started
	}
	roles := h.Roles(p)
	for i := range roles {
		if g := &roles[i]; g.To != nil && !h.today.Before(g.On) && !h.today.Before(g.From) && !slices.ContainsFunc(roles[:i], func(o model.Gained) bool { return o.To == g.To && o.On == g.On && o.Ended == g.Ended }) {
			a.Roles = append(a.Roles, h.roleOn(p, g))
		}
	}
	for i := range a.Roles {
		r := &a.Roles[i]
		r.Anew = !r.Held && slices.ContainsFunc(a.Roles, func(o RoleOn) bool { return o.Held && o.Role == r.Role })
	}
	for i := range h.m.Record {
		if r := &h.m.Record[i]; r.Person.To == p && h.counts(r) {
			a.Deeds = append(a.Deeds, h.deed(r))
		}
	}
	slices.SortStableFunc(a.Deeds, func(x, y Deed) int { return x.Date.Time().Compare(y.Date.Time()) })
	for _, q := range h.m.Procedures {
		for _, use := range record.Used(h.m, q, h.today) {
			if slices.ContainsFunc(record.Doers(h.m, use.Job), func(w record.Worker) bool { return w.To == p }) {
				a.Jobs = append(a.Jobs, Done{use, h.Fitness(use.Job)})
			}
		}
	}
	slices.SortStableFunc(a.Jobs, func(x, y Done) int { return x.Job.Saved.Compare(y.Job.Saved) })
	return a
}

// leftBy are the absences of a person that had begun by a day, as they were known
// then.
func leftBy(p *model.Person, day model.Date) []model.Absence {
	var out []model.Absence
	for _, a := range p.Left {
		if day.Before(a.Last) {
			continue
		}
		if day.Before(a.Back) {
			a.Back = model.Date{}
		}
		out = append(out, a)
	}
	return out
}

func (h *Standings) roleOn(p *model.Person, g *model.Gained) RoleOn {
	r := RoleOn{Role: g.To, From: g.On}
	if r.From.IsZero() {
		r.From = g.From
	}
	r.Until, _ = Until(g)
	r.Held = !p.Away(h.today) && holds([]model.Gained{*g}, g.ID, h.today)
	if h.today.Before(g.Ended) {
		return r
	}
	r.Ended = g.Ended
	for _, a := range h.awardsOf(p) {
		if a.Act == "withdrawn" && a.Role.To == g.To && a.Date == g.Ended {
			r.Why = a.Reason
		}
	}
	return r
}
