package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// ReverseRule is told at a reverse: that finds nothing off, or not what it names.
var ReverseRule = rule{
	Code:  "reverse",
	Title: "A reverse: that has nothing to take back",
	Why:   "The refit would be shorter than the reader believes.",
	Mend:  "Name a phase that took something off, and a part that it took off and that is still off.",
}

// reversing expands a reverse: link and walks what it expands to.
type reversing struct{ onRefit }

func (reversing) does(w *walk, l *model.Link, g diagram.Func) {
	s := w.here.step
	todo := w.reversible(l, g)
	if !w.reversalStands(l, todo, g) {
		return
	}
	r := &reversal{walk: w, step: s, out: &Reversal{Link: l, Step: s}}
	w.deriving = true
	for i, u := range todo {
		r.take(u, todo[i+1:])
	}
	r.endRun()
	w.deriving = false
	r.out.NoReversal = r.noReversal(l.Phase(), s)
	if !w.free {
		w.out.Reversals = append(w.out.Reversals, *r.out)
	}
}

// undoing is what of an own link a reverse: can take back.
type undoing struct {
	verb  model.Act // what undoes the link's own: Refit, Tighten, Clear or Reset
	thing thing
	where diagram.Func
	new   bool // the refit is of a new one
	at    event
}

// undone remembers that a link of the procedure did something that can be
// taken back. What a derived step does is not taken back again.
func (w *walk) undone(u undoing) {
	if u.where != diagram.No && !w.deriving {
		u.at, u.verb = w.here, w.here.link.Kind.Undo
		w.undoings = append(w.undoings, u)
	}
}

// stillSo is where an undoing has something to take back.
func (w *walk) stillSo(u undoing, g diagram.Func) diagram.Func {
	g = w.And(g, u.where)
	f := w.get(u.thing)
	switch i := w.lay.things[u.thing]; i.sort {
	case aPart:
		return w.And(g, w.Is(f, offStates))
	case aFastening:
		return w.And(g, w.looseAt(u.thing, w.lay.of[i.part]))
	case anEnergy, aPoint, aFastener, aFluid, aSpill, aSetting, aGroup, aGap, aTool, anAsked:
	}
	return w.And(g, w.Is(f, states(set)))
}

// reversible is what the link takes back, last first. A fastener that was
// loosened and whose part came off afterwards is tightened at the part's refit.
func (w *walk) reversible(l *model.Link, g diagram.Func) []undoing {
	var todo []undoing
	first := w.firstOff(l)
	for _, u := range slices.Backward(w.undoings) {
		if u.at.step.Phase != l.Phase() || u.at.link.At.Start < first || w.excepted(l, u.thing) {
			continue
		}
		if u.where = w.stillSo(u, g); w.possible(u.where) {
			todo = append(todo, u)
		}
	}
	return w.asFarAs(l, todo)
}

// firstOff is where the part after # first comes off in the phase; 0 where
// there is none.
func (w *walk) firstOff(l *model.Link) int {
	if l.Part() == nil {
		return 0
	}
	for _, s := range w.p.Steps {
		if s.Phase != l.Phase() {
			continue
		}
		for _, other := range s.Links {
			if other.Kind.TakesOff && other.To == model.Named(l.Part()) {
				return other.At.Start
			}
		}
	}
	return 0
}

// asFarAs stops, on each unit, after the part after #.
func (w *walk) asFarAs(l *model.Link, todo []undoing) []undoing {
	if l.Part() == nil {
		return todo
	}
	var out []undoing
	done := diagram.No
	for _, u := range todo {
		u.where = w.AndNot(u.where, done)
		if u.thing == w.lay.of[l.Part()] {
			done = w.Or(done, u.where)
		}
		if w.possible(u.where) {
			out = append(out, u)
		}
	}
	return out
}

// excepted says that a reverse: with ! leaves the part off.
func (w *walk) excepted(l *model.Link, x thing) bool {
	if l.Sign != '!' {
		return false
	}
	p, _ := w.lay.things[x].named.(*model.Part)
	return p != nil && contains(l.Parts(), p)
}

// reversalStands judges a reverse: there is something to take back, and the
// parts that it names are off by its phase.
func (w *walk) reversalStands(l *model.Link, todo []undoing, g diagram.Func) bool {
	if g = w.homely(g); !w.possible(g) {
		return true
	}
	ok := true
	for _, p := range l.Parts() {
		x := w.lay.of[p]
		by := diagram.No
		for _, u := range w.undoings {
			if u.thing == x && u.at.step.Phase == l.Phase() {
				by = w.Or(by, w.stillSo(u, g))
			}
		}
		f := w.homely(w.get(x))
		bad := w.AndNot(w.And(g, w.present(x)), w.homely(by))
		bad = w.AndNot(bad, w.Is(f, states(unknown)))
		if w.possible(bad) {
			ok = false
			w.find(&ReverseRule, x, bad, "not off by that phase")
		}
	}
	if !ok {
		return false
	}
	for _, u := range todo {
		if w.possible(w.homely(u.where)) {
			return true
		}
	}
	if w.unresolvedPhase(l.Phase()) {
		return false
	}
	w.find(&ReverseRule, nothing, w.AndNot(g, w.homely(w.clouded(l.Phase()))), "nothing that this phase took off is still off here")
	return false
}

