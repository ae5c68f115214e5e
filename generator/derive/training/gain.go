package training

import (
	"cmp"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// asks are what a plan asks for, in reading order. A draft or retired
// procedure is asked of nobody, and so is what only that performs.
func asks(plan *model.Plan) []Reading {
	return ordered(plan, (*model.Procedure).Issued)
}

// course is how far a person is with a plan. A plan that gives a role which
// runs out is gone through again to renew it: what was recorded before the
// last time it was finished counts for that time alone.
type course struct {
	person    *model.Person
	plan      *model.Ref[model.Plan]
	asks      []Reading
	read      map[*model.Procedure]*model.Reading
	watched   map[*model.Procedure]bool
	performed map[*model.Procedure]int
	finished  []model.Date
	by        string       // who saw the last performance that counted; "" where none has
	lost      []model.Date // days on which a role that the plan gives was withdrawn
}

func (c *course) begin() {
	c.by = ""
	c.read, c.watched, c.performed = map[*model.Procedure]*model.Reading{}, map[*model.Procedure]bool{}, map[*model.Procedure]int{}
}

// gains goes through the record day by day and finds the days on which plans
// were finished, and so the roles that they gave. Who may witness depends on
// the roles of that day, which may have been gained by a plan themselves:
// within a day it is looked again until nothing more is gained, so that two
// people cannot make each other witnesses.
func (h *Standings) gains() {
	h.held = map[*model.Person][]model.Gained{}
	h.courses = map[*model.Person][]*course{}
	for _, p := range h.m.People {
		h.held[p] = h.broughtOrRowed(p)
		for i := range p.Plans {
			if plan := &p.Plans[i]; plan.To != nil {
				c := &course{person: p, plan: plan, asks: h.asksOf(plan.To), lost: h.lostOf(p, plan.To)}
				c.begin()
				h.courses[p] = append(h.courses[p], c)
			}
		}
	}
	for _, rows := range h.days() {
		h.day(rows)
	}
}

// asksOf is what a plan asks for, worked out once.
func (h *Standings) asksOf(plan *model.Plan) []Reading {
	if _, known := h.plans[plan]; !known {
		h.plans[plan] = asks(plan)
	}
	return h.plans[plan]
}

// days are the rows of the record by day, the earliest first.
func (h *Standings) days() [][]*model.Reading {
	var rows []*model.Reading
	for i := range h.m.Record {
		if r := &h.m.Record[i]; h.counts(r) && !r.Date.IsZero() {
			rows = append(rows, r)
		}
	}
	slices.SortStableFunc(rows, func(a, b *model.Reading) int { return a.Date.Time().Compare(b.Date.Time()) })
	var out [][]*model.Reading
	for i, r := range rows {
		if i == 0 || rows[i-1].Date != r.Date {
			out = append(out, nil)
		}
		out[len(out)-1] = append(out[len(out)-1], r)
	}
	return out
}

// part is a row of the record as part of a course.
type part struct {
	row    *model.Reading
	course *course
}

// day takes in the rows of one day, and then looks which plans are done: the
// order in which a day's rows stand says nothing.
func (h *Standings) day(rows []*model.Reading) {
	var waiting []part
	for _, r := range rows {
		for _, c := range h.courses[r.Person.To] {
			c.forget(r.Date)
		}
	}
	for _, r := range rows {
		for _, c := range h.courses[r.Person.To] {
			waiting = append(waiting, part{r, c})
		}
	}
	for gained := true; gained; {
		gained = false
		var looked []*course
		waiting = slices.DeleteFunc(waiting, func(w part) bool {
			taken := h.take(w.course, w.row)
			if taken && !slices.Contains(looked, w.course) {
				looked = append(looked, w.course)
			}
			return taken
		})
		for _, c := range looked {
			gained = h.finish(c, rows[0].Date) || gained
		}
	}
}

// take counts a row towards a plan; not where nobody saw it who may.
func (h *Standings) take(c *course, r *model.Reading) bool {
	p := r.Procedure.To
	switch r.Act {
	case "read":
		if was := c.read[p]; was == nil || !h.heldOn(was, r.Date) || was.Date.Before(r.Date) && h.issuedBy(r) {
			c.read[p] = r
		}
	case "watched":
		c.watched[p] = true
	case "performed":
		if !h.uncounted(c.plan.To, r).IsZero() {
			return false
		}
		c.performed[p]++
		c.by = r.By
	}
	return true
}

// finish looks whether a plan is done on a day, and gives its roles.
func (h *Standings) finish(c *course, day model.Date) bool {
	for _, a := range c.asks {
		p := a.Procedure
		if r := c.read[p]; r == nil || !h.heldOn(r, day) || c.performed[p] < a.Perform || a.Watch && !c.watched[p] {
			return false
		}
	}
	if len(c.asks) == 0 {
		return false
	}
	c.finished = append(c.finished, day)
	defer c.begin()
	gained := false
	for _, role := range c.plan.To.Gives {
		gained = h.gain(c, role, day) || gained
	}
	return gained
}

// heldOn says whether a reading was true on a day: by the revisions of that
// day, as the words of that day are not known otherwise. Where none was issued
// by then, what was read is taken for what stood.
func (h *Standings) heldOn(r *model.Reading, day model.Date) bool {
	stood := h.stood(r.Procedure.To, day)
	if len(stood) == 0 {
		return model.IsFingerprint(r.Fingerprint)
	}
	return !askedAgain(stood, r)
}

// issuedBy says whether a reading is of words that had been issued on its day;
// where nothing had been, of any. What is of no revision says nothing against an
// earlier reading.
func (h *Standings) issuedBy(r *model.Reading) bool {
	stood := h.stood(r.Procedure.To, r.Date)
	_, known := readRevision(stood, r)
	return known || len(stood) == 0
}

// stood are the revisions of a procedure that were issued up to a day.
func (h *Standings) stood(p *model.Procedure, day model.Date) []*model.Revision {
	var out []*model.Revision
	for _, rev := range h.since[p] {
		if !day.Before(rev.Date) {
			out = append(out, rev)
		}
	}
	return out
}

// askedAgain says whether revisions ask for what was read to be read again. A
// fingerprint that none of them has is of nothing that was issued.
func askedAgain(revisions []*model.Revision, r *model.Reading) bool {
	at, known := readRevision(revisions, r)
	return !known || slices.ContainsFunc(revisions[at+1:], func(rev *model.Revision) bool { return rev.Readers == "reread" })
}

// Roles are the roles of a person: those that the list of people names, those of
// the rows of roles, and those of the plans that they finished, by the day.
func (h *Standings) Roles(p *model.Person) []model.Gained {
	if h.held == nil {
		h.gains()
	}
	return h.held[p]
}

// HoldsRole says whether a person holds a role on a day, by any of these. Who
// is away holds nothing.
func (h *Standings) HoldsRole(p *model.Person, role string, on model.Date) bool {
	h.Roles(p)
	return h.holdsOn(p, role, on)
}

func (h *Standings) holdsOn(p *model.Person, role string, on model.Date) bool {
	return !p.Away(on) && holds(h.held[p], role, on)
}

// Finished are the days on which a person finished a plan of theirs; more than
// one where it was gone through again.
func (h *Standings) Finished(p *model.Person, plan *model.Plan) []model.Date {
	if h.held == nil {
		h.gains()
	}
	for _, c := range h.courses[p] {
		if c.plan.To == plan {
			return c.finished
		}
	}
	return nil
}

// Uncounted says why a performance does not count towards a plan; "" where it
// does. Who witnesses holds, on that day, the assessor's role; where the plan
// names none, all that it gives. Nobody witnesses their own.
func (h *Standings) Uncounted(plan *model.Plan, r *model.Reading) finding.Words {
	if h.held == nil {
		h.gains()
	}
	return h.uncounted(plan, r)
}

func (h *Standings) uncounted(plan *model.Plan, r *model.Reading) finding.Words {
	wanted := witnessRoles(plan)
	by := h.person(r.By)
	switch {
	case len(wanted) == 0:
		return finding.Say("nobody may witness it: the plan %s names no assessor and gives no role", plan.ID)
	case r.By == "":
		return finding.Say("nobody is named who saw it")
	case r.By == r.Person.ID:
		return finding.Say("nobody witnesses their own")
	case by == nil:
		return finding.Say("%s is not in readings/people.csv", r.By)
	case !by.There(r.Date):
		return finding.Say("%s was not there on %s", by.Label(), r.Date)
	}
	for _, role := range wanted {
		if !h.holdsOn(by, role.ID, r.Date) {
			return finding.Say("%s did not hold %s on %s", by.Label(), cmp.Or(labelOf(role.To), role.ID), r.Date)
		}
	}
	return finding.Words{}
}

// witnessRoles are the roles of which a witness holds every one.
func witnessRoles(plan *model.Plan) []model.Ref[model.Role] {
	if plan.Assessor.ID != "" {
		return []model.Ref[model.Role]{plan.Assessor}
	}
	return plan.Gives
}

// Witnesses are the people who may witness what a plan has performed, on the
// staff's day.
func (h *Standings) Witnesses(plan *model.Plan) []*model.Person {
	wanted := witnessRoles(plan)
	var out []*model.Person
	for _, p := range h.m.People {
		lacks := func(r model.Ref[model.Role]) bool { return !h.HoldsRole(p, r.ID, h.today) }
		if len(wanted) > 0 && !slices.ContainsFunc(wanted, lacks) {
			out = append(out, p)
		}
	}
	return out
}

func (h *Standings) person(id string) *model.Person {
	return model.ByID(h.m.People, id)
}

func labelOf(r *model.Role) string {
	if r == nil {
		return ""
	}
	return r.Label()
}
