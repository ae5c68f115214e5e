package training

import (
	"slices"

	"baybinder/generator/model"
)

// Faults of who checked or approved a revision, beside NotAuthorised.
const (
	NobodyNamed = "nobody-named"
	NotKnown    = "not-known"
)

// IssuerFault says why somebody cannot have checked, or approved, what was issued
// on a day, where shop.yaml asks for one of the roles; "" where they can, or it
// asks for none.
func (h *Standings) IssuerFault(who string, roles []model.Ref[model.Role], day model.Date) string {
	p := h.person(who)
	switch {
	case len(roles) == 0:
		return ""
	case who == "":
		return NobodyNamed
	case p == nil:
		return NotKnown
	case !slices.ContainsFunc(roles, func(r model.Ref[model.Role]) bool { return r.To != nil && h.HoldsRole(p, r.To.ID, day) }):
		return NotAuthorised
	}
	return ""
}
