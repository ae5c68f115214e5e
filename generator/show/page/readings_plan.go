package page

import (
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
)

// Assignment is a reading plan on paper: what is read in which order, with
// squares to tick. It names nobody.
type Assignment struct {
	Frame
	Training *words.Readings
	Facts    []string
	InAll    string // how many, and how long they take to read
	Rows     []Assigned
	People   Link // how those who follow it stand; none in the site
}

// Assigned is one procedure of an assignment.
type Assigned struct {
	Link
	Anchor   string
	Number   int
	Time     string
	BuildsOn []Link // the numbers of what is read before it
	Added    bool   // the plan does not list it: something of it performs it
	Revision string // that stands; "" where none does
	Code     Code
	Ticks    []Tick
}

// Tick is a square with a place for the date, and for the assessor's sign where
// someone must have seen it.
type Tick struct {
	Name string
	Sign bool
}

// planBook is what plans have read, in order, and which plans have a procedure
// read. Drafts and retired procedures are asked of nobody.
type planBook struct {
	orders map[*model.Plan][]training.Reading
	with   map[*model.Procedure][]*model.Plan
}

func (s *Site) planBook() planBook {
	b := planBook{orders: map[*model.Plan][]training.Reading{}, with: map[*model.Procedure][]*model.Plan{}}
	for _, plan := range s.Manual.Plans {
		for _, r := range training.Order(plan) {
			if r.Procedure.Issued() {
				b.orders[plan] = append(b.orders[plan], r)
				b.with[r.Procedure] = append(b.with[r.Procedure], plan)
			}
		}
	}
	return b
}

func (s *Site) training() *words.Readings { return &s.speaks.Readings }

func (s *Site) planLinks(up string) []Link {
	var out []Link
	for _, plan := range s.Manual.Plans {
		out = append(out, s.link(up, plan))
	}
	return out
}

func (s *Site) plansWith(up string, p *model.Procedure) []Link {
	var out []Link
	for _, plan := range s.plans.with[p] {
		out = append(out, s.link(up, plan))
	}
	return out
}

// Assignment makes the page of a plan.
func (s *Site) Assignment(plan *model.Plan) *Assignment {
	v := &Assignment{Frame: s.Frame(PageOf(plan), plan.Label()), Training: s.training()}
	v.Style, v.Facts = readingsStyle, s.planFacts(plan)
	numbers := map[*model.Procedure]int{}
	seconds := 0
	for i, r := range s.plans.orders[plan] {
		numbers[r.Procedure] = i + 1
		seconds += r.Seconds
		v.Rows = append(v.Rows, s.assigned(v.Up, plan, &r, numbers))
	}
	v.InAll = fmt.Sprintf(v.Training.InAll, len(v.Rows), duration(max(60, (seconds+30)/60*60)))
	return v
}

func (s *Site) planFacts(plan *model.Plan) []string {
	w := s.training()
	var out, gives []string
	for _, r := range plan.Gives {
		if r.To != nil {
			gives = append(gives, r.To.Label())
		}
	}
	if len(gives) > 0 {
		out = append(out, fmt.Sprintf(w.LeadsTo, joined(gives)))
	}
	if span, ok := training.Within(plan); ok && span != (quantity.Span{}) {
		out = append(out, fmt.Sprintf(w.WithinTime, plan.Within))
	}
	if len(plan.Perform) > 0 {
		assessor := w.AnyAssessor
		if plan.Assessor.To != nil {
			assessor = plan.Assessor.To.Label()
		}
		out = append(out, fmt.Sprintf(w.Assessor, assessor))
	}
	return out
}

func (s *Site) assigned(up string, plan *model.Plan, r *training.Reading, numbers map[*model.Procedure]int) Assigned {
	n := numbers[r.Procedure]
	v := Assigned{
		Link: s.link(up, r.Procedure), Number: n, Anchor: "n" + strconv.Itoa(n), Time: training.Minutes(r.Seconds), Added: r.Added, Code: s.code(r.Procedure),
	}
	var before []int
	for _, p := range r.BuildsOn {
		if at := numbers[p]; at > 0 {
			before = append(before, at)
		}
	}
	slices.Sort(before)
	for _, at := range before {
		v.BuildsOn = append(v.BuildsOn, Link{Name: strconv.Itoa(at), Address: "#n" + strconv.Itoa(at)})
	}
	v.Ticks = s.ticks(plan, r.Procedure)
	if rev := s.lastRevision(r.Procedure); rev != nil {
		v.Revision = fmt.Sprintf(s.Words.Revision, rev.Number, rev.Date)
	}
	return v
}

// ticks are the squares of a procedure: read, watched where the plan asks for
// it, performed as often as it asks.
func (s *Site) ticks(plan *model.Plan, p *model.Procedure) []Tick {
	w := s.training()
	out := []Tick{{Name: w.Read}}
	for _, ref := range plan.Watch {
		if ref.To == p {
			out = append(out, Tick{Name: w.Watched})
		}
	}
	for _, use := range plan.Perform {
		if use.To != p {
			continue
		}
		times, _ := strconv.Atoi(use.Amount) // what is no number is once, as in the standings
		times = max(times, 1)
		for i := range times {
			out = append(out, Tick{Name: fmt.Sprintf(w.PerformedOf, i+1, times), Sign: true})
		}
	}
	return out
}
