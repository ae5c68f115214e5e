package page

import (
	"fmt"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/show/plot"
	"baybinder/theme/words"
)

// TimeLine is the job's time at the foot of its page: a picture, and the same
// in words.
type TimeLine struct {
	*words.TimeLine
	Picture HTML // "" where no step has a time
	Rows    []TimeRow
	Notes   []string
}

// TimeRow is a phase of it.
type TimeRow struct {
	Title HTML
	Says  string
}

func (s *Site) timeLine(up string, p *model.Procedure) TimeLine {
	w := words.TimeLineIn(s.Words.Lang)
	v := TimeLine{TimeLine: w}
	if s.Times.Of(p).Bay == 0 {
		return v
	}
	plan := s.Times.Plan(p)
	for i := range plan.Phases {
		ph := &plan.Phases[i]
		v.Rows = append(v.Rows, TimeRow{s.text(up, &ph.Title), s.phaseSays(w, ph)})
	}
	v.Picture = HTML(drawnLine(w, plan))
	v.Notes = timeNotes(w, plan)
	return v
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

// drawnLine is the picture. Spans side by side of one kind are one bar.
func drawnLine(w *words.TimeLine, plan *schedule.Plan) string {
	line := plot.TimeLine{
		ID: "time-line", Title: w.Title, End: plan.Bay,
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
