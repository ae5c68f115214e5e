package walk

import "baybinder/generator/base/finding"

// What can be wrong with the order of energy acts.
var (
	EnergyOrder = finding.Rule{
		Code:  "energy-order",
		Title: "An energy act out of its order",
		Why:   "Off, locked, let out, proved: a lock on a live switch, or a proof before the lock, protects nobody.",
		Mend:  "Put the acts in the order isolate, lock, release, prove; and back: unlock, restore.",
	}
	NotReleased = finding.Rule{
		Code:  "not-released",
		Title: "Proved dead before what is stored is out",
		Why:   "A capacitor, a pressure or a raised load stays behind when the switch is off, and takes hold of whoever trusts the switch.",
		Mend:  "Write release:, a wait hold of that energy, or place: of the tool that holds the load before the proof.",
	}
	WaitTooShort = finding.Rule{
		Code:  "wait-too-short",
		Title: "A wait that ends before what is stored is gone",
		Why:   "Who measures too early finds the circuit live, and who does not measure finds it with a hand.",
		Mend:  "Make the wait at least as long as computed and as the maker says, or mend the voltage, capacitance, resistance or wait of the energy.",
	}
	WaitShortOfLimit = finding.Rule{
		Code:  "wait-short-of-limit",
		Level: finding.Advice,
		Title: "A measurement that its wait lets fail",
		Why:   "A reading that is expected too high teaches people to expect that, and to pass it.",
		Mend:  "Wait until the charge has fallen to the limit, or let the first measurement have a limit that it has fallen to.",
	}
	ProofWithoutMeasure = finding.Rule{
		Code:  "proof-without-measure",
		Title: "Proved dead without anything that shows it",
		Why:   "Only a reading, a look or a check says that an energy is dead; above the safe voltage only a meter does, and a limit that the live energy meets says nothing.",
		Mend:  "Add a measure hold of that energy to the step, or, at or below the safe voltage and for what is not electric, a look or a check of it. The limit is one that the live energy does not meet: an electric one at or below the safe voltage, in its own ac or dc; a pressure within safe-pressure of nothing; a temperature at or below safe-touch.",
	}
	TesterNotProved = finding.Rule{
		Code:  "tester-not-proved",
		Title: "A tester that is not proved before and after",
		Why:   "A broken tester reads zero on a live bus.",
		Mend:  "Write proved-on: in the hold, with the proving unit.",
	}
	LiveWork = finding.Rule{
		Code:  "live-work",
		Title: "Hands in while an energy is not proved dead",
		Why:   "This is where people are hurt.",
		Mend:  "Prove the energy dead before this step, or move the step behind the proof.",
	}
	GuardOffLive = finding.Rule{
		Code:  "guard-off-live",
		Title: "A guard that comes off while what it guards is live",
		Why:   "The guard is what keeps hands from it; and until it is proved dead, whoever takes the guard off must be warned.",
		Mend:  "Isolate and lock the energy first, and add a hazard: of it to the step.",
	}
	RestoredWhileOpen = finding.Rule{
		Code:  "restored-while-open",
		Title: "Switched on while something is open",
		Why:   "An energy that comes back to an open machine finds whoever is still at it, or the floor.",
		Mend:  "Put back, tighten, fill and bleed what is named before this step. A circuit that is bled with its energy on says bleed: live in the machine's file.",
	}
	LiveTest = finding.Rule{
		Code:  "live-test",
		Title: "A live test without its warning or its second person",
		Why:   "A test with parts off is the one moment when live work is meant; nobody does it unwarned or alone.",
		Mend:  "Add a hazard: of that energy, a sign or check hold and [](people:2) to the step.",
	}
)

