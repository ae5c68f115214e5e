// Package pressure computes what comes out when stored pressure is let go, and how much it can do.
//
// The pure formulas take and give plain numbers in Pa, m³ and J. Amounts with
// units enter in Store and leave in Release. The pressures of a shop are what
// its gauges say, above that of the air around; those of the formulas are
// absolute.
//
// What is computed is how much comes out: into a tray, a tank or the air of the
// bay. It does not say that the pressure is gone: a gauge or an open drain does.
//
// # Decided where the format is silent
//
// `stored: { gas-volume, precharge }` of a pressure: gauge pressures, gas at the standard
// atmosphere, once as warm as before; with `precharge` it is the fluid that comes out. A charge
// that takes more than a day to fall to 1 V is `quantity` (common practice, no source).
package pressure

import "math"

// Atmosphere is the standard pressure of the air, Pa. Exact: CGPM 1954,
// resolution 4, as NIST SP 811 has it.
const Atmosphere = 101325.0

// diatomic is the ratio of the specific heats of nitrogen and air.
const diatomic = 1.4

// GasOut is the volume, m³ at the pressure of the air, of the gas that leaves a
// vessel which is let down to that pressure: V·p/pa, with p above that of the
// air. It is Boyle's law, (p + pa)·V = pa·(V + out), for a gas that has become
// as warm as it was.
func GasOut(volume, gauge float64) float64 { return volume * gauge / Atmosphere }

// FluidOut is the volume, m³, of the fluid that leaves an accumulator from an
// absolute pressure down to nothing: V·(1 − p0/p). The gas fills V with the
// fluid out, at its precharge p0. It is Boyle's law, p0·V = p·(V − out), for a
// gas that has become as warm as it was; one that has no time for that drives
// out less at first, and the same in the end. It is 0 where the pressure is not
// above the precharge.
func FluidOut(volume, precharge, absolute float64) float64 {
	return math.Max(0, volume*(1-precharge/absolute))
}

// Work is what a gas can do, J, when it expands from one absolute pressure to
// another without heat: p·V/(k − 1)·(1 − (p2/p)^((k−1)/k)), k = 1.4. The form is
// that of ASME PCC-2, article 501, appendix II (from memory), for air and
// nitrogen. It is 0 where the pressure is not above the other.
func Work(volume, from, to float64) float64 {
	return math.Max(0, from*volume/(diatomic-1)*(1-math.Pow(to/from, (diatomic-1)/diatomic)))
}
