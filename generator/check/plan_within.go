package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/derive/training"
	"baybinder/generator/read/decode"
)

// runPlanWithin judges what a plan says of its time: a date that cannot be
// worked out would never be overdue.
func runPlanWithin(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, plan := range c.Manual.Plans {
		if _, ok := training.Within(plan); !ok && plan.Within != "" {
			found = append(found, decode.Quantity.At(plan.FieldAt("within"), "within: %s is not an amount of calendar time", plan.Within).
				WithMend("write 14 days, 6 weeks or 12 months"))
		}
	}
	return found
}
