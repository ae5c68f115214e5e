package offers

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Offers are the steps that can be written at a slot, best first: what can be
// done now, then what cannot yet, with what is in the way.
func (b *Bench) Offers(slot Slot) []Offer {
	d := b.draw(slot)
	if d == nil {
		return nil
	}
	written, above := d.written.found, b.callersOf(slot.Procedure)
	parallel.Each(len(d.offers), func(i int) {
		if o := &d.offers[i]; o.Possible() {
			b.weigh(o, slot, written, above)
		}
	})
	slices.SortStableFunc(d.offers, func(x, y Offer) int { return x.order() - y.order() })
	return d.offers
}

// order is the place of an offer among others: possible ones first, those that
// break nothing that stands further down before others.
func (o *Offer) order() int {
	n := o.rank
	if !o.Possible() {
		n += 1000
	}
	if slices.ContainsFunc(o.Brings, breaks) {
		n += 100
	}
	return n
}

// drawing is what may be offered at a slot, as yet untried.
type drawing struct {
	*Bench
	slot    Slot
	p       *model.Procedure
	machine *model.Machine
	written *tried
	now     map[model.Named][]walk.Standing // what is not as on a whole machine
	marked  map[model.Named]bool            // groups
	offers  []Offer
}

// The ranks of offers: what makes safe goes on to its end before hands go in,
// and what is still to be done to what was opened goes before the next act.
const (
	first    = iota // an energy that was cut goes on to be locked, let out, proved
	follows         // marks, caps, dries
	reverses        // the refit of a whole phase
	cuts            // an energy is cut
	takesOff        // parts
	puts            // tools, settings, fluids
	closes          // what was opened
	gives           // energies come back
	performs        // a whole procedure
	stops           // a hold by itself
)

// draw lists what may be offered. It is nil where nothing can be said.
func (b *Bench) draw(slot Slot) *drawing {
	p := slot.Procedure
	if p == nil || p.Broken || p.Language != "" {
		return nil
	}
	d := &drawing{Bench: b, slot: slot, p: p, machine: p.For.To, written: b.asWritten(p)}
	if !d.written.walk.Done {
		return nil
	}
	d.now, d.marked = map[model.Named][]walk.Standing{}, map[model.Named]bool{}
	for _, s := range d.written.walk.Stand(slot.done) {
		d.now[s.Thing] = append(d.now[s.Thing], s)
	}
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if s.Done <= slot.done && l.Kind.Act == model.Mark && l.To != nil {
				d.marked[l.To] = true
			}
		}
	}
	d.everything()
	return d
}

func (d *drawing) everything() {
	if m := d.machine; m != nil && !m.Unread {
		d.energies()
		d.groups()
		d.parts()
		d.fasteners()
		d.fluids()
		d.settings()
		d.tools()
		d.asked()
	}
	d.reversals()
	d.calls()
}

// is says whether a thing stands so somewhere; where nothing is said of it, it
// is as on a whole machine.
func (d *drawing) is(n model.Named, words ...string) bool {
	return slices.ContainsFunc(d.now[n], func(s walk.Standing) bool { return slices.Contains(words, s.Word) })
}

// normal says that a thing is as on a whole machine. What stands otherwise on
// some units only counts as standing otherwise.
func (d *drawing) normal(n model.Named) bool {
	list := d.now[n]
	return len(list) == 0 || slices.ContainsFunc(list, func(s walk.Standing) bool { return s.Word == "live" })
}

// since says in which step a thing came to stand as it does.
func (d *drawing) since(n model.Named) finding.Words {
	if len(d.now[n]) == 0 {
		return finding.Words{}
	}
	s := d.now[n][0]
	stands := finding.Words{Template: s.Word}
	if s.Since == nil {
		return finding.Say("%s from the start", stands)
	}
	return finding.Say("%s since step %s", stands, s.Since.Number)
}

// add notes an offer; its sentence says the act first.
func (d *drawing) add(rank int, s *sentence, why finding.Words) {
	o := s.offer()
	if units := d.someUnits(s.entry); units != "" {
		o.Detail = strings.TrimPrefix(o.Detail+"; "+units, "; ")
	}
	o.rank = rank * 10
	o.Why, _ = d.tongue().Say(why)
	d.offers = append(d.offers, o)
}

// someUnits says which units have a thing; "" where all have it. The condition
// itself is not written: an act on the thing implies it.
func (d *drawing) someUnits(n model.Named) string {
	c := onlyWith(n)
	name, known := d.machine.Option(c.Option)
	if !known {
		return ""
	}
	w := &language.Of(d.Manual().Shop.Language).Words
	if c.Not {
		return fmt.Sprintf(w.NotOn, name)
	}
	return fmt.Sprintf(w.OnlyOn, name)
}

func onlyWith(n model.Named) model.Condition {
	switch n := n.(type) {
	case *model.Part:
		return n.OnlyWith
	case *model.Fastener:
		return n.OnlyWith
	case *model.Fluid:
		return n.OnlyWith
	case *model.Setting:
		return n.OnlyWith
	case *model.Energy:
		return n.OnlyWith
	case *model.Point:
		return n.OnlyWith
	}
	return model.Condition{}
}
