package model

import (
	"regexp"

	"baybinder/generator/base/position"
)

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
	Revisions  []Revision // by date, and of one day in the order of the file
	Jobs       []*Job     // by path
	Answers    []Answer
	Pictures   map[string]bool // files that pages show, by path inside the manual
	Files      map[string]bool // every file of the manual

	words map[[3]string]*Words // by register, id and language
}

// Plan is one file of readings/plans/.
type Plan struct {
	Entry    `yaml:",inline"`
	Title    string           `yaml:"title,need" doc:"what people call it"`
	Gives    []Ref[Role]      `yaml:"gives" doc:"the roles that it leads to"`
	Read     []Ref[Procedure] `yaml:"read" doc:"procedures to read"`
	Watch    []Ref[Procedure] `yaml:"watch" doc:"procedures to watch"`
	Perform  []Use[Procedure] `yaml:"perform" doc:"procedures to perform under the eye of an assessor, and how often"`
	Assessor Ref[Role]        `yaml:"assessor" doc:"the role that assesses"`
	Within   string           `yaml:"within" dim:"calendar time" doc:"how long it may take"`
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
	At            position.Pos
	Date          Date
	Person        Ref[Person]
	Procedure     Ref[Procedure]
	Act           string // read, watched, performed, taught
	Fingerprint   string
	FingerprintAt position.Pos
	By            string // the id of who saw it; "" where nobody did
	ByAt          position.Pos
}

// Revision is a row of revisions.csv.
type Revision struct {
	At          position.Pos
	Procedure   Ref[Procedure]
	Number      string
	Date        Date
	Fingerprint string
	Reason      string
	Written     string
	Checked     string
	Approved    string
	Walked      string
	Readers     string         // reread, tell, none
	Kept        *position.File // its words as they were; nil where they were not kept
}

var fingerprintForm = regexp.MustCompile(`^[0-9]+-[0-9a-f]{16}$`)

// IsFingerprint says whether a text has the form of a fingerprint: the number
// of the form, a hyphen, 16 hexadecimal digits.
func IsFingerprint(text string) bool { return fingerprintForm.MatchString(text) }
