package check

import (
	"baybinder/generator/decode"
	"baybinder/generator/finding"
	"baybinder/generator/quantity"
)

// runTorqueRange asks that the range of a torque wrench is one of torques; the
// range of another tool may be of anything.
func runTorqueRange(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, t := range c.Manual.Tools {
		said := t.Range != quantity.Limit{}
		if t.Kind != "torque-wrench" || !said || t.Unread {
			continue
		}
		if t.Range.Kind != quantity.Between || t.Range.Unit.Dimension() != quantity.Torque {
			found = append(found, decode.Quantity.At(t.At, "the range of %s is %s, which is no range of torques", t.ID, t.Range).
				WithMend("write both ends, such as range: %s", quantity.Torque.RangeExample()))
		}
	}
	return found
}
