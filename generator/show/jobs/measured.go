package jobs

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/show/page"
	"baybinder/generator/show/plot"
)

// Measured is what was measured at one hold over time, as a picture and as
// numbers.
type Measured struct {
	Title string
	Text  string // what the picture says
	Plot  page.HTML
	Rows  []MeasuredRow // the newest first
	Older []MeasuredRow
}

// MeasuredRow is what was read at one time, a value at each place.
type MeasuredRow struct {
	When    string
	Unit    string // which unit of the machine
	Values  []PlacedValue
	Limit   string // as it was then
	Verdict string
}

// PlacedValue is one value, as it was typed, with its unit.
type PlacedValue struct {
	Where string
	Text  string
}

// taken are the values of one time with all that is known of them.
type taken struct {
	job     *model.Job
	hold    *model.JobHold
	at      time.Time
	values  []model.JobReading
	givenUp bool
}

// largest is the greatest amount that is drawn; what is beyond is in the
// numbers. It keeps the arithmetic of the picture finite.
const largest = 1e15

// measured gathers the values of jobs by hold: those of the register in its
// order, then those that it no longer has.
func (s *Pages) measured(jobs []*model.Job) []Measured {
	byHold := map[string][]taken{}
	for _, j := range jobs {
		for i := range j.Holds {
			if h := &j.Holds[i]; h.Kind == "measure" {
				byHold[h.Hold] = append(byHold[h.Hold], takenAt(j, h)...)
			}
		}
	}
	var out []Measured
	add := func(id string, hold *model.Hold) {
		if list := byHold[id]; len(list) > 0 {
			out = append(out, s.measuredAt(len(out)+1, cmp.Or(label(hold), id), hold, list))
		}
		delete(byHold, id)
	}
	for _, h := range s.Manual.Holds {
		add(h.ID, h)
	}
	var gone []string
	for id := range byHold {
		gone = append(gone, id)
	}
	slices.Sort(gone)
	for _, id := range gone {
		add(id, nil)
	}
	return out
}

// takenAt are the values of one hold of a job, those that were given up first.
func takenAt(j *model.Job, h *model.JobHold) []taken {
	var out []taken
	for _, f := range h.Failed {
		if len(f.Values) > 0 {
			out = append(out, taken{j, h, f.At, f.Values, true})
		}
	}
	at := h.At
	if at.IsZero() {
		at = j.Saved
	}
	if len(h.Values) > 0 {
		out = append(out, taken{j, h, at, h.Values, false})
	}
	return out
}

func label(h *model.Hold) string {
	if h == nil {
		return ""
	}
	return h.Label()
}

// measuredAt is what was measured at the nth hold of a page.
func (s *Pages) measuredAt(n int, title string, hold *model.Hold, list []taken) Measured {
	w := s.JobWords()
	slices.SortStableFunc(list, func(a, b taken) int { return a.at.Compare(b.at) })
	v := Measured{Title: title}
	unit := list[len(list)-1].hold.Unit
	if hold != nil && hold.Limit.Unit.Dimension() != quantity.None {
		unit = blankUnit(hold)
	}
	c := &plot.Chart{ID: "plot-" + strconv.Itoa(n), Title: v.Title, Unit: unit, Limit: w.Limit, Out: w.Out, Marker: s.Marker}
	for _, t := range list {
		s.chart(c, t, unit)
	}
	c.Limits = plot.Steps(append(c.Limits, s.limitNow(hold, c)...))
	c.Text = s.plotText(c, hold)
	v.Text = s.plotWorked(c)
	v.Plot = page.HTML(c.SVG())
	for _, t := range slices.Backward(list) {
		v.Rows = append(v.Rows, s.measuredRow(t))
	}
	if len(v.Rows) > shownReadings {
		v.Rows, v.Older = v.Rows[:shownReadings], v.Rows[shownReadings:]
	}
	return v
}

