package begin

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// makeSafe writes how the energies are cut, locked, let out and proved dead.
func (r *reach) makeSafe() {
	if len(r.cuts) == 0 {
		return
	}
	p := r.paper
	p.phase(p.MakeSafe)
	for _, c := range r.cuts {
		if c.early() {
			p.say(c.on, act("release", p.Release, c.energy))
		}
	}
	for _, x := range r.points() {
		r.isolate(x)
	}
	for _, c := range r.cuts {
		r.letOutStep(c)
	}
	r.placeBlocks()
	r.prove(0)
}

// point is where energies that are met are cut, and on which units that is
// needed.
type point struct {
	*model.Point
	on   conditions
	cuts []*model.Energy
}

// points are those of all energies that are met, each once.
func (r *reach) points() []*point {
	var out []*point
	for _, c := range r.cuts {
		for _, ref := range c.energy.Points {
			if ref.To == nil {
				continue
			}
			x := first(out, func(x *point) bool { return x.Point == ref.To })
			if x == nil {
				x = &point{Point: ref.To, on: c.on}
				out = append(out, x)
			}
			x.on = x.on.common(c.on)
			x.cuts = append(x.cuts, c.energy)
		}
	}
	return out
}

func (r *reach) isolate(x *point) {
	p := r.paper
	cutIt := act("isolate", p.Isolate, x.Point)
	if x.Lock {
		cutIt += p.And + p.lock(x.Point)
	}
	where := ""
	if x.Where != "" {
		where = fmt.Sprintf(p.Here, of("point", x.Where, x.Point))
	}
	var cut []string
	for _, e := range x.cuts {
		cut = append(cut, p.named("energy", e))
	}
	p.say(x.on, cutIt, where, fmt.Sprintf(p.Cuts, p.listed(cut)))
}

// letOutStep writes how what is stored is let out, where nothing holds it.
func (r *reach) letOutStep(c *cut) {
	switch {
	case !c.energy.Stored.Yes, c.block != nil, c.early():
	case c.wait != nil:
		r.paper.say(c.on, fmt.Sprintf(r.paper.WaitOut, r.paper.hold(c.wait)))
	default:
		r.paper.say(c.on, act("release", r.paper.Release, c.energy))
	}
}

// block is a tool that holds loads.
type block struct {
	tool  *model.Tool
	on    conditions
	holds []*model.Energy
}

// blocks are the tools that hold the loads that are met, each once.
func (r *reach) blocks() []*block {
	var out []*block
	for _, c := range r.cuts {
		if c.block == nil {
			continue
		}
		b := first(out, func(b *block) bool { return b.tool == c.block })
		if b == nil {
			b = &block{tool: c.block, on: c.on}
			out = append(out, b)
		}
		b.on = b.on.common(c.on)
		b.holds = append(b.holds, c.energy)
	}
	return out
}

func (r *reach) placeBlocks() {
	for _, b := range r.blocks() {
		var held []string
		for _, e := range b.holds {
			held = append(held, r.paper.named("energy", e))
		}
		r.paper.say(b.on, r.paper.tool("place", b.tool, fmt.Sprintf(r.paper.PlaceBlock, b.tool.Label())), fmt.Sprintf(r.paper.BlockHold, r.paper.listed(held)))
	}
}

// prove writes the proofs that are due when so many parts are off.
func (r *reach) prove(off int) {
	p := r.paper
	for _, c := range r.cuts {
		if c.proved != off {
			continue
		}
		proof, shown := act("prove", p.Prove, c.energy), ""
		if c.proof != nil {
			proof += ": " + p.hold(c.proof)
		} else {
			shown = p.SayProof
		}
		p.say(c.on, proof, shown, p.hazard(c.hazard))
	}
}

// strip writes what comes off, and between it the marks and the proofs.
func (r *reach) strip() {
	if len(r.off) == 0 {
		return
	}
	r.paper.phase(r.paper.Strip)
	for i, part := range r.off {
		if i > 0 {
			r.prove(i)
		}
		r.mark(i)
		r.takeOff(i, part)
	}
	r.prove(len(r.off))
}

