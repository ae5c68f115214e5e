// Package words says which words the program itself puts on a page and into its
// scripts: a language has them all, in its folder.
package words

import "fmt"

// Words are the theme's words in one language. Those with a %s or %d say what
// goes there in the comment.
type Words struct {
	Lang string

	Danger, Warning, Caution, Notice string

	Front, Machines, Procedures, Tools, Supplies, Hazards, Holds, Roles, Snags string
	SkipTo, Index, More                                                        string
	Emergency, FirstAid, EnergyIsCut, NoFirstAid, NoAidWritten                 string

	AnyMachine, NotIssued, Revision, ReviewBy  string // Revision: number, date; ReviewBy: date
	DraftNote, RetiredNote, InsteadNote        string
	BeforeYouStart, Who, Time, Fetch, Gear     string
	MakeDead, NothingToFetch, Anyone, NoPlace  string
	OnePerson, PeopleAtOnce, WhoCalls          string // PeopleAtOnce: how many
	SecondToo, WaitNoLonger                    string // WaitNoLonger: the longest time
	WithinOf, WithinOfBefore                   string // how long, the step; how long
	NearLimit, NearLimitAgain                  string // the part of the limit; and how soon it is measured again
	HoursOfWork, TimeInTheBay, OfThatWaits     string // OfThatWaits: a duration
	NoTimes, HighestWord, NoHazards            string
	Wear, OtherNames, Contents                 string
	OnlyWith, OnlyWithout                      string // an option
	OnlyIfFailed                               string // a hold
	OnlyIfAnswer                               string // a hold, an answer
	MayBeLeftOut, Because, AtTheRefit          string
	InThisOrder, Stage, Sequence               string // a list; fastener, number, amount; a list
	PauseHere, NeverPause                      string
	ReverseAll, ReverseAsFar, ReverseBut       string // phase; phase, part; phase, parts
	Perform, ThenBack                          string // ThenBack: a step's number
	WaitFor, WaitThenMeasure                   string // WaitFor: duration, name
	LookAt, GoodIs, AskFor, WriteDown, Measure string // a name or a text
	MeasureWith, ProvedOn, Tries, ThenCall     string // a tool; a tool; how many; a role
	OneTry                                     string
	SignBy, CheckBy, WitnessBy                 string // name, role
	StopUntilSigned, CheckApart, CheckTogether string
	WorkMayGoOn, Someone, Limit, IfNot, Name   string
	TimeAndDate                                string

	Checked, NotWalked, NoActs, NotSafe                          string // Checked: acts, what they are, steps that are words only, steps
	WhereThingsStand, AllAsItWas, AtTheEnd, Since                string // Since: a step's number
	NotBack                                                      string // a list of step numbers
	Reverses                                                     string // Reverses: a step's number
	RefitPart, RefitLine, RefitWire, RefitConnector              string // a part
	CapOut, TapeOff                                              string // before a line, a wire is connected
	FitNew, TightenNow, TightenFastener, TakeAway                string // a part; a part; a fastener; a tool
	SetBack, SetBackTo                                           string // a setting; a setting, a value
	NewFastener, Start, BeginByHand, ConfirmStill                string // a supply; how; -; -
	OnThread, OldOne, SerialNo                                   string // a lubricant; what becomes of it; -
	HandOver, HandOverLocks, MarkWith                            string // MarkWith: how
	TorqueCard, FluidCard, Retorque                              string // a machine; a machine; when
	CardsToPrint, Head, FaultCodes                               string
	NoTorque, BleedAfter, Precautions, SheetFirst                string
	ClampLoad, Computed, Source                                  string // a force; a time; -
	Calls, CalledBy, SeenBy, Changes                             string
	UsedBy, NotUsed, ByKind, ByShelf, Step, Steps                string
	KindOf, Kept, Owned, Range, Fits, Rated                      string
	Number, Note, Substitutes, MayBeUsedBy                       string
	Calibration, Calibrated, CalibratedUnit                      string // -; due date; individual, due date
	Nature, Consequence, Avoid, Of                               string
	Unit, Waste, RenewEvery, GHSNote, Gives                      string
	Options, Units, Points, Energies, Parts                      string
	Fasteners, Fluids, Settings, Serials                         string
	TakesALock, NoLock, Where, Cuts, Stored                      string
	Under, HeldBy, ProveDead, Guards, Carries                    string
	Torque, Capacity, Value, Mass, Thread                        string
	OnlyOn, NotOn                                                string // an option
	ProceduresFor, GeneralProcedures, OtherTopics                string
	ChangedLately, NothingIssued, RetiredOnes                    string
	SnagIntro, NoFindings, NotReached, NotReachedIn, PartsOfList string
	Advice, Errors, Drafts, PrintedNote, Preview                 string
	Made                                                         string // a date
	CodeOfPage, ShortCode, WrongLine                             string // -; a code; -
	Search, SearchNoScript, BegunAt, OverAt, Labels              string

	Kinds                  map[string]string // of tools, holds, energies and orders, by the format's own word
	States                 map[string]string // how a thing stands, by the format's own word
	HandOverBy, HandOverTo string
}

// Signal is a signal word in the language.
func (w *Words) Signal(word string) string {
	switch word {
	case "danger":
		return w.Danger
	case "warning":
		return w.Warning
	case "caution":
		return w.Caution
	case "notice":
		return w.Notice
	}
	return ""
}

// Count fills a number into words that take one.
func Count(format string, n int) string { return fmt.Sprintf(format, n) }

// Fill fills a text into words that take one.
func Fill(format, text string) string { return fmt.Sprintf(format, text) }
