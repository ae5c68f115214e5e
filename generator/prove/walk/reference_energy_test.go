package walk_test

import (
	"strings"

	"baybinder/generator/model"
)

func (x *run) energiesCut(n model.Named) (named *model.Energy, points []*model.Point, cut []*model.Energy) {
	switch n := n.(type) {
	case *model.Energy:
		named, points = n, x.pointsOf(n)
	case *model.Point:
		points = []*model.Point{n}
	}
	for _, e := range x.machine.Energies {
		if !x.hasEnergy(e) {
			continue
		}
		hit := e == named
		for _, p := range points {
			hit = hit || cuts(p, e)
		}
		if hit {
			cut = append(cut, e)
		}
	}
	return named, points, cut
}

func (x *run) energyAct(kind string, n model.Named, s *model.Step) {
	named, points, cut := x.energiesCut(n)
	if named != nil && !x.hasEnergy(named) {
		return
	}
	if p, is := n.(*model.Point); is && !x.hasPoint(p) {
		return
	}
	what := key("point", n.Base().ID)
	if named != nil {
		what = key("energy", named.ID)
	}
	switch kind {
	case "isolate":
		x.unaskedOff(points, cut)
		x.isolate(named, points, what)
		x.rise(cut)
	case "lock":
		if named == nil && !points[0].Lock {
			return
		}
		x.lock(points, what)
		x.rise(cut)
	case "release":
		x.judgeWait(named)
		x.release(named, what)
		x.waitOver(named)
	case "prove":
		if told := x.prove(named, s, false); !x.failedBeside(named, s, told) {
			x.set(what, "dead")
		}
	case "unlock":
		x.unlock(named, points, cut)
	case "restore":
		x.restore(points, cut, what)
	case "test-live":
		x.testLive(named, points, cut, s)
	}
}

func (x *run) isolate(named *model.Energy, points []*model.Point, what string) {
	for _, p := range points {
		k := key("point", p.ID)
		switch {
		case p.Kept:
			x.set(k, x.keptOut())
		case x.get(k) == "live":
			x.set(k, "isolated")
		}
	}
	if named == nil || len(points) > 0 {
		return
	}
	switch x.get(what) {
	case "live":
		x.set(what, "isolated")
	case "live+":
		x.set(what, "released")
	}
}

func (x *run) lock(points []*model.Point, what string) {
	for _, p := range points {
		k := key("point", p.ID)
		if x.get(k) == "live" {
			x.fault("energy-order", what)
		}
		switch {
		case p.Kept:
			x.set(k, x.keptOut())
		case p.Lock:
			x.set(k, "locked")
		default:
			x.set(k, "isolated")
		}
	}
}

func (x *run) unlock(named *model.Energy, points []*model.Point, cut []*model.Energy) {
	unlocked := map[*model.Energy]bool{}
	for _, p := range points {
		if k := key("point", p.ID); !p.Kept && x.get(k) == "locked" {
			for _, e := range p.Cuts {
				unlocked[e] = true
			}
			x.set(k, "isolated")
		}
	}
	for _, e := range cut {
		if e != named && !unlocked[e] || e == named && len(points) == 0 {
			continue
		}
		if e == named && x.onlyPlugs(e) {
			continue
		}
		k := key("energy", e.ID)
		switch x.get(k) {
		case "locked", "released", "dead":
			x.set(k, "isolated")
			if load(e) && x.heldByTool(e) {
				x.set(k, "isolated+")
				if !x.lockable(e) {
					x.set(k, "released")
				}
			}
		}
	}
}

// onlyPlugs says that what takes a lock of an energy's points is kept plugs.
func (x *run) onlyPlugs(e *model.Energy) bool {
	plugs := false
	for _, p := range x.pointsOf(e) {
		if p.Lock && !p.Kept {
			return false
		}
		plugs = plugs || p.Kept
	}
	return plugs
}

func (x *run) release(e *model.Energy, k string) {
	s := x.get(k)
	if s == "released" || s == "dead" {
		return
	}
	switch {
	case len(e.Points) == 0:
		x.set(k, "released")
	case load(e):
		x.earlyRelease(e, k)
	default:
		if !x.atRest(e, s) {
			x.fault("energy-order", k)
		}
		x.set(k, "released")
	}
}

func (x *run) earlyRelease(e *model.Energy, k string) {
	switch s := x.get(k); {
	case x.atRest(e, s):
		x.set(k, "released")
	case s == "live":
		x.set(k, "live+")
	case s == "isolated":
		x.set(k, "isolated+")
	}
}

// atRest says that an energy is isolated, and locked where it can be, and no
// further.
func (x *run) atRest(e *model.Energy, s string) bool {
	switch {
	case len(e.Points) == 0:
		return s == "live" || s == "live+" || s == "isolated" || s == "isolated+"
	case x.lockable(e):
		return s == "locked"
	}
	return s == "isolated"
}

// unaskedOff tells of holds that are not taken before what is on goes off.
func (x *run) unaskedOff(points []*model.Point, cut []*model.Energy) {
	for _, e := range cut {
		st := x.get(key("energy", e.ID))
		moves := len(e.Points) == 0
		for _, p := range points {
			moves = moves || cuts(p, e) && x.get(key("point", p.ID)) == "live"
		}
		if moves && (st == "live" || st == "live+") {
			x.unasked(x.machine.BeforeIsolate, e.BeforeIsolate)
		}
	}
}

func (x *run) unasked(lists ...[]model.Ref[model.Hold]) {
	for _, list := range lists {
		for _, h := range list {
			if k := key("asked", h.ID); x.get(k) != "taken" {
				x.fault("not-asked", k)
			}
		}
	}
}

// forgetAsked: something was opened after the holds.
func (x *run) forgetAsked() {
	for k := range x.state {
		if strings.HasPrefix(k, "asked:") {
			x.state[k] = ""
		}
	}
}

// deadAt are the energies that are dead where hands go in at a part: those that
// it says, and the one in it.
func deadAt(p *model.Part) []model.Ref[model.Energy] {
	out := append([]model.Ref[model.Energy]{}, p.ProveDead...)
	if p.Bears.To != nil {
		out = append(out, p.Bears)
	}
	return out
}
