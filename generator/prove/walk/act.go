package walk

import "baybinder/generator/model"

// steps walks everything.
func (w *walk) steps() {
	for _, ph := range w.p.Phases {
		if ph.Lead != nil {
			for _, l := range ph.Lead.Links {
				if pauses(l) {
					w.here = event{link: l}
					w.neverBroken(ph, w.leadOf[ph].fn)
					w.pause(w.leadOf[ph].fn)
				}
			}
		}
		for _, s := range ph.Steps {
			w.step(s)
		}
	}
}

func pauses(l *model.Link) bool { return l.Is("pause") && l.ID == "" && !l.Bad }

// step walks a step and its sub-steps in reading order.
func (w *walk) step(s *model.Step) {
	g := w.guardOf[s]
	w.branches(s)
	for _, it := range items(s) {
		if it.sub != nil {
			w.step(it.sub)
			continue
		}
		w.here = event{it.link, s}
		w.act(it.link, g)
	}
	for _, l := range s.Links {
		if pauses(l) && !g.murky {
			w.here = event{l, s}
			w.neverBroken(s.Phase, g.fn)
			w.pause(g.fn)
		}
	}
	w.stands(s)
}

// act does what a link says.
func (w *walk) act(l *model.Link, g guard) {
	switch {
	case l.Is("noted") && !l.Bad && !g.murky:
		w.untaken(l, g.fn)
	case takes(l):
		if g.murky {
			w.mayHaveWaited(g.fn)
			return
		}
		w.hold(l, g.fn)
	case l.Kind == model.UnknownLink && l.Near != nil:
		w.mayHaveMoved(l.Near, g.fn)
	case l.Kind.Act == model.NoAct:
	case l.Kind.Act == model.Call && !l.Bad:
		w.call(l, g)
	case l.Bad || g.murky || l.To == nil && l.Kind.Act != model.Reverse:
		w.unreadAct(l, g.fn)
	default:
		w.clearAct(l, g.fn)
		if l.Kind.Act == model.Lock {
			w.notices()
		}
	}
}

// mayHaveMoved is a link of a kind that there is none of: what it names is
// unknown from here on.
func (w *walk) mayHaveMoved(n model.Named, g fn) {
	switch n.(type) {
	case *model.Procedure:
		w.tookHold(nil, g)
		w.fog(g, everySort...)
	case *model.Hold:
		w.mayHaveWaited(g)
	default:
		w.cloud(n, g)
	}
}

// unreadAct is an act that could not be read: what it was probably meant for
// is unknown from here on; where that cannot be said, all that it may have been.
func (w *walk) unreadAct(l *model.Link, g fn) {
	near := l.Near
	if near == nil {
		near = l.To
	}
	if l.Kind.Act != model.Call && near != nil {
		w.cloud(near, g)
		return
	}
	w.fog(g, sortsOf(l.Kind.Act)...)
}

// sortsOf is what an act that could not be read may have moved.
func sortsOf(a model.Act) []sort {
	switch a {
	case model.Isolate, model.Lock, model.Release, model.Prove, model.Unlock, model.Restore, model.TestLive:
		return []sort{anEnergy, aPoint}
	case model.Remove, model.Refit, model.Renew, model.Cap:
		return []sort{aPart, aFastening, aFluid, aSpill, aGap}
	case model.Loosen, model.Tighten:
		return []sort{aFastening, aFastener}
	case model.Mark:
		return []sort{aGroup}
	case model.Place, model.Clear:
		return []sort{aTool, anEnergy}
	case model.Alter, model.Reset:
		return []sort{aSetting}
	case model.Drain, model.Fill, model.Bleed, model.Dry:
		return []sort{aFluid, aSpill}
	case model.Reverse:
		return []sort{aPart, aFastening, aFastener, aTool, anEnergy, aSetting, aGap}
	}
	return everySort
}

// clearAct does an act whose link and conditions could be read.
func (w *walk) clearAct(l *model.Link, g fn) {
	switch n := l.To.(type) {
	case *model.Energy, *model.Point:
		w.energyAct(l.Kind.Act, n, g)
	case *model.Part:
		w.partAct(l.Kind.Act, n, g)
	case *model.Fastener:
		if l.Kind.Act == model.Loosen {
			w.loosen(l, n, g)
		} else {
			w.tighten(l, n, g)
		}
	case *model.Fluid:
		w.fluidAct(l.Kind.Act, n, g)
	case *model.Group:
		w.mark(n, g)
	case *model.Tool:
		if l.Kind.Act == model.Place {
			w.place(n, g)
		} else {
			w.clear(n, g)
		}
	case *model.Setting:
		if l.Kind.Act == model.Alter {
			w.alter(n, g)
		} else {
			w.reset(n, g)
		}
	default:
		w.reverse(l, w.here.step, g)
	}
}

func (w *walk) energyAct(a model.Act, n model.Named, g fn) {
	at := w.aim(n, g)
	switch a {
	case model.Isolate:
		w.isolate(at)
	case model.Lock:
		w.lock(at)
	case model.Unlock:
		w.unlock(at)
	case model.Restore:
		w.restore(at)
	case model.TestLive:
		w.testLive(at)
	case model.Release:
		w.release(at.energy, g)
	case model.Prove:
		w.prove(at.energy, g, w.here.step)
	}
}

func (w *walk) partAct(a model.Act, p *model.Part, g fn) {
	switch a {
	case model.Remove:
		w.remove(p, g, false)
	case model.Renew:
		w.remove(p, g, true)
	case model.Refit:
		w.refit(p, g, nil, nil)
	case model.Cap:
		w.capLine(p, g)
	}
}

func (w *walk) fluidAct(a model.Act, f *model.Fluid, g fn) {
	switch a {
	case model.Drain:
		w.drain(f, g)
	case model.Fill:
		w.fill(f, g)
	case model.Bleed:
		w.bleed(f, g)
	case model.Dry:
		w.dry(f, g)
	}
}
