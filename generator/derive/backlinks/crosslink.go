// Package backlinks turns the links of all procedures round: which steps use an entry, which procedures call which.
package backlinks

import (
	"slices"

	"baybinder/generator/model"
)

// Use is a procedure with those of its steps that use an entry.
type Use struct {
	Procedure *model.Procedure
	Steps     []*model.Step
}

// Index answers who uses what. The lists are in the order of the procedures.
type Index struct {
	uses    map[*model.Entry][]Use
	callers map[*model.Procedure][]*model.Procedure
	seers   map[*model.Procedure][]*model.Procedure
	late    bool // what is noted now may be a step of before
}

// Of makes the index over the procedures of a manual.
func Of(procedures []*model.Procedure) *Index {
	x := &Index{
		uses:    map[*model.Entry][]Use{},
		callers: map[*model.Procedure][]*model.Procedure{},
		seers:   map[*model.Procedure][]*model.Procedure{},
	}
	for _, p := range procedures {
		for _, s := range p.Steps {
			x.step(p, s)
		}
		x.phases(p)
		for _, r := range p.Needs {
			if r.To != nil {
				x.note(&r.To.Entry, p, nil)
			}
		}
	}
	return x
}

// step notes what one step uses, its notes for the refit included.
func (x *Index) step(p *model.Procedure, s *model.Step) {
	for _, b := range s.Blocks {
		for _, l := range b.Links {
			x.link(p, s, l)
		}
	}
}

func (x *Index) link(p *model.Procedure, s *model.Step, l *model.Link) {
	switch to := l.To.(type) {
	case *model.Procedure:
		x.procedure(p, to, l)
	case *model.Hazard:
		x.note(&to.Entry, p, s)
		x.gear(p, s, to)
	case *model.Hold:
		x.note(&to.Entry, p, s)
		for _, t := range []*model.Tool{to.With.To, to.ProvedOn.To} {
			if t != nil {
				x.note(&t.Entry, p, s)
			}
		}
	case nil:
	default:
		x.note(to.Base(), p, s)
	}
}

func (x *Index) gear(p *model.Procedure, s *model.Step, h *model.Hazard) {
	for _, w := range h.Wear {
		if w.To != nil {
			x.note(&w.To.Entry, p, s)
		}
	}
}

func (x *Index) procedure(p, to *model.Procedure, l *model.Link) {
	list := x.seers
	if l.Kind.Act == model.Call {
		list = x.callers
	}
	if !slices.Contains(list[to], p) {
		list[to] = append(list[to], p)
	}
}

// phases notes the hazards that a whole phase meets.
func (x *Index) phases(p *model.Procedure) {
	x.late = true
	defer func() { x.late = false }()
	for _, phase := range p.Phases {
		if phase.Lead == nil || len(phase.Steps) == 0 {
			continue
		}
		for _, l := range phase.Lead.Links {
			if _, is := l.To.(*model.Hazard); is {
				x.link(p, phase.Steps[0], l)
			}
		}
	}
}

// note adds a step to an entry's uses. Steps come in reading order, so the use
// to add to is the last.
func (x *Index) note(e *model.Entry, p *model.Procedure, s *model.Step) {
	list := x.uses[e]
	if n := len(list); n == 0 || list[n-1].Procedure != p {
		list = append(list, Use{Procedure: p})
	}
	use := &list[len(list)-1]
	if n := len(use.Steps); s != nil && (n == 0 || use.Steps[n-1] != s) && !(x.late && slices.Contains(use.Steps, s)) {
		use.Steps = append(use.Steps, s)
	}
	x.uses[e] = list
}

// TakeUses are the procedures and steps that use an entry. The index holds them no
// longer: a large manual has some hundred thousand.
func (x *Index) TakeUses(n model.Named) []Use {
	uses := x.uses[n.Base()]
	delete(x.uses, n.Base())
	return uses
}

// Callers are the procedures that perform p.
func (x *Index) Callers(p *model.Procedure) []*model.Procedure { return x.callers[p] }

// Seers are the procedures that point at p for further reading.
func (x *Index) Seers(p *model.Procedure) []*model.Procedure { return x.seers[p] }
