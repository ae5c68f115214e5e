package english

import "baybinder/generator/language/words"

var jobs = words.Jobs{
	Done: "Jobs done", Procedure: "Procedure", Saved: "Saved", Unit: "Unit", Revision: "Revision", StepsDone: "Steps done", Gaps: "Gaps", Who: "Done by",
	TickNoProof: "A tick says who marked a step and when. It proves nothing by itself.",
	NamesApart:  "Names stand in the shop's readings, not on these pages.",
	OfSteps:     "%d of %d",
	MadeWith:    "made with revision %s", NotIssuedThen: "made before the first revision",
	NoUnit: "no unit chosen", OptionsOnly: "with: %s", UnitNo: "unit %s", NoGaps: "none", GapsAt: "%d, at step %s",
	FoldedRows:   "Older ones: %d",
	WhatMeasured: "What was measured", LimitHead: "Limit then", Value: "Value", Where: "Where", When: "When", Verdict: "Judged then", Limit: "limit",
	Within: "within the limit", Out: "out of the limit", NotJudged: "limit not recorded", GivenUp: "out of the limit, measured again", Numbers: "All values as numbers",
	PlotOne:  "One value, %s, on %s. %s",
	PlotDay:  "%d values on %s: the least is %s, the greatest %s %s. %s Out of the limit: %d.",
	PlotText: "%d values from %s to %s: the least is %s, the greatest %s %s. %s Out of the limit: %d.",
	LimitIs:  "Limit: %s.", NoLimit: "No limit stands in the manual.",
	AtMost: "at most %s", AtLeast: "at least %s", Between: "%s to %s",
	Said: "Said to be wrong", SaidIntro: "What technicians said of a step, and the writer's answer.", SaidHere: "Said to be wrong: %d, see the foot of the page",
	NotAnswered: "Not answered yet.", Answered: "Answer, %s:",
	AnswerHow: "To answer, add the line below to %s, with your words between the quotes.", AnswerHead: "The file's first line is:", NothingSaid: "Nobody said that a step is wrong.", Step: "Step",
	Record: "Record", RecordOf: "Record: %s", Begun: "begun %s", SavedAt: "saved %s", DoneBy: "Done by: %s", NobodyNamed: "nobody named",
	PartlyDone: "This record was saved before every step was done.", Clock: "Clock", ClockBack: "%s: the computer's clock was set back by %d min. Times before it cannot be trusted.",
	Words: "Words", State: "State", Holds: "Holds",
	WaitFrom: "from %s to %s", WaitOver: "over", WaitRuns: "not over when it was saved", NotMet: "not met", Met: "met",
	Proved: "tester proved before and after", NotProved: "tester not proved", Good: "good", NotGood: "not good", Signed: "signed %s", SignedBy: "signed by %s, %s",
	GapBefore: "Gap: step %s was ticked before %s.", GapHolds: "Gap: step %s was ticked with a hold still open: %s.", GivenUpAt: "given up %s:",
	NotYet: "not yet", InHand: "in hand", StepDone: "done", DoesNotApply: "does not apply", NotOnUnit: "not on this unit", NotNeeded: "not needed",
	HandedOver:  "Handed over at step %s, %s.",
	HandedTo:    "From %s to %s.",
	HandedLocks: "Lock numbers: %s.",
}
