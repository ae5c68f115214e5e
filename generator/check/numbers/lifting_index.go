package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/trade/lifting"
	"baybinder/generator/trade/working"
)

// LiftingIndex is told at the act that takes the part off or puts it back. It
// is advice: the limit is one that NIOSH recommends, the measures are taken by
// eye, and several people are none of its own. What must not be is the error
// lift-over-limit.
var LiftingIndex = finding.Rule{
	Code:  "lifting-index",
	Level: finding.Advice,
	Ours:  true,
	Title: "A lift above the recommended weight limit",
	Why:   "Far in front of the body, low down, turned or often, less than the shop's limit strains a back. The revised NIOSH lifting equation says how much less, for one person.",
	Mend:  "Ask for more people in the step with [](people:2), name lifting gear, bring the part nearer to the body or to the height of the knuckles, or mend the part's lift: in the machine's file.",
}

// liftingIndices looks for lifts by hand whose lifting index is above 1 for the
// people of the step. What is over the shop's own limit is told there.
func liftingIndices(j *job) []finding.Finding {
	var found []finding.Finding
	for _, l := range j.lifts {
		people, known := l.step.Crew()
		if !known || l.geared() || l.part.Lost("lift", "mass") || len(outOfBounds(l.part)) > 0 || overShopLimit(j.manual, l, people) {
			continue
		}
		if a, ok := lifting.OfPart(l.part, people); ok && a.Over() {
			found = append(found, indexOver(l, a, people))
		}
	}
	return found
}

// outOfBounds are what is wrong with the measures of a part's lift: nothing is
// built on them.
func outOfBounds(p *model.Part) []finding.Finding {
	if p.Lift == nil {
		return nil
	}
	return plausibleLift(p)
}

func overShopLimit(m *model.Manual, l lift, people int) bool {
	limit := m.Shop.Limits.Lift
	return limit.Base() > 0 && !lifting.Within(l.part.Mass.Base(), limit.Base(), people)
}

func indexOver(l lift, a lifting.Assessment, people int) finding.Finding {
	how := worked(func(in *words.Worked) working.Working { return a.Explain(&in.Lift) })
	f := LiftingIndex.At(l.link.At, "the %s is %s for %s: a lifting index of %s, where at most 1 is recommended", l.part.Label(), l.part.Mass, persons(people), a.IndexText())
	for more := 2; more <= 4; more++ { // as few as now are over as well
		if less, _ := lifting.OfPart(l.part, more); !less.Over() {
			f = f.WithMend("ask for %s, [](people:%d), name lifting gear, or bring it nearer; %s", persons(more), more, how)
			break
		}
	}
	if f.Mend == "" {
		f = f.WithMend("name lifting gear in this step: [](tool:…), or bring it nearer; %s", how)
	}
	return f.See(l.part.At, "its mass and lift are here")
}
