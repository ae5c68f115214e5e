package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong where an energy goes off, and is let out.
var (
	EnergyOrder = rule{
		Code:  "energy-order",
		Title: "An energy act out of its order",
		Why:   "Off, locked, let out, proved: a lock on a live switch, or a proof before the lock, protects nobody.",
		Mend:  "Put the acts in the order isolate, lock, release, prove; and back: unlock, restore.",
	}
	NotReleased = rule{
		Code:  "not-released",
		Title: "Proved dead before what is stored is out",
		Why:   "A capacitor, a pressure or a raised load stays behind when the switch is off, and takes hold of whoever trusts the switch.",
		Mend:  "Write release:, a wait hold of that energy, or place: of the tool that holds the load before the proof.",
	}
)

// aim is what an energy act names: an energy, or one point.
type aim struct {
	named  model.Named
	thing  thing
	energy *energyRule // nil where a point is named
	points []*model.Point
	where  diagram.Func // where the act does anything
}

func (w *walk) aim(n model.Named, g diagram.Func) aim {
	a := aim{named: n, thing: w.lay.of[n]}
	a.where = w.And(g, w.present(a.thing))
	switch n := n.(type) {
	case *model.Energy:
		a.energy = w.lay.energy[n]
		a.points = a.energy.points
	case *model.Point:
		a.points = []*model.Point{n}
	}
	return a
}

// cut is every energy that an aim moves: the one that it names, and what its
// points cut.
func (w *walk) cut(a aim) []*energyRule {
	var out []*energyRule
	if a.energy != nil {
		out = append(out, a.energy)
	}
	for _, p := range a.points {
		for _, e := range p.Cuts {
			if r := w.lay.energy[e]; !slices.Contains(out, r) {
				out = append(out, r)
			}
		}
	}
	return out
}

// affected is where an aim moves an energy that it cuts.
func (w *walk) affected(a aim, r *energyRule) diagram.Func {
	g := w.And(a.where, w.present(w.lay.of[r.energy]))
	if r == a.energy {
		return g
	}
	by := diagram.No
	for _, p := range a.points {
		if slices.Contains(r.points, p) {
			by = w.Or(by, w.has(p))
		}
	}
	return w.And(g, by)
}

// pointIs is where a unit has a point, in one of some states.
func (w *walk) pointIs(p *model.Point, s diagram.Set) diagram.Func {
	return w.And(w.has(p), w.Is(w.point(p), s))
}

// movePoint moves a point where an aim does and a unit has it.
func (w *walk) movePoint(a aim, p *model.Point, m diagram.Map) {
	w.shift(w.lay.of[p], w.And(a.where, w.has(p)), m)
}

func (w *walk) point(p *model.Point) diagram.Func { return w.get(w.lay.of[p]) }

func (w *walk) energy(r *energyRule) diagram.Func { return w.get(w.lay.of[r.energy]) }

func (w *walk) isolate(a aim) {
	for _, r := range w.cut(a) {
		w.notAsked(w.lay.asks(r.energy, beforeIsolate), w.switchedOff(a, r), "not done before this is cut off")
	}
	for _, p := range a.points {
		if p.Kept {
			w.pull(a, p)
			continue
		}
		w.movePoint(a, p, move(isolated, live))
	}
	if a.energy != nil && len(a.points) == 0 {
		w.shift(a.thing, a.where, move(isolated, live).And(released, early))
	}
	for _, r := range w.cut(a) {
		w.settle(r, w.affected(a, r))
	}
	w.testOver(w.cut(a), a.where)
}

// settle takes an energy as far as its points are, where they were moved.
func (w *walk) settle(r *energyRule, g diagram.Func) {
	if len(r.points) == 0 {
		return
	}
	cut, shut, unresolved := diagram.Yes, diagram.Yes, diagram.No
	for _, p := range r.points {
		cut = w.AndNot(cut, w.pointIs(p, ^states(isolated, locked)))
		unresolved = w.Or(unresolved, w.pointIs(p, states(unknown)))
		if p.Lock {
			shut = w.AndNot(shut, w.pointIs(p, ^lockedStates))
		}
	}
	f, can := w.energy(r), w.lockable(r)
	f = w.Ite(cut, w.After(f, move(isolated, live).And(blocked, early)), f)
	f = w.Ite(w.And(can, w.And(cut, shut)), w.After(f, move(locked, isolated).And(released, blocked)), f)
	f = w.Ite(can, f, w.After(f, move(released, blocked)))
	w.put(w.lay.of[r.energy], g, w.Ite(unresolved, unknown, f))
}

