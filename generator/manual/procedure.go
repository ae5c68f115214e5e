package manual

import (
	"baybinder/generator/quantity"
	"baybinder/generator/source"
)

// Procedure is one file of procedures/.
type Procedure struct {
	Entry      `yaml:",inline"`
	Title      string         `yaml:"title,need"`
	Summary    string         `yaml:"summary"`
	For        Ref[Machine]   `yaml:"for"`
	Status     string         `yaml:"status" one:"draft issued retired"` // default issued
	Instead    Ref[Procedure] `yaml:"instead"`
	Needs      []Ref[Role]    `yaml:"needs"`
	People     int            `yaml:"people"` // default 1
	Posts      []Pair         `yaml:"posts"`
	Hazards    []HazardUse    `yaml:"hazards"`
	Tools      []Use[Tool]    `yaml:"tools"`
	Supplies   []Use[Supply]  `yaml:"supplies"`
	Holds      []Ref[Hold]    `yaml:"holds"`
	AlsoCalled []string       `yaml:"also-called"`
	Symptoms   []string       `yaml:"symptoms"`
	Expects    []State        `yaml:"expects"`
	Leaves     []State        `yaml:"leaves"`
	Was        []string       `yaml:"was"`
	Accepts    []Acceptance   `yaml:"accepts"`

	File     *source.File `yaml:"-"`
	Topic    string       `yaml:"-"` // folders below procedures/: "tug/battery", "" at the top
	Language string       `yaml:"-"` // of a translation; "" for the original
	Original *Procedure   `yaml:"-"` // of a translation; nil for an original, and where there is none
	Broken   bool         `yaml:"-"` // its front matter did not parse
	Intro    []Block      `yaml:"-"`
	Phases   []*Phase     `yaml:"-"`
	Steps    []*Step      `yaml:"-"` // all steps and sub-steps, in reading order
	Calls    []*Link      `yaml:"-"` // its do: links, in reading order
}

// Label is the procedure's title.
func (p *Procedure) Label() string { return labelOr(p.Title, p.ID) }

// Issued says that the procedure is neither a draft nor retired.
func (p *Procedure) Issued() bool { return p.Status == "issued" }

// Draft says that the procedure is a draft.
func (p *Procedure) Draft() bool { return p.Status == "draft" }

// Acceptance is advice on the writing that the writer has weighed and does not
// follow.
type Acceptance struct {
	At      source.Pos `yaml:"-"`
	Code    string     `yaml:"code,need" one:"too-long two-actions vague no-time act-in-words hollow-link"`
	Place   string     `yaml:"at,need"` // a step's number or name
	Because string     `yaml:"because"`
}

// HazardUse is a line of the front matter's hazards, with its overrides.
type HazardUse struct {
	Ref[Hazard]
	Over *HazardOverride // nil where there is none
	Met  *Hazard         // the hazard as it is met here: the entry with Over applied
}

// HazardOverride is what a procedure says of a hazard otherwise.
type HazardOverride struct {
	At          source.Pos  `yaml:"-"`
	Nature      string      `yaml:"nature"`
	Harm        string      `yaml:"harm" one:"death serious-injury minor-injury damage"`
	Happens     string      `yaml:"happens" one:"will could"`
	Consequence string      `yaml:"consequence"`
	Avoid       []string    `yaml:"avoid"`
	Wear        []Ref[Tool] `yaml:"wear"`
	Symbol      string      `yaml:"symbol"`
	FirstAid    string      `yaml:"first-aid"`
	Because     string      `yaml:"because"`
	WearSaid    bool        `yaml:"-"` // wear was written, if only as an empty list
}

// State is a line of expects or leaves: a thing and how it stands.
type State struct {
	ID      string
	At      source.Pos
	Word    string // "dead", "off", "full" …
	WordAt  source.Pos
	Thing   Named // nil where the machine has no such thing
	Unknown bool  // the line could not be read
}

// Phase is what stands under one heading.
type Phase struct {
	ID    string
	Title Block
	At    source.Pos
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
	At     source.Pos
	Of     *Procedure
	Phase  *Phase
	Parent *Step // nil at the top of a phase
	Blocks []Block
	Links  []*Link
	Subs   []*Step
	People int               // of people:, else 0
	Time   quantity.Quantity // of time:, else zero
}

// Block is a paragraph or another block as HTML with holes: Parts[0], what
// Links[0] becomes, Parts[1] and so on.
type Block struct {
	Para  bool
	Role  BlockRole
	Parts []string
	Links []*Link
	Plain string
	At    source.Pos
}

// BlockRole is what the first link of a paragraph makes of it.
type BlockRole uint8

// A paragraph of a step is text, a note for the refit, or the reason why.
const (
	Said BlockRole = iota
	OnRefit
	Why
)

// Link is one link of a text, bound.
type Link struct {
	Kind    *Kind  // a row of the link table; never nil
	Address string // as written
	ID      string // what it names: "traction", "cab", "20min"
	Not     bool   // when:!OPTION
	Frag    string // after # or = or !
	Sign    byte   // '#', '=', '!' or 0: what stands before Frag
	Text    string
	HTML    string
	Title   string
	At      source.Pos

	To     Named   // nil where it names nothing, or what it names is unknown
	Part   *Part   // of loosen:F#PART and reverse:PHASE#PART
	Parts  []*Part // of reverse:PHASE!PART,PART
	Phase  *Phase  // of reverse:
	Step   *Step   // of see:PROC#STEP
	Amount quantity.Quantity
	Bad    bool // it could not be bound: what rests on it is not judged
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

// FindStep finds a step by the name of its step: link, or by its number.
func (p *Procedure) FindStep(name string) *Step {
	for _, s := range p.Steps {
		if s.Name == name || s.Number == name {
			return s
		}
	}
	return nil
}