// What can be wrong with the order of parts.
var (
	NotReachable = finding.Rule{
		Code:  "not-reachable",
		Title: "Taken off before what is in the way",
		Why:   "The step cannot be done as written, so it is done in some other way.",
		Mend:  "Take off what is over it first.",
	}
	RefitOverOpen = finding.Rule{
		Code:  "refit-over-open",
		Title: "Put back over something open",
		Why:   "What is forgotten under a cover is found by the machine.",
		Mend:  "Put back and tighten what is under it first.",
	}
	RemovedTwice = finding.Rule{
		Code:  "removed-twice",
		Title: "Taken off twice",
		Why:   "One of the two steps is wrong, and the reader cannot know which.",
		Mend:  "Take one of the two out, or put the part back between them.",
	}
	RefitNotRemoved = finding.Rule{
		Code:  "refit-not-removed",
		Title: "Put back without having been off",
		Why:   "Either a step that takes it off is missing, or this one is too many.",
		Mend:  "Write the step that takes it off, or take this one out.",
	}
	ActOrder = finding.Rule{
		Code:  "act-order",
		Title: "An act that cannot be done as things stand",
		Why:   "A step that cannot be done teaches people to skip steps.",
		Mend:  "Move the step to where it can be done, or take it out.",
	}
	NotMarked = finding.Rule{
		Code:  "not-marked",
		Title: "Parts that look alike, opened without a mark",
		Why:   "Swapped lines run the machine backwards.",
		Mend:  "Write mark: with the group before the first of them is opened.",
	}
	ReverseRule = finding.Rule{
		Code:  "reverse",
		Title: "A reverse: that has nothing to take back",
		Why:   "The refit would be shorter than the reader believes.",
		Mend:  "Name a phase that took something off, and a part that it took off and that is still off.",
	}
)

// What can be left undone.
var (
	LeftIsolated = finding.Rule{
		Code:  "left-isolated",
		Title: "Left isolated",
		Why:   "The next one to the machine finds it dead and looks for a fault, or takes off a lock that means something.",
		Mend:  "Unlock and restore it, or say in leaves: that it stays so.",
	}
	LeftOff = finding.Rule{
		Code:  "left-off",
		Title: "Left off",
		Why:   "A cover on the bench is the commonest slip of all.",
		Mend:  "Put it back, or say in leaves: that it stays off.",
	}
	LeftLoose = finding.Rule{
		Code:  "left-loose",
		Title: "Left loose",
		Why:   "A fastener that is run in by hand looks like a tight one.",
		Mend:  "Tighten it, or say in leaves: that it stays loose.",
	}
	LeftInPlace = finding.Rule{
		Code:  "left-in-place",
		Title: "A tool left in place",
		Why:   "A pin, a chock or a jumper that stays behind breaks the machine at its first move.",
		Mend:  "Write clear: where the tool comes out, or say in leaves: that it stays.",
	}
	LeftAltered = finding.Rule{
		Code:  "left-altered",
		Title: "A setting left altered",
		Why:   "A bridged interlock or a raised limit does not show.",
		Mend:  "Write reset:, or say in leaves: that it stays altered.",
	}
	LeftLow = finding.Rule{
		Code:  "left-low",
		Title: "A fluid left low",
		Why:   "A pump that runs dry is a pump to replace.",
		Mend:  "Write fill: once the lines are on, or say in leaves: that it stays low.",
	}
	NotBled = finding.Rule{
		Code:  "not-bled",
		Title: "A circuit left with air in it",
		Why:   "Air in a brake or a ram is found when it matters.",
		Mend:  "Write bleed: after the circuit is filled, or say in leaves: that it is unbled.",
	}
	NotSupplied = finding.Rule{
		Code:  "not-supplied",
		Title: "Too little of a supply for the refit",
		Why:   "The job stands open while somebody fetches one bolt, or the old one goes back in.",
		Mend:  "Write the amount in supplies:.",
	}
	LeakLookWhileWet = finding.Rule{
		Code:  "leak-look-while-wet",
		Title: "Looking for a leak while the spill is wet",
		Why:   "A joint that is wet from the work tells nothing.",
		Mend:  "Write dry: with that fluid between the opening and the look.",
	}
	LeakLookWithoutPressure = finding.Rule{
		Code:  "leak-look-without-pressure",
		Level: finding.Advice,
		Title: "Looking for a leak with the pressure off",
		Why:   "A joint that is under no pressure does not leak; it does when the machine runs.",
		Mend:  "Look again once the pressure is back on.",
	}
	DeadBranch = finding.Rule{
		Code:  "dead-branch",
		Title: "A branch of a hold that was not taken",
		Why:   "Nobody can know how a measurement went that nobody took: the branch is never gone into, or by guess.",
		Mend:  "Take the hold before this, or ask about the one that was taken.",
	}
	NotAsked = finding.Rule{
		Code:  "not-asked",
		Title: "A hold that is not taken before an energy goes off or comes back",
		Why:   "Whoever still has a hand in the machine, or works at the other end of it, must know before the switch is moved.",
		Mend:  "Write hold: with it, after the last thing that is taken off or loosened and before this.",
	}
	BadPause = finding.Rule{
		Code:  "bad-pause",
		Title: "A stopping place that leaves danger",
		Why:   "The night shift finds the machine as it stands here, without you.",
		Mend:  "Lock what is isolated, cap what is open, tighten what is loose; or stop at another place.",
	}
	NotCapped = finding.Rule{
		Code:  "not-capped",
		Level: finding.Advice,
		Title: "A line left open across a hold",
		Why:   "Dirt goes in and fluid runs out while the work stands.",
		Mend:  "Write cap: for the line.",
	}
)