func (w *walk) lock(a aim) {
	if a.energy == nil && !a.points[0].Lock {
		return
	}
	open := diagram.No
	for _, p := range a.points {
		open = w.Or(open, w.pointIs(p, states(live)))
	}
	w.find(&EnergyOrder, a.thing, w.And(a.where, open), "locked before it is isolated")
	for _, p := range a.points {
		switch {
		case p.Kept:
			w.pull(a, p)
		case p.Lock:
			w.movePoint(a, p, move(locked, live, isolated))
		default:
			w.movePoint(a, p, move(isolated, live))
		}
	}
	for _, r := range w.cut(a) {
		w.settle(r, w.affected(a, r))
	}
}

// ready is the states from which an energy may be released or proved.
func (r *energyRule) ready(lockable bool) []diagram.Func {
	switch {
	case len(r.points) == 0:
		return []diagram.Func{live, early, isolated, blocked}
	case lockable:
		return []diagram.Func{locked}
	}
	return []diagram.Func{isolated}
}

func (w *walk) release(r *energyRule, g diagram.Func) {
	x := w.lay.of[r.energy]
	g = w.And(g, w.present(x))
	w.byLock(r, g, func(lockable bool, g diagram.Func) {
		m := move(released, r.ready(lockable)...)
		switch {
		case len(r.points) == 0:
		case r.load:
			m = releasedEarly(lockable)
		default:
			open := states(live, isolated) &^ states(r.ready(lockable)...)
			bad := w.And(g, w.Is(w.get(x), open))
			w.find(&EnergyOrder, x, bad, "released before it is %s", w.secured(r, lockable, bad))
			m = move(released, live, isolated, locked)
		}
		w.judgeWaits(x, g)
		w.shift(x, g, m)
	})
	w.outByHand(x, g)
}

// releasedEarly is what releasing does to a load: what is not yet isolated and locked
// remembers it.
func releasedEarly(lockable bool) diagram.Map {
	if lockable {
		return move(early, live).And(blocked, isolated).And(released, locked)
	}
	return move(early, live).And(released, isolated)
}

// secured is what an energy must be before it is released, and where some of
// its points are so, at which it is not.
func (w *walk) secured(r *energyRule, lockable bool, bad diagram.Func) finding.Words {
	say, open := finding.Say("isolated"), states(live)
	if lockable {
		say, open = finding.Say("locked"), ^lockedStates
	}
	if w.free || len(r.points) < 2 {
		return say
	}
	var at []finding.Words
	asked := 0
	for _, p := range r.points {
		if lockable && !p.Lock {
			continue
		}
		asked++
		if w.possible(w.And(bad, w.pointIs(p, open))) {
			at = append(at, finding.Say("the %s", p.Label()))
		}
	}
	if len(at) == 0 || len(at) == asked {
		return say
	}
	return finding.Say("%s at %s", say, finding.ListOf(" and ", at))
}

// wait is what a wait for an energy does.
func (w *walk) wait(r *energyRule, g diagram.Func) {
	x := w.lay.of[r.energy]
	w.byLock(r, w.And(g, w.present(x)), func(lockable bool, g diagram.Func) {
		w.shift(x, g, move(released, r.ready(lockable)...))
	})
}

// block is what a tool does that holds a load.
func (w *walk) block(r *energyRule, g diagram.Func) {
	if r.load && len(r.points) > 0 {
		x := w.lay.of[r.energy]
		w.byLock(r, w.And(g, w.present(x)), func(lockable bool, g diagram.Func) { w.shift(x, g, releasedEarly(lockable)) })
	} else {
		w.wait(r, g)
	}
	w.outByHand(w.lay.of[r.energy], g)
}

// unblock is what taking such a tool away does, where it was the last.
func (w *walk) unblock(r *energyRule, g diagram.Func) {
	x := w.lay.of[r.energy]
	g = w.AndNot(w.And(g, w.present(x)), w.blockedNow(r))
	w.byLock(r, g, func(lockable bool, g diagram.Func) {
		m := move(live, early).And(isolated, blocked)
		switch {
		case len(r.points) == 0:
			m = m.And(live, released, dead)
		case lockable:
			m = m.And(locked, released, dead)
		default:
			m = m.And(isolated, released, dead)
		}
		w.shift(x, g, m)
	})
}

