package english

import "baybinder/generator/language/words"

var closeOut = words.CloseOut{
	Missed: "Easily missed: %s.", After: "the job looks done before it", Follows: "it follows a wait, another procedure or a stop",
	Repeats: "there are %d", NoTrace: "nothing shows afterwards whether it was done", Hidden: "a part that goes on later covers it",
	Different: "its tools are not those of the steps around it", Small: "it is small",
	CountOf: "counted, of %d",
	Title:   "Close-out", Intro: "All that was opened, counted closed. Look at the machine, not at the ticks above.",
	Opened: "Opened", Closed: "Closed", What: "What", HowMany: "How many", Seen: "Seen", AtTheStart: "at the start",
	MissedSteps: "Other steps that are easily missed", MissedAll: "Easily missed steps: %d.", MissedMark: "easily missed",
	Cap: "cap: %s", Tape: "insulation on the end: %s", CapOut: "taken out", TapeOff: "taken off",
	On: "on", Tight: "tight", Full: "full", Away: "taken away", Back: "set back", Live: "live", LocksOff: "locks off, live",
	CountSeen: "close-out: {0} of {1}", CountMissed: "easily missed: {0} of {1}", NotTicked: "not ticked yet", TickRow: "Seen closed: {0}",
}