// mark writes that look-alike parts are marked, before the first of several
// comes off. The part that is worked on may be one of them.
func (r *reach) mark(i int) {
	name := r.off[i].Alike
	alike := func(p *model.Part) bool { return p.Alike == name }
	group, known := r.machine.Find(name).(*model.Group)
	if name == "" || !known || slices.IndexFunc(r.off, alike) != i {
		return
	}
	on, count := r.on[r.off[i]], 0
	for _, p := range r.touched() {
		if alike(p) {
			on, count = on.common(r.on[p]), count+1
		}
	}
	if count > 1 {
		r.paper.say(on, act("mark", r.paper.Mark, group))
	}
}

// takeOff writes the step of one part.
func (r *reach) takeOff(i int, part *model.Part) {
	p := r.paper
	people, gear := r.carriers(part)
	beside := []string{r.heldBy(part), p.usedTools(r.drivers(part))}
	for _, c := range r.cuts {
		if r.mindful(c, i) {
			beside = append(beside, p.hazard(c.hazard))
		}
	}
	if gear != nil {
		beside = append(beside, fmt.Sprintf(p.Carries, p.tool("tool", gear, gear.Label())))
	}
	p.say(r.on[part], p.takes(part), append(beside, p.crew(people))...)
	r.refitNote(part)
}

// takes is the act in the trade's words for what it is.
func (p *document) takes(part *model.Part) string {
	switch part.Kind {
	case "line":
		return act("disconnect", p.Disconnect, part) + p.And + of("cap", p.Cap, part)
	case "wire":
		return act("disconnect", p.Disconnect, part)
	case "connector":
		return act("disconnect", p.Unplug, part)
	default:
		return act("remove", p.TakeOff, part)
	}
}

// heldBy says what holds a part, and counts the new ones that go in at its
// refit.
func (r *reach) heldBy(part *model.Part) string {
	var each []string
	for _, h := range part.HeldBy {
		if h.To == nil {
			continue
		}
		r.unread(h.To)
		n, err := strconv.Atoi(h.Amount)
		if err != nil {
			n = 1
		}
		each = append(each, strconv.Itoa(n)+" × "+of("fastener", h.To.Label(), h.To))
		if s := h.To.RenewWith.To; s != nil {
			r.paper.supply(s, n, quantity.Quantity{})
		}
	}
	if len(each) == 0 {
		return ""
	}
	return fmt.Sprintf(r.paper.HeldBy, r.paper.listed(each))
}

// refitNote names what the refit of a part is tightened with: the derived step
// shows it.
func (r *reach) refitNote(part *model.Part) {
	torque, angle := r.wrenches(part)
	if len(torque)+len(angle) == 0 {
		return
	}
	tools := r.paper.usedTools(append(torque, angle...))
	r.paper.note(link(r.paper.WhenRefit, "on:refit") + ", " + tools)
}

// refit writes that everything goes back.
func (r *reach) refit() {
	if len(r.off) == 0 {
		return
	}
	r.paper.phase(r.paper.Refit)
	r.paper.say(nil, link(r.paper.Reverse, "reverse:"+syntax.PhaseID(r.paper.Strip)))
}

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
		p.say(b.on, p.tool("clear", b.tool, fmt.Sprintf(p.Clear, b.tool.Label())))
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

// restore writes how the energies come back, in the machine's order.
func (r *reach) restore() {
	turn := func(c *cut) int {
		i := slices.IndexFunc(r.machine.RestoreOrder, func(e model.Ref[model.Energy]) bool { return e.To == c.energy })
		if i < 0 {
			return len(r.machine.RestoreOrder)
		}
		return i
	}
	cuts := slices.DeleteFunc(slices.Clone(r.cuts), (*cut).stays)
	slices.SortStableFunc(cuts, func(a, b *cut) int { return cmp.Compare(turn(a), turn(b)) })
	for _, c := range cuts {
		r.paper.say(c.on, act("restore", r.paper.comesBack(c.energy), c.energy))
	}
	for _, x := range r.points() {
		if r.leftOff(x) {
			r.paper.say(x.on, act("restore", r.paper.RestorePoint, x.Point))
		}
	}
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
