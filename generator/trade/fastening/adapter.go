package fastening

import (
	"math"
	"strconv"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/domain"
)

// reach is the arm from the hand to the fastener, in the unit of its two
// lengths: L + A·cos(angle). An adapter that points back towards the hand is
// below zero; one that stands square to the wrench adds nothing.
func reach(length, adds, angle float64) float64 {
	return length + adds*math.Cos(angle*math.Pi/180)
}

// SettingFor is what the wrench is set to, in the unit of the torque, so that
// the fastener behind an adapter gets the torque: T·L/(L + A·cos(angle)), with
// the wrench's length from hand to square, what the adapter adds, and the angle
// between the two in degrees. NaN where the arms leave no lever.
// Source: US Army TM 9-254, figs. 45 and 46; an aircraft maintenance manual,
// p. 20.4.
func SettingFor(torque, length, adds, angle float64) float64 {
	arm := reach(length, adds, angle)
	if length <= 0 || arm <= 0 {
		return math.NaN()
	}
	return torque * length / arm
}

// Setting is what a torque wrench is set to behind an adapter that is in line
// with it. The setting has three digits, or those of the
// torque where they are more, and no zeros behind the decimal point: 0.5 % at
// most. The error is a
// *refused.Error: the lengths leave no lever.
func Setting(torque, length, adds quantity.Quantity) (quantity.Quantity, error) {
	set := SettingFor(torque.Value, length.Base(), adds.Base(), 0)
	if math.IsNaN(set) {
		return quantity.Quantity{}, &domain.Error{
			Given: length.String() + " + " + adds.String(), Why: finding.Say("leaves no lever from hand to fastener"),
			Write: finding.Say("write the wrench's length from hand to square, and what the adapter adds to it"),
		}
	}
	return shownSetting(set, torque), nil
}

func shownSetting(set float64, torque quantity.Quantity) quantity.Quantity {
	digits := max(3, torque.Digits)
	full := read(quantity.Of(set, torque.Unit, digits))
	for fewer := 1; fewer < digits; fewer++ {
		if q := quantity.Of(set, torque.Unit, fewer); read(q) == full {
			return q
		}
	}
	return quantity.Of(set, torque.Unit, digits)
}

// read is a number as it is printed.
func read(q quantity.Quantity) float64 {
	number, err := strconv.ParseFloat(q.Number(), 64)
	if err != nil {
		return math.NaN()
	}
	return number
}
