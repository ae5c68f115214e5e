package model

import (
	"slices"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
)

// Machine is one file of machines/: a kind of machine.
type Machine struct {
	Entry         `yaml:",inline"`
	Name          string        `yaml:"name,need" doc:"what people call this kind of machine"`
	Options       []Pair        `yaml:"options" doc:"what a unit may have or not have: id and words"`
	OnlyOneOf     [][]string    `yaml:"only-one-of" doc:"options of which a unit has at most one"`
	Units         []Unit        `yaml:"units" doc:"which options each serial number has"`
	Points        []*Point      `yaml:"points" doc:"where energy is cut"`
	Energies      []*Energy     `yaml:"energies" doc:"what can hurt while it is there"`
	RestoreOrder  []Ref[Energy] `yaml:"restore-order" doc:"which energy comes back first"`
	BeforeIsolate []Ref[Hold]   `yaml:"before-isolate" doc:"holds that are taken before it is switched off: those affected are told"`
	BeforeRestore []Ref[Hold]   `yaml:"before-restore" doc:"holds that are taken before it comes back: everybody is clear"`
	Parts         []*Part       `yaml:"parts" doc:"what comes off"`
	Fasteners     []*Fastener   `yaml:"fasteners" doc:"what holds parts"`
	Fluids        []*Fluid      `yaml:"fluids" doc:"what circuits are filled with"`
	Settings      []*Setting    `yaml:"settings" doc:"set-points and interlocks"`
	Orders        []Order       `yaml:"orders" doc:"places that a repeated step goes through"`

	Groups []*Group `yaml:"-"` // what alike names, in the order of the parts
	things map[string]Named
	words  map[string]string // of the options
}

// Label is the machine's name.
func (m *Machine) Label() string { return labelOr(m.Name, m.ID) }

// Whole says that everything in the machine's file could be read.
func (m *Machine) Whole() bool {
	if m.Misread {
		return false
	}
	for _, n := range m.things {
		if n.Base().Misread {
			return false
		}
	}
	return true
}

// Unit is a range of serial numbers and the options that those units have.
type Unit struct {
	Serials  string       `yaml:"serials,need" doc:"a number, or from and to"`
	Options  []string     `yaml:"options" doc:"what these units have"`
	At       position.Pos `yaml:"-"`
	From, To int          `yaml:"-"`
}

// Thing is what the parts of a machine have in common.
type Thing struct {
	Entry `yaml:",inline"`
	Name  string `yaml:"name" doc:"what people call it; its id in words where none is written"`
}

// Label is the thing's name; an id where the shop gave none.
func (t *Thing) Label() string {
	if t.Name != "" {
		return t.Name
	}
	return strings.ReplaceAll(t.ID, "-", " ")
}

// Point is where energy is cut.
type Point struct {
	Thing    `yaml:",inline"`
	Where    string    `yaml:"where" doc:"where it is found"`
	Lock     bool      `yaml:"lock" word:"kept" sets:"Kept" doc:"whether it takes a lock; kept for a plug that the one who works keeps"`
	OnlyWith Condition `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`

	Kept bool      `yaml:"-"` // a plug: whoever works alone has it, and that is its lock
	Cuts []*Energy `yaml:"-"` // the energies that name it
}

// Padlocked says that the point is locked with a padlock, one for each who locks.
func (p *Point) Padlocked() bool { return p.Lock && !p.Kept }

// Condition is the option that a unit must have, or must not have, for a thing
// to be there. The zero Condition always holds.
type Condition struct {
	Option string
	Not    bool
	At     position.Pos
}

// Set reads "cab" or "!cab".
func (c *Condition) Set(text string, at position.Pos) {
	c.Option, c.Not = strings.CutPrefix(text, "!")
	c.At = at
}

// Energy is a source of energy that is cut before hands go in.
type Energy struct {
	Thing         `yaml:",inline"`
	Kind          string            `yaml:"kind,need" one:"electric pressure vacuum gravity spring motion heat chemical" doc:"what sort of energy"`
	Voltage       quantity.Quantity `yaml:"voltage" dim:"voltage" doc:"its voltage"`
	Pressures     quantity.Limit    `yaml:"pressure" dim:"pressure" like:"210 bar" doc:"its pressure, or the range of it"`
	Temperature   quantity.Quantity `yaml:"temperature" dim:"temperature" doc:"how hot it is; of kind heat"`
	Points        []Ref[Point]      `yaml:"points,need" doc:"where it is cut; [] where there is nothing to switch off"`
	Stored        Stored            `yaml:"stored" doc:"whether some stays behind after it is cut; of a capacitor, how much"`
	BlockedBy     []Ref[Tool]       `yaml:"blocked-by" doc:"tools that hold the load"`
	ContainedBy   []Ref[Tool]       `yaml:"contained-by" doc:"tools of which one stands round it while it is put on, filled or tested: a cage, a screen"`
	BeforeIsolate []Ref[Hold]       `yaml:"before-isolate" doc:"holds that are taken before it is switched off: those affected are told"`
	BeforeRestore []Ref[Hold]       `yaml:"before-restore" doc:"holds that are taken before it comes back: everybody is clear"`
	OnlyWith      Condition         `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`

	Pressure quantity.Quantity `yaml:"-"` // the greatest of Pressures
}

