package page

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
)

// Front is the site's first page.
type Front struct {
	Frame
	JobsOf   string // the shop whose open jobs the browser lists
	Machines []Link
	Topics   []Topic
	Retired  []Link
	Changes  []Changed
	Plans    []Link // reading plans
	Training *words.Readings
}

// Topic is a folder of procedures.
type Topic struct {
	Name       string
	Procedures []Sheet
}

// Sheet is one procedure in a list.
type Sheet struct {
	Link
	Machine string
	Word    string // greatest signal word, calls included
	Class   string
	Time    string
	Draft   bool
	Tongues []Link // the page in other languages, Note the language's code
}

// Changed is one issued revision in the list of what changed lately.
type Changed struct {
	Link
	Revision string
	Date     string
	Reason   string
}

// lately is how many revisions the front page shows.
const lately = 8

// Front makes the site's first page.
func (s *Site) Front() *Front {
	v := &Front{Frame: s.Frame("index.html", s.Manual.Shop.Title), JobsOf: s.Manual.Shop.Title, Plans: s.planLinks(""), Training: s.training()}
	for _, m := range s.Manual.Machines {
		v.Machines = append(v.Machines, s.link(v.Up, m))
	}
	at := map[string]int{}
	for _, p := range s.Shown {
		if p.Status == "retired" {
			v.Retired = append(v.Retired, s.link(v.Up, p))
			continue
		}
		i, known := at[p.Topic]
		if !known {
			i = len(v.Topics)
			at[p.Topic] = i
			v.Topics = append(v.Topics, Topic{Name: s.topicName(p.Topic)})
		}
		v.Topics[i].Procedures = append(v.Topics[i].Procedures, s.sheet(v.Up, p))
	}
	for _, t := range v.Topics {
		slices.SortStableFunc(t.Procedures, func(a, b Sheet) int { return compareText(a.Name, b.Name) })
	}
	v.Changes = s.lately(v.Up)
	return v
}

func (s *Site) topicName(topic string) string {
	if topic == "" {
		return s.Words.Procedures
	}
	return titled(topic)
}

func (s *Site) sheet(up string, p *model.Procedure) Sheet {
	k := s.Kits.Of(p)
	word := greatest(k.Hazards).String()
	sheet := Sheet{Link: s.link(up, p), Word: s.Words.Signal(word), Class: word, Draft: p.Draft()}
	sheet.Note = p.Summary
	for _, t := range s.tongues(up, p) {
		if !t.Current {
			sheet.Tongues = append(sheet.Tongues, Link{Name: t.Name, Address: t.Address, Note: t.Language})
		}
	}
	if p.For.To != nil {
		sheet.Machine = p.For.To.Label()
	}
	sheet.Time = s.spanned(s.Times.Rows(p))
	return sheet
}

// lately lists the newest revisions, the newest first.
func (s *Site) lately(up string) []Changed {
	var out []Changed
	revisions := slices.Clone(s.Manual.Revisions)
	slices.SortStableFunc(revisions, func(a, b model.Revision) int { return -compareText(a.Date.String(), b.Date.String()) })
	for _, r := range revisions {
		if len(out) == lately {
			break
		}
		if p := r.Procedure.To; p != nil && s.shown[p] {
			out = append(out, Changed{Link: s.link(up, p), Revision: r.Number, Date: r.Date.String(), Reason: r.Reason})
		}
	}
	return out
}

// Snags is the writer's list.
type Snags struct {
	Frame
	Findings   []Snag
	NotReached []Link
	Drafts     []string
	Said       *Feedback
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
func (s *Site) Snags() *Snags {
	v := &Snags{Frame: s.Frame("snags.html", s.Words.Snags), Said: s.allSaid("")}
	for _, f := range s.Findings {
		if strings.HasPrefix(f.At.Path(), "readings/") || f.Code == bind.UnknownPerson.Code {
			continue // it names people, and this page is published
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
			v.NotReached = append(v.NotReached, s.link(v.Up, p))
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
