package training

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/ledger"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
)

// Grant is what becomes of a role of some people, by one who decided it.
type Grant struct {
	People []string
	Role   string
	Act    string // gained, renewed, withdrawn
	By     string // "" where nobody is named
	Reason string
	Date   model.Date
}

// Award adds the rows of roles, of all who are named or, where one cannot be, of
// none.
func Award(m *model.Manual, folder string, g Grant) error {
	h := NewStandings(m, g.Date)
	wrong := []error{g.fits(m)}
	var rows []ledger.Row
	for _, id := range g.People {
		p := model.ByID(m.People, id)
		if p == nil {
			wrong = append(wrong, NotInPeople(m, id))
			continue
		}
		wrong = append(wrong, h.refuse(p, g))
		rows = append(rows, ledger.Row{"date": g.Date.String(), "person": id, "role": g.Role, "act": g.Act, "by": g.By, "reason": g.Reason})
	}
	if err := errors.Join(wrong...); err != nil {
		return err
	}
	if err := ledger.Append(filepath.Join(folder, "readings", "roles.csv"), rolesColumns, rows, nil); err != nil {
		return err
	}
	return ledger.Union(folder, "readings/roles.csv")
}

// fits says what is wrong with it, whoever it is about.
func (g Grant) fits(m *model.Manual) error {
	near, role := nearest.Of(g.Role, model.IDs(m.Roles)), model.ByID(m.Roles, g.Role)
	switch {
	case role == nil && near != "":
		return finding.Refuse("there is no role %s: did you mean %s?", g.Role, near)
	case role == nil:
		return finding.Refuse("there is no role %s", g.Role)
	case g.By != "" && model.ByID(m.People, g.By) == nil:
		return finding.Refuse("who is to have decided it is not known: %s", NotInPeople(m, g.By))
	case slices.Contains(g.People, g.By):
		return finding.Refuse("%s cannot decide over a role of their own", g.By)
	case g.Act == "withdrawn" && strings.TrimSpace(g.Reason) == "":
		return finding.Refuse("say with --reason why it is withdrawn")
	}
	return nil
}

// refuse says why a role of somebody cannot become so on the day.
func (h *Standings) refuse(p *model.Person, g Grant) error {
	had := slices.ContainsFunc(h.Roles(p), func(r model.Gained) bool {
		return r.ID == g.Role && r.Ended.IsZero() && !g.Date.Before(r.On) && !g.Date.Before(r.From)
	})
	switch {
	case !p.There(g.Date):
		return finding.Refuse("%s was not there on %s: mend started or left in readings/people.csv, or give the day with --today", p.ID, g.Date)
	case g.Act == "gained" && h.HoldsRole(p, g.Role, g.Date):
		return finding.Refuse("%s holds %s already: write renewed", p.ID, g.Role)
	case g.Act != "gained" && !had:
		return finding.Refuse("%s has no %s that could be %s", p.ID, g.Role, finding.Say(g.Act))
	}
	return nil
}
