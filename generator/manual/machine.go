package manual

import (
	"strings"

	"baybinder/generator/quantity"
	"baybinder/generator/source"
)

// Machine is one file of machines/: a kind of machine.
type Machine struct {
	Entry        `yaml:",inline"`
	Name         string        `yaml:"name,need"`
	Options      []Pair        `yaml:"options"`
	OnlyOneOf    [][]string    `yaml:"only-one-of"` // at most one of each group
	Units        []Unit        `yaml:"units"`
	Points       []*Point      `yaml:"points"`
	Energies     []*Energy     `yaml:"energies"`
	RestoreOrder []Ref[Energy] `yaml:"restore-order"`
	Parts        []*Part       `yaml:"parts"`
	Fasteners    []*Fastener   `yaml:"fasteners"`
	Fluids       []*Fluid      `yaml:"fluids"`
	Settings     []*Setting    `yaml:"settings"`
	Orders       []Order       `yaml:"orders"`

	Groups []*Group `yaml:"-"` // what alike names, in the order of the parts
	things map[string]Named
}

// Label is the machine's name.
func (m *Machine) Label() string { return labelOr(m.Name, m.ID) }

// Unit is a range of serial numbers and the options that those units have.
type Unit struct {
	Serials  string     `yaml:"serials,need"`
	Options  []string   `yaml:"options"`
	At       source.Pos `yaml:"-"`
	From, To int        `yaml:"-"`
}

// Thing is what the parts of a machine have in common.
type Thing struct {
	Entry `yaml:",inline"`
	Name  string `yaml:"name"`
}

// Label is the thing's name; an id where the shop gave none.
func (t *Thing) Label() string { return labelOr(t.Name, strings.ReplaceAll(t.ID, "-", " ")) }

// Point is where energy is cut.
type Point struct {
	Thing `yaml:",inline"`
	Where string `yaml:"where"`
	Lock  bool   `yaml:"lock"`

	Cuts []*Energy `yaml:"-"` // the energies that name it
}

// Condition is the option that a unit must have, or must not have, for a thing
// to be there. The zero Condition always holds.
type Condition struct {
	Option string
	Not    bool
	At     source.Pos
}

// Set reads "cab" or "!cab".
func (c *Condition) Set(text string, at source.Pos) {
	c.Option, c.Not = strings.CutPrefix(text, "!")
	c.At = at
}

// Energy is a source of energy that is cut before hands go in.
type Energy struct {
	Thing     `yaml:",inline"`
	Kind      string            `yaml:"kind,need" one:"electric pressure vacuum gravity spring motion heat chemical"`
	Voltage   quantity.Quantity `yaml:"voltage" dim:"voltage"`
	Pressure  quantity.Quantity `yaml:"pressure" dim:"pressure"`
	Points    []Ref[Point]      `yaml:"points,need"`
	Stored    Stored            `yaml:"stored"`
	BlockedBy []Ref[Tool]       `yaml:"blocked-by"`
	OnlyWith  Condition         `yaml:"only-with"`
}

// Stored says whether energy stays behind, how fast it goes, and how much of a
// pressure comes out. Of an accumulator the gas fills its volume when the fluid
// is out, and has the precharge then.
type Stored struct {
	Yes         bool              `yaml:"-"`
	Capacitance quantity.Quantity `yaml:"capacitance" dim:"capacitance"`
	Resistance  quantity.Quantity `yaml:"resistance" dim:"resistance"`
	GasVolume   quantity.Quantity `yaml:"gas-volume" dim:"volume"`
	Precharge   quantity.Quantity `yaml:"precharge" dim:"pressure"`
}

// Part is a part, line, wire or connector.
type Part struct {
	Thing     `yaml:",inline"`
	Kind      string            `yaml:"kind" one:"part line wire connector"`
	Under     []Ref[Part]       `yaml:"under"` // what comes off first
	ProveDead []Ref[Energy]     `yaml:"prove-dead"`
	Guards    []Ref[Energy]     `yaml:"guards"`
	Alike     string            `yaml:"alike"`
	HeldBy    []Use[Fastener]   `yaml:"held-by"`
	Carries   Ref[Fluid]        `yaml:"carries"`
	OnlyWith  Condition         `yaml:"only-with"`
	Mass      quantity.Quantity `yaml:"mass" dim:"mass"`
	Lift      *Lift             `yaml:"lift"`
	RenewWith Ref[Supply]       `yaml:"renew-with"`
	Serial    bool              `yaml:"serial"` // its serial number is written down
	Old       string            `yaml:"old"`    // what becomes of the old one

	Over []*Part `yaml:"-"` // what is under it: Under turned round
}

// Lift is how a part is lifted by hand: what the revised NIOSH equation asks,
// at the machine, and where it is set down with care at the other end too.
type Lift struct {
	LiftEnd   `yaml:",inline"`
	Travel    quantity.Quantity `yaml:"travel" dim:"length"`     // up or down; not beside to
	Frequency quantity.Quantity `yaml:"frequency" dim:"count"`   // lifts per minute; none is a single lift
	Duration  quantity.Quantity `yaml:"duration" dim:"duration"` // of lifting in a shift; none is up to 1 h
	Coupling  string            `yaml:"coupling,need" one:"good fair poor"`
	To        *LiftEnd          `yaml:"to"`
}

// LiftEnd is where the hands are at one end of a lift.
type LiftEnd struct {
	Horizontal quantity.Quantity `yaml:"horizontal,need" dim:"length"` // in front of the middle of the ankles
	Vertical   quantity.Quantity `yaml:"vertical,need" dim:"length"`   // above the floor
	Asymmetry  quantity.Quantity `yaml:"asymmetry" dim:"angle"`        // turn out of straight ahead
}

// Fastener is a kind of bolt, nut, clip or pin.
type Fastener struct {
	Thing       `yaml:",inline"`
	Thread      string              `yaml:"thread"`
	Class       string              `yaml:"class"`
	AcrossFlats quantity.Quantity   `yaml:"across-flats" dim:"length"`
	Drive       string              `yaml:"drive"`
	Torque      quantity.Limit      `yaml:"torque" dim:"torque"`
	Stages      []quantity.Quantity `yaml:"stages"` // torques and angles; never added up
	Condition   string              `yaml:"condition" one:"dry zinc lubricated"`
	Lubricant   string              `yaml:"lubricant"`
	Sequence    []string            `yaml:"sequence,many"` // star, spiral, or the order itself
	Start       string              `yaml:"start"`
	MarkAfter   string              `yaml:"mark-after"`
	Retorque    string              `yaml:"retorque"`
	RenewWith   Ref[Supply]         `yaml:"renew-with"`

	Holds []*Part `yaml:"-"` // the parts that it holds
}

// Fluid is what a circuit is filled with.
type Fluid struct {
	Thing    `yaml:",inline"`
	Supply   Ref[Supply]       `yaml:"supply"`
	Capacity quantity.Quantity `yaml:"capacity"`
	Bleed    bool              `yaml:"bleed"`
	NeededBy []Ref[Energy]     `yaml:"needed-by"`

	Lines []*Part `yaml:"-"` // what carries it
}

// Setting is a set-point or an interlock.
type Setting struct {
	Thing `yaml:",inline"`
	Value string `yaml:"value"`
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

// Index makes the machine's things findable by id. The first of two with one
// id stands.
func (m *Machine) Index() {
	m.things = map[string]Named{}
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
	if m != nil {
		for _, o := range m.Options {
			if o.Key == id {
				return o.Value, true
			}
		}
	}
	return "", false
}
