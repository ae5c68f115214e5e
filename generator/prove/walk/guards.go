package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// guard says in which worlds a step is done.
type pathCondition struct {
	diagram.Func
	unresolved bool // one of its conditions could not be read
}

// guards works out when every step of the procedure is done.
func (w *walk) guards() {
	w.guardOf = make(map[*model.Step]pathCondition, len(w.p.Steps))
	for _, ph := range w.p.Phases {
		lead := pathCondition{Func: diagram.Yes}
		if ph.Lead != nil {
			for _, l := range ph.Lead.Links {
				if l.Is(model.LinkWhen) {
					w.condition(&lead, l, nil)
				}
			}
		}
		w.leadOf[ph] = lead
		for _, s := range ph.Steps {
			w.guard(s, lead)
		}
	}
	for _, q := range w.plan.answers {
		var of []diagram.Func
		for _, a := range q.answers {
			of = append(of, w.holds(variable{kind: anAnswer, hold: q.hold, taking: q.taking.link, step: q.taking.step, answer: a}))
		}
		w.conditions.answers(of, len(of) == len(q.hold.Answers))
	}
}

func (w *walk) guard(s *model.Step, g pathCondition) {
	for _, l := range s.Links {
		w.condition(&g, l, s)
	}
	w.guardOf[s] = g
	for _, sub := range s.Subs {
		w.guard(sub, g)
	}
}

// condition narrows a guard by one link, where that is a condition.
func (w *walk) condition(g *pathCondition, l *model.Link, s *model.Step) {
	var f diagram.Func
	switch {
	case l.Is(model.LinkWhen):
		f = w.option(model.Condition{Option: l.ID, Not: l.Not})
	case l.Kind.Branches:
		if w.asksItself(l, s) {
			return
		}
		if !l.Bad {
			f = w.went(l)
		}
	case l.Is(model.LinkOptional):
		f = w.holds(variable{kind: anOptional, step: s})
	default:
		return
	}
	if l.Bad {
		g.unresolved = true
		return
	}
	g.Func = w.And(g.Func, f)
}

// went says where a hold went as the link asks: by its latest taking that was
// done at all.
func (w *walk) went(l *model.Link) diagram.Func {
	hold, _ := l.To.(*model.Hold)
	kind := anOutcome
	if l.Is(model.LinkIf) {
		kind = anAnswer
	}
	takings := w.plan.asks[l]
	if len(takings) == 0 {
		return w.holds(variable{kind: kind, hold: hold, answer: l.Frag()})
	}
	if w.outcomes == nil {
		w.outcomes = map[outcome]latest{}
	}
	as := outcome{kind, hold, l.Frag()}
	known := w.outcomes[as]
	for _, t := range takings[known.takings:] {
		this := w.holds(variable{kind: kind, hold: hold, taking: t.link, step: t.step, answer: l.Frag()})
		known.how = w.Ite(w.guardOf[t.step].Func, this, known.how)
	}
	known.takings = len(takings)
	w.outcomes[as] = known
	return known.how
}

// outcome is how a hold can have gone.
type outcome struct {
	kind   conditionKind
	hold   *model.Hold
	answer string
}

// latest says where the latest of so many takings that was done at all went in one
// way: diagram.No for none.
type latest struct {
	takings int
	how     diagram.Func
}

// failed says where a taking in a step failed and the branch for that was gone
// into.
func (w *walk) failed(l *model.Link, s *model.Step) diagram.Func {
	hold, _ := l.To.(*model.Hold)
	if hold == nil || hold.Kind == "ask" {
		return diagram.No
	}
	branch := w.goneInto(hold, w.plan.from[l])
	if branch == diagram.No {
		return diagram.No
	}
	return w.And(branch, w.holds(variable{kind: anOutcome, hold: hold, taking: l, step: s}))
}

// goneInto says where one of the steps is done that ask how a hold went, from the
// first that is named on.
func (w *walk) goneInto(hold *model.Hold, from int) diagram.Func {
	asked := w.plan.asked[hold]
	if from == len(asked) {
		return diagram.No
	}
	if w.gone == nil {
		w.gone = map[*model.Hold][]diagram.Func{}
	}
	if w.gone[hold] == nil {
		some, any := make([]diagram.Func, len(asked)), diagram.No
		for i, a := range slices.Backward(asked) {
			any = w.Or(any, w.guardOf[a.step].Func)
			some[i] = any
		}
		w.gone[hold] = some
	}
	return w.gone[hold][from]
}

// present says where a thing is there at all. An energy of which a unit has
// none of the points counts as one that it does not have: that is told at the
// machine's file. A point that such an energy names counts as there only where it
// cuts something.
func (w *walk) present(x thing) diagram.Func {
	i := w.lay.things[x]
	f := w.option(condition(i.named))
	if i.part != nil {
		f = w.And(f, w.option(i.part.OnlyWith))
	}
	switch n := i.named.(type) {
	case *model.Energy:
		f = w.And(f, w.anyPoint(w.lay.energy[n]))
	case *model.Point:
		if w.lay.astray[n] {
			f = w.And(f, w.anyCut(n))
		}
	}
	return f
}

// anyCut says where one of the energies is there that a point cuts.
func (w *walk) anyCut(p *model.Point) diagram.Func {
	any := diagram.No
	for _, e := range p.Cuts {
		any = w.Or(any, w.option(e.OnlyWith))
	}
	return any
}

// anyPoint says where one of an energy's points is there; everywhere where
// there is nothing to switch off.
func (w *walk) anyPoint(r *energyRule) diagram.Func {
	any := diagram.No
	for _, p := range r.points {
		any = w.Or(any, w.has(p))
	}
	if len(r.points) == 0 {
		return diagram.Yes
	}
	return any
}

// has says where a unit has a point.
func (w *walk) has(p *model.Point) diagram.Func { return w.option(p.OnlyWith) }

// lockable says where one of an energy's points takes a lock.
func (w *walk) lockable(r *energyRule) diagram.Func {
	any := diagram.No
	for _, p := range r.points {
		if p.Lock {
			any = w.Or(any, w.has(p))
		}
	}
	return any
}

// byLock does a thing where one of an energy's points takes a lock, and where
// none does.
func (w *walk) byLock(r *energyRule, g diagram.Func, do func(lockable bool, g diagram.Func)) {
	can := w.lockable(r)
	if g := w.And(g, can); g != diagram.No {
		do(true, g)
	}
	if g := w.AndNot(g, can); g != diagram.No {
		do(false, g)
	}
}
