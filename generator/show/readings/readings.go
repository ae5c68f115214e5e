// Package readings works out the pages about reading: the plans, and those that name people, which are a folder
// of their own.
//
// # Decided where the format is silent
//
// Pages of the readings: The folder is known by `names-people.txt`; a folder with an `index.html`
// and without it is never replaced. Of two plans the more pressing state is shown. An exercise
// leaves out torques, the order of steps in a phase and of the refit, and signal words; its order
// comes from SHA-256 of procedure and phase, the same for each print and never the right one;
// answers are a page of their own, so that no duplex print has them on the back.
package readings

import (
	"fmt"
	"net/url"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
)

// Readings is what the pages that name people are made from: who must read
// what, and how each stands on the site's day. They are a folder of their own.
type Readings struct {
	*procedure.Pages
	Procedures []*model.Procedure // those that have a page here: all that the site shows
	words      *words.Readings
	staff      *training.Standings
	here       []*model.Person                  // who have not left: the others keep their sheets, and are in no list
	roles      map[*model.Person][]model.Gained // those of the list of people, and of plans that were finished
	standings  map[*model.Person][]training.Standing
	items      []training.Item
	records    map[*model.Person][]*model.Reading // by day
	last       map[cell]*model.Reading            // who read what last
	holds      map[*model.Reading]bool            // of readings: what was read is still true
	marks      map[cell]*Mark
	changed    map[*model.Procedure][]Moved
	doneBy     map[*model.Person][]*model.Job
	revised    map[*model.Procedure][]Revised
	inspected  map[*model.Procedure][]Inspection
	inspectBy  map[*model.Procedure]string
}

// cell is a field of the matrix.
type cell struct {
	person    *model.Person
	procedure *model.Procedure
}

// Of works out once how everybody stands; the pages are then made side by
// side.
func Of(s *procedure.Pages) *Readings {
	r := &Readings{
		Pages: s, Procedures: s.Shown, words: s.Training(), staff: training.NewStandings(s.Manual, s.Today),
		roles:     map[*model.Person][]model.Gained{},
		standings: map[*model.Person][]training.Standing{}, records: map[*model.Person][]*model.Reading{},
		last: map[cell]*model.Reading{}, holds: map[*model.Reading]bool{}, marks: map[cell]*Mark{},
	}
	r.here = r.staff.Here()
	for _, p := range s.Manual.People {
		r.roles[p] = r.staff.Roles(p)
	}
	for _, x := range r.staff.Standings() {
		r.standings[x.Person] = append(r.standings[x.Person], x)
	}
	r.items = r.staff.Items()
	for i := range s.Manual.Record {
		row := &s.Manual.Record[i]
		if row.Bad || row.Person.To == nil || row.Procedure.To == nil || s.Today.Before(row.Date) || !row.Person.To.There(row.Date) {
			continue
		}
		r.records[row.Person.To] = append(r.records[row.Person.To], row)
		r.holds[row] = row.Act == "read" && r.staff.Holds(row)
	}
	for p, rows := range r.records {
		slices.SortStableFunc(rows, func(a, b *model.Reading) int { return page.CompareText(a.Date.String(), b.Date.String()) })
		for _, row := range rows {
			if row.Act == "read" {
				r.last[cell{p, row.Procedure.To}] = row
			}
		}
	}
	r.mark()
	r.bookDoers()
	r.changed = r.moved(fingerprint.NewCache())
	r.bookRevisions()
	r.bookInspections()
	return r
}

// readingsStyle is the style of the pages about reading.
const readingsStyle = "readings.css"

// frame is the frame of a page of this folder. Its tabs are the folder's own.
func (r *Readings) frame(here, title string) page.Frame {
	f := r.Frame(here, title)
	f.Named, f.Style, f.Tabs, f.Others = true, readingsStyle, nil, nil
	for _, t := range []page.Tab{
		{Name: r.words.Front, Address: "index.html"}, {Name: r.words.Matrix, Address: "matrix.html"}, {Name: r.words.Procedures, Address: "procedures/index.html"},
	} {
		t.Current = t.Address == here
		t.Address = f.Up + t.Address
		f.Tabs = append(f.Tabs, t)
	}
	return f
}

// PersonPage is the path of a person's sheet in the folder of the readings.
func PersonPage(p *model.Person) string { return "people/" + p.ID + ".html" }

func personLink(up string, p *model.Person) page.Link {
	return page.Link{Name: p.Label(), Address: up + PersonPage(p)}
}

// inManual is the page of a procedure in the manual's own site; "" where the
// shop gave no address.
func (r *Readings) inManual(p *model.Procedure) string {
	if r.Manual.Shop.Address == "" {
		return ""
	}
	address, err := url.JoinPath(r.Manual.Shop.Address, page.PageOf(p))
	if err != nil {
		return ""
	}
	return address
}

