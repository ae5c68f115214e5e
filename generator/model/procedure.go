package model

import (
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
)

// Procedure is one file of procedures/.
type Procedure struct {
	Entry      `yaml:",inline"`
	Title      string         `yaml:"title,need" doc:"what the job is called"`
	Summary    string         `yaml:"summary" doc:"the job in a sentence"`
	For        Ref[Machine]   `yaml:"for" doc:"the machine; none where it is for any"`
	Status     string         `yaml:"status" one:"draft issued retired" doc:"drafts are not published; issued where none is written"`
	Instead    Ref[Procedure] `yaml:"instead" doc:"what stands in place of a retired one"`
	Needs      []Ref[Role]    `yaml:"needs" doc:"roles that the people must hold between them"`
	People     int            `yaml:"people" doc:"how many people; 1 where none is written"`
	Posts      []Pair         `yaml:"posts" doc:"who stands where, for steps of two"`
	Hazards    []HazardUse    `yaml:"hazards" doc:"what can hurt: held against the steps, both ways"`
	Tools      []Use[Tool]    `yaml:"tools" doc:"what is used, with how many where it is more than one"`
	Supplies   []Use[Supply]  `yaml:"supplies" doc:"parts and consumables, with how much"`
	Holds      []Ref[Hold]    `yaml:"holds" doc:"where work stops: held against the steps, both ways"`
	AlsoCalled []string       `yaml:"also-called" doc:"what people search for"`
	Symptoms   []string       `yaml:"symptoms" doc:"what is seen when this job is due"`
	Expects    []State        `yaml:"expects" doc:"how things stand before, if not whole, closed, full and live"`
	Leaves     []State        `yaml:"leaves" doc:"how things are left on purpose"`
	Was        []string       `yaml:"was" doc:"earlier ids: history follows"`
	Accepts    []Acceptance   `yaml:"accepts" doc:"advice that was weighed and is not followed"`

	File     *position.File `yaml:"-"`
	Topic    string         `yaml:"-"` // folders below procedures/: "tug/battery", "" at the top
	Language string         `yaml:"-"` // of a translation; "" for the original
	Original *Procedure     `yaml:"-"` // of a translation; nil for an original, and where there is none
	Broken   bool           `yaml:"-"` // its front matter did not parse
	Intro    []Block        `yaml:"-"`
	Phases   []*Phase       `yaml:"-"`
	Steps    []*Step        `yaml:"-"` // all steps and sub-steps, in reading order
	Calls    []*Link        `yaml:"-"` // its do: links, in reading order
}

// Label is the procedure's title.
func (p *Procedure) Label() string { return labelOr(p.Title, p.ID) }

// Issued says that the procedure is neither a draft nor retired.
func (p *Procedure) Issued() bool { return p.Status == "issued" }

// Draft says that the procedure is a draft.
func (p *Procedure) Draft() bool { return p.Status == "draft" }

// AdviceCode is the code of advice. Which may be accepted, the rules say.
type AdviceCode string

// Acceptance is advice on the writing that the writer has weighed and does not
// follow.
type Acceptance struct {
	At      position.Pos `yaml:"-"`
	CodeAt  position.Pos `yaml:"-"`
	Code    AdviceCode   `yaml:"code,need" doc:"which advice"`
	Place   string       `yaml:"at,need" doc:"the step, by its number or its name"`
	Because string       `yaml:"because" asked:"*" doc:"the reason"`
}

// HazardUse is a line of the front matter's hazards, with its overrides.
type HazardUse struct {
	Ref[Hazard]
	Over *HazardOverride // nil where there is none
	Met  *Hazard         // the hazard as it is met here: the entry with Over applied
}

// HazardOverride is what a procedure says of a hazard otherwise.
type HazardOverride struct {
	At          position.Pos `yaml:"-"`
	Nature      string       `yaml:"nature" doc:"what is dangerous here"`
	Harm        string       `yaml:"harm" one:"death serious-injury minor-injury damage" doc:"the worst that can follow here"`
	Happens     string       `yaml:"happens" one:"will could" doc:"whether it will or could follow here"`
	Consequence string       `yaml:"consequence" doc:"what it does here"`
	Avoid       []string     `yaml:"avoid" doc:"what to do about it here"`
	Wear        []Ref[Tool]  `yaml:"wear" doc:"protective gear here; [] for none"`
	Symbol      string       `yaml:"symbol" doc:"the sign of ISO 7010"`
	FirstAid    string       `yaml:"first-aid" doc:"what to do if it has happened"`
	Because     string       `yaml:"because" doc:"why it is less here than in the register"`
	WearSaid    bool         `yaml:"-"` // wear was written, if only as an empty list
}

