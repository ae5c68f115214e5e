package quantity

import "time"

// Span is a calendar amount as it was written: months are months and not a
// number of days. Weeks are seven days.
type Span struct{ Years, Months, Days int }

// Span returns the years, months and days of a calendar amount, or of a
// duration in whole days or weeks; ok is false for all else.
func (q Quantity) Span() (s Span, ok bool) {
	q, ok = q.As(Calendar)
	return q.span, ok
}

// AddTo returns the date that lies the span after the date of t, at midnight
// UTC. The years and months are added first; a day that the month does not
// have becomes its last day (31 January and 1 month: 28 or 29 February). The
// days are added then. The date of t is the one that t shows in its own zone.
func (s Span) AddTo(t time.Time) time.Time {
	year, month, day := t.Date()
	first := time.Date(year, month+time.Month(s.months()), 1, 0, 0, 0, 0, time.UTC)
	last := first.AddDate(0, 1, -1).Day()
	return first.AddDate(0, 0, min(day, last)-1+s.Days)
}

// months returns the years and months in months.
func (s Span) months() int { return 12*s.Years + s.Months }

// mixed reports whether the span has both months and days, so that no single
// unit can say it.
func (s Span) mixed() bool { return s.months() != 0 && s.Days != 0 }

// same reports whether both spans lead to the same date from any date.
func (s Span) same(other Span) bool {
	return s.months() == other.months() && s.Days == other.Days
}

func (s Span) plus(other Span) Span {
	return Span{s.Years + other.Years, s.Months + other.Months, s.Days + other.Days}
}

// meanDays returns the length of the span in days, months and years being as
// long as they are on average.
func (s Span) meanDays() float64 {
	return float64(s.months())*daysPerYear/12 + float64(s.Days)
}

// spanOf returns the span of a number of calendar units, and none for others.
func spanOf(value float64, unit Unit) Span {
	switch unit {
	case CalendarDay:
		return Span{Days: int(value)}
	case CalendarWeek:
		return Span{Days: 7 * int(value)}
	case Month:
		return Span{Months: int(value)}
	case Year:
		return Span{Years: int(value)}
	}
	return Span{}
}
