package electrical

import (
	"fmt"
	"math"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/trade/working"
)

// Store is what keeps a charge after it is switched off.
type Store struct {
	Voltage     quantity.Quantity // before it is switched off; alternating is taken at its peak
	Capacitance quantity.Quantity
	Resistance  quantity.Quantity // through which it discharges
}

// Known says that all three are there, so that something can be computed.
func (s Store) Known() bool {
	return s.Start() > 0 && s.Capacitance.Base() > 0 && s.Resistance.Base() > 0
}

// Start is the voltage at which the discharge begins, V.
func (s Store) Start() float64 {
	volts := math.Abs(s.Voltage.Base())
	if s.Voltage.Flow == quantity.AC {
		return Peak(volts)
	}
	return volts
}

// Energy is what is stored, J.
func (s Store) Energy() float64 { return StoredEnergy(s.Capacitance.Base(), s.Start()) }

// Wait is how long a charge takes to fall to a safe voltage.
type Wait struct {
	Seconds float64
	Least   quantity.Quantity // the same in whole seconds, rounded up: "2 min 59 s"

	of   Store
	safe quantity.Quantity
}

// WaitFor computes the wait until the store is at the safe voltage, which is
// direct, as a stored charge is. It is false where something is not known.
func (s Store) WaitFor(safe quantity.Quantity) (Wait, bool) {
	if !s.Known() || safe.Base() <= 0 {
		return Wait{}, false
	}
	seconds := DischargeTime(s.Resistance.Base(), s.Capacitance.Base(), s.Start(), safe.Base())
	return Wait{Seconds: seconds, Least: quantity.Elapsed(int(math.Ceil(seconds))), of: s, safe: safe}, true
}

// Hardly says that a charge takes more than a day to fall to a volt. Common
// practice, no source: what discharges on purpose does so within the job, so that
// the capacitance or the resistance is wrong.
func (s Store) Hardly() bool {
	wait, known := s.WaitFor(quantity.Of(1, quantity.Volt, 1))
	return known && !math.IsInf(wait.Seconds, 0) && wait.Seconds > 24*60*60
}

// Enough says whether a wait, s, is long enough.
func (w Wait) Enough(seconds float64) bool { return seconds >= w.Seconds }

// What capacitors and resistors of power circuits are commonly off by: common
// practice, no source. They say how much longer the wait of such a pair is.
const (
	capacitorOff = 0.20
	resistorOff  = 0.05
)

// Explain is the wait with its working.
func (w Wait) Explain(say *words.Discharge) working.Working {
	s, safe := w.of, w.safe
	start, voltage := s.Voltage.String(), say.V
	if s.Voltage.Flow == quantity.AC {
		start, voltage = "√2 · "+start, voltage+say.AtItsPeak
	}
	longer := quantity.Elapsed(int(math.Ceil(WithTolerance(w.Seconds, resistorOff, capacitorOff))))
	return working.Working{
		Formula: "t = R·C·ln(V/safe)",
		Put:     fmt.Sprintf("%s · %s · ln(%s/%s)", s.Resistance, s.Capacitance, start, safe),
		Result:  fmt.Sprintf(say.AtLeast, quantity.Of(w.Seconds, quantity.Second, 3), w.Least),
		Terms: []working.Term{
			{Sign: "R", Words: say.R, Value: s.Resistance.String()},
			{Sign: "C", Words: say.C, Value: s.Capacitance.String()},
			{Sign: "V", Words: voltage, Value: start},
			{Sign: "safe", Words: say.Safe, Value: safe.String()},
		},
		Assumes: []string{
			say.Whole, fmt.Sprintf(say.Marked, longer), fmt.Sprintf(say.Alone, joules(s.Energy())), say.Maker,
		},
		Source: say.Source,
	}
}

// joules is an energy with three digits.
func joules(energy float64) string {
	return quantity.Of(energy, quantity.Bare, 3).Number()
}
