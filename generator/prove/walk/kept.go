package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// A plug that is kept is locked while it is out, where the whole job is one
// person's: nobody else can put it in. In any other job it is only isolated.

// aloneHere says whether the procedure, as a job of its own, is one person's.
func (w *walk) aloneHere() diagram.Func {
	if w.p.People <= 1 {
		return diagram.Yes
	}
	return diagram.No
}

// alone says where the whole job is one person's. A procedure that is called
// goes by the people of the outermost caller.
func (w *walk) alone() diagram.Func {
	if w.free {
		return w.holds(variable{kind: aLoner})
	}
	return w.aloneHere()
}

// keptOut is how a kept plug stands that is out.
func (w *walk) keptOut(alone diagram.Func) diagram.Func { return w.Ite(alone, locked, isolated) }

// pull takes a plug out where an aim does.
func (w *walk) pull(a aim, p *model.Point) {
	g, alone := w.And(a.where, w.has(p)), w.alone()
	w.shift(w.lay.of[p], w.And(g, alone), move(locked, live, isolated))
	w.shift(w.lay.of[p], w.AndNot(g, alone), move(isolated, live))
}

// padlocked says where one of an energy's points takes a padlock.
func (w *walk) padlocked(r *energyRule) diagram.Func {
	any := diagram.No
	for _, p := range r.points {
		if p.Padlocked() {
			any = w.Or(any, w.has(p))
		}
	}
	return any
}

// kept says where one of an energy's points is a plug that is kept, and out.
func (w *walk) kept(r *energyRule) diagram.Func {
	any := diagram.No
	for _, p := range r.points {
		if p.Kept {
			any = w.Or(any, w.pointIs(p, states(isolated, locked)))
		}
	}
	return any
}

// hasKept says where one of an energy's points is a plug that is kept.
func (w *walk) hasKept(r *energyRule) diagram.Func {
	any := diagram.No
	for _, p := range r.points {
		if p.Kept {
			any = w.Or(any, w.has(p))
		}
	}
	return any
}
