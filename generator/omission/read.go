package omission

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/walk"
)

// Item is one thing that is done: a step, or a derived step of the refit.
type Item struct {
	Step    *manual.Step
	Derived *walk.Derived // nil for a step; else Step holds the reverse: link
	Count   int           // of how many things alike; 1 where it is one, or unknown
	Flags

	acts  []act
	tools []*manual.Tool
}

// Number is the number of the item on the page.
func (it *Item) Number() string {
	if it.Derived != nil {
		return it.Derived.Label
	}
	return it.Step.Number
}

// Tightens says that the item tightens a fastener at a part.
func (it *Item) Tightens(f *manual.Fastener, part *manual.Part) bool {
	return slices.ContainsFunc(it.acts, func(a act) bool {
		return a.verb == manual.Tighten && (a.thing == manual.Named(f) && (a.part == part || a.part == nil) || a.thing == manual.Named(part))
	})
}

// act is what an item does to a thing.
type act struct {
	verb  manual.Act
	thing manual.Named
	part  *manual.Part // that the thing is, or is at; nil where there is none
}

// Of reads the signs of every item of a procedure, in the order of the page. A
// step that only holds others together is no item.
func Of(p *manual.Procedure, w *walk.Walk) []Item {
	var items []Item
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

func derivedOf(st *manual.Step, w *walk.Walk) []walk.Derived {
	for _, l := range st.Links {
		if r := w.Reversal(l); r != nil {
			return r.Steps
		}
	}
	return nil
}

func ofStep(p *manual.Procedure, st *manual.Step) Item {
	it := Item{Step: st, Count: 1, acts: actsOf(st)}
	for _, l := range st.Links {
		if t, ok := l.To.(*manual.Tool); ok && l.Kind.List == manual.ListTools {
			it.tools = append(it.tools, t)
		}
		it.Count = max(it.Count, countOf(p, l))
	}
	return it
}

// actsOf are the acts of a step's own links, calls and reversals left out.
func actsOf(st *manual.Step) []act {
	var out []act
	for _, l := range st.Links {
		if l.Bad || l.To == nil || l.Kind.Act == manual.NoAct || l.Kind.Act == manual.Call || l.Kind.Act == manual.Reverse {
			continue
		}
		out = append(out, act{l.Kind.Act, l.To, partOf(l)})
	}
	return out
}

// partOf is the part that a link is about: the part itself, the one behind #,
// or the only one that the fastener holds.
func partOf(l *manual.Link) *manual.Part {
	switch to := l.To.(type) {
	case *manual.Part:
		return to
	case *manual.Fastener:
		if l.Part == nil && len(to.Holds) == 1 {
			return to.Holds[0]
		}
	}
	return l.Part
}

// countOf is how many things alike a link acts on: the entries of an order,
// fasteners at a part, tools that are placed, parts of a group.
func countOf(p *manual.Procedure, l *manual.Link) int {
	switch to := l.To.(type) {
	case *manual.Order:
		if l.Is("each") {
			return len(to.Labels)
		}
	case *manual.Fastener:
		if part := partOf(l); part != nil && (l.Kind.Act == manual.Loosen || l.Kind.Act == manual.Tighten) {
			return Held(part, to)
		}
	case *manual.Group:
		return len(to.Parts)
	case *manual.Tool:
		if l.Kind.Act == manual.Place || l.Kind.Act == manual.Clear {
			return Listed(p, to)
		}
	}
	return 1
}

// Held is how many of a fastener hold a part.
func Held(part *manual.Part, f *manual.Fastener) int {
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
func Listed(p *manual.Procedure, tool *manual.Tool) int {
	for _, t := range p.Tools {
		if n, err := strconv.Atoi(t.Amount); t.To == tool && err == nil {
			return n
		}
	}
	return 1
}

func ofDerived(st *manual.Step, d *walk.Derived) Item {
	it := Item{Step: st, Derived: d, Count: 1}
	part, _ := d.Thing.(*manual.Part)
	it.acts = []act{{d.Verb, d.Thing, part}}
	for _, f := range d.Fasteners {
		it.Count = max(it.Count, f.Count)
		if !d.Begun && d.Verb == manual.Refit {
			it.acts = append(it.acts, act{manual.Tighten, f.Fastener, f.Part})
		}
	}
	if t, ok := d.Thing.(*manual.Tool); ok {
		it.Count = max(it.Count, Listed(st.Of, t))
	}
	for _, l := range d.From.Links {
		if t, ok := l.To.(*manual.Tool); ok && l.Kind.List == manual.ListTools {
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
	last := lastOf(items, manual.Remove, manual.Renew)
	for i := last + 1; last >= 0 && i < len(items); i++ {
		if items[i].does(manual.Refit) {
			return i
		}
	}
	if last >= 0 {
		return -1 // what is taken off stays off
	}
	return lastOf(items, manual.Prove, manual.Restore, manual.Fill)
}

func lastOf(items []Item, verbs ...manual.Act) int {
	for i := len(items) - 1; i >= 0; i-- {
		if slices.ContainsFunc(verbs, items[i].does) {
			return i
		}
	}
	return -1
}

func (it *Item) does(verb manual.Act) bool {
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
	return it.Derived == nil && slices.ContainsFunc(it.Step.Links, func(l *manual.Link) bool {
		h, ok := l.To.(*manual.Hold)
		return ok && h.Kind == "wait" && l.Is("hold") || l.Kind.Act == manual.Call || l.Is("pause") && l.ID == ""
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
		case manual.Tighten:
			if f, ok := a.thing.(*manual.Fastener); ok {
				return f.MarkAfter == "" && (!f.Torque.IsZero() || len(f.Stages) > 0)
			}
			return a.part != nil && slices.ContainsFunc(a.part.HeldBy, func(h manual.Use[manual.Fastener]) bool {
				return h.To != nil && h.To.MarkAfter == ""
			})
		case manual.Bleed, manual.Alter, manual.Reset:
			return true
		}
		return false
	})
}

func written(l *manual.Link) bool {
	h, ok := l.To.(*manual.Hold)
	return ok && (l.Is("hold") || l.Is("again")) && h.Kind != "wait" && h.Kind != "look"
}

// hidden says that a part that goes on later covers what this item put right:
// from then on nobody sees whether it was done.
func hidden(items []Item, i int) bool {
	for _, a := range items[i].acts {
		if a.part == nil || a.verb != manual.Refit && a.verb != manual.Tighten && a.verb != manual.Cap {
			continue
		}
		for j := i + 1; j < len(items); j++ {
			if slices.ContainsFunc(items[j].acts, func(b act) bool {
				return b.verb == manual.Refit && b.part != nil && covers(b.part, a.part)
			}) {
				return true
			}
		}
	}
	return false
}

// covers says that a part must come off before another can.
func covers(outer, inner *manual.Part) bool {
	return slices.ContainsFunc(inner.Under, func(r manual.Ref[manual.Part]) bool { return r.To == outer })
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
	return !slices.ContainsFunc(a.tools, func(t *manual.Tool) bool { return slices.Contains(b.tools, t) })
}

// smallThings are words of small things that are easily forgotten, in the
// languages of the pages. Cap, clip and strap are the trade's examples; the
// Spanish words are from memory.
var smallThings = []string{"cap", "caps", "clip", "clips", "strap", "straps", "tapón", "tapones", "grapa", "grapas", "trenza"}

func small(a act) bool {
	if a.verb == manual.Cap {
		return true
	}
	return slices.ContainsFunc(strings.Fields(strings.ToLower(a.thing.Label())), func(word string) bool {
		return slices.Contains(smallThings, word)
	})
}
