package model

import "strings"

// Target says what the id of a link names.
type Target uint8

// What a link can name.
const (
	NoTarget Target = iota // the address ends after the colon: why:
	ToTool
	ToSupply
	ToRole
	ToPost
	ToHazard
	ToHold
	ToEnergy
	ToPoint
	ToEnergyOrPoint
	ToPart
	ToFastener // or fastener#part
	ToGroup
	ToFluid
	ToSetting
	ToMachine
	ToProcedure // or procedure#step
	ToPhase     // or phase#part, phase!part,part
	ToOrder
	ToOption  // or !option
	ToOutcome // a measure or look hold
	ToAnswer  // an ask hold = one of its answers
	ToNote    // a note hold
	ToRefit   // the word refit
	ToPause   // nothing, or never
	ToName    // a name that is made here
	ToPeople  // a number of people
	ToTime    // a duration
	ToWithin  // a duration, or duration#step
	ToAddress // a file, a picture or a page elsewhere
)

// Act says what a link does to the thing that it names.
type Act uint8

// What acts do. NoAct is a mention.
const (
	NoAct Act = iota
	Isolate
	Lock
	Release
	Prove
	Unlock
	Restore
	TestLive
	Remove
	Refit
	Renew
	Cap
	Loosen
	Tighten
	Mark
	Place
	Clear
	Alter
	Reset
	Drain
	Fill
	Bleed
	Dry
	Call
	Reverse
)

// List says which of a procedure's lists a link is reconciled with.
type List uint8

// The four reconciled lists.
const (
	NoList List = iota
	ListTools
	ListSupplies
	ListHazards
	ListHolds
)

// Kind is one kind of link: a row of the table that bind, the walk, the pages
// and the reference are made from.
type Kind struct {
	Name   string
	Target Target
	Act    Act
	List   List
	Worded bool   // a link of this kind needs words for a plain viewer
	Frag   string // the signs that may stand before a second part
	Stops  bool   // work stops here for a hold
	Says   string // what it says, for the reference

	// What is true of a kind and more than one place asks.
	Conditional bool // the step is done on some units or in some runs only
	Branches    bool // only where an earlier hold ended in one way
	Silent      bool // a sign for the program alone: no reader acts on it, and it is not in the fingerprint
	InStep      bool // means nothing outside a numbered step; of an act that is always so

	// What is true of an act.
	Undo      Act  // what a reverse: makes of it; NoAct where nothing of it comes back
	TakesOff  bool // a part comes off
	PutsBack  bool // a part goes back on
	Opens     bool // something comes off or loose: what was asked of holds before counts no more
	HandsOff  bool // nothing of the machine is opened, closed or changed by it
	Live      bool // energy comes back, which asks how the whole machine stands
	Guarded   bool // people are hurt where it is left out: nobody may say that the step does not apply
	Empties   bool // nothing is left: a zero that is written beside it is what it leaves
	Sets      bool // brings something to the value that is written of it
	Spills    bool // meets what is in the circuit
	AfterPart bool // in a note for the refit it is done when the part is on
}

// Machine says whether a link of this kind names a thing of the machine.
func (k *Kind) Machine() bool {
	switch k.Target {
	case ToEnergy, ToPoint, ToEnergyOrPoint, ToPart, ToFastener, ToGroup, ToFluid, ToSetting, ToOrder, ToOption:
		return true
	default: // the others are no concern of this
	}
	return false
}

// The names of the kinds that code asks for by name; nothing compares a name
// with a text of its own, and a test reads the code for it.
const (
	LinkTool     = "tool"
	LinkRole     = "role"
	LinkPost     = "post"
	LinkHazard   = "hazard"
	LinkHold     = "hold"
	LinkLock     = "lock"
	LinkNoted    = "noted"
	LinkDo       = "do"
	LinkSee      = "see"
	LinkOn       = "on"
	LinkWhy      = "why"
	LinkEach     = "each"
	LinkBetween  = "between"
	LinkWhen     = "when"
	LinkIfNot    = "if-not"
	LinkIf       = "if"
	LinkAgain    = "again"
	LinkOptional = "optional"
	LinkPeople   = "people"
	LinkTime     = "time"
	LinkWithin   = "within"
	LinkPause    = "pause"
	LinkStep     = "step"
)

