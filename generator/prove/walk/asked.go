package walk

import "baybinder/generator/model"

// asks are the holds that a machine and an energy want taken before an act.
func (l *layout) asks(e *model.Energy, before func(*model.Energy, *model.Machine) []model.Ref[model.Hold]) []thing {
	var out []thing
	for _, h := range leads(before(e, l.machine)) {
		out = append(out, l.of[h])
	}
	return out
}

func beforeIsolate(e *model.Energy, m *model.Machine) []model.Ref[model.Hold] {
	return append(append([]model.Ref[model.Hold]{}, m.BeforeIsolate...), e.BeforeIsolate...)
}

func beforeRestore(e *model.Energy, m *model.Machine) []model.Ref[model.Hold] {
	return append(append([]model.Ref[model.Hold]{}, m.BeforeRestore...), e.BeforeRestore...)
}

// addAsked makes a thing of each hold that some act wants taken before it: it
// is taken, or it is not, since something was opened.
func (l *layout) addAsked() {
	add := func(refs []model.Ref[model.Hold]) {
		for _, h := range leads(refs) {
			if _, known := l.of[h]; !known {
				l.asked = append(l.asked, l.add(anAsked, h, h.Unread))
			}
		}
	}
	for _, e := range l.machine.Energies {
		add(beforeIsolate(e, l.machine))
		add(beforeRestore(e, l.machine))
	}
}

// notAsked tells of the holds that were not taken since something was opened last.
func (w *walk) notAsked(holds []thing, g fn, why string) {
	for _, x := range holds {
		w.find(&NotAsked, x, w.and(g, w.is(w.get(x), states(idle))), why)
	}
}

// tookAsked notes that a hold is taken which some act may want; nil is any.
func (w *walk) tookAsked(h *model.Hold, g fn) {
	for _, x := range w.lay.asked {
		switch {
		case h == nil:
			w.put(x, g, unknown)
		case w.lay.things[x].named == model.Named(h):
			w.put(x, g, set)
		}
	}
}

// openedAnew ends what the holds said: something was opened after them.
func (w *walk) openedAnew(g fn) {
	for _, x := range w.lay.asked {
		w.put(x, g, idle)
	}
}

// switchedOff is where an aim takes a point off by which an energy is on.
func (w *walk) switchedOff(a aim, r *energyRule) fn {
	g := w.and(w.affected(a, r), w.is(w.energy(r), liveStates))
	if len(r.points) == 0 {
		return g
	}
	moved := no
	for _, p := range a.points {
		for _, q := range r.points {
			if p == q {
				moved = w.or(moved, w.pointIs(p, states(live)))
			}
		}
	}
	return w.and(g, moved)
}
