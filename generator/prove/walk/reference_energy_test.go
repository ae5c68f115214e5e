package walk_test

import (
	"fmt"
	"math"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

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
	if p, is := n.(*model.Point); is && !x.has(p.OnlyWith) {
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
		x.prove(named, s)
		if !x.failedBeside(named, s) {
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

// failedBeside says that a measurement beside a proof failed; again: may take
// it anew.
func (x *run) failedBeside(e *model.Energy, s *model.Step) bool {
	for _, l := range s.Links {
		if (l.Is("hold") || l.Is("again")) && x.judges(l.To.(*model.Hold), e) && x.branchTaken(l) {
			k := x.frame().path + "|" + l.ID
			x.lost[k] = append(x.lost[k], e.ID)
			return true
		}
	}
	return false
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

func (x *run) prove(e *model.Energy, s *model.Step) {
	k := key("energy", e.ID)
	st := x.get(k)
	if st != "dead" {
		x.judgeWait(e)
	}
	switch {
	case st == "released" || st == "dead":
	case len(e.Points) > 0 && !x.atRest(e, st):
		x.fault("energy-order", k)
		return
	case e.Stored.Yes:
		x.fault("not-released", k)
		return
	}
	if code := x.proofOf(e, s); code != "" {
		x.fault(code, k)
	}
}

// proofOf is what is wrong with the holds beside a proof.
func (x *run) proofOf(e *model.Energy, s *model.Step) string {
	limits := x.m.Shop.Limits
	safe := limits.SafeVoltageAC
	if e.Voltage.Flow == quantity.DC {
		safe = limits.SafeVoltageDC
	}
	dangerous := e.Kind == "electric" && e.Voltage.Value != 0 && (e.Voltage.Base() > safe.Base() ||
		e.Voltage.Flow == quantity.AC && e.Stored.Yes && e.Voltage.Base()*math.Sqrt2 > limits.SafeVoltageDC.Base())
	some, measured, good, proved := false, false, false, false
	for _, l := range s.Links {
		h, is := l.To.(*model.Hold)
		if !is || !l.Is("hold") && !l.Is("again") || h.Of.ID != e.ID {
			continue
		}
		some = some || h.Kind == "look" || h.Kind == "check"
		if h.Kind != "measure" {
			continue
		}
		measured = true
		low, high := h.Limit.Bounds()
		ok := true
		switch dim := h.Limit.Unit.Dimension(); {
		case dangerous:
			ok = dim == quantity.Voltage && h.Limit.Flow == e.Voltage.Flow && high <= safe.Base()
		case e.Kind == "electric" && dim == quantity.Voltage:
			ok = h.Limit.Flow == quantity.AC && high <= limits.SafeVoltageAC.Base() || h.Limit.Flow != quantity.AC && high <= limits.SafeVoltageDC.Base()
		case e.Kind == "pressure" && dim == quantity.Pressure:
			ok = high <= 0.5e5
		case e.Kind == "vacuum" && dim == quantity.Pressure:
			ok = low >= -0.5e5
		case e.Kind == "heat" && dim == quantity.Temperature:
			ok = high <= 48+273.15
		}
		good = good || ok
		proved = proved || ok && h.ProvedOn.ID != ""
	}
	switch {
	case !good && (measured || dangerous || !some):
		return "proof-without-measure"
	case dangerous && !proved:
		return "tester-not-proved"
	}
	return ""
}

// judges says that a hold beside a proof judges it.
func (x *run) judges(h *model.Hold, e *model.Energy) bool {
	if h.Of.ID == "" || h.Of.ID == e.ID {
		return true
	}
	for _, o := range x.machine.Energies {
		if o.ID == h.Of.ID {
			return false
		}
	}
	for _, f := range x.machine.Fluids {
		if f.ID == h.Of.ID {
			return false
		}
	}
	return true
}

func meets(s *model.Step, of string) bool {
	links := s.Links
	if s.Phase.Lead != nil {
		links = append(append([]*model.Link{}, links...), s.Phase.Lead.Links...)
	}
	for _, l := range links {
		if h, is := l.To.(*model.Hazard); is && h.Of.ID == of {
			return true
		}
	}
	return false
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

func names(refs []model.Ref[model.Energy], e *model.Energy) bool {
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

// deadAt are the energies that are dead where hands go in at a part: those that
// it says, and the one in it.
func deadAt(p *model.Part) []model.Ref[model.Energy] {
	out := append([]model.Ref[model.Energy]{}, p.ProveDead...)
	if p.Bears.To != nil {
		out = append(out, p.Bears)
	}
	return out
}

func (x *run) alteredWhen(e *model.Energy) {
	for _, s := range x.machine.Settings {
		if x.has(s.OnlyWith) && names(s.NeededBy, e) && x.get(key("setting", s.ID)) == "altered" {
			x.fault("restored-while-open", key("setting", s.ID))
		}
	}
}

func isLow(s string) bool { return s == "low" || s == "drained" }