// letGo is where taking a tool away lets a load go that no other tool holds: it
// is put back.
func (w *walk) letGo(r *energyRule, g diagram.Func) diagram.Func {
	x := w.lay.of[r.energy]
	g = w.AndNot(w.And(g, w.present(x)), w.blockedNow(r))
	return w.And(g, w.Is(w.get(x), states(released, dead)))
}

// blockedNow says where a tool holds the load.
func (w *walk) blockedNow(r *energyRule) diagram.Func {
	f := diagram.No
	for _, t := range r.blockers {
		f = w.Or(f, w.Is(w.get(w.lay.of[t]), states(set)))
	}
	return f
}

// prove judges a proof and makes the energy dead, but where it failed.
func (w *walk) prove(r *energyRule, g diagram.Func, s *model.Step) {
	x := w.lay.of[r.energy]
	g = w.And(g, w.present(x))
	w.judgeWaits(x, w.AndNot(g, w.Is(w.get(x), states(dead))))
	w.proofOrder(r, x, g)
	w.put(x, w.AndNot(g, w.notProved(r, s, g)), dead)
}

// proofOrder gives the first fault of a proof.
func (w *walk) proofOrder(r *energyRule, x thing, g diagram.Func) {
	f := w.get(x)
	sound := g
	w.byLock(r, g, func(lockable bool, g diagram.Func) {
		ready := states(r.ready(lockable)...)
		if len(r.points) > 0 {
			early := w.And(g, w.Is(f, states(live, isolated, early, blocked)&^ready))
			w.find(&EnergyOrder, x, early, "proved before it is %s", w.secured(r, lockable, early))
			sound, g = w.AndNot(sound, early), w.AndNot(g, early)
		}
		if r.stored {
			charged := w.And(g, w.Is(f, ready))
			w.find(&NotReleased, x, charged, "proved dead before what is stored is out")
			sound = w.AndNot(sound, charged)
		}
	})
	w.showsDead(r.energy, x, w.AndNot(sound, w.Is(f, states(unknown))))
}

// notProved says where a proof did not prove: a measurement beside it failed.
// The proof is remembered, for again: takes it anew.
func (w *walk) notProved(r *energyRule, s *model.Step, g diagram.Func) diagram.Func {
	f := diagram.No
	for _, l := range s.Links {
		if !takes(l) || !w.beside(l, r.energy) {
			continue
		}
		if failed := w.And(g, w.failed(l, s)); failed != diagram.No {
			h := l.To.(*model.Hold)
			w.lost[h] = append(w.lost[h], lostProof{r, failed})
			f = w.Or(f, failed)
		}
	}
	return f
}

// beside says that a hold judges the proof of an energy in its step: it is of
// that energy, or of nothing that this machine has.
func (w *walk) beside(l *model.Link, e *model.Energy) bool {
	hold, _ := l.To.(*model.Hold)
	return hold != nil && (hold.Of.ID == e.ID || w.lay.machine.Find(hold.Of.ID) == nil)
}

func (w *walk) unlock(a aim) {
	was := diagram.No
	for _, p := range a.points {
		if p.Kept {
			continue
		}
		was = w.Or(was, w.pointIs(p, lockedStates))
		w.movePoint(a, p, move(isolated, locked))
	}
	for _, r := range w.cut(a) {
		g := w.affected(a, r)
		if r != a.energy {
			g = w.And(g, was)
		} else if len(r.points) == 0 {
			continue
		} else {
			g = w.AndNot(g, w.AndNot(w.hasKept(r), w.padlocked(r)))
		}
		x := w.lay.of[r.energy]
		held := diagram.No
		if r.load {
			held = w.blockedNow(r)
		}
		w.shift(x, w.AndNot(g, held), move(isolated, locked, released, dead))
		w.byLock(r, w.And(g, held), func(lockable bool, g diagram.Func) {
			w.shift(x, g, move(stillHeld(lockable), locked, released, dead))
		})
	}
}

// stillHeld is how a load stands that is unlocked while a tool holds it.
func stillHeld(lockable bool) diagram.Func {
	if lockable {
		return blocked
	}
	return released
}

// hazardOf says whether a step meets a hazard of an energy. Where it is not
// known, it does.
func (w *walk) hazardOf(s *model.Step, id string) bool {
	links := s.Links
	if s.Phase.Lead != nil {
		links = slices.Concat(links, s.Phase.Lead.Links)
	}
	for _, l := range links {
		if l.Is(model.LinkHazard) {
			h, _ := l.To.(*model.Hazard)
			if l.Bad || h == nil || h.Lost("of") || h.Of.ID == id {
				return true
			}
		}
	}
	return false
}
