package walk_test

import "baybinder/generator/model"

// countLocks counts the points that stand locked now, save those that did at the
// start: their locks are not this job's.
func (x *run) countLocks() {
	if x.machine == nil {
		return
	}
	n := 0
	for _, p := range x.machine.Points {
		if k := key("point", p.ID); !p.Kept && x.get(k) == "locked" && x.startOf(k) != "locked" {
			n++
		}
	}
	x.padlocks = max(x.padlocks, n)
}

func (x *run) act(l *model.Link, s *model.Step) {
	defer x.countLocks()
	if l.Is("hold") || l.Is("again") {
		x.hold(l, s)
		return
	}
	if l.Is("noted") {
		x.asks(l, l.To.(*model.Hold))
	}
	switch n := l.To.(type) {
	case *model.Energy, *model.Point:
		x.energyAct(l.Kind.Name, n, s)
	case *model.Part:
		x.partAct(l.Kind.Name, n, s)
	case *model.Fastener:
		x.fastenerAct(l, n, s)
	case *model.Fluid:
		x.fluidAct(l.Kind.Name, n)
	case *model.Group:
		if l.Is("mark") {
			x.set(key("group", n.ID), "marked")
		}
	case *model.Tool:
		x.toolAct(l.Kind.Name, n, s)
	case *model.Setting:
		x.settingAct(l.Kind.Name, n, s)
	case *model.Procedure:
		if l.Is("do") {
			x.call(l, n)
		}
	}
	if l.Is("reverse") && !x.dead[l] {
		x.reverse(l, s)
	}
}
