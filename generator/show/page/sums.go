package page

import (
	"fmt"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/trade/working"
)

// WorkedHow is a number whose title is its own words.
func (s *Site) WorkedHow(text string, w working.Working) string {
	return Worked(text, Computed{Title: fmt.Sprintf(s.Speaks.Worked.Sums.How, strings.TrimRight(text, ".")), Working: w})
}

// converted is an amount in another unit.
func (s *Site) converted(from string, u quantity.Unit, to string, other quantity.Unit) string {
	w := &s.Speaks.Worked.Sums
	in := func(x float64) float64 { return quantity.Of(x, u, 12).In(other).Value }
	zero := in(0)
	digits := func(x float64) string { return s.Marker.Write(digits(x)) }
	put := from + " · " + digits(in(1)-zero) + " " + other.Symbol() + "/" + u.Symbol()
	if digits(zero) != "0" {
		put += " + " + digits(zero) + " " + other.Symbol()
	}
	return Worked(to, Computed{Title: from + " = " + to, Working: working.Working{
		Formula: w.Convert, Put: put, Result: to, Assumes: []string{w.Rounded}, Source: w.Units,
	}})
}

// digits is a factor with six digits.
func digits(x float64) string {
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 6, 64), 64)
	if rounded > -1e-9 && rounded < 1e-9 {
		return "0"
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}

// Until is the last day of something that holds so long from a day.
func (s *Site) Until(text string, from model.Date, long string, last model.Date) string {
	w := &s.Speaks.Worked.Sums
	return s.WorkedHow(text, working.Working{Formula: w.Until, Put: from.String() + " + " + long, Result: last.String(), Source: w.Shop})
}

// Tallied is a number that counts what a formula says, with what it was counted
// from.
func (s *Site) Tallied(text, formula, put, result, source string) string {
	return s.WorkedHow(text, working.Working{Formula: formula, Put: put, Result: result, Source: source})
}

// BayWorked is the time in the bay of a plan as the sum of its phases.
func (s *Site) BayWorked(plan *schedule.Plan) Computed {
	w := &s.Speaks.TimeLine
	bay := Duration(plan.Bay)
	return Computed{Title: fmt.Sprintf(w.BayWorked, bay), Working: working.Working{
		Formula: w.BayFormula, Put: bayPut(plan), Result: bay, Source: w.SumSource,
	}}
}

func bayPut(plan *schedule.Plan) string {
	var bays []string
	for i := range plan.Phases {
		bays = append(bays, Duration(plan.Phases[i].Bay))
	}
	return strings.Join(bays, " + ")
}

// BayTime is the time in the bay of a procedure, on its kinds of unit; "" where
// none is known.
func (s *Site) BayTime(p *model.Procedure) string {
	rows := s.Times.Rows(p)
	text := s.Spanned(rows)
	if text == "" {
		return ""
	}
	c := s.BayWorked(rows[0].Plan)
	if least, most := schedule.Range(rows); least < most {
		c = s.spread(rows, text)
	}
	c.Title = s.Name(p) + ": " + c.Title
	return Worked(text, c)
}

// Spread is the time in the bay of kinds of unit that take more or less; "" where
// all take the same.
func (s *Site) Spread(rows []schedule.Row) string {
	text := s.Spanned(rows)
	return Worked(text, s.spread(rows, text))
}

func (s *Site) spread(rows []schedule.Row, text string) Computed {
	var put []string
	for _, r := range rows {
		put = append(put, bayPut(r.Plan))
	}
	return Computed{Title: fmt.Sprintf(s.Speaks.TimeLine.BayWorked, text), Working: working.Working{
		Formula: s.Speaks.Worked.Sums.Spread, Put: strings.Join(put, "; "), Result: text, Source: s.Speaks.TimeLine.SumSource,
	}}
}

// UsedUp is how much of a supply a procedure's own line says, in the unit in
// which it is stocked; "" where it says no amount.
func (s *Site) UsedUp(use model.Use[model.Supply]) string {
	line := kit.UseOf(use)
	if !line.Said {
		return ""
	}
	text := s.Amount(line.Amount)
	typed, err := quantity.Parse(use.Amount, quantity.None)
	if err != nil || typed.Unit == line.Amount.Unit || typed.Unit.Dimension() != line.Amount.Unit.Dimension() {
		return text
	}
	return s.withOthers(s.converted(s.exactly(typed), typed.Unit, s.exactly(line.Amount), line.Amount.Unit), line.Amount)
}
