package schedule

import (
	"slices"

	"baybinder/generator/model"
)

// touches is what steps act on and look at. Two steps that touch nothing in
// common, where at least one of them changes it, leave the machine the same in
// either order.
type touches struct {
	things []thing
	all    bool // it may touch anything: nothing passes it
	hands  bool // it opens, closes or changes the machine
	calls  bool // it performs a procedure
	opens  bool // it takes off or loosens something: what was asked before counts no more
	asks   bool // it takes, or goes by, a hold that is taken before an energy goes off or comes back

	few [2]thing // room for the things of most steps
}

// thing is a thing that is touched, once in a list: a step touches few.
type thing struct {
	model.Named
	changed bool // else it is looked at
}

func newTouches() *touches {
	t := &touches{}
	t.things = t.few[:0]
	return t
}

func (t *touches) look(list ...model.Named) {
	for _, n := range list {
		t.touch(n, false)
	}
}

func (t *touches) change(list ...model.Named) {
	for _, n := range list {
		t.touch(n, true)
	}
}

func (t *touches) touch(n model.Named, changed bool) {
	if at := t.find(n); at != nil {
		at.changed = at.changed || changed
		return
	}
	t.things = append(t.things, thing{n, changed})
}

// find is a thing of the list; nil where it is not touched.
func (t *touches) find(n model.Named) *thing {
	for i := range t.things {
		if t.things[i].Named == n {
			return &t.things[i]
		}
	}
	return nil
}

// add takes what another touches.
func (t *touches) add(o *touches) {
	for _, n := range o.things {
		t.touch(n.Named, n.changed)
	}
	t.all, t.hands, t.calls = t.all || o.all, t.hands || o.hands, t.calls || o.calls
	t.opens, t.asks = t.opens || o.opens, t.asks || o.asks
}

// clash says that two may not pass each other.
func (t *touches) clash(o *touches) bool {
	if t.all || o.all || t.opens && o.asks || t.asks && o.opens {
		return true
	}
	for _, n := range t.things {
		if other := o.find(n.Named); other != nil && (n.changed || other.changed) {
			return true
		}
	}
	return false
}

// touched is what a procedure touches with everything that it calls.
func (v *view) touched(p *model.Procedure) *touches {
	at := v.entry(p, v.unit)
	if v.everything {
		at.unit = "*" // no option has this id
	}
	if t := v.called[at]; t != nil {
		return t
	}
	t := newTouches()
	v.called[at] = t
	if p.Broken || p.Unread {
		t.all = true
		return t
	}
	for _, phase := range p.Phases {
		if phase.Lead != nil && !v.skips(phase) {
			v.links(t, p, phase.Lead.Links)
		}
	}
	for _, s := range p.Steps {
		if v.done(s) {
			v.links(t, p, s.Links)
		}
	}
	for _, word := range slices.Concat(p.Expects, p.Leaves) { // callers go by them
		t.state(p.For.To, word)
	}
	return t
}

// state adds what a line of expects or leaves speaks of.
func (t *touches) state(m *model.Machine, s model.State) {
	switch thing := s.Thing.(type) {
	case nil:
		t.all = t.all || s.Unknown
	case *model.Energy:
		t.energy(thing)
	case *model.Point:
		t.change(thing)
		for _, e := range thing.Cuts {
			t.energy(e)
		}
	case *model.Part:
		t.part(m, thing)
	case *model.Fastener:
		t.change(thing)
		for _, part := range thing.Holds {
			t.part(m, part)
		}
	default:
		t.change(thing)
	}
}

// step is what a step's own paragraphs touch, with its phase's first one.
func (v *view) step(s *model.Step) *touches {
	t := newTouches()
	v.links(t, s.Of, s.Links)
	if s.Phase.Lead != nil {
		v.links(t, s.Of, s.Phase.Lead.Links)
	}
	return t
}

// whole is what a step touches with its sub-steps.
func (v *view) whole(s *model.Step) *touches {
	t := v.step(s)
	for _, sub := range s.Subs {
		if v.done(sub) {
			t.add(v.whole(sub))
		}
	}
	return t
}

// links adds what links touch.
func (v *view) links(t *touches, p *model.Procedure, links []*model.Link) {
	for _, l := range links {
		v.link(t, p, l)
	}
}

// link adds what a link touches.
func (v *view) link(t *touches, p *model.Procedure, l *model.Link) {
	act := l.Kind.Act
	switch {
	case l.Kind.Stops:
		t.hold(p, l)
	case l.Is(model.LinkPause):
		t.all = true
	case act == model.NoAct:
		t.mention(p, l)
	case l.Bad || l.To == nil:
		t.all = true // what cannot be read may be about anything, and a reverse: about all of a phase
	case act == model.Call:
		if to, is := l.To.(*model.Procedure); is {
			t.call(p, v.touched(to))
		}
	default:
		t.act(p, l)
	}
}

// call adds what a callee touches. One for no machine knows nothing of the loads
// that its tools hold here.
func (t *touches) call(p *model.Procedure, callee *touches) {
	t.add(callee)
	t.calls = true
	for _, n := range callee.things {
		if tool, is := n.Named.(*model.Tool); is {
			t.tool(p.For.To, tool)
		}
	}
}

// mention adds what a link without an act looks at.
func (t *touches) mention(p *model.Procedure, l *model.Link) {
	switch to := l.To.(type) {
	case *model.Hazard:
		if of := p.For.To.Find(to.Of.ID); of != nil {
			t.look(of)
		}
	case *model.Hold: // if-not:, if:, noted:
		t.look(to)
	}
	if l.Bad {
		t.all = true
	}
}

