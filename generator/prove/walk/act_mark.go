package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// marking marks the parts that look alike against swapping.
type marking struct{}

func (marking) moves() []sort { return []sort{aGroup} }

func (marking) does(w *walk, l *model.Link, g diagram.Func) {
	w.put(w.lay.of[l.To], g, set)
}
