package check

import "baybinder/generator/base/finding"

var rowMissing = finding.Rule{
	Code:  "row-missing",
	Level: finding.Advice,
	Title: "A row that was added after one that is not there",
	Why:   "Each row names the row that it was added after. Where that is gone, a row was taken out or changed, and nobody can say what it held.",
	Mend:  "Take the file back from version control. Rows that were cut off the end leave no later row to tell of it: an audit sheet of the time does.",
}

// runRowMissing looks for the row that each row names. Two rows after one are
// two branches that were joined.
func runRowMissing(c *Context) []finding.Finding {
	there := map[string]bool{}
	for i := range c.Manual.Record {
		there[c.Manual.Record[i].Sum] = true
	}
	var found []finding.Finding
	for i := range c.Manual.Record {
		if r := &c.Manual.Record[i]; r.After != "" && !there[r.After] {
			found = append(found, rowMissing.At(r.AfterAt, "this row was added after the row %s, which is not there", r.After).
				WithMend("take readings/record.csv back from version control"))
		}
	}
	return found
}
