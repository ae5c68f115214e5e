package walk

import "baybinder/generator/finding"

type rule = finding.Rule

// issue is something found of one thing at one link. What is found at one link
// by one rule becomes one finding.
type issue struct {
	rule  *rule
	at    event
	thing thing
	where fn
	state fn // how the thing stood
	last  fn // what put it there
	why   string
	from  *event // the callee's link that found it; nil in the procedure itself
}

// find notes what is wrong with a thing where bad holds.
func (w *walk) find(r *rule, x thing, bad fn, why string) {
	if bad == no || w.tooMany(bad) || !w.possible(bad) {
		return
	}
	if w.free {
		w.keep(r, x, bad, why, false)
		return
	}
	i := issue{rule: r, at: w.here, thing: x, where: bad, why: why, from: w.from}
	if x != nothing {
		i.state, i.last = w.get(x), w.last[x]
	}
	w.issues = append(w.issues, i)
}

// findOnce is find, but once as long as the thing stands as it does: the
// second act in front of the same live terminal is the same fault.
func (w *walk) findOnce(r *rule, x thing, bad fn) {
	switch {
	case bad == no:
	case w.free:
		w.keep(r, x, bad, "", true)
	default:
		w.findTold(toldKey{r, x}, bad)
	}
}

func (w *walk) findTold(key toldKey, bad fn) {
	told, before := w.told[key]
	told = w.andNot(told, w.movedIn)
	if bad = w.andNot(bad, told); bad == no {
		return
	}
	w.find(key.rule, key.thing, bad, "")
	w.told[key] = w.or(w.told[key], bad)
	if !before {
		w.tells[key.thing] = append(w.tells[key.thing], key.rule)
	}
}

// keep keeps for the callers what goes wrong by how their things stand.
func (w *walk) keep(r *rule, x thing, bad fn, why string, once bool) {
	if !w.openedBefore { // what the caller opened is not told where the procedure is walked alone
		bad = w.andNot(bad, w.homely(bad))
	}
	if bad == no || !w.possible(bad) {
		return
	}
	moved := w.movedIn
	if x != nothing {
		w.look(x)
		moved = w.or(moved, w.moved[x])
	}
	for _, n := range w.needs {
		if n.rule == r && n.thing == x && n.where == bad && n.moved == moved && n.before == w.openedBefore {
			return
		}
	}
	at := w.here
	if w.from != nil {
		at = *w.from
	}
	w.needs = append(w.needs, need{rule: r, thing: x, where: bad, moved: moved, once: once, why: why, at: at, before: w.openedBefore})
}

// homely is a function where everything began as the procedure expects it.
func (w *walk) homely(f fn) fn {
	if !w.free {
		return f
	}
	return w.with(f, func(v int32) int {
		if x := w.vars[v]; x.kind == aStart && x.call == 0 {
			return int(w.home[x.thing])
		}
		return -1
	})
}