// clouded says where a thing that a phase acted on is unknown.
func (w *walk) clouded(ph *model.Phase) diagram.Func {
	f := diagram.No
	for _, s := range w.p.Steps {
		if s.Phase != ph {
			continue
		}
		for _, l := range s.Links {
			if l.Kind.Act == model.NoAct || l.To == nil {
				continue
			}
			for _, x := range w.lay.moving(l.To) {
				f = w.Or(f, w.Is(w.get(x), states(unknown)))
			}
		}
	}
	return f
}

// unresolvedPhase says that a link in a phase could not be read.
func (w *walk) unresolvedPhase(ph *model.Phase) bool {
	for _, s := range w.p.Steps {
		if s.Phase != ph {
			continue
		}
		if w.guardOf[s].unresolved {
			return true
		}
		for _, l := range s.Links {
			if l.Bad && (l.Kind.Act != model.NoAct || l.Odd || l.Kind == model.UnknownLink) {
				return true
			}
		}
	}
	return false
}

// reversal is a reverse: on its way.
type reversal struct {
	*walk
	step  *model.Step
	out   *Reversal
	begun []undoing     // the refits of the run whose fasteners are begun by hand
	noted []*model.Step // steps whose notes for the refit are given
}

// take does one derived step; later are those that follow it.
func (r *reversal) take(u undoing, later []undoing) {
	if u.where = r.stillSo(u, u.where); !r.possible(u.where) {
		return
	}
	inRun := u.verb == model.Refit && begunByHand(r.lay.things[u.thing].named.(*model.Part))
	if !inRun {
		r.endRun()
	}
	r.notes(u, before)
	r.emit(u, inRun)
	switch n := r.lay.things[u.thing].named; u.verb {
	case model.Refit:
		p := n.(*model.Part)
		r.refit(p, u.where, r.begun, later)
		if inRun {
			r.begun = append(r.begun, u)
		} else {
			r.tightenAll(p, u.where)
		}
	case model.Tighten:
		r.put(u.thing, u.where, tight)
	case model.Clear:
		r.clear(n.(*model.Tool), u.where)
	case model.Reset:
		r.reset(n.(*model.Setting), u.where)
	default: // the others are no concern of this
	}
	r.notes(u, after)
}

// begunByHand says that a part's fasteners are begun by hand before any is
// tightened.
func begunByHand(p *model.Part) bool {
	for _, h := range p.HeldBy {
		if h.To != nil && h.To.Start != "" {
			return true
		}
	}
	return false
}

func (w *walk) tightenAll(p *model.Part, g diagram.Func) {
	for _, h := range w.lay.held[p] {
		w.put(h, w.And(g, w.present(h)), tight)
	}
}

// endRun tightens what was begun by hand, in the order of refit.
func (r *reversal) endRun() {
	for _, u := range r.begun {
		r.emitTightening(u)
		r.tightenAll(r.lay.things[u.thing].named.(*model.Part), u.where)
	}
	r.begun = nil
}

// when says whether the acts of a note come before or after the derived act.
type when uint8

const (
	before when = iota
	after
)

// notes does the acts of a step's notes for the refit, once. What needs the
// part on comes after it, the rest before.
func (r *reversal) notes(u undoing, at when) {
	if slices.Contains(r.noted, u.at.step) {
		return
	}
	if at == after {
		r.noted = append(r.noted, u.at.step)
	}
	here := r.here
	r.here.step = u.at.step // its parts are meant where the note tightens
	for _, b := range u.at.step.Blocks {
		if b.Role != model.OnRefit {
			continue
		}
		for _, l := range b.Links {
			if l.Kind.AfterPart == (at == after) {
				r.act(l, pathCondition{u.where, r.guardOf[u.at.step].unresolved})
			}
		}
	}
	r.here = here
}

// noReversal lists the steps of a phase of which nothing comes back by a
// reverse:. In its own phase only the steps before it are meant.
func (r *reversal) noReversal(ph *model.Phase, by *model.Step) []*model.Step {
	var out []*model.Step
	for _, s := range r.p.Steps {
		if s.Phase == ph && len(s.Subs) == 0 && !r.reverses(s) && !r.uncaps(s) && (ph != by.Phase || s.At.Start < by.At.Start) {
			out = append(out, s)
		}
	}
	return out
}

func (w *walk) reverses(s *model.Step) bool {
	for _, u := range w.undoings {
		if u.at.step == s {
			return true
		}
	}
	return false
}

// uncaps says that a cap which a step put in comes out where its line goes back.
func (r *reversal) uncaps(s *model.Step) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool {
		return l.Kind.Act == model.Cap && slices.ContainsFunc(r.out.Steps, func(d Derived) bool { return d.Capped && d.Thing == l.To })
	})
}
