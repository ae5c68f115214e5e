package begin

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// way is what comes off to reach a part.
type way struct {
	machine *model.Machine
	to      *model.Part
	here    conditions                 // of the part itself: units without it are no concern
	off     []*model.Part              // the first first
	on      map[*model.Part]conditions // besides here, where each comes off
}

// findWay works out what comes off, in an order in which nothing comes off
// before what it is under; among those that may come off next, the machine
// file's order holds.
func findWay(m *model.Machine, to *model.Part) (*way, error) {
	w := &way{machine: m, to: to, here: conditionOf(to.OnlyWith), on: map[*model.Part]conditions{to: nil}}
	if !anyUnit(m, w.here) {
		return nil, finding.Refuse("no unit of %s has the %s", m.ID, to.Label())
	}
	above := map[*model.Part]bool{}
	collect(to, above)
	order, ok := peel(m.Parts, above)
	if !ok || above[to] {
		return nil, finding.Refuse("the parts above the %s are under each other, so that none can come off first: mend under: in %s", to.Label(), m.At.Path())
	}
	w.onWhichUnits(order)
	for _, p := range order {
		if _, needed := w.on[p]; needed {
			w.off = append(w.off, p)
		}
	}
	return w, nil
}

// collect gathers all that a part is under.
func collect(p *model.Part, above map[*model.Part]bool) {
	for _, u := range p.Under {
		if u.To != nil && !above[u.To] {
			above[u.To] = true
			collect(u.To, above)
		}
	}
}

// peel puts parts into the order in which they can come off. It is false where
// some are under each other.
func peel(parts []*model.Part, above map[*model.Part]bool) ([]*model.Part, bool) {
	var out []*model.Part
	off := map[*model.Part]bool{}
	free := func(p *model.Part) bool {
		covered := func(u model.Ref[model.Part]) bool { return u.To != nil && !off[u.To] }
		return above[p] && !off[p] && !slices.ContainsFunc(p.Under, covered)
	}
	for len(out) < len(above) {
		next := slices.IndexFunc(parts, free)
		if next < 0 {
			return nil, false
		}
		off[parts[next]] = true
		out = append(out, parts[next])
	}
	return out, true
}

// onWhichUnits finds where each part has to come off, from the part to be
// reached outwards. A part that is on no unit together with what it covers does
// not come off. Of several that it covers, it comes off where what they have in
// common holds: too often rather than too seldom.
func (w *way) onWhichUnits(order []*model.Part) {
	for _, p := range slices.Backward(order) {
		own := conditionOf(p.OnlyWith)
		first := true
		for _, q := range p.Over {
			on, needed := w.on[q]
			if !needed || !anyUnit(w.machine, w.here.and(own, on)) {
				continue
			}
			on = own.and(on).without(w.here)
			if !first {
				on = w.on[p].common(on)
			}
			w.on[p], first = on, false
		}
	}
}

// touched are the parts at which hands are: those that come off, and the one
// that is worked on.
func (w *way) touched() []*model.Part { return append(slices.Clone(w.off), w.to) }
