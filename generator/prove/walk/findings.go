package walk

import (
	"fmt"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// findings makes one finding of what was found at one link by one rule.
func (w *walk) findings() []finding.Finding {
	var out []finding.Finding
	for _, group := range grouped(w.inShort(slices.Concat(w.issues, w.left))) {
		out = append(out, w.finding(group))
	}
	for _, e := range w.over {
		if e.link != nil {
			out = append(out, TooManyConditions.At(e.link.At, "more than %d conditions meet here: the order of the work is not checked", Most).WithMend("%s", finding.Say(TooManyConditions.Mend)))
		}
	}
	for _, at := range w.never {
		out = append(out, NeverApplies.At(at, "no unit of the %s has it so: this is never done", w.machineName()).WithMend("%s", finding.Say(NeverApplies.Mend)))
	}
	for _, m := range w.missing {
		out = append(out, NotSupplied.At(m.at, "the refit needs %s of the %s; %s", m.amount(m.most), m.supply.Label(), m.isListed()).
			WithMend("write %s: %s in supplies", m.supply.ID, m.amount(m.most)))
	}
	return out
}

// grouped puts together what was found at one link by one rule, in the order
// in which it was found.
func grouped(issues []issue) [][]*issue {
	var groups [][]*issue
	for i := range issues {
		n := slices.IndexFunc(groups, func(g []*issue) bool { return g[0].together(issues[i]) })
		if n < 0 {
			n, groups = len(groups), append(groups, nil)
		}
		groups[n] = append(groups[n], &issues[i])
	}
	return groups
}

// manyFindings is how many findings a procedure has before they are told in
// short: one missing refit should not fill the page.
const manyFindings = 3

// inShort tells what comes of one fault once, where there is much to tell: at
// the first link that it shows at. What is left undone at the end, and what is
// found open on the way back, comes of the phase that opened it, whose refit is
// missing; a fault of energies comes of what put them where they are.
func (w *walk) inShort(issues []issue) []issue {
	if w.tellAll || len(grouped(issues)) <= manyFindings {
		return issues
	}
	first := map[cause]*issue{}
	out := slices.Clone(issues)
	for n := range out {
		i := &out[n]
		c, known := w.causeOf(i, n >= len(w.issues))
		switch f := first[c]; {
		case !known:
		case f == nil:
			first[c] = &issues[n]
		case f.rule != i.rule:
			i.why, i.rule, i.at = finding.Say(heads[i.rule]), f.rule, f.at
		default:
			i.at = f.at
		}
	}
	return out
}

// cause is what several findings come of.
type cause struct {
	rule  *rule
	phase *model.Phase
	event event
}

func (w *walk) causeOf(i *issue, left bool) (c cause, known bool) {
	switch {
	case i.thing == nothing:
		return c, false
	case left:
		c = cause{rule: &LeftOff, phase: w.openedIn(i)}
		return c, c.phase != nil
	}
	switch i.rule {
	case &RestoredWhileOpen, &RefitOverOpen:
		c = cause{rule: i.rule, phase: w.openedIn(i)}
		return c, c.phase != nil
	case &LiveWork, &GuardOffLive, &EnergyOrder, &NotReleased:
		return cause{rule: i.rule, event: w.cause(i)}, true
	}
	return c, false
}

// openedIn is the phase in which the thing of an issue was opened.
func (w *walk) openedIn(i *issue) *model.Phase {
	if i.thing == nothing {
		return nil
	}
	e := w.events[w.Value(i.began, w.Witness(w.And(i.where, w.all())))]
	if e.step == nil {
		return nil
	}
	return e.step.Phase
}

func (m missing) isListed() finding.Words {
	if m.have == 0 {
		return finding.Say("none is listed")
	}
	return finding.Say("the list has %s", m.amount(m.have))
}

// machineName is the machine's name; a procedure for none has no machine.
func (w *walk) machineName() any {
	if w.lay.machine == nil {
		return finding.Say("shop")
	}
	return w.lay.machine.Label()
}

func (i *issue) together(other issue) bool {
	return i.rule == other.rule && i.at.link.At == other.at.link.At
}

// finding words a group of issues: what is wrong, and after a colon each thing
// that it is so of.
func (w *walk) finding(group []*issue) finding.Finding {
	group = w.merged(group)
	r, where := group[0].rule, diagram.No
	for _, i := range group {
		where = w.Or(where, i.where)
	}
	whole := w.only(where)
	var said []finding.List // a head, then the things that it is so of
	own := len(group) > 1   // each thing says where it is so
	for _, i := range group {
		head, thing := w.head(i), w.thingWords(i, whole)
		own = own && w.saysWhere(i, whole)
		n := slices.IndexFunc(said, func(l finding.List) bool { return same(l.Items[0], head) })
		if n < 0 {
			n, said = len(said), append(said, finding.List{Items: []any{head}})
		}
		if !thing.IsZero() && !slices.ContainsFunc(said[n].Items[1:], func(t any) bool { return same(t, thing) }) {
			said[n].Items = append(said[n].Items, thing)
		}
	}
	var text finding.Words
	for _, l := range said {
		text = behind(text, "%s; %s", withThings(l))
	}
	if !whole.IsZero() && !own {
		text = behind(text, "%s; %s", whole)
	}
	mend := w.mend(group)
	f := r.At(group[0].at.link.At, text.Template, text.Values...).WithMend(mend.Template, mend.Values...)
	return w.related(f, group)
}

func same(a, b any) bool { return fmt.Sprint(a) == fmt.Sprint(b) }

// withThings is a head and its things: "still in the way: lid, fan".
func withThings(l finding.List) finding.Words {
	head := l.Items[0].(finding.Words)
	if things := l.Items[1:]; len(things) > 0 {
		return finding.Say("%s: %s", head, finding.List{Items: things})
	}
	return head
}

// behind puts words behind others, where there are any.
func behind(words finding.Words, between string, more finding.Words) finding.Words {
	if words.IsZero() {
		return more
	}
	return finding.Say(between, words, more)
}

// head is what is wrong.
func (w *walk) head(i *issue) finding.Words {
	head := i.why
	if head.IsZero() {
		head = finding.Say(heads[i.rule])
	}
	if i.from == nil || i.from.at.step == nil {
		return head
	}
	s := i.from.at.step
	return finding.Say("in step %s of \"%s\": %s", s.Number, s.Of.Label(), head)
}

// heads are what is wrong where a rule says one thing only; the things stand
// behind a colon.
var heads = map[*rule]string{
	&LiveWork:                "hands go in before it is proved dead",
	&GuardOffLive:            "its guard comes off before it is isolated, and locked where it can be",
	&RestoredWhileOpen:       "it comes back on, and this is not back as it was",
	&NotReachable:            "still in the way",
	&RefitOverOpen:           "still open under it",
	&LeftIsolated:            "not brought back at the end",
	&LeftOff:                 "left off at the end",
	&LeftLoose:               "left loose at the end",
	&LeftInPlace:             "left in place at the end",
	&LeftAltered:             "left altered at the end",
	&LeftLow:                 "left low at the end",
	&NotBled:                 "not bled after it was opened",
	&NotMarked:               "opened before they are marked, and more than one is",
	&NotCapped:               "open across a hold without a cap",
	&LeakLookWhileWet:        "looked at for a leak before the spill is dried",
	&LeakLookWithoutPressure: "looked at for a leak with the pressure off, and not again with it on",
	&BadPause:                "the work stops here with this unsafe",
}

// thingWords is the thing of an issue, how it stands, and where that is so if
// it is not so wherever the finding is.
func (w *walk) thingWords(i *issue, whole finding.Words) finding.Words {
	if i.thing == nothing {
		return finding.Words{}
	}
	words := finding.Say("%s", w.label(i.thing))
	if more := w.howItStands(i); !more.IsZero() {
		words = finding.Say("%s (%s)", words, more)
	}
	if w.saysWhere(i, whole) {
		words = finding.Say("%s %s", words, w.only(i.where))
	}
	return words
}

// saysWhere says that an issue is not so wherever its finding is.
func (w *walk) saysWhere(i *issue, whole finding.Words) bool {
	mine := w.only(i.where)
	return i.thing != nothing && !mine.IsZero() && !same(mine, whole)
}

// merged puts together what is told of one thing that stands as it does by one
// step, on some units by one act of a link and on the others by another.
func (w *walk) merged(group []*issue) []*issue {
	var out []*issue
	for _, i := range group {
		n := slices.IndexFunc(out, func(o *issue) bool {
			return o.thing == i.thing && same(w.head(o), w.head(i)) && (i.thing == nothing || same(w.howItStands(o), w.howItStands(i)))
		})
		if n < 0 {
			out = append(out, i)
			continue
		}
		both := *out[n]
		both.where = w.Or(both.where, i.where)
		both.state, both.last, both.began = w.Ite(i.where, i.state, both.state), w.Ite(i.where, i.last, both.last), w.Ite(i.where, i.began, both.began)
		out[n] = &both
	}
	return out
}

// howItStands is the state of a thing and the step that put it there.
func (w *walk) howItStands(i *issue) finding.Words {
	if i.rule == &NotAsked || i.rule == &NotMarked || i.rule == &LeakLookWithoutPressure {
		return finding.Words{}
	}
	words := w.stateWord(i)
	if s := w.cause(i).step; s != nil {
		return finding.Say("%s since step %s", words, s.Number)
	}
	return words
}

// related adds the links that put things where they are.
func (w *walk) related(f finding.Finding, group []*issue) finding.Finding {
	var seen []position.Pos
	for _, i := range group {
		if i.short != nil {
			f = f.See(w.lay.things[i.short.thing].named.Base().At, "what is stored is here")
		}
		if i.thing == nothing {
			continue
		}
		e := w.cause(i)
		if e.link == nil || e.link.At == f.At || slices.Contains(seen, e.link.At) || len(seen) == 3 {
			continue
		}
		seen = append(seen, e.link.At)
		if i.rule == &NotAsked {
			f = f.See(e.link.At, "something is opened here")
			continue
		}
		f = f.See(e.link.At, "%s: %s from here on", w.label(i.thing), w.stateWord(i))
	}
	return f
}

// cause is the event that put the thing of an issue where it was.
func (w *walk) cause(i *issue) event {
	return w.events[w.Value(i.last, w.Witness(w.And(i.where, w.all())))]
}

func (w *walk) stateWord(i *issue) finding.Words {
	s := w.Value(i.state, w.Witness(w.And(i.where, w.all())))
	return finding.Say(spoken(w.lay.things[i.thing].sort, s))
}

// stands is the format's word for how a thing stands, as words.
func stands(word string) finding.Words { return finding.Words{Template: word} }

// spoken is a state as one says it.
func spoken(s sort, f diagram.Func) string {
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

func (w *walk) label(x thing) finding.Words {
	i := w.lay.things[x]
	return labelAt(i.named, i.part)
}
