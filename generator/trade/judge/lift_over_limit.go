package judge

import (
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/quantity"
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
func liftsOverLimit(m *manual.Manual, j *job) []finding.Finding {
	limit := m.Shop.Limits.Lift
	if m.Shop.Unread || limit.Base() <= 0 {
		return nil
	}
	var found []finding.Finding
	for _, l := range j.lifts {
		people, known := peopleOf(l.step)
		geared := l.tools.murky || len(ofKind(l.tools.all(), []string{"lifting"})) > 0
		if !known || geared || l.part.Unread || lifting.Within(l.part.Mass.Base(), limit.Base(), people) {
			continue
		}
		found = append(found, overLimit(l, limit, people))
	}
	return found
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

// peopleOf is how many people a step has: its own number, else that of its
// phase's first paragraph, else as many as a procedure that it performs takes,
// and one at least. It is false where a number could not be read.
func peopleOf(s *manual.Step) (people int, known bool) {
	if s.People > 0 {
		return s.People, true
	}
	people, known = peopleIn(s.Links)
	if s.Phase.Lead == nil {
		return people, known
	}
	lead, read := peopleIn(s.Phase.Lead.Links)
	return max(people, lead), known && read
}

// peopleIn is the most that links ask for, and one at least.
func peopleIn(links []*manual.Link) (people int, known bool) {
	people, known = 1, true
	for _, link := range links {
		if link.Is("people") {
			people, known = max(people, int(link.Amount.Value)), known && !link.Bad
		}
		if callee, is := link.To.(*manual.Procedure); is && link.Kind.Act == manual.Call {
			people = max(people, callee.People)
		}
	}
	return people, known
}
