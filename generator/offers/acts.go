package offers

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// breaks says that a finding is an error of something that stands already.
func breaks(f finding.Finding) bool { return f.Level == finding.Error && !walk.Leaves(f.Rule) }

// energies offers the next acts of each: cut, lock, let out, prove, give back.
func (d *drawing) energies() {
	for _, x := range d.machine.Points {
		d.point(x)
	}
	for _, e := range d.machine.Energies {
		if e.Unread {
			continue
		}
		if d.is(e, "isolated", "locked") || len(e.Points) == 0 && d.normal(e) {
			d.letOut(e)
		}
		if d.is(e, "released", "locked", "isolated") || len(e.Points) == 0 && d.normal(e) {
			d.prove(e)
		}
		if d.is(e, "isolated", "locked", "released", "dead") {
			d.add(gives, d.say("restore", d.comesBack(e), e), finding.Say("it is %s", d.since(e)))
		}
	}
}

func (d *drawing) comesBack(e *model.Energy) string {
	if len(e.Points) == 0 || slices.Contains([]string{"gravity", "spring", "heat", "chemical"}, e.Kind) {
		return d.speech().ComeBack
	}
	return d.speech().Restore
}

func (d *drawing) point(x *model.Point) {
	w := d.speech()
	if d.normal(x) {
		s := d.say("isolate", w.Isolate, x)
		if x.Lock {
			s.also(model.LinkLock, w.Lock, x)
		}
		var cut []string
		for _, e := range x.Cuts {
			cut = append(cut, fmt.Sprintf(w.The, of("energy", e)))
		}
		if len(cut) > 0 {
			s.beside = append(s.beside, fmt.Sprintf(w.Cuts, strings.Join(cut, w.And)))
		}
		s.detail = x.Where
		d.add(cuts, s, finding.Say("it is on, and nothing comes off before it is cut"))
	}
	if d.is(x, "isolated") && x.Padlocked() {
		s := d.say(model.LinkLock, "%s", x)
		s.label, s.acts = capital(w.Lock)+": "+x.Label(), []string{link(w.Lock+": "+x.Label(), s.address)}
		d.add(first, s, finding.Say("it is %s, and takes a lock", d.since(x)))
	}
	if d.is(x, "locked") && x.Padlocked() {
		d.add(gives, d.say("unlock", w.Unlock, x), finding.Say("it is %s", d.since(x)))
	}
}

// letOut offers the ways in which what is stored goes: what holds it, a wait,
// the hand.
func (d *drawing) letOut(e *model.Energy) {
	if !e.Stored.Yes {
		return
	}
	w, why := d.speech(), finding.Say("it is %s, and some of it stays behind", d.stateOf(e))
	for _, t := range e.BlockedBy {
		if t.To != nil && !d.is(t.To, "placed") {
			s := d.say("place", w.PlaceBlock, t.To)
			s.need(model.LinkTool, t.To)
			s.beside = append(s.beside, fmt.Sprintf(w.BlockHold, fmt.Sprintf(w.The, of("energy", e))))
			d.add(first, s, why)
		}
	}
	for _, h := range d.holdsOf(e, "wait") {
		s := d.say(model.LinkHold, w.WaitOut, h)
		s.need(model.LinkHold, h)
		s.detail = h.For.String()
		d.add(first, s, why)
	}
	s := d.say("release", w.Release, e)
	s.mind(d.hazardOf(e))
	d.add(first, s, why)
}

func (d *drawing) stateOf(e *model.Energy) finding.Words {
	if said := d.since(e); !said.IsZero() {
		return said
	}
	return finding.Say("live")
}

// prove offers the proof by each hold of the energy that can show it.
func (d *drawing) prove(e *model.Energy) {
	w := d.speech()
	for _, h := range d.holdsOf(e, "measure", "look", "check") {
		if h.LooksFor != "" {
			continue
		}
		s := d.say("prove", w.Prove, e)
		s.need(model.LinkHold, h)
		s.acts[0] += ": " + of(model.LinkHold, h)
		if h.With.To != nil {
			s.uses(h.With.To)
		}
		s.mind(d.hazardOf(e))
		s.detail = h.Label()
		d.add(first, s, finding.Say("it is %s, and not proved dead", d.stateOf(e)))
	}
}

