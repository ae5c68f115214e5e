package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var hazardIncomplete = finding.Rule{
	Code:  "hazard-incomplete",
	Title: "A hazard that says only half of what it must",
	Why:   "A caution box says what the danger is, what it does to you and how to avoid it. Without one of the three it is a scare and no help.",
	Mend:  "Write nature:, consequence: and avoid: in the hazard's entry.",
}

func runHazardIncomplete(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Hazards {
		if missing := missingOfHazard(h); len(missing) > 0 {
			found = append(found, hazardIncomplete.At(h.At, "%s has no %s", h.ID, finding.ListOf(" nor ", missing)).
				WithMend("write %s", toWrite(missing)))
		}
	}
	return found
}

// toWrite are fields as they are to be written.
func toWrite(fields []string) finding.List {
	var list []string
	for _, f := range fields {
		list = append(list, f+": …")
	}
	return finding.ListOf(" and ", list)
}

func missingOfHazard(h *model.Hazard) []string {
	var missing []string
	for _, part := range []struct {
		name  string
		texts []string
	}{{"nature", []string{h.Nature}}, {"consequence", []string{h.Consequence}}, {"avoid", h.Avoid}} {
		if strings.TrimSpace(strings.Join(part.texts, "")) == "" && !h.Lost(part.name) {
			missing = append(missing, part.name)
		}
	}
	return missing
}
