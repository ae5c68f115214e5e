package jobs

import (
	"fmt"
	"strings"
	"time"

	"baybinder/generator/base/finding"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Record is the page of one job, to be read and printed.
type Record struct {
	page.Frame
	W         *words.Jobs
	Heading   string
	Name      string // the file below records/
	Procedure page.Link
	Marks     []string    // who was not qualified or not up to date, where names are shown
	Doers     []page.Link // the sheets of who did it, where names are shown and listed
	Plate     []string
	Lines     []string // who, when, how many steps
	Partly    bool     // saved before every step was done
	Gaps      []string
	HandOvers []string
	Clock     []string
	Steps     []RecordStep
	Notes     []Said
}

// RecordStep is one step of the page.
type RecordStep struct {
	Number string
	Words  string
	State  string
	Holds  []string
}

// Record makes the page of a job in a frame. Names are on it only where they
// are asked for; what people typed as words is shown as they typed it.
func (s *Pages) Record(frame page.Frame, j *model.Job, named bool) *Record {
	w := s.JobWords()
	v := &Record{Frame: frame, W: w, Heading: fmt.Sprintf(w.RecordOf, titleOf(j)), Name: "records/" + j.Name + ".json", Procedure: page.Link{Name: j.Title}}
	if j.To != nil {
		v.Procedure = s.Link(frame.Up, j.To)
		if j.To.For.To != nil {
			v.Plate = append(v.Plate, j.To.For.To.Label())
		}
	}
	v.Plate = append(v.Plate, s.jobUnit(j))
	if rev := s.jobRevision(j); rev != "–" {
		v.Plate = append(v.Plate, s.plateRevision(j, rev))
	}
	done, due := tally(j)
	v.Partly = done < due
	v.Lines = []string{fmt.Sprintf(w.Begun, minute(j.Started)), fmt.Sprintf(w.SavedAt, minute(j.Saved)), w.StepsDone + ": " + s.stepsDone(j)}
	if j.Unit.Serial != "" && len(j.Unit.Options) > 0 {
		v.Lines = append(v.Lines, fmt.Sprintf(w.OptionsOnly, page.Joined(optionWords(j))))
	}
	if named {
		v.Lines = append(v.Lines, fmt.Sprintf(w.DoneBy, worker(w, j)))
	}
	for _, g := range j.Gaps {
		v.Gaps = append(v.Gaps, gapLines(w, g)...)
	}
	for _, h := range j.HandOvers {
		v.HandOvers = append(v.HandOvers, handedOver(w, j, h, named))
	}
	for _, c := range j.Clock {
		v.Clock = append(v.Clock, fmt.Sprintf(w.ClockBack, minute(c.At), c.Back))
	}
	for _, st := range j.Steps {
		v.Steps = append(v.Steps, s.recordStep(j, st, named))
	}
	for _, n := range j.Notes {
		v.Notes = append(v.Notes, s.note(frame.Up, j, n))
	}
	return v
}

// plateRevision is "Revision 2", or what is said of one that does not stand.
func (s *Pages) plateRevision(j *model.Job, text string) string {
	if text == j.Revision {
		return s.JobWords().Revision + " " + text
	}
	return text
}

func gapLines(w *words.Jobs, g model.JobGap) []string {
	var out []string
	if len(g.Unticked) > 0 {
		out = append(out, fmt.Sprintf(w.GapBefore, g.Step, page.Joined(g.Unticked)))
	}
	if len(g.Holds) > 0 {
		out = append(out, fmt.Sprintf(w.GapHolds, g.Step, strings.Join(g.Holds, "; ")))
	}
	return out
}

// handedOver says that the job went to another person; to whom, only where
// names are asked for.
func handedOver(w *words.Jobs, j *model.Job, h model.JobHand, named bool) string {
	out := fmt.Sprintf(w.HandedOver, h.Step, clockOf(j, h.At))
	if named {
		out += " " + finding.OneStop(fmt.Sprintf(w.HandedTo, h.From, h.To))
	}
	if h.Locks != "" {
		out += " " + fmt.Sprintf(w.HandedLocks, h.Locks)
	}
	return out
}

func (s *Pages) recordStep(j *model.Job, st model.JobStep, named bool) RecordStep {
	w := s.JobWords()
	v := RecordStep{Number: st.Number, Words: st.Words, State: w.OfState(st.State)}
	if st.Reason != "" {
		v.State += ": " + st.Reason
	}
	if !st.At.IsZero() {
		v.State += ", " + clockOf(j, st.At)
	}
	if !st.Latest.IsZero() && st.Late {
		v.State += "; " + fmt.Sprintf(w.WasLate, clockOf(j, st.Latest))
	}
	if st.State == "not on this unit" || st.State == "not needed" {
		return v
	}
	for i := range j.Holds {
		if h := &j.Holds[i]; h.Step == st.Number {
			v.Holds = append(v.Holds, s.RecordHold(j, h, named))
		}
	}
	return v
}

// clockOf writes a time of the job's own day as a time only.
func clockOf(j *model.Job, t time.Time) string {
	if model.DateOf(t) == model.DateOf(j.Started) {
		return t.Format("15:04")
	}
	return minute(t)
}

// RecordHold says what came of a hold.
func (s *Pages) RecordHold(j *model.Job, h *model.JobHold, named bool) string {
	w := s.JobWords()
	name := h.Hold
	hold := s.holdNamed(h.Hold)
	if hold != nil {
		name = hold.Label()
	}
	var parts []string
	switch h.Kind {
	case "wait":
		if !h.Until.IsZero() {
			parts = append(parts, fmt.Sprintf(w.WaitFrom, clockOf(j, h.From), clockOf(j, h.Until)))
		}
		parts = append(parts, choose(h.Met, w.WaitOver, w.WaitRuns))
		if !h.Latest.IsZero() && h.Late {
			parts = append(parts, fmt.Sprintf(w.WasLate, clockOf(j, h.Latest)))
		}
	case "measure":
		parts = s.recordValues(j, h)
	case "look":
		if h.Good != nil {
			parts = append(parts, choose(*h.Good, w.Good, w.NotGood))
		}
		if len(h.Ticked) > 0 {
			parts = append(parts, fmt.Sprintf(w.Ticked, page.Joined(h.Ticked)))
		}
	}
	for _, text := range []string{s.answerOf(hold, h.Answer), h.Words} {
		if text != "" {
			parts = append(parts, text)
		}
	}
	if h.Signed != nil && named {
		parts = append(parts, fmt.Sprintf(w.SignedBy, h.Signed.Name, clockOf(j, h.Signed.At)))
	} else if h.Signed != nil {
		parts = append(parts, fmt.Sprintf(w.Signed, clockOf(j, h.Signed.At)))
	}
	if !h.Met && h.Kind != "wait" {
		parts = append(parts, w.NotMet)
	}
	return name + ": " + strings.Join(parts, "; ")
}

func choose(is bool, yes, no string) string {
	if is {
		return yes
	}
	return no
}

func (s *Pages) holdNamed(id string) *model.Hold {
	return model.ByID(s.Manual.Holds, id)
}

func (s *Pages) answerOf(h *model.Hold, key string) string {
	if h != nil {
		for _, a := range h.Answers {
			if a.Key == key {
				return a.Value
			}
		}
	}
	return key
}

func (s *Pages) recordValues(j *model.Job, h *model.JobHold) []string {
	w := s.JobWords()
	var parts []string
	for _, f := range h.Failed {
		parts = append(parts, fmt.Sprintf(w.GivenUpAt, clockOf(j, f.At))+" "+valuesOf(f.Values, h.Unit))
	}
	if len(h.Values) > 0 {
		parts = append(parts, page.Phrase(valuesOf(h.Values, h.Unit), s.judged(j, h, h.Values)))
	}
	if limit := w.LimitOf(s.decimal(h.Low), s.decimal(h.High)); limit != "" {
		parts = append(parts, w.Limit+" "+limit+" "+h.Unit)
	}
	if h.Proved != nil {
		parts = append(parts, choose(*h.Proved, w.Proved, w.NotProved))
	}
	return parts
}

func valuesOf(list []model.JobReading, unit string) string {
	var out []string
	for _, r := range list {
		out = append(out, strings.TrimSpace(r.Where+" "+r.Typed+" "+unit))
	}
	return page.Joined(out)
}

// titleOf is the procedure's title as it is now; of one that is gone, as it was.
func titleOf(j *model.Job) string {
	if j.To != nil {
		return j.To.Label()
	}
	return j.Title
}

// RecordFrame is the frame of a job's page in the site.
func (s *Pages) RecordFrame(here string, j *model.Job) page.Frame {
	return s.Frame(here, fmt.Sprintf(s.JobWords().RecordOf, titleOf(j))+", "+minute(j.Saved))
}
