package quantity

import (
	"strings"

	"baybinder/generator/base/finding"
)

// Dimension is what an amount measures.
type Dimension uint8

// The dimensions that a manual uses. Torque and energy share their units in
// physics; here a newton metre is always a torque.
const (
	None Dimension = iota // any amount, where one is asked for
	Torque
	Pressure
	Voltage
	Current
	Resistance
	Capacitance
	Power
	Frequency
	Duration // seconds to weeks, of fixed length
	Calendar // days to years, whose length depends on the date
	Length
	Mass
	Volume
	Force
	Temperature
	Angle
	RotationalSpeed
	Speed
	Ratio
	Count
	Acidity       // pH
	Concentration // mass in a volume
	Turbidity
	Conductivity
	Level // decibels
	Turns
	Drops
)

// dimensionRow says a dimension in words, with an amount and a range of it for
// the mends, and whether an amount below zero has a meaning.
type dimensionRow struct {
	name, example, rangeOf string
	signed                 bool
}

var dimensions = [...]dimensionRow{
	None:            {"amount", "110 N·m", "20 to 100 N·m", true},
	Torque:          {"torque", "110 N·m", "20 to 100 N·m", false},
	Pressure:        {"pressure", "210 bar", "0 to 400 bar", true}, // a gauge reads below zero in a vacuum
	Voltage:         {"voltage", "360 V dc", "0 to 60 V dc", true},
	Current:         {"current", "10 A", "5 to 10 A", true},
	Resistance:      {"resistance", "100 kΩ", "90 to 110 Ω", false},
	Capacitance:     {"capacitance", "1000 µF", "900 to 1100 µF", false},
	Power:           {"power", "5 kW", "1 to 5 kW", true},
	Frequency:       {"frequency", "50 Hz", "45 to 65 Hz", false},
	Duration:        {"duration", "1 h 30 min", "10 to 15 min", false},
	Calendar:        {"calendar time", "12 months", "6 to 12 months", false},
	Length:          {"length", "2.5 mm", "0.5 to 2 mm", true}, // a crow-foot may point backwards
	Mass:            {"mass", "14 kg", "10 to 25 kg", false},
	Volume:          {"volume", "4.5 L", "4 to 4.5 L", false},
	Force:           {"force", "200 N", "50 to 200 N", true},
	Temperature:     {"temperature", "65 °C", "−20 to 65 °C", true},
	Angle:           {"angle", "60°", "60 to 90°", true},
	RotationalSpeed: {"rotational speed", "750 rpm", "700 to 750 rpm", true},
	Speed:           {"speed", "6 km/h", "4 to 6 km/h", true},
	Ratio:           {"percentage", "20 %", "20 to 100 %", true},
	Count:           {"count", "4 each", "2 to 4 each", false},
	Acidity:         {"acidity", "7.2 pH", "6.8 to 7.4 pH", true},
	Concentration:   {"concentration", "50 mg/L", "20 to 50 mg/L", false},
	Turbidity:       {"turbidity", "1 NTU", "0 to 5 NTU", false},
	Conductivity:    {"conductivity", "50 µS/cm", "10 to 50 µS/cm", false},
	Level:           {"level", "60 dB", "40 to 60 dB", true},
	Turns:           {"number of turns", "1 1/2 turns", "1 to 2 turns", true},
	Drops:           {"number of drops", "3 drops", "2 to 3 drops", false},
}

// String returns the dimension in words, "torque".
func (d Dimension) String() string { return d.row().name }

// Named returns the dimension with its article, "a torque", "an angle".
func (d Dimension) Named() string {
	if strings.ContainsRune("aeiou", rune(d.String()[0])) {
		return "an " + d.String()
	}
	return "a " + d.String()
}

// InWords is the dimension with its article, as words.
func (d Dimension) InWords() finding.Words { return finding.Say(d.Named()) }

// Example returns an amount of the dimension as it is written, "110 N·m".
func (d Dimension) Example() string { return d.row().example }

// RangeExample returns a range of the dimension as it is written, "20 to 100 N·m".
func (d Dimension) RangeExample() string { return d.row().rangeOf }

// row returns the dimension's line of the table; a value that is no dimension
// gets the line of None.
func (d Dimension) row() dimensionRow {
	if int(d) >= len(dimensions) {
		d = None
	}
	return dimensions[d]
}
