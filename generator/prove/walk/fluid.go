package walk

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

func (w *walk) drain(f *model.Fluid, g diagram.Func) {
	g = w.And(g, w.present(w.lay.of[f]))
	w.shift(w.lay.of[f], g, move(drained, full, unbled, low))
	w.acted = w.Or(w.acted, g)
}

// fill fills a circuit; one that is bled afterwards is full only then.
func (w *walk) fill(f *model.Fluid, g diagram.Func) {
	x := w.lay.of[f]
	g = w.And(g, w.present(x))
	was := w.get(x)
	for _, p := range f.Lines {
		line := w.lay.of[p]
		open := w.And(w.present(line), w.Is(w.get(line), offStates))
		w.find(&ActOrder, line, w.And(w.And(g, w.Is(was, lowStates)), open), "the %s is filled while this line is off", f.Label())
	}
	for _, e := range leads(f.NeededBy) {
		if r := w.lay.energy[e]; len(r.points) == 0 {
			here := w.And(w.And(g, w.present(w.lay.of[e])), w.Is(was, lowStates))
			w.contained(r, here, "it is filled without %s in place", containers(r))
		}
	}
	w.refill(f, x, w.And(g, w.Is(was, states(drained))))
	to := full
	if f.Bleed {
		to = unbled
	}
	w.shift(x, g, move(to, low, drained))
}

func (w *walk) bleed(f *model.Fluid, g diagram.Func) {
	x := w.lay.of[f]
	g = w.And(g, w.present(x))
	w.find(&ActOrder, x, w.And(g, w.Is(w.get(x), lowStates)), "bled while it is low")
	if f.BledLive {
		w.bledOff(f, g)
	}
	w.put(x, g, full)
	w.acted = w.Or(w.acted, g)
}

// bledOff tells of energies that are off while a circuit is bled that is bled
// with them on.
func (w *walk) bledOff(f *model.Fluid, g diagram.Func) {
	for _, e := range leads(f.NeededBy) {
		x := w.lay.of[e]
		w.find(&ActOrder, x, w.And(w.And(g, w.present(x)), w.Is(w.get(x), notLive)), "the %s is bled with this off, and it is bled live", f.Label())
	}
}

func (w *walk) dry(f *model.Fluid, g diagram.Func) {
	x := w.lay.spill[f]
	w.put(x, w.And(g, w.present(x)), idle)
}

// place leaves a tool in place; one that holds a load releases it.
func (w *walk) place(t *model.Tool, g diagram.Func) {
	x := w.lay.of[t]
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(set))), "put in place twice")
	g = w.AndNot(g, w.Is(was, states(set)))
	w.undone(undoing{verb: model.Clear, thing: x, where: g})
	w.put(x, g, set)
	for _, e := range w.lay.blocks[t] {
		w.block(w.lay.energy[e], g)
	}
}

// clear takes a tool away; the last that holds a load ends its release.
func (w *walk) clear(t *model.Tool, g diagram.Func) {
	x := w.lay.of[t]
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(idle))), "taken away, and not in place")
	g = w.AndNot(g, w.Is(was, states(idle)))
	w.put(x, g, idle)
	for _, e := range w.lay.blocks[t] {
		r := w.lay.energy[e]
		w.stillOpen(r, w.letGo(r, g))
		w.unblock(r, g)
	}
	for _, e := range w.lay.contains[t] {
		r := w.lay.energy[e]
		x := w.lay.of[e]
		w.contained(r, w.And(w.And(g, w.present(x)), w.Is(w.get(x), liveStates)), "the %s is taken away while it is on", t.Label())
	}
}

// contained tells where an energy has none of the tools round it that must be.
func (w *walk) contained(r *energyRule, g diagram.Func, why string, of ...any) {
	if len(r.containers) == 0 {
		return
	}
	for _, t := range r.containers {
		g = w.AndNot(g, w.Is(w.get(w.lay.of[t]), states(set, unknown)))
	}
	w.find(&RestoredWhileOpen, w.lay.of[r.energy], g, why, of...)
}

// containers are the names of those tools.
func containers(r *energyRule) finding.List {
	var out []finding.Words
	for _, t := range r.containers {
		out = append(out, finding.Say("the %s", t.Label()))
	}
	return finding.ListOf(" or ", out)
}

func (w *walk) alter(s *model.Setting, g diagram.Func) {
	x := w.lay.of[s]
	g = w.And(g, w.present(x))
	was := w.get(x)
	w.find(&ActOrder, x, w.And(g, w.Is(was, states(set))), "changed twice")
	g = w.AndNot(g, w.Is(was, states(set)))
	w.undone(undoing{verb: model.Reset, thing: x, where: g})
	w.put(x, g, set)
}

func (w *walk) reset(s *model.Setting, g diagram.Func) {
	x := w.lay.of[s]
	w.put(x, w.And(g, w.present(x)), idle)
}

func (w *walk) mark(m *model.Group, g diagram.Func) { w.put(w.lay.of[m], g, set) }
