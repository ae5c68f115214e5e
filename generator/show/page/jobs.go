package page

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/read/syntax"
)

// Jobs are the jobs that were done by a procedure, or at a machine, and what
// was measured. Who did them is in it only where it is asked for: names stay
// out of the published site.
type Jobs struct {
	*words.Jobs
	Named    bool     // Who is shown
	Mixed    bool     // they are of several procedures
	Rows     []JobRow // the newest first
	Older    []JobRow
	Measured []Measured
}

// JobRow is one job.
type JobRow struct {
	When      Link // to its record
	Procedure Link
	Unit      string
	Revision  string
	Steps     string
	Gaps      string
	Who       string
}

// shownJobs and shownReadings are how many rows stand open; the rest is folded.
const (
	shownJobs     = 10
	shownReadings = 12
)

// jobBook is what is worked out of the records once for all pages.
type jobBook struct {
	all     []*model.Job // those that count, the oldest first
	of      map[*model.Procedure][]*model.Job
	pages   map[*model.Job]string
	answers map[*model.Job][]model.Answer
	open    map[*model.Step]int // notes at a step that nobody answered
}

func (s *Site) bookJobs() {
	b := jobBook{
		all: record.Counted(s.Manual.Jobs, s.Today), of: map[*model.Procedure][]*model.Job{},
		pages: map[*model.Job]string{}, answers: map[*model.Job][]model.Answer{}, open: map[*model.Step]int{},
	}
	taken := map[string]int{}
	for _, j := range s.Manual.Jobs {
		if j.To != nil && !s.shown[j.To] {
			continue // a draft's words are not published
		}
		name := syntax.PlainID(j.Name)
		if name == "" {
			name = "record"
		}
		if taken[name]++; taken[name] > 1 {
			name += "-again-" + strconv.Itoa(taken[name])
		}
		b.pages[j] = "records/" + name + ".html"
	}
	for _, a := range s.Manual.Answers {
		if a.To != nil && !s.Today.Before(a.Date) {
			b.answers[a.To] = append(b.answers[a.To], a)
		}
	}
	s.jobs = b
	for _, j := range b.all {
		if j.To != nil {
			s.jobs.of[j.To] = append(s.jobs.of[j.To], j)
			s.bookNotes(j)
		}
	}
}

// bookNotes counts a job's notes that nobody answered, at the steps as they are
// now.
func (s *Site) bookNotes(j *model.Job) {
	for _, n := range j.Notes {
		if len(s.answersTo(j, n)) > 0 {
			continue
		}
		if st := s.stepNow(j, n.Step); st != nil {
			s.jobs.open[st]++
		}
	}
}

// Counted are the jobs that have a page, the oldest first.
func (s *Site) Counted() []*model.Job {
	return slices.DeleteFunc(slices.Clone(s.jobs.all), func(j *model.Job) bool { return s.jobs.pages[j] == "" })
}

// recordLink is a link to a job's page.
func (s *Site) recordLink(up, name string, j *model.Job) Link {
	l := Link{Name: name}
	if page := s.jobs.pages[j]; page != "" {
		l.Address = up + page
	}
	return l
}

// RecordPageOf is the path of a job's page in the site.
func (s *Site) RecordPageOf(j *model.Job) string { return s.jobs.pages[j] }

// JobsOf are the jobs of a procedure, for a page that is up away from the
// folder of the records' pages; nil where there are none.
func (s *Site) JobsOf(up string, p *model.Procedure, named bool) *Jobs {
	return s.jobsView(up, s.jobs.of[p], named, false)
}

// JobsAt are the jobs at a machine, by whatever procedure.
func (s *Site) JobsAt(up string, m *model.Machine, named bool) *Jobs {
	var list []*model.Job
	for _, j := range s.jobs.all {
		if j.To != nil && j.To.For.To == m && s.shown[j.To] {
			list = append(list, j)
		}
	}
	return s.jobsView(up, list, named, true)
}

