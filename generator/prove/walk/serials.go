package walk

import (
	"fmt"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// serials looks for serial numbers that two rows of a machine's units name, and
// for numbers between rows that none names.
func serials(m *model.Machine) []finding.Finding {
	if m.Lost("units", "options", "only-one-of") {
		return nil
	}
	rows := slices.Clone(m.Units)
	out := impossible(m)
	slices.SortStableFunc(rows, func(a, b model.Unit) int { return a.From - b.From })
	for i := 1; i < len(rows); i++ {
		before, row := highest(rows[:i]), rows[i]
		switch {
		case row.From <= before.To:
			later, earlier := row, before
			if before.At.Start > row.At.Start {
				later, earlier = before, row
			}
			out = append(out, UnitOverlap.At(later.At, "two rows of the %s name %s", m.Label(), numbers(row.From, min(row.To, before.To))).
				WithMend("%s", UnitOverlap.Mend).See(earlier.At, "the other row is here"))
		case row.From > before.To+1 && !newSeries(before, row):
			out = append(out, UnitGap.At(row.At, "no row of the %s names %s", m.Label(), numbers(before.To+1, row.From-1)).
				WithMend("%s", UnitGap.Mend))
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

// newSeries says that the numbers between two rows were never given out: where
// there are more of them than in either row, the second begins a series of its
// own. The format calls every gap a finding; a works that begins its next model
// at a round number would be told of a fault that is none.
func newSeries(before, row model.Unit) bool {
	missing := row.From - before.To - 1
	return missing > before.To-before.From+1 && missing > row.To-row.From+1
}

// highest is the row that reaches furthest.
func highest(rows []model.Unit) model.Unit {
	best := rows[0]
	for _, r := range rows {
		if r.To > best.To {
			best = r
		}
	}
	return best
}

func numbers(from, to int) string {
	if from == to {
		return fmt.Sprintf("serial %d", from)
	}
	return fmt.Sprintf("serials %d to %d", from, to)
}
