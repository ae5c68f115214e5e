package check

import (
	"baybinder/generator/manual"
)

// use is one thing of a list that is used.
type use struct {
	list manual.List
	id   string
}

// tally is what a procedure's own steps use, and what may be listed because it
// reaches the kit by itself. A list is in doubt where something could not be
// read that may use any line of it.
type tally struct {
	used  map[use]bool
	doubt map[manual.List]bool
}

func tallyOf(c *Context, p *manual.Procedure) *tally {
	t := &tally{used: map[use]bool{}, doubt: map[manual.List]bool{}}
	for _, link := range uses(p) {
		if link.Bad {
			t.bad(link)
			continue
		}
		t.link(c, p, link)
	}
	t.listed(p)
	return t
}

func (t *tally) add(list manual.List, id string) { t.used[use{list, id}] = true }

// bad notes a link that could not be bound: what it would have used, and what
// comes with that, is in doubt.
func (t *tally) bad(link *manual.Link) {
	if link.Kind == manual.UnknownLink {
		_, id, _ := manual.SplitAddress(link.Address)
		for _, list := range reconciled {
			t.add(list.list, id)
		}
		return
	}
	t.doubt[link.Kind.List] = true
	switch {
	case link.Kind.Target == manual.ToOutcome:
		t.doubt[manual.ListHolds] = true
	case link.Kind.List == manual.ListHazards, link.Kind.List == manual.ListHolds, link.Kind.Act == manual.Lock:
		t.doubt[manual.ListTools] = true
	case link.Kind.Machine(), link.Kind.Act == manual.Reverse:
		t.doubt[manual.ListSupplies] = true
		t.doubt[manual.ListHazards] = true // those of the supply in its circuit
	case link.Kind.List == manual.ListSupplies:
		t.doubt[manual.ListHazards] = true
	}
}

// link notes what one link uses.
func (t *tally) link(c *Context, p *manual.Procedure, link *manual.Link) {
	if link.Kind.List != manual.NoList {
		t.add(link.Kind.List, link.ID)
	}
	if link.Is("again") {
		t.add(manual.ListHolds, link.ID)
	}
	for _, tool := range toolsOf(c, p, link) {
		t.add(manual.ListTools, tool.ID)
	}
	t.machineThing(link)
	for _, h := range manual.SuppliedHazards([]*manual.Link{link}) {
		t.add(manual.ListHazards, h.ID)
	}
	if link.To != nil && link.To.Base().Unread {
		t.bad(link)
	}
}

// machineThing notes the supplies that a machine's part, fastener or fluid
// brings: the new part, the new fasteners, what was drained or spilled.
func (t *tally) machineThing(link *manual.Link) {
	switch to := link.To.(type) {
	case *manual.Part:
		if link.Kind.Act != manual.NoAct {
			t.part(to)
		}
	case *manual.Fastener:
		if link.Kind.Act != manual.NoAct {
			t.fastener(to)
		}
	case *manual.Fluid:
		if link.Kind.Act != manual.NoAct {
			t.add(manual.ListSupplies, to.Supply.ID)
		}
	}
}

func (t *tally) part(p *manual.Part) {
	t.add(manual.ListSupplies, p.RenewWith.ID)
	for _, held := range p.HeldBy {
		if held.To != nil {
			t.fastener(held.To)
		}
	}
	if p.Carries.To != nil {
		t.add(manual.ListSupplies, p.Carries.To.Supply.ID)
	}
}

func (t *tally) fastener(f *manual.Fastener) { t.add(manual.ListSupplies, f.RenewWith.ID) }

// listed notes what comes with the hazards and holds of the lists, used or
// not: that a hazard is not used is told at the hazard, not at its gloves.
func (t *tally) listed(p *manual.Procedure) {
	for _, h := range p.Hazards {
		if h.Met == nil || h.To.Unread {
			t.doubt[manual.ListTools] = true
			continue
		}
		for _, item := range h.Met.Wear {
			t.add(manual.ListTools, item.ID)
		}
	}
	for _, h := range p.Holds {
		if h.To == nil || h.To.Unread {
			t.doubt[manual.ListTools] = true
			continue
		}
		t.add(manual.ListTools, h.To.With.ID)
		t.add(manual.ListTools, h.To.ProvedOn.ID)
	}
}

// toolsOf are the tools that a link brings: the tool itself, what is worn for
// a hazard, what a hold is measured with and proved on, the shop's lock.
func toolsOf(c *Context, p *manual.Procedure, link *manual.Link) []*manual.Tool {
	var refs []manual.Ref[manual.Tool]
	switch to := link.To.(type) {
	case *manual.Tool:
		return []*manual.Tool{to}
	case *manual.Hold:
		refs = []manual.Ref[manual.Tool]{to.With, to.ProvedOn}
	case *manual.Hazard:
		refs = met(p, to).Wear
	}
	if locks := c.Manual.Shop.Locks; locks != nil && link.Kind.Act == manual.Lock {
		refs = append(refs, locks.Tool)
	}
	var tools []*manual.Tool
	for _, ref := range refs {
		if ref.To != nil {
			tools = append(tools, ref.To)
		}
	}
	return tools
}

// met is a hazard as the procedure meets it.
func met(p *manual.Procedure, h *manual.Hazard) *manual.Hazard {
	for _, use := range p.Hazards {
		if use.To == h && use.Met != nil {
			return use.Met
		}
	}
	return h
}
