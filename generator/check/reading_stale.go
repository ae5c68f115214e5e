package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

var ReadingStale = finding.Rule{
	Code:  "reading-stale",
	Level: finding.Advice,
	Title: "Someone read this before it changed",
	Why:   "Whoever read the old wait or the old torque works by it, and has a record that says they are up to date. Of energy control, 29 CFR 1910.147(c)(7) asks for training anew where the procedure changes. Local codes come first.",
	Mend:  "Have them read it again, then record it: baybinder readings record PERSON PROCEDURE read.",
}

func runReadingStale(c *Context) []finding.Finding {
	if len(c.Manual.Record) == 0 {
		return nil
	}
	staff := c.staff()
	items := staff.Items()
	changed := map[stale]finding.Words{}
	for _, change := range staff.Changes(items) {
		changed[stale{change.Procedure, change.Print}] = inShort(&change)
	}
	var found []finding.Finding
	for _, i := range items {
		p, is := i.What.(*model.Procedure)
		if !is || i.State != training.Stale || uncertain(p) {
			continue
		}
		found = append(found, ReadingStale.At(i.Last.At, "what %s read of %s on %s is not what stands now%s",
			i.Person.Label(), p.Label(), i.Last.Date, changed[stale{p, i.Last.Fingerprint}]).
			WithMend("have it read again, then: baybinder readings record %s %s read", i.Person.ID, p.ID))
	}
	return found
}

// stale is a procedure and the fingerprint of it that was read.
type stale struct {
	procedure *model.Procedure
	print     string
}

// inShort is ": what changed", where that is known.
func inShort(c *training.Change) finding.Words {
	if len(c.Steps) == 0 {
		return finding.Words{}
	}
	return finding.Say(": %s", firstOf(c.In))
}