// Kinds is the table of link kinds, in the order in which the reference shows
// them.
var Kinds = []*Kind{
	{Name: LinkTool, Target: ToTool, List: ListTools, Says: "this step uses the tool"},
	{Name: "supply", Target: ToSupply, List: ListSupplies, Says: "this step uses the supply"},
	{Name: LinkRole, Target: ToRole, Says: "someone with this role does it"},
	{Name: LinkPost, Target: ToPost, Says: "the person at this post does it"},
	{Name: LinkHazard, Target: ToHazard, List: ListHazards, Worded: true, Says: "this step meets the hazard: its box is shown before the step"},
	{Name: LinkHold, Target: ToHold, List: ListHolds, Stops: true, Worded: true, InStep: true, Says: "work stops here for it"},
	{Name: "isolate", Target: ToEnergyOrPoint, Act: Isolate, HandsOff: true, Guarded: true, Empties: true, Says: "the energy, or the point, is switched off"},
	{Name: LinkLock, Target: ToEnergyOrPoint, Act: Lock, HandsOff: true, Guarded: true, Says: "a lock is fitted"},
	{Name: "release", Target: ToEnergy, Act: Release, HandsOff: true, Guarded: true, Empties: true, Says: "what is stored is let out, lowered or blocked"},
	{Name: "prove", Target: ToEnergy, Act: Prove, HandsOff: true, Guarded: true, Empties: true, Says: "the energy is proved dead"},
	{Name: "unlock", Target: ToEnergyOrPoint, Act: Unlock, HandsOff: true, Guarded: true, Live: true, Says: "the lock comes off"},
	{Name: "restore", Target: ToEnergyOrPoint, Act: Restore, HandsOff: true, Guarded: true, Live: true, Says: "the energy is switched on again"},
	{Name: "test-live", Target: ToEnergy, Act: TestLive, HandsOff: true, Guarded: true, Live: true, Says: "the energy is put on for a test while parts may be off"},
	{Name: "remove", Target: ToPart, Act: Remove, Undo: Refit, TakesOff: true, Opens: true, Spills: true, Says: "the part is taken off"},
	{Name: "disconnect", Target: ToPart, Act: Remove, Undo: Refit, TakesOff: true, Opens: true, Spills: true, Says: "the same as remove:, in the trade's word for lines and wires"},
	{Name: "refit", Target: ToPart, Act: Refit, PutsBack: true, Says: "the part is put back"},
	{Name: "connect", Target: ToPart, Act: Refit, PutsBack: true, Says: "the same as refit:, in the trade's word for lines and wires"},
	{Name: "renew", Target: ToPart, Act: Renew, Undo: Refit, TakesOff: true, Opens: true, Spills: true, Says: "the part is taken off for good: the refit is of a new one"},
	{Name: "cap", Target: ToPart, Act: Cap, Says: "the open end of the line is closed off"},
	{Name: "loosen", Target: ToFastener, Act: Loosen, Frag: "#", Undo: Tighten, Opens: true, Says: "the fastener is undone"},
	{Name: "tighten", Target: ToFastener, Act: Tighten, Frag: "#", Worded: true, Sets: true, AfterPart: true, Says: "the fastener is tightened to its torque"},
	{Name: "mark", Target: ToGroup, Act: Mark, HandsOff: true, Says: "the parts that look alike are marked against swapping"},
	{Name: "place", Target: ToTool, Act: Place, List: ListTools, HandsOff: true, Undo: Clear, Says: "the tool is put in and stays"},
	{Name: "clear", Target: ToTool, Act: Clear, List: ListTools, HandsOff: true, Says: "the tool that was put in is taken away"},
	{Name: "alter", Target: ToSetting, Act: Alter, Undo: Reset, Says: "the setting or interlock is changed"},
	{Name: "reset", Target: ToSetting, Act: Reset, Sets: true, Says: "the setting or interlock is put back"},
	{Name: "drain", Target: ToFluid, Act: Drain, Empties: true, Spills: true, Says: "the fluid is let out"},
	{Name: "fill", Target: ToFluid, Act: Fill, Sets: true, Spills: true, AfterPart: true, Says: "the fluid is filled in"},
	{Name: "bleed", Target: ToFluid, Act: Bleed, Spills: true, AfterPart: true, Says: "air is let out of the circuit"},
	{Name: "dry", Target: ToFluid, Act: Dry, Says: "what was spilled is cleaned up, so that it is not read as a leak"},
	{Name: "part", Target: ToPart, Says: "a mention of the part"},
	{Name: "fastener", Target: ToFastener, Says: "a mention of the fastener"},
	{Name: "energy", Target: ToEnergy, Says: "a mention of the energy"},
	{Name: "point", Target: ToPoint, Says: "a mention of the point"},
	{Name: "fluid", Target: ToFluid, Says: "a mention of the fluid"},
	{Name: "setting", Target: ToSetting, Says: "a mention of the setting"},
	{Name: "machine", Target: ToMachine, Says: "a mention of the machine"},
	{Name: LinkNoted, Target: ToNote, Says: "what a note hold recorded"},
	{Name: LinkDo, Target: ToProcedure, Act: Call, Says: "perform that whole procedure here"},
	{Name: LinkSee, Target: ToProcedure, Frag: "#", Says: "further reading"},
	{Name: "reverse", Target: ToPhase, Act: Reverse, Frag: "#!", Says: "the refit of what the phase took off: all, as far as a part (#), or all but some (!)"},
	{Name: LinkOn, Target: ToRefit, Silent: true, InStep: true, Says: "the paragraph is shown where the step is reversed"},
	{Name: LinkWhy, Target: NoTarget, Silent: true, InStep: true, Says: "the paragraph is the reason"},
	{Name: LinkEach, Target: ToOrder, InStep: true, Says: "the sub-steps are done once for each entry of the order"},
	{Name: LinkBetween, Target: NoTarget, InStep: true, Says: "the sub-step is left out after the last entry"},
	{Name: LinkWhen, Target: ToOption, Conditional: true, Says: "only for units with the option (! without it)"},
	{Name: LinkIfNot, Target: ToOutcome, Branches: true, Conditional: true, InStep: true, Says: "only if that measurement or look failed"},
	{Name: LinkIf, Target: ToAnswer, Frag: "=", Branches: true, Conditional: true, InStep: true, Says: "only if that was the answer"},
	{Name: LinkAgain, Target: ToOutcome, Stops: true, InStep: true, Says: "the hold is taken anew"},
	{Name: LinkOptional, Target: NoTarget, Conditional: true, InStep: true, Says: "the step may be left out"},
	{Name: LinkPeople, Target: ToPeople, Says: "so many people at once"},
	{Name: LinkTime, Target: ToTime, Says: "so long"},
	{Name: LinkWithin, Target: ToWithin, Frag: "#", Says: "this step ends no later than that after the step before it, or after the named one (#)"},
	{Name: LinkPause, Target: ToPause, Says: "a good place to stop for the night; never: the phase is not broken off"},
	{Name: LinkStep, Target: ToName, Silent: true, Says: "names the step, so that see: and records can point at it"},
}

