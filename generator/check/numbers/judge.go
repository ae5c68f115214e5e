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
// isolate, release, prove and drain, and any value at `alter:`. In a sentence the finding stands at
// the first number that is wrong. Beside what the format lists, these may be said: the numbers of
// the names of what is linked (not of tools), a hold's `what` and the voltage or pressure of the
// energy that it is `of`, the limit that an `if-not:` asks about, a tool's own number right at its
// link ("the 17 mm [socket]"), a tester's category, the size of a can or a tray, what an unlinked
// lamp, hoist or hand tool has ("the 24 V lamp"), what should not be ("not 220 N·m"), how often,
// how much longer and how far from something, how soon something is done, what a part had when it
// was new, a length a hundred times another than what is stated, save by a slip of its unit, what
// one amount is of another kind ("one turn is 1.5 mm"), a bound of the shop's own behind *below* or
// *above*, nothing where a limit from above is measured; "2 x 45°" is 90°, and a chamfer. What is
// drained or mentioned of a fluid is at most its capacity; a fill behind the first one after a
// drain is topping up. A sentence with a link or an entry that could not be read is not judged, nor
// what stands in code. "approx." and its like end no sentence. Before "4 to 40 N·m" a word such as
// *all* makes a count of the 4. Figures parted in threes are one number; where the sign may be
// another ("1,500", in Spanish and German "1.500", "pack 2 360 V"), either reading is right. A
// number may be written out ("three minutes", "one to two bar", "three quarters of a turn"); thirds
// are not read. How far something moves ("drops by 0.2 bar") and what was found ("it came at 17.6
// bar") is not what it is set to. What turns fasteners by themselves may turn fewer than there are,
// save behind an article: "the two bolts". What is to be kept or seen to be on a side, or never to come to it, is bounded
// however much is said of it; a mass so bounded is as often what a thing is known by ("keep bags
// under 495 g"). An end of a limit, a wait, a range or a tolerance that the words put on the other
// side ("at most 7 mm" of "at least 7 mm") is told, save behind *if* and its like; "7 mm or less"
// beside a measurement is not judged where more is said, as it may be what is out of the limit, nor is a range that
// runs down. To `renew:` is to take off: fitting the part, or a new one, is its opposite, where
// nothing else is named behind the verb. `words-disagree` is silent where the words order the kind
// itself as well; pulling is the opposite of putting in a connector, where the words name no more
// than it. A tool's name right behind the verb is enough for `act-in-words`, and so is a mention
// link. A tool is good on the last day of its calibration. Spiral sequences are drawn for two rows.
package numbers

import (
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/trade/fastening"
)

// Rule is one rule about numbers. It has one of the three functions. Several
// rules may have one between them, and a rule several: what is written is
// judged with the words of quantity, missing-field and unknown-reference too.
type Rule struct {
	*finding.Rule
	Whole func(m *model.Manual, today model.Date) []finding.Finding // over the machine files, the registers and the shop's limits
	Work  func(j *job) []finding.Finding                            // over what each procedure does
	Words func(j *job) []finding.Finding                            // over the words of each procedure and translation
}

// Rules are the rules about numbers. A new one is one line here, one file
// beside this one and its cases.
var Rules = []Rule{
	{Rule: &TorqueOverProof, Whole: fasteners(torqueOverProof)},
	{Rule: &NotJudged, Whole: fasteners(notInTables)},
	{Rule: &NotJudged, Whole: bareTexts},
	{Rule: &NoTorque, Whole: fasteners(noTorque)},
	{Rule: &decode.Quantity, Whole: plausible},
	{Rule: &CalibrationDue, Whole: calibrationDue},

	{Rule: &TooFewPeople, Work: tooFewPeople},
	{Rule: &ToolDoesNotFit, Work: toolsDoNotFit},
	{Rule: &NoTorqueTool, Work: noTorqueTools},
	{Rule: &ToolOutOfRange, Work: toolsOutOfRange},
	{Rule: &NoAngleTool, Work: angleTools},
	{Rule: &LiftOverLimit, Work: liftsOverLimit},
	{Rule: &LiftOverLimit, Work: liftsOverRating},
	{Rule: &LiftingIndex, Work: liftingIndices},

	{Rule: &ValueDisagrees, Words: valuesDisagree},
	{Rule: &ValueDisagrees, Words: valuesBeside},
	{Rule: &CountDisagrees, Words: countsDisagree},
	{Rule: &WordsDisagree, Words: wordsDisagree},
}

// Whole looks through the machine files, the registers and the shop's limits.
func Whole(m *model.Manual, today model.Date) []finding.Finding {
	var found []finding.Finding
	for _, r := range Rules {
		if r.Whole != nil {
			found = append(found, r.Whole(m, today)...)
		}
	}
	return found
}

// Book keeps what procedures leave behind, so that each is followed once, whatever
// performs it. Its zero value is ready, and several may ask at once.
type Book struct {
	tight fastening.Book
	left  sync.Map // *model.Procedure → fluids; none of a ring of calls, or that leads to one
}

// Procedure looks for everything in one procedure. Of a translation only the
// words are judged: what is done is the original's. The book is one for all
// procedures of the manual.
func Procedure(m *model.Manual, book *Book, p *model.Procedure) []finding.Finding {
	j := followWork(m, book, p)
	var found []finding.Finding
	for _, r := range Rules {
		switch {
		case r.Words != nil:
			found = append(found, r.Words(j)...)
		case r.Work != nil && p.Language == "":
			found = append(found, r.Work(j)...)
		}
	}
	return found
}

// fasteners is a rule over each fastener that was read.
func fasteners(judge func(f *model.Fastener) []finding.Finding) func(*model.Manual, model.Date) []finding.Finding {
	return func(m *model.Manual, _ model.Date) []finding.Finding {
		var found []finding.Finding
		for _, x := range m.Machines {
			for _, f := range x.Fasteners {
				if !f.Unread {
					found = append(found, judge(f)...)
				}
			}
		}
		return found
	}
}

// language is the language in which the procedure is written.
func (j *job) language() string {
	if j.of.Language != "" {
		return j.of.Language
	}
	return j.manual.Shop.Language
}
