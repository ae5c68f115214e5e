package register

import (
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/fastening"
)

// Machine is a machine's page.
type Machine struct {
	page.Frame
	Name      string
	Options   []string
	Units     []Fact
	Points    []Fact
	Energies  []Fact
	Reach     []Reach
	Front     *words.Front
	UnitBox   bool // units are listed: one may be chosen
	Parts     []Thing
	Fasteners []Thing
	Fluids    []Thing
	Settings  []Fact
	Cards     []page.Link
	Uses      []page.Use // its procedures
	Jobs      *jobs.Jobs // jobs that were done at it; nil where none was
}

// Reach is what comes off before a part, in order.
type Reach struct {
	Part  string
	First []string
}

// Thing is a part, fastener or fluid with its facts.
type Thing struct {
	ID       string
	Name     string
	Kind     string
	Facts    []Fact
	Computed []page.Computed
}

// Machines makes the index of machines.
func (s *Pages) Machines() *Index {
	v := &Index{Frame: s.Frame("machines/index.html", s.Words.Machines), Name: s.Words.Machines, Counts: s.Words.Procedures}
	var g grouping
	for _, m := range s.Manual.Machines {
		row := Row{Link: s.Link(v.Up, m)}
		row.List = row.Address + "#procedures"
		row.Count = len(s.InUse(m.ID))
		g.add("", row)
	}
	v.Groups = g.groups()
	return v
}

// serials are the serial numbers of a row, in the page's words; as they were
// written where they could not be read.
func (s *Pages) serials(u *model.Unit) string {
	switch {
	case u.To == 0:
		return u.Serials
	case u.From == u.To:
		return strconv.Itoa(u.From)
	}
	return fmt.Sprintf("%d %s %d", u.From, s.Speaks.Several.To, u.To)
}

// Machine makes a machine's page.
func (s *Pages) Machine(m *model.Machine) *Machine {
	v := &Machine{Frame: s.Frame(page.PageOf(m), m.Label()), Name: m.Label()}
	v.FirstAid, v.Cut = s.aidOn(m), s.CutAt(m.Points)
	w := s.Words
	for _, o := range m.Options {
		v.Options = append(v.Options, o.Value)
	}
	for _, u := range m.Units {
		v.Units = append(v.Units, Fact{Name: s.serials(&u), Text: s.optionNames(m, u.Options)})
	}
	for _, p := range m.Points {
		lock := w.NoLock
		if p.Lock {
			lock = w.TakesALock
		}
		if p.Kept {
			lock = s.Speaks.Several.KeptPlug
		}
		v.Points = append(v.Points, Fact{Name: p.Label(), Text: page.Phrase(p.Where, lock, s.onlyWith(m, p.OnlyWith))})
	}
	for _, e := range m.Energies {
		v.Energies = append(v.Energies, Fact{Name: e.Label(), Text: s.energyFacts(m, e), Computed: s.ComputedEnergy(e)})
	}
	v.Cards = s.cards(v.Up, m)
	v.Reach, v.Front, v.UnitBox = reaches(m), &s.Speaks.Front, len(m.Units) > 0
	s.machineThings(v, m)
	v.Jobs = s.JobsAt(v.Up, m, false)
	v.Uses = s.usesOf(v.Up, m)
	return v
}

// fewUses is how many procedures of a use a machine's page names that has too
// many.
const fewUses = 20

// usesOf are a machine's procedures by what they are for. Where they are too
// many, the rest is on pages of its own.
func (s *Pages) usesOf(up string, m *model.Machine) []page.Use {
	list := s.InUse(m.ID)
	if len(list) <= page.OnList {
		return s.UsesOf(up, list, 0, nil)
	}
	pages := s.Lists(page.ListAt(m), list)
	return s.UsesOf(up, list, fewUses, func(id string) string {
		i := slices.IndexFunc(pages, func(l page.Listed) bool { return l.Begins(id) })
		return up + pages[i].At + "#" + id
	})
}

// reaches are the parts that something must come off before.
func reaches(m *model.Machine) []Reach {
	var out []Reach
	for _, p := range m.Parts {
		if first := above(p, map[*model.Part]bool{p: true}); len(first) > 0 {
			out = append(out, Reach{p.Label(), first})
		}
	}
	return out
}

// above are the parts that come off before a part, each after all that it is
// itself under.
func above(p *model.Part, seen map[*model.Part]bool) []string {
	var out []string
	for _, u := range p.Under {
		if u.To != nil && !seen[u.To] {
			seen[u.To] = true
			out = append(append(out, above(u.To, seen)...), u.To.Label())
		}
	}
	return out
}

// aidOn is the first aid for the hazards that the procedures of a machine meet,
// each once.
func (s *Pages) aidOn(m *model.Machine) []page.Aid {
	var out []page.Aid
	seen := map[string]bool{}
	for i := range s.Rows {
		if s.Rows[i].For != m.ID {
			continue
		}
		for _, aid := range s.Rows[i].Aids {
			if !seen[aid.ID] {
				seen[aid.ID] = true
				out = append(out, aid)
			}
		}
	}
	return out
}

func (s *Pages) optionNames(m *model.Machine, ids []string) string {
	var out []string
	for _, id := range ids {
		if name, ok := m.Option(id); ok {
			out = append(out, name)
		}
	}
	return page.Joined(out)
}