// chart puts values into the picture, in the unit of the limit that stands.
func (s *Pages) chart(c *plot.Chart, t taken, unit string) {
	low, high, known := s.limitThen(t.job, t.hold)
	if known {
		c.Limits = append(c.Limits, plot.Limit{From: t.at, Low: endIn(low, t.hold.Unit, unit), High: endIn(high, t.hold.Unit, unit)})
	}
	for _, r := range t.values {
		if r.Value == nil {
			continue
		}
		v, ok := inUnit(*r.Value, t.hold.Unit, unit)
		if !ok || math.Abs(v) > largest {
			continue
		}
		of := slices.Index(c.Series, r.Where)
		if of < 0 {
			of = len(c.Series)
			c.Series = append(c.Series, r.Where)
		}
		c.Points = append(c.Points, plot.Point{At: t.at, Value: v, Of: of, Out: known && !record.Within(*r.Value, low, high)})
	}
}

// limitNow is the limit that stands, from behind the last value on.
func (s *Pages) limitNow(h *model.Hold, c *plot.Chart) []plot.Limit {
	if h == nil || len(c.Points) == 0 || h.Limit.Unit.Dimension() == quantity.None {
		return nil
	}
	from := c.Points[len(c.Points)-1].At
	if len(c.Limits) > 0 {
		from = from.Add(time.Second)
	}
	return []plot.Limit{{From: from, Low: finite(h.Limit.Low), High: finite(h.Limit.High)}}
}

func finite(v float64) *float64 {
	if math.Abs(v) > largest { // an open end is infinite
		return nil
	}
	return &v
}

// blankUnit is the unit that stands behind a hold's blanks.
func blankUnit(h *model.Hold) string {
	return strings.TrimSpace(h.Limit.Unit.Symbol() + " " + h.Limit.Flow.String())
}

// inUnit turns a value into another unit; not ok where they are of another
// kind, or one ac and the other dc.
func inUnit(v float64, from, to string) (float64, bool) {
	if from == to {
		return v, true
	}
	a, flowA, okA := unitOf(from)
	b, flowB, okB := unitOf(to)
	if !okA || !okB || flowA != flowB || a.Dimension() != b.Dimension() {
		return 0, false
	}
	return quantity.Of(v, a, 12).In(b).Value, true
}

func unitOf(text string) (u quantity.Unit, flow string, ok bool) {
	symbol, flow, _ := strings.Cut(text, " ")
	u, ok = quantity.UnitNamed(symbol)
	return u, flow, ok
}

func endIn(end *float64, from, to string) *float64 {
	if end == nil {
		return nil
	}
	v, ok := inUnit(*end, from, to)
	if !ok || math.Abs(v) > largest {
		return nil
	}
	return &v
}

// limitThen is the limit that a value was held against: the record's own; where
// it brought none along, the one that stands, if the job was done with what
// stands.
func (s *Pages) limitThen(j *model.Job, h *model.JobHold) (low, high *float64, known bool) {
	if h.Low != nil || h.High != nil {
		return h.Low, h.High, true
	}
	if !record.Current(s.Manual, j, s.Today) {
		return nil, nil, false
	}
	now := s.holdNamed(h.Hold)
	if now == nil || blankUnit(now) != h.Unit {
		return nil, nil, false
	}
	return finite(now.Limit.Low), finite(now.Limit.High), true
}

// judged says how values of one time stood to the limit of then.
func (s *Pages) judged(j *model.Job, h *model.JobHold, values []model.JobReading) string {
	w := s.JobWords()
	low, high, known := s.limitThen(j, h)
	if !known {
		return w.NotJudged
	}
	for _, r := range values {
		if r.Value != nil && !record.Within(*r.Value, low, high) {
			return w.Out
		}
	}
	if nearLimit(h.Near, values) {
		if h.Near.Again != "" {
			return fmt.Sprintf(w.NearAgain, h.Near.Again)
		}
		return w.Near
	}
	return w.Within
}

