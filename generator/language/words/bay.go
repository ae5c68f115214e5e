package words

// Bay are the words that the scripts say at the bay and in the search. {0} and
// {1} stand for what the script puts there.
type Bay struct {
	Cancel, ShortView, SaveRecord, PrintSummary, StartAgain, WhoWorks                            string
	NoStore, FullStore, DamagedStore, OtherTab, OtherTabAgain, OtherRevision                     string
	StepsGone, ClockBack, WhichUnit, ChooseFirst, SerialNumber, UseSerial, OrOptions             string
	ItsOptions, UseOptions, NoSuchSerial, NotBoth, NoOptions, UnitSerial                         string
	UnitOptions, OtherUnit, OtherUnitTitle, OtherUnitText, OtherUnitYes, AgainTitle              string
	AgainText, StartWait, WaitFromTick, WaitOver, WaitOverAt, WaitUntil                          string
	WaitOverShort, WaitShort, MeasureAgain, TesterProved, WithinLimit, OutOfLimit                string
	NoNumber, TwoNumbers, TriesSoFar, CallNow, LookGood, LookBad, Name                           string
	SignNow, SignedBy, TakeBack, SamePerson, TickStep                                            string
	MoreOnStep, InHand, DoesNotApply, CannotSkip, StepIsWrong, Reason                            string
	SkipTitle, WrongTitle, WrongText, WrongInput, Keep, NoteKept                                 string
	StateHand, StateDone, StateSkipped, NotOnUnit, NotNeeded, GapUnticked                        string
	GapHolds, Ticked, DoneOf, Skipped, Gaps, HandNow, FailedGoOn                                 string
	StandAfter, StandStart, StandDoubt, NothingChanged, RecordSaved, TickNoProof                 string
	SummaryOf, SummaryRevision, SummaryTimes, StepHead, WordsHead, StateHead                     string
	HoldsHead, SearchFor, NoHits, HitsFor, ShardMissing, MeantWord                               string
	JobOf, JobOfNobody, JobOn, UnitShort, GoOnOrNew, GoOnWhich, AnswerFirst, NoneOnUnit, Seen    string
	GoOn, GoOnWith, BeginNew, KeepUnit, CalledFrom, BackToStep, SaveAndBack, OpenJobs            string
	NoOpenJobs, NoJobsInFolder, NoJobsKept, JobTimes, JobDone, OpenRecord, RecordOpened          string
	RecordBad, RecordOther, RecordOlder                                                          string
	HandOver, SaveShort, ComingUp, StepNow, UntickTitle, SkipToStep                              string
	FoldedOne, FoldedMany, FoldOut, FoldUp, FirstOf, HandOverNow                                 string
	HandOverPerson, HandedOver, StepAt                                                           string
	LastUsed, WaitLeft, Begin, GoOnAt, AllDone, ReadyAt, GotOf, GotAll, ReadAll, LeftOut, FromTo string
	WhatCanHappen, NearLimit, NearLimitAgain, NoLaterThan, IsLate, WasLate, DueBy                string
}
