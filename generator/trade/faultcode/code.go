// Package faultcode reads the fault codes that a machine shows, P0301, and finds them in sentences.
//
// It knows the structure of a code (SAE J2012, ISO 15031-6), not its meaning:
// the lists of meanings are sold, and a shop writes the meaning it uses into its
// own procedure. What the structure says is the system, whether the code is
// every maker's or one maker's own, and in the powertrain the area.
package faultcode

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/trade/domain"
)

// System is the part of the machine that the first letter names.
type System byte

// The systems.
const (
	Powertrain System = 'P'
	Chassis    System = 'C'
	Body       System = 'B'
	Network    System = 'U'
)

// String is the system in a word.
func (s System) String() string {
	return map[System]string{Powertrain: "powertrain", Chassis: "chassis", Body: "body", Network: "network"}[s]
}

// Class says whose code it is.
type Class uint8

// A generic code means the same on every make; a manufacturer's own does not.
const (
	Generic Class = iota
	Manufacturer
)

// String is the class in words.
func (c Class) String() string { return [...]string{"generic", "manufacturer's own"}[c] }

// Code is a fault code.
type Code struct {
	Text   string // in capitals, "P0301"
	System System
	Class  Class
	Area   string // of the powertrain, "ignition, misfire"; "" where the structure does not say
}

// areas are what the third character says of a powertrain code, in our own
// words. 1 to 7 and A to C were seen in copies of workshop manuals and on a code
// site; 0, 8 and 9 are from memory.
var areas = map[byte]string{
	'0': "fuel, air and extra emission control", '1': "fuel and air", '2': "fuel and air, injectors", '3': "ignition, misfire",
	'4': "extra emission control", '5': "speed and idle", '6': "computer and its outputs", '7': "transmission",
	'8': "transmission", '9': "transmission", 'A': "hybrid drive", 'B': "hybrid drive", 'C': "hybrid drive",
}

// Parse reads a code: a letter for the system, 0 to 3, and three characters of
// 0 to 9 and A to F. Small letters are read as capitals. The error is a
// *refused.Error that says what is wrong.
func Parse(text string) (Code, error) {
	c := strings.ToUpper(strings.TrimSpace(text))
	if why := wrong(c); !why.IsZero() {
		return Code{}, &domain.Error{Given: text, Why: why, Write: finding.Say("write the code as the machine shows it, as in P0301")}
	}
	code := Code{Text: c, System: System(c[0]), Class: classOf(c)}
	if code.System == Powertrain && c[1] != '3' {
		code.Area = areas[c[2]]
	}
	return code, nil
}

// wrong says what is wrong with a code, or "".
func wrong(c string) finding.Words {
	switch {
	case c == "":
		return finding.Say("is no code")
	case strings.IndexByte("PCBU", c[0]) < 0:
		return finding.Say("begins with none of P, C, B and U")
	case len(c) != 5:
		return finding.Say("is not five characters long")
	case c[1] < '0' || c[1] > '3':
		return finding.Say("has a second character that is not 0 to 3")
	case strings.Trim(c[2:], "0123456789ABCDEF") != "":
		return finding.Say("has a character that is not 0 to 9 or A to F")
	}
	return finding.Words{}
}

// classOf sorts a code that is right. P0, P2 and P34 to P39 are generic, P1 and
// P30 to P33 a maker's own; of the other letters 0 and 3 are generic, 1 and 2 a
// maker's own. Source: a code reader's manual, p. 18. It does not say whose P3A
// to P3F are; they are read as generic, from memory of the range's end.
func classOf(c string) Class {
	ownSecond := c[1] == '1' || c[1] == '2' && c[0] != 'P'
	if ownSecond || c[0] == 'P' && c[1] == '3' && c[2] <= '3' {
		return Manufacturer
	}
	return Generic
}
