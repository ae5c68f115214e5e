package walk

import (
	"fmt"

	"baybinder/generator/model"
)

// Reversal is what a reverse: link expands to: the refit that follows from the
// strip.
type Reversal struct {
	Link       *model.Link
	Step       *model.Step // the step of the link
	Steps      []Derived
	NoReversal []*model.Step // steps of the phase of which nothing comes back
}

// Derived is one derived step. Its tools, people, hazards, conditions and
// pictures are those of From.
type Derived struct {
	Label string      // "5.1.3": the number of the reverse: step and the place in it
	From  *model.Step // the step that it reverses
	Undo  *model.Link // the link that it takes back
	Verb  model.Act   // Refit, Tighten, Clear or Reset
	Thing model.Named // the part, fastener, tool or setting
	When  string      // the units it is done for, in words; "" for all
	Where Cases       // the same as data
	New   *model.Supply
	Renew bool // a new part goes in: New, where the machine file names it
	// Fasteners are those to be tightened; in a run those to be begun by hand,
	// and a later step with Verb Tighten and the part as its thing tightens them.
	Fasteners []Fastened
	Begun     bool           // the fasteners are begun by hand and tightened later
	Capped    bool           // the end of the line is capped: the cap comes out first
	CappedOn  Cases          // the units and outcomes of those in Where for which it is; nil for all
	Notes     []*model.Block // the on:refit notes of From
}

// Fastened is a fastener at a part. Its torque, stages, sequence and start are
// the fastener's own.
type Fastened struct {
	*model.Fastener
	Part  *model.Part // nil for a fastener that no part names
	Count int         // 0 where the machine file gives none
	New   *model.Supply
}

func derivedActs(rs []Reversal) int {
	n := 0
	for _, r := range rs {
		n += len(r.Steps)
	}
	return n
}

// emit writes a derived step down.
func (r *reversal) emit(u undoing, begun bool) {
	if r.free {
		return
	}
	info := r.lay.things[u.thing]
	d := Derived{
		From: u.at.step, Undo: u.at.link, Verb: u.verb, Thing: info.named,
		Begun: begun, Renew: u.new, Notes: notesOf(u.at.step),
	}
	switch n := info.named.(type) {
	case *model.Part:
		d.Fasteners = fastened(n, true)
		d.Capped, d.CappedOn = r.cappedAt(u)
		if u.new {
			d.New = n.RenewWith.To
		}
	case *model.Fastener:
		d.Fasteners = []Fastened{{Fastener: n, Part: info.part, Count: countAt(n, info.part)}}
	}
	r.add(d, u)
}

// emitTightening writes down that what was begun by hand is tightened.
func (r *reversal) emitTightening(u undoing) {
	if r.free {
		return
	}
	p := r.lay.things[u.thing].named.(*model.Part)
	r.add(Derived{
		From: u.at.step, Undo: u.at.link, Verb: model.Tighten, Thing: p, Fasteners: fastened(p, false),
	}, u)
}

// cappedAt says whether the part that a refit puts back is capped, and on which
// of the units that it is done for.
func (r *reversal) cappedAt(u undoing) (bool, Cases) {
	where := r.And(u.where, r.Is(r.get(u.thing), states(capped)))
	if !r.possible(where) {
		return false, nil
	}
	if !r.possible(r.AndNot(u.where, where)) {
		return true, nil
	}
	return true, r.cases(where)
}

func (r *reversal) add(d Derived, u undoing) {
	d.Label = fmt.Sprintf("%s.%d", r.step.Number, len(r.step.Subs)+len(r.out.Steps)+1)
	d.Where = r.cases(u.where)
	d.When = r.casesWords(d.Where).String()
	r.out.Steps = append(r.out.Steps, d)
}

func notesOf(s *model.Step) []*model.Block {
	var out []*model.Block
	for i := range s.Blocks {
		if s.Blocks[i].Role == model.OnRefit {
			out = append(out, &s.Blocks[i])
		}
	}
	return out
}

// fastened are the fasteners of a part; with the new ones that go in at its
// refit.
func fastened(p *model.Part, refit bool) []Fastened {
	var out []Fastened
	for _, h := range p.HeldBy {
		if h.To == nil {
			continue
		}
		f := Fastened{Fastener: h.To, Part: p, Count: countAt(h.To, p)}
		if refit {
			f.New = h.To.RenewWith.To
		}
		out = append(out, f)
	}
	return out
}

func countAt(f *model.Fastener, p *model.Part) int {
	if p == nil {
		return 0
	}
	for _, h := range p.HeldBy {
		if h.To == f && h.Amount != "" {
			return countOf(h)
		}
	}
	return 0
}
