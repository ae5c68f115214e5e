package training

import (
	"baybinder/generator/base/ledger"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

// State is how a person stands to a procedure.
type State string

// The states. Due may still be read in time, overdue no more; stale was read,
// and changed since in a way that must be read again.
const (
	Good    State = "good"
	Stale   State = "stale"
	Due     State = "due"
	Overdue State = "overdue"
)

// Standing is how a person stands to a procedure of a plan of theirs.
type Standing struct {
	Person    *model.Person
	Plan      *model.Ref[model.Plan] // as the list of people names it
	Reading   Reading
	State     State
	By        model.Date     // until when it is to be read; zero where the plan does not say
	Last      *model.Reading // the last record of having read it; nil where there is none
	Watched   bool
	MustWatch bool
	Performed int // times, under the eye of someone who may witness it
	Perform   int // times that the plan asks for
}

// Done says that nothing of it is left to do.
func (s *Standing) Done() bool {
	return s.State == Good && s.Performed >= s.Perform && (s.Watched || !s.MustWatch)
}

// Standings works out how people stand, on one day. It is not made for use by
// several goroutines at once.
type Standings struct {
	m         *model.Manual
	today     model.Date
	book      *fingerprint.Cache
	read      map[key][]*model.Reading
	since     map[*model.Procedure][]*model.Revision
	plans     map[*model.Plan][]Reading
	held      map[*model.Person][]model.Gained // nil until it is asked for
	courses   map[*model.Person][]*course
	inspected map[*model.Procedure]*model.Reading // nil until it is asked for
	missing   []ledger.Row                        // rows of roles that the record shows and readings/roles.csv lacks
}

type key struct {
	person    *model.Person
	procedure *model.Procedure
}

// NewStandings gathers a manual's records up to a day: what is recorded later is not
// true yet.
func NewStandings(m *model.Manual, today model.Date) *Standings {
	h := &Standings{
		m: m, today: today, book: fingerprint.NewCache(),
		read: map[key][]*model.Reading{}, since: map[*model.Procedure][]*model.Revision{}, plans: map[*model.Plan][]Reading{},
	}
	for i := range m.Record {
		if r := &m.Record[i]; h.counts(r) {
			k := key{r.Person.To, r.Procedure.To}
			h.read[k] = append(h.read[k], r)
		}
	}
	for i := range m.Revisions {
		r := &m.Revisions[i]
		if r.Procedure.To != nil && !today.Before(r.Date) {
			h.since[r.Procedure.To] = append(h.since[r.Procedure.To], r)
		}
	}
	return h
}

// counts says that a row of the record is of someone and something known, has no
// error, and is of a day on which they were there and not of one to come.
func (h *Standings) counts(r *model.Reading) bool {
	return !r.Bad && r.Person.To != nil && r.Procedure.To != nil && !h.today.Before(r.Date) && r.Person.To.There(r.Date)
}

// Standings are how everybody stands to what their plans have them read, by
// person, plan and order. A draft or retired procedure is asked of nobody.
func (h *Standings) Standings() []Standing {
	var out []Standing
	for _, person := range h.Here() {
		for i := range person.Plans {
			plan := &person.Plans[i]
			if plan.To == nil {
				continue
			}
			for _, reading := range h.asksOf(plan.To) {
				out = append(out, h.standing(person, plan, reading))
			}
		}
	}
	return out
}

func (h *Standings) standing(person *model.Person, plan *model.Ref[model.Plan], reading Reading) Standing {
	p := reading.Procedure
	s := Standing{Person: person, Plan: plan, Reading: reading, By: h.by(person, plan.To), State: Due, MustWatch: reading.Watch, Perform: reading.Perform}
	s.Last = h.lastRead(person, p)
	for _, r := range h.read[key{person, p}] {
		switch {
		case r.Act == "watched":
			s.Watched = true
		case r.Act == "performed" && h.Uncounted(plan.To, r).IsZero():
			s.Performed++
		}
	}
	switch {
	case s.Last != nil && h.Holds(s.Last):
		s.State = Good
	case s.Last != nil:
		s.State, s.By = Stale, h.again(s.Last, plan.To)
	}
	if s.State != Good && h.late(s.By) {
		s.State = Overdue
	}
	return s
}

// Here are the people who have not left by the staff's day, in the order of the
// file: nobody else is in a list.
func (h *Standings) Here() []*model.Person {
	var out []*model.Person
	for _, p := range h.m.People {
		if !p.Away(h.today) {
			out = append(out, p)
		}
	}
	return out
}

func (h *Standings) late(by model.Date) bool { return !by.IsZero() && by.Before(h.today) }

// again is the last day on which what is stale is to be read again: as long
// after the revision that asks for it as the plan gives. Zero where none asks.
func (h *Standings) again(r *model.Reading, plan *model.Plan) model.Date {
	revisions := h.since[r.Procedure.To]
	within, ok := Within(plan)
	at, known := readRevision(revisions, r)
	if !ok || !known {
		return model.Date{}
	}
	for _, later := range revisions[at+1:] {
		if later.Readers == "reread" {
			return model.DateOf(within.AddTo(later.Date.Time()))
		}
	}
	return model.Date{}
}

// by is the last day on which a plan's reading is in time.
func (h *Standings) by(person *model.Person, plan *model.Plan) model.Date {
	within, ok := Within(plan)
	if !ok || person.Started.IsZero() {
		return model.Date{}
	}
	return model.DateOf(within.AddTo(person.Started.Time()))
}

// Holds says whether a reading is still true: it is of a revision since which
// none asks for it to be read again; where none was issued, it is of what
// stands now.
func (h *Standings) Holds(r *model.Reading) bool {
	p := r.Procedure.To
	if revisions := h.since[p]; len(revisions) > 0 {
		return !askedAgain(revisions, r)
	}
	return r.Fingerprint == h.book.Like(p, r.Fingerprint)
}

// readRevision is the place of the revision that was read: the last of its
// fingerprint that had been issued on the day. Where that is of a form that is
// not known, it is the one that stood on the day. What was read before anything
// was issued is the first revision, if its fingerprint is that.
func readRevision(revisions []*model.Revision, r *model.Reading) (at int, known bool) {
	byDay := !fingerprint.Known(r.Fingerprint)
	for i, rev := range revisions {
		if !r.Date.Before(rev.Date) && (byDay || fingerprint.Has(rev, r.Fingerprint)) {
			at, known = i, true
		}
	}
	if !known && len(revisions) > 0 && r.Date.Before(revisions[0].Date) {
		known = fingerprint.Has(revisions[0], r.Fingerprint)
	}
	return at, known
}

// Fingerprint is what a reading of a procedure is recorded as: the last
// revision's, for that is what is published. What was changed since and not
// issued, and what a callee changed, is none of it. Where there is no revision
// it is that of what stands.
func (h *Standings) Fingerprint(p *model.Procedure) string {
	if n := len(h.since[p]); n > 0 {
		return h.since[p][n-1].Fingerprint
	}
	return h.book.Of(p)
}
