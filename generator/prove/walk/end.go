package walk

import (
	"slices"

	"baybinder/generator/model"
)

// finish judges how everything is left.
func (w *walk) finish() {
	if w.free {
		return
	}
	w.tellLooks()
	for _, x := range w.lay.slow {
		if w.seen[x] {
			w.judgeWaits(x, w.and(w.present(x), w.is(w.get(x), states(released))))
		}
	}
	if !w.leavesRead() {
		return
	}
	for _, s := range w.p.Leaves {
		if !s.Unknown {
			w.leaves(s)
		}
	}
	told := len(w.issues)
	for _, x := range w.touched {
		w.leaveUndone(x)
	}
	w.left = slices.Clone(w.issues[told:])
	slices.SortStableFunc(w.left, func(a, b issue) int { return a.at.link.At.Start - b.at.link.At.Start })
	w.issues = w.issues[:told]
}

// leavesRead says that every line of leaves could be read as naming something.
func (w *walk) leavesRead() bool {
	for _, s := range w.p.Leaves {
		if s.Unknown && s.Thing == nil {
			return false
		}
	}
	return true
}

// leaves compares a line of leaves with what the walk found.
func (w *walk) leaves(s model.State) {
	at := event{link: &model.Link{At: s.At}}
	if f, is := s.Thing.(*model.Fastener); is && len(f.Holds) > 0 {
		w.leavesFastener(f, s, at)
		return
	}
	x := w.lay.of[s.Thing]
	bad := w.and(w.present(x), w.unlike(x, w.lay.meant(s)))
	w.at(at, func() { w.find(&StateMismatch, x, bad, "not "+s.Word+" at the end, as leaves says") })
}

func (w *walk) leavesFastener(f *model.Fastener, s model.State, at event) {
	some := no
	for _, x := range w.named(f) {
		some = w.or(some, w.and(w.present(x), w.looseAt(x, w.lay.of[w.lay.things[x].part])))
	}
	bad := some
	if s.Word == "loose" {
		bad = w.not(some)
	}
	if named := w.named(f); len(named) > 0 {
		w.at(at, func() { w.find(&StateMismatch, named[0], bad, "not "+s.Word+" at the end, as leaves says") })
	}
}

// leaveUndone judges a thing that leaves does not name.
func (w *walk) leaveUndone(x thing) {
	if w.speaksOf(x) {
		return
	}
	wrong := w.leftOpen(x, w.state[x])
	if wrong == no {
		return
	}
	for to, r := range leftRules(w.lay.things[x].sort) {
		here := w.and(wrong, w.is(w.state[x], states(fn(to))))
		if r == nil || here == no {
			continue
		}
		w.each(w.began[x], here, func(e event, where fn) {
			if e.link != nil {
				w.at(e, func() { w.find(r, x, where, "") })
			}
		})
	}
}

// leftRules are the rules by the state that a thing is left in.
func leftRules(s sort) [maxKids]*rule {
	switch s {
	case anEnergy, aPoint:
		r := &LeftIsolated
		return [maxKids]*rule{isolated: r, locked: r, released: r, dead: r, blocked: r}
	case aPart:
		return [maxKids]*rule{off: &LeftOff, capped: &LeftOff}
	case aFastening, aFastener:
		return [maxKids]*rule{loose: &LeftLoose}
	case aFluid:
		return [maxKids]*rule{low: &LeftLow, drained: &LeftLow, unbled: &NotBled}
	case aTool:
		return [maxKids]*rule{set: &LeftInPlace}
	case aSetting:
		return [maxKids]*rule{set: &LeftAltered}
	}
	return [maxKids]*rule{}
}

// speaksOf says that leaves names the thing.
func (w *walk) speaksOf(x thing) bool {
	for _, s := range w.p.Leaves {
		if s.Thing == nil {
			continue
		}
		for _, y := range w.named(s.Thing) {
			if x == y {
				return true
			}
		}
	}
	return false
}

