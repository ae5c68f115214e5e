package jobs

import (
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/show/page"
)

// Feedback is what technicians said of steps, and the answers.
type Feedback struct {
	*words.Jobs
	Here  bool // it stands on the procedure's own page
	Notes []Said
}

// Said is one note: "this step is wrong", in the technician's words. Who sent
// it is not in it.
type Said struct {
	Procedure page.Link
	Step      page.Link // to the step as it is now; without an address where there is none
	Words     string
	Date      string
	Record    page.Link
	Answers   []Answered
	Line      string // what the writer adds to the answers; "" where there is an answer
}

// Answered is what the writer answered.
type Answered struct {
	Head  string // "Answer, 2026-05-06:"
	Words string
}

// answersPath is where the answers are written.
const answersPath = "records/answers.csv"

func (s *Pages) answersTo(j *model.Job, n model.JobNote) []model.Answer {
	var out []model.Answer
	for _, a := range s.book.answers[j] {
		if a.Step == n.Step {
			out = append(out, a)
		}
	}
	return out
}

// SaidOf is what was said of a procedure's steps, what is open first; nil where
// nothing was.
func (s *Pages) SaidOf(up string, p *model.Procedure) *Feedback {
	notes := s.said(up, s.book.of[p])
	if len(notes) == 0 {
		return nil
	}
	return &Feedback{Jobs: s.JobWords(), Here: true, Notes: notes}
}

// AllSaid is what was said of any step, for the writer. A note to a procedure
// that is not there any more is still a note.
func (s *Pages) AllSaid(up string) *Feedback {
	return &Feedback{Jobs: s.JobWords(), Notes: s.said(up, s.book.all)}
}

func (s *Pages) said(up string, jobs []*model.Job) []Said {
	var notes []Said
	for _, j := range slices.Backward(jobs) {
		for _, n := range j.Notes {
			notes = append(notes, s.note(up, j, n))
		}
	}
	slices.SortStableFunc(notes, func(a, b Said) int { return min(len(a.Answers), 1) - min(len(b.Answers), 1) })
	return notes
}

func (s *Pages) note(up string, j *model.Job, n model.JobNote) Said {
	w := s.JobWords()
	v := Said{
		Procedure: page.Link{Name: j.Title}, Step: page.Link{Name: n.Step}, Words: n.Words, Date: model.DateOf(n.At).String(),
		Record: s.recordLink(up, w.Record, j),
	}
	if j.To != nil {
		v.Procedure = s.Link(up, j.To)
		if st := s.stepNow(j, n.Step); st != nil && v.Procedure.Address != "" {
			v.Step.Address = v.Procedure.Address + "#" + page.Anchor(st)
		}
	}
	for _, a := range s.answersTo(j, n) {
		v.Answers = append(v.Answers, Answered{Head: fmt.Sprintf(w.Answered, a.Date), Words: a.Words})
	}
	if len(v.Answers) == 0 {
		v.Line = answerLine(j.Name, n.Step, s.Today.String())
	}
	return v
}

// answerLine is the row that answers a note, with empty quotes for the words.
func answerLine(cells ...string) string {
	var b strings.Builder
	w := csv.NewWriter(&b)
	_ = w.Write(cells) // a builder takes everything
	w.Flush()
	return strings.TrimRight(b.String(), "\n") + `,""`
}

// stepNow is the step of a job's step as the procedure has it now: by its name;
// by its number, if the job was done with what stands or the words are the
// same; else by its words, if no other step has them.
func (s *Pages) stepNow(j *model.Job, number string) *model.Step {
	i := slices.IndexFunc(j.Steps, func(st model.JobStep) bool { return st.Number == number })
	if i >= 0 {
		for _, st := range j.To.Steps {
			if st.Name != "" && st.Name == j.Steps[i].ID {
				return st
			}
		}
	}
	byNumber := j.To.FindStep(number)
	if byNumber != nil && record.Current(s.Manual, j, s.Today) {
		return byNumber
	}
	if i < 0 {
		return nil
	}
	said := lettersOf(j.Steps[i].Words)
	if byNumber != nil && s.wordsOf(byNumber) == said {
		return byNumber
	}
	var found *model.Step
	for _, st := range j.To.Steps {
		if s.wordsOf(st) == said {
			if found != nil {
				return nil
			}
			found = st
		}
	}
	return found
}

// wordsOf are the letters of a step's first paragraph, as the page shows it.
func (s *Pages) wordsOf(st *model.Step) string {
	for i := range st.Blocks {
		if b := &st.Blocks[i]; b.Para && b.Role == model.Said {
			return lettersOf(model.Unmarked(string(s.Text("", b))))
		}
	}
	return ""
}

// lettersOf leaves letters and figures only: a comma is no other step.
func lettersOf(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsNumber(r) {
			return unicode.ToLower(r)
		}
		return -1
	}, text)
}

// AnswerLine says where the line of an answer goes.
func (f *Feedback) AnswerLine() string {
	return fmt.Sprintf(f.AnswerHow, answersPath) + " " + f.AnswerHead + " record,step,date,answer"
}
