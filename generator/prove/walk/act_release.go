package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// NotReleased is told at a proof before what is stored is out.
var NotReleased = rule{
	Code:  "not-released",
	Title: "Proved dead before what is stored is out",
	Why:   "A capacitor, a pressure or a raised load stays behind when the switch is off, and takes hold of whoever trusts the switch.",
	Mend:  "Write release:, a wait hold of that energy, or place: of the tool that holds the load before the proof.",
}

// releasing lets out what is stored.
type releasing struct{ onEnergy }

func (releasing) does(w *walk, l *model.Link, g diagram.Func) {
	r := w.lay.energy[l.To.(*model.Energy)]
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
