package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

var readingOverdue = finding.Rule{
	Code:  "reading-overdue",
	Level: finding.Advice,
	Title: "Someone should have read this by now",
	Why:   "A reading plan with a date that passed is a promise that nobody keeps, and the person works beside those who know.",
	Mend:  "Have it read and record it: baybinder readings record PERSON PROCEDURE read. Or give the plan a longer within:.",
}

// runReadingOverdue tells once of each plan of a person, at the plan, what was
// to be read by a day, and what was to be read again.
func runReadingOverdue(c *Context) []finding.Finding {
	type heap struct {
		at    position.Pos
		by    model.Date
		again bool
	}
	late := map[heap][]training.Standing{}
	for _, s := range c.staff().Standings() {
		if s.State == training.Overdue {
			k := heap{s.Plan.At, s.By, s.Last != nil}
			late[k] = append(late[k], s)
		}
	}
	var found []finding.Finding
	for k, list := range late {
		var names []string
		for _, s := range list {
			names = append(names, s.Reading.Procedure.ID)
		}
		if len(names) > 3 {
			names = append(names[:3], "and more")
		}
		this := "this"
		if k.again {
			this = "this again"
		}
		found = append(found, readingOverdue.At(k.at, "%s was to have read %s by %s: %s", list[0].Person.Label(), this, k.by, strings.Join(names, ", ")).
			WithMend("have it read, then: baybinder readings record %s %s read", list[0].Person.ID, names[0]))
	}
	return found
}
