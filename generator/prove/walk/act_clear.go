package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// clearing takes a tool away.
type clearing struct{ onTool }

func (clearing) does(w *walk, l *model.Link, g diagram.Func) {
	w.clear(l.To.(*model.Tool), g)
}

// clear takes a tool away; the last that holds a load ends its release.
func (w *walk) clear(t *model.Tool, g diagram.Func) {
	x := w.lay.of[t]
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(idle))), "taken away, and not in place")
	g = w.AndNot(g, w.Is(was, states(idle)))
	w.put(x, g, idle)
	for _, e := range w.lay.blocks[t] {
		r := w.lay.energy[e]
		w.stillOpen(r, w.letGo(r, g))
		w.unblock(r, g)
	}
	for _, e := range w.lay.contains[t] {
		r := w.lay.energy[e]
		x := w.lay.of[e]
		w.contained(r, w.And(w.And(g, w.present(x)), w.Is(w.get(x), liveStates)), "the %s is taken away while it is on", t.Label())
	}
}
