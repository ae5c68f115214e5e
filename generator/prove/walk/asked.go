package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// NotAsked is told at the act that moves the switch.
var NotAsked = rule{
	Code:  "not-asked",
	Title: "A hold that is not taken before an energy goes off or comes back",
	Why:   "Whoever still has a hand in the machine, or works at the other end of it, must know before the switch is moved.",
	Mend:  "Write hold: with it, after the last thing that is taken off or loosened and before this.",
}

const notAskedBack = "not done before this comes back on, and something was opened since"

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

// notAsked tells of the holds that were not taken since something was opened
// last: at the first of the acts that follow each other.
func (w *walk) notAsked(holds []thing, g diagram.Func, why string) {
	for _, x := range holds {
		w.findOnce(&NotAsked, x, w.And(g, w.Is(w.get(x), states(idle))), why)
	}
}

// tookAsked notes that a hold is taken which some act may want; nil is any.
func (w *walk) tookAsked(h *model.Hold, g diagram.Func) {
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
func (w *walk) openedAnew(g diagram.Func) {
	for _, x := range w.lay.asked {
		w.put(x, g, idle)
		w.told[toldKey{&NotAsked, x}] = w.AndNot(w.told[toldKey{&NotAsked, x}], g)
	}
}

// switchedOff is where an aim takes a point off by which an energy is on.
func (w *walk) switchedOff(a aim, r *energyRule) diagram.Func {
	g := w.And(w.affected(a, r), w.Is(w.energy(r), liveStates))
	if len(r.points) == 0 {
		return g
	}
	moved := diagram.No
	for _, p := range a.points {
		for _, q := range r.points {
			if p == q {
				moved = w.Or(moved, w.pointIs(p, states(live)))
			}
		}
	}
	return w.And(g, moved)
}
