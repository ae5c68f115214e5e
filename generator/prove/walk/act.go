package walk

import "baybinder/generator/model"

// steps walks everything.
func (w *walk) steps() {
	for _, ph := range w.p.Phases {
		if ph.Lead != nil {
			for _, l := range ph.Lead.Links {
				if pauses(l) {
					w.here = event{link: l}
					w.neverBroken(ph, w.leadOf[ph].fn)
					w.pause(w.leadOf[ph].fn)
				}
			}
		}
		for _, s := range ph.Steps {
			w.step(s)
		}
	}
}

func pauses(l *model.Link) bool { return l.Is("pause") && l.ID == "" && !l.Bad }

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
		if pauses(l) && !g.murky {
			w.here = event{l, s}
			w.neverBroken(s.Phase, g.fn)
			w.pause(g.fn)
		}
	}
	w.stands(s)
}

// act does what a link says; it is true of an act that was followed: only such
// an act counts as checked.
func (w *walk) act(l *model.Link, g guard) bool {
	switch e := effectOf(l.Kind.Act); {
	case l.Is("noted") && !l.Bad && !g.murky:
		w.untaken(l, g.fn)
	case takes(l):
		if g.murky {
			w.mayHaveWaited(g.fn)
			return false
		}
		w.hold(l, g.fn)
	case l.Kind == model.UnknownLink && l.Near != nil:
		w.mayHaveMoved(l.Near, g.fn)
	case l.Kind.Act == model.NoAct:
	case l.Kind.Act == model.Call && !l.Bad:
		w.call(l, g)
		return true
	case e.does == nil || l.Bad || g.murky || l.To == nil && l.Kind.Act != model.Reverse:
		w.unreadAct(l, g.fn)
	default:
		e.does(w, l, g.fn)
		return true
	}
	return false
}

// mayHaveMoved is a link of a kind that there is none of: what it names is
// unknown from here on.
func (w *walk) mayHaveMoved(n model.Named, g fn) {
	switch n.(type) {
	case *model.Procedure:
		w.tookHold(nil, g)
		w.fog(g, everySort...)
	case *model.Hold:
		w.mayHaveWaited(g)
	default:
		w.cloud(n, g)
	}
}

// unreadAct is an act that could not be read: what it was probably meant for
// is unknown from here on; where that cannot be said, all that it may have been.
func (w *walk) unreadAct(l *model.Link, g fn) {
	near := l.Near
	if near == nil {
		near = l.To
	}
	if l.Kind.Act != model.Call && near != nil {
		w.cloud(near, g)
		return
	}
	w.fog(g, effectOf(l.Kind.Act).moves...)
}
