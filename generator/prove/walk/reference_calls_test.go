package walk_test

import (
	"fmt"
	"maps"
	"strings"

	"baybinder/generator/model"
)

func (x *run) call(l *model.Link, callee *model.Procedure) {
	if m := callee.For.To; m != nil && m != x.machine {
		x.fault("wrong-machine", "call")
		return
	}
	x.compare(callee)
	x.countLocks()
	if len(x.frames) == 1 {
		x.noteBegan()
	}
	path := fmt.Sprintf("%s>%d", x.frame().path, l.At.Start)
	before := maps.Clone(x.state)
	openers := maps.Clone(x.opened)
	x.exclude, x.from = append(x.exclude, x.toldThere(callee)), append(x.from, path)
	x.procedure(callee, path)
	x.exclude, x.from = x.exclude[:len(x.exclude)-1], x.from[:len(x.from)-1]
	x.dropWaiting(path)
	x.waitsAfterCall(callee, path)
	if len(x.frames) == 1 { // nobody else asks what is owed
		inside := x.reference.alone(callee, x.machine, x.w, path)
		for k := range inside.state {
			x.owed[owing{l, k}] = inside.partLeftWrong(callee, k)
			_, named := x.leavesWord(callee, k)
			x.below[k] = x.below[k] || !named && x.owed[owing{l, k}]
		}
	}
	for id := range x.opened {
		if k := key("part", id); before[k] != "" && before[k] != "on" && x.get(k) == "off" {
			x.opened[id] = openers[id] // off before and after: still by the same link
		}
	}
}

// toldThere is what a callee has when it is walked alone on this unit, in some
// outcome.
func (x *run) toldThere(callee *model.Procedure) map[raw]bool {
	key := fmt.Sprintf("%s %p %v", callee.ID, x.machine, x.w.options)
	if there, known := x.reference.there[key]; known {
		return there
	}
	there := map[raw]bool{}
	w := &refWorld{options: x.w.options, known: map[string]int{}}
	for n := 0; ; n++ {
		for f := range x.reference.alone(callee, x.machine, w, "").raws {
			there[f] = true
		}
		if !w.advance() {
			break
		}
		if x.tooMany = x.tooMany || n > mostWorlds; x.tooMany {
			break
		}
	}
	x.reference.there[key] = there
	return there
}

// dropWaiting forgets what was tightened too early in a call that is over.
func (x *run) dropWaiting(path string) {
	var rest []refWaiting
	for _, w := range x.waiting {
		if w.path != path {
			rest = append(rest, w)
		}
	}
	x.waiting = rest
}

// owing is a thing that a call left as its callee should not: that is told
// there, and not at the end of the caller.
type owing struct {
	link  *model.Link
	thing string
}

// partLeftWrong says that a thing is left otherwise than the procedure says.
func (x *run) partLeftWrong(p *model.Procedure, k string) bool {
	if word, named := x.leavesWord(p, k); named {
		return x.there(k) && !sameWord(k, word, x.get(k))
	}
	return x.wrongAtEnd(k) || x.below[k]
}

// openedNow notes that a line is off because a procedure says so.
func (x *run) openedNow(k, word string) {
	if id, is := strings.CutPrefix(k, "part:"); is && word == "off" {
		x.opened[id] = x.wayHere()
	}
}

func (x *run) wayHere() []openedAt {
	var path []openedAt
	for _, f := range x.frames {
		path = append(path, openedAt{f.link, f.step})
	}
	return path
}

// keysOf are the things that a line of leaves names.
func keysOf(s model.State) []string {
	switch n := s.Thing.(type) {
	case *model.Energy:
		return []string{key("energy", n.ID)}
	case *model.Point:
		return []string{key("point", n.ID)}
	case *model.Part:
		return []string{key("part", n.ID)}
	case *model.Fastener:
		if len(n.Holds) == 0 {
			return []string{key("fastener", n.ID)}
		}
		var out []string
		for _, p := range n.Holds {
			out = append(out, fasteningKey(n.ID, p.ID))
		}
		return out
	case *model.Fluid:
		return []string{key("fluid", n.ID)}
	case *model.Tool:
		return []string{key("tool", n.ID)}
	case *model.Setting:
		return []string{key("setting", n.ID)}
	}
	return nil
}

// there says that a thing is there on the unit.
func (x *run) there(k string) bool {
	kind, id, _ := strings.Cut(k, ":")
	switch kind {
	case "energy":
		return x.hasEnergy(x.machine.Find(id).(*model.Energy))
	case "part":
		return x.has(x.machine.Find(id).(*model.Part).OnlyWith)
	case "fastening":
		fast, part, _ := strings.Cut(id, "@")
		return x.hasAt(x.machine.Find(fast).(*model.Fastener), x.machine.Find(part).(*model.Part))
	case "point":
		return x.hasPoint(x.machine.Find(id).(*model.Point))
	case "fastener":
		return x.has(x.machine.Find(id).(*model.Fastener).OnlyWith)
	case "fluid", "spill":
		return x.has(x.machine.Find(id).(*model.Fluid).OnlyWith)
	case "setting":
		return x.has(x.machine.Find(id).(*model.Setting).OnlyWith)
	}
	return true
}

