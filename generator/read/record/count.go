package record

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Counted are the jobs that count on a day, the oldest first. What was saved
// later than that day does not count yet. A job that was saved twice, in its
// middle and at its end, is one job: the later file stands.
func Counted(jobs []*model.Job, today model.Date) []*model.Job {
	type key struct {
		procedure, unit string
		started         int64
	}
	last := map[key]*model.Job{}
	for _, j := range jobs {
		if today.Before(j.Day()) {
			continue
		}
		k := key{idOf(j), j.Unit.Serial + "/" + strings.Join(j.Unit.Options, " "), j.Started.UnixMilli()}
		if old := last[k]; old == nil || old.Saved.Before(j.Saved) {
			last[k] = j
		}
	}
	out := make([]*model.Job, 0, len(last))
	for _, j := range last {
		out = append(out, j)
	}
	slices.SortFunc(out, func(a, b *model.Job) int {
		return cmp.Or(a.Saved.Compare(b.Saved), cmp.Compare(a.Name, b.Name))
	})
	return out
}

// idOf is the procedure's id as it is now, where the manual has it.
func idOf(j *model.Job) string {
	if j.To != nil {
		return j.To.ID
	}
	return j.Procedure
}

// Standing is the revision of a procedure that stood on a day; nil where none
// was issued by then. Of two on one day the later row stands.
func Standing(m *model.Manual, p *model.Procedure, day model.Date) *model.Revision {
	var stood *model.Revision
	for i := range m.Revisions {
		r := &m.Revisions[i]
		if r.Procedure.To == p && !day.Before(r.Date) && (stood == nil || !r.Date.Before(stood.Date)) {
			stood = r
		}
	}
	return stood
}

// Current says whether a job was done with what stands on a day: with its last
// revision, or, where none was issued, before any was. A job that was saved
// without a fingerprint is taken by its number.
func Current(m *model.Manual, j *model.Job, day model.Date) bool {
	if j.To == nil {
		return false
	}
	r := Standing(m, j.To, day)
	if r == nil {
		return j.Revision == "" && j.Fingerprint == ""
	}
	return j.Revision == r.Number && (j.Fingerprint == "" || j.Fingerprint == r.Fingerprint)
}

// Use is a job and what it was done with.
type Use struct {
	Job         *model.Job
	Revision    string          // as the record says; "" where none was issued
	Fingerprint string          // as the record says, else of that revision; "" where neither is known
	Issued      *model.Revision // the revision of that number; nil where it was never issued
	Stood       *model.Revision // the revision that stood on the day on which the job was begun; nil where none did
}

// Old says that a job was begun with another revision than the one that stood.
func (u Use) Old() bool {
	switch {
	case u.Stood == nil:
		return u.Revision != ""
	case u.Revision != u.Stood.Number:
		return true
	}
	return u.Fingerprint != "" && u.Fingerprint != u.Stood.Fingerprint
}

// Used lists the jobs of a procedure up to a day, the oldest first, each with
// the revision that it was done with. Revisions of later days are not known
// yet on that day.
func Used(m *model.Manual, p *model.Procedure, day model.Date) []Use {
	var out []Use
	for _, j := range Counted(m.Jobs, day) {
		if j.To != p {
			continue
		}
		u := Use{Job: j, Revision: j.Revision, Fingerprint: j.Fingerprint, Stood: Standing(m, p, model.DateOf(j.Started))}
		for i := range m.Revisions {
			if r := &m.Revisions[i]; r.Procedure.To == p && r.Number == j.Revision && !day.Before(r.Date) {
				u.Issued = r
			}
		}
		if u.Fingerprint == "" && u.Issued != nil {
			u.Fingerprint = u.Issued.Fingerprint
		}
		out = append(out, u)
	}
	return out
}

// sameness is the part of an end by which a value may pass it: what the
// arithmetic of a unit's conversion may lose.
const sameness = 1e-9

// Within says whether a value is within a limit; both ends belong to it, and
// nil is an open end.
func Within(v float64, low, high *float64) bool {
	return (low == nil || v >= *low-sameness*math.Abs(*low)) && (high == nil || v <= *high+sameness*math.Abs(*high))
}
