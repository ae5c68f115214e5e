package training

import (
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Crew says, by the files, who may do a job on a day.
type Crew struct {
	Roles   []Post          // what the job needs, the roles of what it performs among them
	Readers []*model.Person // have read it as it stands, and all that it performs
	Partly  []Partly        // have read it as it stands, and not all that it performs
	Stale   []*model.Person // read it before it changed
	Teach   []*model.Person // may witness and teach it under some plan
	People  int             // at once
}

// Partly is who has read a job, and what of it they have not, or not as it
// stands.
type Partly struct {
	Person *model.Person
	Lacks  []*model.Procedure
}

// Post is a role that a job needs, who holds it on the day, and whose ran out.
type Post struct {
	Role   *model.Role
	Holds  []Holder
	RanOut []Holder
}

// Holder is a person and the last day of the role; zero where it does not run
// out.
type Holder struct {
	Person *model.Person
	Until  model.Date
}

// Retired says whether a procedure was out of use on the staff's day, and since
// when; the zero day where no row says one (status: retired written by hand).
func (h *Standings) Retired(p *model.Procedure) (gone bool, on model.Date) {
	rows := h.since[p]
	if n := len(rows); n > 0 && rows[n-1].Readers == "retired" {
		return true, rows[n-1].Date
	}
	for i := range h.m.Revisions { // of a later day: until then it was in use
		if r := &h.m.Revisions[i]; r.Procedure.To == p && r.Readers == "retired" && h.today.Before(r.Date) {
			return false, on
		}
	}
	return p.Status == "retired", on
}

// Crew is who may do a procedure on the staff's day.
func (h *Standings) Crew(p *model.Procedure) Crew {
	c := Crew{People: p.People}
	for _, need := range p.Needs {
		if need.To != nil {
			c.Roles = append(c.Roles, h.post(need.To))
		}
	}
	for _, person := range h.Here() {
		lacks := h.Unread(person, p)
		switch last := h.lastRead(person, p); {
		case last == nil:
		case !h.Holds(last):
			c.Stale = append(c.Stale, person)
		case len(lacks) > 0:
			c.Partly = append(c.Partly, Partly{person, lacks})
		default:
			c.Readers = append(c.Readers, person)
		}
	}
	for _, plan := range h.m.Plans {
		if !slices.ContainsFunc(h.asksOf(plan), func(r Reading) bool { return r.Procedure == p }) {
			continue
		}
		for _, person := range h.Witnesses(plan) {
			if !slices.Contains(c.Teach, person) {
				c.Teach = append(c.Teach, person)
			}
		}
	}
	return c
}

// HaveRead are the people who are there and have read a procedure, in any
// revision; where a language is given, those who read it in that.
func (h *Standings) HaveRead(p *model.Procedure, language string) []*model.Person {
	var out []*model.Person
	for _, person := range h.Here() {
		if slices.ContainsFunc(h.read[key{person, p}], func(r *model.Reading) bool {
			return r.Act == "read" && (language == "" || strings.EqualFold(r.Language, language))
		}) {
			out = append(out, person)
		}
	}
	return out
}

// Callers are the procedures in use that perform one themselves.
func (h *Standings) Callers(p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	for _, q := range h.m.Procedures {
		if q.Issued() && q != p && slices.Contains(performs(q), p) {
			out = append(out, q)
		}
	}
	return out
}

// Unread is what of a job, and of all that it performs, a person has not read as
// it stands. Drafts and retired procedures are read by nobody.
func (h *Standings) Unread(person *model.Person, p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	for _, part := range whole(p) {
		if last := h.lastRead(person, part); part.Issued() && (last == nil || !h.Holds(last)) {
			out = append(out, part)
		}
	}
	return out
}

// whole is a procedure and all that it performs, each once.
func whole(p *model.Procedure) []*model.Procedure {
	out := []*model.Procedure{p}
	for i := 0; i < len(out); i++ {
		for _, callee := range performs(out[i]) {
			if !slices.Contains(out, callee) {
				out = append(out, callee)
			}
		}
	}
	return out
}

// lastRead is the last record of a person having read a procedure that holds, else
// the last of all, or nil: who reads the old words after the new ones has read both.
func (h *Standings) lastRead(person *model.Person, p *model.Procedure) *model.Reading {
	return h.last(h.read[key{person, p}], h.Holds)
}

// last is the last reading of a list that holds, else the last of all; what is of no
// revision says nothing against one that is.
func (h *Standings) last(readings []*model.Reading, holds func(*model.Reading) bool) *model.Reading {
	var last *model.Reading
	for _, r := range readings {
		switch {
		case r.Act != "read":
			continue
		case last == nil:
		case h.ofIssued(r) != h.ofIssued(last):
			if !h.ofIssued(r) {
				continue
			}
		case holds(r) != holds(last):
			if !holds(r) {
				continue
			}
		case r.Date.Before(last.Date), r.Date == last.Date && holds(last):
			continue
		}
		last = r
	}
	return last
}

// ofIssued says whether a reading is of words that were issued; where nothing
// was, of any.
func (h *Standings) ofIssued(r *model.Reading) bool {
	revisions := h.since[r.Procedure.To]
	_, known := readRevision(revisions, r)
	return known || len(revisions) == 0
}

func (h *Standings) post(role *model.Role) Post {
	post := Post{Role: role}
	for _, person := range h.Here() {
		until, has := h.lastDay(person, role.ID)
		switch {
		case !has:
		case h.HoldsRole(person, role.ID, h.today):
			post.Holds = append(post.Holds, Holder{person, until})
		default:
			post.RanOut = append(post.RanOut, Holder{person, until})
		}
	}
	return post
}

// lastDay is until when a person holds or held a role that was gained by the
// staff's day; zero where it does not run out.
func (h *Standings) lastDay(person *model.Person, role string) (last model.Date, has bool) {
	for _, g := range h.Roles(person) {
		if g.ID != role || h.today.Before(g.On) || h.today.Before(g.From) || !g.Ended.IsZero() {
			continue // what was withdrawn did not run out
		}
		until, runs := Until(&g)
		if !runs {
			return model.Date{}, true
		}
		if !has || last.Before(until) {
			last = until
		}
		has = true
	}
	return last, has
}