// shows are the dimensions in which a kind of energy can be measured; of a kind
// that is not here, any.
var shows = map[string][]quantity.Dimension{
	"electric": {quantity.Voltage, quantity.Current, quantity.Resistance, quantity.Capacitance, quantity.Power, quantity.Frequency},
	"pressure": {quantity.Pressure},
	"vacuum":   {quantity.Pressure},
	"heat":     {quantity.Temperature},
}

// Shows are the dimensions in which the energy can be measured; nil where any will
// do.
func (e *Energy) Shows() []quantity.Dimension { return shows[e.Kind] }

// ShownIn says that a measurement in a dimension says anything of the energy.
func (e *Energy) ShownIn(d quantity.Dimension) bool {
	list := e.Shows()
	return list == nil || slices.Contains(list, d)
}

// Stored says whether energy stays behind, how fast it goes, and how much of a
// pressure comes out. A maker's waiting time counts beside what is computed, the longer of both. Of an accumulator the gas fills its volume when the fluid
// is out, and has the precharge then.
type Stored struct {
	Yes         bool              `yaml:"-"`
	Capacitance quantity.Quantity `yaml:"capacitance" dim:"capacitance" doc:"of what stays charged"`
	Resistance  quantity.Quantity `yaml:"resistance" dim:"resistance" doc:"of what discharges it"`
	Wait        quantity.Quantity `yaml:"wait" dim:"duration" doc:"the maker's waiting time until it is out"`
	GasVolume   quantity.Quantity `yaml:"gas-volume" dim:"volume" doc:"how much room the gas has; of an accumulator, empty of fluid"`
	Precharge   quantity.Quantity `yaml:"precharge" dim:"pressure" doc:"of an accumulator, the gas's pressure without fluid"`
}

// Part is a part, line, wire or connector.
type Part struct {
	Thing     `yaml:",inline"`
	Kind      string            `yaml:"kind" one:"part line wire connector" doc:"the page speaks by it: lift out, disconnect, unplug"`
	Under     []Ref[Part]       `yaml:"under" doc:"what comes off first"`
	ProveDead []Ref[Energy]     `yaml:"prove-dead" doc:"energies that are proved dead before hands go in"`
	Guards    []Ref[Energy]     `yaml:"guards" doc:"energies that it keeps hands from"`
	Alike     string            `yaml:"alike" doc:"a name for parts that can be swapped by mistake"`
	HeldBy    []Use[Fastener]   `yaml:"held-by" doc:"its fasteners, and how many"`
	FreedBy   []Ref[Fastener]   `yaml:"freed-by" doc:"fasteners elsewhere without whose loosening it neither comes off nor goes on"`
	Carries   Ref[Fluid]        `yaml:"carries" doc:"the fluid in a line, or the energy"`
	OnlyWith  Condition         `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`
	Mass      quantity.Quantity `yaml:"mass" dim:"mass" doc:"what it weighs"`
	Lift      *Lift             `yaml:"lift" doc:"how it is lifted by hand, for the revised NIOSH equation"`
	RenewWith Ref[Supply]       `yaml:"renew-with" doc:"the supply that takes its place"`
	Serial    bool              `yaml:"serial" doc:"whether its serial number is written down"`
	Old       string            `yaml:"old" doc:"what becomes of the old one"`

	Over  []*Part     `yaml:"-"` // what is under it: Under turned round
	Bears Ref[Energy] `yaml:"-"` // the energy that carries names; Carries is empty then
}

// Dead are the energies that are dead before hands go in at the part.
func (p *Part) Dead() []Ref[Energy] {
	for _, e := range p.ProveDead {
		if p.Bears.ID == "" || e.ID == p.Bears.ID {
			return p.ProveDead
		}
	}
	if p.Bears.ID == "" {
		return nil
	}
	return append(slices.Clone(p.ProveDead), p.Bears)
}

// Lift is how a part is lifted by hand: what the revised NIOSH equation asks,
// at the machine, and where it is set down with care at the other end too.
type Lift struct {
	LiftEnd   `yaml:",inline"`
	Travel    quantity.Quantity `yaml:"travel" dim:"length" doc:"how far up or down; not beside to"`
	Frequency quantity.Quantity `yaml:"frequency" dim:"count" doc:"lifts per minute; none is a single lift"`
	Duration  quantity.Quantity `yaml:"duration" dim:"duration" doc:"of lifting in a shift; none is up to 1 h"`
	Coupling  string            `yaml:"coupling,need" one:"good fair poor" doc:"how well hands hold it"`
	To        *LiftEnd          `yaml:"to" doc:"where the hands are at the other end"`
}