// ReadingsFront is the first page of the readings.
type ReadingsFront struct {
	page.Frame
	Training *words.Readings
	Note     string
	First    []PersonLine // one line a person, the most pressing first
	Late     []Pile       // overdue, stale, due, acts left
	Roles    []Renewal
	Reviews  []Review // and inspections
	Plans    []page.Link
	People   []page.Link
	Jobs     *jobs.Jobs // all that were done; nil where none was
}

// PersonLine is how much one person has to do, and by when the first of it.
type PersonLine struct {
	Person page.Link
	By     string
	Counts []int // overdue, stale, due, acts left
}

// Pile is what is overdue, stale, due or read with acts left, by person and plan.
type Pile struct {
	Mark  *Mark
	Heaps []Heap
}

// Heap is what of one plan one person has in a pile.
type Heap struct {
	Person page.Link
	Plan   page.Link
	By     string
	Count  int
	First  []page.Link
	More   string // "and 12 more"
	day    model.Date
}

// Review is a procedure that is to be looked over, or working by it inspected, and
// by when.
type Review struct {
	Procedure page.Link
	Says      string
}

// Renewal is a role that ran out or soon does.
type Renewal struct {
	Person page.Link
	Role   string
	Says   string
}

// shownOfHeap is how many procedures of a heap are named; the person's sheet
// names all.
const shownOfHeap = 5

// Front makes the first page of the readings.
func (r *Readings) Front() *ReadingsFront {
	v := &ReadingsFront{
		Frame: r.frame("index.html", r.words.Front), Training: r.words, Note: fmt.Sprintf(r.words.FrontNote, r.Today), Plans: r.PlanLinks(""),
	}
	for _, class := range []string{"overdue", "stale", "due", "acts"} {
		v.Late = append(v.Late, r.pile(class))
	}
	v.First = r.firstLines(v.Late)
	v.Roles = r.renewals("", nil)
	v.Reviews = r.reviews()
	v.Jobs = r.jobsTable("", r.Counted(), true)
	for _, p := range r.here {
		l := personLink("", p)
		var plans []string
		for _, plan := range p.Plans {
			if plan.To != nil {
				plans = append(plans, plan.To.Label())
			}
		}
		l.Note = page.Joined(plans)
		v.People = append(v.People, l)
	}
	return v
}

// firstLines are the people who have something to do, who is latest first.
func (r *Readings) firstLines(piles []Pile) []PersonLine {
	items := slices.Clone(r.items)
	training.ByLateness(items)
	first, _ := training.FirstOfEach(items)
	var out []PersonLine
	for _, i := range first {
		line := PersonLine{Person: personLink("", i.Person), Counts: make([]int, len(piles))}
		if !i.By.IsZero() {
			line.By = r.itemDay(&i)
		}
		for k, pile := range piles {
			for _, h := range pile.Heaps {
				if h.Person == line.Person {
					line.Counts[k] += h.Count
				}
			}
		}
		out = append(out, line)
	}
	return out
}

func (r *Readings) pile(class string) Pile {
	pile := Pile{Mark: r.markOf(class)}
	for _, p := range r.here {
		var of *model.Plan
		for i := range r.standings[p] {
			x := &r.standings[p][i]
			if classOf(x) != class {
				continue
			}
			if of != x.Plan.To {
				of = x.Plan.To
				pile.Heaps = append(pile.Heaps, Heap{Person: personLink("", p), Plan: r.Link("", of), By: r.by(x), day: x.By})
			}
			r.heap(&pile.Heaps[len(pile.Heaps)-1], x.Reading.Procedure)
		}
	}
	slices.SortStableFunc(pile.Heaps, func(a, b Heap) int {
		if a.day.IsZero() != b.day.IsZero() {
			return -a.day.Time().Compare(b.day.Time())
		}
		return a.day.Time().Compare(b.day.Time())
	})
	return pile
}

// heap puts one more procedure on a heap.
func (r *Readings) heap(h *Heap, p *model.Procedure) {
	h.Count++
	if len(h.First) < shownOfHeap {
		h.First = append(h.First, r.Link("", p))
		return
	}
	h.More = fmt.Sprintf(r.words.AndMore, h.Count-shownOfHeap)
}

func (r *Readings) by(x *training.Standing) string {
	if x.By.IsZero() {
		return ""
	}
	return r.dueBy(x.Person, x.Plan.To, fmt.Sprintf(r.words.ByDay, x.By), x.By)
}

// dueBy is the last day of a plan that somebody follows, in words.
func (r *Readings) dueBy(p *model.Person, plan *model.Plan, text string, day model.Date) string {
	within, err := quantity.Parse(plan.Within, quantity.Calendar)
	if err != nil {
		return text
	}
	return r.Until(text, r.countedFrom(p, plan, day), r.Both(within), day)
}

