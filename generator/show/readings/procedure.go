package readings

import (
	"cmp"
	"fmt"
	"slices"

	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// ProcedureReaders is a procedure's page among the readings: who may do it
// today, who has read it, and what a change of it makes stale.
type ProcedureReaders struct {
	page.Frame
	Training *words.Readings
	Plate    []string
	InManual string // the page in the manual's site; "" where the shop has no address
	Exercise page.Link
	SignIn   page.Link
	Answers  page.Link
	Plans    []page.Link
	May      Crew
	Readers  []Reader
	Stale    []page.Link // readings that a new revision makes stale
	Callers  []page.Link // what performs it, at any depth
	Changed  []Moved
	Jobs     *jobs.Jobs // that were done by it; nil where none was

	Revisions   []Revised
	Inspections []Inspection
	InspectBy   string
}

// Crew is who may do a job on the site's day, by the roles in the files.
type Crew struct {
	Note    string
	Needs   []string // the roles, those of what it performs included
	Between string   // how many people hold them between them
	All     []Able   // who hold every one, and have read all that the job performs
	Some    []Able   // who hold some, or held them
	Nobody  string   // the roles that nobody holds
}

// Able is a person, the roles that they hold and what they lack.
type Able struct {
	page.Link
	Holds []string // "Lifting: runs out after 2028-09-15"
	Lacks []string // "Lifting: ran out after 2026-03-02"
}

// Reader is a person who has read a procedure or is asked to.
type Reader struct {
	page.Link
	Mark *Mark
	Last string // the day of the last reading
	By   string
	Left []string
}

// Moved is what changed for those who read an earlier text.
type Moved struct {
	Since  string // "Since revision 3"
	Steps  []string
	Unkept bool
	People []*model.Person
	Names  []page.Link // People, for the page
}

// Procedure makes a procedure's page among the readings.
func (r *Readings) Procedure(p *model.Procedure) *ProcedureReaders {
	v := &ProcedureReaders{Frame: r.frame(page.PageOf(p), p.Title), Training: r.words, Plate: r.Plate(p), InManual: r.inManual(p)}
	v.Exercise = page.Link{Name: r.words.Exercise, Address: v.Up + ExercisePage(p)}
	v.Answers = page.Link{Name: r.words.Answers, Address: v.Up + AnswersPage(p)}
	v.SignIn = page.Link{Name: r.words.SignIn, Address: v.Up + SignInPage(p)}
	v.Plans = r.PlansWith(v.Up, p)
	v.May = r.crew(v.Up, p)
	v.Readers = r.readers(v.Up, p)
	v.Jobs = r.jobsTable(v.Up, r.Done(p), false)
	v.Revisions, v.Inspections, v.InspectBy = r.revised[p], r.inspected[p], r.inspectBy[p]
	for _, person := range r.here {
		if last := r.last[cell{person, p}]; last != nil && r.holds[last] {
			v.Stale = append(v.Stale, personLink(v.Up, person))
		}
	}
	for _, c := range r.allCallers(p) {
		v.Callers = append(v.Callers, r.Link(v.Up, c))
	}
	for _, m := range r.changed[p] {
		for _, person := range m.People {
			m.Names = append(m.Names, personLink(v.Up, person))
		}
		v.Changed = append(v.Changed, m)
	}
	return v
}

func (r *Readings) readers(up string, p *model.Procedure) []Reader {
	var out []Reader
	for _, person := range r.here {
		mark := r.marks[cell{person, p}]
		if mark == nil {
			continue
		}
		v := Reader{Link: personLink(up, person), Mark: mark}
		if last := r.last[cell{person, p}]; last != nil {
			v.Last = last.Date.String()
		}
		asked := false
		for i := range r.standings[person] {
			x := &r.standings[person][i]
			if x.Reading.Procedure != p {
				continue
			}
			if asked = true; v.By == "" && !x.By.IsZero() {
				v.By = r.dueBy(person, x.Plan.To, x.By.String(), x.By)
			}
			for _, left := range r.left(x) {
				if !slices.Contains(v.Left, left) {
					v.Left = append(v.Left, left)
				}
			}
		}
		if !asked {
			v.Left = []string{r.words.NotAsked}
		}
		out = append(out, v)
	}
	return out
}

// crew is who holds what a job needs. The roles are those that the kit lists:
// those of what it performs are among them.
func (r *Readings) crew(up string, p *model.Procedure) Crew {
	v := Crew{Note: fmt.Sprintf(r.words.WhoMayNote, r.Today)}
	k := r.Kits.Of(p)
	if k.People > 1 {
		v.Between = r.PeopleWorked(p, fmt.Sprintf(r.words.Between, k.People), k.People)
	}
	held := map[*model.Role]bool{}
	for _, role := range k.Roles {
		v.Needs = append(v.Needs, role.Label())
	}
	for _, person := range r.here {
		a := Able{Link: personLink(up, person)}
		known := len(k.Roles) == 0 && r.last[cell{person, p}] != nil
		for _, role := range k.Roles {
			says, holds, listed := r.heldBy(person, role)
			known = known || listed
			if holds {
				held[role] = true
				a.Holds = append(a.Holds, says)
			} else {
				a.Lacks = append(a.Lacks, says)
			}
		}
		if unread := r.staff.Unread(person, p); len(unread) > 0 {
			a.Lacks = append(a.Lacks, fmt.Sprintf(r.words.NotRead, page.Joined(labelsOf(unread))))
		}
		switch {
		case len(a.Lacks) == 0:
			v.All = append(v.All, a)
		case known:
			v.Some = append(v.Some, a)
		}
	}
	var nobody []string
	for _, role := range k.Roles {
		if !held[role] {
			nobody = append(nobody, role.Label())
		}
	}
	if len(nobody) > 0 {
		v.Nobody = fmt.Sprintf(r.words.NobodyHolds, page.Joined(nobody))
	}
	return v
}

func labelsOf(list []*model.Procedure) []string {
	var out []string
	for _, p := range list {
		out = append(out, p.Label())
	}
	return out
}

// heldBy says how a person stands to a role on the day: that they hold it and
// until when, that it ran out, or that they never had it.
func (r *Readings) heldBy(person *model.Person, role *model.Role) (says string, holds, listed bool) {
	var last model.Date
	ends := true
	for i := range r.roles[person] {
		g := &r.roles[person][i]
		if g.To != role || r.Today.Before(g.On) || r.Today.Before(g.From) || !g.Ended.IsZero() {
			continue
		}
		listed = true
		until, runs := training.Until(g)
		ends = ends && runs
		if last.Before(until) {
			last = until
		}
	}
	holds = r.staff.HoldsRole(person, role.ID, r.Today)
	switch {
	case !listed:
		return role.Label() + ": " + r.words.NotHeld, holds, false
	case !ends:
		return role.Label() + ": " + r.words.NoEnd, holds, true
	case holds:
		return role.Label() + ": " + r.ends(person, role, fmt.Sprintf(r.words.RunsOutOn, last), last), true, true
	}
	return role.Label() + ": " + r.ends(person, role, fmt.Sprintf(r.words.RanOutOn, last), last), false, true
}

// moved is what changed for those whose last reading is no longer true, by what
// they read.
func (r *Readings) moved(book *fingerprint.Cache) map[*model.Procedure][]Moved {
	type read struct {
		procedure *model.Procedure
		print     string
	}
	at := map[read]int{}
	out := map[*model.Procedure][]Moved{}
	for _, person := range r.here {
		for _, row := range r.records[person] {
			p := row.Procedure.To
			if row != r.last[cell{person, p}] || r.holds[row] || !p.Issued() {
				continue
			}
			key := read{p, row.Fingerprint}
			i, known := at[key]
			if !known {
				i = len(out[p])
				at[key] = i
				out[p] = append(out[p], r.since(p, row.Fingerprint, book))
			}
			out[p][i].People = append(out[p][i].People, person)
		}
	}
	return out
}

// since lays what stands beside the revision of a fingerprint.
func (r *Readings) since(p *model.Procedure, print string, book *fingerprint.Cache) Moved {
	m := Moved{Since: r.words.ReadUnissued, Unkept: true}
	for i := range r.Manual.Revisions {
		rev := &r.Manual.Revisions[i]
		if rev.Procedure.To != p || !fingerprint.Has(rev, print) {
			continue
		}
		m.Since = fmt.Sprintf(r.words.ReadRevision, rev.Number)
		if was, kept := fingerprint.Kept(rev); kept {
			m.Unkept, m.Steps = false, fingerprint.Changes(was, book.Beside(p, was), &r.words.Changes)
		}
	}
	return m
}

// allCallers are what performs a procedure, directly or through others, by name.
func (r *Readings) allCallers(p *model.Procedure) []*model.Procedure {
	seen := map[*model.Procedure]bool{p: true}
	var out []*model.Procedure
	waiting := []*model.Procedure{p}
	for len(waiting) > 0 {
		next := waiting[0]
		waiting = waiting[1:]
		for _, c := range r.Links.Callers(next) {
			if !seen[c] {
				seen[c] = true
				waiting, out = append(waiting, c), append(out, c)
			}
		}
	}
	slices.SortFunc(out, func(a, b *model.Procedure) int {
		return cmp.Or(page.CompareText(a.Label(), b.Label()), page.CompareText(a.ID, b.ID))
	})
	return out
}
