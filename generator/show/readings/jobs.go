package readings

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// RecordWithNames makes the page of a job in the folder of the readings. The
// steps of procedures are not in this folder, so nothing leads to one.
func (r *Readings) RecordWithNames(j *model.Job) *jobs.Record {
	here := r.RecordPageOf(j)
	frame := r.frame(here, r.RecordFrame(here, j).Title)
	v := r.Record(frame, j, true)
	for i := range v.Notes {
		v.Notes[i].Step.Address = ""
	}
	for _, who := range record.Workers(r.Manual, j) {
		if who.To != nil && !slices.ContainsFunc(v.Doers, func(l page.Link) bool { return l.Name == who.To.Label() }) {
			v.Doers = append(v.Doers, personLink(frame.Up, who.To))
		}
	}
	fit := r.staff.Fitness(j)
	for _, mark := range fit.Marks(&r.words.Marks) {
		v.Marks = append(v.Marks, r.words.MarkedJob+": "+mark)
	}
	return v
}

// jobsBy are the jobs that a person is named in, of any procedure.
func (r *Readings) jobsBy(up string, p *model.Person) *jobs.Jobs {
	return r.jobsTable(up, r.doneBy[p], true)
}

// jobsTable is a table of jobs with names. What was measured stands in the
// site, beside the procedure.
func (r *Readings) jobsTable(up string, list []*model.Job, mixed bool) *jobs.Jobs {
	v := r.JobsView(up, list, true, mixed)
	if v != nil {
		v.Measured = nil
	}
	return v
}

// bookDoers notes who did which job, the oldest first.
func (r *Readings) bookDoers() {
	r.doneBy = map[*model.Person][]*model.Job{}
	for _, j := range r.Counted() {
		for _, who := range record.Workers(r.Manual, j) {
			if who.To != nil && !slices.Contains(r.doneBy[who.To], j) {
				r.doneBy[who.To] = append(r.doneBy[who.To], j)
			}
		}
	}
}
