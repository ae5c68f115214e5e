package english

import "baybinder/generator/language/words"

var several = words.Language{Name: "English", Languages: "This page in another language", AtThe: "%s at the %s",
	OnUnits: "on units %s", With: "with %s", Without: "without %s", Where: "where %s", And: " and ", OrElse: ", or ", OtherCases: "in other cases",
	Failed: "the %s in step %s failed", Passed: "the %s in step %s passed", Was: "the %s in step %s is %s", WasNot: "the %s in step %s is not %s",
	StepDone: "step %s is done", StepLeftOut: "step %s is left out",
	BoltLoad: "Bolt load", NotJudged: "not judged: no table here has this thread and class", ByHand: "hand-tight", Direct: "dc", Alternating: "ac", About: "about", AtMost: "at most", AtLeast: "at least", To: "to",
	Day: "day", Days: "days", Week: "week", Weeks: "weeks", Month: "month", Months: "months", Year: "year", Years: "years",
	KeptPlug:      "a plug that is kept by whoever works alone",
	KeptAlone:     "%s: keep it with you, or in reach and in sight. It is your lock only while you work alone",
	KeptByNobody:  "%s: with more than one person at work it is no lock",
	TestedAltered: "%s is altered during this test",
	FreedBy:       "Comes off and goes on only with these loose",
}
