package walk

import "baybinder/generator/model"

// lostProof is a proof that a failed measurement took back.
type lostProof struct {
	rule  *energyRule
	where fn
}

// hold is what taking a hold does, and what may not be open across it.
func (w *walk) hold(l *model.Link, g fn) {
	h, _ := l.To.(*model.Hold)
	if near, is := l.Near.(*model.Hold); l.Bad && is && !near.Unread {
		w.tookHold(nil, g)
		w.waitedFor(near, g)
		return
	}
	if l.Bad || h == nil || h.Unread {
		w.mayHaveWaited(g)
		return
	}
	if h.Lost("kind", "of", "looks-for") {
		w.tookHold(h, g)
		w.waitedFor(h, g)
		w.openLines(g)
		return
	}
	if l.Is("again") {
		w.untaken(l, g)
	}
	w.tookHold(h, g)
	switch of := w.p.For.To.Find(h.Of.ID).(type) { // a procedure for no machine has none of these
	case *model.Energy:
		if h.Kind == "wait" {
			w.wait(w.lay.energy[of], g)
			w.waitsOn(w.lay.of[of], h, g)
		}
		if l.Is("hold") {
			w.measuresAfter(w.lay.of[of], h, g)
		}
		if h.LooksFor == "leak" && of.Kind == "pressure" {
			w.looked(w.lay.of[of], pushes(of), g)
		}
	case *model.Fluid:
		if h.LooksFor == "leak" {
			x := w.lay.spill[of]
			w.findOnce(&LeakLookWhileWet, x, w.and(w.and(g, w.present(x)), w.is(w.get(x), states(set))))
			if from := pushes(of); len(from) > 0 {
				w.looked(w.lay.of[of], from, g)
			}
		}
	}
	w.openLines(g)
	if l.Is("again") {
		w.provedAnew(h, l, g)
	}
}

// waitedFor is a hold of which it is not known what it is, or of what: it may
// have been a wait.
func (w *walk) waitedFor(h *model.Hold, g fn) {
	if !h.Lost("kind") && h.Kind != "wait" {
		return
	}
	if h.Lost("of") {
		w.mayBeReleased(g)
	} else if e, is := w.p.For.To.Find(h.Of.ID).(*model.Energy); is {
		w.mayLetOut(w.lay.energy[e], g)
	}
}

// mayLetOut makes an energy unknown where a wait would have released it.
func (w *walk) mayLetOut(r *energyRule, g fn) {
	w.byLock(r, g, func(lockable bool, g fn) {
		w.shift(w.lay.of[r.energy], g, move(unknown, r.ready(lockable)...))
	})
}

// mayHaveWaited is a hold that could not be read: it may have been the wait of
// any energy.
func (w *walk) mayHaveWaited(g fn) {
	w.tookHold(nil, g)
	w.mayBeReleased(g)
}

// mayBeReleased makes every energy unknown that a wait would have released.
func (w *walk) mayBeReleased(g fn) {
	if w.lay.machine == nil {
		return
	}
	for _, e := range w.lay.machine.Energies {
		w.mayLetOut(w.lay.energy[e], g)
	}
}

// provedAnew is what again: does to the proofs that its hold took back.
func (w *walk) provedAnew(h *model.Hold, l *model.Link, g fn) {
	for _, lost := range w.lost[h] {
		if provesIn(w.here.step, lost.rule.energy) {
			continue
		}
		x := w.lay.of[lost.rule.energy]
		g := w.and(w.and(g, lost.where), w.present(x))
		w.judgeWaits(x, w.andNot(g, w.is(w.get(x), states(dead))))
		w.proofOrder(lost.rule, x, g)
		w.put(x, w.andNot(g, w.failed(l, w.here.step)), dead)
	}
}

func provesIn(s *model.Step, e *model.Energy) bool {
	for _, l := range s.Links {
		if l.Kind.Act == model.Prove && l.To == model.Named(e) {
			return true
		}
	}
	return false
}

// openLines looks for lines that were opened in an earlier step and are open,
// without a cap, across a hold.
func (w *walk) openLines(g fn) {
	if w.lay.machine == nil {
		return
	}
	for _, p := range w.lay.machine.Parts {
		x := w.lay.of[p]
		if p.Kind != "line" || !w.seen[x] && !w.free {
			continue
		}
		w.open(x, w.and(w.and(g, w.present(x)), w.is(w.get(x), states(off))), w.here.step)
	}
}

// open tells of a line that is open across a hold, at the link that opened it;
// where its caller did that, at the hold itself, for the caller to tell.
func (w *walk) open(line thing, g fn, holding *model.Step) {
	w.each(w.began[line], g, func(e event, where fn) {
		switch {
		case e.link != nil && e.step != holding:
			w.at(e, func() { w.findOnce(&NotCapped, line, where) })
		case e.link == nil && w.free:
			w.openedBefore = true
			w.findOnce(&NotCapped, line, where)
			w.openedBefore = false
		}
	})
}

// each splits a function by the events that another holds.
func (w *walk) each(of, g fn, do func(e event, where fn)) {
	if g == no {
		return
	}
	if of.constant() {
		do(w.events[of], g)
		return
	}
	for i := range w.events {
		if where := w.and(g, w.equals(of, fn(i))); where != no {
			do(w.events[i], where)
		}
	}
}

// neverBroken tells of a stopping place inside a phase that must not be broken
// off.
func (w *walk) neverBroken(ph *model.Phase, g fn) {
	if ph.Lead == nil {
		return
	}
	for _, l := range ph.Lead.Links {
		if l.Is("pause") && l.ID == "never" && !l.Bad {
			w.find(&BadPause, nothing, g, "the work stops here, and this phase is never broken off")
			return
		}
	}
}

// pause judges a stopping place.
func (w *walk) pause(g fn) {
	for i := range w.lay.things {
		x := thing(i)
		if !w.seen[x] && !w.free {
			continue
		}
		g := w.and(g, w.present(x))
		switch info := w.lay.things[x]; info.sort {
		case anEnergy:
			r := w.lay.energy[info.named.(*model.Energy)]
			bare := w.and(w.lockable(r), w.is(w.get(x), states(isolated, blocked)))
			kept := w.and(w.kept(r), w.is(w.get(x), notLive)) // in nobody's hands overnight
			w.findOnce(&BadPause, x, w.and(g, w.or(bare, kept)))
		case aPart:
			if info.named.(*model.Part).Kind == "line" {
				w.findOnce(&BadPause, x, w.and(g, w.is(w.get(x), states(off))))
			}
		case aFastening:
			w.findOnce(&BadPause, x, w.and(g, w.looseAt(x, w.lay.of[info.part])))
		}
	}
}
