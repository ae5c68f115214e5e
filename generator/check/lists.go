package check

import (
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// frontList is one of the four lists of a front matter that are reconciled
// with the steps.
type frontList struct {
	list  model.List
	name  string
	kind  string // the link kind that uses a line of it
	lines func(p *model.Procedure) []listLine
}

// listLine is one line of such a list.
type listLine struct {
	id    string
	at    position.Pos
	known bool // it leads to an entry
}

var reconciled = []frontList{
	{model.ListTools, "tools", "tool", func(p *model.Procedure) (out []listLine) {
		for _, u := range p.Tools {
			out = append(out, lineOf(u.Ref))
		}
		return out
	}},
	{model.ListSupplies, "supplies", "supply", func(p *model.Procedure) (out []listLine) {
		for _, u := range p.Supplies {
			out = append(out, lineOf(u.Ref))
		}
		return out
	}},
	{model.ListHazards, "hazards", "hazard", hazardLines},
	{model.ListHolds, "holds", "hold", func(p *model.Procedure) (out []listLine) {
		for _, r := range p.Holds {
			out = append(out, lineOf(r))
		}
		return out
	}},
}

func lineOf[T any](r model.Ref[T]) listLine { return listLine{r.ID, r.At, r.To != nil} }

func hazardLines(p *model.Procedure) (out []listLine) {
	for _, u := range p.Hazards {
		out = append(out, lineOf(u.Ref))
	}
	return out
}
