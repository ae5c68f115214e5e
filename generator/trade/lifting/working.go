package lifting

import (
	"fmt"
	"math"
	"strconv"

	"baybinder/generator/language/words"
	"baybinder/generator/trade/working"
)

// Explain is the lifting index of a load that one person lifts, with its
// working. The load is in the lift's own unit. The error is a *refused.Error.
func (l Lift) Explain(say *words.Lift, load float64) (working.Working, error) {
	if err := l.refuse(); err != nil {
		return working.Working{}, err
	}
	return l.explain(say, load, 1), nil
}

// explain is the lifting index of a mass that so many people lift, with its
// working: the multipliers with two decimals, the limit and the index with one,
// as NIOSH's worksheets have them. The lift must be one that is not refused.
func (l Lift) explain(say *words.Lift, mass float64, people int) working.Working {
	exact, _ := l.Multipliers()
	m := exact.Rounded()
	unit := systems[l.System].mass
	load := Share(mass, people)
	w := working.Working{
		Formula: "LI = L/(LC·HM·VM·DM·AM·FM·CM)",
		Put:     fmt.Sprintf("%s %s/(%s %s · %s · %s · %s · %s · %s · %s)", short(load), unit, short(m.LC), unit, two(m.HM), two(m.VM), two(m.DM), two(m.AM), two(m.FM), two(m.CM)),
		Result:  indexWords(say, load, m.RWL(), unit),
		Terms:   l.terms(say, load, m),
		Assumes: []string{
			say.Hands, say.Above,
		},
		Source: say.Source,
	}
	if people > 1 {
		w.Terms[0].Words = fmt.Sprintf(say.LOfSeveral, short(mass)+" "+unit, people)
		w.Assumes = append(w.Assumes, say.Several)
	}
	return w
}

func indexWords(say *words.Lift, load, rwl float64, unit string) string {
	if rwl <= 0 {
		return say.None
	}
	return fmt.Sprintf(say.Index, Index(load, rwl), rwl, unit)
}

func (l Lift) terms(say *words.Lift, load float64, m Multipliers) []working.Term {
	c := systems[l.System]
	length := func(words string, x float64) string { return fmt.Sprintf(words, short(x)+" "+c.length) }
	often := fmt.Sprintf(say.Minute, short(math.Max(l.Frequency, frequencies[0][0])))
	return []working.Term{
		{Sign: "L", Words: say.L, Value: short(load) + " " + c.mass},
		{Sign: "LC", Words: say.LC, Value: short(m.LC) + " " + c.mass},
		{Sign: "HM", Words: length(say.HM, l.H), Value: two(m.HM)},
		{Sign: "VM", Words: length(say.VM, l.V), Value: two(m.VM)},
		{Sign: "DM", Words: length(say.DM, l.D), Value: two(m.DM)},
		{Sign: "AM", Words: fmt.Sprintf(say.AM, short(l.A)), Value: two(m.AM)},
		{Sign: "FM", Words: fmt.Sprintf(say.FM, often, say.Hours[l.Duration.words()]), Value: two(m.FM)},
		{Sign: "CM", Words: fmt.Sprintf(say.CM, say.Holds[l.Coupling.words()]), Value: two(m.CM)},
	}
}

func two(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// short is a number with up to two decimals, no zeros at its end.
func short(x float64) string {
	return strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64)
}
