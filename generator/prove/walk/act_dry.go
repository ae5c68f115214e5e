package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// drying cleans up what was spilled.
type drying struct{ onFluid }

func (drying) does(w *walk, l *model.Link, g diagram.Func) {
	f := l.To.(*model.Fluid)
	x := w.lay.spill[f]
	w.put(x, w.And(g, w.present(x)), idle)
}
