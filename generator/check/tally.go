package check

import (
	"baybinder/generator/model"
)

// use is one thing of a list that is used.
type use struct {
	list model.List
	id   string
}

// tally is what a procedure's own steps use, and what may be listed because it
// reaches the kit by itself. A list is in doubt where something could not be
// read that may use any line of it.
type tally struct {
	used  map[use]bool
	doubt map[model.List]bool
}

func tallyOf(c *Context, p *model.Procedure) *tally {
	t := &tally{used: map[use]bool{}, doubt: map[model.List]bool{}}
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

// unsure notes what a link may use besides, by a field that could not be read.
func (t *tally) unsure(c *Context, link *model.Link) {
	if link.Kind.Act == model.Lock && c.Manual.Shop.Lost("locks") {
		t.doubt[model.ListTools] = true
	}
	switch to := link.To.(type) {
	case *model.Hazard:
		t.doubtIf(to.Lost("wear"), model.ListTools)
	case *model.Hold:
		t.doubtIf(to.Lost("with", "proved-on"), model.ListTools)
	case *model.Supply:
		t.doubtIf(to.Lost("hazards"), model.ListHazards)
	case *model.Part:
		lost := to.Lost("renew-with", "held-by", "carries") || to.Carries.To != nil && to.Carries.To.Lost("supply")
		for _, held := range to.HeldBy {
			lost = lost || held.To != nil && held.To.Lost("renew-with")
		}
		t.doubtIf(lost, model.ListSupplies, model.ListHazards)
	case *model.Fastener:
		t.doubtIf(to.Lost("renew-with"), model.ListSupplies, model.ListHazards)
	case *model.Fluid:
		t.doubtIf(to.Lost("supply"), model.ListSupplies, model.ListHazards)
	}
	for _, s := range link.Supplies() {
		t.doubtIf(s.Lost("hazards"), model.ListHazards)
	}
	if p, is := link.To.(*model.Part); is && p.Carries.To != nil {
		s := p.Carries.To.Supply
		t.doubtIf(s.ID != "" && (s.To == nil || s.To.Lost("hazards")), model.ListHazards)
	}
	if f, is := link.To.(*model.Fluid); is {
		t.doubtIf(f.Supply.ID != "" && (f.Supply.To == nil || f.Supply.To.Lost("hazards")), model.ListHazards)
	}
}

func (t *tally) doubtIf(lost bool, lists ...model.List) {
	for _, list := range lists {
		t.doubt[list] = t.doubt[list] || lost
	}
}

func (t *tally) add(list model.List, id string) { t.used[use{list, id}] = true }

// bad notes a link that could not be bound: what it would have used, and what
// comes with that, is in doubt.
func (t *tally) bad(link *model.Link) {
	if link.Odd || link.Kind == model.UnknownLink {
		_, id, _ := model.SplitAddress(link.Address)
		for _, list := range reconciled {
			t.add(list.list, id)
		}
	}
	t.doubt[link.Kind.List] = true
	switch {
	case link.Kind.Target == model.ToOutcome:
		t.doubt[model.ListHolds] = true
	case link.Kind.List == model.ListHazards, link.Kind.List == model.ListHolds, link.Kind.Act == model.Lock:
		t.doubt[model.ListTools] = true
	case link.Kind.Machine(), link.Kind.Act == model.Reverse:
		t.doubt[model.ListSupplies] = true
		t.doubt[model.ListHazards] = true // those of the supply in its circuit
	case link.Kind.List == model.ListSupplies:
		t.doubt[model.ListHazards] = true
	}
}

// link notes what one link uses.
func (t *tally) link(c *Context, p *model.Procedure, link *model.Link) {
	if link.Kind.List != model.NoList {
		t.add(link.Kind.List, link.ID)
	}
	if link.Is(model.LinkAgain) {
		t.add(model.ListHolds, link.ID)
	}
	for _, tool := range toolsOf(c, p, link) {
		t.add(model.ListTools, tool.ID)
	}
	t.machineThing(link)
	for _, h := range model.SuppliedHazards([]*model.Link{link}) {
		t.add(model.ListHazards, h.ID)
	}
	t.unsure(c, link)
}

// machineThing notes the supplies that a machine's part, fastener or fluid
// brings: the new part, the new fasteners, what was drained or spilled.
func (t *tally) machineThing(link *model.Link) {
	switch to := link.To.(type) {
	case *model.Part:
		if link.Kind.Act != model.NoAct {
			t.part(to)
		}
	case *model.Fastener:
		if link.Kind.Act != model.NoAct {
			t.fastener(to)
		}
	case *model.Fluid:
		if link.Kind.Act != model.NoAct {
			t.add(model.ListSupplies, to.Supply.ID)
		}
	}
}

func (t *tally) part(p *model.Part) {
	t.add(model.ListSupplies, p.RenewWith.ID)
	for _, held := range p.HeldBy {
		if held.To != nil {
			t.fastener(held.To)
		}
	}
	if p.Carries.To != nil {
		t.add(model.ListSupplies, p.Carries.To.Supply.ID)
	}
}

func (t *tally) fastener(f *model.Fastener) { t.add(model.ListSupplies, f.RenewWith.ID) }

// listed notes what comes with the hazards and holds of the lists, used or
// not: that a hazard is not used is told at the hazard, not at its gloves.
func (t *tally) listed(p *model.Procedure) {
	for _, h := range p.Hazards {
		if h.Met == nil || h.To.Lost("wear") {
			t.doubt[model.ListTools] = true
			continue
		}
		for _, item := range h.Met.Wear {
			t.add(model.ListTools, item.ID)
		}
	}
	for _, h := range p.Holds {
		if h.To == nil || h.To.Lost("with", "proved-on") {
			t.doubt[model.ListTools] = true
			continue
		}
		t.add(model.ListTools, h.To.With.ID)
		t.add(model.ListTools, h.To.ProvedOn.ID)
	}
}

// toolsOf are the tools that a link brings: the tool itself, what is worn for
// a hazard, what a hold is measured with and proved on, the shop's lock.
func toolsOf(c *Context, p *model.Procedure, link *model.Link) []*model.Tool {
	var refs []model.Ref[model.Tool]
	switch to := link.To.(type) {
	case *model.Tool:
		return []*model.Tool{to}
	case *model.Hold:
		refs = []model.Ref[model.Tool]{to.With, to.ProvedOn}
	case *model.Hazard:
		refs = met(p, to).Wear
	}
	if locks := c.Manual.Shop.Locks; locks != nil && link.Kind.Act == model.Lock {
		refs = append(refs, locks.Tool)
	}
	var tools []*model.Tool
	for _, ref := range refs {
		if ref.To != nil {
			tools = append(tools, ref.To)
		}
	}
	return tools
}

// met is a hazard as the procedure meets it.
func met(p *model.Procedure, h *model.Hazard) *model.Hazard {
	for _, use := range p.Hazards {
		if use.To == h && use.Met != nil {
			return use.Met
		}
	}
	return h
}
