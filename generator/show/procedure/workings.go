package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// footnotes gives every computed number of a procedure's page the place of its
// working at the page's foot. The same working stands there once.
func (v *Procedure) footnotes() {
	for i := range v.Before.Times {
		v.footnote(v.Before.Times[i].Computed)
	}
	for _, shelf := range v.Before.Shelves {
		for i := range shelf.Items {
			v.footnote(shelf.Items[i].Computed)
		}
	}
	for i := range v.Phases {
		for _, part := range v.Phases[i].Parts {
			if part.Step != nil {
				v.stepNotes(part.Step)
			}
		}
	}
	for _, unit := range v.TimeLine.Units {
		for i := range unit.Rows {
			v.footnote(unit.Rows[i].Computed)
			v.footnote(unit.Rows[i].Waiting)
		}
		for i := range unit.Notes {
			v.footnote(unit.Notes[i].Computed)
		}
	}
}

func (v *Procedure) stepNotes(s *Step) {
	for i := range s.Holds {
		v.footnote(s.Holds[i].Computed)
	}
	v.footnote(s.Computed)
	for i := range s.Derived {
		v.footnote(s.Derived[i].Computed)
	}
	for i := range s.Subs {
		v.stepNotes(&s.Subs[i])
	}
}

func (v *Procedure) footnote(list []page.Computed) {
	for i := range list {
		c := &list[i]
		at := slices.IndexFunc(v.Workings, func(o page.Computed) bool { return o.Title == c.Title && o.Working.String() == c.Working.String() })
		if at < 0 {
			at = len(v.Workings)
			v.Workings = append(v.Workings, page.Computed{Title: c.Title, Working: c.Working, Anchor: fmt.Sprintf("working-%d", at+1)})
		}
		c.Anchor = v.Workings[at].Anchor
	}
}

// computedTimes are the workings of a plan's times: the sums of its phases.
func computedTimes(w *words.TimeLine, plan *schedule.Plan) []page.Computed {
	var bays, works, waits []string
	for i := range plan.Phases {
		bays = append(bays, page.Duration(plan.Phases[i].Bay))
		works = append(works, page.Duration(plan.Phases[i].Work))
		waits = append(waits, waitsOf(&plan.Phases[i])...)
	}
	sum := func(title, formula, result string, parts []string) page.Computed {
		return page.Computed{Title: fmt.Sprintf(title, result), Working: working.Working{
			Formula: formula, Put: strings.Join(parts, " + "), Result: result, Source: w.SumSource,
		}}
	}
	all := []page.Computed{
		sum(w.WorkWorked, w.WorkFormula, page.Duration(plan.Work), works),
		sum(w.BayWorked, w.BayFormula, page.Duration(plan.Bay), bays),
	}
	return append(all, computedWaits(w, plan.Waits, waits)...)
}

// computedPhase is the working of when a phase begins and ends: what goes on
// beside something longer adds nothing.
func computedPhase(w *words.TimeLine, ph *schedule.Phase, title string) []page.Computed {
	if ph.From == ph.To {
		return nil
	}
	put, until := []string{page.Duration(ph.From)}, ph.From
	for _, part := range longer(ph) {
		put = append(put, fmt.Sprintf("%s (%s)", page.Duration(part.To-until), part.Step.Number))
		until = part.To
	}
	return []page.Computed{{Title: fmt.Sprintf(w.PhaseWorked, title, page.Duration(ph.From), page.Duration(ph.To)), Working: working.Working{
		Formula: w.PhaseFormula, Put: strings.Join(put, " + "), Result: page.Duration(ph.To), Source: w.SumSource,
	}}}
}

// longer are the spans that make a phase longer, those of one step that go on in
// the same way as one.
func longer(ph *schedule.Phase) []schedule.Span {
	until := ph.From
	var out []schedule.Span
	for _, span := range ph.Spans {
		if span.To <= until {
			continue
		}
		until = span.To
		if n := len(out) - 1; n >= 0 && out[n].Step == span.Step && out[n].Doing == span.Doing {
			out[n].To = span.To
		} else {
			out = append(out, span)
		}
	}
	return out
}

// computedWaits is the working of how much of a time waits.
func computedWaits(w *words.TimeLine, seconds int, put []string) []page.Computed {
	if seconds == 0 {
		return nil
	}
	waits := page.Duration(seconds)
	return []page.Computed{{Title: fmt.Sprintf(w.WaitsWorked, waits), Working: working.Working{
		Formula: w.WaitsFormula, Put: strings.Join(put, " + "), Result: waits, Source: w.SumSource,
	}}}
}

// waitsOf are the waits of a phase, with their steps.
func waitsOf(ph *schedule.Phase) []string {
	var put []string
	for _, wait := range ph.Waited {
		put = append(put, fmt.Sprintf("%s (%s)", page.Duration(wait.Seconds), wait.Step.Number))
	}
	return put
}

// computedLeast is the working of the bound.
func computedLeast(w *words.TimeLine, plan *schedule.Plan, least string) []page.Computed {
	chain := fmt.Sprintf("%s (%s)", page.Duration(plan.Chain), fmt.Sprintf(w.LeastChain, page.Joined(numbersOf(plan.Critical))))
	shared := fmt.Sprintf(w.LeastShared, page.Duration(plan.Work), max(plan.People, 1))
	return []page.Computed{{Title: fmt.Sprintf(w.LeastWorked, least), Working: working.Working{
		Formula: w.LeastFormula, Put: "max(" + chain + "; " + shared + ")", Result: page.Duration(plan.Least), Source: w.LeastSource,
	}}}
}

// computedSum is the working of how much of a supply a job with its calls uses
// up; none where one procedure lists it all.
func (s *Pages) computedSum(u kit.Supply) []page.Computed {
	if len(u.Parts) < 2 {
		return nil
	}
	w := &s.Speaks.Worked
	var put []string
	for _, part := range u.Parts {
		put = append(put, fmt.Sprintf("%s (%s)", s.Amount(part.Amount), s.Name(part.Of)))
	}
	sum := s.Amount(u.Amount)
	return []page.Computed{{Title: fmt.Sprintf(w.Sum, s.Name(u.Supply), sum), Working: working.Working{
		Formula: w.SumFormula, Put: strings.Join(put, " + "), Result: sum, Source: w.SumSource,
	}}}
}

// computedLocks is the working of how many locks a job needs; none of another
// tool, and where a procedure lists more than its points ask for.
func (s *Pages) computedLocks(p *model.Procedure, t kit.Tool) []page.Computed {
	locks := s.Manual.Shop.Locks
	if locks == nil || locks.Tool.To != t.Tool {
		return nil
	}
	points, each := s.Walks.Of(p).Locked, kit.LocksAt(locks, p)
	if points*each != t.Count {
		return nil
	}
	w := &s.Speaks.Worked
	return []page.Computed{{Title: fmt.Sprintf(w.Locks, t.Count, s.Name(t.Tool)), Working: working.Working{
		Formula: w.LocksFormula, Put: fmt.Sprintf(w.LocksPut, points, each), Result: strconv.Itoa(t.Count), Source: w.LocksSource,
	}}}
}

// numbersOf are the numbers of steps.
func numbersOf(steps []*model.Step) []string {
	var out []string
	for _, s := range steps {
		out = append(out, s.Number)
	}
	return out
}
