package lifting

import (
	"fmt"
	"strconv"

	"baybinder/generator/trade/working"
)

// Explain is the lifting index of a load with its working: the multipliers with
// two decimals, the limit and the index with one, as NIOSH's worksheets have
// them. The load is in the lift's own unit. The error is a *refused.Error.
func (l Lift) Explain(load float64) (working.Working, error) {
	exact, err := l.Multipliers()
	if err != nil {
		return working.Working{}, err
	}
	m := exact.Rounded()
	unit := systems[l.System].mass
	return working.Working{
		Formula: "LI = L/(LC·HM·VM·DM·AM·FM·CM)",
		Put:     fmt.Sprintf("%s %s/(%s %s · %s · %s · %s · %s · %s · %s)", short(load), unit, short(m.LC), unit, two(m.HM), two(m.VM), two(m.DM), two(m.AM), two(m.FM), two(m.CM)),
		Result:  indexWords(load, m.RWL(), unit),
		Terms:   l.terms(load, m),
		Assumes: []string{
			"Two hands, standing, room to move, a dry floor, and a load that keeps still.",
			"An index above 1 is a strain for some people, above 3 for nearly all.",
		},
		Source: "NIOSH 94-110, rev. 9/2021",
	}, nil
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
		{Sign: "FM", Words: "how often, F = " + short(l.Frequency) + " " + c.lift, Value: two(m.FM)},
		{Sign: "CM", Words: "hold of the hands", Value: two(m.CM)},
	}
}

func two(x float64) string   { return strconv.FormatFloat(x, 'f', 2, 64) }
func short(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
