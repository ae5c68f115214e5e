package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong between procedures.
var (
	StateMismatch = rule{
		Code:  "state-mismatch",
		Title: "Things are not as expects or leaves says",
		Why:   "Two procedures that meet must agree on how the machine stands where they meet.",
		Mend:  "At a call, bring it there in a step before. At leaves:, bring it there with links in the steps (isolate:, remove: …). Or correct what expects: or leaves: says.",
	}
	WrongMachine = rule{
		Code:  "wrong-machine",
		Title: "A procedure for another machine",
		Why:   "Its points and parts are not those of this machine.",
		Mend:  "Call a procedure for this machine, or one that is for none.",
	}
)

// call performs a whole procedure: it compares what that expects, tells of
// what goes wrong only because of how things stand here, and takes over how
// they stand afterwards.
func (w *walk) call(l *model.Link, g pathCondition) {
	callee, _ := l.To.(*model.Procedure)
	if callee == nil {
		w.tookHold(nil, g.Func)
		w.havoc(g.Func, everySort...)
		return
	}
	if m := callee.For.To; m != nil && m != w.lay.machine {
		w.find(&WrongMachine, nothing, g.Func, "%s is for the %s", callee.Label(), m.Label())
		w.havoc(g.Func, everySort...)
		return
	}
	sum := w.shared.summary(callee, w.lay)
	if sum == nil || g.unresolved {
		w.tookHold(nil, g.Func)
		w.havoc(g.Func, everySort...)
		return
	}
	w.fresh++
	w.checkExpects(callee, g.Func)
	w.notices()
	w.take(sum, g.Func)
	w.notices()
}

// owed is what a callee leaves as it should not, at the link that performs it.
type owed struct {
	link  *model.Link
	thing thing
}

// take applies a summary.
func (w *walk) take(sum *summary, g diagram.Func) {
	in := w.importer(sum)
	w.together = w.And(w.together, in.take(sum.together))
	n := len(sum.ends)
	to, moved, open, found := make([]diagram.Func, n), make([]diagram.Func, n), make([]diagram.Func, n), make([]diagram.Func, n)
	for i, e := range sum.ends {
		to[i], moved[i] = in.take(e.to), w.And(g, in.take(e.moved))
		open[i], found[i] = w.And(g, in.take(e.open)), w.And(g, in.take(e.found))
		if !w.free && e.wrong != diagram.No {
			w.owed[owed{w.here.link, e.thing}] = in.take(e.wrong)
		}
	}
	acted := w.And(g, in.take(sum.acted))
	for _, t := range sum.taken {
		w.taken[t.hold] = w.Or(w.taken[t.hold], w.And(g, in.take(t.where)))
	}
	w.later(in, g)
	for _, n := range sum.needs {
		w.need(n, in, g)
	}
	w.openAlike(in.openings(g))
	w.momentsInside(in, g)
	w.demandsOf(in, g)
	w.waitedIn(in, g)
	w.applying = true
	for i, e := range sum.ends {
		w.tested[e.thing] = w.AndNot(w.tested[e.thing], moved[i])
		w.put(e.thing, g, to[i])
		w.stir(e.thing, moved[i])
		w.toldBelow[e.thing] = w.Or(w.AndNot(w.toldBelow[e.thing], w.homely(w.And(g, in.take(e.so)))), open[i])
		w.foundOpen[e.thing] = w.AndNot(w.foundOpen[e.thing], moved[i])
		if w.free {
			w.toldBelow[e.thing] = w.Or(w.toldBelow[e.thing], w.homely(found[i]))
			w.foundOpen[e.thing] = w.Or(w.foundOpen[e.thing], found[i])
		}
	}
	w.applying = false
	w.acted = w.Or(w.acted, acted)
	if !w.free && sum.acts > 0 && !w.possible(acted) {
		w.out.Confirms[w.here.link] = true
	}
}

// stir forgets what was told of a thing that a call moved, even where it is
// back where it was.
func (w *walk) stir(x thing, moved diagram.Func) {
	w.moved[x] = w.Or(w.moved[x], moved)
	for _, r := range w.tells[x] {
		key := toldKey{r, x}
		w.told[key] = w.AndNot(w.told[key], moved)
	}
}

// need tells what of a callee goes wrong because of how things stand here.
func (w *walk) need(n need, in *importer, g diagram.Func) {
	where := w.And(g, in.take(n.where))
	if where == diagram.No {
		return
	}
	w.from, w.movedIn = &n, in.take(n.moved)
	defer func() { w.from, w.movedIn = nil, diagram.No }()
	switch {
	case !n.once:
		w.findSo(n.rule, n.thing, where, n.why)
	case n.before:
		w.open(n.thing, where, nil)
	default:
		w.findOnceSo(n.rule, n.thing, where, n.why)
	}
}

// checkExpects compares how things stand with what a callee expects. What is not so
// counts as met.
func (w *walk) checkExpects(callee *model.Procedure, g diagram.Func) {
	named := namedIn(callee.Expects)
	for _, s := range partsFirst(callee.Expects) {
		if s.Unknown {
			continue
		}
		w.meet(callee, s, named, g)
	}
}

// meet compares how a thing stands with what a callee expects of it. What is not so
// counts as met, with all that stands as it does because of that; that it is not put
// right at the end is no second fault.
func (w *walk) meet(callee *model.Procedure, s model.State, named map[model.Named]bool, g diagram.Func) {
	with := w.standingWith(s.Thing)
	was := make([]diagram.Func, len(with))
	for i, x := range with {
		was[i] = w.get(x)
	}
	w.compare(callee, s, named, g)
	for i, x := range with {
		if changed := w.Differs(was[i], w.get(x)); changed != diagram.No {
			w.toldBelow[x] = w.Or(w.toldBelow[x], w.homely(changed))
		}
	}
}

