package procedure

import (
	"fmt"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/show/plot"
)

// TimeLine is the job's time at the foot of its page: a picture, and the same
// in words.
type TimeLine struct {
	*words.TimeLine
	Units []UnitLine // none where no step has a time
}

// UnitLine is the time line of the units that it is the same for.
type UnitLine struct {
	When    string // the units; "" for all
	Cases   string // the same in option ids, as Stood.Cases
	Picture page.HTML
	Rows    []TimeRow
	Notes   []TimeNote
}

// TimeRow is a phase of it.
type TimeRow struct {
	Title    page.HTML
	Times    string          // from when to when
	Computed []page.Computed // of Times
	Waits    string          // how much of it waits; "" for nothing
	Waiting  []page.Computed // of Waits
	Says     string          // the rest; "" for nothing
}

// TimeNote is what is said of the whole.
type TimeNote struct {
	Text     string
	Computed []page.Computed
}

func (s *Pages) timeLine(up string, p *model.Procedure) TimeLine {
	v := TimeLine{TimeLine: &s.Speaks.TimeLine}
	rows := s.Times.Rows(p)
	if _, most := schedule.Range(rows); most == 0 {
		return v
	}
	for i, r := range rows {
		v.Units = append(v.Units, s.unitLine(up, p, r, i))
	}
	return v
}

func (s *Pages) unitLine(up string, p *model.Procedure, r schedule.Row, n int) UnitLine {
	w := &s.Speaks.TimeLine
	v := UnitLine{When: s.units(p, r), Cases: optionCases(r.Where)}
	for i := range r.Phases {
		ph := &r.Phases[i]
		title := &s.PhaseOf(ph.Phase).Title
		row := TimeRow{
			Title: s.Text(up, title), Times: fmt.Sprintf(w.From, page.Duration(ph.From), page.Duration(ph.To)),
			Computed: computedPhase(w, ph, title.Plain), Says: s.phaseSays(w, ph), Waiting: computedWaits(w, ph.Waits, waitsOf(ph)),
		}
		if ph.Waits > 0 {
			row.Waits = fmt.Sprintf(w.Waits, page.Duration(ph.Waits))
		}
		v.Rows = append(v.Rows, row)
	}
	v.Picture = page.HTML(drawnLine(w, r.Plan, n))
	v.Notes = timeNotes(w, r.Plan)
	return v
}

// units are the units of a row; "" for all.
func (s *Pages) units(p *model.Procedure, r schedule.Row) string {
	return strings.TrimSuffix(page.Sentence(s.where(p.For.To, r.Where)), ".")
}

// UnitTime is the time of the units that it is the same for.
type UnitTime struct {
	When, Cases     string          // as of UnitLine
	Work, Bay, Note string          // Note: how much of it is waiting; "" for none
	Computed        []page.Computed // of Work, of Bay, and of Note where there is one
}

func (s *Pages) unitTimes(p *model.Procedure, rows []schedule.Row) []UnitTime {
	var out []UnitTime
	for _, r := range rows {
		v := UnitTime{When: s.units(p, r), Cases: optionCases(r.Where), Work: page.Duration(schedule.Rough(r.Work)), Bay: page.Duration(r.Bay)}
		v.Computed = computedTimes(&s.Speaks.TimeLine, r.Plan)
		if r.Waits > 0 {
			v.Note = fmt.Sprintf(s.Words.OfThatWaits, page.Duration(r.Waits))
		}
		out = append(out, v)
	}
	return out
}

// phaseSays is what else is said of a phase's time.
func (s *Pages) phaseSays(w *words.TimeLine, ph *schedule.Phase) string {
	var out []string
	if ph.People > 1 {
		out = append(out, fmt.Sprintf(w.People, ph.People))
	}
	for _, second := range ph.Seconds {
		out = append(out, fmt.Sprintf(w.Second, second.Step.Number, s.Name(second.By)))
	}
	if ph.Untimed > 0 {
		out = append(out, untimedWords(w, ph.Untimed, ph.Varies))
	}
	return strings.Join(out, " · ")
}

// untimedWords say how many steps have no time, of units of which some may have
// fewer.
func untimedWords(w *words.TimeLine, n int, varies bool) string {
	switch {
	case n == 1 && varies:
		return w.NoTimeUpToOne
	case n == 1:
		return w.NoTimeOne
	case varies:
		return fmt.Sprintf(w.NoTimeUpTo, n)
	}
	return fmt.Sprintf(w.NoTime, n)
}

// timeNotes say what is missing, and what decides the time where more than one
// order could be shorter.
func timeNotes(w *words.TimeLine, plan *schedule.Plan) []TimeNote {
	var out []TimeNote
	if plan.Untimed > 0 {
		out = append(out, TimeNote{Text: page.Sentence(untimedWords(w, plan.Untimed, plan.Varies))})
	}
	if plan.Least >= plan.Bay {
		return out
	}
	least := quantity.Elapsed(schedule.Rough(plan.Least)).String()
	says := fmt.Sprintf(w.LeastOne, least)
	if plan.People > 1 {
		says = fmt.Sprintf(w.Least, least, plan.People)
	}
	out = append(out, TimeNote{says, computedLeast(w, plan, least)})
	if plan.Least == plan.Chain {
		out = append(out, TimeNote{Text: fmt.Sprintf(w.Decide, page.Joined(numbersOf(plan.Critical)))})
	}
	return out
}

// drawnLine is the n-th picture of a page. Spans side by side of one kind are one bar.
func drawnLine(w *words.TimeLine, plan *schedule.Plan, n int) string {
	line := plot.TimeLine{
		ID: fmt.Sprintf("time-line-%d", n+1), Title: w.Title, End: plan.Bay,
		Text: fmt.Sprintf(w.Picture, len(plan.Phases), page.Duration(plan.Bay)),
	}
	for i := range plan.Phases {
		ph := &plan.Phases[i]
		row := plot.TimeRow{Words: ph.Title.Plain}
		for _, s := range ph.Spans {
			bar := plot.TimeBar{From: s.From, To: s.To, People: s.People + s.Beside, Wait: s.Doing == schedule.Wait, Call: s.Doing == schedule.Call}
			switch s.Doing {
			case schedule.Wait:
				line.Wait = w.Wait
			case schedule.Call:
				line.Call = w.Call
			default:
				line.Work = w.Work
			}
			if n := len(row.Bars) - 1; n >= 0 && !bar.Call && row.Bars[n].To == bar.From && row.Bars[n].People == bar.People && row.Bars[n].Wait == bar.Wait && !row.Bars[n].Call {
				row.Bars[n].To = bar.To
				continue
			}
			row.Bars = append(row.Bars, bar)
		}
		line.Rows = append(line.Rows, row)
	}
	return line.SVG()
}
