package check

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

var recordDiffers = finding.Rule{
	Code:  "record-differs",
	Level: finding.Advice,
	Ours:  true,
	Title: "A record of something that the manual does not have",
	Why:   "A job that belongs to no procedure, step or unit of the manual is shown nowhere, or beside the wrong machine. The manual may have changed since, so it stops nothing.",
	Mend:  "If the procedure has another id now, write the old one in its was:. If the unit or the option is wrong, ask who did the job; a record is evidence and is not rewritten.",
}

func runRecordDiffers(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, j := range record.Counted(c.Manual.Jobs, c.Today) {
		switch {
		case j.Silent:
		case j.To == nil:
			found = append(found, noProcedure(c.Manual, j))
		case unread(j.To), j.To.Lost("for"):
		default:
			found = append(found, otherUnit(j)...)
			if record.Current(c.Manual, j, c.Today) {
				found = append(found, otherSteps(j)...)
			}
		}
	}
	return found
}

func noProcedure(m *model.Manual, j *model.Job) finding.Finding {
	f := recordDiffers.At(j.ProcedureAt, "there is no procedure %s", j.Procedure)
	if near := nearest.Of(j.Procedure, model.IDs(m.Procedures)); near != "" {
		return f.WithMend("if that is %s now, write was: [%s] in its front matter", near, j.Procedure)
	}
	return f.WithMend("write was: [%s] in the procedure that stands in its place", j.Procedure)
}

// otherUnit judges the unit by the machine's file.
func otherUnit(j *model.Job) []finding.Finding {
	m, u := j.To.For.To, j.Unit
	switch {
	case m == nil && j.To.For.ID == "" && (u.Serial != "" || len(u.Options) > 0):
		return []finding.Finding{recordDiffers.At(u.At, "%s is for no machine, and the record names a unit", j.To.Label())}
	case m == nil || m.Lost("options", "only-one-of", "units"):
		return nil
	}
	var found []finding.Finding
	for i, id := range u.Options {
		if _, has := m.Option(id); !has {
			found = append(found, recordDiffers.At(u.OptionsAt[i], "%s has no option %s", m.Label(), id))
		}
	}
	for _, group := range m.OnlyOneOf {
		if both := slices.DeleteFunc(slices.Clone(u.Options), func(id string) bool { return !slices.Contains(group, id) }); len(both) > 1 {
			found = append(found, recordDiffers.At(u.At, "a unit has at most one of these: %s", strings.Join(both, ", ")))
		}
	}
	return append(found, otherSerial(m, u)...)
}

// otherSerial judges the serial number; a machine without a list of units says
// nothing of it.
func otherSerial(m *model.Machine, u model.JobUnit) []finding.Finding {
	if u.Serial == "" || len(m.Units) == 0 {
		return nil
	}
	n, err := strconv.Atoi(u.Serial)
	for _, row := range m.Units {
		if err != nil || n < row.From || n > row.To {
			continue
		}
		if !sameSet(row.Options, u.Options) {
			return []finding.Finding{recordDiffers.At(u.SerialAt, "unit %s has other options in the machine's file: %s", u.Serial, orNone(row.Options)).
				WithMend("look at the unit; if it was rebuilt, its row in the machine's file is so now and nothing is wrong").See(row.At, "its row is here")}
		}
		return nil
	}
	return []finding.Finding{recordDiffers.At(u.SerialAt, "%s has no unit %s", m.Label(), u.Serial).
		WithMend("if the shop has that unit, write its serial number under units: of the machine")}
}

func sameSet(a, b []string) bool {
	return slices.Equal(slices.Sorted(slices.Values(a)), slices.Sorted(slices.Values(b)))
}

func orNone(list []string) finding.Words {
	if len(list) == 0 {
		return finding.Say("none")
	}
	return finding.Say("%s", strings.Join(list, ", "))
}

// otherSteps judges the steps and holds of a job that was done with what
// stands: one of an earlier revision may have had others.
func otherSteps(j *model.Job) []finding.Finding {
	var found []finding.Finding
	for _, s := range j.Steps {
		if !hasStep(j.To, s.Number) {
			found = append(found, recordDiffers.At(s.Place, "%s has no step %s", j.To.Label(), s.Number))
		}
	}
	for _, h := range j.Holds {
		if !hasHold(j.To, h.Hold) {
			found = append(found, recordDiffers.At(h.Place, "%s has no hold %s", j.To.Label(), h.Hold))
		}
	}
	return found
}

// hasStep knows a step by its number. What a reversal expands into is numbered
// below its step.
func hasStep(p *model.Procedure, number string) bool {
	for n := number; n != ""; n = n[:max(strings.LastIndexByte(n, '.'), 0)] {
		for _, s := range p.Steps {
			if s.Number == n && (n == number || reverses(s)) {
				return true
			}
		}
	}
	return false
}

func reverses(s *model.Step) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Kind.Act == model.Reverse })
}

func hasHold(p *model.Procedure, id string) bool {
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if (l.Kind.Stops) && l.ID == id {
				return true
			}
		}
	}
	return false
}
