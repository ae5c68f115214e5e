package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// renewing takes a part off for good: the refit is of a new one.
type renewing struct{ onPart }

func (renewing) does(w *walk, l *model.Link, g diagram.Func) {
	w.remove(l.To.(*model.Part), g, true)
}
