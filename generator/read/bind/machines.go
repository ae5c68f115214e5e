package bind

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// machineFiles reads machines/.
func (b *binder) machineFiles() {
	for _, f := range b.filesIn("machines/", ".yaml") {
		id := strings.TrimSuffix(strings.TrimPrefix(f.Path, "machines/"), ".yaml")
		if b.isMachineWords(f) {
			continue // machineWords reads them
		}
		b.fileID(id, f) // told here, and not again where the machine is named
		m := &model.Machine{Entry: model.Entry{ID: id, At: firstLine(f)}}
		node := b.yaml(f)
		if node == nil {
			continue
		}
		if node.Kind == syntax.Empty {
			node.Kind = syntax.Map
		}
		b.decode(func(d *decode.Decoder) { d.Struct(node, m, finding.Say("this machine"), m.At) })
		for _, e := range m.Energies {
			e.Pressure, _ = e.Pressures.Most()
		}
		for _, p := range m.Points {
			p.Lock = p.Lock || p.Kept
		}
		for _, f := range m.Fluids {
			f.Bleed = f.Bleed || f.BledLive
		}
		b.groups(m)
		m.Index()
		b.idsOnce(m)
		b.machines.byID[id] = m
		b.m.Machines = append(b.m.Machines, m)
	}
}

// groups gathers the parts that can be swapped by mistake.
func (b *binder) groups(m *model.Machine) {
	byID := map[string]*model.Group{}
	for _, p := range m.Parts {
		if p.Alike == "" {
			continue
		}
		g := byID[p.Alike]
		if g == nil {
			g = &model.Group{Entry: model.Entry{ID: p.Alike, At: p.At}}
			byID[p.Alike] = g
			m.Groups = append(m.Groups, g)
		}
		g.Parts = append(g.Parts, p)
	}
}

// idsOnce looks for one id in two sections of a machine. An option may be called as
// the part that it brings, "cab: { only-with: cab }": no link and no list could mean
// either.
func (b *binder) idsOnce(m *model.Machine) {
	first := map[string]position.Pos{}
	once := func(e *model.Entry) {
		at, twice := first[e.ID]
		if twice {
			b.add(syntax.DuplicateID.At(e.At, "this machine has %s already", e.ID).
				WithMend("give the second an id of its own: in a machine's file no id stands twice, whatever the section").See(at, "the first is here"))
			return
		}
		first[e.ID] = e.At
	}
	for _, n := range things(m) {
		once(n.Base())
	}
}

// things are the named things of a machine as the sections stand.
func things(m *model.Machine) []model.Named {
	var out []model.Named
	for _, p := range m.Points {
		out = append(out, p)
	}
	for _, e := range m.Energies {
		out = append(out, e)
	}
	for _, p := range m.Parts {
		out = append(out, p)
	}
	for _, f := range m.Fasteners {
		out = append(out, f)
	}
	for _, f := range m.Fluids {
		out = append(out, f)
	}
	for _, s := range m.Settings {
		out = append(out, s)
	}
	for i := range m.Orders {
		out = append(out, &m.Orders[i])
	}
	return out
}

// sectionNames are the sections by what stands in them.
var sectionNames = map[string]string{
	"energy": "energies", "part": "parts", "fastener": "fasteners", "fluid": "fluids", "point": "points",
}

// section is an index over one section of a machine.
func section[T any, P interface {
	*T
	model.Named
}](m *model.Machine, what string, list []*T) *index[T] {
	x := newIndex[T](what, m.At.Path())
	x.of, x.broken = m.Label(), m.Lost(sectionNames[what])
	for _, t := range list {
		if id := P(t).Base().ID; x.byID[id] == nil {
			x.byID[id] = t
		}
	}
	return x
}

// leadMachines makes the references inside the machine files lead.
func (b *binder) leadMachines() {
	for _, m := range b.m.Machines {
		b.leadMachine(m)
	}
}

