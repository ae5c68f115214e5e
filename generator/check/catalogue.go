package check

import (
	"cmp"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/check/numbers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// Family is rules that belong together.
type Family struct {
	Title string
	Rules []*finding.Rule
}

// readings are the rules that are told while a manual is read.
var readings = []Family{
	{"How files are written", []*finding.Rule{
		&syntax.Syntax, &syntax.StraySign, &syntax.RowCut, &syntax.DuplicateID, &syntax.Heading, &syntax.NoSteps, &syntax.RawHTML,
	}},
	{"What fields hold", []*finding.Rule{
		&decode.UnknownField, &decode.WrongType, &decode.MissingField, &decode.BadID, &decode.Quantity,
	}},
	{"What names and addresses lead to", []*finding.Rule{
		&bind.UnknownReference, &bind.UnknownKind, &bind.UnsafeLink, &bind.BrokenLink, &bind.MissingPicture, &bind.LanguageUnknown, &bind.UnknownPerson,
	}},
}

// walked are the rules that are told where a procedure is walked.
var walked = []*finding.Rule{
	// the order of energy acts
	&walk.EnergyOrder, &walk.NotReleased, &walk.WaitTooShort, &walk.WaitShortOfLimit, &walk.ProofWithoutMeasure, &walk.TesterNotProved,
	&walk.LiveWork, &walk.GuardOffLive, &walk.RestoredWhileOpen, &walk.LiveTest,
	// the order of parts
	&walk.NotReachable, &walk.RefitOverOpen, &walk.RemovedTwice, &walk.RefitNotRemoved, &walk.ActOrder, &walk.NotMarked, &walk.ReverseRule,
	// what is left undone
	&walk.LeftIsolated, &walk.LeftOff, &walk.LeftLoose, &walk.LeftInPlace, &walk.LeftAltered, &walk.LeftLow, &walk.NotBled,
	&walk.NotSupplied, &walk.LeakLookWhileWet, &walk.LeakLookWithoutPressure, &walk.DeadBranch, &walk.NotAsked, &walk.BadPause, &walk.NotCapped,
	// procedures and units
	&walk.StateMismatch, &walk.WrongMachine, &walk.UnitGap, &walk.UnitOverlap, &walk.NeverApplies, &walk.TooManyConditions, &walk.ActInWords,
}

// Families are the catalogue by what finds a thing.
func Families() []Family {
	rest := slices.Clone(walked)
	known := causes()
	tell := func(r *finding.Rule) {
		if !slices.Contains(known, r) && !slices.Contains(rest, r) {
			rest = append(rest, r)
		}
	}
	for _, r := range numbers.Rules {
		tell(r.Rule)
	}
	for _, r := range rules {
		tell(r.Rule)
	}
	slices.SortFunc(rest, compareCodes)
	return append(slices.Clone(readings), Family{"What a procedure says and does", rest})
}

// Catalogue is everything that is looked for, by code.
func Catalogue() []*finding.Rule {
	var all []*finding.Rule
	for _, f := range Families() {
		all = append(all, f.Rules...)
	}
	slices.SortFunc(all, compareCodes)
	return all
}

func compareCodes(a, b *finding.Rule) int { return cmp.Compare(a.Code, b.Code) }

// Named is the rule of a code; nil where there is none.
func Named(code string) *finding.Rule {
	all := Catalogue()
	if i := slices.IndexFunc(all, func(r *finding.Rule) bool { return r.Code == code }); i >= 0 {
		return all[i]
	}
	return nil
}

// Acceptable are the codes of the advice that a writer may weigh and not follow.
var Acceptable = acceptable()

func acceptable() []string {
	var codes []string
	for _, r := range Catalogue() {
		if r.Acceptable {
			codes = append(codes, r.Code)
		}
	}
	return codes
}

func causes() []*finding.Rule {
	var all []*finding.Rule
	for _, f := range readings {
		all = append(all, f.Rules...)
	}
	return all
}

// Causes are the rules from whose findings others follow: what cannot be read
// or names nothing is missing wherever it is needed.
func Causes() []*finding.Rule { return append(causes(), &notAStep) }
