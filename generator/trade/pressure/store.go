package pressure

import (
	"fmt"

	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/working"
)

// Store is gas under pressure: in a vessel, or over the fluid of an
// accumulator, which has a precharge.
type Store struct {
	Volume    quantity.Quantity // that the gas fills; of an accumulator with the fluid out
	Pressure  quantity.Quantity // as its gauge says, before it is let go
	Precharge quantity.Quantity // of an accumulator's gas with the fluid out, likewise; else none
}

// Known says that there is enough to compute with, and that it can be.
func (s Store) Known() bool {
	return s.Volume.Base() > 0 && s.Pressure.Base() > 0 && s.Precharge.Base() >= 0 && s.Precharge.Base() < s.Pressure.Base()
}

// Fluid says that a fluid comes out and no gas.
func (s Store) Fluid() bool { return !s.Precharge.IsZero() }

// Release is what comes out when stored pressure is let go.
type Release struct {
	Out     quantity.Quantity // fluid, or gas at the pressure of the air; in the unit of the volume
	Fluid   bool
	Energy  float64 // J, that the gas gives up
	Working working.Working
}

// Release computes what comes out. It is false where something is not known.
func (s Store) Release() (Release, bool) {
	if !s.Known() {
		return Release{}, false
	}
	volume, absolute := s.Volume.Base(), s.Pressure.Base()+Atmosphere
	if !s.Fluid() {
		r := Release{Out: s.inItsUnit(GasOut(volume, s.Pressure.Base())), Energy: Work(volume, absolute, Atmosphere)}
		r.Working = s.explainGas(r)
		return r, true
	}
	precharge := s.Precharge.Base() + Atmosphere
	out := FluidOut(volume, precharge, absolute)
	r := Release{Out: s.inItsUnit(out), Fluid: true, Energy: Work(volume-out, absolute, precharge)}
	r.Working = s.explainFluid(r)
	return r, true
}

// inItsUnit is a volume in the unit of the store's, with two digits.
func (s Store) inItsUnit(volume float64) quantity.Quantity {
	share := volume / s.Volume.Base()
	return quantity.Of(s.Volume.Value*share, s.Volume.Unit, 2)
}

func (s Store) explainGas(r Release) working.Working {
	air := quantity.Of(Atmosphere/s.pascals(), s.Pressure.Unit, 4)
	return working.Working{
		Formula: "Vout = V·p/pa",
		Put:     fmt.Sprintf("%s · %s/%s", s.Volume, s.Pressure, air),
		Result:  fmt.Sprintf("%s of gas, at the pressure of the air", r.Out),
		Terms: []working.Term{
			{Sign: "V", Words: "volume of the vessel", Value: s.Volume.String()},
			{Sign: "p", Words: "pressure that the gauge says", Value: s.Pressure.String()},
			{Sign: "pa", Words: "pressure of the air around", Value: air.String()},
		},
		Assumes: []string{
			"The gas has become as warm as before it was let out. While it comes out it is colder, and there is less of it.",
			"In a closed bay a gas other than air takes the place of the air that is breathed.",
			holds(r.Energy),
		},
		Source: "Boyle's law; standard atmosphere 101.325 kPa; energy in the form of ASME PCC-2, 501-II, k = 1.4",
	}
}

func (s Store) explainFluid(r Release) working.Working {
	air := quantity.Of(Atmosphere/s.pascals(), s.Pressure.Unit, 4)
	precharge := s.Precharge.In(s.Pressure.Unit)
	return working.Working{
		Formula: "Vout = V·(1 − (p0 + pa)/(p + pa))",
		Put:     fmt.Sprintf("%s · (1 − (%s + %s)/(%s + %s))", s.Volume, precharge, air, s.Pressure, air),
		Result:  fmt.Sprintf("%s of fluid", r.Out),
		Terms: []working.Term{
			{Sign: "V", Words: "volume of the gas with the fluid out", Value: s.Volume.String()},
			{Sign: "p0", Words: "precharge of the gas, by its gauge", Value: s.Precharge.String()},
			{Sign: "p", Words: "pressure before it is let go, by its gauge", Value: s.Pressure.String()},
			{Sign: "pa", Words: "pressure of the air around", Value: air.String()},
		},
		Assumes: []string{
			"This is the accumulator alone: what the circuit itself drains comes on top.",
			"The gas keeps its precharge when the fluid is out. It is another energy, with a release of its own.",
			"The precharge is right. Of a gas that has leaked away, more fluid has taken the place.",
			holds(r.Energy),
		},
		Source: "Boyle's law, p·V = constant; standard atmosphere 101.325 kPa; energy in the form of ASME PCC-2, 501-II, k = 1.4",
	}
}

// pascals is Pa in one of the pressure's unit.
func (s Store) pascals() float64 { return s.Pressure.Base() / s.Pressure.Value }

// holds says how much the gas can do.
func holds(energy float64) string {
	text := quantity.Of(energy, quantity.Bare, 2).Number() + " J"
	if energy >= 1000 {
		text = quantity.Of(energy/1000, quantity.Bare, 2).Number() + " kJ"
	}
	return fmt.Sprintf("Let go at once, the gas gives up about %s: E = p·V/(k − 1)·(1 − (p2/p)^((k − 1)/k)), k = 1.4, from its absolute pressure p to p2.", text)
}