func (b *binder) leadMachine(m *model.Machine) {
	energies := section(m, "energy", m.Energies)
	parts := section(m, "part", m.Parts)
	fasteners := section(m, "fastener", m.Fasteners)
	fluids := section(m, "fluid", m.Fluids)
	points := section(m, "point", m.Points)
	of := func(e *model.Entry) reader { return reader{&b.notes, e} }
	leadAll(of(&m.Entry), "restore-order", energies, m.RestoreOrder)
	leadAll(of(&m.Entry), "before-isolate", b.holds, m.BeforeIsolate)
	leadAll(of(&m.Entry), "before-restore", b.holds, m.BeforeRestore)
	for _, p := range m.Points {
		b.condition(m, &p.Entry, p.OnlyWith)
	}
	for _, e := range m.Energies {
		leadAll(of(&e.Entry), "points", points, e.Points)
		leadAll(of(&e.Entry), "blocked-by", b.tools, e.BlockedBy)
		leadAll(of(&e.Entry), "contained-by", b.tools, e.ContainedBy)
		leadAll(of(&e.Entry), "before-isolate", b.holds, e.BeforeIsolate)
		leadAll(of(&e.Entry), "before-restore", b.holds, e.BeforeRestore)
		b.condition(m, &e.Entry, e.OnlyWith)
		for _, p := range e.Points {
			if p.To != nil {
				p.To.Cuts = append(p.To.Cuts, e)
			}
		}
	}
	for _, p := range m.Parts {
		r := of(&p.Entry)
		leadAll(r, "under", parts, p.Under)
		leadAll(r, "prove-dead", energies, p.ProveDead)
		leadAll(r, "guards", energies, p.Guards)
		leadUses(r, "held-by", fasteners, p.HeldBy)
		leadAll(r, "freed-by", fasteners, p.FreedBy)
		if energies.byID[p.Carries.ID] != nil {
			p.Bears, p.Carries = model.Ref[model.Energy]{ID: p.Carries.ID, At: p.Carries.At}, model.Ref[model.Fluid]{}
		}
		lead(r, "carries", energies, &p.Bears)
		lead(r, "carries", fluids.besides(energies.ids()), &p.Carries)
		lead(r, "renew-with", b.supplies, &p.RenewWith)
		b.condition(m, &p.Entry, p.OnlyWith)
		turnRound(p)
	}
	for _, f := range m.Fasteners {
		lead(of(&f.Entry), "renew-with", b.supplies, &f.RenewWith)
		b.condition(m, &f.Entry, f.OnlyWith)
	}
	for _, f := range m.Fluids {
		lead(of(&f.Entry), "supply", b.supplies.asking(", unit: L"), &f.Supply)
		leadAll(of(&f.Entry), "needed-by", energies, f.NeededBy)
		b.condition(m, &f.Entry, f.OnlyWith)
	}
	for _, s := range m.Settings {
		leadAll(of(&s.Entry), "needed-by", energies, s.NeededBy)
		b.condition(m, &s.Entry, s.OnlyWith)
	}
	loseTurned(m)
	b.keptPlugs(m)
	b.bledLive(m)
	b.optionsOfUnits(m)
	b.underRing(m)
}

// keptPlugs looks for points with lock: kept that are no plugs: what they cut
// can be put on by others, or is not off with them.
func (b *binder) keptPlugs(m *model.Machine) {
	for _, p := range m.Points {
		if !p.Kept || slices.ContainsFunc(p.Cuts, func(e *model.Energy) bool { return e.Unread || e.Lost("kind") }) {
			continue
		}
		electric, other := false, (*model.Energy)(nil)
		for _, e := range p.Cuts {
			electric = electric || e.Kind == "electric"
			if e.Kind != "electric" && e.Kind != "motion" {
				other = e
			}
		}
		at := p.FieldAt("lock")
		switch {
		case other == nil && (electric || p.Lost(model.Cutting)):
			continue
		case other != nil:
			b.add(decode.WrongType.At(at, "the %s is no plug that can be kept: it cuts the %s (%s) too", p.Label(), other.Label(), other.Kind).
				WithMend("a plug that is kept cuts electric energy and the motion that comes of it; write lock: yes, and lock it"))
		default:
			b.add(decode.WrongType.At(at, "the %s is no plug that can be kept: it cuts no electric energy", p.Label()).
				WithMend("name it in the points: of the electric energy that it cuts; or write lock: yes, and lock it"))
		}
		p.Lose("lock") // how it is locked is not known
	}
}

