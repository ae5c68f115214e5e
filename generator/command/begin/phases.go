package begin

import (
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
