// Package front works out the site's first page, its search, and the writer's list of snags.
package front

import (
	"slices"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// Pages makes the first page, the search, and the writer's list.
type Pages struct {
	*jobs.Pages
	Survey *Survey
}

// Of makes them with what was recorded of jobs.
func Of(j *jobs.Pages) *Pages {
	s := &Pages{Pages: j}
	s.Survey = s.survey()
	return s
}

// Surveyed makes them for a part of a manual whose whole was surveyed before.
func Surveyed(j *jobs.Pages, v *Survey) *Pages { return &Pages{j, v} }

// In is the same as it is read in one of the shop's other languages.
func (s *Pages) In(tag string) *Pages { return &Pages{s.Pages.In(tag), s.Survey} }

// Front is the site's first page.
type Front struct {
	page.Frame
	JobsOf   string // the shop whose open jobs the browser lists
	ByUse    []ForMachine
	Retired  []page.Link
	Changes  []Changed
	Plans    []page.Link // reading plans
	Training *words.Readings
}

// Changed is one issued revision in the list of what changed lately.
type Changed struct {
	page.Link
	Revision string
	Date     string
	Reason   string
}

// lately is how many revisions the front page shows.
const lately = 8

// Front makes the site's first page.
func (s *Pages) Front() *Front {
	v := &Front{Frame: s.Frame("index.html", s.Manual.Shop.Title), JobsOf: s.Manual.Shop.Title, Plans: s.PlanLinks(""), Training: s.Training()}
	v.ByUse = s.byMachine(v.Up)
	for i := range s.Rows {
		if r := &s.Rows[i]; r.Retired {
			v.Retired = append(v.Retired, r.Sheet.At(v.Up).Link)
		}
	}
	v.Changes = s.Survey.Changes
	return v
}

// lately lists the newest revisions, the newest first.
func (s *Pages) lately(up string) []Changed {
	var out []Changed
	revisions := slices.Clone(s.Manual.Revisions)
	slices.SortStableFunc(revisions, func(a, b model.Revision) int { return -page.CompareText(a.Date.String(), b.Date.String()) })
	for _, r := range revisions {
		if len(out) == lately {
			break
		}
		if p := r.Procedure.To; p != nil && s.Publishes(p) {
			out = append(out, Changed{Link: s.Link(up, p), Revision: r.Number, Date: r.Date.String(), Reason: r.Reason})
		}
	}
	return out
}
