package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// EnergyOrder is told at an act on an energy out of its order.
var EnergyOrder = rule{
	Code:  "energy-order",
	Title: "An energy act out of its order",
	Why:   "Off, locked, let out, proved: a lock on a live switch, or a proof before the lock, protects nobody.",
	Mend:  "Put the acts in the order isolate, lock, release, prove; and back: unlock, restore.",
}

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
