package begin

import (
	"slices"

	"baybinder/generator/model"
)

// condition is an option that a unit must have, or must not have.
type condition struct {
	option string
	not    bool
}

// conditions must all hold.
type conditions []condition

// conditionOf is when a thing is there.
func conditionOf(c model.Condition) conditions {
	if c.Option == "" {
		return nil
	}
	return conditions{{c.Option, c.Not}}
}

// and is where both hold.
func (c conditions) and(others ...conditions) conditions {
	out := slices.Clone(c)
	for _, other := range others {
		for _, one := range other {
			if !slices.Contains(out, one) {
				out = append(out, one)
			}
		}
	}
	return out
}

// common is what both ask for: it holds wherever one of them does.
func (c conditions) common(other conditions) conditions {
	return slices.DeleteFunc(slices.Clone(c), func(one condition) bool { return !slices.Contains(other, one) })
}

// without is what is asked for besides.
func (c conditions) without(other conditions) conditions {
	return slices.DeleteFunc(slices.Clone(c), func(one condition) bool { return slices.Contains(other, one) })
}

// anyUnit says whether a machine has a unit on which all hold.
func anyUnit(m *model.Machine, c conditions) bool {
	if len(m.Units) > 0 {
		return slices.ContainsFunc(m.Units, func(u model.Unit) bool { return c.hold(u.Options) })
	}
	var has []string
	for _, one := range c {
		if !one.not {
			has = append(has, one.option)
		}
	}
	return c.hold(has) && !slices.ContainsFunc(m.OnlyOneOf, func(group []string) bool { return shared(group, has) > 1 })
}

// hold says whether all hold on a unit with these options and no others.
func (c conditions) hold(options []string) bool {
	return !slices.ContainsFunc(c, func(one condition) bool { return slices.Contains(options, one.option) == one.not })
}

func shared(a, b []string) int {
	n := 0
	for _, x := range a {
		if slices.Contains(b, x) {
			n++
		}
	}
	return n
}
