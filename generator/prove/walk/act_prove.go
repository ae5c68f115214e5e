package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// proving judges a proof and makes the energy dead, but where it failed.
type proving struct{ onEnergy }

func (proving) does(w *walk, l *model.Link, g diagram.Func) {
	r := w.lay.energy[l.To.(*model.Energy)]
	x := w.lay.of[r.energy]
	g = w.And(g, w.present(x))
	w.judgeWaits(x, w.AndNot(g, w.Is(w.get(x), states(dead))))
	told := w.proofTold(r, x, g)
	w.put(x, w.AndNot(g, w.notProved(r, w.here.step, g, told)), dead)
}

// proofTold tells what is wrong with a proof, and says where something is.
func (w *walk) proofTold(r *energyRule, x thing, g diagram.Func) diagram.Func {
	sound := w.proofOrder(r, x, g)
	return w.Or(w.AndNot(g, sound), w.showsDead(r.energy, x, sound))
}

// proofOrder tells of a proof that comes too soon, and says where it does not.
func (w *walk) proofOrder(r *energyRule, x thing, g diagram.Func) (sound diagram.Func) {
	f := w.get(x)
	sound = g
	w.byLock(r, g, func(lockable bool, g diagram.Func) {
		ready := states(r.ready(lockable)...)
		if len(r.points) > 0 {
			early := w.And(g, w.Is(f, states(live, isolated, early, blocked)&^ready))
			w.find(&EnergyOrder, x, early, "proved before it is %s", w.secured(r, lockable, early))
			sound, g = w.AndNot(sound, early), w.AndNot(g, early)
		}
		if r.stored {
			charged := w.And(g, w.Is(f, ready))
			w.findOnce(&NotReleased, x, charged, "proved dead before what is stored is out")
			sound = w.AndNot(sound, charged)
		}
	})
	return w.AndNot(sound, w.Is(f, states(unknown)))
}

// notProved says where a proof did not prove: a measurement beside it failed.
// The proof is remembered, for again: takes it anew.
func (w *walk) notProved(r *energyRule, s *model.Step, g, told diagram.Func) diagram.Func {
	f := diagram.No
	for _, l := range s.Links {
		if !takes(l) || !w.beside(l, r.energy) {
			continue
		}
		if failed := w.And(g, w.failed(l, s)); failed != diagram.No {
			h := l.To.(*model.Hold)
			w.lost[h] = append(w.lost[h], lostProof{r, failed, told})
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
