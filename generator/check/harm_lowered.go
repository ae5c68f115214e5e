package check

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var harmLowered = finding.Rule{
	Code:  "harm-lowered",
	Title: "A procedure that makes less of a hazard, and does not say why",
	Why:   "The register says what the hazard can do to a person. A procedure that says less, or drops a glove, needs a reason that the next reader can judge.",
	Mend:  "Write because: with the reason beside the override, or take the override out.",
}

func runHarmLowered(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, use := range p.Hazards {
		if use.To == nil || use.Over == nil || unread(p) || p.Lost("hazards.because") || strings.TrimSpace(use.Over.Because) != "" {
			continue
		}
		if less := lowered(use.To, use.Over); len(less) > 0 {
			found = append(found, harmLowered.At(use.At, "%s is made less of: %s", use.ID, finding.ListOf("", less)).
				WithMend("write because: with the reason, or take the override out").
				See(use.To.At, "the register's entry is here"))
		}
	}
	return found
}

// The words of harm and happens, the worst first.
var (
	harms   = []string{"death", "serious-injury", "minor-injury", "damage"}
	chances = []string{"will", "could"}
)

// lowered says what an override makes less of.
func lowered(h *model.Hazard, over *model.HazardOverride) []finding.Words {
	var less []finding.Words
	fell := func(field, from, to string, scale []string) {
		if to != "" && slices.Index(scale, to) > slices.Index(scale, from) {
			less = append(less, finding.Say("%s goes from %s to %s", field, from, to))
		}
	}
	if !h.Lost("harm") {
		fell("harm", h.Harm, over.Harm, harms)
	}
	if !h.Lost("happens") {
		fell("happens", h.Happens, over.Happens, chances)
	}
	for _, id := range dropped(h, over) {
		less = append(less, finding.Say("%s is not worn", id))
	}
	return less
}

// dropped are the things to wear that an override leaves out. One that could
// not be read may be any of them.
func dropped(h *model.Hazard, over *model.HazardOverride) []string {
	var ids []string
	for _, item := range h.Wear {
		worn := slices.ContainsFunc(over.Wear, func(r model.Ref[model.Tool]) bool { return r.ID == item.ID || r.To == nil })
		if over.WearSaid && !worn {
			ids = append(ids, item.ID)
		}
	}
	return ids
}
