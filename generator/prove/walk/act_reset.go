package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// resetting puts it back.
type resetting struct{ onSetting }

func (resetting) does(w *walk, l *model.Link, g diagram.Func) {
	w.reset(l.To.(*model.Setting), g)
}

func (w *walk) reset(s *model.Setting, g diagram.Func) {
	x := w.lay.of[s]
	w.put(x, w.And(g, w.present(x)), idle)
}
