package readings

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// Plans makes the pages of reading plans, which name nobody.
type Plans struct{ *page.Site }

// Assignment is a reading plan on paper: what is read in which order, with
// squares to tick. It names nobody.
type Assignment struct {
	page.Frame
	Training *words.Readings
	Facts    []string
	InAll    string // how many, and how long they take to read
	Rows     []Assigned
	People   page.Link // how those who follow it stand; none in the site
}

// Assigned is one procedure of an assignment.
type Assigned struct {
	page.Link
	Anchor   string
	Number   int
	Time     string
	BuildsOn []page.Link // the numbers of what is read before it
	Added    bool        // the plan does not list it: something of it performs it
	Revision string      // that stands; "" where none does
	Code     page.Code
	Ticks    []Tick
}

// Tick is a square with a place for the date, and for the assessor's sign where
// someone must have seen it.
type Tick struct {
	Name string
	Sign bool
}

// Assignment makes the page of a plan.
func (s Plans) Assignment(plan *model.Plan) *Assignment {
	v := &Assignment{Frame: s.Frame(page.PageOf(plan), plan.Label()), Training: s.Training()}
	v.Style, v.Facts = readingsStyle, s.planFacts(plan)
	numbers := map[*model.Procedure]int{}
	minutes, put := 0, []string{}
	for i, r := range s.ReadingOrder(plan) {
		numbers[r.Procedure] = i + 1
		minutes += training.Minutes(r.Seconds)
		put = append(put, page.Duration(60*training.Minutes(r.Seconds)))
		v.Rows = append(v.Rows, s.assigned(v.Up, plan, &r, numbers))
	}
	w := &s.Speaks.Worked.Sums
	time := page.Duration(60 * max(1, minutes))
	v.InAll = s.Tallied(fmt.Sprintf(v.Training.InAll, len(v.Rows), time), w.ReadAll, strings.Join(put, " + "), time, w.Page)
	return v
}

// readingTime is how long a procedure takes to read.
func (s Plans) readingTime(r *training.Reading) string {
	w := &s.Speaks.Worked.Sums
	m := training.MatterOf(r.Procedure)
	text := page.Duration(60 * training.Minutes(r.Seconds))
	return page.Worked(text, page.Computed{Title: fmt.Sprintf(w.How, s.Name(r.Procedure)+": "+text), Working: working.Working{
		Formula: w.Read, Put: fmt.Sprintf("%d/%d min + %d · 12 s + %d · 20 s", m.Words, training.WordsPerMinute, m.Pictures, m.Tables), Result: text, Source: w.ReadSource,
	}})
}

func (s Plans) planFacts(plan *model.Plan) []string {
	w := s.Training()
	var out, gives []string
	for _, r := range plan.Gives {
		if r.To != nil {
			gives = append(gives, r.To.Label())
		}
	}
	if len(gives) > 0 {
		out = append(out, fmt.Sprintf(w.LeadsTo, page.Joined(gives)))
	}
	if within, err := quantity.Parse(plan.Within, quantity.Calendar); err == nil {
		out = append(out, fmt.Sprintf(w.WithinTime, s.Both(within)))
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

func (s Plans) assigned(up string, plan *model.Plan, r *training.Reading, numbers map[*model.Procedure]int) Assigned {
	n := numbers[r.Procedure]
	v := Assigned{
		Link: s.Link(up, r.Procedure), Number: n, Anchor: "n" + strconv.Itoa(n), Time: s.readingTime(r), Added: r.Added, Code: s.Code(r.Procedure),
	}
	var before []int
	for _, p := range r.BuildsOn {
		if at := numbers[p]; at > 0 {
			before = append(before, at)
		}
	}
	slices.Sort(before)
	for _, at := range before {
		v.BuildsOn = append(v.BuildsOn, page.Link{Name: strconv.Itoa(at), Address: "#n" + strconv.Itoa(at)})
	}
	v.Ticks = s.ticks(plan, r.Procedure)
	if rev := s.LastRevision(r.Procedure); rev != nil {
		v.Revision = fmt.Sprintf(s.Words.Revision, rev.Number, rev.Date)
	}
	return v
}

// ticks are the squares of a procedure: read, watched where the plan asks for
// it, performed as often as it asks.
func (s Plans) ticks(plan *model.Plan, p *model.Procedure) []Tick {
	w := s.Training()
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
