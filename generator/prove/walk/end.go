package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be left undone.
var (
	LeftIsolated = rule{
		Code:  "left-isolated",
		Title: "Left isolated",
		Why:   "The next one to the machine finds it dead and looks for a fault, or takes off a lock that means something.",
		Mend:  "Unlock and restore it, or say in leaves: that it stays so.",
	}
	LeftOff = rule{
		Code:  "left-off",
		Title: "Left off",
		Why:   "A cover on the bench is the commonest slip of all.",
		Mend:  "Put it back, or say in leaves: that it stays off.",
	}
	LeftLoose = rule{
		Code:  "left-loose",
		Title: "Left loose",
		Why:   "A fastener that is run in by hand looks like a tight one.",
		Mend:  "Tighten it, or say in leaves: that it stays loose.",
	}
	LeftInPlace = rule{
		Code:  "left-in-place",
		Title: "A tool left in place",
		Why:   "A pin, a chock or a jumper that stays behind breaks the machine at its first move.",
		Mend:  "Write clear: where the tool comes out, or say in leaves: that it stays.",
	}
	LeftAltered = rule{
		Code:  "left-altered",
		Title: "A setting left altered",
		Why:   "A bridged interlock or a raised limit does not show.",
		Mend:  "Write reset:, or say in leaves: that it stays altered.",
	}
	LeftLow = rule{
		Code:  "left-low",
		Title: "A fluid left low",
		Why:   "A pump that runs dry is a pump to replace.",
		Mend:  "Write fill: once the lines are on, or say in leaves: that it stays low.",
	}
	NotBled = rule{
		Code:  "not-bled",
		Title: "A circuit left with air in it",
		Why:   "Air in a brake or a ram is found when it matters.",
		Mend:  "Write bleed: after the circuit is filled, or say in leaves: that it is unbled.",
	}
)

// finish judges how everything is left.
func (w *walk) finish() {
	if w.free {
		return
	}
	w.tellLooks()
	for _, x := range w.lay.slow {
		if w.seen[x] {
			w.judgeWaits(x, w.And(w.present(x), w.Is(w.get(x), states(released))))
		}
	}
	if !w.leavesRead() {
		return
	}
	for _, s := range w.p.Leaves {
		if !s.Unknown {
			w.leaves(s)
		}
	}
	told := len(w.issues)
	for _, x := range w.touched {
		w.leaveUndone(x)
	}
	w.left = slices.DeleteFunc(slices.Clone(w.issues[told:]), func(i issue) bool {
		return w.toldElsewhere(debt{rule: i.rule, of: w.spot(i.thing), at: i.at.link})
	})
	slices.SortStableFunc(w.left, func(a, b issue) int { return a.at.link.At.Start - b.at.link.At.Start })
	w.issues = w.issues[:told]
}

// leavesRead says that every line of leaves could be read as naming something.
func (w *walk) leavesRead() bool {
	for _, s := range w.p.Leaves {
		if s.Unknown && s.Thing == nil {
			return false
		}
	}
	return !w.p.Lost("leaves")
}

// leaves compares a line of leaves with what the walk found.
func (w *walk) leaves(s model.State) {
	at := event{link: &model.Link{At: s.At}}
	if f, is := s.Thing.(*model.Fastener); is && len(f.Holds) > 0 {
		w.leavesFastener(f, s, at)
		return
	}
	x := w.lay.of[s.Thing]
	bad := w.And(w.present(x), w.unlike(x, w.meant(s, w.aloneHere())))
	w.at(at, func() { w.find(&StateMismatch, x, bad, "not %s at the end, as leaves says", stands(s.Word)) })
}

func (w *walk) leavesFastener(f *model.Fastener, s model.State, at event) {
	some := diagram.No
	for _, x := range w.named(f) {
		some = w.Or(some, w.And(w.present(x), w.looseAt(x, w.lay.of[w.lay.things[x].part])))
	}
	bad := some
	if s.Word == "loose" {
		bad = w.Not(some)
	}
	if named := w.named(f); len(named) > 0 {
		w.at(at, func() {
			w.find(&StateMismatch, named[0], bad, "not %s at the end, as leaves says", stands(s.Word))
		})
	}
}

// leaveUndone judges a thing that leaves does not name.
func (w *walk) leaveUndone(x thing) {
	if w.speaksOf(x) {
		return
	}
	wrong := w.leftOpen(x, w.state[x])
	if wrong == diagram.No {
		return
	}
	for to, r := range leftRules(w.lay.things[x].sort) {
		here := w.And(wrong, w.Is(w.state[x], states(diagram.Func(to))))
		if r == nil || here == diagram.No {
			continue
		}
		w.each(w.began[x], here, func(e event, where diagram.Func) {
			if e.link != nil {
				w.leftBy(e, r, x, where)
			} else if w.lay.things[x].sort == aFastening { // loose from the start: its part went on over it
				w.each(w.last[w.lay.of[w.lay.things[x].part]], where, func(e event, where diagram.Func) { w.leftBy(e, r, x, where) })
			}
		})
	}
}