// leftOpen says where a thing is neither whole nor as it was at the start.
func (w *walk) leftOpen(x thing, f fn) fn {
	info := w.lay.things[x]
	fine := w.lay.alike(x, 0) | w.lay.alike(x, w.home[x]) | states(unknown)
	open := w.and(w.present(x), w.is(f, ^fine))
	switch info.sort {
	case aFastening:
		part := w.lay.of[info.part]
		if w.home[x] == loose && w.home[part] != on {
			open = w.and(w.present(x), w.is(f, states(loose)))
		}
		return w.and(open, w.is(w.homely(w.get(part)), states(on)))
	case anEnergy:
		if w.leftAtPoint(info.named.(*model.Energy)) {
			return no
		}
	case aPoint:
		for _, e := range info.named.(*model.Point).Cuts {
			y := w.lay.of[e]
			open = w.andNot(open, w.and(w.present(y), w.is(w.homely(w.get(y)), notLive|states(unknown))))
		}
	}
	return open
}

// leftAtPoint says that leaves names a point of an energy as off: the energy
// stands as its points do.
func (w *walk) leftAtPoint(e *model.Energy) bool {
	for _, p := range w.lay.energy[e].points {
		if to, named := w.leavesSays(w.lay.of[p]); named && to != live {
			return true
		}
	}
	return false
}

// leftWrong says where a thing, walked alone, is left otherwise than the
// procedure says, and how it should be: as leaves says, else whole.
func (w *walk) leftWrong(x thing, f fn) (wrong, word fn) {
	if want, named := w.leavesSays(x); named {
		return w.and(w.present(x), w.is(f, ^w.lay.alike(x, want)&^states(unknown))), want
	}
	switch info := w.lay.things[x]; info.sort {
	case aSpill, aGroup, aGap:
		return no, 0
	case aPoint:
		return w.pointWrong(info.named.(*model.Point), x, f)
	case aFastening:
		part := w.lay.of[info.part]
		off, _ := w.leftWrong(part, w.homely(w.get(part)))
		return w.or(w.leftOpen(x, f), off), tight // a part that counts as put back counts as tight
	}
	return w.leftOpen(x, f), 0
}

// leavesSays is the state in which leaves says that a thing is left.
func (w *walk) leavesSays(x thing) (fn, bool) {
	for _, s := range w.p.Leaves {
		if s.Thing == nil || s.Unknown {
			continue
		}
		for _, y := range w.named(s.Thing) {
			if x == y {
				return w.lay.meant(s), true
			}
		}
	}
	return 0, false
}

// pointWrong is leftWrong of a point that leaves does not name: it stands as
// the energies that leaves names need it, and is live where one that it does
// not name is to be live.
func (w *walk) pointWrong(p *model.Point, x thing, f fn) (wrong, word fn) {
	wrong, word = w.leftOpen(x, f), live
	for _, e := range p.Cuts {
		y := w.lay.of[e]
		off, want := w.leftWrong(y, w.homely(w.get(y)))
		if want == live {
			wrong = w.or(wrong, w.and(off, w.is(f, states(isolated, locked))))
		}
	}
	for _, need := range []fn{isolated, locked} { // one energy may need more than the other
		for _, e := range p.Cuts {
			if w.mustStand(p, e) != need {
				continue
			}
			short := w.and(w.present(w.lay.of[e]), w.is(f, states(live, isolated)&^states(need)))
			wrong, word = w.or(wrong, short), w.ite(short, need, word)
		}
	}
	return wrong, word
}

// mustStand is how a point must stand for an energy that leaves names: locked,
// isolated, or live where it need not be off.
func (w *walk) mustStand(p *model.Point, e *model.Energy) fn {
	want, named := w.leavesSays(w.lay.of[e])
	switch {
	case !named || want == live:
		return live
	case want >= locked && p.Lock:
		return locked
	}
	return isolated
}
