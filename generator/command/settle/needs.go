package settle

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
)

// needed are the roles that each procedure's needs: lacks: those that its own
// steps ask for, as the check finds them, and those that come to what it
// performs.
func needed(m *model.Manual, found []finding.Finding) map[*model.Procedure][]string {
	out := map[*model.Procedure][]string{}
	byPath := map[string]*model.Procedure{}
	for _, p := range m.Procedures {
		byPath[p.File.Path] = p
	}
	for _, f := range found {
		p := byPath[f.At.File.Path]
		if f.Rule != &check.MissingQualification || p == nil {
			continue
		}
		for _, place := range f.Related {
			if id := place.At.Text(); isRole(m, id) {
				out[p] = with(out[p], id)
			}
		}
	}
	for changed := true; changed; {
		changed = false
		for _, p := range m.Procedures {
			n := len(out[p])
			out[p] = passedUp(out, p)
			changed = changed || len(out[p]) > n
		}
	}
	return out
}

// passedUp adds to what a procedure lacks what is added to those that it
// performs.
func passedUp(added map[*model.Procedure][]string, p *model.Procedure) []string {
	out := added[p]
	for _, call := range p.Calls {
		to, is := call.To.(*model.Procedure)
		if !is || call.Bad {
			continue
		}
		for _, id := range added[to] {
			if !slices.ContainsFunc(p.Needs, func(r model.Ref[model.Role]) bool { return r.ID == id }) {
				out = with(out, id)
			}
		}
	}
	return out
}

func with(list []string, id string) []string {
	if slices.Contains(list, id) {
		return list
	}
	return append(list, id)
}

func isRole(m *model.Manual, id string) bool {
	return slices.ContainsFunc(m.Roles, func(r *model.Role) bool { return r.ID == id })
}
