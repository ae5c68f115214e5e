package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/derive/slips"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// workWorked is the working of a plan's work: the sum of its phases.
func workWorked(w *words.TimeLine, plan *schedule.Plan) page.Computed {
	var works []string
	for i := range plan.Phases {
		works = append(works, page.Duration(plan.Phases[i].Work))
	}
	work := page.Duration(plan.Work)
	return page.Computed{Title: fmt.Sprintf(w.WorkWorked, work), Working: working.Working{
		Formula: w.WorkFormula, Put: strings.Join(works, " + "), Result: work, Source: w.SumSource,
	}}
}

// planWaits are the waits of a plan, with their steps.
func planWaits(plan *schedule.Plan) []string {
	var waits []string
	for i := range plan.Phases {
		waits = append(waits, waitsOf(&plan.Phases[i])...)
	}
	return waits
}

// computedPhase is the working of when a phase begins and ends: what goes on
// beside something longer adds nothing.
func computedPhase(w *words.TimeLine, ph *schedule.Phase, title string) page.Computed {
	parts := longer(ph)
	put, until := append(make([]string, 0, 1+len(parts)), page.Duration(ph.From)), ph.From
	for _, part := range parts {
		put = append(put, page.Duration(part.To-until)+" ("+part.Step.Number+")")
		until = part.To
	}
	return page.Computed{Title: fmt.Sprintf(w.PhaseWorked, title, page.Duration(ph.From), page.Duration(ph.To)), Working: working.Working{
		Formula: w.PhaseFormula, Put: strings.Join(put, " + "), Result: page.Duration(ph.To), Source: w.SumSource,
	}}
}

// longer are the spans that make a phase longer, those of one step that go on in
// the same way as one.
func longer(ph *schedule.Phase) []schedule.Span {
	until := ph.From
	out := make([]schedule.Span, 0, len(ph.Spans))
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

// waited is how much of a time waits, in words; "" for nothing.
func waited(w *words.TimeLine, text string, seconds int, put []string) string {
	if seconds == 0 {
		return ""
	}
	waits := page.Duration(seconds)
	return page.Worked(fmt.Sprintf(text, waits), page.Computed{Title: fmt.Sprintf(w.WaitsWorked, waits), Working: working.Working{
		Formula: w.WaitsFormula, Put: strings.Join(put, " + "), Result: waits, Source: w.SumSource,
	}})
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
func computedLeast(w *words.TimeLine, plan *schedule.Plan, least string) page.Computed {
	chain := fmt.Sprintf("%s (%s)", page.Duration(plan.Chain), fmt.Sprintf(w.LeastChain, page.Joined(numbersOf(plan.Critical))))
	shared := fmt.Sprintf(w.LeastShared, page.Duration(plan.Work), max(plan.People, 1))
	return page.Computed{Title: fmt.Sprintf(w.LeastWorked, least), Working: working.Working{
		Formula: w.LeastFormula, Put: "max(" + chain + "; " + shared + ")", Result: page.Duration(plan.Least), Source: w.LeastSource,
	}}
}

// summed is how much of a supply a job with its calls uses up.
func (s *Pages) summed(u kit.Supply) string {
	if len(u.Parts) == 1 {
		return s.UsedUp(useIn(u.Parts[0].Of, u.Supply))
	}
	w := &s.Speaks.Worked
	var put []string
	for _, part := range u.Parts {
		put = append(put, fmt.Sprintf("%s (%s)", page.Unworked(s.Amount(part.Amount)), s.Name(part.Of)))
	}
	sum := page.Unworked(s.Amount(u.Amount))
	return s.AmountWorked(u.Amount, page.Computed{Title: fmt.Sprintf(w.Sum, s.Name(u.Supply), sum), Working: working.Working{
		Formula: w.SumFormula, Put: strings.Join(put, " + "), Result: sum, Source: w.SumSource,
	}})
}

// useIn is a procedure's own line of a supply.
func useIn(p *model.Procedure, u *model.Supply) model.Use[model.Supply] {
	i := slices.IndexFunc(p.Supplies, func(use model.Use[model.Supply]) bool { return use.To == u })
	return p.Supplies[i]
}

// toolCount is how many of a tool a job needs: as many as a procedure of it
// lists, or the locks that its points ask for.
func (s *Pages) toolCount(p *model.Procedure, t kit.Tool) string {
	count := strconv.Itoa(t.Count)
	w, locks := &s.Speaks.Worked, s.Manual.Shop.Locks
	c := page.Computed{Title: fmt.Sprintf(w.Locks, t.Count, s.Name(t.Tool)), Working: working.Working{
		Formula: w.Sums.Tools, Put: s.listings(p, t.Tool), Result: count, Source: w.Sums.Shop,
	}}
	if locks != nil && locks.Tool.To == t.Tool {
		if points, each := s.Walks.Of(p).Locked, kit.LocksAt(locks, p); points*each == t.Count {
			c.Working.Formula, c.Working.Put, c.Working.Source = w.LocksFormula, fmt.Sprintf(w.LocksPut, points, each), w.LocksSource
		}
	}
	return page.Worked(count, c)
}

// listings are how many of a tool each procedure of a job lists: "2 (Wheel off),
// 4 (Wheel on)".
func (s *Pages) listings(p *model.Procedure, tool *model.Tool) string {
	var out []string
	for _, of := range job(p) {
		if n := slips.Listed(of, tool); slices.ContainsFunc(of.Tools, func(u model.Use[model.Tool]) bool { return u.To == tool }) {
			out = append(out, fmt.Sprintf("%d (%s)", n, s.Name(of)))
		}
	}
	return "max(" + strings.Join(out, "; ") + ")"
}

// job is a procedure with all that it performs, each once.
func job(p *model.Procedure) []*model.Procedure {
	out := []*model.Procedure{p}
	for i := 0; i < len(out); i++ {
		for _, call := range out[i].Calls {
			if to, is := call.To.(*model.Procedure); is && !slices.Contains(out, to) {
				out = append(out, to)
			}
		}
	}
	return out
}

// crew is how many people a job needs at once, in words.
func (s *Pages) crew(p *model.Procedure, people int) string {
	if people < 2 {
		return ""
	}
	return s.PeopleWorked(p, words.Count(s.Words.PeopleAtOnce, people), people)
}

// PeopleWorked is how many people a job needs, in a text.
func (s *Pages) PeopleWorked(p *model.Procedure, text string, people int) string {
	w := &s.Speaks.Worked.Sums
	var put []string
	for _, of := range job(p) {
		put = append(put, fmt.Sprintf("%d (%s)", max(1, of.People), s.Name(of)))
	}
	return s.Tallied(text, w.People, "max("+strings.Join(put, "; ")+")", strconv.Itoa(people), w.Shop)
}

// numbersOf are the numbers of steps.
func numbersOf(steps []*model.Step) []string {
	var out []string
	for _, s := range steps {
		out = append(out, s.Number)
	}
	return out
}
