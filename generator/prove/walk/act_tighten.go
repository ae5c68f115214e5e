package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// tightening tightens a fastener to its torque.
type tightening struct{ onFastener }

func (tightening) does(w *walk, l *model.Link, g diagram.Func) {
	f := l.To.(*model.Fastener)
	if len(f.Holds) == 0 {
		x := w.lay.of[f]
		w.put(x, w.And(g, w.present(x)), tight)
		return
	}
	parts, all := w.scope(l, f)
	some := diagram.No
	for _, p := range parts {
		some = w.Or(some, w.tightenAt(f, p, g))
	}
	for _, p := range parts {
		w.tightenedByHand(f, p, g)
	}
	for _, p := range parts {
		x, there := w.lay.at[fastening{f, p}]
		if !there {
			if p.Lost("held-by") {
				continue
			}
			w.find(&ActOrder, w.lay.of[p], g, heldElsewhere, f.Label())
			continue
		}
		part := w.lay.of[p]
		early := w.And(w.And(g, w.present(x)), w.Is(w.get(part), offStates))
		if all {
			early = w.AndNot(early, some)
		}
		w.tightenedOff(x, p, early)
	}
}

// heldElsewhere is why a fastener cannot be tightened where a link says.
const heldElsewhere = "tightened at a part that the %s does not hold"

// tightenAt tightens where the part is on, and says where that is.
func (w *walk) tightenAt(f *model.Fastener, p *model.Part, g diagram.Func) diagram.Func {
	x, there := w.lay.at[fastening{f, p}]
	if !there {
		return diagram.No
	}
	part := w.lay.of[p]
	here := w.And(w.And(g, w.present(x)), w.Is(w.get(part), states(on, unknown)))
	w.put(x, here, tight)
	return here
}

// tightenedByHand looks for what is loose under a part whose fasteners were
// begun by hand, now that they are tightened.
func (w *walk) tightenedByHand(f *model.Fastener, p *model.Part, g diagram.Func) {
	x, there := w.lay.at[fastening{f, p}]
	if !there || w.byHand[p] == diagram.No {
		return
	}
	here := w.And(w.And(g, w.present(x)), w.And(w.byHand[p], w.Is(w.get(w.lay.of[p]), states(on, unknown))))
	w.byHand[p] = w.AndNot(w.byHand[p], here)
	w.coveredLoose(p, w.And(here, w.Is(w.get(w.lay.of[p]), states(on))), nil, nil)
}

// tooEarly is a fastener that was tightened while its part was off. It is told
// where the part goes on afterwards; where it never does, that is told instead.
type tooEarly struct {
	fastening thing
	part      *model.Part
	where     diagram.Func
	at        event
}

// tightenedOff remembers it.
func (w *walk) tightenedOff(x thing, p *model.Part, where diagram.Func) {
	if where != diagram.No {
		w.waiting = append(w.waiting, tooEarly{x, p, where, w.here})
	}
}

// tightenedEarly tells of fasteners that were tightened before their part was
// on.
func (w *walk) tightenedEarly(p *model.Part, g diagram.Func) {
	for i := range w.waiting {
		t := &w.waiting[i]
		if t.part != p {
			continue
		}
		now := w.And(g, t.where)
		if now == diagram.No {
			continue
		}
		t.where = w.AndNot(t.where, g)
		w.at(t.at, func() { w.find(&ActOrder, t.fastening, now, "tightened while its part is off") })
		w.put(t.fastening, now, tight)
	}
}
