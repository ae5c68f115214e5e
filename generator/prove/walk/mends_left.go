package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// mendLeft says how what is left undone at the end is put right, and how to say
// that it stays so.
func (w *walk) mendLeft(group []*issue) finding.Words {
	var links, stay []finding.Words
	for _, i := range group {
		if e := w.livesInside(i); e != nil {
			return finding.Say("write %s: placed in leaves: it stays while the %s is on", w.idOf(i.thing), e.Label())
		}
		links = append(links, w.putRight(i)...)
		so := finding.Say("%s: %s", w.idOf(i.thing), w.stood(i)) // the word of the format, in any language
		if !slices.ContainsFunc(stay, func(o finding.Words) bool { return same(o, so) }) {
			stay = append(stay, so)
		}
	}
	if shared := w.cutAt(group); len(shared) > 0 {
		links = shared
	}
	if ph := w.phaseOf(group); ph != "" && len(group) > 1 {
		links = []finding.Words{finding.Say("[put all of it back](reverse:%s)", ph)}
	}
	switch {
	case len(links) > mostLinks:
		return finding.Words{}
	case len(stay) > mostLinks:
		return finding.Say("write %s in a later step, or say in leaves: what stays so", finding.ListOf(" and ", links))
	}
	return finding.Say("write %s in a later step, or %s in leaves", finding.ListOf(" and ", links), finding.List{Items: anyOf(stay)})
}

func anyOf(words []finding.Words) []any { return finding.ListOf("", words).Items }

// cutAt are the links that bring back the point at which everything of a group
// was cut off.
func (w *walk) cutAt(group []*issue) []finding.Words {
	p, is := group[0].at.link.To.(*model.Point)
	if !is || len(group) < 2 {
		return nil
	}
	at := *group[0]
	at.thing = w.lay.of[p]
	at.state = w.get(at.thing)
	return w.backOn(&at)
}

// livesInside is an energy that is on at the end inside the tool of an issue.
func (w *walk) livesInside(i *issue) *model.Energy {
	t, is := w.lay.things[i.thing].named.(*model.Tool)
	if !is {
		return nil
	}
	for _, e := range w.lay.contains[t] {
		if w.possible(w.And(i.where, w.Is(w.get(w.lay.of[e]), liveStates))) {
			return e
		}
	}
	return nil
}

// mendUnmarked says where the mark belongs.
func (w *walk) mendUnmarked(i *issue) finding.Words {
	if s := w.actLater(i, model.Mark); s != nil {
		return finding.Say("move step %s before this one", s.Number)
	}
	return writeBefore(finding.Say("[mark them](mark:%s)", w.idOf(i.thing)))
}

// mendUncapped says what is capped where it is opened.
func (w *walk) mendUncapped(group []*issue) finding.Words {
	var links []finding.Words
	for _, i := range group {
		links = append(links, finding.Say("[cap it](cap:%s)", w.idOf(i.thing)))
	}
	return finding.Say("write %s where it comes off", finding.ListOf(" and ", links))
}

// mendWet says what is dried before a look.
func (w *walk) mendWet(i *issue) finding.Words {
	return writeBefore(finding.Say("[dry it](dry:%s)", w.idOf(i.thing)))
}

// mendUnpressed says which look is taken again.
func (w *walk) mendUnpressed(i *issue) finding.Words {
	if i.at.link.To == nil || !i.at.link.Is(model.LinkHold) {
		return finding.Words{}
	}
	return finding.Say("write [](hold:%s) once more, in a step behind the one that brings the pressure back", i.at.link.To.Base().ID)
}

// mendPause says what makes a stopping place safe.
func (w *walk) mendPause(group []*issue) finding.Words {
	var links []finding.Words
	for _, i := range group {
		if i.thing == nothing {
			return finding.Say("stop at another place, or take pause:never out of the phase's first paragraph")
		}
		if words := w.mendKept(i); !words.IsZero() {
			return words
		}
		switch info := w.lay.things[i.thing]; info.sort {
		case anEnergy:
			links = append(links, finding.Say("[lock it](lock:%s)", w.idOf(i.thing)))
		case aPart:
			links = append(links, finding.Say("[cap it](cap:%s)", w.idOf(i.thing)))
		default:
			links = append(links, w.putRight(i)...)
		}
	}
	if len(links) > mostLinks {
		return finding.Words{}
	}
	here := writeBefore(links...)
	if group[0].at.step != nil && group[0].from == nil { // a stopping place is judged at its step's end
		here = finding.Say("write %s in this step", finding.ListOf(" and ", links))
	}
	return finding.Say("%s, or stop at another place", here)
}

// mendBranch says which hold is taken first.
func (w *walk) mendBranch(i *issue) finding.Words {
	takes := func(l *model.Link) bool { return l.Is(model.LinkHold) && l.To == i.at.link.To }
	if takesBeside(i.at.step, i.at.link) {
		return finding.Say("put this, with all that is done then, into a step of its own behind this one: here it holds for the whole step, the %s too", i.at.link.To.Label())
	}
	if s := w.laterStep(i, takes); s != nil {
		return behindStep(s)
	}
	return writeBefore(finding.Say("%s", "[](hold:"+i.at.link.To.Base().ID+")"))
}

// mendAsked says which hold is taken before an energy goes off or comes back.
func (w *walk) mendAsked(i *issue) finding.Words {
	return finding.Say("write [](hold:%s) in a step before this, after the last thing that is taken off or loosened", w.idOf(i.thing))
}
