// Package electrical computes how long a charge stays behind, and how much it can do.
//
// The pure formulas take and give plain numbers in volts, ohms, farads,
// seconds and joules. Amounts with units enter in Store and leave in Wait.
//
// What is computed is the time that a resistor across a capacitor needs, and
// nothing else. It is a floor for the wait that the shop writes: the maker's
// wait goes before it, and a measurement goes before both.
package electrical

import "math"

// DischargeTime is the time, s, in which a capacitor discharges through a
// resistor from one voltage to another: t = R·C·ln(V0/V), from
// V = V0·e^(−t/RC). It is 0 where the voltage is at or below the aim already.
// All must be above zero. Source: R. Fitzpatrick, lecture notes 302L,
// University of Texas (the form of the equation was seen).
func DischargeTime(resistance, capacitance, from, to float64) float64 {
	return max(0, resistance*capacitance*math.Log(from/to))
}

// VoltageAfter is the voltage that is left after a time, s: DischargeTime
// turned round.
func VoltageAfter(resistance, capacitance, from, time float64) float64 {
	return from * math.Exp(-time/(resistance*capacitance))
}

// WithTolerance is a discharge time at the far end of both tolerances, which
// are shares: 0.2 is 20 %. The time goes with R and with C, so it grows by
// (1 + r)·(1 + c).
func WithTolerance(time, resistance, capacitance float64) float64 {
	return time * (1 + resistance) * (1 + capacitance)
}

// StoredEnergy is what a charged capacitor holds, J: E = ½·C·V². By definition.
func StoredEnergy(capacitance, voltage float64) float64 {
	return capacitance * voltage * voltage / 2
}

// Peak is the peak of an alternating voltage that is given as its effective
// value: √2 times it, for a sine. A capacitor behind a rectifier charges to it.
func Peak(effective float64) float64 { return math.Sqrt2 * effective }