// nearLimit says that a value is in the part of the limit that is near its end.
func nearLimit(near *model.JobNear, values []model.JobReading) bool {
	return near != nil && slices.ContainsFunc(values, func(r model.JobReading) bool {
		return r.Value != nil && record.Within(*r.Value, near.Low, near.High)
	})
}

func (s *Pages) measuredRow(t taken) MeasuredRow {
	w := s.JobWords()
	row := MeasuredRow{When: minute(t.at), Unit: s.shortUnit(t.job), Verdict: s.judged(t.job, t.hold, t.values)}
	for _, r := range t.values {
		row.Values = append(row.Values, PlacedValue{r.Where, strings.TrimSpace(r.Typed + " " + t.hold.Unit)})
	}
	if low, high, known := s.limitThen(t.job, t.hold); known {
		row.Limit = strings.TrimSpace(w.LimitOf(s.decimal(low), s.decimal(high)) + " " + t.hold.Unit)
	}
	if t.givenUp && row.Verdict == w.Out {
		row.Verdict = w.GivenUp
	}
	return row
}

// decimal writes a number as plainly as it can be; "" for an open end.
func (s *Pages) decimal(v *float64) string {
	if v == nil {
		return ""
	}
	return s.Marker.Write(strconv.FormatFloat(*v, 'f', -1, 64))
}

// plotText says in words what the picture shows.
func (s *Pages) plotText(c *plot.Chart, h *model.Hold) string {
	w := s.JobWords()
	limit := w.NoLimit
	if h != nil && h.Limit.Unit.Dimension() != quantity.None {
		limit = fmt.Sprintf(w.LimitIs, s.Limit(h.Limit))
	}
	switch len(c.Points) {
	case 0:
		return limit
	case 1:
		p := c.Points[0]
		text := fmt.Sprintf(w.PlotOne, strings.TrimSpace(s.rounded(p.Value)+" "+c.Unit), p.At.Format(time.DateOnly), limit)
		if p.Out {
			text += " " + page.Sentence(w.Out)
		}
		return text
	}
	byValue := func(a, b plot.Point) int { return cmp.Compare(a.Value, b.Value) }
	byTime := func(a, b plot.Point) int { return a.At.Compare(b.At) }
	out := 0
	for _, p := range c.Points {
		if p.Out {
			out++
		}
	}
	first, last := slices.MinFunc(c.Points, byTime).At.Format(time.DateOnly), slices.MaxFunc(c.Points, byTime).At.Format(time.DateOnly)
	least, greatest := s.rounded(slices.MinFunc(c.Points, byValue).Value), s.rounded(slices.MaxFunc(c.Points, byValue).Value)
	if first == last {
		return fmt.Sprintf(w.PlotDay, len(c.Points), first, least, greatest, c.Unit, limit, out)
	}
	return fmt.Sprintf(w.PlotText, len(c.Points), first, last, least, greatest, c.Unit, limit, out)
}

// plotWorked is what the picture shows, with the values that it counts.
func (s *Pages) plotWorked(c *plot.Chart) string {
	if len(c.Points) == 0 {
		return c.Text
	}
	w := &s.Speaks.Worked.Sums
	var put []string
	out := 0
	values := make([]float64, len(c.Points))
	for i, p := range c.Points {
		put, values[i] = append(put, s.rounded(p.Value)), p.Value
		if p.Out {
			out++
		}
	}
	result := fmt.Sprintf("%d; %s; %s; %d", len(put), s.rounded(slices.Min(values)), s.rounded(slices.Max(values)), out)
	return s.Tallied(c.Text, w.Values, strings.Join(put, "; "), result, w.Record)
}

// rounded writes a value that may have been converted.
func (s *Pages) rounded(v float64) string {
	f, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 6, 64), 64)
	return s.Marker.Write(strconv.FormatFloat(f, 'f', -1, 64))
}
