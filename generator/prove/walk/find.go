package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

type rule = finding.Rule

// issue is something found of one thing at one link. What is found at one link
// by one rule becomes one finding.
type issue struct {
	rule  *rule
	at    event
	thing thing
	where diagram.Func
	state diagram.Func // how the thing stood
	last  diagram.Func // what put it there
	began diagram.Func // what took it out of its normal state
	why   finding.Words
	from  *need   // the callee's need; nil in the procedure itself
	short *demand // of a wait: what it is short of
}

// find notes what is wrong with a thing where bad holds. why is a template, with
// what it is of; "" is the rule's own head.
func (w *walk) find(r *rule, x thing, bad diagram.Func, why string, of ...any) {
	w.findSo(r, x, bad, finding.Words{Template: why, Values: of})
}

func (w *walk) findSo(r *rule, x thing, bad diagram.Func, why finding.Words) {
	if bad == diagram.No || w.tooMany(bad) || !w.possible(bad) {
		return
	}
	if w.free {
		w.keep(r, x, bad, why, false)
		return
	}
	i := issue{rule: r, at: w.here, thing: x, where: bad, why: why, from: w.from}
	if x != nothing {
		i.state, i.last, i.began = w.get(x), w.last[x], w.began[x]
	}
	w.issues = append(w.issues, i)
}

// findOnce is find, but once as long as the thing stands as it does: the
// second act in front of the same live terminal is the same fault.
func (w *walk) findOnce(r *rule, x thing, bad diagram.Func, why string, of ...any) {
	w.findOnceSo(r, x, bad, finding.Words{Template: why, Values: of})
}

func (w *walk) findOnceSo(r *rule, x thing, bad diagram.Func, why finding.Words) {
	switch {
	case bad == diagram.No:
	case w.free:
		w.keep(r, x, bad, why, true)
	case why.Template == heldBack:
		w.findTold(toldKey{&NotReachable, x}, r, bad, why)
	default:
		w.findTold(toldKey{r, x}, r, bad, why)
	}
}

func (w *walk) findTold(key toldKey, r *rule, bad diagram.Func, why finding.Words) {
	told, before := w.told[key]
	if told = w.AndNot(told, w.movedIn); w.tellAll {
		told = diagram.No
	}
	if bad = w.AndNot(bad, told); bad == diagram.No {
		return
	}
	w.findSo(r, key.thing, bad, why)
	w.told[key] = w.Or(w.told[key], bad)
	if !before {
		w.tells[key.thing] = append(w.tells[key.thing], key.rule)
	}
}

// keep keeps for the callers what goes wrong by how their things stand.
func (w *walk) keep(r *rule, x thing, bad diagram.Func, why finding.Words, once bool) {
	n := need{rule: r, thing: x, where: bad, moved: w.movedIn, once: once, why: why, at: w.here, before: w.openedBefore}
	key := fault{link: w.here.link, rule: r, thing: x}
	if w.from != nil {
		n.at, key.inner = w.from.at, w.from.fault+1
	}
	if x != nothing {
		w.look(x)
		n.moved = w.Or(n.moved, w.moved[x])
	}
	n.fault = w.faultOf(key)
	if !n.before { // what the caller opened is not told where the procedure is walked alone
		w.athome[n.fault] = w.Or(w.athome[n.fault], w.homely(bad))
		w.noteOpen(r, x, bad, why)
	}
	w.needs = append(w.needs, n)
}

// noteOpen notes a thing that is found open where it should be closed, whether
// or not it is closed at the end: who performs the procedure is not told again
// that it is open. An energy that comes back with nothing round it is not open.
func (w *walk) noteOpen(r *rule, x thing, bad diagram.Func, why finding.Words) {
	if r == &RestoredWhileOpen && w.lay.things[x].sort != anEnergy || r == &RefitOverOpen && why.Template != heldBack {
		w.toldBelow[x] = w.Or(w.toldBelow[x], w.homely(bad))
		w.foundOpen[x] = w.Or(w.foundOpen[x], bad)
	}
}

// fault is one thing that goes wrong at one link by one rule; in a call it is
// one of the callee's.
type fault struct {
	link  *model.Link
	rule  *rule
	thing thing
	inner int // the callee's own number of it, from 1
}

func (w *walk) faultOf(key fault) int {
	n, known := w.faults[key]
	if !known {
		n = len(w.athome)
		w.faults[key] = n
		w.athome = append(w.athome, diagram.No)
	}
	return n
}

// ownNeeds are the needs without what goes wrong where the procedure is walked
// alone: that is told there. What happens inside the procedure does not matter
// to a caller, only that it can; faults that need the same are one.
func (w *walk) ownNeeds() []need {
	faults := make([][]need, len(w.athome))
	for i, f := range w.athome {
		w.athome[i] = w.somehow(f)
	}
	for _, n := range w.needs {
		if !n.before {
			n.where = w.AndNot(n.where, w.athome[n.fault])
		}
		n.where = w.somehow(n.where)
		n.moved = w.Not(w.somehow(w.Not(n.moved)))
		if w.possible(n.where) && !slices.ContainsFunc(faults[n.fault], n.same) {
			faults[n.fault] = append(faults[n.fault], n)
		}
	}
	var kept [][]need
	for _, f := range faults {
		if len(f) > 0 && !slices.ContainsFunc(kept, func(k []need) bool { return sameNeeds(k, f) }) {
			kept = append(kept, f)
		}
	}
	var out []need
	for i, f := range kept {
		for _, n := range f {
			n.fault = i
			out = append(out, n)
		}
	}
	return out
}

// same says that two needs ask the same of a caller.
func (n need) same(o need) bool {
	return n.rule == o.rule && n.thing == o.thing && n.where == o.where && n.before == o.before && n.once == o.once
}

func sameNeeds(a, b []need) bool {
	return len(a) == len(b) && slices.EqualFunc(a, b, need.same)
}

// homely is a function where everything began as the procedure expects it.
func (w *walk) homely(f diagram.Func) diagram.Func {
	if !w.free {
		return f
	}
	f = w.Restrict(f, func(v int32) int {
		switch x := w.vars[v]; {
		case x.kind == aLoner:
			return int(w.aloneHere())
		case x.kind == aStart && w.home[x.thing].Constant():
			return int(w.home[x.thing])
		}
		return -1
	})
	if w.unlikeHomes {
		f = w.Compose(f, func(v int32) (diagram.Func, bool) {
			x := w.vars[v]
			return w.home[x.thing], x.kind == aStart
		})
	}
	return f
}
