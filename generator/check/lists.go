package check

import (
	"baybinder/generator/manual"
	"baybinder/generator/source"
)

// frontList is one of the four lists of a front matter that are reconciled
// with the steps.
type frontList struct {
	list  manual.List
	name  string
	kind  string // the link kind that uses a line of it
	lines func(p *manual.Procedure) []listLine
}

// listLine is one line of such a list.
type listLine struct {
	id    string
	at    source.Pos
	known bool // it leads to an entry
}

var reconciled = []frontList{
	{manual.ListTools, "tools", "tool", func(p *manual.Procedure) (out []listLine) {
		for _, u := range p.Tools {
			out = append(out, lineOf(u.Ref))
		}
		return out
	}},
	{manual.ListSupplies, "supplies", "supply", func(p *manual.Procedure) (out []listLine) {
		for _, u := range p.Supplies {
			out = append(out, lineOf(u.Ref))
		}
		return out
	}},
	{manual.ListHazards, "hazards", "hazard", hazardLines},
	{manual.ListHolds, "holds", "hold", func(p *manual.Procedure) (out []listLine) {
		for _, r := range p.Holds {
			out = append(out, lineOf(r))
		}
		return out
	}},
}

func lineOf[T any](r manual.Ref[T]) listLine { return listLine{r.ID, r.At, r.To != nil} }

func hazardLines(p *manual.Procedure) (out []listLine) {
	for _, u := range p.Hazards {
		out = append(out, lineOf(u.Ref))
	}
	return out
}