func (s *Pages) energyFacts(m *model.Machine, e *model.Energy) string {
	size, stored := "", ""
	if !e.Voltage.IsZero() {
		size = s.Both(e.Voltage)
	}
	if !e.Pressure.IsZero() {
		size = s.BothLimit(e.Pressures)
	}
	if !e.Temperature.IsZero() {
		size = s.Both(e.Temperature)
	}
	if e.Stored.Yes {
		stored = s.Words.Stored
	}
	var points []string
	for _, p := range e.Points {
		if p.To != nil {
			points = append(points, p.To.Label())
		}
	}
	return page.Phrase(s.Words.Kind(e.Kind), size, stored, page.Joined(points), s.onlyWith(m, e.OnlyWith))
}

func (s *Pages) onlyWith(m *model.Machine, c model.Condition) string {
	name, ok := m.Option(c.Option)
	switch {
	case !ok:
		return ""
	case c.Not:
		return fmt.Sprintf(s.Words.NotOn, name)
	}
	return fmt.Sprintf(s.Words.OnlyOn, name)
}

func (s *Pages) machineThings(v *Machine, m *model.Machine) {
	for _, p := range m.Parts {
		v.Parts = append(v.Parts, s.part(m, p))
	}
	for _, f := range m.Fasteners {
		v.Fasteners = append(v.Fasteners, s.machineFastener(m, f))
	}
	for _, f := range m.Fluids {
		t := Thing{ID: f.ID, Name: f.Label()}
		facts := (*facts)(&t.Facts)
		facts.text(s.Words.Capacity, s.Capacity(f))
		if f.Supply.To != nil {
			facts.links(s.Words.Supplies, []page.Link{s.Link(v.Up, f.Supply.To)})
		}
		facts.text(s.Words.Options, s.onlyWith(m, f.OnlyWith))
		v.Fluids = append(v.Fluids, t)
	}
	for _, set := range m.Settings {
		v.Settings = append(v.Settings, Fact{Name: set.Label(), Text: page.Phrase(s.Value(set), s.onlyWith(m, set.OnlyWith))})
	}
}

func (s *Pages) part(m *model.Machine, p *model.Part) Thing {
	t := Thing{ID: p.ID, Name: p.Label(), Kind: s.Words.Kind(p.Kind)}
	f := (*facts)(&t.Facts)
	f.text(s.Words.Under, refNames(p.Under))
	var held []string
	for _, h := range p.HeldBy {
		if h.To != nil {
			held = append(held, counted(h.Amount, h.To.Label()))
		}
	}
	f.text(s.Words.HeldBy, page.Joined(held))
	f.text(s.Words.ProveDead, refNames(p.ProveDead))
	f.text(s.Words.Guards, refNames(p.Guards))
	if p.Carries.To != nil {
		f.text(s.Words.Carries, p.Carries.To.Label())
	}
	f.text(s.Words.Carries, refNames([]model.Ref[model.Energy]{p.Bears}))
	f.text(s.Speaks.Several.FreedBy, refNames(p.FreedBy))
	if !p.Mass.IsZero() {
		f.text(s.Words.Mass, s.Both(p.Mass))
	}
	f.text(s.Words.Options, s.onlyWith(m, p.OnlyWith))
	t.Computed = s.ComputedLift(p, 1)
	return t
}

// counted is a thing as often as it is there: "4 × deck bolt".
func counted(amount, name string) string {
	if amount == "" {
		return name
	}
	return amount + " × " + name
}

func refNames[T any](refs []model.Ref[T]) string {
	var out []string
	for _, r := range refs {
		if n, ok := any(r.To).(model.Named); ok && r.To != nil {
			out = append(out, n.Label())
		}
	}
	return page.Joined(out)
}

func (s *Pages) machineFastener(m *model.Machine, f *model.Fastener) Thing {
	t := Thing{ID: f.ID, Name: f.Label()}
	facts := (*facts)(&t.Facts)
	facts.text(s.Words.Thread, page.Phrase(f.Thread, f.Class))
	if !f.Torque.IsZero() {
		facts.text(s.Words.Torque, s.BothLimit(f.Torque))
	}
	if (!f.Torque.IsZero() || len(f.Stages) > 0) && !fastening.Judged(f.Thread, f.Class) {
		w := &s.Speaks.Several
		facts.text(w.BoltLoad, w.NotJudged)
	}
	if f.ByHand {
		facts.text(s.Words.Torque, s.Speaks.Several.ByHand)
	}
	for i, stage := range f.Stages {
		facts.text(fmt.Sprintf("%s %d", s.Words.Torque, i+1), s.Both(stage))
	}
	if said := s.afterAngle(f); said != "" {
		facts.text(s.Speaks.Several.BoltLoad, said)
	}
	if !f.AcrossFlats.IsZero() {
		facts.text(s.Words.Head, s.Both(f.AcrossFlats))
	}
	facts.text(s.Words.Options, s.onlyWith(m, f.OnlyWith))
	return t
}

// cards are the cards of a machine that have something on them.
func (s *Pages) cards(up string, m *model.Machine) []page.Link {
	var out []page.Link
	if len(m.Fasteners) > 0 {
		out = append(out, page.Link{Name: fmt.Sprintf(s.Words.TorqueCard, m.Label()), Address: up + CardOf(m, "torque")})
	}
	if len(m.Fluids) > 0 {
		out = append(out, page.Link{Name: fmt.Sprintf(s.Words.FluidCard, m.Label()), Address: up + CardOf(m, "fluids")})
	}
	return out
}
