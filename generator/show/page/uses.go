package page

import (
	"fmt"
	"slices"

	"baybinder/generator/model"
)

// Use is what some procedures of a machine are for.
type Use struct {
	ID         string // where it stands on the machine's page
	Name       string
	Procedures []Sheet
	More       Link // to the rest; without an address where all are there
}

// What a procedure is for, by what it does: one whose own steps take something
// off or loosen it repairs; one that leaves more isolated or in place than it
// finds makes safe, one that leaves less brings back; one that drains or fills
// is service; the rest checks.
const (
	makesSafe = iota
	checks
	repairs
	bringsBack
	Uses // how many there are
)

var useIDs = [Uses]string{"make-safe", "check", "repair", "bring-back"}

func useOf(p *model.Procedure) int {
	switch {
	case does(p, func(k *model.Kind) bool { return k.Opens }):
		return repairs
	case len(p.Leaves) > len(p.Expects):
		return makesSafe
	case len(p.Expects) > 0:
		return bringsBack
	case does(p, func(k *model.Kind) bool { return k.Act == model.Drain || k.Act == model.Fill }):
		return repairs
	}
	return checks
}

// does says that a procedure's own steps have a link of some kinds.
func does(p *model.Procedure, is func(*model.Kind) bool) bool {
	return slices.ContainsFunc(p.Steps, func(st *model.Step) bool {
		return slices.ContainsFunc(st.Links, func(l *model.Link) bool { return is(l.Kind) })
	})
}

// UsesOf sorts procedures by what they are for, each group by title, and leaves
// all but the first few to the page at an address; 0 is all.
func (s *Site) UsesOf(up string, procedures []*model.Procedure, few int, rest string) []Use {
	var groups [Uses][]*model.Procedure
	for _, p := range procedures {
		groups[useOf(p)] = append(groups[useOf(p)], p)
	}
	w := &s.Speaks.Front
	var out []Use
	for i, list := range groups {
		if len(list) == 0 {
			continue
		}
		u := Use{ID: useIDs[i], Name: [Uses]string{w.MakeSafe, w.Check, w.Repair, w.BringBack}[i]}
		slices.SortStableFunc(list, func(a, b *model.Procedure) int { return CompareText(s.Name(a), s.Name(b)) })
		for n, p := range list {
			if few > 0 && n == few {
				u.More = Link{Name: fmt.Sprintf(w.AndMore, len(list)-few), Address: rest + "#" + u.ID}
				break
			}
			u.Procedures = append(u.Procedures, s.Sheet(up, p))
		}
		out = append(out, u)
	}
	return out
}
