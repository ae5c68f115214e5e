package front

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// Snags is a page of the writer's list. What technicians said, and how hard the
// steps are to read, stands on the first.
type Snags struct {
	page.Frame
	Listed
	Parts     []page.Part
	First     bool
	Said      *jobs.Feedback
	Readables []Readable
}

// Listed are rows of the writer's list.
type Listed struct {
	Findings   []Snag
	NotReached []page.Link
	Drafts     []page.Link // without an address: a draft has no page
}

// snagsAt is the list's first page, onPage how many rows a page has: a finding
// takes about 300 bytes.
const (
	snagsAt = "snags.html"
	onPage  = 250
)

// SnagPage is one page of the writer's list, and where it stands.
type SnagPage struct {
	At    string
	rows  Listed
	n, of int
}

// IsSnags says that a page of the site is one of the writer's list.
func IsSnags(name string) bool { return name == snagsAt || page.PartOf(snagsAt, name) }

// Snag is one finding on the list.
type Snag struct {
	Place   string
	Level   string
	Code    string
	Message string
	Mend    string
	Lang    string // of both; "" is the page's
}

// SnagPages are the pages of the writer's list. There is one at least.
func (s *Pages) SnagPages() []SnagPage {
	rest := s.listed()
	var out []SnagPage
	for len(out) == 0 || rest.len() > 0 {
		out = append(out, SnagPage{At: page.PartAt(snagsAt, len(out)), rows: rest.first(onPage), n: len(out)})
	}
	for i := range out {
		out[i].of = len(out)
	}
	return out
}

func (l *Listed) len() int { return len(l.Findings) + len(l.NotReached) + len(l.Drafts) }

// first takes the first n rows away, and returns them.
func (l *Listed) first(n int) (out Listed) {
	out.Findings = taken(&l.Findings, &n)
	out.NotReached = taken(&l.NotReached, &n)
	out.Drafts = taken(&l.Drafts, &n)
	return out
}

// taken takes up to n from the front of a list, and n less those.
func taken[T any](from *[]T, n *int) []T {
	k := min(*n, len(*from))
	out := (*from)[:k]
	*from, *n = (*from)[k:], *n-k
	return out
}

// Snags makes a page of the writer's list.
func (s *Pages) Snags(p SnagPage) *Snags {
	v := &Snags{Frame: s.Frame(p.At, s.Words.Snags), Listed: p.rows, Parts: page.PartsOf(snagsAt, p.n, p.of), First: p.n == 0}
	if v.First {
		v.Said, v.Readables = s.AllSaid(""), s.readables()
	}
	return v
}

// listed are all rows of the writer's list.
func (s *Pages) listed() (v Listed) {
	for _, f := range s.Findings {
		if strings.HasPrefix(f.At.Path(), "readings/") || f.Names {
			continue // it is about people, and this page is published
		}
		line, col := f.At.LineCol()
		level := s.Words.Errors
		if f.Level == finding.Advice {
			level = s.Words.Advice
		}
		lang := cmp.Or(f.Lang, language.Default().Code)
		if lang == s.Speaks.Code && !s.Borrows() {
			lang = ""
		}
		v.Findings = append(v.Findings, Snag{
			Lang:  lang,
			Place: fmt.Sprintf("%s:%d:%d", f.At.Path(), line, col), Level: level, Code: f.Code, Message: f.Message, Mend: f.Mend,
		})
	}
	v.NotReached, v.Drafts = s.Survey.NotReached, s.Survey.Drafts
	return v
}

// Survey is what the writer's list tells of all procedures, besides findings, and
// the front page of their revisions.
type Survey struct {
	Changes    []Changed
	NotReached []page.Link
	Drafts     []page.Link
	Counted    [][]Counted // how hard the steps are to read: the shop's language, and each other
}

// survey goes through all procedures.
func (s *Pages) survey() *Survey {
	v := &Survey{Counted: s.counted(), Changes: s.lately("")}
	for _, p := range s.Shown {
		if len(s.Links.Callers(p)) == 0 && len(s.Links.Seers(p)) == 0 && p.Issued() {
			v.NotReached = append(v.NotReached, s.Link("", p))
		}
	}
	for _, p := range s.Manual.Procedures {
		if p.Draft() {
			v.Drafts = append(v.Drafts, page.Link{Name: p.Label()})
		}
	}
	return v
}

// Count counts a procedure anew whose words are others; false where it was not
// or is not among those that are counted.
func (v *Survey) Count(s *Pages, p *model.Procedure) bool {
	now := countedIn(s, []*model.Procedure{p})
	i := slices.IndexFunc(v.Counted[0], func(c Counted) bool { return c.Procedure.Address == s.Address("", p) })
	if i < 0 || len(now) == 0 {
		return i < 0 && len(now) == 0
	}
	v.Counted[0][i] = now[0]
	return true
}
