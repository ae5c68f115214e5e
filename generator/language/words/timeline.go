package words

// TimeLine are the words of the time line at a procedure's end.
type TimeLine struct {
	Title, Intro, Picture                                     string // Picture: how many phases, how long
	From, People, Waits                                       string // From: two times; People: how many; Waits: how long
	NoTime, NoTimeOne                                         string // NoTime: how many steps
	Work, Wait, Call                                          string // the legend
	Least, Decide                                             string // Least: how long, how many people; Decide: the steps
	LeastOne                                                  string // how long
	Range                                                     string
	WorkWorked, BayWorked, WorkFormula, BayFormula, SumSource string
	Second                                                    string
	PhaseWorked, PhaseFormula                                 string // PhaseWorked: the phase, two times
	LeastWorked, LeastFormula, LeastSource                    string // LeastWorked: how long
	WaitsWorked, WaitsFormula                                 string // WaitsWorked: how long
	NoTimeUpTo, NoTimeUpToOne                                 string // of units of which some have fewer
	LeastChain, LeastShared                                   string // LeastChain: the steps; LeastShared: how much work, how many people
}
