package manual

import "baybinder/generator/source"

// Manual is a whole manual, bound. The lists are in the order of the files.
type Manual struct {
	Shop       *Shop
	Tools      []*Tool
	Hazards    []*Hazard
	Holds      []*Hold
	Supplies   []*Supply
	Roles      []*Role
	Machines   []*Machine
	Procedures []*Procedure // by path, translations left out
	Translated []*Procedure // by path
	Words      []Words
	Plans      []*Plan
	People     []*Person
	Record     []Reading
	Revisions  []Revision
	Pictures   map[string]bool // files that pages show, by path inside the manual
	Files      map[string]bool // every file of the manual

	words map[[3]string]*Words // by register, id and language
}

// Plan is one file of readings/plans/.
type Plan struct {
	Entry    `yaml:",inline"`
	Title    string           `yaml:"title,need"`
	Gives    []Ref[Role]      `yaml:"gives"`
	Read     []Ref[Procedure] `yaml:"read"`
	Watch    []Ref[Procedure] `yaml:"watch"`
	Perform  []Use[Procedure] `yaml:"perform"`
	Assessor Ref[Role]        `yaml:"assessor"`
	Within   string           `yaml:"within"`
}

// Label is the plan's title.
func (p *Plan) Label() string { return labelOr(p.Title, p.ID) }

// Person is a row of readings/people.csv.
type Person struct {
	Entry
	Name    string
	Roles   []Gained
	Started Date
	Plans   []Ref[Plan]
}

// Label is the person's name as the shop writes it.
func (p *Person) Label() string { return labelOr(p.Name, p.ID) }

// Gained is a role and the day it was gained, which may be left out.
type Gained struct {
	Ref[Role]
	On Date
}

// Reading is a row of readings/record.csv.
type Reading struct {
	At          source.Pos
	Date        Date
	Person      Ref[Person]
	Procedure   Ref[Procedure]
	Act         string // read, watched, performed, taught
	Fingerprint string
	By          string
}

// Revision is a row of revisions.csv.
type Revision struct {
	At          source.Pos
	Procedure   Ref[Procedure]
	Number      string
	Date        Date
	Fingerprint string
	Reason      string
	Written     string
	Checked     string
	Approved    string
	Walked      string
	Readers     string       // reread, tell, none
	Kept        *source.File // its words as they were; nil where they were not kept
}
