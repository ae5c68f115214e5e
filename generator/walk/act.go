package walk

import "baybinder/generator/manual"

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

func pauses(l *manual.Link) bool { return l.Is("pause") && l.ID == "" && !l.Bad }

// step walks a step and its sub-steps in reading order.
func (w *walk) step(s *manual.Step) {
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
func (w *walk) act(l *manual.Link, g guard) {
	switch {
	case l.Is("noted") && !l.Bad && !g.murky:
		w.untaken(l, g.fn)
	case takes(l):
		if g.murky {
			w.mayHaveWaited(g.fn)
			return
		}
		w.hold(l, g.fn)
	case l.Kind.Act == manual.NoAct:
	case l.Kind.Act == manual.Call && !l.Bad:
		w.call(l, g)
	case l.Bad || g.murky || l.To == nil && l.Kind.Act != manual.Reverse:
		w.fog(g.fn, sortsOf(l.Kind.Act)...)
	default:
		w.clearAct(l, g.fn)
		if l.Kind.Act == manual.Lock {
			w.notices()
		}
	}
}

// sortsOf is what an act that could not be read may have moved.
func sortsOf(a manual.Act) []sort {
	switch a {
	case manual.Isolate, manual.Lock, manual.Release, manual.Prove, manual.Unlock, manual.Restore, manual.TestLive:
		return []sort{anEnergy, aPoint}
	case manual.Remove, manual.Refit, manual.Renew, manual.Cap:
		return []sort{aPart, aFastening, aFluid, aSpill, aGap}
	case manual.Loosen, manual.Tighten:
		return []sort{aFastening, aFastener}
	case manual.Mark:
		return []sort{aGroup}
	case manual.Place, manual.Clear:
		return []sort{aTool, anEnergy}
	case manual.Alter, manual.Reset:
		return []sort{aSetting}
	case manual.Drain, manual.Fill, manual.Bleed, manual.Dry:
		return []sort{aFluid, aSpill}
	case manual.Reverse:
		return []sort{aPart, aFastening, aFastener, aTool, anEnergy, aSetting, aGap}
	}
	return everySort
}

// clearAct does an act whose link and conditions could be read.
func (w *walk) clearAct(l *manual.Link, g fn) {
	switch n := l.To.(type) {
	case *manual.Energy, *manual.Point:
		w.energyAct(l.Kind.Act, n, g)
	case *manual.Part:
		w.partAct(l.Kind.Act, n, g)
	case *manual.Fastener:
		if l.Kind.Act == manual.Loosen {
			w.loosen(l, n, g)
		} else {
			w.tighten(l, n, g)
		}
	case *manual.Fluid:
		w.fluidAct(l.Kind.Act, n, g)
	case *manual.Group:
		w.mark(n, g)
	case *manual.Tool:
		if l.Kind.Act == manual.Place {
			w.place(n, g)
		} else {
			w.clear(n, g)
		}
	case *manual.Setting:
		if l.Kind.Act == manual.Alter {
			w.alter(n, g)
		} else {
			w.reset(n, g)
		}
	default:
		w.reverse(l, w.here.step, g)
	}
}

func (w *walk) energyAct(a manual.Act, n manual.Named, g fn) {
	at := w.aim(n, g)
	switch a {
	case manual.Isolate:
		w.isolate(at)
	case manual.Lock:
		w.lock(at)
	case manual.Unlock:
		w.unlock(at)
	case manual.Restore:
		w.restore(at)
	case manual.TestLive:
		w.testLive(at)
	case manual.Release:
		w.release(at.energy, g)
	case manual.Prove:
		w.prove(at.energy, g, w.here.step)
	}
}

func (w *walk) partAct(a manual.Act, p *manual.Part, g fn) {
	switch a {
	case manual.Remove:
		w.remove(p, g, false)
	case manual.Renew:
		w.remove(p, g, true)
	case manual.Refit:
		w.refit(p, g, nil, nil)
	case manual.Cap:
		w.capLine(p, g)
	}
}

func (w *walk) fluidAct(a manual.Act, f *manual.Fluid, g fn) {
	switch a {
	case manual.Drain:
		w.drain(f, g)
	case manual.Fill:
		w.fill(f, g)
	case manual.Bleed:
		w.bleed(f, g)
	case manual.Dry:
		w.dry(f, g)
	}
}