// groups offers to mark what can be swapped.
func (d *drawing) groups() {
	for _, g := range d.machine.Groups {
		if !d.marked[g] && !g.Unread && len(g.Parts) > 1 {
			d.add(puts, d.say("mark", d.speech().Mark, g), finding.Say("%d parts look alike, and are not marked", len(g.Parts)))
		}
	}
}

// parts offers what comes off and what goes back.
func (d *drawing) parts() {
	for _, p := range d.machine.Parts {
		if p.Unread {
			continue
		}
		if d.normal(p) {
			d.takeOff(p)
		}
		if d.is(p, "off", "capped") {
			d.putBack(p)
		}
		if d.is(p, "off") && p.Kind != "" && p.Kind != "part" {
			s := d.say("cap", "%s", p)
			s.label, s.acts = capital(d.speech().Cap)+": "+p.Label(), []string{link(d.speech().Cap+": "+p.Label(), s.address)}
			d.add(follows, s, finding.Say("it is %s, and its end is open", d.since(p)))
		}
	}
}

func (d *drawing) takeOff(p *model.Part) {
	w := d.speech()
	var s *sentence
	switch p.Kind {
	case "line":
		s = d.say("disconnect", w.Disconnect, p)
		s.also("cap", w.Cap, p)
	case "wire":
		s = d.say("disconnect", w.Disconnect, p)
	case "connector":
		s = d.say("disconnect", w.Unplug, p)
	default:
		s = d.say("remove", w.TakeOff, p)
	}
	d.heldBy(s, p)
	for _, e := range p.Guards {
		if e.To != nil && !d.is(e.To, "dead") {
			s.mind(d.hazardOf(e.To))
		}
	}
	d.carries(s, p)
	for _, u := range model.SuppliedHazards([]*model.Link{{Kind: kind("remove"), To: p}}) {
		s.need(model.LinkHazard, u)
	}
	d.add(takesOff, s, d.whyOff(p))
	d.covered(p)
}

// covered says without a trial what still lies over a part.
func (d *drawing) covered(p *model.Part) {
	o := &d.offers[len(d.offers)-1]
	for _, u := range p.Under {
		if u.To != nil && len(d.now[u.To]) == 0 && u.To.OnlyWith.Option == "" {
			o.InTheWay = append(o.InTheWay, d.told("still in the way: %s", u.To.Label()))
		}
	}
}

func (d *drawing) whyOff(p *model.Part) finding.Words {
	var off []string
	for _, u := range p.Under {
		if u.To != nil && d.is(u.To, "off", "capped") {
			off = append(off, u.To.Label())
		}
	}
	if len(off) == 0 {
		return finding.Say("it is on, and under nothing")
	}
	return finding.Say("it is on, and what it was under is off: %s", strings.Join(off, ", "))
}

func (d *drawing) putBack(p *model.Part) {
	w := d.speech()
	name, words := "refit", w.PutBack
	switch p.Kind {
	case "line", "wire":
		name, words = "connect", w.Connect
	case "connector":
		name, words = "connect", w.PlugIn
	}
	s := d.say(name, words, p)
	d.carries(s, p)
	d.add(closes, s, finding.Say("it is %s", d.since(p)))
}

// fasteners offers to tighten what is loose on a part that is on, and to undo
// those that free a part or that no part names.
func (d *drawing) fasteners() {
	for _, f := range d.machine.Fasteners {
		for _, at := range d.now[f] {
			if at.Word == "loose" {
				d.tighten(f, at.Part)
			}
		}
		if !f.Unread && len(d.now[f]) == 0 && (len(f.Holds) == 0 || d.frees(f)) {
			s := d.say("loosen", d.speech().Undo, f)
			d.turnedWith(s, f)
			d.add(puts, s, finding.Say("it is tight"))
		}
	}
}

func (d *drawing) frees(f *model.Fastener) bool {
	return slices.ContainsFunc(d.machine.Parts, func(p *model.Part) bool {
		return slices.ContainsFunc(p.FreedBy, func(r model.Ref[model.Fastener]) bool { return r.To == f })
	})
}

func (d *drawing) tighten(f *model.Fastener, p *model.Part) {
	s := d.say("tighten", d.speech().Tighten, f)
	if p != nil && len(f.Holds) > 1 {
		s.address += "#" + p.ID
		s.acts[0] = link(fmt.Sprintf(d.speech().Tighten, f.Label()), s.address)
	}
	s.detail = torqueWords(f)
	d.turnedWith(s, f)
	d.torquedWith(s, f)
	d.add(closes, s, finding.Say("it is %s", d.since(f)))
}

