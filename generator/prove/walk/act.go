package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// ActOrder is told at an act that takes its thing from a state that it is not in.
var ActOrder = rule{
	Code:  "act-order",
	Title: "An act that cannot be done as things stand",
	Why:   "A step that cannot be done teaches people to skip steps.",
	Mend:  "Move the step to where it can be done, or take it out.",
}

// steps walks everything.
func (w *walk) steps() {
	for _, ph := range w.p.Phases {
		if ph.Lead != nil {
			for _, l := range ph.Lead.Links {
				if pauses(l) {
					w.here = event{link: l}
					w.neverBroken(ph, w.leadOf[ph].Func)
					w.pause(w.leadOf[ph].Func)
				}
			}
		}
		for _, s := range ph.Steps {
			w.step(s)
		}
	}
}

func pauses(l *model.Link) bool { return l.Is(model.LinkPause) && l.ID == "" && !l.Bad }

// step walks a step and its sub-steps in reading order.
func (w *walk) step(s *model.Step) {
	g := w.guardOf[s]
	w.branches(s)
	for _, it := range items(s) {
		if it.sub != nil {
			w.step(it.sub)
			continue
		}
		w.here = event{it.link, s}
		if w.act(it.link, g) {
			w.followed++
		}
	}
	for _, l := range s.Links {
		if pauses(l) && !g.unresolved {
			w.here = event{l, s}
			w.neverBroken(s.Phase, g.Func)
			w.pause(g.Func)
		}
	}
	w.stands(s)
}

// act does what a link says; it is true of an act that was followed: only such
// an act counts as checked.
func (w *walk) act(l *model.Link, g pathCondition) bool {
	switch e := effects[l.Kind.Act]; {
	case l.Is(model.LinkNoted) && !l.Bad && !g.unresolved:
		w.untaken(l, g.Func)
	case takes(l):
		if g.unresolved {
			w.mayHaveWaited(g.Func)
			return false
		}
		w.hold(l, g.Func)
	case (l.Odd || l.Kind == model.UnknownLink) && l.Near() != nil && l.Kind.Act != model.Reverse:
		w.mayHaveMoved(l.Near(), g.Func)
	case l.Kind.Act == model.NoAct:
	case l.Kind.Act == model.Call && !l.Bad:
		w.call(l, g)
		return true
	case e == nil || l.Bad || g.unresolved || l.To == nil && l.Kind.Act != model.Reverse:
		w.unreadAct(l, g.Func)
	default:
		if n, is := l.To.(*model.Energy); is && n.Lost("points") {
			w.havoc(g.Func, mayMove(l.Kind.Act)...) // any point may be its
		}
		e.does(w, l, g.Func)
		return true
	}
	return false
}

// mayHaveMoved is a link of a kind that there is none of: what it names is
// unknown from here on.
func (w *walk) mayHaveMoved(n model.Named, g diagram.Func) {
	switch n.(type) {
	case *model.Procedure:
		w.tookHold(nil, g)
		w.havoc(g, everySort...)
	case *model.Hold:
		w.mayHaveWaited(g)
	default:
		w.cloud(n, g)
	}
}

// unreadAct is an act that could not be read: what it was probably meant for
// is unknown from here on; where that cannot be said, all that it may have been.
func (w *walk) unreadAct(l *model.Link, g diagram.Func) {
	near := l.Near()
	if near == nil {
		near = l.To
	}
	if l.Kind.Act != model.Call && l.Kind.Act != model.Reverse && near != nil {
		w.cloud(near, g)
		return
	}
	if l.Kind.Act == model.Call {
		w.tookHold(nil, g)
	}
	w.havoc(g, mayMove(l.Kind.Act)...)
}
