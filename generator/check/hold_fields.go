package check

import (
	"strings"

	"baybinder/generator/decode"
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/quantity"
)

// runHoldFields asks for what a hold of its kind cannot do without.
func runHoldFields(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Holds {
		if missing := missingOfHold(h); len(missing) > 0 && !h.Unread {
			found = append(found, decode.MissingField.At(h.At, "%s is a hold of kind %s and has no %s", h.ID, h.Kind, strings.Join(missing, ", no ")).
				WithMend("write %s: …", strings.Join(missing, ": … and ")))
		}
	}
	return found
}

func missingOfHold(h *manual.Hold) []string {
	var missing []string
	need := func(name string, there bool) {
		if !there {
			missing = append(missing, name)
		}
	}
	switch h.Kind {
	case "wait":
		need("for", h.For != quantity.Quantity{})
	case "measure":
		need("what", h.What != "")
		need("limit", h.Limit != quantity.Limit{})
	case "look", "note":
		need("what", h.What != "")
	case "sign", "check", "witness":
		need("by", h.By.ID != "")
	case "ask":
		need("answers", len(h.Answers) > 0)
	}
	return missing
}
