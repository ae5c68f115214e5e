package english

import "baybinder/generator/language/words"

var closeOut = words.CloseOut{
	Missed: "Easily missed: %s.", After: "the job looks done already", Follows: "it follows a stop",
	Repeats: "there are %d of them", NoTrace: "nothing shows it afterwards", Hidden: "the next part covers it",
	Different: "it takes other tools", Small: "it is small",
	CountOf: "counted, of %d",
	Title:   "Counted closed", Intro: "All that was opened. Look at the machine, not at the ticks above.",
	Opened: "Opened", Closed: "Closed", What: "What", HowMany: "How many", Seen: "Seen", AtTheStart: "at the start",
	MissedSteps: "Other steps that are easily missed", MissedAll: "Easily missed steps: %d.", MissedMark: "easily missed",
	Cap: "cap: %s", Tape: "insulation on the end: %s", CapOut: "taken out", TapeOff: "taken off",
	On: "on", Tight: "tight", Full: "full", Away: "taken away", Back: "set back", Live: "live", LocksOff: "locks off, live",
	CountSeen: "seen closed: {0} of {1}", CountMissed: "easily missed: {0} of {1}", NotTicked: "not ticked yet", TickRow: "Seen closed: {0}",
}
