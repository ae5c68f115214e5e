package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/read/decode"
)

// runNear asks that what is near a measure's limit is a part of it, and that a
// time to measure again is the time after such a reading.
func runNear(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Holds {
		if h.Unread || h.Kind != "measure" || h.Limit.IsZero() || h.Near.IsZero() {
			continue
		}
		if !h.Limit.Contains(h.Near) {
			found = append(found, decode.Quantity.At(h.FieldAt("near"), "near: %s is not within the limit, %s: a reading in it must pass", h.Near, h.Limit).
				WithMend("write the part of the limit that is too near its end, with both its ends"))
		}
		if !h.AgainIn.IsZero() && !isTime(h.AgainIn) {
			found = append(found, decode.Quantity.At(h.FieldAt("again-in"), "again-in: %s is no time", h.AgainIn).
				WithMend("write a duration or a calendar time, such as 3 months"))
		}
	}
	return found
}

func isTime(q quantity.Quantity) bool { return q.Fits(quantity.Duration) || q.Fits(quantity.Calendar) }

// runAgainIn asks for the near: that an again-in: goes with.
func runAgainIn(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Holds {
		if !h.Unread && !h.Lost("near") && !h.AgainIn.IsZero() && h.Near.IsZero() {
			found = append(found, decode.MissingField.At(h.At, "%s is measured again in %s, and nothing says after which readings", h.ID, h.AgainIn).
				WithMend("write near: with the part of the limit that is too near its end"))
		}
	}
	return found
}
