package model

import (
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
)

// Shop is shop.yaml.
type Shop struct {
	Entry       `yaml:",inline"`
	Title       string            `yaml:"title,need" doc:"the shop, as every page names it"`
	Language    string            `yaml:"language" doc:"the language the manual is written in; en where none is named"`
	Also        []string          `yaml:"also" doc:"other languages that pages are translated into"`
	Address     string            `yaml:"address" doc:"where the site is served; printed codes need it"`
	Notice      string            `yaml:"notice" doc:"stands on every page"`
	Emergency   string            `yaml:"emergency" doc:"what to do in an emergency: stands on every page"`
	Locks       *Locks            `yaml:"locks" doc:"the lock that is fitted at points that take one"`
	ShowUnits   []ShownUnits      `yaml:"show-units" doc:"the units in which amounts are shown, the first leading"`
	ReviewEvery quantity.Quantity `yaml:"review-every" dim:"calendar time" doc:"how often a procedure is read again by its writers"`
	Inspect     quantity.Quantity `yaml:"inspect-every" dim:"calendar time" doc:"how often working by a procedure with locks is inspected"`
	Issue       *Issuers          `yaml:"issue" doc:"who may check and approve a revision"`
	Limits      Limits            `yaml:"limits" doc:"the shop’s standing limits"`
	Writing     Writing           `yaml:"writing" doc:"the numbers of the writing rules"`
}

// Label is the shop's title.
func (s *Shop) Label() string { return s.Title }

// ReviewBy is the day by which a procedure is to be looked over again that was
// looked over on a day; false where the shop does not say, or that day is zero.
func (s *Shop) ReviewBy(looked Date) (Date, bool) {
	span, ok := s.ReviewEvery.Span()
	if !ok || looked.IsZero() {
		return Date{}, false
	}
	return DateOf(span.AddTo(looked.Time())), true
}

// Issuers says who may check and approve revisions: people who hold one of the
// roles on the revision's day.
type Issuers struct {
	Checked  []Ref[Role] `yaml:"checked" doc:"roles of which who checks holds one"`
	Approved []Ref[Role] `yaml:"approved" doc:"roles of which who approves holds one"`
	Since    Date        `yaml:"since" doc:"the day from which it holds"`
}

// Locks says which tool the shop locks with and who fits one.
type Locks struct {
	Tool Ref[Tool] `yaml:"tool,need" doc:"the tool that is the lock"`
	Each string    `yaml:"each" one:"person job" doc:"whether each person on the job fits one, or one is fitted for the job"`
}

// ShownUnits are the units in which a dimension is shown, the first leading.
type ShownUnits struct {
	Dimension quantity.Dimension
	Units     []quantity.Unit
}

// Limits are the shop's standing limits.
type Limits struct {
	SafeVoltageDC quantity.Quantity `yaml:"safe-voltage-dc" dim:"voltage" doc:"a direct voltage up to this is safe to touch"`
	SafeVoltageAC quantity.Quantity `yaml:"safe-voltage-ac" dim:"voltage" doc:"an alternating voltage up to this is safe to touch"`
	SafePressure  quantity.Quantity `yaml:"safe-pressure" dim:"pressure" doc:"how far from the atmosphere a pressure may be that a proof accepts"`
	SafeTouch     quantity.Quantity `yaml:"safe-touch" dim:"temperature" doc:"a temperature up to this may be touched, and a proof accepts it"`
	Lift          quantity.Quantity `yaml:"lift" dim:"mass" doc:"what one person may lift"`
}

// Writing holds the writing rules' numbers.
type Writing struct {
	WordsInAStep   int `yaml:"words-in-a-step,some" doc:"the most words in a sentence of a step"`
	ActionsInAStep int `yaml:"actions-in-a-step,some" doc:"the most actions in a step"`
}

// Tool is one entry of register/tools.yaml.
type Tool struct {
	Common      `yaml:",inline"`
	Kind        string            `yaml:"kind,need" one:"socket spanner screwdriver torque-wrench angle-gauge tester lifting ppe lock aid other" doc:"what it is for"`
	Range       quantity.Limit    `yaml:"range" doc:"what it can set or measure: checked against what it is used for"`
	Length      quantity.Quantity `yaml:"length" dim:"length" doc:"from hand to square, to work out settings behind an adapter"`
	Adds        quantity.Quantity `yaml:"adds" dim:"length" doc:"what an adapter adds to the wrench’s length"`
	Fits        []string          `yaml:"fits" doc:"sizes across flats and drives: 13 mm, hex 6 mm, T30"`
	Rated       string            `yaml:"rated" doc:"what it is rated for, as written on it"`
	Kept        string            `yaml:"kept" doc:"where it is kept: the kit is sorted by it"`
	Owned       int               `yaml:"owned" doc:"how many the shop has"`
	Or          []Ref[Tool]       `yaml:"or" doc:"tools that will do in its place"`
	Calibration *Calibration      `yaml:"calibration" doc:"how often and when it was calibrated"`
	Needs       []Ref[Role]       `yaml:"needs" doc:"roles that may use it"`
}

