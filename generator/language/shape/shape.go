// Package shape says what the program must know of a language to write and to read a manual in it: plain values, which each folder of language fills.
package shape

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language/words"
)

// Language is all that the program knows of one language. A test asks that no
// field of it is empty, but for those that it says it lacks: there the program
// does not look for something in texts. A field may be empty by its tag where a
// language has no such words.
type Language struct {
	Code  string   // its BCP 47 tag, without a region
	Lacks []string // the fields that it does not have yet

	// What pages and scripts say.
	Words    words.Words
	Bay      words.Bay
	CloseOut words.CloseOut
	Front    words.Front
	Jobs     words.Jobs
	Readable words.Readable
	Readings words.Readings
	Several  words.Language
	TimeLine words.TimeLine
	Watch    words.Watch
	Collect  words.Collect
	Worked   words.Worked
	Write    words.Write
	Counted  words.Counted
	Signs    map[string]string // the names of the signs, by number

	// What is told of a manual, in the shop's language. A language has its tables
	// in files findings_ROOM.go, a map by the English template each, and joins
	// them; see finding.Tongue for what a table holds. A finding of which one
	// text is lacking is told in English, whole.
	Findings finding.Tongue

	// What a begun procedure says.
	Speech    Speech
	Procedure string // a template

	// What is understood of texts.
	Gear    map[string][]string // how words for protective gear begin, by the sign that it goes under
	Small   []string            // words for small things that are easily forgotten
	Signals []string            // signal words in capitals, and those that are used for them
	Vague   []string            // phrases that say nothing that can be measured or looked at
	ByHand  []string            // phrases that say how tight a hand makes it: these are not vague
	Denials []string            // words that turn a sentence round: not, never, without
	Grammar Grammar
	Passive Passive
	Numbers Numbers
	Acts    Acts
	Verbs   Verbs
	Asides  Asides
	Bounds  Bounds
	Jotted  Jotted

	// How words are made.
	Stem      func(form string) string
	Syllables func(word []byte) int // of a word in small letters
	Ease      *Formula              // how easy a text is to read
	Grade     *Formula              // the school year that reads it
}

// Formula is one over the mean length of sentences, in words, and of words, in
// syllables.
type Formula struct {
	Base, Sentence, Word float64
}

// Of is the value of the formula.
func (f *Formula) Of(sentence, word float64) float64 {
	return f.Base + f.Sentence*sentence + f.Word*word
}

// Grammar is the little of a language that tells an instruction from a list of
// nouns. It would rather miss an action than see one in "the clamp and seal".
type Grammar struct {
	Verbs      Set        // imperatives that are no noun
	Either     Set        // imperatives that are nouns as well
	Objects    Set        // what follows a verb and no noun
	Ways       Set        // what follows a verb that is no noun
	Toward     Set        `may:"empty"` // those of ways that follow no noun
	Joiners    Set        // what stands before a second order
	Conditions Set        // first words of a condition
	Same       [][]string // what says that two things are done at once
}

// Passive are the words of a passive order (ASD-STE100, rule 3.6, active voice,
// and 5.3, the imperative; 3.6 from memory).
type Passive struct {
	Orders     [][]string // "must be"
	Between    Set        // adverbs that may stand in it
	Endings    []string   // of participles
	Irregular  Set        // participles with no such ending
	AdverbEnds string
}

// Numbers are how a language counts.
type Numbers struct {
	Words   []string // Words[i] is i+1, up to twenty
	Spelled Spelled  // those, and up to ninety-nine

	// What larger numbers are made of.
	Hundreds Spelled // words for hundreds: before that for one of them another number may stand
	Thousand string
	And      string   `may:"empty"` // "two hundred and ten"
	Glued    []string `may:"empty"` // what glues numbers together to one word
	Before   []string `may:"empty"` // the part of one that a word begins with whose rest is the unit, "Viertelstunde"; the longest first
	Apart    Set      // beside a number it makes another of it: "two point five", "a few hundred"

	Dozens Spelled // phrases for twelve and six, with the of behind them

	// Halves, thirds and quarters.
	Parts []Fraction // with the of of it: "half an hour", "three quarters of a litre"; the longest first
	Plus  []Fraction // behind a number or a unit: "two and a half turns", "a minute and a half"
	One   Set        `may:"empty"` // the a of it, where it is no number

	First Set // with which words a number begins; Counting knows

	Many    Set      // words for several that are no numbers: both, these
	Plurals []string // how a noun ends that is several, and hardly one that is one

	Of       string   // of "two of the four"
	Articles []string // the the of it
}

