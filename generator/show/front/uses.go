package front

import (
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// ForMachine is a machine with its procedures by what they are for.
type ForMachine struct {
	Machine page.Link // the page of the machine, or of what is for any
	Uses    []page.Use
}

// mostOnFront is about how many procedures the front page lists by name: the
// rest stand on the machines' pages.
const mostOnFront = 400

// byMachine are the procedures that the front page shows. Where there are too
// many, each use of a machine shows its first few; so many machines that even
// those are too many are links alone.
func (s *Pages) byMachine(up string) []ForMachine {
	of := map[string][]*page.Row{}
	total := 0
	for i := range s.Rows {
		if r := &s.Rows[i]; !r.Retired {
			of[r.For] = append(of[r.For], r)
			total++
		}
	}
	few := 0
	if total > mostOnFront {
		few = max(1, mostOnFront/(page.Uses*(len(s.Manual.Machines)+1)))
	}
	var out []ForMachine
	for _, m := range s.Manual.Machines {
		g := ForMachine{Machine: s.Link(up, m)}
		if len(s.Manual.Machines)*page.Uses <= mostOnFront {
			g.Uses = s.UsesOf(up, of[m.ID], few, restAt(g.Machine.Address))
		}
		out = append(out, g)
	}
	if general := of[""]; len(general) > 0 {
		out = append(out, ForMachine{Machine: page.Link{Name: s.Words.AnyMachine, Address: "any.html"}, Uses: s.UsesOf(up, general, few, restAt("any.html"))})
	}
	return out
}

// restAt leads to a group of procedures on a page.
func restAt(address string) func(id string) string {
	return func(id string) string { return address + "#" + id }
}

// Procedures is a page of a list of procedures: of those that are for any
// machine, or for a machine that has too many for its own page.
type Procedures struct {
	page.Frame
	Name    string
	Machine page.Link
	Uses    []page.Use
	Parts   []page.Part
}

// Procedures makes a page of a list; of is the machine, nil for any.
func (s *Pages) Procedures(l page.Listed, of *model.Machine) *Procedures {
	name := s.Words.AnyMachine
	if of != nil {
		name = of.Label()
	}
	v := &Procedures{Frame: s.Frame(l.At, name), Name: name}
	if of != nil {
		v.Machine = s.Link(v.Up, of)
	}
	v.Uses, v.Parts = s.UsesAt(v.Up, l)
	return v
}

// Lists are the pages that list the procedures of a machine, nil for those of
// any machine; none where they stand on the machine's own page.
func (s *Pages) Lists(of *model.Machine) []page.Listed {
	if of == nil {
		return s.Site.Lists("any.html", s.InUse(""))
	}
	list := s.InUse(of.ID)
	if len(list) <= page.OnList {
		return nil
	}
	return s.Site.Lists(page.ListAt(of), list)
}