// Calibration says when a tool was last calibrated, as one or by individual.
type Calibration struct {
	Every quantity.Quantity `yaml:"every,need" dim:"calendar time" doc:"how often"`
	Last  Date              `yaml:"last" doc:"the day of the last one"`
	Units []DatedUnit       `yaml:"units" doc:"the day of each, by the number on the tool"`
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
	Nature      string      `yaml:"nature" doc:"what is dangerous, in a sentence"`
	Harm        string      `yaml:"harm,need" one:"death serious-injury minor-injury damage" doc:"the worst that can follow"`
	Happens     string      `yaml:"happens" one:"will could" doc:"whether the harm will or could follow if it is not avoided"`
	Consequence string      `yaml:"consequence" doc:"what it does to a person or a thing, in a sentence"`
	Avoid       []string    `yaml:"avoid" doc:"what to do about it, one sentence each"`
	Wear        []Ref[Tool] `yaml:"wear" doc:"protective gear: tools of kind ppe"`
	Symbol      string      `yaml:"symbol" doc:"the sign of ISO 7010, such as W012"`
	FirstAid    string      `yaml:"first-aid" doc:"what to do if it has happened"`
	Of          Ref[Entry]  `yaml:"of" doc:"the energy or fluid of the machine that it comes from"`
}

// Hold is one entry of register/holds.yaml.
type Hold struct {
	Common   `yaml:",inline"`
	Kind     string            `yaml:"kind,need" one:"wait measure look ask note sign check witness" doc:"why work stops here"`
	For      quantity.Stretch  `yaml:"for" dim:"duration" asked:"wait" doc:"how long to wait, and the longest where there is one"`
	Of       Ref[Entry]        `yaml:"of" doc:"the energy or fluid that it is about"`
	Why      string            `yaml:"why" doc:"the reason"`
	What     string            `yaml:"what" asked:"measure look note" doc:"what is measured, looked at or noted"`
	Places   []string          `yaml:"at" doc:"the places, one blank each"`
	Limit    quantity.Limit    `yaml:"limit" asked:"measure" doc:"what it must be"`
	Near     quantity.Limit    `yaml:"near" doc:"a part of the limit: a reading in it passes, and is shown as near the limit"`
	AgainIn  quantity.Quantity `yaml:"again-in" like:"3 months" doc:"how soon it is measured again after a reading near the limit"`
	With     Ref[Tool]         `yaml:"with" doc:"the tool"`
	ProvedOn Ref[Tool]         `yaml:"proved-on" doc:"what the tester is proved on before and after"`
	IfNot    string            `yaml:"if-not" doc:"what to do where it is not so"`
	Tries    int               `yaml:"tries,some" doc:"how often it may be tried"`
	Call     Ref[Role]         `yaml:"call" doc:"who is called when the tries are used up"`
	Good     string            `yaml:"good" doc:"what it looks like when it is right"`
	LooksFor string            `yaml:"looks-for" one:"leak" doc:"what is looked for"`
	Answers  []Pair            `yaml:"answers" asked:"ask" doc:"the answers and what they mean"`
	By       Ref[Role]         `yaml:"by" asked:"sign check witness" doc:"the role that signs, checks or witnesses"`
	How      string            `yaml:"how" one:"together apart" doc:"whether the second person sees it done, or looks later and alone"`
}

// Together says that a second person sees the check done; where nothing is said
// of it, too, as the page says it then.
func (h *Hold) Together() bool { return h.Kind == "check" && h.How != "apart" }

// Supply is one entry of register/supplies.yaml.
type Supply struct {
	Common  `yaml:",inline"`
	Unit    string        `yaml:"unit" doc:"the unit it is counted in; each where none is named"`
	Kept    string        `yaml:"kept" doc:"where it is kept"`
	Hazards []Ref[Hazard] `yaml:"hazards" doc:"hazards that come with it"`
	GHS     []string      `yaml:"ghs" doc:"hazard statements on its label, such as H304"`
	Waste   string        `yaml:"waste" doc:"where the used one goes"`
}

// Stock is the unit in which the shop counts the supply; Bare where it is none.
func (s *Supply) Stock() quantity.Unit {
	unit, _ := quantity.UnitNamed(s.Unit)
	return unit
}

// Role is one entry of register/roles.yaml.
type Role struct {
	Common     `yaml:",inline"`
	RenewEvery quantity.Quantity `yaml:"renew-every" dim:"calendar time" doc:"how often it must be renewed"`
	Was        []string          `yaml:"was" doc:"earlier ids: what was gained under them follows"`
}

// Words are an entry's texts in another language.
type Words struct {
	Register string // "tools"; "machines/ID" for a machine's things, "shop" for the shop
	Language string
	ID       string
	At       position.Pos
	Texts    map[string][]string       // field → texts
	Keys     map[string][]string       // field → the keys of those texts, where it is a map
	KeysAt   map[string][]position.Pos // where those keys stand
	Unread   bool                      // a field of it could not be read
}
