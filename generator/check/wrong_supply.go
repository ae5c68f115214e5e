package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

var wrongSupply = finding.Rule{
	Code:  "wrong-supply",
	Title: "A circuit that is filled from the wrong can",
	Why:   "Two oils look alike in the jug. What goes into a circuit that it is not made for eats its seals, and is not seen until they leak.",
	Mend:  "Link the supply that the machine file names for the fluid, or mend supply: there.",
}

// runWrongSupply looks at the steps that fill a circuit and name what from.
// What is counted by the piece, such as a filter, is not poured in.
func runWrongSupply(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, s := range p.Steps {
		for _, link := range s.Links {
			fluid, is := link.To.(*model.Fluid)
			if !is || link.Bad || link.Kind.Act != model.Fill || fluid.Supply.To == nil {
				continue
			}
			if other := pouredInstead(s.Links, fluid.Supply.To); other != nil {
				found = append(found, wrongSupply.At(link.At, "%s is filled with %s, and the step links %s", fluid.Label(), fluid.Supply.To.Label(), other.Label()).
					WithMend("link it: [](supply:%s)", fluid.Supply.ID).See(fluid.At, "the fluid is here"))
			}
		}
	}
	return found
}

// pouredInstead is a supply of a step that is poured or weighed, where none of
// them is the right one. Where a link could not be read nothing is sure.
func pouredInstead(links []*model.Link, right *model.Supply) *model.Supply {
	var other *model.Supply
	for _, l := range links {
		s, is := l.To.(*model.Supply)
		unsure := l.Bad && (l.Odd || l.Kind == model.UnknownLink || l.Kind.Target == model.ToSupply)
		if unsure || s == right || is && s.Lost("unit") {
			return nil
		}
		if is && other == nil && (s.Stock().Dimension() == quantity.Volume || s.Stock().Dimension() == quantity.Mass) {
			other = s
		}
	}
	return other
}
