package plot

import (
	"fmt"
	"html"
	"strconv"
	"strings"
)

// TimeLine is a picture of rows of bars over one time axis.
type TimeLine struct {
	ID    string // of the picture in its page; the title's and the text's ids are made of it
	Title string
	Text  string // what the picture says, in words
	Rows  []TimeRow
	End   int // seconds
	// Work, Wait and Call are the words of the legend; "" for what is not shown.
	Work, Wait, Call string
}

// TimeRow is one row: its words stand over its bars.
type TimeRow struct {
	Words string
	Bars  []TimeBar
}

// TimeBar is a stretch of time. A wait is hatched, a call has an outline, and
// work is as tall as it has people.
type TimeBar struct {
	From, To   int // seconds
	People     int
	Wait, Call bool
}

// The measures of a time line, in its own units.
const (
	rowWords   = 20 // the height of a row's words
	rowBar     = 30 // and of its bars
	rowAfter   = 12
	lineInset  = 2
	legendAt   = 40 // under the last row: the hours stand between
	legendTall = 36 // a bar of a wait, and room
	mostSteps  = 5
	rowLetter  = 36 // letters that stand in a row
	tallest    = 3  // people: more are no taller
)

// steps are the distances that the marks of a time axis may have, in seconds.
var steps = []int{60, 300, 600, 900, 1800, 3600, 7200, 14400, 28800, 86400}

// StepOf is the distance of the marks for a time: at most five of them.
func StepOf(end int) int {
	for _, s := range steps {
		if end <= s*mostSteps {
			return s
		}
	}
	day := steps[len(steps)-1]
	return (end/(day*mostSteps) + 1) * day
}

// SVG draws the time line; "" where there is no time.
func (l *TimeLine) SVG() string {
	if l.End <= 0 || len(l.Rows) == 0 {
		return ""
	}
	id := html.EscapeString(l.ID)
	rowTall := rowWords + rowBar + rowAfter
	foot := len(l.Rows) * rowTall
	legend := l.legend()
	var b strings.Builder
	b.Grow(2 << 10)
	fmt.Fprintf(&b, `<svg class="plot time" role="img" aria-labelledby="%s-title %s-text" viewBox="0 0 %d %d"><title id="%s-title">%s</title><desc id="%s-text">%s</desc>`,
		id, id, width, foot+legendAt+len(legend)*legendTall, id, html.EscapeString(l.Title), id, html.EscapeString(l.Text))
	fmt.Fprintf(&b, `<defs><pattern id="%s-wait" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M3.5 0V7"/></pattern></defs>`, id)
	l.axis(&b, foot)
	for i, row := range l.Rows {
		y := i * rowTall
		text(&b, lineInset, float64(y+16), "start", shortened(row.Words))
		for _, bar := range row.Bars {
			l.bar(&b, bar, y+rowWords+4+rowBar)
		}
	}
	for i, line := range legend {
		y := foot + legendAt + i*legendTall + 18
		l.bar(&b, line.bar, y)
		text(&b, 40, float64(y), "start", line.words)
	}
	b.WriteString(`</svg>`)
	return b.String()
}

func shortened(words string) string {
	if r := []rune(words); len(r) > rowLetter {
		return string(r[:rowLetter-1]) + "…"
	}
	return words
}

func (l *TimeLine) x(seconds int) float64 {
	return lineInset + float64(seconds)*(width-2*lineInset)/float64(l.End)
}

// axis draws the marks and their hours and minutes.
func (l *TimeLine) axis(b *strings.Builder, foot int) {
	step := StepOf(l.End)
	for t := 0; t <= l.End; t += step {
		x := l.x(t)
		fmt.Fprintf(b, `<path class="grid" d="M%s 0V%d"/>`, at(x), foot)
		anchor := "middle"
		switch {
		case t == 0:
			anchor = "start"
		case x > width-24:
			anchor = "end"
		}
		text(b, x, float64(foot+18), anchor, fmt.Sprintf("%d:%02d", t/3600, t/60%60))
	}
}

// bar draws a bar that stands on a line.
func (l *TimeLine) bar(b *strings.Builder, bar TimeBar, floor int) {
	x := l.x(bar.From)
	wide := max(l.x(bar.To)-x, 1.5)
	tall := rowBar
	if !bar.Wait {
		tall = rowBar * min(max(bar.People, 1), tallest) / tallest
	}
	class, fill := "work", ""
	switch {
	case bar.Wait:
		class, fill = "wait", ` fill="url(#`+html.EscapeString(l.ID)+`-wait)"`
	case bar.Call:
		class = "call"
	}
	b.WriteString(`<rect class="` + class + `" x="` + at(x) + `" y="` + strconv.Itoa(floor-tall) + `" width="` + at(wide) + `" height="` + strconv.Itoa(tall) + `"` + fill + `/>`)
}

type timeLegend struct {
	bar   TimeBar
	words string
}

func (l *TimeLine) legend() []timeLegend {
	long := l.End * 30 / (width - 2*lineInset)
	var out []timeLegend
	if l.Work != "" {
		out = append(out, timeLegend{TimeBar{To: long, People: 1}, l.Work})
	}
	if l.Call != "" {
		out = append(out, timeLegend{TimeBar{To: long, People: 1, Call: true}, l.Call})
	}
	if l.Wait != "" {
		out = append(out, timeLegend{TimeBar{To: long, Wait: true}, l.Wait})
	}
	return out
}
