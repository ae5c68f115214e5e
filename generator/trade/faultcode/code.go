// Package faultcode reads the fault codes that a machine shows, P0301, and finds them in sentences.
//
// It knows the structure of a code (SAE J2012, ISO 15031-6), not its meaning:
// the lists of meanings are sold, and a shop writes the meaning it uses into its
// own procedure. What the structure says is the system, whether the code is
// every maker's or one maker's own, and in the powertrain the area.
package faultcode

import (
	"regexp"
	"strings"

	"baybinder/generator/trade/refused"
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
	if why := wrong(c); why != "" {
		return Code{}, &refused.Error{Given: text, Why: why, Write: "write the code as the machine shows it, as in P0301"}
	}
	code := Code{Text: c, System: System(c[0]), Class: classOf(c)}
	if code.System == Powertrain && c[1] != '3' {
		code.Area = areas[c[2]]
	}
	return code, nil
}

// wrong says what is wrong with a code, or "".
func wrong(c string) string {
	switch {
	case c == "":
		return "is no code"
	case strings.IndexByte("PCBU", c[0]) < 0:
		return "begins with none of P, C, B and U"
	case len(c) != 5:
		return "is not five characters long"
	case c[1] < '0' || c[1] > '3':
		return "has a second character that is not 0 to 3"
	case strings.Trim(c[2:], "0123456789ABCDEF") != "":
		return "has a character that is not 0 to 9 or A to F"
	}
	return ""
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

// token is a code, or what may be meant for one, standing on its own.
var token = regexp.MustCompile(`[A-Za-z0-9]+`)

// codeShape is a code as machines show it: in capitals.
var codeShape = regexp.MustCompile(`^[PCBU][0-3][0-9A-F]{3}$`)

// misread is what may be meant for a code behind a word that announces one.
var misread = regexp.MustCompile(`^[A-Z][0-9A-Z]{3,5}$`)

// announces is a word that a code follows, English or Spanish.
var announces = regexp.MustCompile(`(?i)(?:^|[^\pL])(?:(?:fault|trouble)\s+codes?|faults?|codes?|dtcs?|códigos?(?:\s+de\s+(?:avería|error|fallo))?|averías?)[:\s]+["“'(]?$`)

// Found is a code in a text.
type Found struct {
	Code       Code
	Start, End int   // bytes of the text
	Err        error // why it is no code, where a word such as "code" announces one
}

// Find returns the codes of a sentence, in order. A code stands on its own, in
// capitals: P50, C1, M8x1.25 and LW-P0101 hold none. What is no code is
// returned, with its Err, only behind a word that announces a code: a part
// number that looks like one is not the business of this package.
func Find(text string) []Found {
	var all []Found
	for _, at := range token.FindAllStringIndex(text, -1) {
		word := text[at[0]:at[1]]
		if !standsAlone(text, at[0], at[1]) || !misread.MatchString(word) {
			continue
		}
		f := Found{Start: at[0], End: at[1]}
		f.Code, f.Err = Parse(word)
		if codeShape.MatchString(word) || strings.ContainsAny(word, "0123456789") && announces.MatchString(text[:at[0]]) {
			all = append(all, f)
		}
	}
	return all
}

// standsAlone reports whether what is around a word leaves it a word of its
// own: no letter with an accent, and no sign that joins it to another word, as
// in a part number. A slash, and a dash to the next code, do not join.
func standsAlone(text string, start, end int) bool {
	return !joined.MatchString(text[:start]) && !joins.MatchString(text[end:])
}

var (
	joined = regexp.MustCompile(`(?:[\pL\pM_.#]|[\pL\d]-)$`)
	joins  = regexp.MustCompile(`^(?:[\pL\pM_]|[.\-][\pL\d])`)
)
