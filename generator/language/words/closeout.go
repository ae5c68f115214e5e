package words

// CloseOut are the words on steps that are easily missed, and of the list at a
// procedure's end in which everything that was opened is counted closed. In
// those for the page's script {0} and {1} stand for numbers.
type CloseOut struct {
	Missed, After, Follows, Repeats, NoTrace, Hidden, Different, Small string // Missed: the reasons; Repeats: how many
	CountOf                                                            string // how many
	Title, Intro, Opened, Closed, What, HowMany, Seen, AtTheStart      string
	MissedSteps, MissedAll, MissedMark                                 string // MissedAll: how many
	Cap, Tape                                                          string // what was put on the open end of a part
	CapOut, TapeOff                                                    string
	On, Tight, Full, Away, Back, Live, LocksOff                        string
	CountSeen, CountMissed, NotTicked, TickRow                         string // for the script
}