// State is a line of expects or leaves: a thing and how it stands.
type State struct {
	ID      string
	At      position.Pos
	Word    string // "dead", "off", "full" …
	WordAt  position.Pos
	Thing   Named // nil where the machine has no such thing
	Unknown bool  // the line could not be read
}

// Phase is what stands under one heading.
type Phase struct {
	ID    string
	Title Block
	At    position.Pos
	Lead  *Block // its first paragraph, whose conditions and hazards hold for every step
	Body  []PhasePart
	Steps []*Step // the steps at the top of the phase
}

// PhasePart is a step, or prose between steps.
type PhasePart struct {
	Step  *Step
	Prose *Block
}

// Step is one step or sub-step. Links are those of its own paragraphs, in
// reading order, without those that act only at the refit.
type Step struct {
	Number string // "4.7", a sub-step "4.7.1"
	Name   string // of step:NAME, "" where it has none
	At     position.Pos
	Of     *Procedure
	Phase  *Phase
	Parent *Step // nil at the top of a phase
	Blocks []Block
	Links  []*Link
	Subs   []*Step
	People int // of people:, else 0
	Done   int // how many steps of the procedure are done once this one is, its sub-steps before it
}

// Time is the time that the step says it takes, or zero.
func (s *Step) Time() (q quantity.Quantity) {
	for _, l := range s.Links {
		if l.Is(LinkTime) && !l.Bad {
			q = l.Amount()
		}
	}
	return q
}

// Crew is how many people a step has: its own number, else that of its phase's
// first paragraph, else as many as a procedure that it performs takes, and one
// at least. It is false where a number could not be read.
func (s *Step) Crew() (people int, known bool) {
	if s.People > 0 {
		return s.People, true
	}
	people, known = crewOf(s.Links)
	if s.Phase.Lead == nil {
		return people, known
	}
	lead, read := crewOf(s.Phase.Lead.Links)
	return max(people, lead), known && read
}

// Second is a person besides the people of a step, who sees a check done there
// together with them.
type Second struct {
	Step *Step
	By   *Role
}

// Seconds are those whom the checks of a step name, each role once.
func (s *Step) Seconds() []Second {
	var out []Second
	for _, l := range s.Links {
		if h, is := l.To.(*Hold); is && (l.Kind.Stops) && h.Together() && h.By.To != nil {
			out = AddSecond(out, Second{s, h.By.To})
		}
	}
	return out
}

// AddSecond adds somebody to a list, once for each step.
func AddSecond(list []Second, second Second) []Second {
	for _, have := range list {
		if have == second {
			return list
		}
	}
	return append(list, second)
}

// crewOf is the most that links ask for, and one at least.
func crewOf(links []*Link) (people int, known bool) {
	people, known = 1, true
	for _, link := range links {
		if link.Is(LinkPeople) {
			people, known = max(people, int(link.Amount().Value)), known && !link.Bad
		}
		if callee, is := link.To.(*Procedure); is && link.Kind.Act == Call {
			people = max(people, callee.People)
		}
	}
	return people, known
}

// Block is one paragraph, list, table, quote or code block as HTML with holes:
// Parts[0], what Links[0] becomes, Parts[1] and so on. What a link becomes is
// known only once everything is bound, and depends on the page it stands on.
type Block struct {
	Para  bool // a paragraph: Parts hold what goes between <p> and </p>
	Role  BlockRole
	Parts []string
	Links []*Link
	Plain string         // the words alone
	Code  []position.Pos // what stands in code, with its backticks
	At    position.Pos
}

// Written is the text of a block as it is written, with a sign in place of each
// byte of its code: every offset stays the file's.
func (b *Block) Written(code byte) []byte { return b.AppendWritten(nil, code) }

// AppendWritten adds that text to another.
func (b *Block) AppendWritten(to []byte, code byte) []byte {
	to = append(to, b.At.Text()...)
	text := to[len(to)-(b.At.End-b.At.Start):]
	for _, at := range b.Code {
		for i := max(at.Start, b.At.Start); i < min(at.End, b.At.End); i++ {
			text[i-b.At.Start] = code
		}
	}
	return to
}

// Instructs says whether a block of a step is words that tell what to do: a
// paragraph or a list, and no reason.
func (b *Block) Instructs() bool {
	return (b.Para || strings.HasPrefix(b.Parts[0], "<ul")) && b.Role != Why
}

// BlockRole is what the first link of a paragraph makes of it.
type BlockRole uint8

// A paragraph of a step is text, a note for the refit, or the reason why.
const (
	Said BlockRole = iota
	OnRefit
	Why
)

