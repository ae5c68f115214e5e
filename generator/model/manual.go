package model

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/nearest"
	"baybinder/generator/base/picture"
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
	HalfRead   []Words // one for each file of them of which an entry could not be read, by register and language
	Plans      []*Plan
	People     []*Person
	Record     []Reading
	Awards     []Award    // in the order of the file
	Revisions  []Revision // of the originals, by date, and of one day in the order of the file
	Renditions []Revision // of translations, likewise
	Jobs       []*Job     // by path
	Answers    []Answer
	Pictures   map[string]bool         // files that pages show, by path inside the manual; false where only drafts show them
	Sizes      map[string]picture.Size // of the pictures of the manual, by path, those that are known
	Files      map[string]bool         // every file of the manual
	Sums       map[string]string       // of the pictures of what was issued with a hash of its words, by path

	words    map[[3]string]*Words // by register, id and language
	halfRead map[[2]string]bool   // by register and language
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
	Left    []Absence
	Plans   []Ref[Plan]

	StartUnread bool // the day of the start could not be read
	LeftUnread  bool // when they left could not be read: they are in no list
}

// Absence is from when to when a person was not there: both days are days on
// which they were. Back is zero where they did not come back.
type Absence struct {
	Last Date
	Back Date
}

// There says whether a person was there on a day.
func (p *Person) There(day Date) bool {
	return !p.Away(day) && (p.Started.IsZero() || !day.Before(p.Started))
}

// Away says whether a person had left by a day and was not back, or whether
// that cannot be read.
func (p *Person) Away(day Date) bool {
	return p.LeftUnread || slices.ContainsFunc(p.Left, func(a Absence) bool {
		return a.Last.Before(day) && (a.Back.IsZero() || day.Before(a.Back))
	})
}

// Label is the person's name as the shop writes it.
func (p *Person) Label() string { return labelOr(p.Name, p.ID) }

// Gained is a role and the day it was gained, which may be left out.
type Gained struct {
	Ref[Role]
	On    Date
	From  Date // of one without a day: the day from which it is held; zero: always
	Ended Date // the day on which it was withdrawn; zero where it was not
}

// WhoIsMeant is the id of the person whom a text was probably to name that is no id:
// whose name it is, in any case, where that is one person's, or else whose id is
// near; "" for nobody.
func WhoIsMeant(people []*Person, text string) string {
	var named []string
	for _, p := range people {
		if strings.EqualFold(p.Label(), text) || strings.EqualFold(p.ID, text) {
			named = append(named, p.ID)
		}
	}
	switch len(named) {
	case 0:
		return nearest.Of(text, IDs(people))
	case 1:
		return named[0]
	}
	return "" // a name that two have says neither
}

// Award is a row of readings/roles.csv.
type Award struct {
	At     position.Pos
	Date   Date
	Person Ref[Person]
	Role   Ref[Role]
	Act    string // gained, renewed, withdrawn
	By     string
	Reason string
	Bad    bool // it has an error, and counts for nothing
}

// Reading is a row of readings/record.csv.
type Reading struct {
	At            position.Pos
	Date          Date
	Person        Ref[Person]
	Procedure     Ref[Procedure]
	Act           string // read, watched, performed, taught, told, inspected
	Fingerprint   string
	FingerprintAt position.Pos
	By            string // the id of who saw it; "" where nobody did
	ByAt          position.Pos
	On            string // the machine or unit
	Language      string // that was read; "" for the original's
	Score         string
	Note          string // what an inspection found, why somebody was trained again
	After         string // which row it was added after; "" where the row does not say
	AfterAt       position.Pos
	Sum           string // of this row, as later rows name it
	Bad           bool   // it has an error, and counts for nothing
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
	CheckedAt   position.Pos
	ApprovedAt  position.Pos
	Readers     string         // reread, tell, none, retired
	Words       string         // the hash of the words and pictures; "" where the row has none
	Language    string         // of a translation; "" for the original
	Kept        *position.File // its words as they were; nil where they were not kept
}

// KeptPath is where the words of an issued revision are kept: of the original,
// or of a translation.
func KeptPath(procedure, number, language string) string {
	if language != "" {
		number += "." + language
	}
	return "revisions/" + procedure + "/" + number + ".md"
}

var fingerprintForm = regexp.MustCompile(`^[0-9]+-[0-9a-f]{16}$`)

// IsFingerprint says whether a text has the form of a fingerprint: the number
// of the form, a hyphen, 16 hexadecimal digits.
func IsFingerprint(text string) bool { return fingerprintForm.MatchString(text) }
