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
		var ids []string
		for _, s := range list {
			ids = append(ids, s.Reading.Procedure.ID)
		}
		say := finding.Say("%s was to have read this by %s: %s")
		if k.again {
			say = finding.Say("%s was to have read this again by %s: %s")
		}
		names := finding.Say("%s", strings.Join(ids[:min(len(ids), 3)], ", "))
		if len(ids) > 3 {
			names = finding.Say("%s, and more", names)
		}
		found = append(found, readingOverdue.At(k.at, say.Template, list[0].Person.Label(), k.by, names).
			WithMend("have it read, then: baybinder readings record %s %s read", list[0].Person.ID, ids[0]))
	}
	return found
}
