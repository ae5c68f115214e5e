// Package numbers holds the rules about numbers: fits, torques, waits and lifts.
//
// Each rule is one file: its words, then a short run over the bound manual. The
// formulas are in the packages beside this one; here is only what they are
// applied to, and where a finding stands. A rule would rather miss than invent:
// what could not be bound or read (a bad link, an unread entry), and what a
// register does not say, is not judged.
//
// # Decided where the format is silent
//
// Rated: What a step lifts by `remove:` and `refit:`, and what is on that its `loosen:` lets go, is
// added up, each part once; a part that is put back by `reverse:` was judged where it came off. A
// fastener that holds a part which the step lifts lets go of that one alone.
//
// Numbers: Behind an adapter the setting T·L/(L + A) must be in the wrench's range. A torque given
// as a range needs both ends covered; proof is judged at the upper end. Torque and angle are asked
// at `tighten:` and `reverse:`, fit at every act. What has no size, no count or no range is not
// judged. `value-disagrees` accepts numbers of the entry's name and of a hold's `what`, zero at
// isolate, release, prove and drain, and any value at `alter:`. In a sentence the finding stands
// at the first number that is wrong. Beside what the format lists, these may be said: the numbers
// of the names of what is linked (not of tools), a hold's `what` and the voltage or pressure of
// the energy that it is `of`, the limit that an `if-not:` asks about, a tool's own number right at
// its link ("the 17 mm [socket]"), a tester's category, the size of a can or a tray, what an
// unlinked lamp, hoist or hand tool has ("the 24 V lamp"), what should not be ("not 220 N·m"),
// how often, how much longer and how far from something, a bound of the shop's own behind *below*
// or *above*, nothing where a limit from above is measured; "2 x 45°" is 90°, and a chamfer. What is
// drained or mentioned of a fluid is at most its capacity; a fill behind the first one after a
// drain is topping up. A sentence with a link or an entry that could not be read is not judged,
// nor what stands in code. "approx." and its like end no sentence. Before "4 to 40 N·m" a word
// such as *all* makes a count of the 4. `words-disagree` is silent where the words order the kind
// itself as well. A tool's name right behind the verb is enough for `act-in-words`, and so is a
// mention link. A tool is good on the last day of its calibration. Spiral sequences are drawn for
// two rows.
package numbers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Rules are the package's own rules. Some findings are of rules that other
// packages have: quantity, missing-field and unknown-reference.
func Rules() []*finding.Rule {
	return []*finding.Rule{
		&ToolDoesNotFit, &NoTorqueTool, &ToolOutOfRange, &NoAngleTool, &TorqueOverProof,
		&LiftOverLimit, &LiftingIndex, &NotJudged, &NoTorque, &TooFewPeople, &ValueDisagrees, &CountDisagrees, &WordsDisagree, &CalibrationDue,
	}
}

// Registers looks through the machine files, the registers and the shop's limits.
func Registers(m *model.Manual) []finding.Finding {
	return slices.Concat(judgeMachines(m), judgeRegisters(m))
}

// Procedure looks for everything in one procedure. Of a translation only the
// words are judged: what is done is the original's.
func Procedure(m *model.Manual, p *model.Procedure) []finding.Finding {
	j := followWork(p)
	j.limits = given(m.Shop.Limits.SafeVoltageDC, m.Shop.Limits.SafeVoltageAC, m.Shop.Limits.SafePressure, m.Shop.Limits.SafeTouch)
	language := languageOf(m, p)
	words := slices.Concat(valuesDisagree(p), valuesBeside(j), countsDisagree(p, language), wordsDisagree(p, language))
	if p.Language != "" {
		return words
	}
	return slices.Concat(words, tooFewPeople(p),
		toolsDoNotFit(j), torqueTools(j), angleTools(j), liftsOverLimit(m, j), liftingIndices(m, j))
}

// judgeMachines looks through the machine files.
func judgeMachines(m *model.Manual) []finding.Finding {
	var found []finding.Finding
	for _, x := range m.Machines {
		for _, f := range x.Fasteners {
			if !f.Unread {
				found = slices.Concat(found, torqueOverProof(f), plausibleFastener(f))
			}
		}
		for _, e := range x.Energies {
			if !e.Unread {
				found = append(found, plausibleEnergy(e)...)
			}
		}
		for _, p := range x.Parts {
			if !p.Unread {
				found = append(found, plausiblePart(p)...)
			}
		}
	}
	return found
}

// judgeRegisters looks through the shop's limits and the registers.
func judgeRegisters(m *model.Manual) []finding.Finding {
	var found []finding.Finding
	if !m.Shop.Unread {
		found = plausibleShop(m.Shop)
	}
	for _, t := range m.Tools {
		if !t.Unread {
			found = append(found, plausibleTool(t)...)
		}
	}
	for _, s := range m.Supplies {
		if !s.Unread {
			found = append(found, knownStatements(s)...)
		}
	}
	return found
}

// languageOf is the language in which a procedure is written.
func languageOf(m *model.Manual, p *model.Procedure) string {
	if p.Language != "" {
		return p.Language
	}
	return m.Shop.Language
}
