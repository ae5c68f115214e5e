package walk_test

import (
	"baybinder/generator/model"
)

func (x *run) expected(p *model.Procedure) map[string]string {
	s := map[string]string{}
	x.state = s
	named := map[string]bool{}
	for _, e := range fastenersLast(p.Expects) {
		x.setNamed(e)
		named[e.Thing.Base().ID] = true
	}
	if x.machine == nil {
		return s
	}
	for _, pt := range x.machine.Points {
		if named[pt.ID] {
			continue
		}
		if n := x.pointNeed(pt, p); n != "live" {
			s[key("point", pt.ID)] = n
		}
	}
	for _, e := range x.machine.Energies {
		if named[e.ID] || len(x.pointsOf(e)) == 0 {
			continue
		}
		if st := x.energyFromPoints(e); st != "live" {
			s[key("energy", e.ID)] = st
		} else if load(e) && x.heldByTool(e) {
			s[key("energy", e.ID)] = "live+"
		}
	}
	return s
}

func fastenersLast(list []model.State) []model.State {
	var first, last []model.State
	for _, s := range list {
		if _, is := s.Thing.(*model.Fastener); is {
			last = append(last, s)
		} else {
			first = append(first, s)
		}
	}
	return append(first, last...)
}

// setNamed puts what a line of expects names into its state.
func (x *run) setNamed(e model.State) {
	switch n := e.Thing.(type) {
	case *model.Energy:
		x.state[key("energy", n.ID)] = x.wordOf(e)
	case *model.Point:
		x.state[key("point", n.ID)] = x.wordOf(e)
	case *model.Part:
		x.state[key("part", n.ID)] = x.wordOf(e)
		for _, h := range n.HeldBy {
			if x.wordOf(e) == "off" {
				x.state[fasteningKey(h.To.ID, n.ID)] = "loose"
			} else {
				x.state[fasteningKey(h.To.ID, n.ID)] = "tight"
			}
		}
	case *model.Fastener:
		if len(n.Holds) == 0 {
			x.state[key("fastener", n.ID)] = x.wordOf(e)
		}
		for _, p := range n.Holds {
			x.state[fasteningKey(n.ID, p.ID)] = x.wordOf(e)
		}
	case *model.Fluid:
		x.state[key("fluid", n.ID)] = x.wordOf(e)
	case *model.Tool:
		x.state[key("tool", n.ID)] = x.wordOf(e)
	case *model.Setting:
		x.state[key("setting", n.ID)] = x.wordOf(e)
	}
}

func (x *run) pointNeed(pt *model.Point, p *model.Procedure) string {
	need := "live"
	for _, e := range p.Expects {
		en, is := e.Thing.(*model.Energy)
		if !is || !cuts(pt, en) {
			continue
		}
		switch x.wordOf(e) {
		case "locked", "released", "dead":
			if pt.Kept {
				need = x.keptOut()
			} else if pt.Lock {
				need = "locked"
			} else if need == "live" {
				need = "isolated"
			}
		case "isolated":
			if pt.Kept {
				need = x.keptOut()
			} else if need == "live" {
				need = "isolated"
			}
		}
	}
	return need
}

func cuts(pt *model.Point, e *model.Energy) bool {
	for _, p := range e.Points {
		if p.To == pt {
			return true
		}
	}
	return false
}

func (x *run) energyFromPoints(e *model.Energy) string {
	locks, shut := 0, 0
	for _, p := range x.pointsOf(e) {
		s := x.get(key("point", p.ID))
		if s == "live" {
			return "live"
		}
		if p.Lock {
			locks++
			if s == "locked" {
				shut++
			}
		}
	}
	if locks > 0 && locks == shut {
		return "locked"
	}
	return "isolated"
}

func load(e *model.Energy) bool {
	return e.Kind == "gravity" || e.Kind == "spring" || e.Kind == "motion"
}

func (x *run) lockable(e *model.Energy) bool {
	for _, p := range x.pointsOf(e) {
		if p.Lock {
			return true
		}
	}
	return false
}

func (x *run) heldByTool(e *model.Energy) bool {
	for _, t := range e.BlockedBy {
		if x.get(key("tool", t.To.ID)) == "placed" {
			return true
		}
	}
	return false
}
