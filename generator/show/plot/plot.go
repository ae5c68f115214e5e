package plot

import (
	"cmp"
	"fmt"
	"html"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"baybinder/generator/base/quantity"
)

// Chart is what a plot shows.
type Chart struct {
	ID     string // of the picture in its page; the title's and the text's ids are made of it
	Title  string
	Text   string // what the picture says, in words
	Unit   string // over the axis
	Limit  string // the word at the line of a limit
	Out    string // the word for a value that is out of it
	Series []string
	Points []Point
	Limits []Limit // by time
	Marker quantity.Marker
}

// Point is one value. Of names the series, an index of Chart.Series.
type Point struct {
	At    time.Time
	Value float64
	Of    int
	Out   bool
}

// Limit is a limit that held from a time on, until the next one. An open end is
// nil.
type Limit struct {
	From      time.Time
	Low, High *float64
}

// The picture's measures, in its own units: on a phone one of them is a pixel.
const (
	width      = 360
	top        = 30 // the unit stands over the axis
	height     = 170
	bottom     = 46
	right      = 14
	letter     = 9.5 // the width of a figure
	legendLine = 24
	mostTicks  = 6
	mostDates  = 3
)

// frame turns values and times into places.
type frame struct {
	scale       Scale
	left        float64
	first, last time.Time
}

func (f *frame) x(t time.Time) float64 {
	part := 0.5
	if span := f.last.Sub(f.first); span > 0 {
		part = float64(t.Sub(f.first)) / float64(span)
	}
	return f.left + part*(width-right-f.left)
}

func (f *frame) y(v float64) float64 {
	return top + height*(f.scale.High()-v)/(f.scale.High()-f.scale.Low())
}

