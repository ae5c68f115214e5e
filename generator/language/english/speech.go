package english

import (
	_ "embed"

	"baybinder/generator/language/shape"
)

//go:embed procedure.md
var procedure string

var speech = shape.Speech{
	MakeSafe: "Make safe", Strip: "Strip", Work: "Work", Refit: "Refit", GiveBack: "Return",

	Summary:   "What comes off to reach the %s, and how it goes back.",
	Intro:     "Perform this to work on %s. The order follows from what is under what in the machine's file.",
	UnitsOnly: "For units %s only.", OnUnits: "On units %s: ",
	With: "with ", Without: "without ", And: " and ",
	The: "the %s",

	Isolate: "switch off at the %s", Lock: "put your lock on it", Here: "It is here: %s.", Cuts: "It cuts %s.",
	Release: "release the %s", WaitOut: "wait out the %s", PlaceBlock: "put the %s in place", BlockHold: "It holds %s.",
	Prove: "prove the %s dead", SayProof: "Say here what shows it.", Mind: "Mind: %s.",

	Mark: "mark the %s against swapping", TakeOff: "take the %s off", Disconnect: "disconnect the %s", Cap: "cap it", Unplug: "unplug the %s",
	HeldBy: "It is held by %s.", Use: "use %s.", Carries: "The %s carries it.", WhenRefit: "When you refit it",
	SayWork: "say here what is done at %s", Reverse: "refit everything in reverse",

	Clear: "take the %s away", Unlock: "take your lock off the %s", LeakLook: "look for a leak: %s", Ends: "the job ends with the %s",
	Dry: "dry what was spilled of the %s", Fill: "fill up the %s", FillWith: " with %s", Bleed: "bleed the %s",
	Restore: "switch the %s on again", RestorePoint: "switch on again at the %s", ComeBack: "let the %s come back",

	PutBack: "put the %s back", Connect: "connect the %s", PlugIn: "plug the %s in", Undo: "undo the %s", Tighten: "tighten the %s",
	LetOut: "drain the %s", Alter: "change the %s", Reset: "set the %s back", Perform: "perform this: %s", Stop: "stop here: %s",
}
