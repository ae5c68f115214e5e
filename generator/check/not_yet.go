package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var notYet = finding.Rule{
	Code:  "not-yet",
	Level: finding.Advice,
	Ours:  true,
	Title: "A record of a day that is yet to come",
	Why:   "Nobody can have read or issued anything on it, so it counts for nothing until then. It is a slip of the pen, or of a machine's clock.",
	Mend:  "Look up the day and correct it; or ask for the day that you mean with --today.",
}

func runNotYet(c *Context) []finding.Finding {
	var found []finding.Finding
	look := func(at position.Pos, day model.Date, say finding.Words) {
		if c.Today.Before(day) {
			found = append(found, notYet.At(at, say.Template, day, c.Today).
				WithMend("correct the date"))
		}
	}
	for i := range c.Manual.Record {
		look(c.Manual.Record[i].At, c.Manual.Record[i].Date, finding.Say("this record is dated %s, and today is %s: it does not count yet"))
	}
	for i := range c.Manual.Revisions {
		look(c.Manual.Revisions[i].At, c.Manual.Revisions[i].Date, finding.Say("this revision is dated %s, and today is %s: it does not count yet"))
	}
	return found
}
