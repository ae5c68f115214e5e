package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
)

// putRight are the links that bring a thing back to how it was.
func (w *walk) putRight(i *issue) []finding.Words {
	info, id := w.lay.things[i.thing], w.idOf(i.thing)
	switch info.sort {
	case anEnergy, aPoint:
		return w.backOn(i)
	case aPart:
		return w.backOf(info.named.(*model.Part))
	case aFastening, aFastener:
		return []finding.Words{finding.Say("[tighten it](%s)", w.tightens(i.thing))}
	case aFluid:
		if w.standing(i) == unbled {
			return []finding.Words{finding.Say("[bleed it](bleed:%s)", id)}
		}
		return []finding.Words{finding.Say("[fill it](fill:%s)", id)}
	case aTool:
		return []finding.Words{finding.Say("[take it away](clear:%s)", id)}
	case aSetting:
		return []finding.Words{finding.Say("[set it back](reset:%s)", id)}
	case aSpill, aGroup, aGap, anAsked:
	}
	return nil
}

// backOn are the links that bring an energy or a point back.
func (w *walk) backOn(i *issue) []finding.Words {
	id := w.idOf(i.thing)
	back := finding.Say("[bring it back](restore:%s)", id)
	points := []*model.Point{}
	switch n := w.lay.things[i.thing].named.(type) {
	case *model.Point:
		points = append(points, n)
	case *model.Energy:
		points = w.lay.energy[n].points
	}
	padlock := slices.ContainsFunc(points, (*model.Point).Padlocked)
	if padlock && states(locked, released, dead)&states(w.standing(i)) != 0 {
		return []finding.Words{finding.Say("[take the lock off](unlock:%s)", id), back}
	}
	return []finding.Words{back}
}

// backOf are the links that put a part back, fast.
func (w *walk) backOf(p *model.Part) []finding.Words {
	out := []finding.Words{finding.Say("[put it back](refit:%s)", p.ID)}
	for _, x := range w.lay.held[p] {
		out = append(out, finding.Say("[tighten it](%s)", w.tightens(x)))
	}
	return out
}

// tightens is the address that tightens a fastener, at its part where it holds
// several.
func (w *walk) tightens(x thing) string {
	info := w.lay.things[x]
	address := "tighten:" + info.named.Base().ID
	if f, is := info.named.(*model.Fastener); is && info.part != nil && len(f.Holds) > 1 {
		address += "#" + info.part.ID
	}
	return address
}

// rightLater is the step behind an issue that puts its thing right, by a link of
// its own or by a reverse:; nil where none does.
func (w *walk) rightLater(i *issue) *model.Step {
	info := w.lay.things[i.thing]
	var reversed *model.Step
	for _, r := range w.out.Reversals {
		takes := func(d Derived) bool {
			return d.Thing == info.named || d.Thing == model.Named(info.part) && info.part != nil
		}
		if r.Link.At.Start > i.at.link.At.Start && r.Step != i.at.step && slices.ContainsFunc(r.Steps, takes) {
			reversed = r.Step
			break
		}
	}
	own := w.laterStep(i, func(l *model.Link) bool { return w.puts(i, l) })
	if own == nil || reversed != nil && reversed.Done < own.Done {
		return reversed
	}
	return own
}

// fastLater is the step by which a part that a step puts back is tight too: a
// refit of its own leaves its fasteners loose, a reverse: tightens them.
func (w *walk) fastLater(i *issue, back *model.Step) *model.Step {
	p, is := w.lay.things[i.thing].named.(*model.Part)
	if !is || back == nil || !slices.ContainsFunc(back.Links, func(l *model.Link) bool { return w.puts(i, l) }) {
		return back
	}
	for _, x := range w.lay.held[p] {
		loose := *i
		loose.thing = x
		if s := w.laterStep(i, func(l *model.Link) bool { return w.puts(&loose, l) }); s != nil && s.Done > back.Done {
			back = s
		}
	}
	return back
}

// puts says that a link puts the thing of an issue right.
func (w *walk) puts(i *issue, l *model.Link) bool {
	to := map[sort]model.Act{anEnergy: model.Restore, aPart: model.Refit, aFastening: model.Tighten, aFastener: model.Tighten, aSetting: model.Reset}
	info := w.lay.things[i.thing]
	act, one := to[info.sort]
	if info.sort == aFluid {
		act, one = model.Fill, true
		if w.standing(i) == unbled {
			act = model.Bleed
		}
	}
	return one && l.Kind.Act == act && l.To == info.named && (info.part == nil || l.Part() == nil || l.Part() == info.part)
}

// mendOpen says what is put right before an energy comes back, or before a part
// goes over it.
func (w *walk) mendOpen(group []*issue) finding.Words {
	var last *model.Step
	var links []finding.Words
	for _, i := range group {
		switch {
		case i.why.Template == heldBack:
			return w.mendHeldBack(i)
		case w.lay.things[i.thing].sort == anEnergy:
			return w.mendUncontained(i)
		}
		s := w.fastLater(i, w.rightLater(i))
		if s == nil {
			links = append(links, w.putRight(i)...)
		} else if last == nil || s.Done > last.Done {
			last = s
		}
	}
	if len(links) == 0 {
		return behindStep(last)
	}
	if ph := w.phaseOf(group); ph != "" && len(group) > 1 {
		return writeBefore(finding.Say("[put all of it back](reverse:%s)", ph))
	}
	return writeBefore(links...)
}

