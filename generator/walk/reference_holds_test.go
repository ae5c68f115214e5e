package walk_test

import (
	"fmt"

	"baybinder/generator/manual"
)

func (x *run) hold(l *manual.Link, s *manual.Step) {
	h := l.To.(*manual.Hold)
	ofMachine := x.frame().p.For.To
	if ofMachine != nil && h.Of.ID != "" {
		for _, e := range ofMachine.Energies {
			k := key("energy", e.ID)
			if e.ID == h.Of.ID && h.Kind == "wait" && x.has(e.OnlyWith) && atRest(e, x.get(k)) {
				x.set(k, "released")
			}
		}
		for _, f := range ofMachine.Fluids {
			if f.ID == h.Of.ID && h.LooksFor == "leak" && x.get(key("spill", f.ID)) == "wet" {
				x.fault("leak-look-while-wet", key("spill", f.ID))
			}
		}
	}
	x.openLines(s)
	if l.Is("again") {
		x.again(l, s, h)
	}
}

func (x *run) openLines(s *manual.Step) {
	if x.machine == nil {
		return
	}
	for _, p := range x.machine.Parts {
		k := key("part", p.ID)
		if p.Kind != "line" || !x.has(p.OnlyWith) || x.get(k) != "off" {
			continue
		}
		opener := x.opened[p.ID]
		d := len(x.frames) - 1
		if opener == nil {
			continue // it was off at the start
		}
		inFrame := len(opener) > d
		for i := 0; i < d && inFrame; i++ {
			inFrame = opener[i].link == x.frames[i].link
		}
		if inFrame && opener[d].step == s {
			continue
		}
		top := opener[0].link
		x.by = fmt.Sprintf(" by %p", opener[len(opener)-1].link)
		if inFrame {
			x.faultAt(opener[d].link, x.frame().path, "not-capped", k, top)
		} else {
			x.faultAt(x.frame().link, x.frame().path, "not-capped", k, top)
		}
		x.by = ""
	}
}

func (x *run) again(l *manual.Link, s *manual.Step, h *manual.Hold) {
	for _, id := range x.lost[x.frame().path+"|"+h.ID] {
		for _, e := range x.machine.Energies {
			if e.ID != id || provedIn(s, e) {
				continue
			}
			x.prove(e, s)
			if !x.branchTaken(l) {
				x.set(key("energy", id), "dead")
			}
		}
	}
}

func provedIn(s *manual.Step, e *manual.Energy) bool {
	for _, l := range s.Links {
		if l.Is("prove") && l.To == manual.Named(e) {
			return true
		}
	}
	return false
}

// unbroken tells of a pause in a phase that is never broken off.
func (x *run) unbroken(ph *manual.Phase) {
	if ph.Lead == nil {
		return
	}
	for _, l := range ph.Lead.Links {
		if l.Is("pause") && l.ID == "never" {
			x.fault("bad-pause", "phase")
		}
	}
}

func (x *run) pause() {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		k := key("energy", e.ID)
		if s := x.get(k); x.has(e.OnlyWith) && lockable(e) && (s == "isolated" || s == "isolated+") {
			x.fault("bad-pause", k)
		}
	}
	for _, p := range x.machine.Parts {
		if !x.has(p.OnlyWith) {
			continue
		}
		k := key("part", p.ID)
		if p.Kind == "line" && x.get(k) == "off" {
			x.fault("bad-pause", k)
		}
		for _, h := range p.HeldBy {
			if f := fasteningKey(h.To.ID, p.ID); x.get(k) == "on" && x.get(f) == "loose" {
				x.fault("bad-pause", f)
			}
		}
	}
}
