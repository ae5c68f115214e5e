// Package lifting computes what people may lift by hand: the shop's limit for each of them, and the revised NIOSH lifting equation.
//
// # Decided where the format is silent
//
// `lift: { horizontal, vertical, travel, asymmetry, frequency, duration, coupling, to: { … } }`
// stands on a part, in the system of units of its `mass`. `frequency` is lifts per minute; unsaid
// it is a single lift, and `duration` up to 1 h. With `to`, travel is the difference of the
// heights and the worse end counts. There is no step form: where the hands are belongs to the part
// on its machine, and the people are the step's; NIOSH has nothing for lifts by several, so each
// is taken to have an equal share, and the working says so. `lifting-index` (advice, above 1.0) is
// ours; the hard stop stays `lift-over-limit`.
package lifting

// Share is what each person has of a mass that so many lift together, in the
// mass's own unit. Common practice, no source: that a mass is shared evenly is
// an assumption, which the page says; the one at the heavy end has more.
func Share(mass float64, people int) float64 { return mass / float64(max(people, 1)) }

// Within says whether so many people together may lift a mass by hand, with
// the shop's limit for each. A mass at the limit is within it.
func Within(mass, limit float64, people int) bool {
	return Share(mass, people) <= limit*(1+1e-9) // what converting a unit may lose
}

// PeopleFor is how many people a mass takes by hand, at least one. The limit
// must be above zero.
func PeopleFor(mass, limit float64) int {
	people := 1
	for !Within(mass, limit, people) && people < most {
		people++
	}
	return people
}

// most bounds PeopleFor: nobody lifts by hand with more.
const most = 100
