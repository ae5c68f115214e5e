package walk

import (
	"math"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

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
	shows := w.shownBy(e)
	if len(shows) == 0 {
		return finding.Words{}
	}
	return finding.Say("write %s beside the proof", either(shows))
}

// shownBy are links to the holds of the register that would show an energy dead.
func (w *walk) shownBy(e *model.Energy) []string {
	return w.holdsThat(e, func(h *model.Hold) bool {
		proved := !w.aboveSafe(e) || h.ProvedOn.ID != ""
		return h.Kind == "measure" && w.measures(h, e) && proved || !w.aboveSafe(e) && (h.Kind == "look" && h.LooksFor == "" || h.Kind == "check")
	})
}

// mendRelease names what of the register lets out what is stored in an energy.
func (w *walk) mendRelease(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is {
		return finding.Words{}
	}
	if s := w.releasedLater(i, e); s != nil {
		return behindStep(s)
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

// releasedLater is the step behind an issue that lets out what is stored in an
// energy; nil where it is on again before that, or none does.
func (w *walk) releasedLater(i *issue, e *model.Energy) *model.Step {
	lets := func(l *model.Link) bool {
		switch to := l.To.(type) {
		case *model.Hold:
			return l.Is(model.LinkHold) && to.Kind == "wait" && to.Of.ID == e.ID
		case *model.Tool:
			return l.Kind.Act == model.Place && slices.Contains(leads(e.BlockedBy), to)
		}
		return l.Kind.Act == model.Release && l.To == model.Named(e)
	}
	s := w.laterStep(i, func(l *model.Link) bool {
		return lets(l) || slices.Contains([]model.Act{model.Restore, model.TestLive, model.Isolate}, l.Kind.Act)
	})
	if s == nil || !slices.ContainsFunc(s.Links, lets) {
		return nil
	}
	return s
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

// mendTester names the hold whose tester is not proved.
func (w *walk) mendTester(i *issue) finding.Words {
	e, is := w.lay.things[i.thing].named.(*model.Energy)
	if !is || i.at.step == nil {
		return finding.Words{}
	}
	for _, l := range i.at.step.Links {
		if h, is := l.To.(*model.Hold); is && !l.Bad && w.measures(h, e) && h.ProvedOn.ID == "" {
			return finding.Say("write proved-on: in the hold %s, with the proving unit", h.ID)
		}
	}
	return finding.Words{}
}
