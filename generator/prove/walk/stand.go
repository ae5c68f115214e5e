package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// Standing is a thing that is not as it is on a whole, closed, full and live
// machine, or an energy that is on while something is off, loose or altered.
type Standing struct {
	Thing model.Named
	Part  *model.Part // where the thing is a fastener at a part
	Word  string      // live, isolated, locked, released, dead; off, capped; loose; low, unbled; placed; altered
	When  string      // the units and outcomes it holds for, in words; "" for all
	Where Cases       // the same as data
	Since *model.Step // the step that put it there; nil where it stood so at the start
	Test  bool        // an energy that is on for a test
}

// Label is the thing in words.
func (s Standing) Label() string { return labelAt(s.Thing, s.Part).String() }

func labelAt(n model.Named, p *model.Part) finding.Words {
	if p != nil {
		return finding.Say("%s at the %s", n.Label(), p.Label())
	}
	return finding.Say("%s", n.Label())
}

// change is how a thing stands from one step on.
type change struct {
	after int // steps done: 0 at the start
	thing thing
	now   []Standing
}

// on says that it is an energy that is on.
func (s Standing) on() bool {
	_, is := s.Thing.(*model.Energy)
	return is && s.Word == "live"
}

// Proved says that a proof, and no act alone, makes it stand so.
func (s Standing) Proved() bool {
	_, is := s.Thing.(*model.Energy)
	return is && s.Word == "dead"
}

// Stand is where things stand after a step and its sub-steps, in the order of
// the machine file, an energy that is on for a test first; after the last one
// where step is nil.
func (r *Result) Stand(p *model.Procedure, step *model.Step) []Standing {
	return r.Of(p).standing(stepsDone(p, step))
}

// Turn counts the changes up to a step, as Stand takes it: between equal
// counts things stand alike.
func (r *Result) Turn(p *model.Procedure, step *model.Step) int {
	turn, _ := slices.BinarySearchFunc(r.Of(p).changes, stepsDone(p, step)+1, func(c change, steps int) int { return c.after - steps })
	return turn
}

func stepsDone(p *model.Procedure, step *model.Step) int {
	if step == nil {
		return len(p.Steps)
	}
	return step.Done
}

// StandAtStart is where things stand before the first step.
func (r *Result) StandAtStart(p *model.Procedure) []Standing { return r.Of(p).standing(0) }

func (w *Walk) standing(after int) []Standing { return (&Course{w: w}).standing(after) }

// Course is a walk that is asked after one step after another: what earlier steps
// changed is not gone through again.
type Course struct {
	w      *Walk
	taken  int // of the walk's changes
	now    map[thing][]Standing
	things []thing // in their order
}

// Course begins before the first step of a procedure.
func (r *Result) Course(p *model.Procedure) *Course { return &Course{w: r.Of(p)} }

// Stand is as that of the result.
func (c *Course) Stand(p *model.Procedure, step *model.Step) []Standing {
	return c.standing(stepsDone(p, step))
}

func (c *Course) standing(after int) []Standing {
	c.goTo(after)
	var out []Standing
	for _, x := range c.things {
		out = append(out, c.now[x]...)
	}
	slices.SortStableFunc(out, func(a, b Standing) int { return rankOf(b.Test) - rankOf(a.Test) })
	return out
}

// goTo takes in what changed up to a step; from the first one on, where that
// stands above the last that was asked after.
func (c *Course) goTo(after int) {
	if c.now == nil || c.taken > 0 && c.w.changes[c.taken-1].after > after {
		c.taken, c.now, c.things = 0, map[thing][]Standing{}, nil
	}
	for ; c.taken < len(c.w.changes) && c.w.changes[c.taken].after <= after; c.taken++ {
		change := &c.w.changes[c.taken]
		if at, known := slices.BinarySearch(c.things, change.thing); !known {
			c.things = slices.Insert(c.things, at, change.thing)
		}
		c.now[change.thing] = change.now
	}
}

// standsAtStart notes what is not normal before the first step.
func (w *walk) standsAtStart() {
	for x, f := range w.home {
		if f != 0 && f != unknown {
			w.look(thing(x))
		}
	}
	w.record()
}

// stands notes what a step changed.
func (w *walk) stands(*model.Step) {
	if w.free {
		return
	}
	w.completed++
	w.passing()
	w.record()
}

// passing notes screws that a step opens and closes itself: they stand as
// before, and yet they are counted at the end.
func (w *walk) passing() {
	for _, x := range w.screws {
		if w.shown[x] == diagram.No && w.standsAs(x) == diagram.No {
			was := Standing{Thing: w.lay.things[x].named, Word: word(aFastener, loose), Since: w.here.step}
			w.out.changes = append(w.out.changes, change{w.completed, x, []Standing{was}}, change{w.completed, x, nil})
		}
	}
	w.screws = nil
}