// leavesWord is what a procedure says of a thing that it leaves.
func (x *run) leavesWord(p *model.Procedure, k string) (string, bool) {
	_, id, _ := strings.Cut(k, ":")
	fast, _, isFastening := strings.Cut(id, "@")
	for _, s := range p.Leaves {
		kind, _, _ := strings.Cut(k, ":")
		if s.ID == id && kind != "spill" && kind != "gap" || isFastening && s.ID == fast {
			return x.wordOf(s), true
		}
	}
	return "", false
}

// sameWord says that a state is what a word says.
func sameWord(k, word, state string) bool {
	switch state {
	case "live+":
		state = "live"
	case "isolated+":
		state = "isolated"
	case "capped":
		state = "off"
	case "drained":
		state = "low"
	}
	return word == state
}

// compare compares how things stand with what a callee expects.
func (x *run) compare(callee *model.Procedure) {
	for _, e := range fastenersLast(callee.Expects) {
		if len(x.frames) == 1 {
			x.noteBegan()
		}
		before := maps.Clone(x.state)
		x.compareWith(callee, e)
		for k, now := range x.state { // it is not so, and not left so either
			if len(x.frames) == 1 && before[k] != now {
				x.below[k] = true
			}
		}
	}
}

// compareWith compares one thing, and counts it as met.
func (x *run) compareWith(callee *model.Procedure, e model.State) {
	switch n := e.Thing.(type) {
	case *model.Energy:
		k := key("energy", n.ID)
		if !x.hasEnergy(n) || sameWord(k, x.wordOf(e), x.get(k)) {
			return
		}
		x.fault("state-mismatch", k)
		x.set(k, x.wordOf(e))
		if word := x.wordOf(e); word == "released" || word == "dead" {
			x.waitOver(n)
		}
		for _, p := range n.Points {
			if !namesThing(callee.Expects, p.To.ID) {
				x.set(key("point", p.To.ID), x.pointNeed(p.To, callee))
			}
			x.restand(p.To, callee)
		}
	case *model.Point:
		k := key("point", n.ID)
		if !x.hasPoint(n) || x.get(k) == x.wordOf(e) {
			return
		}
		x.fault("state-mismatch", k)
		x.set(k, x.wordOf(e))
		x.restand(n, callee)
	case *model.Part:
		k := key("part", n.ID)
		if !x.has(n.OnlyWith) || sameWord(k, x.wordOf(e), x.get(k)) {
			return
		}
		x.fault("state-mismatch", k)
		x.set(k, x.wordOf(e))
		x.openedNow(k, x.wordOf(e))
		for _, h := range n.HeldBy {
			if x.wordOf(e) == "off" {
				x.set(fasteningKey(h.To.ID, n.ID), "loose")
			} else {
				x.set(fasteningKey(h.To.ID, n.ID), "tight")
			}
		}
	case *model.Fastener:
		x.compareFastener(n, x.wordOf(e))
	case *model.Fluid:
		x.compareOne(key("fluid", n.ID), x.wordOf(e))
	case *model.Tool:
		x.compareOne(key("tool", n.ID), x.wordOf(e))
	case *model.Setting:
		x.compareOne(key("setting", n.ID), x.wordOf(e))
	}
}

func namesThing(list []model.State, id string) bool {
	for _, s := range list {
		if s.ID == id {
			return true
		}
	}
	return false
}

func (x *run) compareOne(k, word string) {
	if x.there(k) && !sameWord(k, word, x.get(k)) {
		x.fault("state-mismatch", k)
		x.set(k, word)
	}
}

func (x *run) compareFastener(f *model.Fastener, word string) {
	if len(f.Holds) == 0 {
		x.compareOne(key("fastener", f.ID), word)
		return
	}
	if x.anyLoose(f) != (word == "loose") {
		x.fault("state-mismatch", key("fastener", f.ID))
		for _, p := range f.Holds {
			x.set(fasteningKey(f.ID, p.ID), word)
		}
	}
}

func (x *run) anyLoose(f *model.Fastener) bool {
	for _, p := range f.Holds {
		if x.hasAt(f, p) && x.get(key("part", p.ID)) == "on" && x.get(fasteningKey(f.ID, p.ID)) == "loose" {
			return true
		}
	}
	return false
}

// restand puts energies that the callee does not name where their points are.
func (x *run) restand(pt *model.Point, callee *model.Procedure) {
	for _, e := range x.machine.Energies {
		if !cuts(pt, e) || namesThing(callee.Expects, e.ID) || !x.hasEnergy(e) {
			continue
		}
		k := key("energy", e.ID)
		base, now := x.energyFromPoints(e), x.get(k)
		switch {
		case base == "live":
			if now != "live+" {
				x.set(k, "live")
			}
		case base == "isolated" && x.lockable(e) && (now == "locked" || now == "released" || now == "dead"):
			x.set(k, "isolated")
		default:
			x.rise([]*model.Energy{e})
		}
	}
}