// LiftEnd is where the hands are at one end of a lift.
type LiftEnd struct {
	Horizontal quantity.Quantity `yaml:"horizontal,need" dim:"length" like:"40 cm" doc:"how far the hands are in front of the middle of the ankles"`
	Vertical   quantity.Quantity `yaml:"vertical,need" dim:"length" like:"75 cm" doc:"how high the hands are above the floor"`
	Asymmetry  quantity.Quantity `yaml:"asymmetry" dim:"angle" doc:"how far the load stands out of straight ahead"`
}

// Fastener is a kind of bolt, nut, clip or pin.
type Fastener struct {
	Thing       `yaml:",inline"`
	Thread      string              `yaml:"thread" doc:"its thread, such as M8x1.25"`
	Class       string              `yaml:"class" doc:"its strength, such as 8.8"`
	AcrossFlats quantity.Quantity   `yaml:"across-flats" dim:"length" doc:"the size of the tool"`
	Drive       string              `yaml:"drive" doc:"for heads that are not hexagons: hex 6 mm, T30"`
	Torque      quantity.Limit      `yaml:"torque" dim:"torque" like:"22 N·m" word:"hand" sets:"ByHand" doc:"to what it is tightened; hand for no more than by hand"`
	Stages      []quantity.Quantity `yaml:"stages" like:"60 N·m" doc:"torques and angles, one after another"`
	Condition   string              `yaml:"condition" one:"dry zinc lubricated" doc:"of the thread; dry where none is written"`
	Lubricant   string              `yaml:"lubricant" doc:"what goes on the thread"`
	Sequence    []string            `yaml:"sequence,many" doc:"star, spiral, or the order itself"`
	Start       string              `yaml:"start" doc:"how it is begun before anything near it is tightened"`
	MarkAfter   string              `yaml:"mark-after" doc:"how it is marked when it is tight"`
	Retorque    string              `yaml:"retorque" doc:"when it is tightened again"`
	RenewWith   Ref[Supply]         `yaml:"renew-with" doc:"the supply of which a new one goes in at each refit"`
	OnlyWith    Condition           `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`

	ByHand bool `yaml:"-"` // its torque is the word hand

	Holds []*Part `yaml:"-"` // the parts that it holds
}

// Fluid is what a circuit is filled with.
type Fluid struct {
	Thing    `yaml:",inline"`
	Supply   Ref[Supply]       `yaml:"supply" doc:"what is filled in"`
	Capacity quantity.Quantity `yaml:"capacity" like:"4.5 L" doc:"how much it holds"`
	Bleed    bool              `yaml:"bleed" word:"live" sets:"BledLive" doc:"whether air must be let out after it was open; live where that is done with its energy on"`
	NeededBy []Ref[Energy]     `yaml:"needed-by" doc:"energies that must not come back while it is low"`
	OnlyWith Condition         `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`

	BledLive bool    `yaml:"-"` // it is bled with the energies on that it is needed by
	Lines    []*Part `yaml:"-"` // what carries it
}

// Setting is a set-point or an interlock.
type Setting struct {
	Thing    `yaml:",inline"`
	Value    string        `yaml:"value" doc:"what it is set to"`
	NeededBy []Ref[Energy] `yaml:"needed-by" doc:"energies that must not come back while it is altered"`
	OnlyWith Condition     `yaml:"only-with" doc:"the option without which a unit does not have it; \"!option\" for units without"`
}

// Order is a list of places that a repeated step goes through.
type Order struct {
	Entry  `yaml:",inline"`
	Labels []string
}

// Label is the order's id in words.
func (o *Order) Label() string { return strings.ReplaceAll(o.ID, "-", " ") }

// Group is a set of parts that can be swapped by mistake.
type Group struct {
	Entry
	Parts []*Part
}

// Label is the group's id in words.
func (g *Group) Label() string { return strings.ReplaceAll(g.ID, "-", " ") }

// Index makes the machine's things and options findable by id. The first of two
// with one id stands.
func (m *Machine) Index() {
	m.things, m.words = map[string]Named{}, map[string]string{}
	for _, o := range m.Options {
		if _, twice := m.words[o.Key]; !twice {
			m.words[o.Key] = o.Value
		}
	}
	add := func(n Named) {
		if id := n.Base().ID; m.things[id] == nil {
			m.things[id] = n
		}
	}
	for _, p := range m.Points {
		add(p)
	}
	for _, e := range m.Energies {
		add(e)
	}
	for _, p := range m.Parts {
		add(p)
	}
	for _, f := range m.Fasteners {
		add(f)
	}
	for _, f := range m.Fluids {
		add(f)
	}
	for _, s := range m.Settings {
		add(s)
	}
	for i := range m.Orders {
		add(&m.Orders[i])
	}
	for _, g := range m.Groups {
		add(g)
	}
}

// Find is the thing of an id, or nil.
func (m *Machine) Find(id string) Named {
	if m == nil {
		return nil
	}
	return m.things[id]
}

// Option is the words of an option.
func (m *Machine) Option(id string) (string, bool) {
	if m == nil {
		return "", false
	}
	words, known := m.words[id]
	return words, known
}