func (s *Site) jobsView(up string, list []*model.Job, named, mixed bool) *Jobs {
	if len(list) == 0 {
		return nil
	}
	v := &Jobs{Jobs: s.jobWords(), Named: named, Mixed: mixed, Measured: s.measured(list)}
	for _, j := range slices.Backward(list) {
		v.Rows = append(v.Rows, s.jobRow(up, j, named))
	}
	if len(v.Rows) > shownJobs {
		v.Rows, v.Older = v.Rows[:shownJobs], v.Rows[shownJobs:]
	}
	return v
}

func (s *Site) jobWords() *words.Jobs { return &s.speaks.Jobs }

func (s *Site) jobRow(up string, j *model.Job, named bool) JobRow {
	w := s.jobWords()
	row := JobRow{
		When: s.recordLink(up, minute(j.Saved), j), Procedure: Link{Name: j.Title},
		Unit: s.shortUnit(j), Revision: s.jobRevision(j), Gaps: w.NoGaps,
	}
	if j.To != nil {
		row.Procedure = s.link(up, j.To)
	}
	done, due := tally(j)
	row.Steps = fmt.Sprintf(w.OfSteps, done, due)
	if len(j.Gaps) > 0 {
		row.Gaps = fmt.Sprintf(w.GapsAt, len(j.Gaps), joined(gapSteps(j)))
	}
	if named {
		row.Who = worker(w, j)
	}
	return row
}

func gapSteps(j *model.Job) []string {
	var out []string
	for _, g := range j.Gaps {
		if !slices.Contains(out, g.Step) {
			out = append(out, g.Step)
		}
	}
	return out
}

func worker(w *words.Jobs, j *model.Job) string {
	if who := strings.TrimSpace(j.Worker); who != "" {
		return who
	}
	return w.NobodyNamed
}

// minute writes a time as the clock at the bay showed it.
func minute(t time.Time) string { return t.Format("2006-01-02 15:04") }

// tally counts the steps that were done, of those that the unit has and that
// were needed.
func tally(j *model.Job) (done, due int) {
	for _, st := range j.Steps {
		switch st.State {
		case "not on this unit", "not needed":
			continue
		case "done":
			done++
		}
		due++
	}
	return done, due
}

// jobUnit says which unit was worked on, in the machine's words as they are now.
func (s *Site) jobUnit(j *model.Job) string {
	w := s.jobWords()
	if j.Unit.Serial != "" {
		return fmt.Sprintf(w.UnitNo, j.Unit.Serial)
	}
	if names := optionWords(j); len(names) > 0 {
		return fmt.Sprintf(w.OptionsOnly, joined(names))
	}
	if j.To != nil && j.To.For.ID == "" {
		return "–"
	}
	return w.NoUnit
}

// shortUnit is the unit as a column headed so shows it.
func (s *Site) shortUnit(j *model.Job) string {
	if j.Unit.Serial != "" {
		return j.Unit.Serial
	}
	return s.jobUnit(j)
}

func optionWords(j *model.Job) []string {
	var out []string
	for _, id := range j.Unit.Options {
		name := id
		if j.To != nil {
			if known, ok := j.To.For.To.Option(id); ok {
				name = known
			}
		}
		out = append(out, name)
	}
	return out
}

// jobRevision is the revision of a job, with a word where it is not the one
// that stands.
func (s *Site) jobRevision(j *model.Job) string {
	w := s.jobWords()
	switch {
	case record.Current(s.Manual, j, s.Today) && j.Revision == "":
		return "–"
	case record.Current(s.Manual, j, s.Today):
		return j.Revision
	case j.Revision == "":
		return w.NotIssuedThen
	}
	return fmt.Sprintf(w.MadeWith, j.Revision)
}

// OlderOnes says how many rows are folded.
func (v *Jobs) OlderOnes() string { return fmt.Sprintf(v.FoldedRows, len(v.Older)) }

// OlderOnes says how many values are folded.
func (m *Measured) OlderOnes(v *Jobs) string { return fmt.Sprintf(v.FoldedRows, len(m.Older)) }