// standingWith are the things that stand otherwise where one does.
func (w *walk) standingWith(n model.Named) []thing {
	out := w.named(n)
	cuts := func(p *model.Point) {
		out = append(out, w.lay.of[p])
		for _, e := range p.Cuts {
			out = append(out, w.lay.of[e])
		}
	}
	switch n := n.(type) {
	case *model.Part:
		out = append(out, w.lay.held[n]...)
	case *model.Energy:
		for _, p := range w.lay.energy[n].points {
			cuts(p)
		}
	case *model.Point:
		cuts(n)
	}
	return out
}

// compare tells where a thing is not as a callee expects, and puts it there.
func (w *walk) compare(callee *model.Procedure, s model.State, named map[model.Named]bool, g diagram.Func) {
	want := w.meant(s, w.alone())
	if f, is := s.Thing.(*model.Fastener); is && len(f.Holds) > 0 {
		w.meetFastener(f, want, g, s.Word)
		return
	}
	x := w.lay.of[s.Thing]
	bad := w.And(w.And(g, w.present(x)), w.unlike(x, want))
	if bad == diagram.No {
		return
	}
	w.find(&StateMismatch, x, bad, "should be %s here", stands(s.Word))
	w.put(x, bad, want)
	if want == released || want == dead {
		w.outByHand(x, bad)
	}
	switch n := s.Thing.(type) {
	case *model.Part:
		w.meetPart(n, bad, want)
	case *model.Energy:
		w.meetPoints(n, callee, named, bad)
	case *model.Point:
		w.restand(n, named, bad)
	}
}

// unlike says where a thing does not stand as the word says.
func (w *walk) unlike(x thing, want diagram.Func) diagram.Func {
	return w.otherThan(x, w.get(x), want)
}

// otherThan says where a state of a thing is another than a word means.
func (w *walk) otherThan(x thing, f, want diagram.Func) diagram.Func {
	return w.Not(w.Or(w.Is(f, states(unknown)), w.as(x, f, want)))
}

// as says where a state of a thing is what a word means; that may be another on
// another unit.
func (w *walk) as(x thing, f, want diagram.Func) diagram.Func {
	if want.Constant() {
		return w.Is(f, w.lay.alike(x, want))
	}
	any := diagram.No
	for s := range diagram.Func(diagram.MaxKids) {
		any = w.Or(any, w.And(w.Equals(want, s), w.Is(f, w.lay.alike(x, s))))
	}
	return any
}

// alike is the states of a thing that one word means.
func (l *layout) alike(x thing, state diagram.Func) diagram.Set {
	switch l.things[x].sort {
	case anEnergy:
		switch state {
		case live, early:
			return liveStates
		case isolated, blocked:
			return states(isolated, blocked)
		}
	case aPart:
		if state != on {
			return offStates
		}
	case aFluid:
		if lowStates.Has(state) {
			return lowStates
		}
	case aPoint, aFastening, aFastener, aSpill, aSetting, aGroup, aGap, aTool, anAsked:
	}
	return states(state)
}

func (w *walk) meetPart(p *model.Part, g, want diagram.Func) {
	for _, h := range w.lay.held[p] {
		w.put(h, g, want) // off is loose, on is tight
	}
}

// meetFastener compares a fastener that is named by itself, wherever it is.
func (w *walk) meetFastener(f *model.Fastener, want, g diagram.Func, word string) {
	some := diagram.No
	for _, p := range f.Holds {
		if x, there := w.lay.at[fastening{f, p}]; there {
			some = w.Or(some, w.And(w.present(x), w.looseAt(x, w.lay.of[p])))
		}
	}
	bad := some
	if want == loose {
		bad = w.Not(some)
	}
	if bad = w.And(g, bad); bad == diagram.No {
		return
	}
	for i, x := range w.named(f) {
		if i == 0 {
			w.find(&StateMismatch, x, bad, "should be %s here", stands(word))
		}
		w.put(x, bad, want)
	}
}

// meetPoints puts the points of an energy where those that the callee names
// need them.
func (w *walk) meetPoints(e *model.Energy, callee *model.Procedure, named map[model.Named]bool, g diagram.Func) {
	want := map[model.Named]diagram.Func{}
	for _, s := range callee.Expects {
		if s.Thing != nil {
			want[s.Thing] = w.meant(s, w.alone())
			if s.Unknown {
				want[s.Thing] = unknown
			}
		}
	}
	for _, p := range w.lay.energy[e].points {
		if !named[p] {
			w.put(w.lay.of[p], g, w.needOf(p, named, w.alone(), func(e *model.Energy) diagram.Func { return want[e] }))
		}
		w.restand(p, named, g)
	}
}

// restand puts the energies that a point cuts and that are not named where
// their points are.
func (w *walk) restand(p *model.Point, named map[model.Named]bool, g diagram.Func) {
	for _, e := range p.Cuts {
		r := w.lay.energy[e]
		x := w.lay.of[e]
		if named[e] {
			continue
		}
		on := diagram.No
		shut := diagram.Yes
		for _, p := range r.points {
			on = w.Or(on, w.pointIs(p, states(live)))
			if p.Lock {
				shut = w.AndNot(shut, w.pointIs(p, ^lockedStates))
			}
		}
		here := w.And(g, w.present(x))
		w.shift(x, w.And(here, on), move(live, isolated, locked, released, dead, blocked))
		unlocked := w.And(w.lockable(r), w.AndNot(w.AndNot(here, on), shut))
		w.shift(x, unlocked, move(isolated, locked, released, dead))
		w.settle(r, here)
	}
}
