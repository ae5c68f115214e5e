package walk_test

import (
	"fmt"

	"baybinder/generator/model"
)

func (x *run) partAct(kind string, p *model.Part, s *model.Step) {
	if !x.has(p.OnlyWith) {
		return
	}
	k := key("part", p.ID)
	switch kind {
	case "remove", "disconnect", "renew":
		x.remove(p, k, s, kind == "renew")
	case "refit", "connect":
		x.refit(p, k, nil, nil)
	case "cap":
		if p.Kind == "part" || x.get(k) != "off" {
			x.fault("act-order", k)
			return
		}
		x.set(k, "capped")
	}
}

// notFreed tells of what holds a part without being its own fastener.
func (x *run) notFreed(p *model.Part, code string) {
	for _, f := range p.FreedBy {
		if len(f.To.Holds) == 0 && x.has(f.To.OnlyWith) && x.get(key("fastener", f.ID)) == "tight" {
			x.fault(code, key("fastener", f.ID))
		}
		for _, q := range f.To.Holds {
			k := fasteningKey(f.ID, q.ID)
			if x.hasAt(f.To, q) && x.get(key("part", q.ID)) == "on" && x.get(k) == "tight" {
				x.fault(code, k)
			}
		}
	}
}

func (x *run) liveWork(p *model.Part) {
	for _, e := range deadAt(p) {
		if x.hasEnergy(e.To) && x.get(key("energy", e.ID)) != "dead" {
			x.fault("live-work", key("energy", e.ID))
		}
	}
}

func (x *run) remove(p *model.Part, k string, s *model.Step, renew bool) {
	if x.get(k) != "on" {
		x.fault("removed-twice", k)
		return
	}
	for _, u := range p.Under {
		if x.has(u.To.OnlyWith) && x.get(key("part", u.ID)) == "on" {
			x.fault("not-reachable", key("part", u.ID))
		}
	}
	x.notFreed(p, "not-reachable")
	x.liveWork(p)
	x.guards(p, s)
	x.undo(refUndo{kind: "part", part: p, step: s, new: renew})
	x.set(k, "off")
	delete(x.byHand, x.frame().path+p.ID)
	for _, h := range p.HeldBy {
		if x.has(h.To.OnlyWith) {
			x.set(fasteningKey(h.To.ID, p.ID), "loose")
		}
	}
	if renew {
		x.set(key("gap", p.ID), "new one needed")
	} else {
		x.set(key("gap", p.ID), "closed")
	}
	x.opening(p)
	x.forgetAsked()
}

func (x *run) guards(p *model.Part, s *model.Step) {
	for _, e := range p.Guards {
		if !x.hasEnergy(e.To) || names(deadAt(p), e.To) {
			continue
		}
		k := key("energy", e.ID)
		st := x.get(k)
		ok := st == "locked" || st == "released" || st == "dead" || !x.lockable(e.To) && (st == "isolated" || st == "isolated+")
		if len(e.To.Points) == 0 {
			ok = st == "dead"
		}
		if !ok {
			x.fault("guard-off-live", k)
		} else if st != "dead" && !meets(s, e.ID) {
			x.fault("guard-off-live", k)
		}
	}
}

// opening spills a line's fluid and counts look-alikes.
func (x *run) opening(p *model.Part) {
	var links []*model.Link
	for _, f := range x.frames {
		links = append(links, f.link)
	}
	if p.Kind == "line" {
		x.opened[p.ID] = x.wayHere()
	}
	if f := p.Carries.To; f != nil && x.has(f.OnlyWith) {
		if k := key("fluid", f.ID); !isLow(x.get(k)) {
			x.set(k, "low")
		}
		x.set(key("spill", f.ID), "wet")
	}
	if p.Alike == "" {
		return
	}
	first := x.alike[p.Alike]
	if first == nil {
		x.alike[p.Alike] = &refOpening{
			part: p, marked: x.get(key("group", p.Alike)) == "marked", where: links, callee: x.frame().path,
		}
		return
	}
	if first.part != p && !first.marked {
		x.notMarked(p.Alike, first, links)
	}
}

