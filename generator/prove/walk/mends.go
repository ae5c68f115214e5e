package walk

import (
	"math"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// mend is what to do about an issue: what to write, where that is plain, else
// what the rule says.
func (w *walk) mend(i *issue) finding.Words {
	var words finding.Words
	switch i.rule {
	case &ProofWithoutMeasure:
		words = w.mendProof(i)
	case &NotReleased:
		words = w.mendRelease(i)
	case &GuardOffLive, &LiveTest:
		if words = w.mendUnswitched(i); words.IsZero() {
			words = w.mendMet(i)
		}
		if words.IsZero() {
			words = w.mendKept(i)
		}
	case &LeftIsolated:
		words = w.mendUnswitched(i)
	case &StateMismatch:
		words = w.mendMismatch(i)
	case &LeftLoose:
		words = w.mendLoose(i)
	case &WaitTooShort, &WaitShortOfLimit:
		words = w.mendWait(i)
	case &ActOrder:
		words = w.mendClear(i)
	case &NotAsked:
		words = finding.Say("write [](hold:%s) in a step before this, after the last thing that is taken off or loosened", w.lay.things[i.thing].named.Base().ID)
	case &NotReachable, &RefitOverOpen:
		words = w.mendHeldBack(i)
	case &EnergyOrder:
		if words = w.mendOrder(i); words.IsZero() {
			words = w.mendKept(i)
		}
	case &BadPause:
		words = w.mendKept(i)
	}
	if words.IsZero() {
		return finding.Say(i.rule.Mend)
	}
	return words
}

// mendProof says why a measurement that stands beside a proof does not count.
func (w *walk) mendProof(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is || i.at.step == nil {
		return finding.Words{}
	}
	for _, l := range i.at.step.Links {
		hold, is := l.To.(*model.Hold)
		if !is || l.Bad || hold.Lost("kind", "limit", "of") || hold.Kind != "measure" {
			continue
		}
		if why := w.noProof(hold, e); !why.IsZero() {
			return finding.Say("the hold %s does not count: %s", hold.ID, why)
		}
	}
	return w.mendShown(e)
}

// mendShown names the holds of the register that would show an energy dead.
func (w *walk) mendShown(e *model.Energy) finding.Words {
	shows := w.holdsThat(e, func(h *model.Hold) bool {
		proved := !w.aboveSafe(e) || h.ProvedOn.ID != ""
		return h.Kind == "measure" && w.measures(h, e) && proved || !w.aboveSafe(e) && (h.Kind == "look" && h.LooksFor == "" || h.Kind == "check")
	})
	if len(shows) == 0 {
		return finding.Words{}
	}
	return finding.Say("write %s beside the proof", either(shows))
}

// mendRelease names what of the register lets out what is stored in an energy.
func (w *walk) mendRelease(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is {
		return finding.Words{}
	}
	ways := either(w.holdsThat(e, func(h *model.Hold) bool { return h.Kind == "wait" }))
	for _, t := range e.BlockedBy {
		if t.To != nil {
			ways.Items = append(ways.Items, "[](place:"+t.ID+")")
		}
	}
	ways.Items = append(ways.Items, finding.Say("[let it out](release:%s)", e.ID))
	return finding.Say("write %s in a step before the proof", ways)
}

// mendUnswitched is what to do about an energy that nothing switches.
func (w *walk) mendUnswitched(i *issue) finding.Words {
	if i.thing == nothing {
		return finding.Words{}
	}
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is || len(e.Points) > 0 || e.Lost("points") {
		return finding.Words{}
	}
	switch i.rule {
	case &GuardOffLive:
		return finding.Say("nothing switches it off: let it out, wait, or block it, and write [see that it is out](prove:%s) in a step before", e.ID)
	case &LeftIsolated:
		return finding.Say("write [bring it back](restore:%s) where it comes back, or %s: %s in leaves", e.ID, e.ID, w.stood(i))
	}
	return finding.Words{}
}

// stood is the format's word for how the thing of an issue stands.
func (w *walk) stood(i *issue) string {
	return word(w.lay.things[i.thing].sort, w.Value(i.state, w.Witness(w.And(i.where, w.all()))))
}

// mendMet names the hazards of an energy, and for a test the holds, that the
// step lacks.
func (w *walk) mendMet(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is || i.at.step == nil || !w.lacksHazard(i, e) {
		return finding.Words{}
	}
	var met []string
	for _, h := range w.manual.Hazards {
		if h.Of.ID == e.ID && !h.Misread {
			met = append(met, "[](hazard:"+h.ID+")")
		}
	}
	if len(met) == 0 {
		return finding.Words{}
	}
	return finding.Say("%s Here: %s.", finding.Say(i.rule.Mend), either(met))
}

// lacksHazard says that a step meets no hazard of an energy.
func (w *walk) lacksHazard(i *issue, e *model.Energy) bool {
	for _, l := range i.at.step.Links {
		if h, is := l.To.(*model.Hazard); is && h.Of.ID == e.ID {
			return false
		}
	}
	return true
}

// holdsThat are links to the holds of an energy that are of use.
func (w *walk) holdsThat(e *model.Energy, useful func(*model.Hold) bool) []string {
	var out []string
	for _, h := range w.manual.Holds {
		if h.Of.ID == e.ID && !h.Misread && useful(h) {
			out = append(out, "[](hold:"+h.ID+")")
		}
	}
	return out
}

// either is links of which one is enough.
func either(links []string) finding.List { return finding.ListOf(" or ", links) }

// noProof is why a measurement does not show that an energy is dead, and what
// to write; "" where it says nothing of that energy.
func (w *walk) noProof(h *model.Hold, e *model.Energy) finding.Words {
	limits := w.manual.Shop.Limits
	low, high := h.Limit.Bounds()
	switch {
	case e.Kind == "electric" && h.Limit.Unit.Dimension() == quantity.Voltage:
		return w.noVoltage(h, e)
	case h.Of.ID != e.ID || w.measures(h, e):
		return finding.Words{}
	case e.Kind == "vacuum" && math.IsInf(low, -1):
		return finding.Say("its limit, %s, has no lower end", language.Limit(h.Limit))
	case e.Kind == "vacuum":
		return finding.Say("its limit, %s, goes further below the atmosphere than safe-pressure, %s", language.Limit(h.Limit), limits.SafePressure)
	case math.IsInf(high, 1):
		return finding.Say("its limit, %s, has no upper end", language.Limit(h.Limit))
	case e.Kind == "pressure":
		return finding.Say("its limit, %s, goes above the shop's safe-pressure, %s", language.Limit(h.Limit), limits.SafePressure)
	case e.Kind == "heat":
		return finding.Say("its limit, %s, goes above the shop's safe-touch, %s", language.Limit(h.Limit), limits.SafeTouch)
	}
	return finding.Words{}
}

// noVoltage is noProof of a measured voltage.
func (w *walk) noVoltage(h *model.Hold, e *model.Energy) finding.Words {
	switch {
	case h.Of.ID == "":
		return finding.Say("it does not say of what it is; write of: %s", e.ID)
	case h.Of.ID != e.ID:
		return finding.Say("it is of %s; write a hold with of: %s", h.Of.ID, e.ID)
	case e.Voltage.Flow == quantity.Unsaid:
		return finding.Say("the voltage in the machine's file says neither ac nor dc; write it there")
	case h.Limit.Flow == quantity.Unsaid:
		return finding.Say("its limit says neither ac nor dc; write %s behind it", e.Voltage.Flow)
	case h.Limit.Flow != e.Voltage.Flow:
		return finding.Say("its limit is %s, and the energy is %s", h.Limit.Flow, e.Voltage.Flow)
	}
	return finding.Say("its limit is above the shop's safe voltage")
}

// mendMismatch says which word would be true, at expects or at leaves.
func (w *walk) mendMismatch(i *issue) finding.Words {
	if i.from != nil {
		return finding.Words{}
	}
	named, s := w.lay.things[i.thing].named, w.Value(i.state, w.Witness(w.And(i.where, w.all())))
	is := word(w.lay.things[i.thing].sort, s)
	if named == nil || is == "" {
		return finding.Words{}
	}
	id := named.Base().ID
	if i.at.link.Kind == nil { // at a line of leaves
		if is == word(w.lay.things[i.thing].sort, 0) { // how all is that leaves does not name
			return finding.Say("bring it there with links in the steps, or take %s out of leaves", id)
		}
		return finding.Say("bring it there with links in the steps, or write %s: %s in leaves", id, is)
	}
	callee, isCall := i.at.link.To.(*model.Procedure)
	if !isCall {
		return finding.Words{}
	}
	if e, energy := named.(*model.Energy); energy && len(e.Points) > 0 && e.Points[0].To != nil && (is == "dead" || is == "released") {
		p := e.Points[0].To
		stands := "isolated"
		if p.Padlocked() {
			stands = "locked"
		}
		return finding.Say("write %s: %s in expects of %s in place of %s: its point stands so whatever was done since", p.ID, stands, callee.ID, id)
	}
	return finding.Say("bring it there in a step before, or write %s: %s in expects of %s", id, is, callee.ID)
}

// mendLoose says how a fastener is tightened: refit: puts a part on and leaves
// that to a link of its own.
func (w *walk) mendLoose(i *issue) finding.Words {
	thing := w.lay.things[i.thing]
	if thing.named == nil {
		return finding.Words{}
	}
	address := "tighten:" + thing.named.Base().ID
	if f, is := thing.named.(*model.Fastener); is && thing.part != nil && len(f.Holds) > 1 {
		address += "#" + thing.part.ID
	}
	return finding.Say("write [tighten it](%s) where the part is back on, or say in leaves: that it stays loose", address)
}

// mendHeldBack says what frees a part that nothing covers.
func (w *walk) mendHeldBack(i *issue) finding.Words {
	f, is := w.lay.things[i.thing].named.(*model.Fastener)
	if !is || i.why.Template != heldBack {
		return finding.Words{}
	}
	return finding.Say("write [slacken it](loosen:%s) in a step before", f.ID)
}

// mendClear says what comes before a tool is taken away.
func (w *walk) mendClear(i *issue) finding.Words {
	tool, is := w.lay.things[i.thing].named.(*model.Tool)
	if !is || i.at.link.Kind == nil || i.at.link.Kind.Act != model.Clear {
		return finding.Words{}
	}
	return finding.Say("write place:%s in a step before; where it is in place already, write expects: { %s: placed } in the front matter", tool.ID, tool.ID)
}

// backEarlier is what is said of an energy that the machine has back first.
const backEarlier = "should come back before the %s"

// mendOrder says what comes back first.
func (w *walk) mendOrder(i *issue) finding.Words {
	if i.why.Template != backEarlier {
		return finding.Words{}
	}
	return finding.Say("bring the %s back in a step before this one, or mend restore-order: in the machine's file", w.label(i.thing))
}

// mendKept says what a plug that is kept cannot do: it is a lock in the hands of
// one who works alone, and overnight it is in nobody's.
func (w *walk) mendKept(i *issue) finding.Words {
	if i.thing == nothing {
		return finding.Words{}
	}
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
