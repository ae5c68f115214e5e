package begin

import (
	"cmp"
	"fmt"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// giveBack writes how the machine goes back to work.
func (r *reach) giveBack() {
	fluids, sign := r.fluids(), r.sign()
	if len(r.cuts)+len(fluids) == 0 && sign == nil {
		return
	}
	p := r.paper
	p.phase(p.GiveBack)
	for _, f := range fluids {
		r.fill(f)
	}
	for _, b := range slices.Backward(r.blocks()) {
		if _, ordered := r.turnOf(r.loads(b.tool)...); !ordered {
			r.takeAway(b)
		}
	}
	for _, x := range slices.Backward(r.points()) {
		if x.Lock {
			p.say(x.on, act("unlock", p.Unlock, x.Point))
		}
	}
	r.restore()
	for _, f := range fluids {
		if look := r.leakLook(f.Fluid); look != nil {
			p.say(f.on, fmt.Sprintf(p.LeakLook, p.hold(look)))
		}
	}
	if sign != nil {
		p.say(nil, fmt.Sprintf(p.Ends, p.hold(sign)))
	}
}

// opened is a fluid whose circuit is opened.
type opened struct {
	*model.Fluid
	on conditions
}

func (r *reach) fluids() []*opened {
	var out []*opened
	for _, part := range r.off {
		if part.Carries.To == nil {
			continue
		}
		f := first(out, func(f *opened) bool { return f.Fluid == part.Carries.To })
		if f == nil {
			f = &opened{part.Carries.To, r.on[part]}
			out = append(out, f)
		}
		f.on = f.on.common(r.on[part])
	}
	return out
}

// fill writes how an opened circuit becomes dry outside, full and free of air.
func (r *reach) fill(f *opened) {
	p := r.paper
	r.unread(f.Fluid)
	p.say(f.on, act("dry", p.Dry, f.Fluid))
	fill := act("fill", p.Fill, f.Fluid)
	if s := f.Supply.To; s != nil {
		fill += fmt.Sprintf(p.FillWith, of("supply", s.Label(), s))
		unit, known := quantity.UnitNamed(s.Unit)
		if f.Capacity.IsZero() && known && unit.Dimension() != quantity.Count {
			r.lack("how much %s is used up: %s has no capacity", s.ID, f.ID)
		}
		p.supply(s, 1, f.Capacity)
	}
	p.say(f.on, fill)
	if f.Bleed {
		p.say(f.on, act("bleed", p.Bleed, f.Fluid))
	}
}

func (r *reach) leakLook(f *model.Fluid) *model.Hold {
	return first(r.manual.Holds, func(h *model.Hold) bool {
		return h.Kind == "look" && h.LooksFor == "leak" && h.Of.ID == f.ID && h.What != "" && !h.Misread
	})
}

// loads are those of the machine that come back as a tool is taken away: there is
// nothing to switch on.
func (r *reach) loads(t *model.Tool) []*model.Energy {
	return slices.DeleteFunc(slices.Clone(r.machine.Energies), func(e *model.Energy) bool { return len(e.Points) > 0 || !refers(e.BlockedBy, t) })
}

func (r *reach) takeAway(b *block) {
	r.paper.say(b.on, r.paper.tool("clear", b.tool, fmt.Sprintf(r.paper.Clear, b.tool.Label())))
}

// restore writes how the energies come back, in the machine's order: a load with
// nothing to switch on as what holds it is taken away.
func (r *reach) restore() {
	type comeback struct {
		turn int
		say  func()
	}
	var all []comeback
	for _, c := range r.cuts {
		if !c.stays() {
			turn, _ := r.turnOf(c.energy)
			all = append(all, comeback{turn, func() { r.paper.say(c.on, act("restore", r.paper.comesBack(c.energy), c.energy)) }})
		}
	}
	for _, b := range r.blocks() {
		if turn, ordered := r.turnOf(r.loads(b.tool)...); ordered {
			all = append(all, comeback{turn, func() { r.takeAway(b) }})
		}
	}
	slices.SortStableFunc(all, func(a, b comeback) int { return cmp.Compare(a.turn, b.turn) })
	for _, back := range all {
		back.say()
	}
	for _, x := range r.points() {
		if r.leftOff(x) {
			r.paper.say(x.on, act("restore", r.paper.RestorePoint, x.Point))
		}
	}
}

// turnOf is when energies come back together: the turn of the last of them in the
// machine's order, and that of all others behind it.
func (r *reach) turnOf(list ...*model.Energy) (turn int, ordered bool) {
	turn = -1
	for i, e := range r.machine.RestoreOrder {
		if slices.Contains(list, e.To) {
			turn = i
		}
	}
	if turn < 0 {
		return len(r.machine.RestoreOrder), false
	}
	return turn, true
}

// leftOff says that a point is switched off on units too that have none of the
// energies for which it is: those come back on other units.
func (r *reach) leftOff(x *point) bool {
	return !slices.ContainsFunc(r.cuts, func(c *cut) bool {
		return slices.Contains(x.cuts, c.energy) && len(c.on.without(x.on)) == 0
	})
}

// comesBack is the act in words: a voltage is switched on, and a load is not.
func (p *document) comesBack(e *model.Energy) string {
	switch {
	case len(e.Points) == 0, e.Kind == "gravity", e.Kind == "spring", e.Kind == "heat", e.Kind == "chemical":
		return p.ComeBack
	}
	return p.Restore
}

// sign is the release that most procedures of the shop end with; where none
// does, the first sign hold that is not of some energy.
func (r *reach) sign() *model.Hold {
	ends := map[*model.Hold]int{}
	for _, p := range r.manual.Procedures {
		if len(p.Phases) == 0 {
			continue
		}
		for _, s := range p.Phases[len(p.Phases)-1].Steps {
			for _, l := range s.Links {
				if h, is := l.To.(*model.Hold); is && l.Is(model.LinkHold) {
					ends[h]++
				}
			}
		}
	}
	var best *model.Hold
	for _, h := range r.manual.Holds {
		if h.Kind == "sign" && h.By.To != nil && h.Of.ID == "" && !h.Misread && (best == nil || ends[h] > ends[best]) {
			best = h
		}
	}
	return best
}
