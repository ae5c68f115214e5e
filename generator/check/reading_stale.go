package check

import (
	"baybinder/generator/finding"
	"baybinder/generator/training"
)

var readingStale = finding.Rule{
	Code:  "reading-stale",
	Level: finding.Advice,
	Title: "Someone read this before it changed",
	Why:   "Whoever read the old wait or the old torque works by it, and has a record that says they are up to date.",
	Mend:  "Have them read it again, then record it: baybinder readings record PERSON PROCEDURE read.",
}

func runReadingStale(c *Context) []finding.Finding {
	if len(c.Manual.Record) == 0 {
		return nil
	}
	var found []finding.Finding
	for _, s := range training.NewHall(c.Manual, c.Today).Standings() {
		if p := s.Reading.Procedure; s.State == training.Stale && !unread(p) {
			found = append(found, readingStale.At(s.Last.At, "what %s read of %s on %s is not what stands now", s.Person.Label(), p.Label(), s.Last.Date).
				WithMend("have it read again, then: baybinder readings record %s %s read", s.Person.ID, p.ID))
		}
	}
	return found
}
