package walk_test

import (
	"math"
	"strings"

	"baybinder/generator/model"
)

// refWaited is what was waited for an energy since it was cut.
type refWaited struct {
	cutAt   string // the path of the procedure that cut it; "-" where that is not known
	seconds float64
	link    *model.Link // the last wait, the link of the top that it is in, and its path
	top     *model.Link
	path    string
	over    bool // judged, or let out by hand
	read    bool // a measurement came
}

// takesTime is how long the energy's charge takes, by the maker and by R·C.
func (x *run) takesTime(e *model.Energy) float64 {
	t := e.Stored.Wait.Base()
	if c := e.Stored.Capacitance.Base() * e.Stored.Resistance.Base(); c > 0 && e.Kind == "electric" {
		t = max(t, c*math.Log(e.Voltage.Base()/60))
	}
	return t
}

// waitedBefore: a procedure that expects what is stored to be out begins after
// the waits.
func (x *run) waitedBefore() {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		if s := x.get(key("energy", e.ID)); s == "released" || s == "dead" {
			x.waitOver(e)
		}
	}
}

func (x *run) waitOver(e *model.Energy) {
	x.waited[e.ID] = refWaited{cutAt: "-", over: true, read: true}
}

// waitsMoved follows what a change of an energy means for its waits.
func (x *run) waitsMoved(k, was, to string) {
	id, is := strings.CutPrefix(k, "energy:")
	if !is || x.applying || x.frames == nil {
		return
	}
	wasOn, on := was == "live" || was == "live+", to == "live" || to == "live+"
	if was == "released" && (on || to == "isolated" || to == "locked") {
		x.judgeWait(x.machine.Find(id).(*model.Energy))
	}
	if wasOn && !on {
		x.waited[id] = refWaited{cutAt: x.frame().path + "/"}
	}
}

func (x *run) wait(e *model.Energy, l *model.Link, h *model.Hold) {
	if s := x.get(key("energy", e.ID)); h.Kind != "wait" || s == "live" || s == "live+" {
		return
	}
	w := x.waited[e.ID]
	w.seconds += h.For.Least.Base()
	w.link, w.top, w.path = l, x.frames[0].link, x.frame().path
	x.waited[e.ID] = w
}

// judgeWait is before a proof, and where the energy is no longer at rest.
func (x *run) judgeWait(e *model.Energy) {
	w := x.waited[e.ID]
	if !w.over && w.link != nil && w.seconds < x.takesTime(e) {
		x.faultAt(w.link, w.path, "wait-too-short", key("energy", e.ID), w.top)
	}
	w.over = true
	x.waited[e.ID] = w
}

func (x *run) waitsAtEnd() {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		if x.has(e.OnlyWith) && x.get(key("energy", e.ID)) == "released" {
			x.judgeWait(e)
		}
	}
}

// waitsAfterCall: a callee that leaves an energy released after its own waits
// was judged when it was walked alone.
func (x *run) waitsAfterCall(callee *model.Procedure, path string) {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		w := x.waited[e.ID]
		if x.get(key("energy", e.ID)) != "released" {
			continue
		}
		cutIn := strings.HasPrefix(w.cutAt, path+"/") || strings.HasPrefix(w.cutAt, path+">")
		waitedIn := w.link != nil && (w.path == path || strings.HasPrefix(w.path, path+">"))
		begins := ""
		for _, s := range callee.Expects {
			if s.ID == e.ID {
				begins = s.Word
			}
		}
		w.over = w.over || cutIn || waitedIn && begins != "released" && begins != "dead"
		x.waited[e.ID] = w
	}
}

// measure is a measurement that the charge has not fallen to, not in a branch.
func (x *run) measure(e *model.Energy, l *model.Link, s *model.Step, h *model.Hold) {
	st, w := x.get(key("energy", e.ID)), x.waited[e.ID]
	rc := e.Stored.Capacitance.Base() * e.Stored.Resistance.Base()
	if !x.hasEnergy(e) || h.Kind != "measure" || !l.Is("hold") || w.link == nil || w.read || st == "live" || st == "live+" || rc == 0 || e.Kind != "electric" {
		return
	}
	for _, f := range x.frames {
		for up := f.step; up != nil; up = up.Parent {
			for _, ask := range up.Links {
				if ask.Is("if") || ask.Is("if-not") {
					return
				}
			}
		}
	}
	if _, most := h.Limit.Bounds(); w.seconds >= x.takesTime(e) && e.Voltage.Base()*math.Exp(-w.seconds/rc) > most {
		x.fault("wait-short-of-limit", key("energy", e.ID))
	}
	w.read = true
	x.waited[e.ID] = w
}
