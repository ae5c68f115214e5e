package front

import (
	"fmt"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// Snags is the writer's list.
type Snags struct {
	page.Frame
	Findings   []Snag
	NotReached []page.Link
	Drafts     []string
	Said       *jobs.Feedback
	Readables  []Readable
}

// Snag is one finding on the list.
type Snag struct {
	Place   string
	Level   string
	Code    string
	Message string
	Mend    string
}

// Snags makes the writer's list.
func (s *Pages) Snags() *Snags {
	v := &Snags{Frame: s.Frame("snags.html", s.Words.Snags), Said: s.AllSaid("")}
	for _, f := range s.Findings {
		if strings.HasPrefix(f.At.Path(), "readings/") || f.Names {
			continue // it is about people, and this page is published
		}
		line, col := f.At.LineCol()
		level := s.Words.Errors
		if f.Level == finding.Advice {
			level = s.Words.Advice
		}
		v.Findings = append(v.Findings, Snag{
			Place: fmt.Sprintf("%s:%d:%d", f.At.Path(), line, col), Level: level, Code: f.Code, Message: f.Message, Mend: f.Mend,
		})
	}
	for _, p := range s.Shown {
		if len(s.Links.Callers(p)) == 0 && len(s.Links.Seers(p)) == 0 && p.Issued() {
			v.NotReached = append(v.NotReached, s.Link(v.Up, p))
		}
	}
	for _, p := range s.Manual.Procedures {
		if p.Draft() {
			v.Drafts = append(v.Drafts, p.Label())
		}
	}
	v.Readables = s.readables()
	return v
}
