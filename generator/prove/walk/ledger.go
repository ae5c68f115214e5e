package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// ledger keeps how every thing stands, in every world at once, and what put it
// there.
type ledger struct {
	conditions
	lay     *layout
	state   []diagram.Func // by thing
	began   []diagram.Func // the event since which a thing is neither normal nor as at the start
	last    []diagram.Func // the event that put it into its state
	start   []diagram.Func
	moved   []diagram.Func // where it was moved at all
	seen    []bool
	touched []thing
	events  []event // 0 is the start

	told  map[toldKey]diagram.Func // what was told of a thing that stands as it stood then
	tells map[thing][]*rule
	// toldBelow is where a thing stands as something that was performed left it,
	// and that is told there.
	toldBelow []diagram.Func
	// foundOpen is where a thing stands as it stood when it was found open where it
	// should be closed. Of a summary alone.
	foundOpen []diagram.Func
	here      event
	free      bool         // every thing may stand in any way at the start
	fresh     int          // counts calls
	acted     diagram.Func // where anything was changed
	over      []event      // the links at which too many conditions meet
}

// event is a link that changed something, in its step.
type event struct {
	link *model.Link
	step *model.Step
}

type toldKey struct {
	rule  *rule
	thing thing
}

func newLedger(lay *layout) ledger {
	n := len(lay.things)
	all := make([]diagram.Func, 7*n) // one piece of memory
	of := func(i int) []diagram.Func { return all[i*n:][:n:n] }
	return ledger{
		conditions: newConditions(diagram.New(), lay.machine), lay: lay,
		state: of(0), began: of(1), last: of(2), start: of(3), moved: of(4), toldBelow: of(5), foundOpen: of(6),
		seen: make([]bool, n), events: make([]event, 1, 16),
		told: map[toldKey]diagram.Func{}, tells: map[thing][]*rule{},
	}
}

// look makes sure that a thing is in the ledger.
func (l *ledger) look(x thing) {
	if l.seen[x] {
		return
	}
	l.seen[x] = true
	l.touched = append(l.touched, x)
	switch {
	case l.lay.things[x].unread:
		l.start[x] = unknown
	case l.free:
		l.start[x] = l.Itself(l.add(variable{kind: aStart, thing: x}, diagram.MaxKids))
	}
	l.state[x] = l.start[x]
}

// get is how a thing stands.
func (l *ledger) get(x thing) diagram.Func {
	l.look(x)
	return l.state[x]
}

// put changes how a thing stands where g holds.
func (l *ledger) put(x thing, g, to diagram.Func) {
	l.look(x)
	if l.lay.things[x].unread {
		return
	}
	was := l.state[x]
	g = l.AndNot(g, l.Is(was, states(unknown))) // what is unknown stays so
	now := l.Ite(g, to, was)
	changed := l.Differs(was, now)
	if changed == diagram.No {
		return
	}
	if l.tooMany(now) {
		now = unknown
	}
	l.state[x] = now
	if l.lay.things[x].sort != anAsked { // a hold changes nothing of the machine
		l.acted = l.Or(l.acted, changed)
	}
	l.moved[x] = l.Or(l.moved[x], changed)
	l.note(x, changed, was)
	for _, r := range l.tells[x] {
		key := toldKey{r, x}
		l.told[key] = l.AndNot(l.told[key], changed)
	}
}

// note remembers which link brought a thing to where it is. Of a summary only
// who opened a line is asked for.
func (l *ledger) note(x thing, changed, was diagram.Func) {
	if l.free && l.lay.things[x].sort != aPart {
		return
	}
	n := diagram.Func(len(l.events) - 1)
	if n == 0 || l.events[n] != l.here {
		l.events = append(l.events, l.here)
		n++
	}
	left := l.And(changed, l.Is(was, states(0)))
	if l.lay.things[x].sort != aPart { // a part that was off is not taken off by a cap
		left = l.Or(left, l.AndNot(changed, l.Differs(was, l.start[x])))
	}
	l.began[x] = l.Ite(left, n, l.began[x])
	if !l.free {
		l.last[x] = l.Ite(changed, n, l.last[x])
	}
}

// tooMany says that a function depends on more conditions than are walked
// exactly, and remembers where.
func (l *ledger) tooMany(f diagram.Func) bool {
	if f.Constant() || len(l.vars) <= Most || l.meeting(f) <= Most {
		return false
	}
	if n := len(l.over); n == 0 || l.over[n-1] != l.here {
		l.over = append(l.over, l.here)
	}
	return true
}

var everySort = []sort{anEnergy, aPoint, aPart, aFastening, aFastener, aFluid, aSpill, aSetting, aGroup, aGap, aTool, anAsked}
