package words

import "fmt"

// Jobs are the words around jobs that were done. Those with a %s or %d say what
// goes there in the comment.
type Jobs struct {
	Done, Procedure, Saved, Unit, Revision, StepsDone, Gaps, Who string // headings
	TickNoProof, NamesApart                                      string
	OfSteps                                                      string // how many, of how many
	MadeWith, NotIssuedThen                                      string // a revision that is not the one that stands; -
	NoUnit, OptionsOnly, UnitNo, NoGaps, GapsAt                  string // -; options; serial; -; how many, steps
	FoldedRows                                                   string // how many

	WhatMeasured, Value, Where, When, Verdict, LimitHead, Limit string // headings, and the word at the line
	Within, Out, NotJudged, GivenUp, Numbers                    string
	PlotOne                                                     string // value with unit, date, a sentence on the limit
	PlotDay                                                     string // how many, date, least, greatest, unit, limit, how many out
	PlotText                                                    string // how many, first date, last date, least, greatest, unit, limit, how many out
	LimitIs, NoLimit                                            string // a limit; -
	AtMost, AtLeast, Between                                    string // a number; a number; two numbers

	Said, SaidIntro, SaidHere                string // heading; -; how many
	NotAnswered, Answered                    string // -; a date
	AnswerHow, AnswerHead, NothingSaid, Step string // a file; -; -; -

	Record, RecordOf, Begun, SavedAt, DoneBy, NobodyNamed string // -; a title; a time; a time; who; -
	PartlyDone, Clock, ClockBack                          string // -; heading; a time, minutes
	Words, State, Holds                                   string // headings
	WaitFrom, WaitOver, WaitRuns, NotMet, Met             string // two times; -; -; -; -
	Proved, NotProved, Good, NotGood, Signed, SignedBy    string // Signed: a time; SignedBy: name, time
	GapBefore, GapHolds, GivenUpAt                        string // step, steps; step, holds; a time

	NotYet, InHand, StepDone, DoesNotApply, NotOnUnit, NotNeeded string
	HandedOver, HandedTo, HandedLocks                            string
	Ticked, WasLate, Near, NearAgain                             string
}

// OfState is a state of a step as a record has it.
func (w *Jobs) OfState(state string) string {
	switch state {
	case "not yet":
		return w.NotYet
	case "in hand":
		return w.InHand
	case "done":
		return w.StepDone
	case "does not apply":
		return w.DoesNotApply
	case "not on this unit":
		return w.NotOnUnit
	case "not needed":
		return w.NotNeeded
	}
	return state
}

// LimitOf writes the ends of a limit; "" is an open end.
func (w *Jobs) LimitOf(low, high string) string {
	switch {
	case low == "" && high == "":
		return ""
	case low == "":
		return fmt.Sprintf(w.AtMost, high)
	case high == "":
		return fmt.Sprintf(w.AtLeast, low)
	}
	return fmt.Sprintf(w.Between, low, high)
}
