package walk

import (
	"cmp"
	"fmt"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// What can be wrong with the rows of units.
var (
	UnitGap = rule{
		Code:  "unit-gap",
		Title: "Serial numbers that no row names, or units whose energy has no point",
		Why:   "Whoever stands at that unit finds no page for it, or nothing to switch off.",
		Mend:  "Write a row for them, or widen a row; name a point that those units have.",
	}
	UnitOverlap = rule{
		Code:  "unit-overlap",
		Title: "Serial numbers that two rows name",
		Why:   "The unit has one set of options, and the page would show two.",
		Mend:  "End the one row before the other begins.",
	}
)

// serials looks for serial numbers that two rows of a machine's units name, for
// numbers between rows that none names, and for energies that some units cannot
// cut.
func serials(m *model.Machine) []finding.Finding {
	if m.Lost("units", "options", "only-one-of") {
		return nil
	}
	rows := slices.Clone(m.Units)
	out := append(impossible(m), pointless(m)...)
	slices.SortStableFunc(rows, func(a, b model.Unit) int { return a.From - b.From })
	var before model.Unit // of the rows so far the one that reaches furthest
	for i, row := range rows {
		switch {
		case i == 0:
		case row.From <= before.To:
			later, earlier := row, before
			if before.At.Start > row.At.Start {
				later, earlier = before, row
			}
			out = append(out, UnitOverlap.At(later.At, "two rows of the %s name %s", m.Label(), numbers(row.From, min(row.To, before.To))).
				WithMend("%s", finding.Say(UnitOverlap.Mend)).See(earlier.At, "the other row is here"))
		case row.From > before.To+1 && !newSeries(before, row):
			out = append(out, UnitGap.At(row.At, "no row of the %s names %s", m.Label(), numbers(before.To+1, row.From-1)).
				WithMend("write a row for them, or widen a row"))
		}
		if i == 0 || row.To > before.To {
			before = row
		}
	}
	return out
}

// impossible tells the rows whose units would have two options of which a unit
// has at most one.
func impossible(m *model.Machine) []finding.Finding {
	var out []finding.Finding
	for _, row := range m.Units {
		for _, group := range m.OnlyOneOf {
			both := slices.DeleteFunc(slices.Clone(row.Options), func(o string) bool { return !slices.Contains(group, o) })
			if len(both) > 1 {
				out = append(out, UnitOverlap.At(row.At, "this row of the %s has %s and %s, and only-one-of says that a unit has one of them", m.Label(), both[0], both[1]).
					WithMend("take one out of its options, or mend only-one-of"))
				break
			}
		}
	}
	return out
}

// gap are energies that some units have without any of the points at which they
// are cut: the same points for each of them.
type gap struct {
	energies []*model.Energy
	on       map[string]bool // the options of those units
}

// gaps are the energies that a unit has without any point at which it could be
// cut. What one point leaves without is one gap.
func gaps(m *model.Machine) []gap {
	if m.Lost("units", "options", "only-one-of") {
		return nil
	}
	var out []gap
	known := map[string]int{} // by what is so on those units, and by the points
	for _, e := range m.Energies {
		on := without(e)
		if len(e.Points) == 0 || on == nil || !anyUnit(m, on) {
			continue
		}
		of := fmt.Sprint(on, model.IDs(leads(e.Points)))
		alike, is := known[of]
		if !is {
			alike = len(out)
			known[of] = alike
			out = append(out, gap{on: on})
		}
		out[alike].energies = append(out[alike].energies, e)
	}
	return out
}

// pointless tells of the gaps.
func pointless(m *model.Machine) []finding.Finding {
	var out []finding.Finding
	for _, g := range gaps(m) {
		out = append(out, g.finding(m))
	}
	return out
}

func (g gap) finding(m *model.Machine) finding.Finding {
	first := g.energies[0]
	if len(g.energies) == 1 {
		return UnitGap.At(first.At, "%s the %s is there and none of its points is", optionsOf(m, g.on), first.Label()).
			WithMend("name a point that those units have in its points:, or give the %s the only-with of its points", first.Label())
	}
	var names, points []finding.Words
	for _, e := range g.energies {
		names = append(names, finding.Say("the %s", e.Label()))
	}
	for _, p := range leads(first.Points) {
		points = append(points, finding.Say("the %s", p.Label()))
	}
	f := UnitGap.At(first.At, "%s these are there, and none of their points is: %s", optionsOf(m, g.on), finding.ListOf(" and ", names)).
		WithMend("mend the only-with of %s, or name a point that those units have in the points: of each", finding.ListOf(" and ", points))
	for _, e := range g.energies[1:] {
		f = f.See(e.At, "another of them is here")
	}
	return f
}

// inGaps are the energies of the gaps, and the points that they name: what they
// are only with cannot be as it is written, and nothing is told twice by it.
func inGaps(m *model.Machine) map[model.Named]bool {
	out := map[model.Named]bool{}
	for _, g := range gaps(m) {
		for _, e := range g.energies {
			out[e] = true
			for _, p := range leads(e.Points) {
				out[p] = true
			}
		}
	}
	return out
}

// without is the options for which an energy is there and none of its points
// is; nil where there are none, or where something of it could not be read.
func without(e *model.Energy) map[string]bool {
	on := map[string]bool{}
	if e.Lost("only-with", "points") || !wanted(on, e.OnlyWith, true) {
		return nil
	}
	for _, p := range e.Points {
		if p.To == nil || p.To.Lost("only-with") || p.To.OnlyWith.Option == "" || !wanted(on, p.To.OnlyWith, false) {
			return nil
		}
	}
	return on
}

// wanted adds what must be so for a condition to hold, or not to hold; false
// where that cannot be.
func wanted(on map[string]bool, c model.Condition, holds bool) bool {
	if c.Option == "" {
		return holds
	}
	was, known := on[c.Option]
	on[c.Option] = c.Not != holds
	return !known || was == on[c.Option]
}

// anyUnit says that some unit of a machine has its options so.
func anyUnit(m *model.Machine, on map[string]bool) bool {
	fits := func(u model.Unit) bool {
		for o, has := range on {
			if slices.Contains(u.Options, o) != has {
				return false
			}
		}
		return true
	}
	if len(m.Units) > 0 {
		return slices.ContainsFunc(m.Units, fits)
	}
	return !slices.ContainsFunc(m.OnlyOneOf, func(group []string) bool {
		return len(slices.DeleteFunc(slices.Clone(group), func(o string) bool { return !on[o] })) > 1
	})
}

// optionsOf is the units with such options in words.
func optionsOf(m *model.Machine, on map[string]bool) finding.Words {
	var words []finding.Words
	for _, o := range m.Options {
		if has, named := on[o.Key]; named {
			words = append(words, finding.Say(choose(has, "with %s", "without %s"), cmp.Or(o.Value, o.Key)))
		}
	}
	return finding.Say("on units %s", finding.ListOf(" and ", words))
}

// newSeries says that the numbers between two rows were never given out: where
// there are more of them than in either row, the second begins a series of its
// own. The format calls every gap a finding; a works that begins its next model
// at a round number would be told of a fault that is none.
func newSeries(before, row model.Unit) bool {
	missing := row.From - before.To - 1
	return missing > before.To-before.From+1 && missing > row.To-row.From+1
}

func numbers(from, to int) finding.Words {
	if from == to {
		return finding.Say("serial %d", from)
	}
	return finding.Say("serials %d to %d", from, to)
}
