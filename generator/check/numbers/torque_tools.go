package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// NoTorqueTool and ToolOutOfRange are told at the act that tightens.
var (
	NoTorqueTool = finding.Rule{
		Code:  "no-torque-tool",
		Title: "A torque, and no torque wrench",
		Why:   "A torque that is written and cannot be set is felt by the arm instead.",
		Mend:  "Name the torque wrench in the step, or list it under tools.",
	}
	ToolOutOfRange = finding.Rule{
		Code:  "tool-out-of-range",
		Title: "A torque that no wrench here is made for",
		Why:   "A torque wrench is used from 20 % of its maximum up to it; below that it clicks when it likes, and beyond its ends it cannot be set.",
		Mend:  "Name a wrench whose range holds the torque at or above 20 % of its maximum. Behind an adapter it is the setting that must be in the range.",
	}
)

// noTorqueTools looks for torques that nothing here sets.
func noTorqueTools(j *job) []finding.Finding {
	return byLink(j.torqued(func(t turn, wrenches []*model.Tool) bool { return len(wrenches) == 0 }), noTorqueTool)
}

// toolsOutOfRange looks for torques for which no wrench here is made.
func toolsOutOfRange(j *job) []finding.Finding {
	return byLink(j.torqued(func(t turn, wrenches []*model.Tool) bool {
		return len(wrenches) > 0 && len(j.uncovered(t, wrenches)) > 0
	}), j.outOfRange)
}

// torqued are the turns to a torque of which it is known what wrenches are
// there, and something is so.
func (j *job) torqued(so func(t turn, wrenches []*model.Tool) bool) []turn {
	var out []turn
	for _, t := range j.turns {
		if len(torquesOf(t)) == 0 {
			continue
		}
		if wrenches, known := j.wrenches(t.tools); known && so(t, wrenches) {
			out = append(out, t)
		}
	}
	return out
}

// wrenches are the torque wrenches for a turn: those that the step names or
// that were left in place, else those that are listed, and their substitutes.
func (j *job) wrenches(box toolbox) (tools []*model.Tool, known bool) {
	return j.atHand(box).Wrenches(), j.chosen(box, len(fastening.OfKind(box.all(), "torque-wrench")) > 0)
}

// torquesOf are the torques that a turn asks for.
func torquesOf(t turn) []quantity.Quantity {
	if !t.tightens {
		return nil
	}
	return fastening.Torques(t.asked())
}

func ofDimension(list []quantity.Quantity, d quantity.Dimension) []quantity.Quantity {
	var out []quantity.Quantity
	for _, q := range list {
		if q.Unit.Dimension() == d {
			out = append(out, q)
		}
	}
	return out
}

// uncovered are the torques of a turn that none of the wrenches is made for.
func (j *job) uncovered(t turn, wrenches []*model.Tool) []quantity.Quantity {
	drivers := j.atHand(t.tools).Drivers()
	return slices.DeleteFunc(slices.Clone(torquesOf(t)), func(torque quantity.Quantity) bool {
		return len(fastening.Ways(t.fastener, torque, wrenches, drivers)) > 0
	})
}

func noTorqueTool(at *model.Link, bad []turn) finding.Finding {
	var each []finding.Words
	for _, t := range bad {
		each = append(each, tightenedTo(t, torquesOf(t)))
	}
	return NoTorqueTool.At(at.At, "%s, and no torque wrench is named here or listed", listOf(each)).
		WithMend("name the torque wrench in this step: [](tool:…)")
}

func (j *job) outOfRange(at *model.Link, bad []turn) finding.Finding {
	wrenches, _ := j.wrenches(bad[0].tools)
	var each []finding.Words
	for _, t := range bad {
		each = append(each, tightenedTo(t, j.uncovered(t, wrenches)))
	}
	f := ToolOutOfRange.At(at.At, "%s; %s", listOf(each), j.reaches(bad[0], wrenches)).
		WithMend("name a wrench whose range holds the torque, at or above 20 %% of its maximum")
	for _, w := range wrenches {
		f = f.See(w.At, "the range of the %s is here", w.Label())
	}
	return f
}

// tightenedTo says what a fastener is tightened to.
func tightenedTo(t turn, torques []quantity.Quantity) finding.Words {
	return finding.Say("the %s is tightened to %s", t.fastener.Label(), inWords(torques))
}

// inWords joins amounts, "25 N·m, 40 N·m and 48 N·m".
func inWords(list []quantity.Quantity) finding.List { return listOf(list) }

// floorDigits is enough for a fifth of any typed maximum: rounded, the floor would
// be at a torque that is below it.
const floorDigits = 6

// reaches says for what the wrenches are used, in their own unit.
func (j *job) reaches(t turn, wrenches []*model.Tool) finding.Words {
	var each []finding.Words
	for _, tool := range wrenches {
		w, _ := fastening.WrenchOf(tool.Range)
		floor := quantity.Of(w.Floor(), quantity.NewtonMetre, floorDigits).In(tool.Range.Unit)
		each = append(each, finding.Say("the %s is used from %s to %s", tool.Label(), short(floor), tool.Range.Numbers()[1]))
	}
	if j.adapted(t) {
		return finding.Say("%s, and an adapter lowers its setting", listOf(each))
	}
	return finding.Say("%s", listOf(each))
}

// short is an amount without zeros behind the decimal point.
func short(q quantity.Quantity) string {
	number := q.Number()
	if strings.Contains(number, ".") {
		number = strings.TrimRight(strings.TrimRight(number, "0"), ".")
	}
	return number + " " + q.Unit.Symbol()
}

// adapted says whether a tool that fits adds to the wrench's length.
func (j *job) adapted(t turn) bool {
	drivers, _ := j.drivers(t.tools)
	return slices.ContainsFunc(j.fitting(drivers, t), func(d *model.Tool) bool { return !d.Adds.IsZero() })
}