// bledLive looks for fluids that are bled with their energy on, and do not say
// which that is.
func (b *binder) bledLive(m *model.Machine) {
	for _, f := range m.Fluids {
		if f.BledLive && len(f.NeededBy) == 0 && !f.Lost("needed-by") {
			b.add(decode.MissingField.At(f.At, "%s is bled live and has no needed-by", f.ID).
				WithMend("write needed-by: and the energy that is on while it is bled"))
		}
	}
}

// turnRound notes at what a part rests on, is held by and carries that it does.
func turnRound(p *model.Part) {
	for _, u := range p.Under {
		if u.To != nil {
			u.To.Over = append(u.To.Over, p)
		}
	}
	for _, h := range p.HeldBy {
		if h.To != nil {
			h.To.Holds = append(h.To.Holds, p)
		}
	}
	if p.Carries.To != nil {
		p.Carries.To.Lines = append(p.Carries.To.Lines, p)
	}
}

// loseTurned carries over what could not be read to what it would have been
// read at: which parts a fastener holds, which lines a fluid is in, what a point
// cuts.
func loseTurned(m *model.Machine) {
	for _, p := range m.Parts {
		if p.Lost("held-by") {
			for _, f := range m.Fasteners {
				f.Lose(model.Holding)
			}
		}
		if p.Lost("carries") {
			for _, f := range m.Fluids {
				f.Lose(model.Running)
			}
		}
	}
	for _, e := range m.Energies {
		if e.Lost("points") {
			for _, p := range m.Points {
				p.Lose(model.Cutting)
			}
		}
	}
}

func (b *binder) condition(m *model.Machine, e *model.Entry, c model.Condition) {
	if c.Option == "" {
		return
	}
	if f := unknownOption(m, c.Option, c.At); f != nil {
		e.Lose("only-with")
		b.addIf(f)
	}
}

func unknownOption(m *model.Machine, id string, at position.Pos) *finding.Finding {
	if _, known := m.Option(id); known {
		return nil
	}
	if m.Lost("options") {
		return nil
	}
	f := UnknownReference.At(at, "the %s has no option %s", m.Label(), id)
	var have []string
	for _, o := range m.Options {
		have = append(have, o.Key)
	}
	if near := nearest.Of(id, have); near != "" {
		f = f.WithMend("did you mean %s?", near)
	} else if len(have) > 0 {
		f = f.WithMend("its options are: %s", strings.Join(have, ", "))
	}
	return &f
}

// optionsOfUnits judges the option names in units and only-one-of.
func (b *binder) optionsOfUnits(m *model.Machine) {
	for i, u := range m.Units {
		for _, o := range u.Options {
			if f := unknownOption(m, o, m.FieldAt("units."+strconv.Itoa(i)+".options."+o)); f != nil {
				m.Lose("units")
				b.addIf(f)
			}
		}
	}
	for _, group := range m.OnlyOneOf {
		for _, o := range group {
			b.addIf(unknownOption(m, o, m.FieldAt("only-one-of."+o)))
		}
	}
}

// underRing looks for parts that are under each other in a ring: none of them
// could ever come off.
func (b *binder) underRing(m *model.Machine) {
	state := map[*model.Part]int{} // 1: on the way, 2: done
	var ring func(p *model.Part, way []*model.Part)
	ring = func(p *model.Part, way []*model.Part) {
		if state[p] == 2 {
			return
		}
		if i := slices.Index(way, p); i >= 0 {
			b.add(decode.WrongType.At(p.At, "%s is under itself, by way of %s", p.Label(), labels(way[i:])).
				WithMend("take one of these out of under:"))
			return
		}
		for _, u := range p.Under {
			if u.To != nil {
				ring(u.To, append(way, p))
			}
		}
		state[p] = 2
	}
	for _, p := range m.Parts {
		ring(p, nil)
	}
}

func labels(parts []*model.Part) string {
	out := ""
	for i, p := range parts {
		if i > 0 {
			out += ", "
		}
		out += p.Label()
	}
	return out
}
