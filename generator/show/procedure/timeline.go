package procedure

import (
	"fmt"
	"slices"
	"strconv"
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
	Notes   []string
}

// TimeRow is a phase of it.
type TimeRow struct {
	Title page.HTML
	Times string // from when to when
	Waits string // how much of it waits; "" for nothing
	Says  string // the rest; "" for nothing
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
		times := fmt.Sprintf(w.From, page.Duration(ph.From), page.Duration(ph.To))
		v.Rows = append(v.Rows, TimeRow{
			Title: s.Text(up, title), Times: page.Worked(times, computedPhase(w, ph, title.Plain)),
			Waits: waited(w, w.Waits, ph.Waits, waitsOf(ph)), Says: s.phaseSays(w, ph),
		})
	}
	v.Picture = page.HTML(s.drawnLine(w, r.Plan, n))
	v.Notes = s.timeNotes(w, r.Plan)
	return v
}

// units are the units of a row; "" for all.
func (s *Pages) units(p *model.Procedure, r schedule.Row) string {
	return strings.TrimSuffix(page.Sentence(s.where(p.For.To, r.Where)), ".")
}

// UnitTime is the time of the units that it is the same for.
type UnitTime struct {
	When, Cases     string // as of UnitLine
	Work, Bay, Note string // Work: "" where no step has a time; Note: how much of it is waiting, and how many steps have no time
}

// unitTimes are the times of a procedure: one where all units take as long, else
// one for each row.
func (s *Pages) unitTimes(p *model.Procedure, rows []schedule.Row) []UnitTime {
	var out []UnitTime
	w := &s.Speaks.TimeLine
	for _, r := range rows {
		t := UnitTime{
			When: s.units(p, r), Cases: optionCases(r.Where),
			Bay:  page.Worked(page.Duration(r.Bay), s.BayWorked(r.Plan)),
			Note: waited(w, s.Words.OfThatWaits, r.Waits, planWaits(r.Plan)),
		}
		if r.Work > 0 || r.Plan.Untimed == 0 { // nobody has said that it takes no work
			t.Work = page.Worked(page.Duration(schedule.Rough(r.Work)), workWorked(w, r.Plan))
		}
		if n := r.Plan.Untimed; n > 0 {
			t.Note = strings.TrimPrefix(t.Note+"; "+s.untimed(untimedWords(w, n, r.Plan.Varies), untimedPut(r.Plan), n), "; ")
		}
		out = append(out, t)
	}
	if first := out[0]; !slices.ContainsFunc(out, func(t UnitTime) bool { return !t.sameTime(first) }) {
		return []UnitTime{{Work: first.Work, Bay: first.Bay, Note: first.Note}}
	}
	return out
}

// sameTime says that two kinds of units take as long, by the same workings: what
// their time line tells apart may be how one phase shares its time out.
func (t UnitTime) sameTime(o UnitTime) bool {
	return t.Work == o.Work && t.Bay == o.Bay && t.Note == o.Note
}

// phaseSays is what else is said of a phase's time.
func (s *Pages) phaseSays(w *words.TimeLine, ph *schedule.Phase) string {
	var out []string
	if ph.People > 1 {
		out = append(out, s.Tallied(fmt.Sprintf(w.People, ph.People), s.Speaks.Worked.Sums.AtOnce, peopleOf(ph), strconv.Itoa(ph.People), s.Speaks.Worked.Sums.Page))
	}
	for _, second := range ph.Seconds {
		out = append(out, fmt.Sprintf(w.Second, second.Step.Number, s.Name(second.By)))
	}
	if ph.Untimed > 0 {
		out = append(out, s.untimed(untimedWords(w, ph.Untimed, ph.Varies), strconv.Itoa(ph.Untimed), ph.Untimed))
	}
	return strings.Join(out, " · ")
}

// untimed is how many steps have no time, as the sum of the phases'.
func (s *Pages) untimed(text, put string, n int) string {
	w := &s.Speaks.Worked.Sums
	return s.Tallied(text, w.Untimed, put, strconv.Itoa(n), w.Page)
}

// untimedPut are the steps without a time, phase by phase.
func untimedPut(plan *schedule.Plan) string {
	var put []string
	for i := range plan.Phases {
		put = append(put, strconv.Itoa(plan.Phases[i].Untimed))
	}
	return strings.Join(put, " + ")
}

// peopleOf are the most people of a phase, with the steps that ask for them.
func peopleOf(ph *schedule.Phase) string {
	var put []string
	for _, span := range ph.Spans {
		if at := fmt.Sprintf("%d (%s)", span.People, span.Step.Number); span.People > 1 && !slices.Contains(put, at) {
			put = append(put, at)
		}
	}
	return "max(" + strings.Join(put, "; ") + ")"
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
func (s *Pages) timeNotes(w *words.TimeLine, plan *schedule.Plan) []string {
	var out []string
	if plan.Untimed > 0 {
		out = append(out, s.untimed(page.Sentence(untimedWords(w, plan.Untimed, plan.Varies)), untimedPut(plan), plan.Untimed))
	}
	if plan.Least >= plan.Bay {
		return out
	}
	least := quantity.Elapsed(schedule.Rough(plan.Least)).String()
	says := fmt.Sprintf(w.LeastOne, least)
	if plan.People > 1 {
		says = fmt.Sprintf(w.Least, least, plan.People)
	}
	out = append(out, page.Worked(says, computedLeast(w, plan, least)))
	if plan.Least == plan.Chain {
		out = append(out, fmt.Sprintf(w.Decide, page.Joined(numbersOf(plan.Critical))))
	}
	return out
}

// drawnLine is the n-th picture of a page. Spans side by side of one kind are one bar.
func (s *Pages) drawnLine(w *words.TimeLine, plan *schedule.Plan, n int) string {
	line := plot.TimeLine{
		ID: fmt.Sprintf("time-line-%d", n+1), Title: w.Title, End: plan.Bay,
		Text: fmt.Sprintf(w.Picture, len(plan.Phases), page.Duration(plan.Bay)),
	}
	for i := range plan.Phases {
		line.Rows = append(line.Rows, s.timeRow(&plan.Phases[i]))
		for _, span := range plan.Phases[i].Spans {
			switch span.Doing {
			case schedule.Wait:
				line.Wait = w.Wait
			case schedule.Call:
				line.Call = w.Call
			default:
				line.Work = w.Work
			}
		}
	}
	return line.SVG()
}

// timeRow is the row of a phase in the picture. A procedure that is performed is
// a bar of its own.
func (s *Pages) timeRow(ph *schedule.Phase) plot.TimeRow {
	row := plot.TimeRow{Words: s.PhaseOf(ph.Phase).Title.Plain}
	for _, span := range ph.Spans {
		bar := plot.TimeBar{From: span.From, To: span.To, People: span.People + span.Beside, Wait: span.Doing == schedule.Wait, Call: span.Doing == schedule.Call}
		if n := len(row.Bars) - 1; n >= 0 && goesOn(row.Bars[n], bar) {
			row.Bars[n].To = bar.To
		} else {
			row.Bars = append(row.Bars, bar)
		}
	}
	return row
}

// goesOn says that a bar goes on in the same way where the one before it ends.
func goesOn(before, bar plot.TimeBar) bool {
	return !before.Call && !bar.Call && before.To == bar.From && before.People == bar.People && before.Wait == bar.Wait
}
