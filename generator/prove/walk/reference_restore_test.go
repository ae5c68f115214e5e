package walk_test

import (
	"fmt"

	"baybinder/generator/model"
)

func (x *run) testLive(e *model.Energy, points []*model.Point, cut []*model.Energy, s *model.Step) {
	what := key("energy", e.ID)
	for _, p := range points {
		if !p.Kept && x.get(key("point", p.ID)) == "locked" {
			x.fault("energy-order", what)
		}
	}
	signed := false
	for _, l := range s.Links {
		if h, is := l.To.(*model.Hold); is && l.Is("hold") && (h.Kind == "sign" || h.Kind == "check") {
			signed = true
		}
	}
	crew := s.People
	if s.Phase.Lead != nil && crew == 0 {
		for _, l := range s.Phase.Lead.Links {
			if l.Is("people") {
				fmt.Sscan(l.ID, &crew)
			}
		}
	}
	if !signed || !meets(s, e.ID) || crew < 2 {
		x.fault("live-test", what)
	}
	for _, o := range cut {
		if st := x.get(key("energy", o.ID)); o == e || st != "live" && st != "live+" {
			x.uncontained(o)
		}
	}
	x.comeOn(points, cut)
}

// rise takes energies as far as their points are.
func (x *run) rise(cut []*model.Energy) {
	for _, e := range cut {
		k := key("energy", e.ID)
		if len(e.Points) == 0 {
			continue
		}
		switch s := x.energyFromPoints(e); {
		case s == "live":
		case x.get(k) == "live" || x.get(k) == "isolated" && s == "locked":
			x.set(k, s)
		case x.get(k) == "live+" || x.get(k) == "isolated+":
			if s == "locked" || !x.lockable(e) {
				x.set(k, "released")
			} else {
				x.set(k, "isolated+")
			}
		}
	}
}

func (x *run) restore(points []*model.Point, cut []*model.Energy, what string) {
	isLocked := false
	for _, p := range points {
		isLocked = isLocked || !p.Kept && x.get(key("point", p.ID)) == "locked"
	}
	for _, e := range cut {
		st := x.get(key("energy", e.ID))
		if len(e.Points) > 0 && x.lockable(e) && st != "live" && st != "live+" {
			all := !x.onlyPlugs(e)
			for _, p := range x.pointsOf(e) {
				all = all && (!p.Lock || p.Kept || x.get(key("point", p.ID)) == "locked")
			}
			isLocked = isLocked || all
		}
	}
	if isLocked {
		x.fault("energy-order", what)
	}
	var woken []*model.Energy
	for _, e := range cut {
		if s := x.get(key("energy", e.ID)); s != "live" && s != "live+" {
			woken = append(woken, e)
			x.openWhen(e)
			x.unasked(x.machine.BeforeRestore, e.BeforeRestore)
			x.uncontained(e)
		}
	}
	x.comeOn(points, cut)
	x.backInOrder(woken)
}

// backInOrder looks for what should have come back before the energies that did.
func (x *run) backInOrder(woken []*model.Energy) {
	for _, e := range woken {
		for _, first := range x.machine.RestoreOrder {
			if first.To == e {
				break
			}
			s := x.get(key("energy", first.ID))
			if x.inRestoreOrder(e) && x.hasEnergy(first.To) && s != "live" && s != "live+" {
				x.fault("energy-order", key("energy", first.ID))
			}
		}
	}
}

func (x *run) inRestoreOrder(e *model.Energy) bool {
	for _, o := range x.machine.RestoreOrder {
		if o.To == e {
			return true
		}
	}
	return false
}

// comeOn makes points live, and all that they cut.
func (x *run) comeOn(points []*model.Point, cut []*model.Energy) {
	for _, p := range points {
		x.set(key("point", p.ID), "live")
	}
	for _, e := range cut {
		k := key("energy", e.ID)
		switch {
		case load(e) && len(e.Points) > 0 && x.heldByTool(e):
			x.set(k, "live+")
		case x.get(k) != "live+":
			x.set(k, "live")
		}
	}
}

func names[T any](refs []model.Ref[T], e *T) bool {
	for _, r := range refs {
		if r.To == e {
			return true
		}
	}
	return false
}

// openWhen looks for what is open when an energy comes back.
func (x *run) openWhen(e *model.Energy) {
	x.alteredWhen(e)
	for _, p := range x.machine.Parts {
		if !x.has(p.OnlyWith) || !names(deadAt(p), e) && !names(p.Guards, e) {
			continue
		}
		if x.get(key("part", p.ID)) != "on" {
			x.fault("restored-while-open", key("part", p.ID))
			continue
		}
		for _, h := range p.HeldBy {
			if k := fasteningKey(h.To.ID, p.ID); x.has(h.To.OnlyWith) && x.get(k) == "loose" {
				x.fault("restored-while-open", k)
			}
		}
	}
	for _, f := range x.machine.Fluids {
		st := x.get(key("fluid", f.ID))
		airInside := st == "unbled" && f.Bleed && !f.BledLive
		if x.has(f.OnlyWith) && names(f.NeededBy, e) && (isLow(st) || airInside) {
			x.fault("restored-while-open", key("fluid", f.ID))
		}
	}
}

// uncontained tells of an energy that comes on with nothing round it.
func (x *run) uncontained(e *model.Energy) {
	for _, t := range e.ContainedBy {
		if x.get(key("tool", t.ID)) == "placed" {
			return
		}
	}
	if len(e.ContainedBy) > 0 {
		x.fault("restored-while-open", key("energy", e.ID))
	}
}

func (x *run) alteredWhen(e *model.Energy) {
	for _, s := range x.machine.Settings {
		if x.has(s.OnlyWith) && names(s.NeededBy, e) && x.get(key("setting", s.ID)) == "altered" {
			x.fault("restored-while-open", key("setting", s.ID))
		}
	}
}

func isLow(s string) bool { return s == "low" || s == "drained" }
