package readings

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// PersonSheet is what one person has done and what is next.
type PersonSheet struct {
	page.Frame
	Training *words.Readings
	Started  string
	Roles    []RoleHeld
	Plans    []PlanOf
	Rows     []Recorded
	Again    page.Link  // the sheet of what is to be read again
	Jobs     *jobs.Jobs // that the person is named in; nil where there are none
}

// RoleHeld is a role of a person, and until when.
type RoleHeld struct {
	Name string
	From string
	Ends string // "runs out after 2028-09-15"
	Out  bool   // it ran out
}

// PlanOf is a plan of a person, with how they stand to each procedure of it.
type PlanOf struct {
	Plan page.Link
	By   string
	Next []Standing // what is left to do
	Done []Standing
}

// Standing is how a person stands to one procedure.
type Standing struct {
	page.Link
	Mark   *Mark
	Number int // its place in the plan's order
	Left   []string
}

// Recorded is a row of the record.
type Recorded struct {
	Date string
	page.Link
	Act string
	By  string
	Now string // of a reading: whether it is still true
	Say string // the unit, the score and the note
}

// Person makes the sheet of a person.
func (r *Readings) Person(p *model.Person) *PersonSheet {
	v := &PersonSheet{Frame: r.frame(PersonPage(p), p.Label()), Training: r.words}
	if !p.Started.IsZero() {
		v.Started = p.Started.String()
	}
	for i := range r.roles[p] {
		v.Roles = append(v.Roles, r.roleHeld(p, &r.roles[p][i]))
	}
	v.Plans = r.plansOf(v.Up, p)
	v.Again = page.Link{Name: r.words.Again, Address: v.Up + AgainPage(p)}
	v.Jobs = r.jobsBy(v.Up, p)
	for _, row := range r.records[p] {
		v.Rows = append(v.Rows, r.recorded(v.Up, row))
	}
	return v
}

func (r *Readings) roleHeld(p *model.Person, g *model.Gained) RoleHeld {
	v := RoleHeld{Name: g.ID, Ends: r.words.NoEnd}
	if g.To != nil {
		v.Name = g.To.Label()
	}
	if !g.On.IsZero() {
		v.From = fmt.Sprintf(r.words.HeldSince, g.On)
		if r.Today.Before(g.On) {
			v.From = fmt.Sprintf(r.words.NotYetGained, g.On)
		}
	}
	until, runs := training.Until(g)
	switch {
	case !g.Ended.IsZero() && !r.Today.Before(g.Ended):
		v.Ends, v.Out = r.withdrawn(p, g), !r.staff.HoldsRole(p, g.ID, r.Today)
	case !runs:
	case until.Before(r.Today):
		v.Ends, v.Out = r.ends(p, g.To, fmt.Sprintf(r.words.RanOutOn, until), until), !r.staff.HoldsRole(p, g.ID, r.Today)
	default:
		v.Ends = r.ends(p, g.To, fmt.Sprintf(r.words.RunsOutOn, until), until)
	}
	return v
}

func (r *Readings) plansOf(up string, p *model.Person) []PlanOf {
	var out []PlanOf
	var of *model.Ref[model.Plan]
	number := 0
	for i := range r.standings[p] {
		x := &r.standings[p][i]
		if of == nil || of.At != x.Plan.At {
			of, number = x.Plan, 0
			out = append(out, PlanOf{Plan: r.Link(up, of.To), By: r.by(x)})
		}
		number++
		plan := &out[len(out)-1]
		v := Standing{Link: r.Link(up, x.Reading.Procedure), Mark: r.markOf(classOf(x)), Number: number, Left: r.left(x)}
		if x.Done() {
			plan.Done = append(plan.Done, v)
			continue
		}
		plan.Next = append(plan.Next, v)
	}
	return out
}

// left is what is left to do of a procedure besides reading it.
func (r *Readings) left(x *training.Standing) []string {
	var out []string
	if x.MustWatch && !x.Watched {
		out = append(out, r.words.ToWatch)
	}
	if x.Performed < x.Perform {
		w := &r.Speaks.Worked.Sums
		text := fmt.Sprintf(r.words.SoFar, x.Performed, x.Perform)
		out = append(out, r.Tallied(text, w.Done, fmt.Sprintf("%d/%d", x.Performed, x.Perform), text, w.Record))
	}
	return out
}

func (r *Readings) recorded(up string, row *model.Reading) Recorded {
	v := Recorded{Date: row.Date.String(), Link: r.Link(up, row.Procedure.To), Act: r.act(row.Act), By: r.nameOf(row.By), Say: r.said(row)}
	if row.Act == "read" {
		v.Now = r.words.NoLongerTrue
		if r.holds[row] {
			v.Now = r.words.StillTrue
		}
	}
	return v
}

// said is what a row says besides: on which unit, in which language, the score
// and the note.
func (r *Readings) said(row *model.Reading) string {
	score := ""
	if row.Score != "" {
		score = fmt.Sprintf(r.words.ScoreIs, row.Score)
	}
	return strings.Join(slices.DeleteFunc([]string{row.On, row.Language, score, row.Note}, func(s string) bool { return s == "" }), "; ")
}

func (r *Readings) act(act string) string {
	switch act {
	case "read":
		return r.words.Read
	case "watched":
		return r.words.Watched
	case "performed":
		return r.words.Performed
	case "taught":
		return r.words.Taught
	case "told":
		return r.words.Told
	case "inspected":
		return r.words.Inspected
	}
	return act
}

// nameOf is the name of a witness; of one who is not listed what was written.
func (r *Readings) nameOf(id string) string {
	if p := model.ByID(r.Manual.People, id); p != nil {
		return p.Label()
	}
	return id
}

// NumberText is the standing's place as it is printed.
func (s *Standing) NumberText() string { return strconv.Itoa(s.Number) }