func (d *drawing) fluids() {
	w := d.speech()
	for _, f := range d.machine.Fluids {
		if f.Unread {
			continue
		}
		if d.normal(f) {
			d.add(puts, d.fluid("drain", w.LetOut, f), finding.Say("it is full"))
		}
		if d.is(f, "low") {
			d.add(follows, d.say("dry", w.Dry, f), finding.Say("it is %s: what ran out looks like a leak", d.since(f)))
			s := d.fluid("fill", w.Fill, f)
			s.detail = f.Capacity.String()
			if f.Supply.To != nil {
				s.need("supply", f.Supply.To)
				if !f.Capacity.IsZero() {
					s.amounts = map[model.Named]string{f.Supply.To: f.Capacity.String()}
				}
			}
			d.add(closes, s, finding.Say("it is %s", d.since(f)))
		}
		if d.is(f, "unbled") {
			d.add(closes, d.fluid("bleed", w.Bleed, f), finding.Say("it is %s", d.since(f)))
		}
		d.leakLooks(f)
	}
}

func (d *drawing) fluid(name, words string, f *model.Fluid) *sentence {
	s := d.say(name, words, f)
	for _, h := range model.SuppliedHazards([]*model.Link{{Kind: kind(name), To: f}}) {
		s.need(model.LinkHazard, h)
	}
	return s
}

// leakLooks offers the looks for a leak of a circuit that was open.
func (d *drawing) leakLooks(f *model.Fluid) {
	opened := slices.ContainsFunc(d.p.Steps, func(s *model.Step) bool {
		return s.Done <= d.slot.done && slices.ContainsFunc(s.Links, func(l *model.Link) bool {
			p, is := l.To.(*model.Part)
			return l.To == model.Named(f) && l.Kind.Act != model.NoAct || is && p.Carries.To == f && l.Kind.Act == model.Remove
		})
	})
	for _, h := range d.Manual().Holds {
		if opened && h.Kind == "look" && h.LooksFor == "leak" && h.Of.ID == f.ID && !h.Misread {
			s := d.say(model.LinkHold, d.speech().LeakLook, h)
			s.need(model.LinkHold, h)
			d.add(stops, s, finding.Say("the circuit was open"))
		}
	}
}

func (d *drawing) settings() {
	for _, x := range d.machine.Settings {
		switch {
		case x.Unread:
		case d.is(x, "altered"):
			d.add(closes, d.say("reset", d.speech().Reset, x), finding.Say("it is %s", d.since(x)))
		default:
			d.add(puts, d.say("alter", d.speech().Alter, x), finding.Say("it is as set"))
		}
	}
}

// tools offers to take away what is in place, and what must stand round an
// energy.
func (d *drawing) tools() {
	for _, t := range d.Manual().Tools {
		if d.is(t, "placed") {
			s := d.say("clear", d.speech().Clear, t)
			s.need(model.LinkTool, t)
			d.add(closes, s, finding.Say("it is %s", d.since(t)))
		}
	}
	for _, e := range d.machine.Energies {
		for _, t := range e.ContainedBy {
			if t.To != nil && !d.is(t.To, "placed") {
				s := d.say("place", d.speech().PlaceBlock, t.To)
				s.need(model.LinkTool, t.To)
				d.add(puts, s, finding.Say("the %s is put on only with it round it", e.Label()))
			}
		}
	}
}

// asked offers the holds that are taken before an energy goes off or comes
// back.
func (d *drawing) asked() {
	off := slices.Clone(d.machine.BeforeIsolate)
	on := slices.Clone(d.machine.BeforeRestore)
	for _, e := range d.machine.Energies {
		off, on = append(off, e.BeforeIsolate...), append(on, e.BeforeRestore...)
	}
	cut := slices.ContainsFunc(d.machine.Energies, func(e *model.Energy) bool { return !d.normal(e) })
	list, rank, why := off, cuts-1, finding.Say("it is taken before anything is cut off")
	if cut {
		list, rank, why = on, gives-1, finding.Say("it is taken before anything comes back on")
	}
	var seen []*model.Hold
	for _, h := range list {
		if h.To != nil && !slices.Contains(seen, h.To) {
			seen = append(seen, h.To)
			s := d.say(model.LinkHold, d.speech().Stop, h.To)
			s.need(model.LinkHold, h.To)
			d.add(rank, s, why)
		}
	}
}