// mendCovered says what is put right before a part goes over it. A part that a
// later reverse: puts back with what lies under it goes back there alone.
func (w *walk) mendCovered(group []*issue) finding.Words {
	i := group[0]
	p, is := i.at.link.To.(*model.Part)
	if !is || i.at.link.Kind.Act != model.Refit || i.why.Template == heldBack {
		return w.mendOpen(group)
	}
	for _, r := range w.out.Reversals {
		if r.Link.At.Start < i.at.link.At.Start || r.Step == i.at.step || !w.wouldTake(r.Link, p) || !w.takesAny(r, group) {
			continue
		}
		if w.onlyFor(i.at.step, p) {
			return finding.Say("take this step out: step %s puts it back", r.Step.Number)
		}
		return finding.Say("take this out: step %s puts it back", r.Step.Number)
	}
	return w.mendOpen(group)
}

// wouldTake says that a reverse: puts a part back where it is still off.
func (w *walk) wouldTake(l *model.Link, p *model.Part) bool {
	x, first := w.lay.of[p], w.firstOff(l)
	return !w.excepted(l, x) && slices.ContainsFunc(w.undoings, func(u undoing) bool {
		return u.thing == x && u.at.step.Phase == l.Phase() && u.at.link.At.Start >= first
	})
}

// takesAny says that a reverse: puts something of a group right.
func (w *walk) takesAny(r Reversal, group []*issue) bool {
	return slices.ContainsFunc(r.Steps, func(d Derived) bool {
		return slices.ContainsFunc(group, func(i *issue) bool {
			info := w.lay.things[i.thing]
			return d.Thing == info.named || info.part != nil && d.Thing == model.Named(info.part)
		})
	})
}

// onlyFor says that all acts of a step put one part back.
func (w *walk) onlyFor(s *model.Step, p *model.Part) bool {
	return s != nil && !slices.ContainsFunc(s.Links, func(l *model.Link) bool {
		f, is := l.To.(*model.Fastener)
		held := is && slices.ContainsFunc(p.HeldBy, func(h model.Use[model.Fastener]) bool { return h.To == f })
		return l.Kind.Act != model.NoAct && l.To != model.Named(p) && !held
	})
}

// phaseOf is the phase whose reverse: takes back everything of a group; "" where
// there is no such one.
func (w *walk) phaseOf(group []*issue) string {
	var of *model.Phase
	for _, i := range group {
		e := w.events[w.Value(i.began, w.Witness(w.And(i.where, w.all())))]
		if e.step == nil || !w.takesBack(e.link, i.thing) || of != nil && e.step.Phase != of {
			return ""
		}
		of = e.step.Phase
	}
	return of.ID
}

// takesBack says that the reverse: of what a link did brings a thing back: not a
// fastener whose part is on again, nor what ran out.
func (w *walk) takesBack(l *model.Link, x thing) bool {
	switch w.lay.things[x].sort {
	case aFastening:
		return l.Kind.Undo == model.Tighten
	case aFluid, anEnergy, aPoint, aSpill, aGroup, aGap, anAsked:
		return false
	case aPart, aFastener, aTool, aSetting:
	}
	return l.Kind.Undo != model.NoAct
}

// mendUncontained says which tool stands round an energy.
func (w *walk) mendUncontained(i *issue) finding.Words {
	e := w.lay.things[i.thing].named.(*model.Energy)
	if i.at.link.Kind.Act == model.Clear && len(e.Points) == 0 { // nothing to switch off
		return w.moveOr(i, model.Prove, w.untilDead(i, e)...)
	}
	if i.at.link.Kind.Act == model.Clear {
		return w.moveOr(i, model.Isolate, finding.Say("[cut it off](isolate:%s)", e.ID))
	}
	stands := func(l *model.Link) bool {
		tool, is := l.To.(*model.Tool)
		return is && l.Kind.Act == model.Place && slices.Contains(w.lay.energy[e].containers, tool)
	}
	if s := w.laterStep(i, stands); s != nil {
		return behindStep(s)
	}
	var tools []string
	for _, t := range w.lay.energy[e].containers {
		tools = append(tools, "[](place:"+t.ID+")")
	}
	return writeBefore(finding.Say("%s", either(tools)))
}

// mendInTheWay says what comes off, or what frees a part, first.
func (w *walk) mendInTheWay(group []*issue) finding.Words {
	var links []finding.Words
	for _, i := range group {
		if i.why.Template == heldBack {
			return w.mendHeldBack(i)
		}
		off := func(l *model.Link) bool { return l.Kind.TakesOff && l.To == w.lay.things[i.thing].named }
		if s := w.laterStep(i, off); s != nil {
			return behindStep(s)
		}
		links = append(links, finding.Say("[take it off](remove:%s)", w.idOf(i.thing)))
	}
	return writeBefore(links...)
}

