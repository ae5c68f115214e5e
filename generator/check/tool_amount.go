package check

import (
	"strconv"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// runToolAmount asks for whole numbers of tools.
func runToolAmount(_ *Context, p *model.Procedure) []finding.Finding {
	return countsOf(p.Tools)
}

// runWholeCounts asks for whole numbers of fasteners at a part, and of times that
// a plan has a procedure performed.
func runWholeCounts(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, m := range c.Manual.Machines {
		for _, part := range m.Parts {
			found = append(found, countsOf(part.HeldBy)...)
		}
	}
	for _, plan := range c.Manual.Plans {
		found = append(found, countsOf(plan.Perform)...)
	}
	return found
}

func countsOf[T any](uses []model.Use[T]) []finding.Finding {
	var found []finding.Finding
	for _, use := range uses {
		if use.Amount == "" || isCount(use.Amount) {
			continue
		}
		found = append(found, decode.Quantity.At(use.AmountAt, "%s: %q is not a whole number from 1 on", use.ID, use.Amount).
			WithMend("write %s: 2", use.ID))
	}
	return found
}

// isCount says whether a text is a whole number from 1, without leading zeros.
func isCount(text string) bool {
	n, err := strconv.Atoi(text)
	return err == nil && n > 0 && strconv.Itoa(n) == text
}
