package training

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

// Fitness is how those who did a job stood on the day on which it was begun.
type Fitness struct {
	Job     *model.Job
	Day     model.Date
	Workers []Worker
	Lacks   []*model.Role // that the job needs and nobody who did it held; nil where somebody is not known
	Signed  []Signature
}

// Worker is one who did a job.
type Worker struct {
	Typed  string          // as it was typed at the bay
	Person *model.Person   // nil: not known, and so never said to be unqualified
	Alike  []*model.Person // where it is the name of several
	Away   bool            // was not there on the day
	Holds  []Holder        // of the roles that the job needs
	Read   []*model.Reading
	Unread []*model.Procedure // of the job and what it performs: issued by then, and not read as it stood
}

// Signature is one of a job, and whether who signed held the role on the day.
type Signature struct {
	Hold   *model.JobHold
	By     *model.Role     // that the hold asks for; nil where it asks for none that is known
	Person *model.Person   // nil: not known
	Alike  []*model.Person // where it is the name of several
	Holds  bool
}

// UpToDate says that nobody who is known to have done the job is marked, and no
// role was lacking.
func (f *Fitness) UpToDate() bool { return len(f.Marks(&language.Default().Readings.Marks)) == 0 }

// Marks say what was amiss, one line each.
func (f *Fitness) Marks(in *words.Marks) []string {
	var out []string
	for _, w := range f.Workers {
		switch {
		case w.Person == nil:
		case w.Away:
			out = append(out, fmt.Sprintf(in.Away, w.Person.Label(), f.Day))
		case len(w.Unread) > 0:
			out = append(out, fmt.Sprintf(in.Unread, w.Person.Label(), labels(w.Unread), f.Day))
		}
	}
	if len(f.Lacks) > 0 {
		out = append(out, fmt.Sprintf(in.Lacks, labels(f.Lacks), f.Day))
	}
	for _, s := range f.Signed {
		if s.Person != nil && s.By != nil && !s.Holds {
			out = append(out, fmt.Sprintf(in.Signed, s.Person.Label(), s.Hold.Hold, s.By.Label(), model.DateOf(s.Hold.Signed.At)))
		}
	}
	return out
}

func labels[T model.Named](list []T) string {
	var out []string
	for _, n := range list {
		out = append(out, n.Label())
	}
	return strings.Join(out, ", ")
}

// Fitness is how those who did a job stood on its day. Of a procedure that is not
// known nothing is said.
func (h *Standings) Fitness(j *model.Job) Fitness {
	f := Fitness{Job: j, Day: model.DateOf(j.Started)}
	for _, who := range record.Doers(h.m, j) {
		f.Workers = append(f.Workers, h.worker(j, who, f.Day))
	}
	for i := range j.Holds {
		if s := j.Holds[i].Signed; s != nil && strings.TrimSpace(s.Name) != "" {
			f.Signed = append(f.Signed, h.signature(j, &j.Holds[i]))
		}
	}
	known := func(w Worker) bool { return w.Person != nil }
	if j.To == nil || len(f.Workers) == 0 || !slices.ContainsFunc(f.Workers, known) || slices.ContainsFunc(f.Workers, func(w Worker) bool { return !known(w) }) {
		return f
	}
	for _, need := range j.To.Needs {
		held := func(w Worker) bool { return h.HoldsRole(w.Person, need.ID, f.Day) }
		if need.To != nil && !slices.ContainsFunc(f.Workers, held) {
			f.Lacks = append(f.Lacks, need.To)
		}
	}
	return f
}

func (h *Standings) worker(j *model.Job, who record.Worker, day model.Date) Worker {
	w := Worker{Typed: who.Text, Person: who.To, Alike: who.Alike}
	if w.Person == nil || j.To == nil {
		return w
	}
	w.Away = !w.Person.There(day)
	for _, need := range j.To.Needs {
		if need.To != nil && h.HoldsRole(w.Person, need.ID, day) {
			until, _ := h.UntilOn(w.Person, need.To.ID, day)
			w.Holds = append(w.Holds, Holder{w.Person, until})
		}
	}
	for _, p := range whole(j.To) {
		r := h.lastReadOn(w.Person, p, day)
		if r != nil {
			w.Read = append(w.Read, r)
		}
		if record.Standing(h.m, p, day) != nil && !p.Draft() && (r == nil || !h.heldOn(r, day)) {
			w.Unread = append(w.Unread, p)
		}
	}
	return w
}

// UntilOn is until when a role is held that is held on a day; zero where it does
// not run out.
func (h *Standings) UntilOn(p *model.Person, role string, day model.Date) (last model.Date, runs bool) {
	for _, g := range h.Roles(p) {
		if !holds([]model.Gained{g}, role, day) {
			continue
		}
		until, ends := Until(&g)
		if !ends {
			return model.Date{}, false
		}
		if last.Before(until) {
			last = until
		}
	}
	return last, true
}

// lastReadOn is lastRead as it was on a day.
func (h *Standings) lastReadOn(person *model.Person, p *model.Procedure, day model.Date) *model.Reading {
	until := slices.DeleteFunc(slices.Clone(h.read[key{person, p}]), func(r *model.Reading) bool { return day.Before(r.Date) })
	return h.last(until, func(r *model.Reading) bool { return h.heldOn(r, day) })
}

// signature judges who signed a hold, by the role that the hold asks for now.
func (h *Standings) signature(j *model.Job, hold *model.JobHold) Signature {
	who := record.Named(h.m, hold.Signed.Name)
	s := Signature{Hold: hold, Person: who.To, Alike: who.Alike}
	for _, known := range h.m.Holds {
		if known.ID == hold.Hold && j.To != nil {
			s.By = known.By.To
		}
	}
	s.Holds = s.By == nil || s.Person != nil && h.HoldsRole(s.Person, s.By.ID, model.DateOf(hold.Signed.At))
	return s
}
