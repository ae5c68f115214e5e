package walk

import (
	"slices"
	"strings"

	"baybinder/generator/finding"
	"baybinder/generator/source"
)

// findings makes one finding of what was found at one link by one rule.
func (w *walk) findings() []finding.Finding {
	var out []finding.Finding
	for i := range w.issues {
		first := &w.issues[i]
		if slices.ContainsFunc(w.issues[:i], first.together) {
			continue
		}
		var group []*issue
		for j := range w.issues[i:] {
			if other := &w.issues[i+j]; first.together(*other) {
				group = append(group, other)
			}
		}
		out = append(out, w.finding(group))
	}
	for _, e := range w.over {
		if e.link != nil {
			out = append(out, TooManyConditions.At(e.link.At, "more than %d conditions meet here: it is not walked", Most).WithMend("%s", TooManyConditions.Mend))
		}
	}
	for _, at := range w.never {
		out = append(out, NeverApplies.At(at, "no unit of the %s has it so: this is never done", w.machineLabel()).WithMend("%s", NeverApplies.Mend))
	}
	for _, m := range w.missing {
		out = append(out, NotSupplied.At(m.at, "the refit needs %s of the %s; %s listed", m.amount(m.most), m.supply.Label(), m.isListed()).
			WithMend("write %s: %s in supplies", m.supply.ID, m.amount(m.most)))
	}
	return out
}

func (m missing) isListed() string {
	if m.have == 0 {
		return "none is"
	}
	return m.amount(m.have) + " is"
}

func (w *walk) machineLabel() string {
	if w.lay.machine == nil {
		return "shop"
	}
	return w.lay.machine.Label()
}

func (i *issue) together(other issue) bool {
	return i.rule == other.rule && i.at.link.At == other.at.link.At
}

// finding words a group of issues.
func (w *walk) finding(group []*issue) finding.Finding {
	rule := group[0].rule
	var said []string
	where := no
	for _, i := range group {
		where = w.or(where, i.where)
	}
	whole := w.only(where)
	for _, i := range group {
		words := w.says(i)
		if mine := w.only(i.where); mine != whole && mine != "" {
			words += " (" + mine + ")"
		}
		if !slices.Contains(said, words) {
			said = append(said, words)
		}
	}
	text := leadIn(rule) + strings.Join(said, "; ")
	if whole != "" {
		text += ": " + whole
	}
	f := rule.At(group[0].at.link.At, "%s", text).WithMend("%s", rule.Mend)
	return w.related(f, group)
}

// related adds the links that put things where they are.
func (w *walk) related(f finding.Finding, group []*issue) finding.Finding {
	var seen []source.Pos
	for _, i := range group {
		if i.thing == nothing {
			continue
		}
		e := w.put2(i)
		if e.link == nil || e.link.At == f.At || slices.Contains(seen, e.link.At) || len(seen) == 3 {
			continue
		}
		seen = append(seen, e.link.At)
		f = f.See(e.link.At, "the "+w.label(i.thing)+" is "+w.stateWord(i)+" from here")
	}
	return f
}

// put2 is the event that put the thing of an issue where it was.
func (w *walk) put2(i *issue) event {
	return w.events[w.value(i.last, w.path(w.and(i.where, w.all())))]
}

func (w *walk) stateWord(i *issue) string {
	s := w.value(i.state, w.path(w.and(i.where, w.all())))
	return spoken(w.lay.things[i.thing].sort, s)
}

// spoken is a state as one says it.
func spoken(s sort, f fn) string {
	switch {
	case s == aTool && f == set:
		return "in place"
	case s == anEnergy && f == dead:
		return "proved dead"
	case s == aPart && f == capped:
		return "off"
	}
	return word(s, f)
}

func (w *walk) label(x thing) string {
	i := w.lay.things[x]
	return labelAt(i.named, i.part)
}

// leadIn is what stands before the things of a finding.
func leadIn(r *rule) string {
	switch r {
	case &RestoredWhileOpen:
		return "it comes back on while "
	case &RefitOverOpen:
		return "it goes back on while "
	case &NotReachable:
		return "it cannot come off while "
	case &BadPause:
		return "the work stops here while "
	}
	return ""
}

// says words one issue.
func (w *walk) says(i *issue) string {
	if i.thing == nothing {
		if i.rule == &ReverseRule {
			return "nothing that this phase took off is still off here"
		}
		return i.why
	}
	the := "the " + w.label(i.thing)
	is := the + " is " + w.stateWord(i) + w.sinceWords(i)
	return w.saysOf(i, the, is) + w.inCall(i)
}

func (w *walk) saysOf(i *issue, the, is string) string {
	switch i.rule {
	case &LiveWork:
		return is + ", not proved dead"
	case &GuardOffLive:
		if i.why == "" {
			return is + ", and this is what keeps hands from it"
		}
	case &LeftIsolated, &LeftOff, &LeftLoose, &LeftAltered, &LeftLow, &LeftInPlace:
		return the + " is left " + w.stateWord(i) + " at the end"
	case &NotBled:
		return the + " is not bled after it was opened"
	case &NotMarked:
		return the + " look alike, and more than one is opened before they are marked"
	case &NotCapped:
		return the + " stays open across a hold"
	case &LeakLookWhileWet:
		return the + " was spilled" + w.sinceWords(i) + " and is not dried"
	case &StateMismatch:
		return is + ": it " + i.why
	case &ReverseRule:
		return the + " " + i.why
	}
	if i.why != "" {
		return the + " " + i.why + w.nowWords(i)
	}
	return is
}

// nowWords says how a thing stands, where an act does not fit.
func (w *walk) nowWords(i *issue) string {
	return " (" + w.stateWord(i) + w.sinceWords(i) + ")"
}

// sinceWords names the step that put a thing where it is.
func (w *walk) sinceWords(i *issue) string {
	if s := w.put2(i).step; s != nil {
		return " since step " + s.Number
	}
	return ""
}

// inCall names the step of a callee that something goes wrong in.
func (w *walk) inCall(i *issue) string {
	if i.from == nil || i.from.at.step == nil {
		return ""
	}
	s := i.from.at.step
	return ", in step " + s.Number + " of " + s.Of.Label()
}
