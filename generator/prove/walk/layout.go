package walk

import (
	"slices"

	"baybinder/generator/model"
)

// thing is one small automaton, by its place in a layout.
type thing int32

const nothing thing = -1

// sort is what a thing is.
type sort uint8

const (
	anEnergy sort = iota
	aPoint
	aPart
	aFastening // a fastener at a part
	aFastener  // one that no part names
	aFluid
	aSpill // what of a fluid was spilled
	aSetting
	aGroup  // parts that look alike
	aGap    // the place of a part that was taken off for good
	aTool   // that is left in place
	anAsked // a hold that is taken before an energy goes off or comes back
)

// info is what a layout knows of a thing.
type info struct {
	sort   sort
	named  model.Named // of a fastening the fastener, of a spill the fluid, of a gap the part
	part   *model.Part // of a fastening
	unread bool        // its entry could not be read: nothing is said of it
}

// fastening is a fastener at a part.
type fastening struct {
	fastener *model.Fastener
	part     *model.Part
}

// layout numbers the things that procedures for one machine can act on. It is
// made once a machine and only read afterwards.
type layout struct {
	machine  *model.Machine // nil for procedures that are for none
	things   []info
	of       map[model.Named]thing
	at       map[fastening]thing
	spill    map[*model.Fluid]thing
	gap      map[*model.Part]thing
	astray   map[model.Named]bool // energies without a point on some units, and their points
	energy   map[*model.Energy]*energyRule
	naming   map[*model.Energy][]*model.Part // parts that name the energy in prove-dead or guards
	needing  map[*model.Energy][]*model.Fluid
	setFor   map[*model.Energy][]*model.Setting // settings that it must not come back without
	blocks   map[*model.Tool][]*model.Energy
	contains map[*model.Tool][]*model.Energy // energies that a tool stands round
	asked    []thing                         // holds that are taken before an act
	held     map[*model.Part][]thing         // its fastenings
	timed    map[thing]*timing               // energies whose waits can be judged
	slow     []thing                         // the same, in the machine file's order
	spoken   map[string][]name               // names of things, by their first word
}

// energyRule is what of an energy's entry decides how it is walked.
type energyRule struct {
	energy     *model.Energy
	points     []*model.Point
	stored     bool
	load       bool // a load: it may be released before it is isolated
	blockers   []*model.Tool
	containers []*model.Tool
}

func newLayout(m *model.Machine, tools []*model.Tool) *layout {
	l := &layout{
		machine: m,
		of:      map[model.Named]thing{}, at: map[fastening]thing{},
		spill: map[*model.Fluid]thing{}, gap: map[*model.Part]thing{},
		energy: map[*model.Energy]*energyRule{}, naming: map[*model.Energy][]*model.Part{},
		needing: map[*model.Energy][]*model.Fluid{}, blocks: map[*model.Tool][]*model.Energy{},
		setFor: map[*model.Energy][]*model.Setting{}, contains: map[*model.Tool][]*model.Energy{},
		held: map[*model.Part][]thing{},
	}
	if m != nil {
		l.astray = inGaps(m)
		l.energies()
		l.parts()
		l.rest()
	}
	for _, t := range tools {
		l.add(aTool, t, t.Unread)
	}
	l.spoken = spokenNames(l)
	return l
}

func (l *layout) add(s sort, n model.Named, unread bool) thing {
	x := thing(len(l.things))
	l.things = append(l.things, info{sort: s, named: n, unread: unread})
	switch s {
	case aSpill:
		l.spill[n.(*model.Fluid)] = x
	case aGap:
		l.gap[n.(*model.Part)] = x
	default:
		l.of[n] = x
	}
	return x
}

func (l *layout) energies() {
	for _, e := range l.machine.Energies {
		rule := newEnergyRule(e)
		l.energy[e] = rule
		unread := e.Lost("kind", "points", "blocked-by", "contained-by", "only-with") || e.Lost("stored") && !e.Stored.Yes
		for _, p := range rule.points {
			unread = unread || p.Lost("lock", "only-with") || !l.known(p.OnlyWith)
		}
		l.add(anEnergy, e, unread || !l.known(e.OnlyWith))
		for _, t := range rule.blockers {
			l.blocks[t] = append(l.blocks[t], e)
		}
		for _, t := range rule.containers {
			l.contains[t] = append(l.contains[t], e)
		}
	}
	for _, p := range l.machine.Points {
		l.add(aPoint, p, p.Lost("lock", "only-with") || !l.known(p.OnlyWith))
	}
}

func newEnergyRule(e *model.Energy) *energyRule {
	r := &energyRule{energy: e, stored: e.Stored.Yes}
	r.load = e.Kind == "gravity" || e.Kind == "spring" || e.Kind == "motion"
	for _, p := range e.Points {
		if p.To != nil {
			r.points = append(r.points, p.To)
		}
	}
	for _, t := range e.BlockedBy {
		if t.To != nil {
			r.blockers = append(r.blockers, t.To)
		}
	}
	r.containers = leads(e.ContainedBy)
	return r
}

