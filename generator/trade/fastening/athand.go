package fastening

import (
	"slices"

	"baybinder/generator/model"
)

// AtHand is what there is to turn and tighten a fastener with.
type AtHand struct {
	Named  []*model.Tool // by the step
	Placed []*model.Tool // put in place before, and not taken away
	Listed []*model.Tool // by the procedure
}

// driving are the kinds of tools that turn a fastener.
var driving = []string{"socket", "spanner", "screwdriver"}

// Wrenches are the torque wrenches: those that the step names or that were left
// in place, else those that are listed, and what may stand in for them.
func (a AtHand) Wrenches() []*model.Tool {
	named := OfKind(slices.Concat(a.Named, a.Placed), "torque-wrench")
	if len(named) == 0 {
		named = OfKind(a.Listed, "torque-wrench")
	}
	return WithSubstitutes(named)
}

// NamesDriver says whether the step names what it turns with.
func (a AtHand) NamesDriver() bool {
	return slices.ContainsFunc(a.Named, func(t *model.Tool) bool { return slices.Contains(driving, t.Kind) })
}

// Drivers are the tools that a fastener may be turned with: those that the step
// names, else those that are listed, and what may stand in for them. Tools of
// another kind that say what they fit or add may help, and so may those left in
// place; they do not make the step one that names its drivers.
func (a AtHand) Drivers() []*model.Tool {
	from := a.Listed
	if a.NamesDriver() {
		from = a.Named
	}
	tools := OfKind(from, driving...)
	for _, t := range slices.Concat(a.Named, a.Placed) {
		if (len(t.Fits) > 0 || !t.Adds.IsZero()) && !slices.Contains(tools, t) {
			tools = append(tools, t)
		}
	}
	return WithSubstitutes(tools)
}

// OfKind are the tools of some kinds, each once.
func OfKind(tools []*model.Tool, kinds ...string) []*model.Tool {
	var out []*model.Tool
	for _, t := range tools {
		if slices.Contains(kinds, t.Kind) && !slices.Contains(out, t) {
			out = append(out, t)
		}
	}
	return out
}

// WithSubstitutes adds the tools that may stand in for others.
func WithSubstitutes(tools []*model.Tool) []*model.Tool {
	out := slices.Clone(tools)
	for _, t := range tools {
		for _, or := range t.Or {
			if or.To != nil && !slices.Contains(out, or.To) {
				out = append(out, or.To)
			}
		}
	}
	return out
}