// SVG draws the chart; "" where it has no point.
func (c *Chart) SVG() string {
	if len(c.Points) == 0 {
		return ""
	}
	f := c.frame()
	legend := c.legend()
	id := html.EscapeString(c.ID)
	tall := top + height + bottom + len(legend)*legendLine
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="plot" role="img" aria-labelledby="%s-title %s-text" viewBox="0 0 %d %d"><title id="%s-title">%s</title><desc id="%s-text">%s</desc>`,
		id, id, width, tall, id, html.EscapeString(c.Title), id, html.EscapeString(c.Text))
	c.axes(&b, f)
	c.limits(&b, f)
	size := markSize(len(c.Points))
	for _, p := range c.Points {
		mark(&b, f.x(p.At), f.y(p.Value), size, p.Of, p.Out)
	}
	for i, line := range legend {
		y := float64(top + height + bottom + i*legendLine + 8)
		mark(&b, 14, y-5, 5, line.of, line.out)
		text(&b, 28, y, "start", line.words)
	}
	b.WriteString(`</svg>`)
	return b.String()
}

// frame makes the axes: every value and every end of a limit is on them. The
// time goes a little beyond the first and the last point; for a single one, a
// week to both sides.
func (c *Chart) frame() *frame {
	f := &frame{first: c.Points[0].At, last: c.Points[0].At}
	var values []float64
	for _, p := range c.Points {
		values = append(values, p.Value)
		if p.At.Before(f.first) {
			f.first = p.At
		}
		if p.At.After(f.last) {
			f.last = p.At
		}
	}
	for _, l := range c.Limits {
		for _, end := range []*float64{l.Low, l.High} {
			if end != nil {
				values = append(values, *end)
			}
		}
	}
	margin := max(f.last.Sub(f.first)/24, 12*time.Hour)
	if f.first.Equal(f.last) {
		margin = 7 * 24 * time.Hour
	}
	f.first, f.last = f.first.Add(-margin), f.last.Add(margin)
	f.scale = ScaleFor(values, mostTicks)
	longest := 0
	for _, tick := range f.scale.Ticks {
		longest = max(longest, len(f.scale.Label(tick)))
	}
	f.left = math.Min(14+letter*float64(longest), width/2)
	return f
}

func (c *Chart) axes(b *strings.Builder, f *frame) {
	text(b, 2, 18, "start", c.Unit)
	for _, tick := range f.scale.Ticks {
		y := f.y(tick)
		fmt.Fprintf(b, `<path class="grid" d="M%s %sH%d"/>`, at(f.left), at(y), width-right)
		text(b, f.left-6, y+5, "end", c.Marker.Write(f.scale.Label(tick)))
	}
	foot := float64(top + height)
	dates := DatesFor(f.first, f.last, mostDates)
	year := ""
	for _, day := range dates.Ticks {
		x := f.x(day)
		if x < f.left-0.5 || x > width-right+0.5 {
			continue
		}
		fmt.Fprintf(b, `<path d="M%s %sv6"/>`, at(x), at(foot))
		label := day.Format(dates.Layout)
		half := letter * float64(len(label)) / 2
		x = math.Min(math.Max(x, half), width-half)
		text(b, x, foot+22, "middle", label)
		if y := day.Format("2006"); dates.Layout == "01-02" && y != year {
			text(b, x, foot+40, "middle", y)
			year = y
		}
	}
	fmt.Fprintf(b, `<path d="M%s %dV%sH%d"/>`, at(f.left), top, at(foot), width-right)
}

// limits draws each end as a broken line that steps where the limit changed,
// with its word at the latest.
func (c *Chart) limits(b *strings.Builder, f *frame) {
	for i, end := range []func(Limit) *float64{func(l Limit) *float64 { return l.High }, func(l Limit) *float64 { return l.Low }} {
		var d strings.Builder
		var last *float64
		for k, l := range c.Limits {
			v, from, to := end(l), f.left, float64(width-right)
			if k > 0 {
				from = f.x(l.From)
			}
			if k+1 < len(c.Limits) {
				to = f.x(c.Limits[k+1].From)
			}
			switch {
			case v == nil:
			case last == nil:
				fmt.Fprintf(&d, "M%s %sH%s", at(from), at(f.y(*v)), at(to))
			default:
				fmt.Fprintf(&d, "V%sH%s", at(f.y(*v)), at(to))
			}
			last = v
		}
		if d.Len() == 0 {
			continue
		}
		fmt.Fprintf(b, `<path class="limit" d="%s"/>`, d.String())
		if last != nil {
			y := f.y(*last) - 5
			if below := f.y(*last) + 17; i == 1 && below < top+height {
				y = below // a lower end has its word below it, where there is room
			}
			for _, class := range []string{"halo", "word"} { // the word can be read over marks
				fmt.Fprintf(b, `<text class="%s" x="%d" y="%s" text-anchor="end">%s</text>`, class, width-right-2, at(y), html.EscapeString(c.Limit))
			}
		}
	}
}

// legendRow is a line under the picture: a mark and what it is.
type legendRow struct {
	of    int
	out   bool
	words string
}

func (c *Chart) legend() []legendRow {
	var rows []legendRow
	if len(c.Series) > 1 {
		for i, name := range c.Series {
			rows = append(rows, legendRow{i, false, cut(name)})
		}
	}
	if i := slices.IndexFunc(c.Points, func(p Point) bool { return p.Out }); i >= 0 {
		rows = append(rows, legendRow{c.Points[i].Of, true, c.Out})
	}
	return rows
}

// cut keeps a name within the picture.
func cut(name string) string {
	const most = 36
	if r := []rune(name); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return name
}

// markSize is half the width of a mark: many marks are small ones.
func markSize(points int) float64 {
	switch {
	case points <= 40:
		return 5
	case points <= 150:
		return 3.5
	}
	return 2.5
}

// shapes tell the series apart without a colour: circle, square, triangle,
// diamond, triangle on its point, cross. They are corners, in half widths.
var shapes = [][][2]float64{
	nil,
	{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}},
	{{0, -1.2}, {1.2, 1}, {-1.2, 1}},
	{{0, -1.4}, {1.4, 0}, {0, 1.4}, {-1.4, 0}},
	{{0, 1.2}, {1.2, -1}, {-1.2, -1}},
	{{-1.2, -.4}, {-.4, -.4}, {-.4, -1.2}, {.4, -1.2}, {.4, -.4}, {1.2, -.4}, {1.2, .4}, {.4, .4}, {.4, 1.2}, {-.4, 1.2}, {-.4, .4}, {-1.2, .4}},
}

// mark draws one point: hollow within the limit; out of it full, and half as
// large again.
func mark(b *strings.Builder, x, y, size float64, of int, out bool) {
	class := "in"
	if out {
		class, size = "out", size*1.5
	}
	if of %= len(shapes); of == 0 {
		fmt.Fprintf(b, `<circle class="%s" cx="%s" cy="%s" r="%s"/>`, class, at(x), at(y), at(size))
		return
	}
	fmt.Fprintf(b, `<path class="%s" d="`, class)
	for i, corner := range shapes[of] {
		fmt.Fprintf(b, "%c%s %s", "ML"[min(i, 1)], at(x+corner[0]*size), at(y+corner[1]*size))
	}
	b.WriteString(`z"/>`)
}

func text(b *strings.Builder, x, y float64, anchor, words string) {
	b.WriteString(`<text x="` + at(x) + `" y="` + at(y) + `" text-anchor="` + anchor + `">` + html.EscapeString(words) + `</text>`)
}

// at writes a place with one decimal, which is finer than a screen shows.
func at(v float64) string { return strings.TrimSuffix(strconv.FormatFloat(v, 'f', 1, 64), ".0") }

// Steps puts limits in order and leaves out those that change nothing.
func Steps(limits []Limit) []Limit {
	slices.SortStableFunc(limits, func(a, b Limit) int { return a.From.Compare(b.From) })
	return slices.CompactFunc(limits, func(a, b Limit) bool { return same(a.Low, b.Low) && same(a.High, b.High) })
}

func same(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return cmp.Compare(*a, *b) == 0
}
