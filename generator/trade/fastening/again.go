package fastening

import (
	"slices"
	"sync"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// Asked is what a tightening asks for: the torque, or every stage; of a fastener
// that is tight already the last stage alone. Its sequence and head stay.
func Asked(f *model.Fastener, again bool) *model.Fastener {
	if !again || len(f.Stages) < 2 {
		return f
	}
	last := *f
	last.Stages = f.Stages[len(f.Stages)-1:]
	return &last
}

// Angles are the stages of a fastener that are turned by an angle.
func Angles(f *model.Fastener) []quantity.Quantity {
	var out []quantity.Quantity
	for _, q := range f.Stages {
		if q.Unit.Dimension() == quantity.Angle {
			out = append(out, q)
		}
	}
	return out
}

// Book keeps what the procedures of a manual leave tight and loose, so that each
// is followed once, whatever performs it. Its zero value is ready, and several
// may ask at once.
type Book struct {
	mu    sync.Mutex
	known map[*model.Procedure]*hands // none of a ring of calls, or that leads to one
}

// Again are the tighten: links of a procedure at which everything that they
// tighten was tightened before in it, and is still tight on every unit and
// whatever happened. Where that is not sure, the link is not among them: all
// stages are asked for then.
func (b *Book) Again(p *model.Procedure) map[*model.Link]bool {
	if !slices.ContainsFunc(p.Steps, tightens) {
		return nil // whatever it performs
	}
	h := newHands(b, map[*model.Procedure]*hands{p: {ring: true}}) // a ring of calls does nothing again
	h.again = map[*model.Link]bool{}
	h.procedure(p)
	return h.again
}

// Forget follows a procedure anew when it is asked for next.
func (b *Book) Forget(p *model.Procedure) {
	b.mu.Lock()
	defer b.mu.Unlock()
	delete(b.known, p)
}

func (b *Book) get(p *model.Procedure) *hands {
	b.mu.Lock()
	defer b.mu.Unlock()
	return b.known[p]
}

func (b *Book) put(p *model.Procedure, h *hands) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.known == nil {
		b.known = map[*model.Procedure]*hands{}
	}
	b.known[p] = h
}

func tightens(s *model.Step) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return !l.Bad && l.Kind.Act == model.Tighten })
}

// heldBy is a fastener at a part; at none where it stands alone.
type heldBy struct {
	fastener *model.Fastener
	part     *model.Part
}

// hands follow what was surely tightened and not loosened since. Those of what is
// performed begin with nothing known, and are taken over at each call of it.
type hands struct {
	tight    map[heldBy]bool
	loose    map[heldBy]*model.Phase // the phase that loosened it last
	reversed []*model.Phase          // phases that were taken back
	again    map[*model.Link]bool    // nil of what is performed
	book     *Book
	callees  map[*model.Procedure]*hands // those that are not in the book
	ring     bool                        // a ring of calls is among what it performs
}

func newHands(b *Book, callees map[*model.Procedure]*hands) *hands {
	return &hands{tight: map[heldBy]bool{}, loose: map[heldBy]*model.Phase{}, book: b, callees: callees}
}

func (h *hands) procedure(p *model.Procedure) {
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if l.Kind.Act == model.NoAct {
				continue // nearly all
			}
			if callee, is := l.To.(*model.Procedure); is && l.Kind.Act == model.Call {
				h.take(h.of(callee))
			} else if !l.Bad {
				h.link(s, l)
			}
		}
	}
}

// of are the hands of what is performed, followed once however often it is.
func (h *hands) of(callee *model.Procedure) *hands {
	if known := h.callees[callee]; known != nil {
		return known
	}
	if known := h.book.get(callee); known != nil {
		return known
	}
	h.callees[callee] = &hands{ring: true}
	c := newHands(h.book, h.callees)
	c.procedure(callee)
	h.callees[callee] = c
	if !c.ring {
		h.book.put(callee, c)
	}
	return c
}

// take goes on with what others did: what they loosened is as they left it, and
// all else as it was, or tight.
func (h *hands) take(c *hands) {
	h.ring = h.ring || c.ring
	for _, ph := range c.reversed {
		h.reverse(ph)
	}
	for at := range c.tight {
		h.tight[at] = true
	}
	for at, ph := range c.loose {
		h.loose[at] = ph
		if !c.tight[at] {
			delete(h.tight, at)
		}
	}
}

func (h *hands) link(s *model.Step, l *model.Link) {
	switch to := l.To.(type) {
	case *model.Part:
		if l.Kind.MovesPart() {
			for _, use := range to.HeldBy {
				h.loosen(s, heldBy{use.To, to})
			}
		}
	case *model.Fastener:
		switch l.Kind.Act {
		case model.Loosen:
			for _, at := range scopeOf(s, l, to) {
				h.loosen(s, at)
			}
		case model.Tighten:
			h.tighten(s, l, to)
		default: // the others are no concern of this
		}
	case nil:
		if l.Kind.Act == model.Reverse && l.Sign == 0 && always(s) {
			h.reverse(l.Phase())
		}
	}
}

func (h *hands) loosen(s *model.Step, at heldBy) {
	delete(h.tight, at)
	h.loose[at] = s.Phase
}

// reverse tightens what a phase loosened and nobody else did since.
func (h *hands) reverse(ph *model.Phase) {
	if !slices.Contains(h.reversed, ph) {
		h.reversed = append(h.reversed, ph)
	}
	for at, by := range h.loose {
		if by == ph {
			h.tight[at] = true
		}
	}
}

func (h *hands) tighten(s *model.Step, l *model.Link, f *model.Fastener) {
	scope := scopeOf(s, l, f)
	if h.again != nil {
		h.again[l] = len(scope) > 0 && !slices.ContainsFunc(scope, func(at heldBy) bool { return !h.tight[at] })
	}
	if !always(s) {
		return
	}
	for _, at := range scope {
		h.tight[at] = true
	}
}

// scopeOf is what a fastener act works on: at the part that it names, else at
// those that its step takes off or puts back, else wherever it holds.
func scopeOf(s *model.Step, l *model.Link, f *model.Fastener) []heldBy {
	if l.Part() != nil {
		return []heldBy{{f, l.Part()}}
	}
	var out []heldBy
	for _, other := range s.Links {
		if p, is := other.To.(*model.Part); is && other.Kind.MovesPart() && slices.Contains(f.Holds, p) {
			out = append(out, heldBy{f, p})
		}
	}
	if len(out) > 0 {
		return out
	}
	for _, p := range f.Holds {
		out = append(out, heldBy{f, p})
	}
	if len(out) == 0 {
		return []heldBy{{f, nil}}
	}
	return out
}

// always says that a step is done on every unit and whatever happened.
func always(s *model.Step) bool {
	conditional := func(l *model.Link) bool { return l.Kind.Conditional }
	if s.Phase != nil && s.Phase.Lead != nil && slices.ContainsFunc(s.Phase.Lead.Links, conditional) {
		return false
	}
	for ; s != nil; s = s.Parent {
		if slices.ContainsFunc(s.Links, conditional) {
			return false
		}
	}
	return true
}