// Three kinds that are not in the table: their addresses have no kind of ours.
var (
	FileLink    = &Kind{Name: "file", Target: ToAddress, Says: "a file inside the manual"}
	PictureLink = &Kind{Name: "picture", Target: ToAddress, Says: "a picture inside the manual"}
	OutsideLink = &Kind{Name: "outside", Target: ToAddress, Says: "a page elsewhere"}
	UnknownLink = &Kind{Name: "unknown", Target: ToAddress, Says: "an address that could not be read"}
)

var kindByName = func() map[string]*Kind {
	byName := make(map[string]*Kind, len(Kinds))
	for _, k := range Kinds {
		byName[k.Name] = k
	}
	return byName
}()

// KindNamed finds a row of the table.
func KindNamed(name string) (*Kind, bool) {
	k, ok := kindByName[name]
	return k, ok
}

// SplitAddress parts an address at its scheme: "isolate", "traction". A
// relative address has no scheme.
func SplitAddress(address string) (scheme, rest string, ok bool) {
	scheme, rest, ok = strings.Cut(address, ":")
	if !ok || scheme == "" || strings.ContainsAny(scheme, "/?#.") {
		return "", address, false
	}
	return strings.ToLower(scheme), rest, true
}

// MovesPart says that a part comes off or goes back on.
func (k *Kind) MovesPart() bool { return k.TakesOff || k.PutsBack }

// Is says whether the link is of the named kind.
func (l *Link) Is(name string) bool { return l.Kind.Name == name }
