package page

import (
	"cmp"
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

// OnList is how many procedures a page lists by name: one takes about 500 bytes.
const OnList = 150

// byUse sorts procedures by what they are for, each group by title.
func byUse(rows []*Row) []*Row {
	return slices.SortedStableFunc(slices.Values(rows), func(a, b *Row) int {
		return cmp.Or(cmp.Compare(a.Use, b.Use), CompareText(a.Name, b.Name))
	})
}

// uses are the groups of a sorted list.
func (s *Site) uses(up string, list []*Row) []Use {
	w := &s.Speaks.Front
	names := [Uses]string{w.MakeSafe, w.Check, w.Repair, w.BringBack}
	var out []Use
	for i, x := range list {
		if i == 0 || x.Use != list[i-1].Use {
			out = append(out, Use{ID: useIDs[x.Use], Name: names[x.Use]})
		}
		u := &out[len(out)-1]
		u.Procedures = append(u.Procedures, x.Sheet.At(up))
	}
	return out
}

// UsesOf sorts procedures by what they are for, each group by title, and leaves
// all but the first few to the page that rest names for a group; 0 is all.
func (s *Site) UsesOf(up string, rows []*Row, few int, rest func(id string) string) []Use {
	list, of := byUse(rows), [Uses]int{}
	for _, x := range list {
		of[x.Use]++
	}
	shown := list[:0:0]
	n := [Uses]int{}
	for _, x := range list {
		if n[x.Use]++; few == 0 || n[x.Use] <= few {
			shown = append(shown, x)
		}
	}
	out := s.uses(up, shown)
	for i := range out {
		u := &out[i]
		if more := of[slices.Index(useIDs[:], u.ID)] - len(u.Procedures); more > 0 {
			u.More = Link{Name: fmt.Sprintf(s.Speaks.Front.AndMore, more), Address: rest(u.ID)}
		}
	}
	return out
}

// Listed is one page of a list of procedures, and where it stands.
type Listed struct {
	At    string
	list  string
	rows  []*Row
	n, of int
}

// ListAt is where all procedures of a machine are listed that has too many for
// its own page.
func ListAt(m *model.Machine) string { return "machines/" + m.ID + ".procedures.html" }

// Lists are the pages of a list of procedures, of which the first stands at an
// address.
func (s *Site) Lists(at string, list []*Row) []Listed {
	var out []Listed
	for rows := range slices.Chunk(byUse(list), OnList) {
		out = append(out, Listed{At: PartAt(at, len(out)), list: at, rows: rows, n: len(out)})
	}
	for i := range out {
		out[i].of = len(out)
	}
	return out
}

// Begins says that a page of a list is the first with procedures of a use.
func (l *Listed) Begins(id string) bool {
	return slices.ContainsFunc(l.rows, func(x *Row) bool { return useIDs[x.Use] == id })
}

// UsesAt are the groups on a page of a list, and the way to its other pages.
func (s *Site) UsesAt(up string, l Listed) ([]Use, []Part) {
	return s.uses(up, l.rows), PartsOf(l.list, l.n, l.of)
}
