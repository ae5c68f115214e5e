package lifting

import (
	"fmt"
	"math"
	"strconv"

	"baybinder/generator/trade/working"
)

// Explain is the lifting index of a load that one person lifts, with its
// working. The load is in the lift's own unit. The error is a *refused.Error.
func (l Lift) Explain(load float64) (working.Working, error) {
	if err := l.refuse(); err != nil {
		return working.Working{}, err
	}
	return l.explain(load, 1), nil
}

// explain is the lifting index of a mass that so many people lift, with its
// working: the multipliers with two decimals, the limit and the index with one,
// as NIOSH's worksheets have them. The lift must be one that is not refused.
func (l Lift) explain(mass float64, people int) working.Working {
	exact, _ := l.Multipliers()
	m := exact.Rounded()
	unit := systems[l.System].mass
	load := Share(mass, people)
	w := working.Working{
		Formula: "LI = L/(LC·HM·VM·DM·AM·FM·CM)",
		Put:     fmt.Sprintf("%s %s/(%s %s · %s · %s · %s · %s · %s · %s)", short(load), unit, short(m.LC), unit, two(m.HM), two(m.VM), two(m.DM), two(m.AM), two(m.FM), two(m.CM)),
		Result:  indexWords(load, m.RWL(), unit),
		Terms:   l.terms(load, m),
		Assumes: []string{
			"Two hands, standing, room to move, a dry floor, and a load that keeps still.",
			"An index above 1 is a strain for some people, above 3 for nearly all.",
		},
		Source: "NIOSH 94-110, rev. 9/2021",
	}
	if people > 1 {
		w.Terms[0].Words = fmt.Sprintf("load: of %s %s for %d people, each has", short(mass), unit, people)
		w.Assumes = append(w.Assumes, "The equation is for one person; NIOSH has none for several. That all have an equal share is assumed here: the one at the heavy end has more.")
	}
	return w
}

func indexWords(load, rwl float64, unit string) string {
	if rwl <= 0 {
		return "none: this is not lifted by hand"
	}
	return fmt.Sprintf("%.1f, with a limit of %.1f %s", Index(load, rwl), rwl, unit)
}

func (l Lift) terms(load float64, m Multipliers) []working.Term {
	c := systems[l.System]
	return []working.Term{
		{Sign: "L", Words: "load", Value: short(load) + " " + c.mass},
		{Sign: "LC", Words: "what may be lifted at the best", Value: short(m.LC) + " " + c.mass},
		{Sign: "HM", Words: "hands in front of the ankles, H = " + short(l.H) + " " + c.length, Value: two(m.HM)},
		{Sign: "VM", Words: "hands above the floor, V = " + short(l.V) + " " + c.length, Value: two(m.VM)},
		{Sign: "DM", Words: "travel, D = " + short(l.D) + " " + c.length, Value: two(m.DM)},
		{Sign: "AM", Words: "turn of the body, A = " + short(l.A) + "°", Value: two(m.AM)},
		{Sign: "FM", Words: "how often, F = " + short(math.Max(l.Frequency, frequencies[0][0])) + " " + c.lift + ", for " + l.Duration.words() + " in a shift", Value: two(m.FM)},
		{Sign: "CM", Words: "hold of the hands, " + l.Coupling.words(), Value: two(m.CM)},
	}
}

func two(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// short is a number with up to two decimals, no zeros at its end.
func short(x float64) string {
	return strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64)
}
