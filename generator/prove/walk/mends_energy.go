package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// cutOff is what an energy lacks until it is isolated, and locked where a padlock
// goes on.
func (w *walk) cutOff(i *issue, e *model.Energy) []finding.Words {
	var out []finding.Words
	r, s := w.lay.energy[e], w.standing(i)
	if len(r.points) > 0 && liveStates&states(s) != 0 {
		out = append(out, finding.Say("[cut it off](isolate:%s)", e.ID))
	}
	padlock := slices.ContainsFunc(r.points, (*model.Point).Padlocked)
	if padlock && notLocked&states(s) != 0 {
		out = append(out, finding.Say("[lock it](lock:%s)", e.ID))
	}
	return out
}

// untilDead is what an energy lacks until it is proved dead, with the first hold
// of the register that shows it.
func (w *walk) untilDead(i *issue, e *model.Energy) []finding.Words {
	out, s := w.cutOff(i, e), w.standing(i)
	if w.lay.energy[e].stored && states(live, isolated, locked)&states(s) != 0 {
		out = append(out, finding.Say("[let it out](release:%s)", e.ID))
	}
	proof := finding.Say("[see that it is out](prove:%s)", e.ID)
	if shows := w.shownBy(e); len(shows) > 0 {
		proof = finding.Say("%s with %s", proof, shows[0])
	}
	return append(out, proof)
}

// mendOrder says what comes first.
func (w *walk) mendOrder(i *issue) finding.Words {
	id := w.idOf(i.thing)
	switch i.why.Template {
	case backEarlier:
		return finding.Say("bring the %s back in a step before this one, or mend restore-order: in the machine's file", w.label(i.thing))
	case "locked before it is isolated":
		return w.moveOr(i, model.Isolate, finding.Say("[cut it off](isolate:%s)", id))
	case "brought back while it is locked", "put on for a test while it is locked":
		return w.moveOr(i, model.Unlock, finding.Say("[take the lock off](unlock:%s)", w.idOf(w.lockedBy(i))))
	}
	if words := w.mendKept(i); !words.IsZero() {
		return words
	}
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is {
		return finding.Words{}
	}
	if words := w.lockEarlier(i, e); !words.IsZero() {
		return words
	}
	links := w.cutOff(i, e)
	if i.at.link.Kind.Act == model.Prove && w.lay.energy[e].stored && states(live, isolated, locked)&states(w.standing(i)) != 0 { // what was let out before that does not count, but of a load that is held
		links = append(links, finding.Say("[let it out](release:%s)", e.ID))
	}
	return w.moveOr(i, model.Lock, links...)
}

// lockEarlier puts the lock behind the step that switched off: what is let out or
// waited for while nothing is locked does not count, so that a lock right before the
// proof is too late.
func (w *walk) lockEarlier(i *issue, e *model.Energy) finding.Words {
	cut := w.cause(i)
	if cut.step == nil || cut.link == nil || cut.link.Kind.Act != model.Isolate || states(isolated)&states(w.standing(i)) == 0 || !w.lay.energy[e].stored || w.actLater(i, model.Lock) != nil {
		return finding.Words{}
	}
	return finding.Say("write %s in a step right behind step %s", finding.ListOf(" and ", w.cutOff(i, e)), cut.step.Number)
}

// lockedBy is what a lock holds where something is switched on: the thing itself,
// or, of a point that takes no lock, an energy that it cuts.
func (w *walk) lockedBy(i *issue) thing {
	p, is := w.lay.things[i.thing].named.(*model.Point)
	if !is || p.Padlocked() {
		return i.thing
	}
	for _, e := range p.Cuts {
		if slices.ContainsFunc(w.lay.energy[e].points, (*model.Point).Padlocked) {
			return w.lay.of[e]
		}
	}
	return i.thing
}

