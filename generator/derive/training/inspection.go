package training

import (
	"slices"

	"baybinder/generator/model"
)

// Faults of an inspection, by which it is none.
const (
	SamePerson    = "same-person"
	NotAuthorised = "not-authorised"
)

// InspectionFault says why a row is no inspection: someone other than who works
// inspects, and holds one of the roles that the procedure needs; "" where it is
// one.
func (h *Standings) InspectionFault(r *model.Reading) string {
	by := h.person(r.By)
	switch {
	case r.By == r.Person.ID:
		return SamePerson
	case by == nil || !by.There(r.Date):
		return NotAuthorised
	case len(r.Procedure.To.Needs) > 0 && !slices.ContainsFunc(r.Procedure.To.Needs, func(n model.Ref[model.Role]) bool { return h.HoldsRole(by, n.ID, r.Date) }):
		return NotAuthorised
	}
	return ""
}

// InspectBy is the day by which working by a procedure that locks is to be
// inspected: so long after its last inspection, else after its first issue as
// the shop says. It is false where the shop does not say, or nothing locks.
func (h *Standings) InspectBy(p *model.Procedure) (by model.Date, last *model.Reading, ok bool) {
	span, every := h.m.Shop.Inspect.Span()
	if !every || len(h.since[p]) == 0 || !p.Issued() || !locks(p) {
		return model.Date{}, nil, false
	}
	from := h.since[p][0].Date
	if last = h.Inspected()[p]; last != nil {
		from = last.Date
	}
	return model.DateOf(span.AddTo(from.Time())), last, true
}

// Inspected are the last inspections that are any, by procedure.
func (h *Standings) Inspected() map[*model.Procedure]*model.Reading {
	if h.inspected != nil {
		return h.inspected
	}
	h.inspected = map[*model.Procedure]*model.Reading{}
	for i := range h.m.Record {
		r := &h.m.Record[i]
		if r.Act != "inspected" || !h.counts(r) || h.InspectionFault(r) != "" {
			continue
		}
		if last := h.inspected[r.Procedure.To]; last == nil || last.Date.Before(r.Date) {
			h.inspected[r.Procedure.To] = r
		}
	}
	return h.inspected
}

// ReviewBy is the day by which a procedure is to be looked over: so long after
// its last revision, or after the last time that somebody was seen to work by it
// and what was found written down, which needs no revision. It is false where
// the shop does not say how often, or nothing was issued.
func (h *Standings) ReviewBy(p *model.Procedure) (model.Date, bool) {
	if len(h.since[p]) == 0 {
		return model.Date{}, false
	}
	return h.m.Shop.ReviewBy(h.LookedOver(p))
}

// LookedOver is the day from which the next review of an issued procedure counts.
func (h *Standings) LookedOver(p *model.Procedure) model.Date {
	n := len(h.since[p])
	looked := h.since[p][n-1].Date
	if last := h.Inspected()[p]; last != nil && looked.Before(last.Date) {
		looked = last.Date
	}
	return looked
}

// locks says whether a procedure has a lock: in its own steps.
func locks(p *model.Procedure) bool {
	return slices.ContainsFunc(p.Steps, func(s *model.Step) bool {
		return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Is(model.LinkLock) })
	})
}
