package walk

import "baybinder/generator/model"

// tookHold remembers where a hold was taken; nil is one that could not be read
// and may have been any.
func (w *walk) tookHold(h *model.Hold, g fn) {
	w.taken[h] = w.or(w.taken[h], g)
	w.tookAsked(h, g)
}

// branches looks for links of a step that ask how a hold went which was not
// taken before.
func (w *walk) branches(s *model.Step) {
	if w.free || w.guardOf[s].murky {
		return
	}
	var around *guard
	for _, l := range s.Links {
		if !l.Bad && (l.Is("if-not") || l.Is("if")) {
			if around == nil {
				g := w.around(s)
				around = &g
			}
			w.here = event{l, s}
			w.untaken(l, around.fn)
		}
	}
}

// around is where a step is come to: its guard without what it asks of holds.
func (w *walk) around(s *model.Step) guard {
	g := w.leadOf[s.Phase]
	if s.Parent != nil {
		g = w.guardOf[s.Parent]
	}
	for _, l := range s.Links {
		if l.Is("when") || l.Is("optional") {
			w.condition(&g, l, s)
		}
	}
	return g
}

// untaken tells of a link about a hold that was not taken before it.
func (w *walk) untaken(l *model.Link, g fn) {
	h, _ := l.To.(*model.Hold)
	if w.free || h == nil || h.Unread {
		return
	}
	bad := w.andNot(w.andNot(g, w.taken[h]), w.taken[nil])
	w.find(&DeadBranch, nothing, bad, "the "+h.Label()+" is not taken before this")
}
