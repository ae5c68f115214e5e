package walk_test

import (
	"fmt"
	"strings"

	"baybinder/generator/model"
)

func (x *run) hold(l *model.Link, s *model.Step) {
	h := l.To.(*model.Hold)
	ofMachine := x.frame().p.For.To
	if ofMachine != nil && h.Of.ID != "" {
		for _, e := range ofMachine.Energies {
			k := key("energy", e.ID)
			if e.ID == h.Of.ID && h.Kind == "wait" && x.hasEnergy(e) && x.atRest(e, x.get(k)) {
				x.set(k, "released")
			}
			if e.ID == h.Of.ID && x.has(e.OnlyWith) {
				x.wait(e, l, h)
				x.measure(e, l, s, h)
			}
		}
		for _, f := range ofMachine.Fluids {
			if f.ID == h.Of.ID && x.has(f.OnlyWith) && h.LooksFor == "leak" && x.get(key("spill", f.ID)) == "wet" {
				x.fault("leak-look-while-wet", key("spill", f.ID))
			}
		}
	}
	x.lookForLeak(l, h)
	if l.Is("again") {
		x.asks(l, h)
	}
	x.taken[h.ID] = true
	x.set(key("asked", h.ID), "taken")
	x.openLines(s)
	if l.Is("again") {
		x.again(l, s, h)
	}
}

// asks judges a link about a hold, in a procedure that is walked alone.
func (x *run) asks(l *model.Link, h *model.Hold) {
	if len(x.frames) > 1 || x.frame().path != "" || x.taken[h.ID] {
		return
	}
	x.faultAt(l, "", "dead-branch", h.ID, l)
}

// comesTo judges what a step asks of holds, where it is come to.
func (x *run) comesTo(s *model.Step) {
	if s.Parent != nil && !x.done(s.Parent) || !x.phaseGuard(s.Phase) {
		return
	}
	for _, l := range s.Links {
		if l.Is("when") && x.w.options[l.ID] == l.Not {
			return
		}
		if l.Is("optional") && x.w.choose(x.frame().path+"|optional "+s.Number, 2) == 0 {
			return
		}
	}
	for _, l := range s.Links {
		if (l.Is("if-not") || l.Is("if")) && x.restHolds(s, l) {
			x.asks(l, l.To.(*model.Hold))
		}
	}
}

// restHolds says that what a step asks of other holds is so.
func (x *run) restHolds(s *model.Step, l *model.Link) bool {
	for _, other := range s.Links {
		if (other.Is("if-not") || other.Is("if")) && other.To != l.To && !x.went(other, s) {
			return false
		}
	}
	return true
}

func (x *run) lookForLeak(l *model.Link, h *model.Hold) {
	m := x.frame().p.For.To
	if m == nil || h.LooksFor != "leak" {
		return
	}
	var behind []*model.Energy
	k := ""
	for _, e := range m.Energies {
		if e.ID == h.Of.ID {
			k, behind = key("energy", e.ID), append(behind, e)
		}
	}
	for _, f := range m.Fluids {
		if f.ID == h.Of.ID && x.has(f.OnlyWith) {
			k = key("fluid", f.ID)
			for _, e := range f.NeededBy {
				behind = append(behind, e.To)
			}
		}
	}
	some := false
	for _, e := range behind {
		if e.Kind != "pressure" {
			return
		}
		some = some || x.hasEnergy(e)
	}
	dry := some
	for _, e := range behind {
		if st := x.get(key("energy", e.ID)); x.hasEnergy(e) && (st == "live" || st == "live+") {
			dry = false
		}
	}
	if !dry {
		var rest []refLook
		for _, old := range x.looks {
			if old.of != k {
				rest = append(rest, old)
			}
		}
		x.looks = rest
		return
	}
	told := false
	for i, ex := range x.exclude {
		if rest, below := strings.CutPrefix(x.frame().path, x.from[i]); below && ex[raw{rest, l, "leak-look-without-pressure", k}] {
			told = true
		}
	}
	x.looks = append(x.looks, refLook{l, x.frames[0].link, x.frame().path, k, told})
}

func (x *run) openLines(s *model.Step) {
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

func (x *run) again(l *model.Link, s *model.Step, h *model.Hold) {
	for _, was := range x.lost[x.frame().path+"|"+h.ID] {
		for _, e := range x.machine.Energies {
			if e.ID != was.energy || provedIn(s, e) {
				continue
			}
			x.prove(e, s, was.told)
			if !x.branchTaken(l) {
				x.set(key("energy", e.ID), "dead")
			}
		}
	}
}

func provedIn(s *model.Step, e *model.Energy) bool {
	for _, l := range s.Links {
		if l.Is("prove") && l.To == model.Named(e) {
			return true
		}
	}
	return false
}

// unbroken tells of a pause in a phase that is never broken off.
func (x *run) unbroken(ph *model.Phase) {
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
		s := x.get(k)
		bare := x.lockable(e) && (s == "isolated" || s == "isolated+")
		inHand := false
		for _, p := range x.pointsOf(e) {
			inHand = inHand || p.Kept && x.get(key("point", p.ID)) != "live" && s != "live" && s != "live+"
		}
		if x.hasEnergy(e) && (bare || inHand) {
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
			if f := fasteningKey(h.To.ID, p.ID); x.has(h.To.OnlyWith) && x.get(k) == "on" && x.get(f) == "loose" {
				x.fault("bad-pause", f)
			}
		}
	}
}
