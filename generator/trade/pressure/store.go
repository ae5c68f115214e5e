package pressure

import (
	"fmt"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
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
	return s.Volume.Base() > 0 && s.Precharge.Base() >= 0 && s.Precharge.Base() < s.Pressure.Base()
}

// Fluid says that a fluid comes out and no gas.
func (s Store) Fluid() bool { return !s.Precharge.IsZero() }

// Release is what comes out when stored pressure is let go.
type Release struct {
	Out    quantity.Quantity // fluid, or gas at the pressure of the air; in the unit of the volume
	Fluid  bool
	Energy float64 // J, that the gas gives up

	of Store
}

// Release computes what comes out. It is false where something is not known.
func (s Store) Release() (Release, bool) {
	if !s.Known() {
		return Release{}, false
	}
	volume, absolute := s.Volume.Base(), s.Pressure.Base()+Atmosphere
	if !s.Fluid() {
		return Release{Out: s.inItsUnit(GasOut(volume, s.Pressure.Base())), Energy: Work(volume, absolute, Atmosphere), of: s}, true
	}
	precharge := s.Precharge.Base() + Atmosphere
	out := FluidOut(volume, precharge, absolute)
	return Release{Out: s.inItsUnit(out), Fluid: true, Energy: Work(volume-out, absolute, precharge), of: s}, true
}

// inItsUnit is a volume in the unit of the store's, with two digits.
func (s Store) inItsUnit(volume float64) quantity.Quantity {
	share := volume / s.Volume.Base()
	return quantity.Of(s.Volume.Value*share, s.Volume.Unit, 2)
}

// Explain is what comes out with its working.
func (r Release) Explain(say *words.Gas) working.Working {
	if r.Fluid {
		return r.of.explainFluid(say, r)
	}
	return r.of.explainGas(say, r)
}

func (s Store) explainGas(say *words.Gas, r Release) working.Working {
	air := quantity.Of(Atmosphere/s.pascals(), s.Pressure.Unit, 4)
	return working.Working{
		Formula: "Vout = V·p/pa",
		Put:     fmt.Sprintf("%s · %s/%s", s.Volume, s.Pressure, air),
		Result:  fmt.Sprintf(say.Gas, r.Out),
		Terms: []working.Term{
			{Sign: "V", Words: say.Vessel, Value: s.Volume.String()},
			{Sign: "p", Words: say.Gauge, Value: s.Pressure.String()},
			{Sign: "pa", Words: say.Air, Value: air.String()},
		},
		Assumes: []string{
			say.Warm, say.Breathed, holds(say, r.Energy),
		},
		Source: say.SourceGas,
	}
}

func (s Store) explainFluid(say *words.Gas, r Release) working.Working {
	air := quantity.Of(Atmosphere/s.pascals(), s.Pressure.Unit, 4)
	precharge := s.Precharge.In(s.Pressure.Unit)
	return working.Working{
		Formula: "Vout = V·(1 − (p0 + pa)/(p + pa))",
		Put:     fmt.Sprintf("%s · (1 − (%s + %s)/(%s + %s))", s.Volume, precharge, air, s.Pressure, air),
		Result:  fmt.Sprintf(say.Fluid, r.Out),
		Terms: []working.Term{
			{Sign: "V", Words: say.FluidOut, Value: s.Volume.String()},
			{Sign: "p0", Words: say.Precharge, Value: s.Precharge.String()},
			{Sign: "p", Words: say.Before, Value: s.Pressure.String()},
			{Sign: "pa", Words: say.Air, Value: air.String()},
		},
		Assumes: []string{
			say.AloneIs, say.Keeps, say.Right, holds(say, r.Energy),
		},
		Source: say.SourceFluid,
	}
}

// pascals is Pa in one of the pressure's unit.
func (s Store) pascals() float64 { return s.Pressure.Base() / s.Pressure.Value }

// holds says how much the gas can do.
func holds(say *words.Gas, energy float64) string {
	text := quantity.Of(energy, quantity.Bare, 2).Number() + " J"
	if energy >= 1000 {
		text = quantity.Of(energy/1000, quantity.Bare, 2).Number() + " kJ"
	}
	return fmt.Sprintf(say.GivesOff, text)
}