// mendHeldBack says what frees a part that nothing covers: what was tightened too
// early is tightened behind it.
func (w *walk) mendHeldBack(i *issue) finding.Words {
	if c := w.cause(i); c.step != nil && c.step != i.at.step && c.link.Kind.Act == model.Tighten {
		return finding.Say("move step %s behind step %s", c.step.Number, w.lastFreed(i).Number)
	}
	return finding.Say("write [slacken it](loosen:%s) in a step before", w.idOf(i.thing))
}

// lastFreed is the last step from an issue on that moves a part which only comes and
// goes with the thing of the issue loose, before it is slackened again.
func (w *walk) lastFreed(i *issue) *model.Step {
	last, f := i.at.step, w.lay.things[i.thing].named
	for _, s := range w.p.Steps {
		if s.Done <= i.at.step.Done {
			continue
		}
		for _, l := range s.Links {
			p, is := l.To.(*model.Part)
			switch {
			case l.Kind.Act == model.Loosen && l.To == f:
				return last
			case is && (l.Kind.TakesOff || l.Kind.Act == model.Refit) && slices.ContainsFunc(leads(p.FreedBy), func(by *model.Fastener) bool { return model.Named(by) == f }):
				last = s
			}
		}
	}
	return last
}

// mendTwice says since when a thing is as a link would have it.
func (w *walk) mendTwice(i *issue) finding.Words {
	if s := w.cause(i).step; s != nil {
		return finding.Say("take this out: it is so since step %s", s.Number)
	}
	if i.rule == &RefitNotRemoved {
		return finding.Say("take this out, or write [take it off](remove:%s) in a step before this", w.idOf(i.thing))
	}
	return finding.Say("take this out: it is so from the start")
}

// mendAct says what comes before an act that cannot be done as things stand.
func (w *walk) mendAct(group []*issue) finding.Words {
	i := group[0]
	id := w.idOf(i.thing)
	switch i.why.Template {
	case "capped twice", "changed twice", "put in place twice":
		return w.mendTwice(i)
	case "capped, and no line, wire or connector":
		return finding.Say("take this out, or write kind: line at %s in the machine's file", id)
	case "capped while it is on":
		return w.moveOr(i, model.Remove, finding.Say("[take it off](remove:%s)", id))
	case "bled while it is low":
		return w.moveOr(i, model.Fill, finding.Say("[fill it](fill:%s)", id))
	case "the %s is bled with this off, and it is bled live":
		return w.moveOr(i, model.Restore, w.backOn(i)...)
	case "the %s is filled while this line is off":
		return w.mendOpen(group)
	case "tightened while its part is off":
		return w.moveOr(i, model.Refit, finding.Say("[put it back](refit:%s)", w.lay.things[i.thing].part.ID))
	case heldElsewhere:
		return mendHeld(i.at.link.To.(*model.Fastener))
	case "taken away, and not in place":
		return finding.Say("write [put it in place](place:%s) in a step before this; where it is in place already, write expects: { %s: placed } in the front matter", id, id)
	}
	return finding.Words{}
}

// mendHeld says where a fastener can be tightened.
func mendHeld(f *model.Fastener) finding.Words {
	var links []string
	for _, p := range f.Holds {
		links = append(links, "tighten:"+f.ID+"#"+p.ID)
	}
	return finding.Say("write %s", finding.ListOf(" or ", links))
}

// mendReverse says what a reverse: cannot take back.
func (w *walk) mendReverse(group []*issue) finding.Words {
	var ids []string
	for _, i := range group {
		if i.thing == nothing {
			return finding.Say("name a phase of which something is still off here, or take this out")
		}
		ids = append(ids, w.idOf(i.thing))
	}
	l := group[0].at.link
	if l.Sign == '!' {
		return finding.Say("take %s out of this link", finding.ListOf(" and ", ids))
	}
	if off := w.stillOff(group[0]); len(off) > 0 {
		return finding.Say("write %s", finding.ListOf(" or ", off))
	}
	return finding.Say("take #%s out of this link", ids[0])
}

// stillOff are the addresses with a part that is still off by the phase of a reverse:
// whose own part is not: the one whose name is near, else all, where they are few.
func (w *walk) stillOff(i *issue) []string {
	l := i.at.link
	var ids []string
	for _, s := range w.out.standing(i.at.step.Done) {
		p, is := s.Thing.(*model.Part)
		if is && s.Since != nil && s.Since.Phase == l.Phase() && !slices.Contains(ids, p.ID) {
			ids = append(ids, p.ID)
		}
	}
	if near := nearest.Of(w.idOf(i.thing), ids); near != "" {
		ids = []string{near}
	}
	if len(ids) > mostLinks {
		return nil
	}
	for n, id := range ids {
		ids[n] = "reverse:" + l.ID + "#" + id
	}
	return ids
}