// Fraction is a phrase for a part of one.
type Fraction struct {
	Said string
	Of   float64 // of one: 0.25
}

// Acts are the words of a language for acts and for the points where energy is
// cut, separated by spaces. A bar stands where the thing may come between, as
// in take|off.
type Acts struct {
	Undo, Tighten, Open, Shut, Remove, Fit, Fill, Drain, Lock, Unlock, Off, On string

	// Orders of a kind that may be said of other things in its opposite.
	Placed, Pulled string
	Emptied        string `may:"empty"`
	Renewed        string // take off for good, and put a new one in
	Fresh          string // new

	Up, Down string `may:"empty"` // orders that move the lever of a switch to on and to off, and lift and lower all else

	Clitics string `may:"empty"` // what is glued behind an order: "ábrala"
	Again   string `may:"empty"` // what stands before one and changes nothing of it: "vuelva a abrir"

	Hung string // what is hung at a point and taken off again

	Joiners   string // what stands before a second order
	Articles  string
	Nouns     string // orders that are nouns as well: behind a joiner they need an object
	Compounds string `may:"empty"` // what makes a noun of them: drain plug, lock off

	Switches, Valves, Vents, Earthing, Blocks string
	Sides, Prepositions                       string `may:"empty"` // what stands behind the noun, where it does not stand first
	NounFirst                                 bool   // "válvula de purga", and not "vent valve"
	Glued                                     bool   // "Gashahn", and not "gas cock"
	Late                                      bool   // an order may stand at the end, with a small letter: "den Hauptschalter ausschalten"
}

// Range is what stands before the lower end of a range, where that is needed, and
// between its ends: "between 6 and 8 bar".
type Range struct{ Before, Between string }

// Asides are the words beside an amount that make it another thing's than what
// the sentence links.
type Asides struct {
	Not       []string // before what an amount should not be
	Every     []string // before how often, and how far apart
	Added     []string // before a time that is added, and behind it
	More      []string // "5 min more", "5 min later"
	Away      []string // behind a distance
	Steps     []string // before how finely something is set or read, and behind it: "0.1 bar at a time"
	AtATime   []string
	Makes     []string // between an amount and what it is of another kind: "one turn is 1.5 mm"
	About     Set      // what may stand behind those
	Turn      Set      // a turn of it, where more is said between them
	Within    []string // before how soon something is done
	New       []string // before what a part had when it was new
	PartOf    []string // before a part of an amount: "the last 2 L"
	By        []string // before how far something moves, with one of the words for that on either hand: "drops by 0.2 bar"
	Moves     Set
	Loses     []string // of those, what may stand right before it: "loses 0.2 bar"
	Found     []string // before what was found, and is not set: "it came at 17.6 bar"
	At        string   `may:"empty"` // what stands before it as well, where its words alone say too little
	Supposing Set      // before what is only supposed

	Ranges      []Range
	OffBy       []string // between an amount and how far it may be off
	RangeBehind Set      // words behind which a range begins, and no count
	AllOf       Set      // words before a count of things that something takes long at: "all 4 to 6 min"

	Of      []string // between a thing and its amount
	SetTo   []string // between an instrument and the voltage that it is set to
	Things  Set      // what has an amount of its own and often no entry: lamps, lifting gear, hand tools
	Vessels Set      // what a volume or a mass is the size of: "the 10 L can"
	Scales  Set      // parts of a measuring instrument
	Media   Set      // what has a pressure wherever it is
	Breaks  Set      // words between which and an amount nothing is its own
}

// Bounds are the words beside an amount that say on which side of it is right.
type Bounds struct {
	AtMost, AtLeast []string // on either hand of it
	Having          Set      // before those, of what has it: "a pad of at most 2 mm"
	OrLess, OrMore  []string // behind it

	// Before it: of a reading, what is right and what is out are said alike, so that
	// they bound it where it is ordered or must be.
	Below, Above []string
	UpTo         []string

	Musts  []string // "must be more than 1 MΩ"
	Being  Set      // the be of it, which may stand behind: "muss über 1 MΩ liegen"
	Always Set      // what may stand between them

	Waits, Orders []string // first words of an order that takes a time, or another amount, the longest first
	For, To       Set      // between it and what it bounds: "wait for less than 3 min", "fill to"
	With          Set      // so of fills and torques
	Lead          Set      // what may stand before an order

	// Orders that leave something on a side, with all that is said of it between them
	// and the amount; and those that stand at the end of their clause.
	Keeps                            []string
	LateKeeps, LateWaits, LateOrders []string `may:"empty"` // "den Druck unter 2 bar halten"
	At                               Set      // "keep it at 8 °C or more"
	Told                             Set      // what makes a report of an order
	Forbids                          []string `may:"empty"` // "never let it get over 60 °C"
	Goes                             Set      `may:"empty"` // the get of it
	Sees                             []string // "make sure that it stays above 8 °C"
	SoThat                           []string // "set it so that it trips above 18 bar"
	That                             string   `may:"empty"` // the that of it, where it stands behind a comma
	Is                               Set      // the stays of it, which may stand behind the amount
}