func (l *layout) parts() {
	for _, p := range l.machine.Parts {
		l.add(aPart, p, l.partLost(p))
		for _, e := range leads(p.Dead()) {
			l.naming[e] = append(l.naming[e], p)
		}
		for _, e := range leads(p.Guards) {
			if named := l.naming[e]; len(named) == 0 || named[len(named)-1] != p {
				l.naming[e] = append(l.naming[e], p)
			}
		}
	}
	for _, p := range l.machine.Parts {
		for _, h := range p.HeldBy {
			if f := h.To; f != nil {
				key := fastening{f, p}
				if _, twice := l.at[key]; !twice {
					x := l.fasteningAt(key)
					l.at[key] = x
					l.held[p] = append(l.held[p], x)
				}
			}
		}
	}
}

func (l *layout) fasteningAt(f fastening) thing {
	l.things = append(l.things, info{
		sort: aFastening, named: f.fastener, part: f.part,
		unread: f.fastener.Lost("start", "only-with", model.Holding) || !l.known(f.fastener.OnlyWith) || l.partLost(f.part),
	})
	return thing(len(l.things) - 1)
}

func (l *layout) rest() {
	for _, f := range l.machine.Fasteners {
		if len(f.Holds) == 0 {
			l.add(aFastener, f, f.Lost("only-with", model.Holding) || !l.known(f.OnlyWith))
		}
	}
	for _, f := range l.machine.Fluids {
		unread := f.Lost("bleed", "only-with", model.Running) || !l.known(f.OnlyWith)
		for _, p := range f.Lines {
			unread = unread || l.partLost(p)
		}
		l.add(aFluid, f, unread)
		l.add(aSpill, f, unread)
		for _, e := range leads(f.NeededBy) {
			l.needing[e] = append(l.needing[e], f)
		}
	}
	for _, s := range l.machine.Settings {
		l.add(aSetting, s, s.Unread || !l.known(s.OnlyWith))
		for _, e := range leads(s.NeededBy) {
			l.setFor[e] = append(l.setFor[e], s)
		}
	}
	for _, g := range l.machine.Groups {
		l.add(aGroup, g, g.Unread)
	}
	l.addAsked()
	for _, p := range l.machine.Parts {
		l.add(aGap, p, l.partLost(p))
	}
}

// partLost says that it cannot be said how a part stands: nothing of it could
// be read, or not on which units it is.
func (l *layout) partLost(p *model.Part) bool {
	return p.Unread || p.Lost("only-with") || !l.known(p.OnlyWith)
}

// moving are the things that an act on one may move.
func (l *layout) moving(n model.Named) []thing {
	var out []thing
	add := func(n model.Named) {
		if x, has := l.of[n]; has {
			out = append(out, x)
		}
	}
	add(n)
	switch n := n.(type) {
	case *model.Energy:
		for _, p := range l.energy[n].points {
			out = append(out, l.moving(p)...)
		}
	case *model.Point:
		for _, e := range n.Cuts {
			add(e)
		}
	case *model.Part:
		out = append(append(out, l.held[n]...), l.gap[n])
		if n.Carries.To != nil {
			out = append(out, l.moving(n.Carries.To)...)
		}
		if g := l.machine.Find(n.Alike); g != nil {
			add(g)
		}
	case *model.Fastener:
		for _, p := range n.Holds {
			if x, has := l.at[fastening{n, p}]; has {
				out = append(out, x)
			}
		}
	case *model.Fluid:
		out = append(out, l.spill[n])
	case *model.Tool:
		for _, e := range l.blocks[n] {
			add(e)
		}
	}
	return out
}

// known says that the machine has the option that a condition names.
func (l *layout) known(c model.Condition) bool {
	_, known := l.machine.Option(c.Option)
	return known || c.Option == ""
}

// leads are the references of a list that lead somewhere.
func leads[T any](refs []model.Ref[T]) []*T {
	var out []*T
	for _, r := range refs {
		if r.To != nil {
			out = append(out, r.To)
		}
	}
	return out
}

// condition is the option that an entry needs to be there.
func condition(n model.Named) model.Condition {
	switch n := n.(type) {
	case *model.Energy:
		return n.OnlyWith
	case *model.Point:
		return n.OnlyWith
	case *model.Part:
		return n.OnlyWith
	case *model.Fastener:
		return n.OnlyWith
	case *model.Fluid:
		return n.OnlyWith
	case *model.Setting:
		return n.OnlyWith
	}
	return model.Condition{}
}

// Placed are the tools that some procedure leaves in place or takes away, and
// those that hold loads.
func Placed(m *model.Manual) []*model.Tool {
	used := map[*model.Tool]bool{}
	note := func(n model.Named) {
		if t, is := n.(*model.Tool); is {
			used[t] = true
		}
	}
	for _, p := range m.Procedures {
		for _, s := range slices.Concat(p.Expects, p.Leaves) {
			note(s.Thing)
		}
		for _, s := range p.Steps {
			for _, b := range s.Blocks {
				for _, l := range b.Links {
					if l.Kind.Act == model.Place || l.Kind.Act == model.Clear {
						note(l.To)
					}
				}
			}
		}
	}
	for _, machine := range m.Machines {
		for _, e := range machine.Energies {
			for _, t := range slices.Concat(leads(e.BlockedBy), leads(e.ContainedBy)) {
				used[t] = true
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(m.Tools), func(t *model.Tool) bool { return !used[t] })
}
