package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// placing leaves a tool in place; one that holds a load releases it.
type placing struct{ onTool }

func (placing) does(w *walk, l *model.Link, g diagram.Func) {
	t := l.To.(*model.Tool)
	x := w.lay.of[t]
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(set))), "put in place twice")
	g = w.AndNot(g, w.Is(was, states(set)))
	w.undone(undoing{thing: x, where: g})
	w.put(x, g, set)
	for _, e := range w.lay.blocks[t] {
		w.block(w.lay.energy[e], g)
	}
}
