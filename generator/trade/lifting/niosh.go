package lifting

import (
	"fmt"
	"math"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/domain"
)

// System is a system of units. The two are not mixed: the load constant is
// 23 kg or 51 lb, and 51 lb are 23.13 kg.
type System uint8

// Metric measures in kg and cm, US in lb and in.
const (
	Metric System = iota
	US
)

// constants of the equation in a system of units.
type constants struct {
	load                  float64 // LC
	near, far             float64 // H below which it counts as this, above which HM is 0
	slope, knuckles, top  float64 // VM: per unit away from knuckle height; above which it is 0
	base, least, farthest float64 // DM: base/D is added; D below which it counts as this, above which DM is 0
	waist                 float64 // V from which a fair hold counts in full, and FM has its own column
	mass, length, lift    string
	unit, unitOfLength    quantity.Unit
	metre                 float64 // m in one of its lengths
}

var systems = [...]constants{
	Metric: {23, 25, 63, 0.003, 75, 175, 4.5, 25, 175, 75, "kg", "cm", "lifts/min", quantity.Kilogram, quantity.Centimetre, 0.01},
	US:     {51, 10, 25, 0.0075, 30, 70, 1.8, 10, 70, 30, "lb", "in", "lifts/min", quantity.Pound, quantity.Inch, 0.0254},
}

// Coupling is how well the hands hold.
type Coupling uint8

// A good hold has handles, a fair one bends the fingers by 90°, a poor one
// does not.
const (
	Good Coupling = iota
	Fair
	Poor
)

func (c Coupling) words() string { return [...]string{"good", "fair", "poor"}[min(c, Poor)] }

// Lift is one lifting task, at one end of the lift: the origin, or the
// destination where the load must be put down with control.
type Lift struct {
	System    System
	H         float64  // hands in front of the middle of the ankles, cm or in
	V         float64  // hands above the floor at this end, cm or in
	Origin    float64  // hands above the floor at the origin; 0 on the floor
	D         float64  // travel up or down, cm or in
	A         float64  // turn of the body out of straight ahead, degrees
	Frequency float64  // lifts per minute, mean over 15 minutes
	Duration  Duration // of lifting in the shift
	Coupling  Coupling
}

// Multipliers are the factors of the equation. Each is 1 at the best and 0
// where the task is outside what people do by hand.
type Multipliers struct {
	LC, HM, VM, DM, AM, FM, CM float64
}

// RWL is the recommended weight limit, kg or lb: LC·HM·VM·DM·AM·FM·CM.
// Source: NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting
// Equation, rev. 9/2021, pp. 1 and 7.
func (m Multipliers) RWL() float64 { return m.LC * m.HM * m.VM * m.DM * m.AM * m.FM * m.CM }

// Rounded are the multipliers with two decimals, half up, as the manual's
// worksheets multiply them (p. 29).
func (m Multipliers) Rounded() Multipliers {
	round := func(x float64) float64 { return math.Floor(x*100+0.5+1e-9) / 100 }
	return Multipliers{m.LC, round(m.HM), round(m.VM), round(m.DM), round(m.AM), round(m.FM), round(m.CM)}
}

// Index is the lifting index: the load over the recommended weight limit, both
// in one unit. Above 1 the risk rises for some people, above 3 for nearly all
// (p. 20). It is infinite where nothing should be lifted at all.
func Index(load, rwl float64) float64 { return load / rwl }

// Multipliers computes the factors of a lift. The error is a *refused.Error: a
// measure that cannot be, such as a height below the floor.
//
// The equation is not for lifting with one hand, seated or kneeling, in a
// narrow space, for more than 8 h, for what moves inside, for carrying,
// pushing, shovels and barrows, on slippery floors or in great heat (p. 6).
func (l Lift) Multipliers() (Multipliers, error) {
	if err := l.refuse(); err != nil {
		return Multipliers{}, err
	}
	c := systems[l.System]
	return Multipliers{
		LC: c.load,
		HM: horizontal(c, l.H),
		VM: vertical(c, l.V),
		DM: distance(c, l.D),
		AM: asymmetry(l.A),
		FM: Frequency(l.Frequency, l.Duration, l.Origin >= c.waist),
		CM: l.Coupling.multiplier(l.V >= c.waist),
	}, nil
}

// horizontal is HM = 25/H cm, 10/H in (pp. 8 to 15, as the others).
func horizontal(c constants, h float64) float64 {
	if h > c.far {
		return 0
	}
	return c.near / math.Max(h, c.near)
}

// vertical is VM = 1 − 0.003·|V − 75| cm, 1 − 0.0075·|V − 30| in.
func vertical(c constants, v float64) float64 {
	if v > c.top {
		return 0
	}
	return 1 - c.slope*math.Abs(v-c.knuckles)
}

// distance is DM = 0.82 + 4.5/D cm, 0.82 + 1.8/D in.
func distance(c constants, d float64) float64 {
	if d > c.farthest {
		return 0
	}
	return 0.82 + c.base/math.Max(d, c.least)
}

// asymmetry is AM = 1 − 0.0032·A, A in degrees.
func asymmetry(a float64) float64 {
	if a > 135 {
		return 0
	}
	return 1 - 0.0032*a
}

// multiplier is CM of table 7: only a fair hold depends on the height.
func (c Coupling) multiplier(waistHigh bool) float64 {
	switch {
	case c == Poor:
		return 0.90
	case c == Fair && !waistHigh:
		return 0.95
	}
	return 1
}

func (l Lift) refuse() error {
	if int(l.System) >= len(systems) || l.Coupling > Poor || l.Duration > Long {
		return &domain.Error{Given: fmt.Sprint(l), Why: finding.Say("is no lift of the equation"), Write: finding.Say("give metric or US, a hold of good, fair or poor, and a duration of up to 8 h")}
	}
	for _, m := range []struct {
		sign  string
		value float64
		most  float64
	}{{"H", l.H, 1000}, {"V", l.V, 1000}, {"V at the origin", l.Origin, 1000}, {"D", l.D, 1000}, {"A", l.A, 180}, {"F", l.Frequency, 100}} {
		if !(m.value >= 0 && m.value <= m.most) {
			return &domain.Error{Given: fmt.Sprintf("%s = %g", m.sign, m.value), Why: finding.Say("cannot be"), Write: finding.Say("give %s between 0 and %g", m.sign, m.most)}
		}
	}
	return nil
}
