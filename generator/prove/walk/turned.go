package walk

import (
	"slices"

	"baybinder/generator/model"
)

// Turned is a thing that a procedure found or made open, and that is closed at
// its end: off and on again, placed and taken away, low and full.
type Turned struct {
	Thing    model.Named
	Part     *model.Part // where the thing is a fastener at a part
	Words    []string    // how it stood while it was open, in order: isolated, locked …
	Where    Cases       // the units and outcomes it was open for; nil for all
	Opened   *model.Step // the first step that opened it; nil where it stood so at the start
	Closed   *model.Step // the last step that closed it
	Capped   *model.Step // the first step that capped its open end; nil where none did
	CappedOn Cases       // the units and outcomes that it was capped for; nil for all
}

// Turned are the things that a procedure closes, in the order in which they
// are closed. What it leaves open is where things stand at its end.
func (r *Result) Turned(p *model.Procedure) []Turned {
	steps := []*model.Step{nil} // by how many steps are done
	for _, ph := range p.Phases {
		steps = inOrderDone(steps, ph.Steps)
	}
	open, at, aside := map[thing]*Turned{}, map[thing]int{}, map[thing]bool{}
	var closed []thing
	for _, c := range r.Of(p).changes {
		t := open[c.thing]
		now := slices.DeleteFunc(slices.Clone(c.now), Standing.on)
		switch {
		case len(now) > 0 && t != nil && t.Closed != nil && inBranch(now):
			aside[c.thing] = true
			t.Words = append(t.Words, now[0].Word)
		case len(now) == 0 && aside[c.thing]:
			aside[c.thing] = false
		case len(now) > 0 && t == nil:
			t = &Turned{Thing: now[0].Thing, Part: now[0].Part, Opened: steps[c.after], Where: now[0].Where}
			open[c.thing] = t
			fallthrough
		case len(now) > 0:
			t.Words = append(t.Words, now[0].Word)
			t.Closed = nil
		case t != nil:
			t.Closed = steps[c.after]
			if _, known := at[c.thing]; !known {
				closed = append(closed, c.thing)
			}
			at[c.thing] = c.after
		}
		t.capped(c.now)
	}
	slices.SortStableFunc(closed, func(x, y thing) int { return at[x] - at[y] })
	var out []Turned
	for _, x := range closed {
		if t := open[x]; t.Closed != nil {
			out = append(out, *t)
		}
	}
	return out
}

// capped notes that the open end of a line is closed off.
func (t *Turned) capped(now []Standing) {
	i := slices.IndexFunc(now, func(s Standing) bool { return s.Word == "capped" })
	if t == nil || i < 0 {
		return
	}
	if t.Capped == nil {
		t.Capped = now[i].Since
	}
	t.CappedOn = now[i].Where
}

// inBranch says that a thing is open only where a hold went a certain way, or
// where an optional step was done: what closes it there does not close it for
// everybody.
func inBranch(now []Standing) bool {
	ofStep := func(c Condition) bool { return c.Option == "" }
	for _, s := range now {
		if len(s.Where) == 0 || slices.ContainsFunc(s.Where, func(c []Condition) bool { return !slices.ContainsFunc(c, ofStep) }) {
			return false
		}
	}
	return true
}

// inOrderDone lists steps as they are done: the sub-steps of a step before it.
func inOrderDone(out, steps []*model.Step) []*model.Step {
	for _, s := range steps {
		out = append(inOrderDone(out, s.Subs), s)
	}
	return out
}
