package numbers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// NoAngleTool is told at the act that tightens.
var NoAngleTool = finding.Rule{
	Code:  "no-angle-tool",
	Title: "A stage by angle, and no angle gauge",
	Why:   "An angle by eye is off by more than the stage allows, and the bolt is stretched for good or hardly at all.",
	Mend:  "Name the angle gauge in the step, or list it under tools. Its kind in the register is angle-gauge.",
}

// angleTools looks whether each angle can be measured with what is there.
func angleTools(j *job) []finding.Finding {
	var bad []turn
	for _, t := range j.turns {
		if !t.tightens || len(fastening.Angles(t.asked())) == 0 {
			continue
		}
		if gauges, known := j.gauges(t.tools); known && len(gauges) == 0 {
			bad = append(bad, t)
		}
	}
	return byLink(bad, noAngleTool)
}

// gauges are the angle gauges that are at hand or listed, and tools that may
// stand in for what is.
func (j *job) gauges(box toolbox) ([]*model.Tool, bool) {
	all := fastening.WithSubstitutes(slices.Concat(box.all(), j.tools))
	return fastening.OfKind(all, "angle-gauge"), j.toolsKnown && !box.unresolved
}

func noAngleTool(at *model.Link, bad []turn) finding.Finding {
	var each []finding.Words
	for _, t := range bad {
		each = append(each, finding.Say("the %s is turned by %s", t.fastener.Label(), inWords(fastening.Angles(t.asked()))))
	}
	return NoAngleTool.At(at.At, "%s, and no angle gauge is named here or listed", listOf(each)).
		WithMend("name the angle gauge in this step: [](tool:…)")
}