// leftBy tells of a thing that a link left undone, but for what is told in
// something that was performed.
func (w *walk) leftBy(e event, r *rule, x thing, where diagram.Func) {
	if e.link == nil {
		return
	}
	told := w.And(where, w.Or(w.owed[owed{e.link, x}], w.toldBelow[x]))
	if w.possible(told) {
		w.counted = append(w.counted, debt{r, w.spot(x), e.link, true})
	}
	where = w.AndNot(where, told)
	w.at(e, func() { w.find(r, x, where, "") })
}

// leftRules are the rules by the state that a thing is left in.
func leftRules(s sort) [diagram.MaxKids]*rule {
	switch s {
	case anEnergy, aPoint:
		r := &LeftIsolated
		return [diagram.MaxKids]*rule{isolated: r, locked: r, released: r, dead: r, blocked: r}
	case aPart:
		return [diagram.MaxKids]*rule{off: &LeftOff, capped: &LeftOff}
	case aFastening, aFastener:
		return [diagram.MaxKids]*rule{loose: &LeftLoose}
	case aFluid:
		return [diagram.MaxKids]*rule{low: &LeftLow, drained: &LeftLow, unbled: &NotBled}
	case aTool:
		return [diagram.MaxKids]*rule{set: &LeftInPlace}
	case aSetting:
		return [diagram.MaxKids]*rule{set: &LeftAltered}
	case aSpill, aGroup, aGap, anAsked:
	}
	return [diagram.MaxKids]*rule{}
}

// speaksOf says that leaves names the thing.
func (w *walk) speaksOf(x thing) bool {
	for _, s := range w.p.Leaves {
		if s.Thing == nil {
			continue
		}
		for _, y := range w.named(s.Thing) {
			if x == y {
				return true
			}
		}
	}
	return false
}

// leftOpen says where a thing is neither whole nor as it was at the start.
func (w *walk) leftOpen(x thing, f diagram.Func) diagram.Func {
	info := w.lay.things[x]
	open := w.And(w.present(x), w.Is(f, ^(w.lay.alike(x, 0)|states(unknown))))
	open = w.AndNot(open, w.as(x, f, w.home[x]))
	switch info.sort {
	case aFastening:
		part := w.lay.of[info.part]
		if w.home[x] == loose && w.home[part] != on {
			open = w.And(w.present(x), w.Is(f, states(loose)))
		}
		return w.And(open, w.Is(w.homely(w.get(part)), states(on)))
	case anEnergy:
		e := info.named.(*model.Energy)
		if warmsUp(e) {
			return diagram.No
		}
		open = w.AndNot(open, w.Or(w.leftAtPoint(e), w.heldByWhatIsLeft(e)))
	case aPoint:
		if info.named.Base().Lost(model.Cutting) {
			return diagram.No // what else it cuts may be left so
		}
		for _, e := range info.named.(*model.Point).Cuts {
			y := w.lay.of[e]
			open = w.AndNot(open, w.And(w.present(y), w.Is(w.homely(w.get(y)), notLive|states(unknown))))
		}
	case aPart, aFastener, aFluid, aSpill, aSetting, aGroup, aGap, aTool, anAsked:
	}
	return open
}

// leftAtPoint says where leaves names a point of an energy as off: the energy
// stands as its points do.
func (w *walk) leftAtPoint(e *model.Energy) diagram.Func {
	f := diagram.No
	for _, p := range w.lay.energy[e].points {
		if to, named := w.leavesSays(w.lay.of[p]); named && to != live {
			f = w.Or(f, w.has(p))
		}
	}
	return f
}

// heldByWhatIsLeft says where a load with nothing to switch off is held by a tool
// that is left in place and should not be: that is told of the tool.
func (w *walk) heldByWhatIsLeft(e *model.Energy) diagram.Func {
	f := diagram.No
	r := w.lay.energy[e]
	if len(r.points) > 0 {
		return f
	}
	for _, t := range r.blockers {
		if x := w.lay.of[t]; !w.speaksOf(x) {
			f = w.Or(f, w.leftOpen(x, w.get(x)))
		}
	}
	return f
}

// leftWrong says where a thing that is left so, walked alone, is left otherwise
// than it should be: as leaves says, else whole or as it was. That is told
// there, and not at the end of a caller.
func (w *walk) leftWrong(x thing, f diagram.Func) diagram.Func {
	f = w.homely(f)
	want, named := w.leavesSays(x)
	switch {
	case !w.leavesRead(), w.speaksOf(x) && !named:
		return diagram.Yes
	case named:
		return w.And(w.present(x), w.Is(f, ^w.lay.alike(x, want)&^states(unknown)))
	}
	return w.Or(w.leftOpen(x, f), w.toldBelow[x])
}

// leavesSays is the state in which leaves says that a thing is left.
func (w *walk) leavesSays(x thing) (diagram.Func, bool) {
	for _, s := range w.p.Leaves {
		if s.Thing == nil || s.Unknown {
			continue
		}
		for _, y := range w.named(s.Thing) {
			if x == y {
				return w.meant(s, w.aloneHere()), true
			}
		}
	}
	return 0, false
}

// warmsUp says that an energy is a heat with nothing to switch on: what has cooled
// is hot again once the machine runs, and nobody brings it back.
func warmsUp(e *model.Energy) bool {
	return e.Kind == "heat" && len(e.Points) == 0 && !e.Lost("kind", "points")
}
