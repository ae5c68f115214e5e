package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// altering changes a setting or an interlock.
type altering struct{ onSetting }

func (altering) does(w *walk, l *model.Link, g diagram.Func) {
	x := w.lay.of[l.To]
	g = w.And(g, w.present(x))
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(set))), "changed twice")
	g = w.AndNot(g, w.Is(was, states(set)))
	w.undone(undoing{thing: x, where: g})
	w.put(x, g, set)
}