// What can be wrong between procedures, and with units.
var (
	StateMismatch = finding.Rule{
		Code:  "state-mismatch",
		Title: "Things are not as expects or leaves says",
		Why:   "Two procedures that meet must agree on how the machine stands where they meet.",
		Mend:  "At a call, bring it there in a step before. At leaves:, bring it there with links in the steps (isolate:, remove: …). Or correct what expects: or leaves: says.",
	}
	WrongMachine = finding.Rule{
		Code:  "wrong-machine",
		Title: "A procedure for another machine",
		Why:   "Its points and parts are not those of this machine.",
		Mend:  "Call a procedure for this machine, or one that is for none.",
	}
	UnitGap = finding.Rule{
		Code:  "unit-gap",
		Title: "Serial numbers that no row names, or units whose energy has no point",
		Why:   "Whoever stands at that unit finds no page for it, or nothing to switch off.",
		Mend:  "Write a row for them, or widen a row; name a point that those units have.",
	}
	UnitOverlap = finding.Rule{
		Code:  "unit-overlap",
		Title: "Serial numbers that two rows name",
		Why:   "The unit has one set of options, and the page would show two.",
		Mend:  "End the one row before the other begins.",
	}
	NeverApplies = finding.Rule{
		Code:  "never-applies",
		Level: finding.Advice,
		Title: "A step or an act for no unit",
		Why:   "No machine of the shop has these options, so nobody ever does it.",
		Mend:  "Correct the condition, or take the step out.",
	}
	TooManyConditions = finding.Rule{
		Code:  "too-many-conditions",
		Title: "More conditions meet at one act than are walked exactly",
		Why:   "What cannot be walked is not vouched for, and nobody at the bay can follow it either.",
		Mend:  "Make procedures of their own for the variants.",
	}
	ActInWords = finding.Rule{
		Code:  "act-in-words",
		Level: finding.Advice,
		Title: "An act that is said in words only",
		Why:   "What is not typed is not checked: the order of this act is yours to judge.",
		Mend:  "Make a link of it.",
	}
)

// Rules are the package's rules.
func Rules() []*finding.Rule {
	return []*finding.Rule{
		&EnergyOrder, &NotReleased, &WaitTooShort, &WaitShortOfLimit, &ProofWithoutMeasure, &TesterNotProved,
		&LiveWork, &GuardOffLive, &RestoredWhileOpen, &LiveTest,
		&NotReachable, &RefitOverOpen, &RemovedTwice, &RefitNotRemoved, &ActOrder, &NotMarked, &ReverseRule,
		&LeftIsolated, &LeftOff, &LeftLoose, &LeftInPlace, &LeftAltered, &LeftLow, &NotBled,
		&NotSupplied, &LeakLookWhileWet, &LeakLookWithoutPressure, &DeadBranch, &NotAsked, &BadPause, &NotCapped,
		&StateMismatch, &WrongMachine, &UnitGap, &UnitOverlap, &NeverApplies, &TooManyConditions, &ActInWords,
	}
}
