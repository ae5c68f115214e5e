// Package chemical reads the hazard statements of a chemical and works out what its label says.
//
// The statements, signal words and pictograms are those of the UN GHS (Globally
// Harmonized System, "the purple book") as the European CLP regulation prints
// them, and those that CLP adds (EUH031). The set is closed: a code that is not in
// it is an error with the nearest one, for a wrong warning is worse than none.
//
// The GHS word is a scale of its own: an eye irritant is "Warning" here and no
// more than a CAUTION in a safety message. The two are never fed into each
// other.
//
// # Decided where the format is silent
//
// A statement may stand for two categories: H221 is 1B (Danger, flame) or 2
// (Warning, no pictogram), as H228, H261 and H272 are of two. A supply has no field
// that says which. The graver one is taken, for a label that says too much sends
// someone to the safety data sheet and one that says too little does not; the
// supply's page says beside the label that the category is not known.
package chemical

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/trade/domain"
)

// Word is a signal word of the GHS.
type Word uint8

// The words, the weaker first. Some statements have none.
const (
	NoWord Word = iota
	Warning
	Danger
)

// Sign is a pictogram of the GHS: GHS01 to GHS09. 0 is none.
type Sign uint8

// The pictograms by what they show.
const (
	NoSign Sign = iota
	ExplodingBomb
	Flame
	FlameOverCircle
	GasCylinder
	Corrosion
	Skull
	ExclamationMark
	HealthHazard
	Environment
)

// String is the pictogram's number, "GHS02".
func (s Sign) String() string {
	if s == NoSign {
		return ""
	}
	return "GHS0" + string('0'+rune(s))
}

// Statement is a hazard statement and what it brings onto the label.
type Statement struct {
	Code string // "H319"
	Text string
	Word Word
	Sign Sign
	part part // what is in danger and how, for the precautions and the precedence
}

// code is H, the kind of hazard (2 physical, 3 health, 4 environment) and two
// figures. Source: UN GHS, annex 3, section 1.
var code = regexp.MustCompile(`^H[234]\d\d$`)

// Find is the statement of a code. The error is a *refused.Error.
func Find(text string) (Statement, error) {
	wanted := strings.ToUpper(strings.TrimSpace(text))
	for _, set := range [][]Statement{statements, supplements} {
		if i := slices.IndexFunc(set, func(s Statement) bool { return s.Code == wanted }); i >= 0 {
			return set[i], nil
		}
	}
	bad := &domain.Error{Given: text, Why: finding.Say("is not a hazard statement that the manual knows"), Write: finding.Say("write its code as the safety data sheet has it, as in H319")}
	switch near := nearest.Of(wanted, Codes()); {
	case strings.HasPrefix(wanted, "P"):
		bad.Why = finding.Say("is a precaution, and no hazard")
	case near != "":
		bad.Write = finding.Say("did you mean %s? Look it up in section 2 of the safety data sheet", near)
	case !code.MatchString(wanted):
		bad.Why = finding.Say("is not the code of a hazard statement")
	}
	return Statement{}, bad
}

// Codes are all codes of the GHS and then those that European law adds, each in
// order.
func Codes() []string {
	var codes []string
	for _, s := range slices.Concat(statements, supplements) {
		codes = append(codes, s.Code)
	}
	return codes
}
