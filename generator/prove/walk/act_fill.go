package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// filling fills a circuit; one that is bled afterwards is full only then.
type filling struct{ onFluid }

func (filling) does(w *walk, l *model.Link, g diagram.Func) {
	f := l.To.(*model.Fluid)
	x := w.lay.of[f]
	g = w.And(g, w.present(x))
	was := w.get(x)
	for _, p := range f.Lines {
		line := w.lay.of[p]
		open := w.And(w.present(line), w.Is(w.get(line), offStates))
		w.find(&ActOrder, line, w.And(w.And(g, w.Is(was, lowStates)), open), "the %s is filled while this line is off", f.Label())
	}
	for _, e := range leads(f.NeededBy) {
		if r := w.lay.energy[e]; len(r.points) == 0 {
			here := w.And(w.And(g, w.present(w.lay.of[e])), w.Is(was, lowStates))
			w.contained(r, here, "it is filled without %s in place", containers(r))
		}
	}
	w.refill(f, x, w.And(g, w.Is(was, states(drained))))
	to := full
	if f.Bleed {
		to = unbled
	}
	w.shift(x, g, move(to, low, drained))
}
