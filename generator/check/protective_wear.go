package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// runProtectiveWear asks that what a hazard makes people wear is protective gear:
// the box and the kit show it with its sign.
func runProtectiveWear(c *Context) []finding.Finding {
	var found []finding.Finding
	look := func(items []model.Ref[model.Tool]) {
		for _, item := range items {
			if t := item.To; t != nil && !t.Lost("kind") && t.Kind != "ppe" {
				found = append(found, decode.WrongType.At(item.At, "wear names %s, which is a tool of kind %s; it takes kind ppe", item.ID, t.Kind).
					WithMend("write kind: ppe at the tool, or name what is worn").See(t.At, "the tool is here"))
			}
		}
	}
	for _, h := range c.Manual.Hazards {
		look(h.Wear)
	}
	for _, p := range c.Manual.Procedures {
		for _, use := range p.Hazards {
			if use.Over != nil {
				look(use.Over.Wear)
			}
		}
	}
	return found
}
