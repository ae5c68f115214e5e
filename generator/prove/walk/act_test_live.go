package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

var LiveTest = rule{
	Code:  "live-test",
	Title: "A live test without its warning or its second person",
	Why:   "A test with parts off is the one moment when live work is meant; nobody does it unwarned or alone.",
	Mend:  "Add a hazard: of that energy, a sign or check hold and [](people:2) to the step.",
}

// testingLive puts an energy on for a test.
type testingLive struct{ onEnergy }

func (testingLive) does(w *walk, l *model.Link, g diagram.Func) {
	a := w.aimed(l, g)
	shut := diagram.No
	for _, p := range a.points {
		if p.Padlocked() {
			shut = w.Or(shut, w.pointIs(p, lockedStates))
		}
	}
	w.find(&EnergyOrder, a.thing, w.And(a.where, shut), "put on for a test while it is locked")
	if e := a.energy.energy; !w.hazardOf(w.here.step, e.ID) {
		w.find(&LiveTest, a.thing, a.where, "put on for a test, and the step meets no hazard of it")
	} else if !w.supervised(w.here.step) {
		w.find(&LiveTest, a.thing, a.where, "put on for a test, and the step has no sign or check hold")
	} else if n, known := w.here.step.Crew(); known && n < 2 {
		w.find(&LiveTest, a.thing, a.where, "put on for a test by one person alone")
	}
	for _, r := range w.cut(a) {
		g := w.affected(a, r)
		if r != a.energy {
			g = w.And(g, w.Is(w.energy(r), notLive))
		}
		w.contained(r, g, "it is tested without %s in place", containers(r))
	}
	w.wake(a)
	w.tested[a.thing] = w.Or(w.tested[a.thing], a.where)
	w.acted = w.Or(w.acted, a.where)
}

// supervised says that a second person has a part in the step.
func (w *walk) supervised(s *model.Step) bool {
	for _, l := range s.Links {
		if l.Is(model.LinkHold) {
			h, _ := l.To.(*model.Hold)
			if l.Bad || h == nil || h.Lost("kind") || h.Kind == "sign" || h.Kind == "check" {
				return true
			}
		}
	}
	return false
}
