package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var recordTwice = finding.Rule{
	Code:  "record-twice",
	Level: finding.Advice,
	Title: "The same row twice",
	Why:   "One thing was done once. A second row of it was added by a slip, or by two people for one class.",
	Mend:  "Find out which is right. Rows are never taken out of a record that was handed on; of one that was not, take out the second.",
}

// runRecordTwice looks at what was done, not at which row stood before. How often
// something was performed is counted by its rows.
func runRecordTwice(c *Context) []finding.Finding {
	first := map[model.Reading]position.Pos{}
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := c.Manual.Record[i]
		if r.Bad || r.Act == "performed" {
			continue
		}
		at := r.At
		r.At, r.FingerprintAt, r.ByAt, r.AfterAt = position.Pos{}, position.Pos{}, position.Pos{}, position.Pos{}
		r.Person.At, r.Procedure.At, r.After, r.Sum = position.Pos{}, position.Pos{}, "", ""
		if was, twice := first[r]; twice {
			found = append(found, recordTwice.At(at, "this row stands twice").See(was, "the first is here"))
			continue
		}
		first[r] = at
	}
	return found
}
