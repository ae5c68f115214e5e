package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
)

var wordsAltered = finding.Rule{
	Code:  "words-altered",
	Level: finding.Advice,
	Ours:  true,
	Title: "The kept words of an issued revision, changed since",
	Why:   "They are the evidence of what people worked by. Once edited, nobody can say any more what was issued, or what changed since.",
	Mend:  "Take the file back from version control as it was issued. To change a procedure, change it in procedures/ and issue it.",
}

func runWordsAltered(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, r := range slices.Concat(c.Manual.Revisions, c.Manual.Renditions) {
		if training.WordsOf(&r) == training.Altered {
			found = append(found, wordsAltered.At(r.Kept.At(0, 0), "these are not the words of revision %s of %s as they were issued", r.Number, r.Procedure.ID).
				WithMend("take the file back from version control").See(r.At, "it was issued here"))
		}
	}
	return found
}