// hold: work stops for it. What measures or looks at a thing that it names
// stops that thing alone; every other hold stops all.
func (t *touches) hold(p *model.Procedure, l *model.Link) {
	h, is := l.To.(*model.Hold)
	if !is || l.Bad || h.Unread {
		t.all = true
		return
	}
	t.change(h)
	t.asks = t.asks || asked(p.For.To, h)
	of := p.For.To.Find(h.Of.ID)
	switch h.Kind {
	case "wait", "measure", "look":
		t.all = t.all || of == nil
	default:
		t.all = true
	}
	if of == nil {
		return
	}
	t.change(of)
	if f, is := of.(*model.Fluid); is && h.LooksFor == "leak" { // it says something with the pressure on
		for _, e := range f.NeededBy {
			if e.To != nil {
				t.look(e.To)
			}
		}
	}
	for _, part := range p.For.To.Parts { // no line stays open across a hold
		if part.Kind == "line" {
			t.look(part)
		}
	}
}

// holdsLoad says that a tool holds a load of the procedure's machine.
func holdsLoad(p *model.Procedure, l *model.Link) bool {
	if p.For.To == nil {
		return true // it may be called for any machine
	}
	for _, e := range p.For.To.Energies {
		for _, t := range e.BlockedBy {
			if t.ID == l.ID {
				return true
			}
		}
	}
	return false
}

// act adds what an act on a thing of the machine changes and looks at.
func (t *touches) act(p *model.Procedure, l *model.Link) {
	act := l.Kind.Act
	t.hands, t.opens = t.hands || !l.Kind.HandsOff, t.opens || l.Kind.Opens
	if l.Kind.Live || act == model.Clear && holdsLoad(p, l) { // with the tool, the load is put back
		t.all = true // it asks how the whole machine stands
	}
	if act == model.Isolate {
		t.askedBefore(p.For.To)
	}
	switch to := l.To.(type) {
	case *model.Energy:
		if act == model.Release || act == model.Prove {
			t.change(to)
			return
		}
		t.energy(to)
	case *model.Point:
		t.change(to)
		for _, e := range to.Cuts {
			t.energy(e)
		}
	case *model.Part:
		t.part(p.For.To, to)
	case *model.Fastener:
		t.change(to)
		for _, part := range to.Holds {
			t.part(p.For.To, part)
		}
	case *model.Fluid:
		t.change(to) // as whoever moves a line of it does
		t.pushed(to)
	case *model.Tool:
		t.tool(p.For.To, to)
	default: // a group, a setting
		t.change(to)
	}
}

// askedBefore looks at the holds that are taken before energies go off.
func (t *touches) askedBefore(m *model.Machine) {
	if m == nil {
		return
	}
	refs := m.BeforeIsolate
	for _, e := range m.Energies {
		refs = slices.Concat(refs, e.BeforeIsolate)
	}
	for _, h := range refs {
		if h.To != nil {
			t.look(h.To)
			t.asks = true
		}
	}
}

// asked says that a machine, or an energy of it, wants a hold taken before it
// goes off or comes back.
func asked(m *model.Machine, h *model.Hold) bool {
	if m == nil {
		return false
	}
	refs := slices.Concat(m.BeforeIsolate, m.BeforeRestore)
	for _, e := range m.Energies {
		refs = slices.Concat(refs, e.BeforeIsolate, e.BeforeRestore)
	}
	return slices.ContainsFunc(refs, func(r model.Ref[model.Hold]) bool { return r.To == h })
}

// pushed looks at the energies that need a fluid, and at the tools that stand
// round them while it is filled.
func (t *touches) pushed(f *model.Fluid) {
	for _, e := range f.NeededBy {
		if e.To != nil {
			t.contained(e.To)
		}
	}
}

// contained looks at an energy and at the tools that stand round it.
func (t *touches) contained(e *model.Energy) {
	t.look(e)
	for _, by := range e.ContainedBy {
		if by.To != nil {
			t.look(by.To)
		}
	}
}

// energy changes an energy and what else its points cut. So does whoever moves one
// of these points.
func (t *touches) energy(e *model.Energy) {
	t.change(e)
	for _, point := range e.Points {
		if point.To == nil {
			t.all = true
			return
		}
		for _, other := range point.To.Cuts {
			t.change(other)
		}
	}
}

// part changes a part with its fasteners, and looks at what lies under it, the
// energies that it is about and what must be loose for it elsewhere. What it lies
// under looks at it.
func (t *touches) part(m *model.Machine, p *model.Part) {
	t.change(p)
	for _, under := range p.Over {
		t.look(under)
	}
	for _, e := range slices.Concat(p.Dead(), p.Guards) {
		if e.To != nil {
			t.look(e.To)
		}
	}
	if p.Carries.To != nil {
		t.change(p.Carries.To)
	}
	t.freed(p)
	if p.Alike != "" {
		for _, g := range m.Groups {
			if g.ID == p.Alike {
				t.change(g)
			}
		}
	}
}

// freed looks at the fasteners elsewhere without whose loosening a part neither
// comes off nor goes on, and at the parts that they hold: with these they come
// off too.
func (t *touches) freed(p *model.Part) {
	for _, f := range p.FreedBy {
		if f.To != nil {
			t.look(f.To)
			for _, held := range f.To.Holds {
				t.look(held)
			}
		}
	}
}

// tool is put in place or taken away: it may hold a load, or stand round an
// energy beside others that may.
func (t *touches) tool(m *model.Machine, tool *model.Tool) {
	t.change(tool)
	if m == nil {
		return
	}
	for _, e := range m.Energies {
		for _, by := range e.BlockedBy {
			if by.To == tool {
				t.energy(e)
			}
		}
		for _, by := range e.ContainedBy {
			if by.To == tool {
				t.contained(e)
			}
		}
	}
}