// notMarked stands at the first opening: in the procedure that is walked, at
// its own link or at the do: that opened.
func (x *run) notMarked(group string, first *refOpening, second []*model.Link) {
	n := 0
	for n < len(first.where)-1 && n < len(second)-1 && first.where[n] == second[n] {
		n++
	}
	path := x.frames[n].path
	x.faultAt(first.where[n], path, "not-marked", key("group", group), first.where[0])
}

func (x *run) refit(p *model.Part, k string, inRun []*model.Part, later []refUndo) {
	if x.get(k) == "on" {
		x.fault("refit-not-removed", k)
		return
	}
	x.liveWork(p)
	x.notFreed(p, "refit-over-open")
	for _, q := range x.machine.Parts {
		if !x.has(q.OnlyWith) || !under(q, p) {
			continue
		}
		qk := key("part", q.ID)
		if x.get(qk) != "on" {
			x.fault("refit-over-open", qk)
			continue
		}
		if !isIn(inRun, q) && (x.derived || !hasStart(p)) {
			x.looseUnder(p, q, later)
		}
	}
	if hasStart(p) && !x.derived {
		x.byHand[x.frame().path+p.ID] = true // what is under it is asked for when it is tightened
	}
	x.useForRefit(p)
	x.set(k, "on")
	x.set(key("gap", p.ID), "closed")
	x.tightenedTooEarly(p)
}

// looseUnder tells of what is loose at q as p goes on over it, save what p goes on
// only with loose.
func (x *run) looseUnder(p, q *model.Part, later []refUndo) {
	for _, h := range q.HeldBy {
		if names(p.FreedBy, h.To) {
			continue
		}
		if f := fasteningKey(h.To.ID, q.ID); x.has(h.To.OnlyWith) && x.get(f) == "loose" && !tightenedLater(later, f) {
			x.fault("refit-over-open", f)
		}
	}
}

// tightensByHand judges what is under a part whose fasteners were begun by hand.
func (x *run) tightensByHand(p *model.Part) {
	k := x.frame().path + p.ID
	if !x.byHand[k] {
		return
	}
	delete(x.byHand, k)
	for _, q := range x.machine.Parts {
		if x.has(q.OnlyWith) && under(q, p) && x.get(key("part", q.ID)) == "on" {
			x.looseUnder(p, q, nil)
		}
	}
}

// tightenedLater says that a fastening is tightened by a later step of the same
// reverse:, as it was loosened: before the part came off.
func tightenedLater(later []refUndo, fastening string) bool {
	for _, u := range later {
		if u.kind == "fastening" && u.id == fastening {
			return true
		}
	}
	return false
}

func isIn(list []*model.Part, p *model.Part) bool {
	for _, q := range list {
		if p == q {
			return true
		}
	}
	return false
}

// under says that p comes off before q.
func under(q, p *model.Part) bool {
	for _, u := range q.Under {
		if u.To == p {
			return true
		}
	}
	return false
}

func (x *run) use(s *model.Supply, amount float64) {
	if len(x.frames) > 1 {
		return
	}
	x.needs[s] += amount
}

func (x *run) useForRefit(p *model.Part) {
	if p.RenewWith.To != nil && x.get(key("gap", p.ID)) != "closed" {
		x.use(p.RenewWith.To, 1)
	}
	for _, h := range p.HeldBy {
		if h.To.RenewWith.To != nil && x.has(h.To.OnlyWith) {
			n := 1.0
			if h.Amount != "" {
				fmt.Sscanf(h.Amount, "%g", &n)
			}
			x.use(h.To.RenewWith.To, n)
		}
	}
}

// tightenedTooEarly tells of a tightening while the part was off, now that it
// is on.
func (x *run) tightenedTooEarly(p *model.Part) {
	var rest []refWaiting
	for _, w := range x.waiting {
		if w.part != p || w.path != x.frame().path {
			rest = append(rest, w)
			continue
		}
		var top *model.Link
		if w.path == x.frames[0].path {
			top = w.link
		}
		x.faultAt(w.link, w.path, "act-order", w.key, top)
		x.set(w.key, "tight")
	}
	x.waiting = rest
}
