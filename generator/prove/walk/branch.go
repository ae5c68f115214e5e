package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// DeadBranch is told at the condition that asks how a hold went.
var DeadBranch = rule{
	Code:  "dead-branch",
	Title: "A condition on a hold that nobody has taken",
	Why:   "Nobody can know how a measurement went that nobody took: the steps behind it are never done, or are done by guess.",
	Mend:  "Take the hold before this, or ask about the one that was taken.",
}

// tookHold remembers where a hold was taken; nil is one that could not be read
// and may have been any.
func (w *walk) tookHold(h *model.Hold, g diagram.Func) {
	w.taken[h] = w.Or(w.taken[h], g)
	w.tookAsked(h, g)
	if h == nil || h.Lost("kind", "of", "looks-for") {
		w.mayHaveLooked(g)
	}
}

// branches looks for links of a step that ask how a hold went which was not
// taken before.
func (w *walk) branches(s *model.Step) {
	if w.free || w.guardOf[s].unresolved {
		return
	}
	for _, l := range s.Links {
		if !l.Bad && (l.Kind.Branches) {
			w.here = event{l, s}
			w.untaken(l, w.around(s, l).Func)
		}
	}
}

// around is where a link is come to that asks how a hold went: the step's guard
// without that link. What else the step asks may mean that the hold was taken.
func (w *walk) around(s *model.Step, asks *model.Link) pathCondition {
	g := w.leadOf[s.Phase]
	if s.Parent != nil {
		g = w.guardOf[s.Parent]
	}
	for _, l := range s.Links {
		if l != asks && (l.To != asks.To || l.To == nil) {
			w.condition(&g, l, s)
		}
	}
	return g
}

// untaken tells of a link about a hold that was not taken before it: at the first
// that asks how it went.
func (w *walk) untaken(l *model.Link, g diagram.Func) {
	h, _ := l.To.(*model.Hold)
	if w.free || h == nil || h.Unread {
		return
	}
	bad := w.AndNot(w.AndNot(g, w.taken[h]), w.taken[nil])
	if !w.tellAll {
		bad = w.AndNot(bad, w.missed[h])
	}
	w.missed[h] = w.Or(w.missed[h], bad)
	w.find(&DeadBranch, nothing, bad, "not done before this: %s", h.Label())
}
