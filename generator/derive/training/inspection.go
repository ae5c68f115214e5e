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
	for i := range h.m.Record {
		r := &h.m.Record[i]
		if r.Procedure.To == p && r.Act == "inspected" && h.counts(r) && h.InspectionFault(r) == "" && (last == nil || last.Date.Before(r.Date)) {
			last, from = r, r.Date
		}
	}
	return model.DateOf(span.AddTo(from.Time())), last, true
}

// locks says whether a procedure has a lock: in its own steps.
func locks(p *model.Procedure) bool {
	return slices.ContainsFunc(p.Steps, func(s *model.Step) bool {
		return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Is(model.LinkLock) })
	})
}