func (w *walk) record() {
	moved := false
	for _, x := range w.touched {
		if w.lay.things[x].sort != anEnergy {
			moved = w.show(x, w.standsAs(x)) || moved
		}
	}
	if moved {
		w.anyOpen = w.openNow()
	}
	if w.lay.machine != nil {
		for _, e := range w.lay.machine.Energies {
			x := w.lay.of[e]
			w.show(x, w.standsAs(x))
		}
	}
}

// show notes how a thing stands from here on.
func (w *walk) show(x thing, f diagram.Func) bool {
	if f == w.shown[x] {
		return false
	}
	w.shown[x] = f
	w.out.changes = append(w.out.changes, change{w.completed, x, w.describe(x, f)})
	return true
}

// openNow is where anything is off, loose or altered: then it matters what is
// on.
func (w *walk) openNow() diagram.Func {
	f := diagram.No
	for _, x := range w.touched {
		switch w.lay.things[x].sort {
		case aPart:
			f = w.Or(f, w.Is(w.shown[x], offStates))
		case aFastening, aFastener, aSetting:
			f = w.Or(f, w.Is(w.shown[x], states(1)))
		case anEnergy, aPoint, aFluid, aSpill, aGroup, aGap, aTool, anAsked:
		}
	}
	return f
}

// As an energy is shown, a live one is only so while something is open: on, or
// on for a test.
const (
	shownOn   diagram.Func = 5
	shownTest diagram.Func = 6
)

// energyStands is how an energy stands as people speak of it.
func (w *walk) energyStands(x thing) diagram.Func {
	if w.lay.things[x].unread {
		return live
	}
	f := live
	if w.seen[x] {
		f = w.After(w.state[x], move(live, early).And(isolated, blocked))
	}
	on := w.And(w.anyOpen, w.Is(f, states(live)))
	f = w.Ite(on, w.Ite(w.tested[x], shownTest, shownOn), f)
	return w.Ite(w.present(x), f, live)
}

// standsAs is the state of a thing as people speak of it.
func (w *walk) standsAs(x thing) diagram.Func {
	switch i := w.lay.things[x]; i.sort {
	case aSpill, aGroup, aGap, anAsked:
		return 0
	case aFastening:
		return w.And(w.present(x), w.looseAt(x, w.lay.of[i.part]))
	case anEnergy:
		return w.energyStands(x)
	case aPart:
		return w.Ite(w.present(x), w.state[x], on)
	case aFluid:
		return w.Ite(w.present(x), w.After(w.state[x], move(low, drained)), full)
	case aPoint, aFastener, aSetting, aTool:
	}
	return w.Ite(w.present(x), w.state[x], 0)
}

func (w *walk) describe(x thing, f diagram.Func) []Standing {
	var out []Standing
	info := w.lay.things[x]
	for s := diagram.Func(1); s < unknown; s++ {
		where := w.Is(f, states(s))
		if where == diagram.No || !w.possible(where) {
			continue
		}
		cases := w.cases(where)
		out = append(out, Standing{
			Thing: info.named, Part: info.part, Word: standingWord(info, s),
			When: w.casesWords(cases).String(), Where: cases, Since: w.since(x, where),
		})
		if info.sort == anEnergy && s >= shownOn {
			last := &out[len(out)-1]
			last.Word, last.Test = "live", s == shownTest
		}
	}
	return out
}

// standingWord is the word for how a thing stands: a plug that is kept is out.
func standingWord(i info, s diagram.Func) string {
	if p, is := i.named.(*model.Point); is && p.Kept {
		s = isolated
	}
	return word(i.sort, s)
}

// since is the step that put a thing where it is.
func (w *walk) since(x thing, where diagram.Func) *model.Step {
	way := w.Witness(w.And(where, w.all()))
	return w.events[w.Value(w.last[x], way)].step
}

// word is the format's word for a state.
func word(s sort, f diagram.Func) string {
	var words []string
	switch s {
	case anEnergy, aPoint:
		words = []string{"live", "isolated", "locked", "released", "dead", "live", "isolated"}
	case aPart, aGap:
		words = []string{"on", "off", "capped"}
	case aFastening, aFastener:
		words = []string{"tight", "loose"}
	case aFluid:
		words = []string{"full", "low", "unbled", "low"}
	case aSpill:
		words = []string{"dry", "wet"}
	case aTool:
		words = []string{"cleared", "placed"}
	case aSetting:
		words = []string{"reset", "altered"}
	case aGroup:
		words = []string{"unmarked", "marked"}
	case anAsked:
	}
	if int(f) < len(words) {
		return words[f]
	}
	return ""
}
