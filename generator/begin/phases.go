package begin

import (
	"cmp"
	"slices"
	"strconv"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
)

// makeSafe writes how the energies are cut, locked, let out and proved dead.
func (r *reach) makeSafe() {
	if len(r.cuts) == 0 {
		return
	}
	p := r.paper
	p.phase("Make safe")
	for _, c := range r.cuts {
		if c.early() {
			p.say(c.on, of("release", "release the "+c.energy.Label(), c.energy))
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
	*manual.Point
	on   conditions
	cuts []*manual.Energy
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
	act := of("isolate", "switch off at the "+x.Label(), x.Point)
	if x.Lock {
		act += " and " + p.lock(x.Point)
	}
	where := ""
	if x.Where != "" {
		where = "It is here: " + of("point", x.Where, x.Point) + "."
	}
	var cut []string
	for _, e := range x.cuts {
		cut = append(cut, the("energy", e))
	}
	p.say(x.on, act, where, "It cuts "+listed(cut)+".")
}

// letOutStep writes how what is stored is let out, where nothing holds it.
func (r *reach) letOutStep(c *cut) {
	switch {
	case !c.energy.Stored.Yes, c.block != nil, c.early():
	case c.wait != nil:
		r.paper.say(c.on, "wait out the "+r.paper.hold(c.wait))
	default:
		r.paper.say(c.on, of("release", "release the "+c.energy.Label(), c.energy))
	}
}

// block is a tool that holds loads.
type block struct {
	tool  *manual.Tool
	on    conditions
	holds []*manual.Energy
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
			held = append(held, the("energy", e))
		}
		r.paper.say(b.on, r.paper.tool("place", b.tool, "put the "+b.tool.Label()+" in place"), "It holds "+listed(held)+".")
	}
}

// prove writes the proofs that are due when so many parts are off.
func (r *reach) prove(off int) {
	p := r.paper
	for _, c := range r.cuts {
		if c.proved != off {
			continue
		}
		act, shown := of("prove", "prove the "+c.energy.Label()+" dead", c.energy), ""
		if c.proof != nil {
			act += ": " + p.hold(c.proof)
		} else {
			shown = "Say here what shows it."
		}
		p.say(c.on, act, shown, p.hazard(c.hazard))
	}
}

// strip writes what comes off, and between it the marks and the proofs.
func (r *reach) strip() {
	if len(r.off) == 0 {
		return
	}
	r.paper.phase("Strip")
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
	alike := func(p *manual.Part) bool { return p.Alike == name }
	group, known := r.machine.Find(name).(*manual.Group)
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
		r.paper.say(on, of("mark", "mark the "+group.Label()+" against swapping", group))
	}
}

// takeOff writes the step of one part.
func (r *reach) takeOff(i int, part *manual.Part) {
	p := r.paper
	people, gear := r.carriers(part)
	beside := []string{r.heldBy(part), p.usedTools("Use", r.drivers(part))}
	for _, c := range r.cuts {
		if r.mindful(c, i) {
			beside = append(beside, p.hazard(c.hazard))
		}
	}
	if gear != nil {
		beside = append(beside, "The "+p.tool("tool", gear, gear.Label())+" carries it.")
	}
	p.say(r.on[part], takes(part), append(beside, p.crew(people))...)
	r.refitNote(part)
}

// takes is the act in the trade's words for what it is.
func takes(part *manual.Part) string {
	switch name := part.Label(); part.Kind {
	case "line":
		return of("disconnect", "disconnect the "+name, part) + " and " + of("cap", "cap it", part)
	case "wire":
		return of("disconnect", "disconnect the "+name, part)
	case "connector":
		return of("disconnect", "unplug the "+name, part)
	default:
		return of("remove", "take the "+name+" off", part)
	}
}

// heldBy says what holds a part, and counts the new ones that go in at its
// refit.
func (r *reach) heldBy(part *manual.Part) string {
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
	return "It is held by " + listed(each) + "."
}

// refitNote names what the refit of a part is tightened with: the derived step
// shows it.
func (r *reach) refitNote(part *manual.Part) {
	torque, angle := r.wrenches(part)
	if len(torque)+len(angle) == 0 {
		return
	}
	tools := r.paper.usedTools("use", append(torque, angle...))
	r.paper.note(link("When you refit it", "on:refit") + ", " + tools)
}