// Link is one link, picture or bare address of a text. A large manual has half a
// million of them.
type Link struct {
	Kind    *Kind  // a row of the link table; never nil. Until it is bound: a picture's, or that of an unknown one
	Address string // as written: "isolate:traction", "../pictures/seat.svg"
	From    int    // where in the file the address begins; 0 where it stands elsewhere, at a name's definition
	ID      string // what it names: "traction", "cab", "20min"
	Text    string // the words, or a picture's alt text, without markup
	At      position.Pos

	To     Named              // nil where it names nothing, or what it names is unknown
	Number *quantity.Quantity // of people:, time: and within:, else nil

	besides *Besides // nil for most

	Sign byte // '#', '=', '!' or 0: what parts its id from what follows
	Not  bool // when:!OPTION
	Bad  bool // it could not be bound: what rests on it is not judged
	Odd  bool // its kind is none of the table's; Kind is what it was probably meant to be
}

// Besides is what only a few links say, apart from the others: it would be a
// third of every one.
type Besides struct {
	Title string
	Frag  string  // what follows the sign
	HTML  string  // the words with their markup, where they are not Text
	Part  *Part   // of loosen:F#PART and reverse:PHASE#PART
	Parts []*Part // of reverse:PHASE!PART,PART
	Phase *Phase  // of reverse:
	Step  *Step   // of see:PROC#STEP and within:TIME#STEP
	Near  Named   // of a link that could not be bound, what it was probably meant for; else nil
}

// Besides is where to write what only a few links say.
func (l *Link) Besides() *Besides {
	if l.besides == nil {
		l.besides = &Besides{}
	}
	return l.besides
}

// beside is the same to read.
func (l *Link) beside() Besides {
	if l.besides == nil {
		return Besides{}
	}
	return *l.besides
}

// Title is the title as written; "" for none.
func (l *Link) Title() string { return l.beside().Title }

// Frag is what stands after # or = or !; "" for nothing.
func (l *Link) Frag() string { return l.beside().Frag }

// HTML is the words with their markup.
func (l *Link) HTML() string {
	if l.besides == nil || l.besides.HTML == "" {
		return l.Text
	}
	return l.besides.HTML
}

// Part is the part of loosen:F#PART and reverse:PHASE#PART; else nil.
func (l *Link) Part() *Part { return l.beside().Part }

// Parts are the parts of reverse:PHASE!PART,PART.
func (l *Link) Parts() []*Part { return l.beside().Parts }

// Phase is the phase of reverse:; else nil.
func (l *Link) Phase() *Phase { return l.beside().Phase }

// Step is the step of see:PROC#STEP and within:TIME#STEP; else nil.
func (l *Link) Step() *Step { return l.beside().Step }

// Near is what a link that could not be bound was probably meant for; else nil.
func (l *Link) Near() Named { return l.beside().Near }

// Amount is the number of a people: or time: link, zero of any other.
func (l *Link) Amount() quantity.Quantity {
	if l.Number == nil {
		return quantity.Quantity{}
	}
	return *l.Number
}

// HasPhase finds a phase by id.
func (p *Procedure) FindPhase(id string) *Phase {
	for _, ph := range p.Phases {
		if ph.ID == id {
			return ph
		}
	}
	return nil
}

// Blocks are all blocks of a procedure's text, headings too: what stands outside the
// steps first, each in reading order.
func (p *Procedure) Blocks() []*Block {
	var out []*Block
	each := func(list []Block) {
		for i := range list {
			out = append(out, &list[i])
		}
	}
	each(p.Intro)
	for _, phase := range p.Phases {
		out = append(out, &phase.Title)
		if phase.Lead != nil {
			out = append(out, phase.Lead)
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				out = append(out, part.Prose)
			}
		}
	}
	for _, s := range p.Steps {
		each(s.Blocks)
	}
	return out
}

// Links are all links of a procedure, those of its headings too, as its blocks stand.
func (p *Procedure) Links() []*Link {
	out := make([]*Link, 0, 4*len(p.Steps))
	for _, b := range p.Blocks() {
		out = append(out, b.Links...)
	}
	return out
}

// Pictures are the pictures that a procedure shows, by path, as often as it does.
func (p *Procedure) Pictures() []string {
	var out []string
	look := func(blocks []Block) {
		for _, b := range blocks {
			for _, l := range b.Links {
				if l.Kind == PictureLink {
					out = append(out, l.ID)
				}
			}
		}
	}
	look(p.Intro)
	for _, phase := range p.Phases {
		if phase.Lead != nil {
			look([]Block{*phase.Lead})
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				look([]Block{*part.Prose})
			}
		}
	}
	for _, s := range p.Steps {
		look(s.Blocks)
	}
	return out
}

// FindStep finds a step by the name of its step: link, or by its number.
func (p *Procedure) FindStep(name string) *Step {
	for _, s := range p.Steps {
		if s.Name == name || s.Number == name {
			return s
		}
	}
	return nil
}