// Verbs are the words by which an act is told that stands in words only. They
// are matched at the beginning of a clause, where an order stands.
type Verbs struct {
	Said     []Verb
	Articles Set      // what may stand between a verb and the name of a thing
	Little   Set      // what may stand there as well, and behind the thing, and changes nothing of an order
	Joiners  Set      // what stands before a second order in a sentence
	Parts    Set      `may:"empty"` // second words of verbs that are prepositions as well: "put the pin in the tray"
	Late     bool     // the second word of a verb ends its clause: "nehmen Sie den Deckel zu zweit ab"
	Plurals  []string // endings
	After    Set      // what goes on behind a thing or an amount, and makes no longer name or count of it
}

// Verb is what a kind of link is called in words, of one sort of thing.
type Verb struct {
	Kind string // the link kinds that it could be
	Of   Thing
	Said string // words, separated by spaces; the first bar of one stands where the thing may come between
}

// Thing is a sort of thing that acts are said of.
type Thing string

// The sorts of things.
const (
	Part     Thing = "part"
	Fastener Thing = "fastener"
	Energy   Thing = "energy"
	Fluid    Thing = "fluid"
	Setting  Thing = "setting"
	Tool     Thing = "tool"
	Group    Thing = "group"
)

// Jotted are the words by which notes and old procedures are read, besides
// those of Verbs and Acts.
type Jotted struct {
	Said    []Verb   // more orders
	Lead    []string // phrases that may stand before an order
	It      Set      // what stands for the thing that was named
	Endings []string `may:"empty"` // of verbs, that stand for it
	Fresh   Set      // new
	Old     Set      // what says that a part is done with
	Off, On Set      // "rope cover off"
	At      Set      // "switch off at the isolator"
	Under   Set      // behind a tool that is put somewhere: it stays there
	Padlock Set      // "put your lock on it"

	Not    Set // what forbids
	If     Set // what makes an order depend on something
	When   Set // first words of a clause that says when
	Or     Set
	Behind Set // what may stand behind the name of a thing, so that it is no part of a longer name
	Wait   Set

	Reverse  []string // phrases for a refit of all that came off
	Step     Set      // "Step 3:"
	Toolbox  Set      // first words of the head of a list of tools
	Contents []string // of such a head: needed, required
	ToChoose string   // what stands in place of a typed signal word; %s is that word
}

// Kinds of which one or the other is meant.
const (
	Either        = "isolate restore"
	EitherSetting = "alter reset"
)

// Set is a set of words.
type Set map[string]bool

// SetOf makes a set of words separated by spaces.
func SetOf(words string) Set {
	set := Set{}
	for w := range strings.FieldsSeq(words) {
		set[w] = true
	}
	return set
}

// Speech is what a begun procedure shows on its page. %s is the name of a
// thing, or a link that names it. A register does not say whether a name is
// masculine or feminine: where a language must know that for its article, the
// name stands behind a colon.
type Speech struct {
	MakeSafe, Strip, Work, Refit, GiveBack string // phases

	Summary, Intro, UnitsOnly, OnUnits string
	With, Without, And                 string
	The                                string

	Isolate, Lock, Here, Cuts               string
	Release, WaitOut, PlaceBlock, BlockHold string
	Prove, SayProof, Mind                   string

	Mark, TakeOff, Disconnect, Cap, Unplug string
	HeldBy, Use, Carries, WhenRefit        string
	SayWork, Reverse                       string

	Clear, Unlock, LeakLook, Ends   string
	Dry, Fill, FillWith, Bleed      string
	Restore, RestorePoint, ComeBack string

	// Of what is offered to a writer besides.
	PutBack, Connect, PlugIn, Undo, Tighten string
	LetOut, Alter, Reset, Perform, Stop     string
}
