package numbers

import (
	"cmp"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// liftsOverRating holds what a step takes off, puts back or loosens, all of it,
// against what each lifting tool at hand in that step is rated for: told once a
// step, at its first such link.
func liftsOverRating(j *job) []finding.Finding {
	var found []finding.Finding
	for i, l := range j.loads {
		if i > 0 && j.loads[i-1].step == l.step {
			continue
		}
		mass, heaviest := j.massIn(l.step)
		for _, tool := range fastening.OfKind(l.tools.all(), "lifting") {
			rated, known := ratedMass(tool)
			if !known || mass <= rated.Base() {
				continue
			}
			total := quantity.Of(mass, quantity.Kilogram, 3)
			found = append(found, LiftOverLimit.At(l.link.At, "the %s is rated for %s, and this step lifts %s", tool.Label(), rated, total.In(rated.Unit)).
				WithMend("name lifting gear that carries it all, or lift in steps of their own").See(heaviest.At, "the heaviest part is here"))
			break
		}
	}
	return found
}

// massIn is the mass of the parts that a step lifts, each once, and the
// heaviest of them. What could not be read weighs nothing here.
func (j *job) massIn(s *model.Step) (sum float64, heaviest *model.Part) {
	var seen []*model.Part
	for _, l := range j.loads {
		if l.step != s || slices.Contains(seen, l.part) {
			continue
		}
		seen = append(seen, l.part)
		sum += l.part.Mass.Base()
	}
	return sum, slices.MaxFunc(seen, func(a, b *model.Part) int { return cmp.Compare(a.Mass.Base(), b.Mass.Base()) })
}

// ratedMass is the mass at the beginning of what is written on a tool: "500 kg,
// two legs". What begins with something else is no mass that it carries.
func ratedMass(t *model.Tool) (quantity.Quantity, bool) {
	if t.Lost("rated", "kind") {
		return quantity.Quantity{}, false
	}
	found := quantity.Find(t.Rated)
	if len(found) == 0 || found[0].Start != 0 || found[0].Unit.Dimension() != quantity.Mass {
		return quantity.Quantity{}, false
	}
	return found[0].Quantity, true
}
