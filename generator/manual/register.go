package manual

import (
	"baybinder/generator/quantity"
	"baybinder/generator/source"
)

// Shop is shop.yaml.
type Shop struct {
	Entry       `yaml:",inline"`
	Title       string            `yaml:"title,need"`
	Language    string            `yaml:"language"` // default en
	Also        []string          `yaml:"also"`
	Address     string            `yaml:"address"` // where it is served
	Notice      string            `yaml:"notice"`
	Emergency   string            `yaml:"emergency"`
	Locks       *Locks            `yaml:"locks"`
	ShowUnits   []ShownUnits      `yaml:"show-units"`
	ReviewEvery quantity.Quantity `yaml:"review-every" dim:"calendar time"`
	Limits      Limits            `yaml:"limits"`
	Writing     Writing           `yaml:"writing"`
}

// Label is the shop's title.
func (s *Shop) Label() string { return s.Title }

// Locks says which tool the shop locks with and who fits one.
type Locks struct {
	Tool Ref[Tool] `yaml:"tool,need"`
	Each string    `yaml:"each" one:"person job"` // each person, or one for the job
}

// ShownUnits are the units in which a dimension is shown, the first leading.
type ShownUnits struct {
	Dimension quantity.Dimension
	Units     []quantity.Unit
}

// Limits are the shop's standing limits.
type Limits struct {
	SafeVoltageDC quantity.Quantity `yaml:"safe-voltage-dc" dim:"voltage"`
	SafeVoltageAC quantity.Quantity `yaml:"safe-voltage-ac" dim:"voltage"`
	Lift          quantity.Quantity `yaml:"lift" dim:"mass"`
}

// Writing holds the writing rules' numbers.
type Writing struct {
	WordsInAStep   int `yaml:"words-in-a-step"`
	ActionsInAStep int `yaml:"actions-in-a-step"`
}

// Tool is one entry of register/tools.yaml.
type Tool struct {
	Common      `yaml:",inline"`
	Kind        string            `yaml:"kind,need" one:"socket spanner screwdriver torque-wrench angle-gauge tester lifting ppe lock aid other"`
	Range       quantity.Limit    `yaml:"range"`
	Length      quantity.Quantity `yaml:"length" dim:"length"` // hand to square
	Adds        quantity.Quantity `yaml:"adds" dim:"length"`   // what an adapter adds to the wrench's length
	Fits        []string          `yaml:"fits"`                // "13 mm", "hex 6 mm", "T30"
	Rated       string            `yaml:"rated"`
	Kept        string            `yaml:"kept"`
	Owned       int               `yaml:"owned"`
	Or          []Ref[Tool]       `yaml:"or"` // substitutes
	Calibration *Calibration      `yaml:"calibration"`
	Needs       []Ref[Role]       `yaml:"needs"` // roles that may use it
}

// Calibration says when a tool was last calibrated, as one or by individual.
type Calibration struct {
	Every quantity.Quantity `yaml:"every,need" dim:"calendar time"`
	Last  Date              `yaml:"last"`
	Units []DatedUnit       `yaml:"units"`
}

// DatedUnit is an individual of a tool and the day it was calibrated.
type DatedUnit struct {
	Name string
	Last Date
}

// Hazard is one entry of register/hazards.yaml, or that entry with a
// procedure's overrides.
type Hazard struct {
	Common      `yaml:",inline"`
	Nature      string      `yaml:"nature"`
	Harm        string      `yaml:"harm,need" one:"death serious-injury minor-injury damage"`
	Happens     string      `yaml:"happens" one:"will could"`
	Consequence string      `yaml:"consequence"`
	Avoid       []string    `yaml:"avoid"`
	Wear        []Ref[Tool] `yaml:"wear"`
	Symbol      string      `yaml:"symbol"` // ISO 7010, "W012"
	FirstAid    string      `yaml:"first-aid"`
	Of          Ref[Entry]  `yaml:"of"` // an energy or a fluid of the machine that uses it
}

// Hold is one entry of register/holds.yaml.
type Hold struct {
	Common   `yaml:",inline"`
	Kind     string            `yaml:"kind,need" one:"wait measure look ask note sign check witness"`
	For      quantity.Quantity `yaml:"for" dim:"duration"`
	Of       Ref[Entry]        `yaml:"of"`
	Why      string            `yaml:"why"`
	What     string            `yaml:"what"`
	Places   []string          `yaml:"at"` // one blank each
	Limit    quantity.Limit    `yaml:"limit"`
	With     Ref[Tool]         `yaml:"with"`
	ProvedOn Ref[Tool]         `yaml:"proved-on"`
	IfNot    string            `yaml:"if-not"`
	Tries    int               `yaml:"tries"`
	Call     Ref[Role]         `yaml:"call"`
	Good     string            `yaml:"good"`
	LooksFor string            `yaml:"looks-for" one:"leak"`
	Answers  []Pair            `yaml:"answers"`
	By       Ref[Role]         `yaml:"by"`
	How      string            `yaml:"how" one:"together apart"`
}

// Supply is one entry of register/supplies.yaml.
type Supply struct {
	Common  `yaml:",inline"`
	Unit    string        `yaml:"unit"` // default each
	Kept    string        `yaml:"kept"`
	Hazards []Ref[Hazard] `yaml:"hazards"`
	GHS     []string      `yaml:"ghs"`
	Waste   string        `yaml:"waste"`
}

// Role is one entry of register/roles.yaml.
type Role struct {
	Common     `yaml:",inline"`
	RenewEvery quantity.Quantity `yaml:"renew-every" dim:"calendar time"`
}

// Words are an entry's texts in another language.
type Words struct {
	Register string // "tools"; "machines/ID" for a machine's things, "shop" for the shop
	Language string
	ID       string
	At       source.Pos
	Texts    map[string][]string // field → texts
	Keys     map[string][]string // field → the keys of those texts, where it is a map
}
