package plot

import (
	"encoding/xml"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

var day = time.Date(2026, 5, 4, 8, 0, 0, 0, time.UTC)

func n(v float64) *float64 { return &v }

func chart(points ...Point) *Chart {
	return &Chart{ID: "plot-gap", Title: "gap", Text: "One value.", Unit: "mm", Limit: "limit", Out: "out of the limit", Series: []string{"left", "right"}, Points: points}
}

// figures are the numbers of an attribute, wherever it stands.
func figures(t *testing.T, svg, attribute string) []float64 {
	t.Helper()
	var out []float64
	for _, m := range regexp.MustCompile(` `+attribute+`="([^"]*)"`).FindAllStringSubmatch(svg, -1) {
		v, err := strconv.ParseFloat(m[1], 64)
		if err != nil {
			t.Fatalf("%s is no number: %s", attribute, m[0])
		}
		out = append(out, v)
	}
	return out
}

// The picture parses as XML; one point stands in its middle, and the limit over
// it as far as the axis says.
func TestOnePoint(t *testing.T) {
	c := chart(Point{At: day, Value: 1})
	c.Series, c.Limits = c.Series[:1], []Limit{{From: day, High: n(2)}}
	svg := c.SVG()
	wellFormed(t, svg)
	// The axis goes from 1.0 to 2.0 over 170 units from 30 on: the value is at
	// its foot, the limit at its head.
	if x, y := figures(t, svg, "cx"), figures(t, svg, "cy"); len(x) != 1 || y[0] != 200 || x[0] < 150 || x[0] > 250 {
		t.Errorf("the point is at %v, %v", x, y)
	}
	if !strings.Contains(svg, `class="limit" d="M42.5 30H346"`) {
		t.Errorf("the limit is elsewhere: %s", svg)
	}
	for _, want := range []string{`<title id="plot-gap-title">gap</title>`, `<desc id="plot-gap-text">One value.</desc>`, `aria-labelledby="plot-gap-title plot-gap-text"`, `>mm</text>`, `>05-04</text>`, `>2026</text>`, `<text class="word" x="344" y="25"`} {
		if !strings.Contains(svg, want) {
			t.Errorf("%s is not in %s", want, svg)
		}
	}
	if strings.Contains(svg, "left") {
		t.Error("one series has a legend")
	}
	if (&Chart{ID: "x"}).SVG() != "" {
		t.Error("a picture without a point")
	}
}

func TestLimitsStep(t *testing.T) {
	c := chart(Point{At: day, Value: 1}, Point{At: day.AddDate(0, 0, 24), Value: 4, Of: 1, Out: true})
	c.Limits = Steps([]Limit{{From: day.AddDate(0, 0, 12), Low: n(0), High: n(3)}, {From: day, High: n(5)}, {From: day.AddDate(0, 0, 6), High: n(5)}, {From: day.AddDate(0, 0, 20), Low: n(0), High: n(3)}})
	if len(c.Limits) != 2 {
		t.Fatalf("%d limits: those that change nothing stay", len(c.Limits))
	}
	svg := c.SVG()
	wellFormed(t, svg)
	// 26 days, a day on each side, are 322.5 units wide from 23.5 on; the limit
	// changes on the 13th: 23.5 + 13/26 · 322.5. 0 to 5 are 170 units.
	for _, want := range []string{`d="M23.5 30H184.8V98H346"`, `d="M184.8 200H346"`} {
		if !strings.Contains(svg, want) {
			t.Errorf("%s is not in %s", want, svg)
		}
	}
	for _, want := range []string{">left</text>", ">right</text>", ">out of the limit</text>", `<path class="out" d="M`} {
		if !strings.Contains(svg, want) {
			t.Errorf("%s is not in %s", want, svg)
		}
	}
}

// Hostile words stay words.
func TestWordsAreEscaped(t *testing.T) {
	hostile := `</svg><script>alert(1)</script>&"'`
	c := &Chart{ID: hostile, Title: hostile, Text: hostile, Unit: hostile, Limit: hostile, Out: hostile, Series: []string{hostile, hostile + "2"},
		Points: []Point{{At: day, Value: 1, Out: true}, {At: day, Value: 2, Of: 1}}, Limits: []Limit{{High: n(1)}}}
	svg := c.SVG()
	wellFormed(t, svg)
	if strings.Contains(svg, "<script") {
		t.Error(svg)
	}
}

func wellFormed(t interface{ Fatalf(string, ...any) }, svg string) {
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		_, err := d.Token()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Fatalf("%v: %s", err, svg)
		}
	}
}

var place = regexp.MustCompile(`(?:cx="|class="(?:in|out)" d="M)([-\d.]+)(?:" cy="| )([-\d.]+)`)

// Whatever the values, from one point to 500: every mark and every limit is
// inside the picture.
func TestEveryMarkIsInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := chart()
		size := rapid.SampledFrom([]float64{1e-6, 1, 1e9}).Draw(t, "size")
		value := rapid.Float64Range(-size, size)
		for i := range rapid.SampledFrom([]int{1, 2, 40, 500}).Draw(t, "points") {
			c.Points = append(c.Points, Point{At: day.Add(time.Duration(rapid.Int64Range(0, 1e17).Draw(t, "when"))), Value: value.Draw(t, "value"), Of: i % 2, Out: i%7 == 0})
		}
		if rapid.Bool().Draw(t, "limited") {
			c.Limits = Steps([]Limit{{From: day, High: n(value.Draw(t, "high"))}, {From: day.AddDate(0, 1, 0), Low: n(value.Draw(t, "low"))}})
		}
		svg := c.SVG()
		wellFormed(t, svg)
		marks := place.FindAllStringSubmatch(svg, -1)
		if strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") || len(marks) < len(c.Points) {
			t.Fatalf("%d marks of %d points", len(marks), len(c.Points))
		}
		for _, m := range marks[:len(c.Points)] {
			x, _ := strconv.ParseFloat(m[1], 64)
			y, _ := strconv.ParseFloat(m[2], 64)
			if x < 14-8 || x > width-right+8 || y < top-8 || y > top+height+8 { // a square's corner is beside its middle
				t.Fatalf("a mark at %s", fmt.Sprint(m[1:]))
			}
		}
	})
}
