package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// capping closes the open end of a line.
type capping struct{ onPart }

func (capping) does(w *walk, l *model.Link, g diagram.Func) {
	p := l.To.(*model.Part)
	x := w.lay.of[p]
	g = w.And(g, w.present(x))
	f := w.get(x)
	if p.Lost("kind") {
		w.put(x, g, unknown)
		return
	}
	if p.Kind != "line" && p.Kind != "wire" && p.Kind != "connector" {
		w.find(&ActOrder, x, g, "capped, and no line, wire or connector")
		return
	}
	w.find(&ActOrder, x, w.And(g, w.Is(f, states(on))), "capped while it is on")
	w.find(&ActOrder, x, w.And(g, w.Is(f, states(capped))), "capped twice")
	w.shift(x, g, move(capped, off))
}
