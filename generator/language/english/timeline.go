package english

import "baybinder/generator/language/words"

var timeLine = words.TimeLine{
	Title: "Time line", Intro: "The steps one after another, as they are written. What is measured and looked at counts as right, a question has its first answer, optional steps are left out.",
	Picture: "%d phases in %s, one after another; the list below says the same.",
	From:    "from %s to %s", People: "up to %d people", Waits: "%s of it waits",
	NoTime: "%d steps have no time", NoTimeOne: "1 step has no time",
	Work: "work; as tall as people at once", Wait: "a wait", Call: "another procedure, performed here",
	Least:       "The same work cannot take less than %s with %d people, in whatever order.",
	LeastOne:    "The same work cannot take less than %s with one person, in whatever order.",
	Decide:      "What decides it: steps %s. The steps stay in the order in which they are written.",
	Range:       "%s to %s",
	WorkWorked:  "%s of work. How this was worked out",
	WorkFormula: "each step's time for each of its people, phase by phase",
	BayWorked:   "%s in the bay. How this was worked out",
	BayFormula:  "the phases one after another",
	SumSource:   "the times of the steps, phases, waits and performed procedures on this page",
	Second:      "at step %s besides: %s",
	NoTimeUpTo:  "up to %d steps have no time", NoTimeUpToOne: "on some of these units 1 step has no time",
	WaitsWorked: "%s of waiting. How this was worked out", WaitsFormula: "the waits of the steps, and of the procedures that they perform",
	PhaseWorked: "%s: from %s to %s. How this was worked out", PhaseFormula: "when it begins, then what goes on one after another",
	LeastWorked: "Not less than %s. How this was worked out", LeastFormula: "the longer of the longest chain and the work shared without a gap",
	LeastChain: "steps %s", LeastShared: "%s of work / %d",
	LeastSource: "the critical path through the times on this page; no order of the same work is shorter",
}
