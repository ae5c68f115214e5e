package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
)

// runWithin asks that a step which ends within a time has a step to count from:
// one before it.
func runWithin(c *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for i, s := range p.Steps {
		for _, l := range s.Links {
			if !l.Is(model.LinkWithin) || l.Bad {
				continue
			}
			switch {
			case l.Step() == nil && i == 0:
				found = append(found, bind.UnknownReference.At(l.At, "there is no step before the first: nothing to count %s from", l.Amount()).
					WithMend("take the link out, or write the step that the time begins with"))
			case l.Step() != nil && slices.Index(p.Steps, l.Step()) >= i:
				found = append(found, bind.UnknownReference.At(l.At, "step %s is not before this one: nothing to count %s from", l.Step().Number, l.Amount()).
					WithMend("name an earlier step").See(l.Step().At, "the step is here"))
			}
		}
	}
	return found
}
