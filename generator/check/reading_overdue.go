package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/derive/training"
)

var readingOverdue = finding.Rule{
	Code:  "reading-overdue",
	Level: finding.Advice,
	Title: "Someone should have read this by now",
	Why:   "A reading plan with a date that passed is a promise that nobody keeps, and the person works beside those who know.",
	Mend:  "Have it read and record it: baybinder readings record PERSON PROCEDURE read. Or give the plan a longer within:.",
}

// runReadingOverdue tells once of each plan of a person, at the plan.
func runReadingOverdue(c *Context) []finding.Finding {
	late := map[position.Pos][]training.Standing{}
	for _, s := range c.hall().Standings() {
		if s.State == training.Overdue {
			late[s.Plan.At] = append(late[s.Plan.At], s)
		}
	}
	var found []finding.Finding
	for at, list := range late {
		var names []string
		for _, s := range list {
			names = append(names, s.Reading.Procedure.ID)
		}
		if len(names) > 3 {
			names = append(names[:3], "and more")
		}
		found = append(found, readingOverdue.At(at, "%s was to have read this by %s: %s", list[0].Person.Label(), list[0].By, strings.Join(names, ", ")).
			WithMend("have it read, then: baybinder readings record %s %s read", list[0].Person.ID, names[0]))
	}
	return found
}
