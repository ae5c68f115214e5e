package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// bleeding lets air out of a circuit.
type bleeding struct{ onFluid }

func (bleeding) does(w *walk, l *model.Link, g diagram.Func) {
	f := l.To.(*model.Fluid)
	x := w.lay.of[f]
	g = w.And(g, w.present(x))
	w.find(&ActOrder, x, w.And(g, w.Is(w.get(x), lowStates)), "bled while it is low")
	if f.BledLive {
		w.bledOff(f, g)
	}
	w.put(x, g, full)
	w.acted = w.Or(w.acted, g)
}

// bledOff tells of energies that are off while a circuit is bled that is bled
// with them on.
func (w *walk) bledOff(f *model.Fluid, g diagram.Func) {
	for _, e := range leads(f.NeededBy) {
		x := w.lay.of[e]
		w.find(&ActOrder, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), notLive)), "the %s is bled with this off, and it is bled live", f.Label())
	}
}
