package walk

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong at a hold and at a stopping place.
var (
	LeakLookWhileWet = rule{
		Code:  "leak-look-while-wet",
		Title: "Looking for a leak while the spill is wet",
		Why:   "A joint that is wet from the work tells nothing.",
		Mend:  "Write dry: with that fluid between the opening and the look.",
	}
	BadPause = rule{
		Code:  "bad-pause",
		Title: "A stopping place that leaves danger",
		Why:   "The night shift finds the machine as it stands here, without you.",
		Mend:  "Lock what is isolated, cap what is open, tighten what is loose; or stop at another place.",
	}
	NotCapped = rule{
		Code:  "not-capped",
		Level: finding.Advice,
		Title: "A line left open across a hold",
		Why:   "Dirt goes in and fluid runs out while the work stands.",
		Mend:  "Write cap: for the line.",
	}
)

// lostProof is a proof that a failed measurement took back.
type lostProof struct {
	rule  *energyRule
	where diagram.Func
	told  diagram.Func // where it was told what is wrong with it
}

// hold is what taking a hold does, and what may not be open across it.
func (w *walk) hold(l *model.Link, g diagram.Func) {
	h, _ := l.To.(*model.Hold)
	if near, is := l.Near().(*model.Hold); l.Bad && is && !near.Unread {
		w.tookHold(nil, g)
		w.waitedFor(near, g)
		w.mayProveAnew(w.lost[near], g)
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
	if l.Is(model.LinkAgain) {
		w.untaken(l, g)
	}
	w.tookHold(h, g)
	switch of := w.p.For.To.Find(h.Of.ID).(type) { // a procedure for no machine has none of these
	case *model.Energy:
		if h.Kind == "wait" {
			w.wait(w.lay.energy[of], g)
			w.waitsOn(w.lay.of[of], h, g)
		}
		if l.Is(model.LinkHold) {
			w.measuresAfter(w.lay.of[of], h, g)
		}
		if h.LooksFor == "leak" && of.Kind == "pressure" {
			w.looked(w.lay.of[of], pushes(of), g)
		}
	case *model.Fluid:
		if h.LooksFor == "leak" {
			x := w.lay.spill[of]
			w.findOnce(&LeakLookWhileWet, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), states(set))), "")
			if from := pushes(of); len(from) > 0 {
				w.looked(w.lay.of[of], from, g)
			}
		}
	}
	w.openLines(g)
	if l.Is(model.LinkAgain) {
		w.provedAnew(h, l, g)
	}
}

// waitedFor is a hold of which it is not known what it is, or of what: it may
// have been a wait.
func (w *walk) waitedFor(h *model.Hold, g diagram.Func) {
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
func (w *walk) mayLetOut(r *energyRule, g diagram.Func) {
	w.byLock(r, g, func(lockable bool, g diagram.Func) {
		w.shift(w.lay.of[r.energy], g, move(unknown, r.ready(lockable)...))
	})
}

// mayHaveWaited is a hold that could not be read: it may have been the wait of
// any energy.
func (w *walk) mayHaveWaited(g diagram.Func) {
	w.tookHold(nil, g)
	w.mayBeReleased(g)
	for _, lost := range w.lost {
		w.mayProveAnew(lost, g)
	}
}

// mayProveAnew is a hold that could not be read: it may have taken anew what these
// proofs hang on.
func (w *walk) mayProveAnew(list []lostProof, g diagram.Func) {
	for _, lost := range list {
		x := w.lay.of[lost.rule.energy]
		w.shift(x, w.And(w.And(g, lost.where), w.present(x)), move(unknown, live, early, isolated, locked, released, blocked))
	}
}

// mayBeReleased makes every energy unknown that a wait would have released.
func (w *walk) mayBeReleased(g diagram.Func) {
	if w.lay.machine == nil {
		return
	}
	for _, e := range w.lay.machine.Energies {
		w.mayLetOut(w.lay.energy[e], g)
	}
}

// provedAnew is what again: does to the proofs that its hold took back. What was told
// of a proof is not told of it again.
func (w *walk) provedAnew(h *model.Hold, l *model.Link, g diagram.Func) {
	for _, lost := range w.lost[h] {
		if provesIn(w.here.step, lost.rule.energy) {
			continue
		}
		x := w.lay.of[lost.rule.energy]
		g := w.And(w.And(g, lost.where), w.present(x))
		w.judgeWaits(x, w.AndNot(g, w.Is(w.get(x), states(dead))))
		w.proofTold(lost.rule, x, w.AndNot(g, lost.told))
		w.put(x, w.AndNot(g, w.failed(l, w.here.step)), dead)
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
func (w *walk) openLines(g diagram.Func) {
	if w.lay.machine == nil {
		return
	}
	for _, p := range w.lay.machine.Parts {
		x := w.lay.of[p]
		if p.Kind != "line" || !w.seen[x] && !w.free {
			continue
		}
		w.open(x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), states(off))), w.here.step)
	}
}

// open tells of a line that is open across a hold, at the link that opened it;
// where its caller did that, at the hold itself, for the caller to tell.
func (w *walk) open(line thing, g diagram.Func, holding *model.Step) {
	w.each(w.began[line], g, func(e event, where diagram.Func) {
		switch {
		case e.link != nil && e.step != holding:
			w.at(e, func() { w.findOnce(&NotCapped, line, where, "") })
		case e.link == nil && w.free:
			w.openedBefore = true
			w.findOnce(&NotCapped, line, where, "")
			w.openedBefore = false
		}
	})
}

// each splits a function by the events that another holds.
func (w *walk) each(of, g diagram.Func, do func(e event, where diagram.Func)) {
	if g == diagram.No {
		return
	}
	if of.Constant() {
		do(w.events[of], g)
		return
	}
	for i := range w.events {
		if where := w.And(g, w.Equals(of, diagram.Func(i))); where != diagram.No {
			do(w.events[i], where)
		}
	}
}

// neverBroken tells of a stopping place inside a phase that must not be broken
// off.
func (w *walk) neverBroken(ph *model.Phase, g diagram.Func) {
	if ph.Lead == nil {
		return
	}
	for _, l := range ph.Lead.Links {
		if l.Is(model.LinkPause) && l.ID == "never" && !l.Bad {
			w.find(&BadPause, nothing, g, "the work stops here, and this phase is never broken off")
			return
		}
	}
}

// pause judges a stopping place.
func (w *walk) pause(g diagram.Func) {
	for i := range w.lay.things {
		x := thing(i)
		if !w.seen[x] && !w.free {
			continue
		}
		g := w.And(g, w.present(x))
		switch info := w.lay.things[x]; info.sort {
		case anEnergy:
			r := w.lay.energy[info.named.(*model.Energy)]
			bare := w.And(w.lockable(r), w.Is(w.get(x), states(isolated, blocked)))
			kept := w.And(w.kept(r), w.Is(w.get(x), notLive)) // in nobody's hands overnight
			w.findOnce(&BadPause, x, w.And(g, w.Or(bare, kept)), "")
		case aPart:
			if info.named.(*model.Part).Kind == "line" {
				w.findOnce(&BadPause, x, w.And(g, w.Is(w.get(x), states(off))), "")
			}
		case aFastening:
			w.findOnce(&BadPause, x, w.And(g, w.looseAt(x, w.lay.of[info.part])), "")
		case aPoint, aFastener, aFluid, aSpill, aSetting, aGroup, aGap, aTool, anAsked:
		}
	}
}