// moveOr moves a step behind the one that does what it waits for, or says what
// to write before it.
func (w *walk) moveOr(i *issue, act model.Act, links ...finding.Words) finding.Words {
	if words := behindStep(w.actLater(i, act)); !words.IsZero() {
		return words
	}
	return writeBefore(links...)
}

// mendLive moves hands behind the proof, or says what is missing until then.
func (w *walk) mendLive(group []*issue) finding.Words {
	var last *model.Step
	var links []finding.Words
	for _, i := range group {
		e, is := w.lay.things[i.thing].named.(*model.Energy)
		if !is {
			return finding.Words{}
		}
		s := w.actLater(i, model.Prove)
		if s == nil {
			links = append(links, w.untilDead(i, e)...)
		} else if last == nil || s.Done > last.Done {
			last = s
		}
	}
	if len(links) > 0 {
		return writeBefore(links...)
	}
	return behindStep(last)
}

// mendGuard says what is missing until a guard may come off.
func (w *walk) mendGuard(group []*issue) finding.Words {
	var cut, warned []finding.Words
	for _, i := range group {
		e, is := w.lay.things[i.thing].named.(*model.Energy)
		switch {
		case !is || i.at.step == nil:
			return finding.Words{}
		case len(w.lay.energy[e].points) == 0:
			return w.mendUnswitched(i)
		case i.why.IsZero() && !w.mendKept(i).IsZero():
			return w.mendKept(i)
		case i.why.IsZero():
			cut = append(cut, w.cutOff(i, e)...)
		}
		if states(dead)&states(w.standing(i)) == 0 && !w.hazardOf(i.at.step, e.ID) {
			warned = append(warned, w.warning(e))
		}
	}
	switch {
	case len(cut) == 0 && len(warned) > 0:
		return finding.Say("write %s in this step", finding.ListOf(" and ", warned))
	case len(warned) == 0 || len(cut) > mostLinks:
		return writeBefore(cut...)
	}
	return finding.Say("%s, and %s in this one", writeBefore(cut...), finding.ListOf(" and ", warned))
}

// warning is a link to a hazard of an energy.
func (w *walk) warning(e *model.Energy) finding.Words {
	var met []string
	for _, h := range w.manual.Hazards {
		if h.Of.ID == e.ID && !h.Misread {
			met = append(met, "[](hazard:"+h.ID+")")
		}
	}
	if len(met) == 0 {
		return finding.Say("a hazard with of: %s", e.ID)
	}
	return finding.Say("%s", either(met))
}

// mendTest says what a live test lacks.
func (w *walk) mendTest(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	switch {
	case !is:
		return finding.Words{}
	case i.why.Template == "put on for a test by one person alone":
		return finding.Say("write [](people:2) in this step")
	case i.why.Template == "put on for a test, and the step meets no hazard of it":
		return finding.Say("write %s in this step", w.warning(e))
	}
	return finding.Say("write a hold of kind sign or check in this step")
}

// mendUnswitched is what to do about a guard over what nothing switches.
func (w *walk) mendUnswitched(i *issue) finding.Words {
	return finding.Say("nothing switches it off: let it out, wait, or block it, and write [see that it is out](prove:%s) in a step before", w.idOf(i.thing))
}

// backEarlier is what is said of an energy that the machine has back first.
const backEarlier = "should come back before the %s"

// mendKept says what a plug that is kept cannot do: it is a lock in the hands of
// one who works alone, and overnight it is in nobody's.
func (w *walk) mendKept(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is || w.lay.energy[e] == nil || w.hasKept(w.lay.energy[e]) == diagram.No {
		return finding.Words{}
	}
	if i.rule == &BadPause {
		return finding.Say("a kept plug is in nobody's hands overnight: stop where the %s is back on, or lock it at a point that takes a padlock", e.Label())
	}
	if w.aloneHere() == diagram.No {
		return finding.Say("a kept plug is a lock only where one person works: lock the %s at a point that takes a padlock, or write people: 1", e.Label())
	}
	return finding.Words{}
}
