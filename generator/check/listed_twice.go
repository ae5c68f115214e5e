package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// runListedTwice asks that a list of a front matter names a thing once: of two
// amounts only one can be meant.
func runListedTwice(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, list := range reconciled {
		first := map[string]position.Pos{}
		for _, line := range list.lines(p) {
			if at, twice := first[line.id]; twice {
				found = append(found, syntax.DuplicateID.At(line.at, "%s: lists %s twice", list.name, line.id).
					WithMend("keep one").See(at, "the first is here"))
				continue
			}
			first[line.id] = line.at
		}
	}
	return found
}
