package readings

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Mark is how a person stands to a procedure, as one letter and in words. The
// letter tells it, the style only helps to find it.
type Mark struct {
	Letter string
	Word   string
	Class  string
}

// Short is the word without what explains it.
func (m *Mark) Short() string {
	short, _, _ := strings.Cut(m.Word, ":")
	return short
}

// marksOf are the marks in the order of the legend, the most pressing first.
func marksOf(w *words.Readings) []*Mark {
	return []*Mark{
		{w.OverdueMark, w.Overdue, "overdue"}, {w.StaleMark, w.Stale, "stale"}, {w.DueMark, w.Due, "due"},
		{w.ActsMark, w.ActsLeft, "acts"}, {w.GoodMark, w.Good, "good"},
	}
}

// classOf is how somebody stands: by the state of the reading, and acts where it is
// good and something else is left to do.
func classOf(x *training.Standing) string {
	if x.State == training.Good && !x.Done() {
		return "acts"
	}
	return string(x.State)
}

func (r *Readings) markOf(class string) *Mark {
	for _, m := range marksOf(r.words) {
		if m.Class == class {
			return m
		}
	}
	return nil
}

// mark fills the fields. Who has a procedure in several plans stands as in the
// most pressing; a reading that no plan asks for is shown too.
func (r *Readings) mark() {
	all := marksOf(r.words)
	rank := map[string]int{}
	for i, m := range all {
		rank[m.Class] = i
	}
	for _, p := range r.here {
		for i := range r.standings[p] {
			x := &r.standings[p][i]
			n := rank[classOf(x)]
			at := cell{p, x.Reading.Procedure}
			if was := r.marks[at]; was == nil || n < rank[was.Class] {
				r.marks[at] = all[n]
			}
		}
		asked := map[*model.Procedure]bool{}
		for _, x := range r.standings[p] {
			asked[x.Reading.Procedure] = true
		}
		for _, row := range r.records[p] {
			to := row.Procedure.To
			if asked[to] || row != r.last[cell{p, to}] {
				continue
			}
			class := "stale"
			if r.holds[row] {
				class = "good"
			}
			r.marks[cell{p, to}] = all[rank[class]]
		}
	}
}

// Matrix is how everybody stands to everything that is asked or recorded.
type Matrix struct {
	page.Frame
	Training *words.Readings
	Note     string
	Plans    []page.Link // the matrix of each plan
	Grids    []Grid
}

// Grid is a table of procedures by people. A matrix of many people is parted
// into grids that a printed sheet can hold.
type Grid struct {
	Caption string
	Marks   []*Mark // the legend
	People  []page.Link
	Totals  []int // how much is open, of each of the people
	Groups  []GridGroup
}

// GridGroup is the procedures of a topic.
type GridGroup struct {
	Name string
	Rows []GridRow
}

// GridRow is one procedure, with a mark or nil for each person.
type GridRow struct {
	page.Link
	Marks []*Mark
	Open  int // of how many people, those of the other grids included
}

// open says that something is left to do.
func open(m *Mark) bool { return m != nil && m.Class != "good" }

// peopleOnASheet is how many people's columns a landscape sheet holds beside
// the titles.
const peopleOnASheet = 40

// Matrix makes the page of the matrix. Who follows no plan and has no record,
// and what nobody is asked for, is left out.
func (r *Readings) Matrix() *Matrix {
	v := &Matrix{Frame: r.frame("matrix.html", r.words.Matrix), Training: r.words, Note: fmt.Sprintf(r.words.FrontNote, r.Today)}
	some := map[*model.Procedure]bool{}
	any := map[*model.Person]bool{}
	for at := range r.marks {
		some[at.procedure], any[at.person] = true, true
	}
	var people []*model.Person
	for _, p := range r.here {
		if any[p] {
			people = append(people, p)
		}
	}
	var procedures []*model.Procedure
	for _, p := range r.Procedures {
		if some[p] {
			procedures = append(procedures, p)
		}
	}
	for _, plan := range r.Manual.Plans {
		v.Plans = append(v.Plans, page.Link{Name: plan.Label(), Address: PlanMatrixPage(plan)})
	}
	v.Grids = r.grids(v.Up, people, r.byTopic(procedures))
	return v
}

// PlanMatrixPage is the path of the matrix of a plan. An id holds no dot, so no
// plan's page has that name.
func PlanMatrixPage(plan *model.Plan) string { return "plans/" + plan.ID + ".matrix.html" }

// PlanMatrix makes the matrix of those who follow a plan, in the plan's order.
func (r *Readings) PlanMatrix(plan *model.Plan) *Matrix {
	v := &Matrix{Frame: r.frame(PlanMatrixPage(plan), fmt.Sprintf(r.words.MatrixOf, plan.Label())), Training: r.words, Note: fmt.Sprintf(r.words.FrontNote, r.Today)}
	var people []*model.Person
	for _, p := range r.here {
		if slices.ContainsFunc(p.Plans, func(ref model.Ref[model.Plan]) bool { return ref.To == plan }) {
			people = append(people, p)
		}
	}
	var procedures []*model.Procedure
	for _, x := range r.ReadingOrder(plan) {
		procedures = append(procedures, x.Procedure)
	}
	v.Plans = []page.Link{r.Link(v.Up, plan)}
	v.Grids = r.grids(v.Up, people, []procedureGroup{{"", procedures}})
	return v
}

// grids are the tables of people and procedures.
func (r *Readings) grids(up string, people []*model.Person, groups []procedureGroup) []Grid {
	var out []Grid
	for from := 0; from < len(people); from += peopleOnASheet {
		part := people[from:min(from+peopleOnASheet, len(people))]
		g := Grid{Marks: marksOf(r.words)}
		g.Caption = fmt.Sprintf(r.words.PeopleFrom, from+1, from+len(part))
		for _, p := range part {
			g.People = append(g.People, personLink(up, p))
		}
		for _, group := range groups {
			rows := make([]GridRow, len(group.procedures))
			for i, p := range group.procedures {
				rows[i] = GridRow{Link: r.Link(up, p), Marks: make([]*Mark, len(part))}
				for j, person := range part {
					rows[i].Marks[j] = r.marks[cell{person, p}]
				}
				rows[i].Open = r.openOf(people, p)
			}
			g.Groups = append(g.Groups, GridGroup{Name: group.name, Rows: rows})
		}
		g.total()
		out = append(out, g)
	}
	return out
}

// openOf is how many of the people have something left to do of a procedure.
func (r *Readings) openOf(people []*model.Person, p *model.Procedure) int {
	n := 0
	for _, person := range people {
		if open(r.marks[cell{person, p}]) {
			n++
		}
	}
	return n
}

// total counts what is open of each of the people of a grid.
func (g *Grid) total() {
	g.Totals = make([]int, len(g.People))
	for _, group := range g.Groups {
		for _, row := range group.Rows {
			for i, m := range row.Marks {
				if open(m) {
					g.Totals[i]++
				}
			}
		}
	}
}
