package front

import (
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// ForMachine is a machine with its procedures by what they are for.
type ForMachine struct {
	Machine page.Link // without an address for what is for any machine
	Uses    []page.Use
}

// mostOnFront is about how many procedures the front page lists by name: the
// rest stand on the machines' pages.
const mostOnFront = 400

// byMachine are the procedures that the front page shows. Where there are too
// many, each use of a machine shows its first few; so many machines that even
// those are too many are links alone.
func (s *Pages) byMachine(up string) []ForMachine {
	of := map[*model.Machine][]*model.Procedure{}
	total := 0
	for _, p := range s.Shown {
		if p.Status != "retired" {
			of[p.For.To] = append(of[p.For.To], p)
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
			g.Uses = s.UsesOf(up, of[m], few, g.Machine.Address)
		}
		out = append(out, g)
	}
	if general := of[nil]; len(general) > 0 {
		out = append(out, ForMachine{Machine: page.Link{Name: s.Words.AnyMachine}, Uses: s.UsesOf(up, general, few, "any.html")})
	}
	return out
}

// General is the page of the procedures that are for any machine.
type General struct {
	page.Frame
	Name string
	Uses []page.Use
}

// General makes that page; nil where there is none to show.
func (s *Pages) General() *General {
	var list []*model.Procedure
	for _, p := range s.Shown {
		if p.For.To == nil && p.Status != "retired" {
			list = append(list, p)
		}
	}
	if len(list) == 0 {
		return nil
	}
	v := &General{Frame: s.Frame("any.html", s.Words.AnyMachine), Name: s.Words.AnyMachine}
	v.Uses = s.UsesOf(v.Up, list, 0, "")
	return v
}
