package begin

import (
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/lifting"
)

// drivers are the tools that undo the fasteners of a part: one that fits each.
func (r *reach) drivers(p *model.Part) []*model.Tool {
	var out []*model.Tool
	for _, h := range p.HeldBy {
		if h.To == nil {
			continue
		}
		heads := fastening.Heads(h.To.AcrossFlats, h.To.Drive)
		if len(heads) == 0 {
			continue // a clip or a pin, which a hand takes out
		}
		tool := r.driver(heads)
		if tool == nil {
			r.lack("a socket, spanner or screwdriver that fits the %s", h.To.ID)
			continue
		}
		out = with(out, tool)
	}
	return out
}

func with[T comparable](list []T, one T) []T {
	if slices.Contains(list, one) {
		return list
	}
	return append(list, one)
}

// driver is the first tool of the register that fits, a socket before a
// spanner, and a plain one before an adapter, behind which a wrench is set
// otherwise.
func (r *reach) driver(heads []fastening.Size) *model.Tool {
	for _, plain := range []bool{true, false} {
		for _, kind := range []string{"socket", "spanner", "screwdriver"} {
			tool := first(r.manual.Tools, func(t *model.Tool) bool {
				return t.Kind == kind && !t.Misread && t.Adds.IsZero() == plain && fastening.FitsAny(fastening.Sizes(t.Fits), heads)
			})
			if tool != nil {
				return tool
			}
		}
	}
	return nil
}

// wrenches are the tools that tighten the fasteners of a part to their torques
// and angles.
func (r *reach) wrenches(p *model.Part) (torque, angle []*model.Tool) {
	for _, h := range p.HeldBy {
		if h.To == nil {
			continue
		}
		for _, q := range torquesOf(h.To) {
			tool := r.wrench(q, r.driver(fastening.Heads(h.To.AcrossFlats, h.To.Drive)))
			if tool == nil {
				r.lack("a torque wrench for the %s of the %s, at or above 20 %% of its maximum", q, h.To.ID)
				continue
			}
			torque = with(torque, tool)
		}
		if !slices.ContainsFunc(h.To.Stages, isAngle) {
			continue
		}
		gauge := first(r.manual.Tools, func(t *model.Tool) bool { return t.Kind == "angle-gauge" && !t.Misread })
		if gauge == nil {
			r.lack("a tool of kind angle-gauge for the %s", h.To.ID)
			continue
		}
		angle = with(angle, gauge)
	}
	return torque, angle
}

func isAngle(q quantity.Quantity) bool { return q.Unit.Dimension() == quantity.Angle }

// torquesOf are the torques that a fastener is tightened to: those of its
// stages, which stand in place of its torque.
func torquesOf(f *model.Fastener) []quantity.Quantity {
	if len(f.Stages) == 0 {
		if f.Torque.IsZero() {
			return nil
		}
		return f.Torque.Numbers()
	}
	return slices.DeleteFunc(slices.Clone(f.Stages), isAngle)
}

// wrench is the first torque wrench that is made for a torque, with what turns
// the fastener on it.
func (r *reach) wrench(torque quantity.Quantity, driver *model.Tool) *model.Tool {
	return first(r.manual.Tools, func(t *model.Tool) bool {
		made, ok := fastening.WrenchOf(t.Range)
		if t.Kind != "torque-wrench" || t.Misread || !ok {
			return false
		}
		set := torque.Base()
		if driver != nil && !driver.Adds.IsZero() && t.Length.Base() > 0 {
			set = fastening.SettingFor(set, t.Length.Base(), driver.Adds.Base(), 0)
		}
		return made.Covers(set)
	})
}

// byHand is the most people that this program asks to lift one part together.
const byHand = 4

// carriers are how many people carry a part, and the gear that does it where
// more than two would be needed.
func (r *reach) carriers(p *model.Part) (people int, gear *model.Tool) {
	limit := r.manual.Shop.Limits.Lift.Base()
	if limit <= 0 {
		return 1, nil
	}
	people = lifting.PeopleFor(p.Mass.Base(), limit)
	if people <= 2 {
		return people, nil
	}
	gear = first(r.manual.Tools, func(t *model.Tool) bool { return t.Kind == "lifting" && !t.Misread })
	switch {
	case gear != nil:
		return 1, gear
	case people > byHand:
		r.lack("lifting gear, a tool of kind lifting, for the %s of the %s", p.Mass, p.ID)
		return 1, nil
	}
	return people, nil
}
