// Package jobs works out what pages say of the jobs that were done: the records, what was measured, what
// technicians said of steps and what the writer answered.
package jobs

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
	"baybinder/generator/show/page"
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
	When      page.Link // to its record
	Procedure page.Link
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

// Pages makes what pages say of the jobs that were done.
type Pages struct {
	*page.Site
	book *book
}

// book is what is worked out of the records once for all pages.
type book struct {
	all     []*model.Job // those that count, the oldest first
	of      map[*model.Procedure][]*model.Job
	pages   map[*model.Job]string
	answers map[*model.Job][]model.Answer
	open    map[*model.Step]int // notes at a step that nobody answered
}

// Of reads the records of a site's manual.
func Of(site *page.Site) *Pages {
	s := &Pages{site, booked(site)}
	for _, j := range s.book.all {
		if j.To != nil {
			s.book.of[j.To] = append(s.book.of[j.To], j)
			s.bookNotes(j)
		}
	}
	return s
}

// In is the same as it is read in one of the shop's other languages.
func (s *Pages) In(tag string) *Pages { return &Pages{s.Site.In(tag), s.book} }

// Changed forgets what was worked out of a procedure before it was bound anew.
func (s *Pages) Changed(p *model.Procedure) {
	s.Site.Changed(p)
	for _, j := range s.book.of[p] {
		s.bookNotes(j) // its steps are others now
	}
}

func booked(s *page.Site) *book {
	b := &book{
		all: record.Counted(s.Manual.Jobs, s.Today), of: map[*model.Procedure][]*model.Job{},
		pages: map[*model.Job]string{}, answers: map[*model.Job][]model.Answer{}, open: map[*model.Step]int{},
	}
	taken := map[string]int{}
	for _, j := range s.Manual.Jobs {
		if j.To != nil && !s.Publishes(j.To) {
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
	return b
}

// bookNotes counts a job's notes that nobody answered, at the steps as they are
// now.
func (s *Pages) bookNotes(j *model.Job) {
	for _, n := range j.Notes {
		if len(s.answersTo(j, n)) > 0 {
			continue
		}
		if st := s.stepNow(j, n.Step); st != nil {
			s.book.open[st]++
		}
	}
}

// Counted are the jobs that have a page, the oldest first.
func (s *Pages) Counted() []*model.Job {
	return slices.DeleteFunc(slices.Clone(s.book.all), func(j *model.Job) bool { return s.book.pages[j] == "" })
}

// Done are the jobs of a procedure, the oldest first.
func (s *Pages) Done(p *model.Procedure) []*model.Job { return s.book.of[p] }

// OpenNotes is how many notes at a step nobody answered.
func (s *Pages) OpenNotes(st *model.Step) int { return s.book.open[st] }

// recordLink is a link to a job's page.
func (s *Pages) recordLink(up, name string, j *model.Job) page.Link {
	l := page.Link{Name: name}
	if page := s.book.pages[j]; page != "" {
		l.Address = up + page
	}
	return l
}

// RecordPageOf is the path of a job's page in the site.
func (s *Pages) RecordPageOf(j *model.Job) string { return s.book.pages[j] }

// JobsOf are the jobs of a procedure, for a page that is up away from the
// folder of the records' pages; nil where there are none.
func (s *Pages) JobsOf(up string, p *model.Procedure, named bool) *Jobs {
	return s.JobsView(up, s.book.of[p], named, false)
}

// JobsAt are the jobs at a machine, by whatever procedure.
func (s *Pages) JobsAt(up string, m *model.Machine, named bool) *Jobs {
	var list []*model.Job
	for _, j := range s.book.all {
		if j.To != nil && j.To.For.To == m && s.Publishes(j.To) {
			list = append(list, j)
		}
	}
	return s.JobsView(up, list, named, true)
}

// JobsView is a list of jobs and what was measured in them; nil for none.
func (s *Pages) JobsView(up string, list []*model.Job, named, mixed bool) *Jobs {
	if len(list) == 0 {
		return nil
	}
	v := &Jobs{Jobs: s.JobWords(), Named: named, Mixed: mixed, Measured: s.measured(list)}
	for _, j := range slices.Backward(list) {
		v.Rows = append(v.Rows, s.jobRow(up, j, named))
	}
	if len(v.Rows) > shownJobs {
		v.Rows, v.Older = v.Rows[:shownJobs], v.Rows[shownJobs:]
	}
	return v
}

// JobWords are the words of what says how jobs went.
func (s *Pages) JobWords() *words.Jobs { return &s.Speaks.Jobs }

func (s *Pages) jobRow(up string, j *model.Job, named bool) JobRow {
	w := s.JobWords()
	row := JobRow{
		When: s.recordLink(up, minute(j.Saved), j), Procedure: page.Link{Name: j.Title},
		Unit: s.shortUnit(j), Revision: s.jobRevision(j), Gaps: w.NoGaps,
	}
	if j.To != nil {
		row.Procedure = s.Link(up, j.To)
	}
	row.Steps = s.stepsDone(j)
	if len(j.Gaps) > 0 {
		sums := &s.Speaks.Worked.Sums
		gaps := strconv.Itoa(len(j.Gaps))
		row.Gaps = s.Tallied(fmt.Sprintf(w.GapsAt, len(j.Gaps), page.Joined(gapSteps(j))), sums.Gaps, gaps, gaps, sums.Record)
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

// stepsDone says how many of a job's steps were done.
func (s *Pages) stepsDone(j *model.Job) string {
	w := &s.Speaks.Worked.Sums
	done, due := tally(j)
	text := fmt.Sprintf(s.JobWords().OfSteps, done, due)
	put := fmt.Sprintf("%d/(%d − %d)", done, len(j.Steps), len(j.Steps)-due)
	return s.Tallied(text, w.Ticked, put, text, w.Record)
}

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
func (s *Pages) jobUnit(j *model.Job) string {
	w := s.JobWords()
	if j.Unit.Serial != "" {
		return fmt.Sprintf(w.UnitNo, j.Unit.Serial)
	}
	if names := optionWords(j); len(names) > 0 {
		return fmt.Sprintf(w.OptionsOnly, page.Joined(names))
	}
	if j.To != nil && j.To.For.ID == "" {
		return "–"
	}
	return w.NoUnit
}

// shortUnit is the unit as a column headed so shows it.
func (s *Pages) shortUnit(j *model.Job) string {
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
func (s *Pages) jobRevision(j *model.Job) string {
	w := s.JobWords()
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
