package page

import (
	"fmt"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
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
	Picture HTML
	Rows    []TimeRow
	Notes   []string
}

// TimeRow is a phase of it.
type TimeRow struct {
	Title HTML
	Says  string
}

func (s *Site) timeLine(up string, p *model.Procedure) TimeLine {
	v := TimeLine{TimeLine: &s.speaks.TimeLine}
	rows := s.Times.Rows(p)
	if _, most := schedule.Range(rows); most == 0 {
		return v
	}
	for i, r := range rows {
		v.Units = append(v.Units, s.unitLine(up, p, r, i))
	}
	return v
}

func (s *Site) unitLine(up string, p *model.Procedure, r schedule.Row, n int) UnitLine {
	w := &s.speaks.TimeLine
	v := UnitLine{When: s.units(p, r), Cases: optionCases(r.Where)}
	for i := range r.Phases {
		ph := &r.Phases[i]
		v.Rows = append(v.Rows, TimeRow{s.text(up, &s.phaseOf(ph.Phase).Title), s.phaseSays(w, ph)})
	}
	v.Picture = HTML(drawnLine(w, r.Plan, n))
	v.Notes = timeNotes(w, r.Plan)
	return v
}

// spanned is a time in the bay: that of the rows, or their shortest to their
// longest; "" where no step has a time.
func (s *Site) spanned(rows []schedule.Row) string {
	switch least, most := schedule.Range(rows); {
	case most == 0:
		return ""
	case least < most:
		return fmt.Sprintf(s.speaks.TimeLine.Range, duration(least), duration(most))
	default:
		return duration(most)
	}
}

// units are the units of a row; "" for all.
func (s *Site) units(p *model.Procedure, r schedule.Row) string {
	return strings.TrimSuffix(sentence(s.where(p.For.To, r.Where)), ".")
}

// UnitTime is the time of the units that it is the same for.
type UnitTime struct {
	When, Cases     string     // as of UnitLine
	Work, Bay, Note string     // Note: how much of it is waiting; "" for none
	Computed        []Computed // of Work and of Bay
}

func (s *Site) unitTimes(p *model.Procedure, rows []schedule.Row) []UnitTime {
	var out []UnitTime
	for _, r := range rows {
		v := UnitTime{When: s.units(p, r), Cases: optionCases(r.Where), Work: duration(schedule.Rough(r.Work)), Bay: duration(r.Bay)}
		v.Computed = computedTimes(&s.speaks.TimeLine, r.Plan)
		if r.Waits > 0 {
			v.Note = fmt.Sprintf(s.Words.OfThatWaits, duration(r.Waits))
		}
		out = append(out, v)
	}
	return out
}

// phaseSays is a phase's time in words.
func (s *Site) phaseSays(w *words.TimeLine, ph *schedule.Phase) string {
	out := []string{fmt.Sprintf(w.From, duration(ph.From), duration(ph.To))}
	if ph.People > 1 {
		out = append(out, fmt.Sprintf(w.People, ph.People))
	}
	for _, second := range ph.Seconds {
		out = append(out, fmt.Sprintf(w.Second, second.Step.Number, s.name(second.By)))
	}
	if ph.Waits > 0 {
		out = append(out, fmt.Sprintf(w.Waits, duration(ph.Waits)))
	}
	if ph.Untimed > 0 {
		out = append(out, untimedWords(w, ph.Untimed))
	}
	return strings.Join(out, " · ")
}

func untimedWords(w *words.TimeLine, n int) string {
	if n == 1 {
		return w.NoTimeOne
	}
	return fmt.Sprintf(w.NoTime, n)
}

// timeNotes say what is missing, and what decides the time where more than one
// order could be shorter.
func timeNotes(w *words.TimeLine, plan *schedule.Plan) []string {
	var out []string
	if plan.Untimed > 0 {
		out = append(out, sentence(untimedWords(w, plan.Untimed)))
	}
	if plan.Least >= plan.Bay {
		return out
	}
	least := quantity.Elapsed(schedule.Rough(plan.Least)).String()
	if plan.People > 1 {
		out = append(out, fmt.Sprintf(w.Least, least, plan.People))
	} else {
		out = append(out, fmt.Sprintf(w.LeastOne, least))
	}
	if plan.Least == plan.Chain {
		var numbers []string
		for _, s := range plan.Critical {
			numbers = append(numbers, s.Number)
		}
		out = append(out, fmt.Sprintf(w.Decide, joined(numbers)))
	}
	return out
}

// drawnLine is the n-th picture of a page. Spans side by side of one kind are one bar.
func drawnLine(w *words.TimeLine, plan *schedule.Plan, n int) string {
	line := plot.TimeLine{
		ID: fmt.Sprintf("time-line-%d", n+1), Title: w.Title, End: plan.Bay,
		Text: fmt.Sprintf(w.Picture, len(plan.Phases), duration(plan.Bay)),
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
