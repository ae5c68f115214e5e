package model

import (
	"time"

	"baybinder/generator/base/position"
)

// Job is one file of records/: a job that was done, as the page at the bay
// saved it. The json tags are the fields of its published schema.
type Job struct {
	File *position.File `json:"-"`
	Name string         `json:"-"` // its path below records/, without the ending

	Shop        string    `json:"shop"`
	Procedure   string    `json:"procedure"`
	Title       string    `json:"title"`
	Revision    string    `json:"revision"`    // "" where none was issued
	Fingerprint string    `json:"fingerprint"` // of that revision; "" where it is not known
	Unit        JobUnit   `json:"unit"`
	Worker      string    `json:"worker"`
	Started     time.Time `json:"started"`
	Saved       time.Time `json:"saved"`
	Steps       []JobStep `json:"steps"`
	Holds       []JobHold `json:"holds"`
	Gaps        []JobGap  `json:"gaps"`
	Notes       []JobNote `json:"notes"`
	HandOvers   []JobHand `json:"handOvers"`
	Clock       []JobBack `json:"clock"`

	ProcedureAt, WorkerAt position.Pos `json:"-"`
	To                    *Procedure   `json:"-"` // nil where the manual has no such procedure
	Silent                bool         `json:"-"` // the procedure may be in a file that could not be read
}

// Day is the day on which the job was saved, by the clock at the bay: the
// record counts from then on.
func (j *Job) Day() Date { return DateOf(j.Saved) }

// JobUnit is the unit that was worked on; both are empty where none was chosen.
type JobUnit struct {
	Serial  string   `json:"serial"`
	Options []string `json:"options"`

	At        position.Pos   `json:"-"`
	SerialAt  position.Pos   `json:"-"`
	OptionsAt []position.Pos `json:"-"`
}

// JobStep is how one step stood. Number and words are those of the page that
// the job was done with.
type JobStep struct {
	Number string       `json:"step"`
	ID     string       `json:"id"` // the step's place in its page: its name, else made of its number
	Words  string       `json:"words"`
	State  string       `json:"state"` // not yet, in hand, done, does not apply, not on this unit, not needed
	At     time.Time    `json:"at"`    // zero where nobody touched it
	Reason string       `json:"reason"`
	Latest time.Time    `json:"latest"` // by when it was to end; zero where nothing says
	Late   bool         `json:"late"`
	Place  position.Pos `json:"-"`
}

// JobHold is what came of one hold.
type JobHold struct {
	Step     string         `json:"step"`
	Hold     string         `json:"hold"`
	Kind     string         `json:"kind"`
	Met      bool           `json:"met"`
	At       time.Time      `json:"at"`
	From     time.Time      `json:"from"` // of a wait
	Until    time.Time      `json:"until"`
	Latest   time.Time      `json:"latest"` // by when a wait was to be over; zero where it has no longest time
	Late     bool           `json:"late"`
	Unit     string         `json:"unit"` // of a measurement
	Low      *float64       `json:"low"`  // the limit's ends as the page had them, in the unit; nil where open or not saved
	High     *float64       `json:"high"`
	Near     *JobNear       `json:"near"` // nil where nothing is near the limit
	Values   []JobReading   `json:"values"`
	Failed   []JobFailed    `json:"failed"` // readings that were out of limit before
	Proved   *bool          `json:"proved"` // the tester was proved before and after
	Good     *bool          `json:"good"`   // of a look
	Ticked   []string       `json:"ticked"` // the places that were looked at
	Answer   string         `json:"answer"`
	Words    string         `json:"words"`
	Signed   *JobSigned     `json:"signed"`
	Place    position.Pos   `json:"-"`
	ValuesAt []position.Pos `json:"-"` // of Values
}

// JobNear is the part of a limit that is near its end, as the page had it, and
// how soon it is measured again after a reading in it.
type JobNear struct {
	Low   *float64 `json:"low"`
	High  *float64 `json:"high"`
	Again string   `json:"again"`
}

// JobReading is one value that was read; nil where no plain number was typed.
type JobReading struct {
	Where string   `json:"where"`
	Typed string   `json:"typed"`
	Value *float64 `json:"value"`
}

// JobFailed are readings that were given up.
type JobFailed struct {
	At     time.Time    `json:"at"`
	Values []JobReading `json:"values"`
}

// JobSigned is a signature.
type JobSigned struct {
	Name string    `json:"name"`
	At   time.Time `json:"at"`
}

// JobGap is a step that was ticked past an unticked step or an open hold.
type JobGap struct {
	Step     string    `json:"step"`
	At       time.Time `json:"at"`
	Unticked []string  `json:"unticked"`
	Holds    []string  `json:"holds"`
}

// JobNote is what the technician says is wrong with a step.
type JobNote struct {
	Step  string    `json:"step"`
	At    time.Time `json:"at"`
	Words string    `json:"words"`
}

// JobHand is where the job went from one person to another, at a stopping place.
type JobHand struct {
	Step  string    `json:"step"`
	At    time.Time `json:"at"`
	From  string    `json:"from"`
	To    string    `json:"to"`
	Locks string    `json:"locks"` // their numbers, as they were typed
}

// JobBack is when the computer's clock was set back, by how many minutes.
type JobBack struct {
	At   time.Time `json:"at"`
	Back int       `json:"back"`
}

// Answer is a row of records/answers.csv: what the writer answers to who said
// that a step is wrong.
type Answer struct {
	At     position.Pos
	Record string
	Step   string
	Date   Date
	Words  string
	To     *Job // nil where there is no such record
}
