package words

// Language are the words of pages in more than one language.
type Language struct {
	Name      string // the language's own name
	Languages string // what the switch is called
	AtThe     string // a fastener, a part

	// Where something holds: units with and without options; what happened.
	OnUnits, With, Without, Where string // OnUnits, Where: a list
	And, OrElse, OtherCases       string // between the items, between the cases; -
	Failed, Passed                string // a hold, a step's number
	Was, WasNot                   string // a hold, a step's number, an answer
	StepDone, StepLeftOut         string // a step's number

	BoltLoad, NotJudged                                       string // of a thread or a class that no table has
	ByHand                                                    string // how tight a fastener is
	About                                                     string // of an amount that is not measured out
	AtMost, AtLeast, To                                       string // of a limit: "at most 5 V", "2 to 6 bar"
	Direct, Alternating                                       string // behind a voltage or a current: "360 V dc"
	Day, Days, Week, Weeks, Month, Months, Year, Years        string // units of the calendar, of one and of several
	KeptPlug, KeptAlone, KeptByNobody, TestedAltered, FreedBy string
}
