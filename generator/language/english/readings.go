package english

import "baybinder/generator/language/words"

var readings = words.Readings{
	Changes: changes, Marks: marks,
	Plans: "Reading plans", InPlans: "Reading plans that include it",
	InPlansNote: "Whoever follows one of them reads this. When a revision is issued to be read again, their reading of it is out of date.",
	PlanIntro:   "Read in this order: nothing comes before what it builds on. Tick, date and have signed what is done.",
	LeadsTo:     "Leads to: %s", WithinTime: "Within %s of the start", Assessor: "Performed under the eye of someone who is: %s", AnyAssessor: "what the plan leads to",
	InAll: "%d procedures, about %s of reading.", TimeRule: "Words at 238 a minute (Brysbaert 2019); 12 s for a picture and 20 s for a table, by our own rule.",
	BuildsOn: "Builds on %s", AddedToPlan: "here because a procedure of the plan performs it",
	Read: "Read", Watched: "Watched", PerformedOf: "Performed, %d of %d", Performed: "Performed",
	Date: "Date", AssessorSign: "Assessor", Reader: "Reader", Started: "Started", AllRead: "All of it done",

	Front: "Readings", FrontNote: "As of %s. These pages name people: they are not part of the manual's site.",
	Matrix: "Matrix", MatrixOf: "Matrix: %s", People: "People", Procedures: "Procedures",
	Reviews: "Reviews and inspections that are due or soon will be", ReviewIs: "to be reviewed by %s", ReviewWas: "was to be reviewed by %s",
	InspectIs: "working by it is to be inspected by %s", InspectWas: "working by it was to be inspected by %s",
	RolesRunOut: "Roles that ran out or soon do", RunsOutOn: "runs out after %s", RanOutOn: "ran out after %s",
	Overdue: "overdue", Stale: "stale: changed since it was read", Due: "due", Good: "read: still true", ActsLeft: "acts left: read, still to be watched or performed",
	OverdueMark: "O", StaleMark: "S", DueMark: "D", GoodMark: "R", ActsMark: "A",
	NobodyIs: "Nobody.", AndMore: "and %d more", By: "By", ByDay: "by %s",
	MatrixNote: "An empty field: no plan of that person asks for it, and there is no record of it.", PeopleFrom: "People %d to %d",
	NotAsked: "asked by no plan", NobodyInTraining: "Nobody follows a plan, and nothing is recorded.", Person: "Person", State: "State", LastRead: "Last read",
	OpenInManual: "Open it in the manual", NoPlan: "It is in no plan.",

	RolesHeld: "Roles", NoRoles: "No role is written.", HeldSince: "since %s", NoEnd: "does not run out", NotYetGained: "from %s",
	Next: "What is next", NothingNext: "Nothing is left to do.", Record: "What is recorded", NoRecord: "Nothing is recorded.", WitnessedBy: "Under the eye of",
	StillTrue: "still true", NoLongerTrue: "changed since", Taught: "Taught", Done: "Done", ToWatch: "to be watched", SoFar: "performed %d of %d times",

	WhoMay: "Who may do this today", WhoMayNote: "By the roles in the manual's files, on %s. It says nothing of who is well, rested or here: the foreman decides, and local codes come first.",
	HoldAll: "Hold every role that it needs", HoldSome: "Hold some of them, or held them", NobodyHolds: "Nobody holds on this day: %s.",
	NobodyElse: "Whoever is not named here holds none of these roles.", Anyone: "No role is asked for: anyone trained in the shop.", Between: "%d people at once hold them between them.",
	HowAllStand: "Who has read it", NobodyAsked: "No plan asks anybody to read it, and no reading is recorded.",
	MakesStale: "What a change here makes stale", MakesStaleNote: "If the next revision is issued to be read again, these readings are out of date:", MakesStaleNone: "No reading of it is true now, so none goes out of date.",
	LookAtCallers: "These perform it, at any depth: look at them when it changes", WhatChanged: "What changed for those whose reading is stale", ReadRevision: "Since revision %s", ReadUnissued: "Since a text that was never issued",
	WordsNotKept: "The words that were read were not kept: what changed cannot be said.", NothingForThem: "Nothing that a reader acts on.", NotHeld: "not held",

	Exercise: "Blank-out sheet", Answers: "Answers to it", ExerciseTitle: "Exercise: %s", AnswersTitle: "Answers: %s",
	ExerciseMark: "EXERCISE. Never work from this sheet.", AnswersMark: "ANSWERS TO AN EXERCISE. Never work from this sheet.",
	ExerciseHow: "In each phase the steps stand in a wrong order. Write into each square the place that the step has in its phase; write in the torques and angles, and the signal word of each caution. Pictures, reasons and text between the steps are left out.",
	WorkFrom:    "The procedure to work from", Score: "Right", SignalWord: "Signal word",
	ExerciseDone: "Looked through by", NoSteps: "This procedure has no steps.",
	NotRead: "not read as it stands: %s",
	SignIn:  "Sign-in sheet of a class", SignInOf: "Sign-in: %s", SignInNote: "Whoever signs has been through the revision that is named here. Afterwards: readings record --people … --did read.", Trainer: "Trainer", Signature: "Signature",
	Again: "To read again", AgainOf: "To read again: %s", ReadOn: "read on %s", NothingAgain: "Nothing is to be read again.",
	Told: "Told of a change", Inspected: "Inspected at work", ScoreIs: "right: %s", Open: "Open", OnlyOpen: "Only what is open", MarkedJob: "Marked",

	Revisions: "Revisions", RevisionNo: "Rev", Reason: "Why", Written: "Written", Checked: "Checked", Approved: "Approved", Walked: "Walked through",
	Readers: "Readers", Reread: "read it again", Tell: "are told", Spared: "need not know", RetiredThen: "taken out of use", ToAll: "read it",
	Inspections: "Inspections", InspectBy: "To be inspected by %s.", NoInspection: "Nobody was inspected working by it.", Worked: "Worked by it", Inspector: "Inspected",
	OnUnit: "On", Found: "Found", Withdrawn: "withdrawn on %s",
}
