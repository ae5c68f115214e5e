package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// clearing takes a tool away.
type clearing struct{ onTool }

func (clearing) does(w *walk, l *model.Link, g diagram.Func) {
	w.clear(l.To.(*model.Tool), g)
}

// letDown puts the loads back that a tool was the last to hold. One with nothing
// to switch off comes back by that alone, so that what is asked of a restore: is
// asked here.
func (w *walk) letDown(t *model.Tool, g diagram.Func) {
	loads := w.lay.blocks[t]
	woken := make([]diagram.Func, len(loads))
	for i, e := range loads {
		r := w.lay.energy[e]
		back := w.letGo(r, g)
		if !tests(w.here.step, e) { // it goes on for a test, with parts off: test-live: is judged there
			w.stillOpen(r, back)
		}
		if woken[i] = diagram.No; len(r.points) == 0 {
			woken[i] = back
			w.notAsked(w.lay.asks(e, w.askedOfLoad), back, notAskedBack)
		}
		w.unblock(r, g)
	}
	for i, e := range loads {
		w.backInOrder(w.lay.energy[e], woken[i])
	}
}

// tests says that a step puts an energy on for a test.
func tests(s *model.Step, e *model.Energy) bool {
	return s != nil && slices.ContainsFunc(s.Links, func(l *model.Link) bool {
		return l.Kind.Act == model.TestLive && l.To == model.Named(e)
	})
}

// askedOfLoad are the holds that a load wants taken before it comes back: its own where
// it is not restored by a link, and those of the machine that are asked nowhere else in
// this procedure. They may come after the load and before the power.
func (w *walk) askedOfLoad(e *model.Energy, m *model.Machine) []model.Ref[model.Hold] {
	has := func(is func(*model.Link) bool) bool {
		return slices.ContainsFunc(w.p.Steps, func(s *model.Step) bool { return slices.ContainsFunc(s.Links, is) })
	}
	asked := slices.DeleteFunc(slices.Clone(m.BeforeRestore), func(h model.Ref[model.Hold]) bool {
		return has(func(l *model.Link) bool {
			return l.Kind.Act == model.Restore || takes(l) && (l.Bad || l.To == model.Named(h.To))
		})
	})
	if has(func(l *model.Link) bool { return l.Kind.Act == model.Restore && (l.Bad || l.To == model.Named(e)) }) {
		return asked
	}
	return append(asked, e.BeforeRestore...)
}

// downAllTheSame puts the loads back that nothing else brings back, where the tool
// that is to hold them was never placed: what is told of the tool is told once.
func (w *walk) downAllTheSame(t *model.Tool, g diagram.Func) {
	for _, e := range w.lay.blocks[t] {
		if r := w.lay.energy[e]; len(r.points) == 0 {
			w.unblock(r, g)
		}
	}
}

// clear takes a tool away; the last that holds a load ends its release.
func (w *walk) clear(t *model.Tool, g diagram.Func) {
	x := w.lay.of[t]
	was := w.get(x)
	missed := w.And(g, w.Is(was, states(idle)))
	w.find(&ActOrder, x, missed, "taken away, and not in place")
	w.downAllTheSame(t, missed)
	g = w.AndNot(g, w.Is(was, states(idle)))
	w.put(x, g, idle)
	w.letDown(t, g)
	for _, e := range w.lay.contains[t] {
		r := w.lay.energy[e]
		x := w.lay.of[e]
		w.contained(r, w.And(w.And(g, w.present(x)), w.Is(w.get(x), liveStates)), "the %s is taken away while it is on", t.Label())
	}
}
