package walk_test

import (
	"baybinder/generator/model"
)

func (x *run) fluidAct(kind string, f *model.Fluid) {
	k := key("fluid", f.ID)
	if !x.has(f.OnlyWith) {
		return
	}
	switch kind {
	case "drain":
		if x.get(k) == "drained" {
			return
		}
		x.set(k, "drained")
	case "fill":
		if !isLow(x.get(k)) {
			return
		}
		for _, p := range f.Lines {
			if x.has(p.OnlyWith) && x.get(key("part", p.ID)) != "on" {
				x.fault("act-order", key("part", p.ID))
			}
		}
		for _, e := range f.NeededBy {
			if len(e.To.Points) == 0 && x.hasEnergy(e.To) {
				x.uncontained(e.To)
			}
		}
		if x.get(k) == "drained" && f.Supply.To != nil && f.Capacity.Value > 0 {
			x.use(f.Supply.To, f.Capacity.Base())
		}
		if f.Bleed {
			x.set(k, "unbled")
		} else {
			x.set(k, "full")
		}
	case "bleed":
		if isLow(x.get(k)) {
			x.fault("act-order", k)
		}
		for _, e := range f.NeededBy {
			if st := x.get(key("energy", e.ID)); f.BledLive && x.hasEnergy(e.To) && st != "live" && st != "live+" {
				x.fault("act-order", key("energy", e.ID))
			}
		}
		x.set(k, "full")
	case "dry":
		x.set(key("spill", f.ID), "dry")
	}
}

func (x *run) toolAct(kind string, t *model.Tool, s *model.Step) {
	k := key("tool", t.ID)
	switch kind {
	case "place":
		if x.get(k) == "placed" {
			x.fault("act-order", k)
			return
		}
		x.undo(refUndo{kind: "tool", tool: t, id: k, step: s})
		x.set(k, "placed")
		x.holdLoads(t)
	case "clear":
		if x.get(k) != "placed" {
			x.fault("act-order", k)
			x.downAllTheSame(t)
			return
		}
		x.clear(t, k)
	}
}

// downAllTheSame is a load with nothing to switch off, whose tool is taken away
// without having been placed: it is live as the act says.
func (x *run) downAllTheSame(t *model.Tool) {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		k := key("energy", e.ID)
		if x.hasEnergy(e) && blockedBy(e, t) && !x.heldByTool(e) && len(e.Points) == 0 && (x.get(k) == "released" || x.get(k) == "dead") {
			x.set(k, "live")
		}
	}
}

func (x *run) holdLoads(t *model.Tool) {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		if !x.hasEnergy(e) || !blockedBy(e, t) {
			continue
		}
		k := key("energy", e.ID)
		switch s := x.get(k); {
		case x.atRest(e, s):
			x.set(k, "released")
		case load(e):
			x.earlyRelease(e, k)
		}
	}
}

func blockedBy(e *model.Energy, t *model.Tool) bool {
	for _, b := range e.BlockedBy {
		if b.To == t {
			return true
		}
	}
	return false
}

// testedHere says that the step has a test-live: of the energy.
func (x *run) testedHere(e *model.Energy) bool {
	s := x.frame().step
	if s == nil {
		return false
	}
	for _, l := range s.Links {
		if l.Kind.Name == "test-live" && l.ID == e.ID {
			return true
		}
	}
	return false
}

func (x *run) clear(t *model.Tool, k string) {
	x.set(k, "cleared")
	if x.machine == nil {
		return
	}
	var woken []*model.Energy
	for _, e := range x.machine.Energies {
		if !x.hasEnergy(e) || !blockedBy(e, t) || x.heldByTool(e) {
			continue
		}
		ek := key("energy", e.ID)
		switch x.get(ek) {
		case "released", "dead":
			if !x.testedHere(e) {
				x.openWhen(e)
			}
			switch {
			case len(e.Points) == 0:
				woken = append(woken, e)
				x.unasked(x.nowhere(x.machine.BeforeRestore), x.ofLoad(e))
				x.set(ek, "live")
			case x.lockable(e):
				x.set(ek, "locked")
			default:
				x.set(ek, "isolated")
			}
		case "live+":
			x.set(ek, "live")
		case "isolated+":
			x.set(ek, "isolated")
		}
	}
	x.backInOrder(woken)
	x.bared(t)
}

// nowhere are the holds that the procedure under way takes in none of its steps,
// where it restores nothing either.
func (x *run) nowhere(holds []model.Ref[model.Hold]) []model.Ref[model.Hold] {
	var out []model.Ref[model.Hold]
	for _, h := range holds {
		taken := false
		for _, s := range x.frame().p.Steps {
			for _, l := range s.Links {
				taken = taken || l.Kind.Act == model.Restore || (l.Is("hold") || l.Is("again")) && (l.Bad || l.To == model.Named(h.To))
			}
		}
		if !taken {
			out = append(out, h)
		}
	}
	return out
}

// ofLoad are the holds of an energy's own, where the procedure under way does not restore
// it by a link.
func (x *run) ofLoad(e *model.Energy) []model.Ref[model.Hold] {
	for _, s := range x.frame().p.Steps {
		for _, l := range s.Links {
			if l.Kind.Act == model.Restore && (l.Bad || l.To == model.Named(e)) {
				return nil
			}
		}
	}
	return e.BeforeRestore
}

// bared tells of energies that are on and round which nothing stands any more.
func (x *run) bared(t *model.Tool) {
	for _, e := range x.machine.Energies {
		for _, c := range e.ContainedBy {
			if st := x.get(key("energy", e.ID)); c.To == t && x.hasEnergy(e) && (st == "live" || st == "live+") {
				x.uncontained(e)
			}
		}
	}
}

func (x *run) settingAct(kind string, n *model.Setting, s *model.Step) {
	k := key("setting", n.ID)
	if !x.has(n.OnlyWith) {
		return
	}
	switch kind {
	case "alter":
		if x.get(k) == "altered" {
			x.fault("act-order", k)
			return
		}
		x.undo(refUndo{kind: "setting", set: n, id: k, step: s})
		x.set(k, "altered")
	case "reset":
		x.set(k, "reset")
	}
}
