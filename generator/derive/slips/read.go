package slips

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Item is one thing that is done: a step, or a derived step of the refit.
type Item struct {
	Step    *model.Step
	Derived *walk.Derived // nil for a step; else Step holds the reverse: link
	Count   int           // of how many things alike; 1 where it is one, or unknown
	Flags

	acts  []act
	tools []*model.Tool
}

// Number is the number of the item on the page.
func (it *Item) Number() string {
	if it.Derived != nil {
		return it.Derived.Label
	}
	return it.Step.Number
}

// Tightens says that the item tightens a fastener at a part.
func (it *Item) Tightens(f *model.Fastener, part *model.Part) bool {
	return slices.ContainsFunc(it.acts, func(a act) bool {
		return a.verb == model.Tighten && (a.thing == model.Named(f) && (a.part == part || a.part == nil) || a.thing == model.Named(part))
	})
}

// act is what an item does to a thing.
type act struct {
	verb  model.Act
	thing model.Named
	part  *model.Part // that the thing is, or is at; nil where there is none
}

// Of reads the signs of every item of a procedure, in the order of the page. A
// step that only holds others together is no item.
func Of(p *model.Procedure, w *walk.Walk) []Item {
	items := make([]Item, 0, len(p.Steps))
	for _, st := range p.Steps {
		derived := derivedOf(st, w)
		for i := range derived {
			items = append(items, ofDerived(st, &derived[i]))
		}
		if len(derived) == 0 && (len(st.Subs) == 0 || len(actsOf(st)) > 0) {
			items = append(items, ofStep(p, st))
		}
	}
	goal := goalOf(items)
	for i := range items {
		items[i].Flags = signs(items, i, goal)
	}
	return items
}

func derivedOf(st *model.Step, w *walk.Walk) []walk.Derived {
	for _, l := range st.Links {
		if r := w.Reversal(l); r != nil {
			return r.Steps
		}
	}
	return nil
}

func ofStep(p *model.Procedure, st *model.Step) Item {
	it := Item{Step: st, Count: 1, acts: actsOf(st)}
	for _, l := range st.Links {
		if t, ok := l.To.(*model.Tool); ok && l.Kind.List == model.ListTools {
			it.tools = append(it.tools, t)
		}
		it.Count = max(it.Count, countOf(p, l))
	}
	return it
}

// actsOf are the acts of a step's own links, calls and reversals left out.
func actsOf(st *model.Step) []act {
	var out []act
	for _, l := range st.Links {
		if l.Bad || l.To == nil || l.Kind.Act == model.NoAct || l.Kind.Act == model.Call || l.Kind.Act == model.Reverse {
			continue
		}
		out = append(out, act{l.Kind.Act, l.To, partOf(l)})
	}
	return out
}

// partOf is the part that a link is about: the part itself, the one behind #,
// or the only one that the fastener holds.
func partOf(l *model.Link) *model.Part {
	switch to := l.To.(type) {
	case *model.Part:
		return to
	case *model.Fastener:
		if l.Part() == nil && len(to.Holds) == 1 {
			return to.Holds[0]
		}
	}
	return l.Part()
}

// countOf is how many things alike a link acts on: the entries of an order,
// fasteners at a part, tools that are placed, parts of a group.
func countOf(p *model.Procedure, l *model.Link) int {
	switch to := l.To.(type) {
	case *model.Order:
		if l.Is(model.LinkEach) {
			return len(to.Labels)
		}
	case *model.Fastener:
		if part := partOf(l); part != nil && (l.Kind.Act == model.Loosen || l.Kind.Act == model.Tighten) {
			return Held(part, to)
		}
	case *model.Group:
		return len(to.Parts)
	case *model.Tool:
		if l.Kind.Act == model.Place || l.Kind.Act == model.Clear {
			return Listed(p, to)
		}
	}
	return 1
}

// Held is how many of a fastener hold a part.
func Held(part *model.Part, f *model.Fastener) int {
	if part == nil {
		return 1
	}
	for _, h := range part.HeldBy {
		if n, err := strconv.Atoi(h.Amount); h.To == f && err == nil {
			return n
		}
	}
	return 1
}

// Listed is how many of a tool the procedure's list has.
func Listed(p *model.Procedure, tool *model.Tool) int {
	for _, t := range p.Tools {
		if n, err := strconv.Atoi(t.Amount); t.To == tool && err == nil {
			return n
		}
	}
	return 1
}

func ofDerived(st *model.Step, d *walk.Derived) Item {
	it := Item{Step: st, Derived: d, Count: 1}
	part, _ := d.Thing.(*model.Part)
	it.acts = []act{{d.Verb, d.Thing, part}}
	for _, f := range d.Fasteners {
		it.Count = max(it.Count, f.Count)
		if !d.Begun && d.Verb == model.Refit {
			it.acts = append(it.acts, act{model.Tighten, f.Fastener, f.Part})
		}
	}
	if t, ok := d.Thing.(*model.Tool); ok {
		it.Count = max(it.Count, Listed(st.Of, t))
	}
	for _, l := range d.From.Links {
		if t, ok := l.To.(*model.Tool); ok && l.Kind.List == model.ListTools {
			it.tools = append(it.tools, t)
		}
	}
	return it
}