// refit writes that everything goes back.
func (r *reach) refit() {
	if len(r.off) == 0 {
		return
	}
	r.paper.phase("Refit")
	r.paper.say(nil, link("refit everything in reverse", "reverse:strip"))
}

// giveBack writes how the machine goes back to work.
func (r *reach) giveBack() {
	fluids, sign := r.fluids(), r.sign()
	if len(r.cuts)+len(fluids) == 0 && sign == nil {
		return
	}
	p := r.paper
	p.phase("Return")
	for _, f := range fluids {
		r.fill(f)
	}
	for _, b := range slices.Backward(r.blocks()) {
		p.say(b.on, p.tool("clear", b.tool, "take the "+b.tool.Label()+" away"))
	}
	for _, x := range slices.Backward(r.points()) {
		if x.Lock {
			p.say(x.on, of("unlock", "take your lock off the "+x.Label(), x.Point))
		}
	}
	r.restore()
	for _, f := range fluids {
		if look := r.leakLook(f.Fluid); look != nil {
			p.say(f.on, "look for a leak: "+p.hold(look))
		}
	}
	if sign != nil {
		p.say(nil, "the job ends with the "+p.hold(sign))
	}
}

// opened is a fluid whose circuit is opened.
type opened struct {
	*manual.Fluid
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
	p.say(f.on, of("dry", "dry what was spilled of the "+f.Label(), f.Fluid))
	act := of("fill", "fill up the "+f.Label(), f.Fluid)
	if s := f.Supply.To; s != nil {
		act += " with " + of("supply", s.Label(), s)
		unit, known := quantity.UnitNamed(s.Unit)
		if f.Capacity.IsZero() && known && unit.Dimension() != quantity.Count {
			r.lack("how much %s is used up: %s has no capacity", s.ID, f.ID)
		}
		p.supply(s, 1, f.Capacity)
	}
	p.say(f.on, act)
	if f.Bleed {
		p.say(f.on, of("bleed", "bleed the "+f.Label(), f.Fluid))
	}
}

func (r *reach) leakLook(f *manual.Fluid) *manual.Hold {
	return first(r.manual.Holds, func(h *manual.Hold) bool {
		return h.Kind == "look" && h.LooksFor == "leak" && h.Of.ID == f.ID && h.What != "" && !h.Unread
	})
}

// restore writes how the energies come back, in the machine's order.
func (r *reach) restore() {
	turn := func(c *cut) int {
		i := slices.IndexFunc(r.machine.RestoreOrder, func(e manual.Ref[manual.Energy]) bool { return e.To == c.energy })
		if i < 0 {
			return len(r.machine.RestoreOrder)
		}
		return i
	}
	cuts := slices.DeleteFunc(slices.Clone(r.cuts), (*cut).stays)
	slices.SortStableFunc(cuts, func(a, b *cut) int { return cmp.Compare(turn(a), turn(b)) })
	for _, c := range cuts {
		r.paper.say(c.on, of("restore", comesBack(c.energy), c.energy))
	}
	for _, x := range r.points() {
		if r.leftOff(x) {
			r.paper.say(x.on, of("restore", "switch on again at the "+x.Label(), x.Point))
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
func comesBack(e *manual.Energy) string {
	switch {
	case len(e.Points) == 0, e.Kind == "gravity", e.Kind == "spring", e.Kind == "heat", e.Kind == "chemical":
		return "let the " + e.Label() + " come back"
	}
	return "switch the " + e.Label() + " on again"
}

// sign is the release that most procedures of the shop end with; where none
// does, the first sign hold that is not of some energy.
func (r *reach) sign() *manual.Hold {
	ends := map[*manual.Hold]int{}
	for _, p := range r.manual.Procedures {
		if len(p.Phases) == 0 {
			continue
		}
		for _, s := range p.Phases[len(p.Phases)-1].Steps {
			for _, l := range s.Links {
				if h, is := l.To.(*manual.Hold); is && l.Is("hold") {
					ends[h]++
				}
			}
		}
	}
	var best *manual.Hold
	for _, h := range r.manual.Holds {
		if h.Kind == "sign" && h.By.To != nil && h.Of.ID == "" && !h.Unread && (best == nil || ends[h] > ends[best]) {
			best = h
		}
	}
	return best
}