// reversals offers the refit of a whole phase before this one.
func (d *drawing) reversals() {
	for _, ph := range d.p.Phases {
		if ph == d.slot.Phase || ph.At.Start > d.slot.Phase.At.Start {
			break
		}
		open, loose := d.openedIn(ph)
		if len(open) == 0 {
			continue
		}
		w := d.speech()
		s := &sentence{Speech: w, kind: "reverse", address: "reverse:" + ph.ID, label: capital(w.Reverse) + ": " + ph.Title.Plain}
		s.acts, s.detail = []string{link(w.Reverse, s.address)}, strings.Join(open, ", ")
		for _, f := range loose {
			d.torquedWith(s, f)
		}
		d.add(reverses, s, finding.Say("things that %s opened are still open: %d", ph.Title.Plain, len(open)))
	}
}

// openedIn is what a phase opened that is still open, and the fasteners that
// are loose with it.
func (d *drawing) openedIn(ph *model.Phase) (open []string, loose []*model.Fastener) {
	for n, list := range d.now {
		for _, s := range list {
			if s.Since == nil || s.Since.Phase.ID != ph.ID || !slices.Contains([]string{"off", "capped", "loose", "placed", "altered"}, s.Word) {
				continue
			}
			open = append(open, s.Label())
			if p, is := n.(*model.Part); is {
				for _, h := range p.HeldBy {
					if h.To != nil && !slices.Contains(loose, h.To) {
						loose = append(loose, h.To)
					}
				}
			}
			if f, is := n.(*model.Fastener); is && !slices.Contains(loose, f) {
				loose = append(loose, f)
			}
		}
	}
	slices.Sort(open)
	slices.SortFunc(loose, func(a, b *model.Fastener) int { return strings.Compare(a.ID, b.ID) })
	return open, loose
}

// calls offers to perform procedures that leave something by name, that expect
// something which is so here, or that leave an energy cut and have not said so
// yet.
func (d *drawing) calls() {
	for _, q := range d.Manual().Procedures {
		if q == d.p || q.ID == d.p.ID || !q.Issued() && !(q.Draft() && d.p.Draft()) || q.For.To != nil && q.For.To != d.machine || performing(q, d.p.ID) {
			continue
		}
		if why := d.fits(q); !why.IsZero() {
			d.add(performs, d.say(model.LinkDo, d.speech().Perform, q), why)
		}
	}
}

// fits says why a procedure can be performed here; "" where what it expects is
// not so, or what it leaves is so already.
func (d *drawing) fits(q *model.Procedure) finding.Words {
	if len(q.Leaves)+len(q.Expects) == 0 {
		return d.unsaid(q)
	}
	for _, s := range q.Expects {
		if s.Thing == nil || !d.is(s.Thing, s.Word) {
			return finding.Words{}
		}
	}
	for _, s := range q.Leaves {
		if s.Thing == nil || d.is(s.Thing, s.Word) {
			return finding.Words{}
		}
	}
	if len(q.Expects) > 0 {
		return finding.Say("things stand as it expects them")
	}
	return finding.Say("it leaves things ready for what follows")
}

// unsaid says why a procedure that names nothing of what it leaves can be
// performed here: it leaves an energy cut that is not cut yet. There are none for any other.
func (d *drawing) unsaid(q *model.Procedure) finding.Words {
	var why finding.Words
	for _, s := range d.Walks.Stand(q, nil) {
		if _, energy := s.Thing.(*model.Energy); !energy || s.Word == "live" {
			continue
		}
		if d.is(s.Thing, "isolated", "locked", "released", "dead") {
			return finding.Words{}
		}
		why = finding.Say("it leaves %s %s", s.Thing.Label(), finding.Words{Template: s.Word})
	}
	return why
}

// performing says whether a procedure performs another, in turn.
func performing(p *model.Procedure, id string) bool {
	seen := map[*model.Procedure]bool{}
	var reaches func(p *model.Procedure) bool
	reaches = func(p *model.Procedure) bool {
		if seen[p] {
			return false
		}
		seen[p] = true
		return slices.ContainsFunc(p.Calls, func(l *model.Link) bool {
			q, is := l.To.(*model.Procedure)
			return is && (q.ID == id || reaches(q))
		})
	}
	return reaches(p)
}

func kind(name string) *model.Kind {
	k, _ := model.KindNamed(name)
	return k
}
