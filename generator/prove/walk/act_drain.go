package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// draining lets a fluid out.
type draining struct{ onFluid }

func (draining) does(w *walk, l *model.Link, g diagram.Func) {
	x := w.lay.of[l.To]
	g = w.And(g, w.present(x))
	w.shift(x, g, move(drained, full, unbled, low))
	w.acted = w.Or(w.acted, g)
}