// countedFrom is the day from which a plan's last day counts: the person's first;
// of what is to be read again, that of the revision that asks for it.
func (r *Readings) countedFrom(p *model.Person, plan *model.Plan, day model.Date) model.Date {
	within, _ := training.Within(plan)
	for _, rev := range r.Manual.Revisions {
		if day != model.DateOf(within.AddTo(p.Started.Time())) && day == model.DateOf(within.AddTo(rev.Date.Time())) {
			return rev.Date
		}
	}
	return p.Started
}

// ends is the last day of a role that somebody holds, in words.
func (r *Readings) ends(p *model.Person, role *model.Role, text string, day model.Date) string {
	for _, g := range r.roles[p] {
		if until, runs := training.Until(&g); runs && g.To == role && until == day {
			return r.Until(text, g.On, r.Amount(role.RenewEvery), day)
		}
	}
	return text
}

// itemDay is the day of something that is to be done.
func (r *Readings) itemDay(i *training.Item) string {
	text := i.By.String()
	if role, is := i.What.(*model.Role); is {
		return r.ends(i.Person, role, text, i.By)
	}
	at := slices.IndexFunc(r.Manual.Plans, func(p *model.Plan) bool { return p.ID == i.Plan })
	if at < 0 || i.By.IsZero() {
		return text
	}
	return r.dueBy(i.Person, r.Manual.Plans[at], text, i.By)
}

// renewals are the roles that ran out or soon do: of everybody, or of one.
func (r *Readings) renewals(up string, only *model.Person) []Renewal {
	var out []Renewal
	for _, i := range r.items {
		says := ""
		switch {
		case only != nil && i.Person != only:
		case i.State == training.RunOut:
			says = r.ends(i.Person, i.What.(*model.Role), fmt.Sprintf(r.words.RanOutOn, i.By), i.By)
		case i.State == training.RunsOut:
			says = r.ends(i.Person, i.What.(*model.Role), fmt.Sprintf(r.words.RunsOutOn, i.By), i.By)
		}
		if says != "" {
			out = append(out, Renewal{Person: personLink(up, i.Person), Role: i.What.Label(), Says: says})
		}
	}
	return out
}

// reviews are what is to be looked over or inspected, or soon is, the most
// pressing first.
func (r *Readings) reviews() []Review {
	items := r.staff.ReviewsSoon()
	training.ByLateness(items)
	var out []Review
	for _, i := range items {
		p := i.What.(*model.Procedure)
		late := i.State == training.Overdue
		format, from, every := either(late, r.words.ReviewWas, r.words.ReviewIs), r.staff.LookedOver(p), r.Manual.Shop.ReviewEvery
		if i.Act == "inspect" {
			_, last, _ := r.staff.InspectBy(p)
			format, from, every = either(late, r.words.InspectWas, r.words.InspectIs), r.inspectedFrom(p, last), r.Manual.Shop.Inspect
		}
		out = append(out, Review{r.Link("", p), r.Until(fmt.Sprintf(format, i.By), from, r.Both(every), i.By)})
	}
	return out
}

func either(first bool, a, b string) string {
	if first {
		return a
	}
	return b
}

// Assignment makes the page of a plan in this folder. It names nobody either: it
// is handed to whoever starts.
func (r *Readings) Assignment(plan *model.Plan) *Assignment {
	v := Plans{r.Site}.Assignment(plan)
	v.Frame = r.frame(page.PageOf(plan), plan.Label())
	v.People = page.Link{Name: fmt.Sprintf(r.words.MatrixOf, plan.Label()), Address: v.Up + PlanMatrixPage(plan)}
	return v
}

// ProcedureList is the index of the procedures in the folder of the readings.
type ProcedureList struct {
	page.Frame
	Groups []ListGroup
}

// ListGroup is a topic with its procedures.
type ListGroup struct {
	Name  string
	Links []page.Link
}

// ProcedureIndex makes the index of procedures, by topic.
func (r *Readings) ProcedureIndex() *ProcedureList {
	v := &ProcedureList{Frame: r.frame("procedures/index.html", r.words.Procedures)}
	for _, g := range r.byTopic(r.Procedures) {
		group := ListGroup{Name: g.name}
		for _, p := range g.procedures {
			group.Links = append(group.Links, r.Link(v.Up, p))
		}
		v.Groups = append(v.Groups, group)
	}
	return v
}

// procedureGroup is procedures under one heading.
type procedureGroup struct {
	name       string
	procedures []*model.Procedure
}

func (r *Readings) byTopic(list []*model.Procedure) []procedureGroup {
	at := map[string]int{}
	var out []procedureGroup
	for _, p := range list {
		i, known := at[p.Topic]
		if !known {
			i = len(out)
			at[p.Topic] = i
			out = append(out, procedureGroup{name: r.TopicName(p.Topic)})
		}
		out[i].procedures = append(out[i].procedures, p)
	}
	return out
}
