package fastening

import (
	"math"

	"baybinder/generator/base/quantity"
)

// floorShare is the part of its maximum below which a torque wrench is not
// used. Source: ISO 6789-1, range of use, from memory; its test points of 20,
// 60 and 100 % were seen on a test house's page.
const floorShare = 0.20

// Wrench is the range of a torque wrench, N·m.
type Wrench struct{ Low, High float64 }

// WrenchOf is the range as it stands in a register. It is false where that is
// no range of torques.
func WrenchOf(limit quantity.Limit) (Wrench, bool) {
	low, high := limit.Bounds()
	ok := limit.Kind == quantity.Between && limit.Unit.Dimension() == quantity.Torque && high > 0
	return Wrench{low, high}, ok
}

// Floor is the least torque that the wrench is used for, N·m: the start of its
// range, and not below 20 % of its maximum.
func (w Wrench) Floor() float64 { return math.Max(w.Low, floorShare*w.High) }

// Covers says whether the wrench is used for a torque in N·m; both ends are
// covered.
func (w Wrench) Covers(torque float64) bool {
	const slack = 1e-9 // what converting a unit may lose
	return torque >= w.Floor()*(1-slack) && torque <= w.High*(1+slack)
}
