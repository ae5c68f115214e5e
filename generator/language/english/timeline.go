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
}
