package fastening

import (
	"fmt"
	"math"
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/domain"
	"baybinder/generator/trade/working"
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
// with it, with its working. The setting has three digits, or those of the
// torque where they are more, and no zeros behind the decimal point: 0.5 % at
// most. The error is a
// *refused.Error: the lengths leave no lever.
func Setting(torque, length, adds quantity.Quantity) (quantity.Quantity, working.Working, error) {
	set := SettingFor(torque.Value, length.Base(), adds.Base(), 0)
	if math.IsNaN(set) {
		return quantity.Quantity{}, working.Working{}, &domain.Error{
			Given: length.String() + " + " + adds.String(), Why: "leaves no lever from hand to fastener",
			Write: "write the wrench's length from hand to square, and what the adapter adds to it",
		}
	}
	shown := shownSetting(set, torque)
	return shown, working.Working{
		Formula: "S = T·L/(L + A)",
		Put:     fmt.Sprintf("%s · %s/(%s + %s)", torque, length, length, adds),
		Result:  shown.String(),
		Terms: []working.Term{
			{Sign: "T", Words: "torque at the fastener", Value: torque.String()},
			{Sign: "L", Words: "wrench, from hand to square", Value: length.String()},
			{Sign: "A", Words: "what the adapter adds", Value: adds.String()},
		},
		Assumes: []string{
			"The adapter is in line with the wrench. Square to it, at 90°, it needs no correction: set the torque itself.",
			"The hand is at the middle of the grip; nothing is put on to lengthen it.",
		},
		Source: "US Army TM 9-254, fig. 45",
	}, nil
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
