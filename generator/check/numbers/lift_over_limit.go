package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/lifting"
)

// LiftOverLimit is told at the act that takes the part off or puts it back.
var LiftOverLimit = finding.Rule{
	Code:  "lift-over-limit",
	Title: "A part that is too heavy for the people of the step",
	Why:   "A back that is strained once is never what it was, and a part that is dropped falls on feet.",
	Mend:  "Ask for more people in the step with [](people:2), or name lifting gear, a tool of kind lifting.",
}

// liftsOverLimit holds the masses of parts against the shop's limit for the
// people of the step, where no lifting gear is named or in place.
func liftsOverLimit(j *job) []finding.Finding {
	limit := j.manual.Shop.Limits.Lift
	if j.manual.Shop.Lost("limits.lift") || limit.Base() <= 0 {
		return nil
	}
	var found []finding.Finding
	for _, l := range j.lifts {
		people, known := l.step.Crew()
		if !known || l.geared() || lifting.Within(l.part.Mass.Base(), limit.Base(), people) {
			continue
		}
		found = append(found, overLimit(l, limit, people))
	}
	return found
}

// geared says that lifting gear is named or in place, or may be.
func (l lift) geared() bool {
	return l.tools.unresolved || len(fastening.OfKind(l.tools.all(), "lifting")) > 0
}

func overLimit(l lift, limit quantity.Quantity, people int) finding.Finding {
	need := lifting.PeopleFor(l.part.Mass.Base(), limit.Base())
	f := LiftOverLimit.At(l.link.At, "the %s is %s: too much for %s at %s each", l.part.Label(), l.part.Mass, persons(people), limit)
	if need > 4 {
		f = f.WithMend("name lifting gear in this step: [](tool:…)")
	} else {
		f = f.WithMend("ask for %s, [](people:%d), or name lifting gear", persons(need), need)
	}
	return f.See(l.part.At, "its mass is here")
}
