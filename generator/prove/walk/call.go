package walk

import "baybinder/generator/model"

// call performs a whole procedure: it compares what that expects, tells of
// what goes wrong only because of how things stand here, and takes over how
// they stand afterwards.
func (w *walk) call(l *model.Link, g guard) {
	callee, _ := l.To.(*model.Procedure)
	if callee == nil {
		w.tookHold(nil, g.fn)
		w.fog(g.fn, everySort...)
		return
	}
	if m := callee.For.To; m != nil && m != w.lay.machine {
		w.find(&WrongMachine, nothing, g.fn, callee.Label()+" is for the "+m.Label())
		w.fog(g.fn, everySort...)
		return
	}
	sum := w.shared.summary(callee, w.lay)
	if sum == nil || g.murky {
		w.tookHold(nil, g.fn)
		w.fog(g.fn, everySort...)
		return
	}
	w.fresh++
	w.meet(callee, g.fn)
	w.notices()
	w.take(sum, g.fn)
	w.notices()
}

// owed is what a callee leaves as it should not, at the link that performs it.
type owed struct {
	link  *model.Link
	thing thing
}

// take applies a summary.
func (w *walk) take(sum *summary, g fn) {
	in := w.importer(sum)
	w.together = w.and(w.together, in.take(sum.together))
	to, moved := make([]fn, len(sum.ends)), make([]fn, len(sum.ends))
	for i, e := range sum.ends {
		to[i], moved[i] = in.take(e.to), w.and(g, in.take(e.moved))
		if !w.free && e.wrong != no {
			w.owed[owed{w.here.link, e.thing}] = in.take(e.wrong)
		}
	}
	acted := w.and(g, in.take(sum.acted))
	for _, t := range sum.taken {
		w.taken[t.hold] = w.or(w.taken[t.hold], w.and(g, in.take(t.where)))
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
		w.tested[e.thing] = w.andNot(w.tested[e.thing], moved[i])
		w.put(e.thing, g, to[i])
		w.stir(e.thing, moved[i])
	}
	w.applying = false
	w.acted = w.or(w.acted, acted)
	if !w.free && sum.acts > 0 && !w.possible(acted) {
		w.out.Confirms[w.here.link] = true
	}
}

// stir forgets what was told of a thing that a call moved, even where it is
// back where it was.
func (w *walk) stir(x thing, moved fn) {
	w.moved[x] = w.or(w.moved[x], moved)
	for _, r := range w.tells[x] {
		key := toldKey{r, x}
		w.told[key] = w.andNot(w.told[key], moved)
	}
}

// need tells what of a callee goes wrong because of how things stand here.
func (w *walk) need(n need, in *importer, g fn) {
	where := w.and(g, in.take(n.where))
	if where == no {
		return
	}
	w.from, w.movedIn = &n, in.take(n.moved)
	defer func() { w.from, w.movedIn = nil, no }()
	switch {
	case !n.once:
		w.find(n.rule, n.thing, where, n.why)
	case n.before:
		w.open(n.thing, where, nil)
	default:
		w.findOnce(n.rule, n.thing, where)
	}
}

// meet compares how things stand with what a callee expects. What is not so
// counts as met.
func (w *walk) meet(callee *model.Procedure, g fn) {
	named := namedIn(callee.Expects)
	for _, s := range partsFirst(callee.Expects) {
		if s.Unknown {
			continue
		}
		want := w.meant(s, w.alone())
		if f, is := s.Thing.(*model.Fastener); is && len(f.Holds) > 0 {
			w.meetFastener(f, want, g, s.Word)
			continue
		}
		x := w.lay.of[s.Thing]
		bad := w.and(w.and(g, w.present(x)), w.unlike(x, want))
		if bad == no {
			continue
		}
		w.find(&StateMismatch, x, bad, "should be "+s.Word+" here")
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
}

// unlike says where a thing does not stand as the word says.
func (w *walk) unlike(x thing, want fn) fn {
	return w.otherThan(x, w.get(x), want)
}

// otherThan says where a state of a thing is another than a word means.
func (w *walk) otherThan(x thing, f, want fn) fn {
	return w.not(w.or(w.is(f, states(unknown)), w.as(x, f, want)))
}

// as says where a state of a thing is what a word means; that may be another on
// another unit.
func (w *walk) as(x thing, f, want fn) fn {
	if want.constant() {
		return w.is(f, w.lay.alike(x, want))
	}
	any := no
	for s := range fn(maxKids) {
		any = w.or(any, w.and(w.equals(want, s), w.is(f, w.lay.alike(x, s))))
	}
	return any
}

// alike is the states of a thing that one word means.
func (l *layout) alike(x thing, state fn) among {
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
		if lowStates.has(state) {
			return lowStates
		}
	}
	return states(state)
}

func (w *walk) meetPart(p *model.Part, g, want fn) {
	for _, h := range w.lay.held[p] {
		w.put(h, g, want) // off is loose, on is tight
	}
}

// meetFastener compares a fastener that is named by itself, wherever it is.
func (w *walk) meetFastener(f *model.Fastener, want, g fn, word string) {
	some := no
	for _, p := range f.Holds {
		if x, there := w.lay.at[fastening{f, p}]; there {
			some = w.or(some, w.and(w.present(x), w.looseAt(x, w.lay.of[p])))
		}
	}
	bad := some
	if want == loose {
		bad = w.not(some)
	}
	if bad = w.and(g, bad); bad == no {
		return
	}
	for i, x := range w.named(f) {
		if i == 0 {
			w.find(&StateMismatch, x, bad, "should be "+word+" here")
		}
		w.put(x, bad, want)
	}
}

// meetPoints puts the points of an energy where those that the callee names
// need them.
func (w *walk) meetPoints(e *model.Energy, callee *model.Procedure, named map[model.Named]bool, g fn) {
	want := map[model.Named]fn{}
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
			w.put(w.lay.of[p], g, w.needOf(p, named, w.alone(), func(e *model.Energy) fn { return want[e] }))
		}
		w.restand(p, named, g)
	}
}

// restand puts the energies that a point cuts and that are not named where
// their points are.
func (w *walk) restand(p *model.Point, named map[model.Named]bool, g fn) {
	for _, e := range p.Cuts {
		r := w.lay.energy[e]
		x := w.lay.of[e]
		if named[e] {
			continue
		}
		on := no
		shut := yes
		for _, p := range r.points {
			on = w.or(on, w.pointIs(p, states(live)))
			if p.Lock {
				shut = w.andNot(shut, w.pointIs(p, ^lockedStates))
			}
		}
		here := w.and(g, w.present(x))
		w.shift(x, w.and(here, on), move(live, isolated, locked, released, dead, blocked))
		unlocked := w.and(w.lockable(r), w.andNot(w.andNot(here, on), shut))
		w.shift(x, unlocked, move(isolated, locked, released, dead))
		w.settle(r, here)
	}
}
