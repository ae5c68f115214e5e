package words

import "strings"

// Readings are the words of the pages about plans, people and exercises. Those
// with a %s or %d say what goes there in the comment.
type Readings struct {
	Changes Changes
	Marks   Marks

	// plans
	Plans, InPlans, InPlansNote, PlanIntro       string
	LeadsTo, WithinTime, Assessor, AnyAssessor   string // LeadsTo: roles; WithinTime: a duration; Assessor: a role
	InAll, TimeRule, BuildsOn, AddedToPlan       string // InAll: how many, a time; BuildsOn: numbers
	Read, Watched, PerformedOf, Performed        string // PerformedOf: which, of how many
	Date, AssessorSign, Reader, Started, AllRead string

	// the folder of the readings
	Front, FrontNote, Matrix, MatrixOf        string // FrontNote: a day; MatrixOf: a plan
	People, Procedures                        string
	RolesRunOut, RunsOutOn, RanOutOn          string // a day
	Reviews                                   string
	ReviewIs, ReviewWas                       string // a day
	InspectIs, InspectWas                     string // a day
	Overdue, Stale, Due, Good, ActsLeft       string // with the letters below
	OverdueMark, StaleMark, DueMark, GoodMark string
	ActsMark, NobodyIs, AndMore, By, ByDay    string // AndMore: how many; ByDay: a day
	MatrixNote, PeopleFrom, NotAsked          string // PeopleFrom: from, to
	NobodyInTraining, Person, State, LastRead string
	OpenInManual, NoPlan                      string

	// a person
	RolesHeld, NoRoles, HeldSince, NoEnd, NotYetGained    string // HeldSince, NotYetGained: a day
	Next, NothingNext, Record, NoRecord, WitnessedBy      string
	StillTrue, NoLongerTrue, Taught, Done, ToWatch, SoFar string

	// a procedure
	WhoMay, WhoMayNote, HoldAll, HoldSome, NobodyHolds string // WhoMayNote: a day; NobodyHolds: roles
	NobodyElse, Anyone, Between                        string // Between: people
	HowAllStand, NobodyAsked                           string
	MakesStale, MakesStaleNote, MakesStaleNone         string
	LookAtCallers, WhatChanged, ReadRevision           string // ReadRevision: number
	ReadUnissued, WordsNotKept, NothingForThem         string
	NotHeld                                            string

	// exercises
	Exercise, Answers, ExerciseTitle, AnswersTitle string // the titles: a procedure
	ExerciseMark, AnswersMark, ExerciseHow         string
	WorkFrom, Score, SignalWord                    string
	ExerciseDone, NoSteps                          string
	NotRead                                        string

	// sheets
	SignIn, SignInOf, SignInNote, Trainer, Signature string // SignInOf: a procedure
	Again, AgainOf, ReadOn, NothingAgain             string // AgainOf: a person; ReadOn: a day
	Told, Inspected, ScoreIs                         string // ScoreIs: a score
	Open, OnlyOpen, MarkedJob                        string

	// evidence
	Revisions, RevisionNo, Reason, Written, Checked, Approved, Walked string
	Readers, Reread, Tell, Spared, RetiredThen, ToAll                 string
	Inspections, InspectBy, NoInspection, Worked, Inspector           string // InspectBy: a day
	OnUnit, Found, Withdrawn                                          string // Withdrawn: a day
}

// Around is what stands before and behind the %s of a format.
func Around(format string) (before, after string) {
	before, after, _ = strings.Cut(format, "%s")
	return before, after
}
