package lifting

import (
	"cmp"
	"fmt"
	"math"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/trade/working"
)

// Assessment is what the revised NIOSH equation says of a part and the people
// who lift it. Each of them is taken to have an equal share of the mass: the
// equation itself is for one person, and does not cover lifts by several.
type Assessment struct {
	Limit quantity.Quantity // the recommended weight limit, for each person
	Index float64           // each one's share over Limit; infinite where nothing should be lifted

	mass    float64 // in the unit of Limit
	people  int
	worse   Lift
	at      int // which end it is
	several bool
}

// IndexText is the index as NIOSH's worksheets have it, with one decimal.
func (a Assessment) IndexText() string {
	if math.IsInf(a.Index, 1) {
		return "∞"
	}
	return fmt.Sprintf("%.1f", a.Index)
}

// Over says that the index, as it is shown, is above 1.
func (a Assessment) Over() bool { return math.Round(a.Index*10) > 10 }

// OfPart assesses a part that so many people lift. Where both ends of the lift
// are given, the worse one counts, and how often it is lifted counts as from
// the lower one: the part is taken off and put back. It is false where the part
// has no mass or no lift, or one with measures that cannot be.
func OfPart(p *model.Part, people int) (Assessment, bool) {
	if p.Lift == nil || p.Mass.Base() <= 0 {
		return Assessment{}, false
	}
	system := SystemOf(p.Mass)
	unit := systems[system].unit
	mass := p.Mass.In(unit).Value
	var worst Lift
	at, least := 0, math.Inf(1)
	for i, l := range lifts(p.Lift, system) {
		m, err := l.Multipliers()
		if err != nil {
			return Assessment{}, false
		}
		if rwl := m.Rounded().RWL(); rwl < least {
			worst, at, least = l, i, rwl
		}
	}
	a := Assessment{Limit: limitOf(least, unit), Index: Index(Share(mass, people), least)}
	a.mass, a.people, a.worse, a.at, a.several = mass, people, worst, at, p.Lift.To != nil
	return a, true
}

// Explain is the assessment with its working.
func (a Assessment) Explain(say *words.Lift) working.Working {
	w := a.worse.explain(say, a.mass, a.people)
	if a.several {
		end := [...]string{say.AtMachine, say.WhereItGoes}[a.at]
		w.Assumes = append([]string{fmt.Sprintf(say.Worse, end)}, w.Assumes...)
	}
	return w
}

// limitOf is a weight limit with one decimal, as NIOSH's worksheets have it; one of
// less than that has two digits.
func limitOf(x float64, unit quantity.Unit) quantity.Quantity {
	tenths := math.Round(x*10) / 10
	switch {
	case tenths >= 10:
		return quantity.Of(tenths, unit, 3)
	case tenths >= 1:
		return quantity.Of(tenths, unit, 2)
	}
	return quantity.Of(x, unit, 2)
}

// SystemOf is the system of units in which a mass is written, which is that of
// the whole equation.
func SystemOf(mass quantity.Quantity) System {
	if mass.Unit == quantity.Pound || mass.Unit == quantity.Ounce {
		return US
	}
	return Metric
}

// lifts are the ends of a part's lift: at the machine, and the other where it
// is given.
func lifts(l *model.Lift, s System) []Lift {
	c := systems[s]
	length := func(q quantity.Quantity) float64 { return math.Round(q.Base()/c.metre*1e6) / 1e6 }
	hold := map[string]Coupling{"good": Good, "fair": Fair, "poor": Poor}
	one := Lift{
		System: s, H: length(l.Horizontal), V: length(l.Vertical), Origin: length(l.Vertical), D: length(l.Travel), A: l.Asymmetry.Base(),
		Frequency: l.Frequency.Value, Duration: durationOf(l.Duration.Base() / 60), Coupling: hold[l.Coupling],
	}
	if l.To == nil {
		return []Lift{one}
	}
	other := one
	other.H, other.V, other.A = length(l.To.Horizontal), length(l.To.Vertical), l.To.Asymmetry.Base()
	travel, lower := math.Abs(one.V-other.V), math.Min(one.V, other.V)
	one.D, other.D, one.Origin, other.Origin = travel, travel, lower, lower
	return []Lift{one, other}
}

// Bound is a limit of the equation on one measure of a lift.
type Bound struct {
	Field       string // "horizontal", "to: vertical"
	Given       quantity.Quantity
	Least, Most quantity.Quantity // Least is zero where only what is below nothing is wrong
}

// Below says that a measure is less than it can be, or than the equation takes.
func (b Bound) Below() bool { return b.Given.Base() < b.Least.Base()*(1-1e-9) }

// Above says that a measure is where the equation has nothing lifted.
func (b Bound) Above() bool { return b.Given.Base() > b.Most.Base()*(1+1e-9) }

// Say writes a measure with its unit; how often is in lifts a minute.
func (b Bound) Say(q quantity.Quantity) finding.Words {
	if b.Field == "frequency" {
		return finding.Say("%s lifts a minute", q.Number())
	}
	return finding.Say("%s", q)
}

// Bounds are the measures of a part's lift, each with the limits of NIOSH
// 94-110, pp. 8 to 15, in the units of the part's mass.
func Bounds(p *model.Part) []Bound {
	c, l := systems[SystemOf(p.Mass)], p.Lift
	long := func(x float64) quantity.Quantity { return quantity.Of(x, c.unitOfLength, 2+int(x/100)) }
	out := []Bound{{Field: "travel", Given: l.Travel, Most: long(c.farthest)}}
	for _, end := range []struct {
		before string
		at     *model.LiftEnd
	}{{"", &l.LiftEnd}, {"to: ", l.To}} {
		if end.at != nil {
			out = append(out,
				Bound{end.before + "horizontal", end.at.Horizontal, long(c.near), long(c.far)},
				Bound{end.before + "vertical", end.at.Vertical, quantity.Quantity{}, long(c.top)},
				Bound{end.before + "asymmetry", end.at.Asymmetry, quantity.Quantity{}, quantity.Of(135, quantity.Degree, 3)})
		}
	}
	return append(out,
		Bound{"frequency", l.Frequency, quantity.Quantity{}, quantity.Of(15, cmp.Or(l.Frequency.Unit, quantity.Each), 2)},
		Bound{"duration", l.Duration, quantity.Quantity{}, quantity.Of(8, quantity.Hour, 1)})
}
