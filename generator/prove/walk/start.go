package walk

import (
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// begin puts every thing where the procedure expects it.
func (w *walk) begin() {
	if w.p.Lost("expects") && len(w.p.Expects) == 0 {
		for x := range w.home {
			w.home[x] = unknown
		}
		return
	}
	for _, s := range partsFirst(w.p.Expects) {
		switch {
		case s.Unknown && s.Thing == nil:
			for x := range w.home {
				w.home[x] = unknown
			}
			return
		case s.Unknown:
			w.homeAll(s.Thing, unknown)
		default:
			w.homeAll(s.Thing, w.meant(s, w.aloneHere()))
		}
	}
	if w.lay.machine != nil {
		w.standPoints()
	}
}

// partsFirst puts the lines that name a fastener last: what is said of it goes
// before what follows from its part.
func partsFirst(list []model.State) []model.State {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b model.State) int { return rank(a) - rank(b) })
	return out
}

func rank(s model.State) int {
	if _, is := s.Thing.(*model.Fastener); is {
		return 1
	}
	return 0
}

func (w *walk) homeAll(n model.Named, to diagram.Func) {
	for _, x := range w.named(n) {
		w.home[x] = to
		w.unlikeHomes = w.unlikeHomes || !to.Constant()
	}
	if p, is := n.(*model.Part); is && to != on {
		for _, h := range w.lay.held[p] {
			w.home[h] = loose
		}
	}
}

// named are the things that a line of expects or leaves speaks of: a fastener
// is meant wherever it is.
func (w *walk) named(n model.Named) []thing {
	f, is := n.(*model.Fastener)
	if !is || len(f.Holds) == 0 {
		return []thing{w.lay.of[n]}
	}
	var out []thing
	for _, p := range f.Holds {
		if x, there := w.lay.at[fastening{f, p}]; there {
			out = append(out, x)
		}
	}
	return out
}

// meant is the state that a line of expects or leaves says. What takes no lock
// is as good as locked once it is isolated.
func (w *walk) meant(s model.State, alone diagram.Func) diagram.Func {
	switch n := s.Thing.(type) {
	case *model.Energy:
		if s.Word == "locked" {
			return w.Ite(w.lockable(w.lay.energy[n]), locked, isolated)
		}
	case *model.Point:
		switch {
		case n.Kept && s.Word != "live":
			return w.keptOut(alone)
		case s.Word == "locked" && !n.Lock:
			return isolated
		}
	}
	switch s.Word {
	case "isolated", "off", "loose", "low", "placed", "altered":
		return 1
	case "locked", "unbled":
		return 2
	case "released":
		return released
	case "dead":
		return dead
	}
	return 0
}

// standPoints puts the points where the energies that expects names need them,
// and the other energies where their points are.
func (w *walk) standPoints() {
	named := namedIn(w.p.Expects)
	for _, p := range w.lay.machine.Points {
		if x := w.lay.of[p]; !named[p] && w.home[x] != unknown {
			w.home[x] = w.needOf(p, named, w.aloneHere(), func(e *model.Energy) diagram.Func { return w.home[w.lay.of[e]] })
		}
	}
	for _, e := range w.lay.machine.Energies {
		if x := w.lay.of[e]; !named[e] && w.home[x] != unknown {
			w.home[x] = w.homeEnergy(w.lay.energy[e])
		}
	}
}

func namedIn(list []model.State) map[model.Named]bool {
	out := map[model.Named]bool{}
	for _, s := range list {
		if s.Thing != nil {
			out[s.Thing] = true
		}
	}
	return out
}

// needOf is how a point stands for the energies that are named.
func (w *walk) needOf(p *model.Point, named map[model.Named]bool, alone diagram.Func, state func(*model.Energy) diagram.Func) diagram.Func {
	need := live
	if p.Lost(model.Cutting) && pointsUnread(named) {
		return unknown
	}
	for _, e := range p.Cuts {
		if !named[e] {
			continue
		}
		switch s := state(e); {
		case s == unknown:
			return unknown
		case p.Kept && s != live:
			need = w.keptOut(alone)
		case s >= locked && p.Lock:
			need = locked
		case s >= isolated && need == live:
			need = isolated
		}
	}
	return need
}

// pointsUnread says that an energy is named whose points could not be read: any may
// be its.
func pointsUnread(named map[model.Named]bool) bool {
	for n := range named {
		if e, is := n.(*model.Energy); is && e.Lost("points") {
			return true
		}
	}
	return false
}

// homeEnergy is how an energy stands that expects does not name: as those of
// its points do that the unit has.
func (w *walk) homeEnergy(r *energyRule) diagram.Func {
	on, unresolved, shut := diagram.No, diagram.No, w.lockable(r)
	for _, p := range r.points {
		switch home := w.home[w.lay.of[p]]; {
		case home == unknown:
			unresolved = w.Or(unresolved, w.has(p))
		case home == live:
			on = w.Or(on, w.has(p))
		case home == isolated && p.Lock:
			shut = w.AndNot(shut, w.has(p))
		}
	}
	f := w.Ite(unresolved, unknown, w.Ite(shut, locked, isolated))
	f = w.Ite(on, w.heldAtHome(r), f)
	f = w.Ite(w.anyPoint(r), f, live)
	if len(r.points) == 0 {
		f = live
	}
	w.unlikeHomes = w.unlikeHomes || !f.Constant()
	return f
}

// heldAtHome is a live load, which a tool may hold already.
func (w *walk) heldAtHome(r *energyRule) diagram.Func {
	for _, t := range r.blockers {
		if r.load && w.home[w.lay.of[t]] == set {
			return early
		}
	}
	return live
}