// goalOf is the item at which the job looks done. Where parts come off, all is
// taken off to get at the last of them: the goal is reached when something goes
// back on after it. Else it is the last item that proves, restores or fills.
// -1 where there is none.
func goalOf(items []Item) int {
	last := lastOf(items, model.Remove, model.Renew)
	for i := last + 1; last >= 0 && i < len(items); i++ {
		if items[i].does(model.Refit) {
			return i
		}
	}
	if last >= 0 {
		return -1 // what is taken off stays off
	}
	return lastOf(items, model.Prove, model.Restore, model.Fill)
}

func lastOf(items []Item, verbs ...model.Act) int {
	for i := len(items) - 1; i >= 0; i-- {
		if slices.ContainsFunc(verbs, items[i].does) {
			return i
		}
	}
	return -1
}

func (it *Item) does(verb model.Act) bool {
	return slices.ContainsFunc(it.acts, func(a act) bool { return a.verb == verb })
}

func signs(items []Item, i, goal int) Flags {
	it := &items[i]
	return Flags{
		After:     goal >= 0 && i > goal,
		Follows:   i > 0 && breaks(&items[i-1]),
		Repeats:   it.Count > 1,
		NoTrace:   traceless(it),
		Hidden:    hidden(items, i),
		Different: different(items, i),
		Small:     slices.ContainsFunc(it.acts, small),
	}
}

// breaks says that attention goes elsewhere after an item: a wait, a called
// procedure, a stopping place.
func breaks(it *Item) bool {
	return it.Derived == nil && slices.ContainsFunc(it.Step.Links, func(l *model.Link) bool {
		h, ok := l.To.(*model.Hold)
		return ok && h.Kind == "wait" && l.Is(model.LinkHold) || l.Kind.Act == model.Call || l.Is(model.LinkPause) && l.ID == ""
	})
}

// traceless says that nothing shows whether an item was done: a torque without
// a mark, a circuit that was bled, a setting. What is measured or signed in the
// same step leaves its trace on paper.
func traceless(it *Item) bool {
	if it.Derived == nil && slices.ContainsFunc(it.Step.Links, written) {
		return false
	}
	return slices.ContainsFunc(it.acts, func(a act) bool {
		switch a.verb {
		case model.Tighten:
			if f, ok := a.thing.(*model.Fastener); ok {
				return f.MarkAfter == "" && (!f.Torque.IsZero() || len(f.Stages) > 0)
			}
			return a.part != nil && slices.ContainsFunc(a.part.HeldBy, func(h model.Use[model.Fastener]) bool {
				return h.To != nil && h.To.MarkAfter == ""
			})
		case model.Bleed, model.Alter, model.Reset:
			return true
		default: // the others are no concern of this
		}
		return false
	})
}

func written(l *model.Link) bool {
	h, ok := l.To.(*model.Hold)
	return ok && (l.Kind.Stops) && h.Kind != "wait" && h.Kind != "look"
}

// hidden says that a part that goes on later covers what this item put right:
// from then on nobody sees whether it was done.
func hidden(items []Item, i int) bool {
	for _, a := range items[i].acts {
		if a.part == nil || a.verb != model.Refit && a.verb != model.Tighten && a.verb != model.Cap {
			continue
		}
		for j := i + 1; j < len(items); j++ {
			if slices.ContainsFunc(items[j].acts, func(b act) bool {
				return b.verb == model.Refit && b.part != nil && covers(b.part, a.part)
			}) {
				return true
			}
		}
	}
	return false
}

// covers says that a part must come off before another can.
func covers(outer, inner *model.Part) bool {
	return slices.ContainsFunc(inner.Under, func(r model.Ref[model.Part]) bool { return r.To == outer })
}

// different says that an item's tools are others than those of both its
// neighbours. Work by hand between work with tools is different too.
func different(items []Item, i int) bool {
	if i == 0 || i == len(items)-1 {
		return false
	}
	return otherTools(&items[i], &items[i-1]) && otherTools(&items[i], &items[i+1])
}

func otherTools(a, b *Item) bool {
	if len(a.tools) == 0 && len(b.tools) == 0 {
		return false
	}
	return !slices.ContainsFunc(a.tools, func(t *model.Tool) bool { return slices.Contains(b.tools, t) })
}

func small(a act) bool {
	if a.verb == model.Cap {
		return true
	}
	return slices.ContainsFunc(strings.Fields(strings.ToLower(a.thing.Label())), func(word string) bool {
		return slices.ContainsFunc(language.All(), func(l *shape.Language) bool { return slices.Contains(l.Small, word) })
	})
}
