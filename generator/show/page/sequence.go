package page

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// SequenceDrawing draws the order of n fasteners: a star round a circle, or a
// spiral from the middle of two rows; "" for another order, which is said in
// words.
func SequenceDrawing(sequence []string, n int, label string) HTML {
	if len(sequence) != 1 || n < 2 || n > 24 {
		return ""
	}
	var order []int
	place := onCircle
	size := circleSize(n)
	switch sequence[0] {
	case "star":
		order = fastening.Star(n)
	case "spiral":
		if n%2 != 0 {
			return ""
		}
		order, place, size = fastening.Spiral(2, n/2), inTwoRows, rowSize(n)
	default:
		return ""
	}
	var svg strings.Builder
	svg.WriteString(`<svg class="sequence" role="img"`)
	if size > 2*middle {
		svg.Reset()
		svg.WriteString(`<svg class="sequence of-many" role="img"`)
	}
	fmt.Fprintf(&svg, ` aria-label="%s" viewBox="0 0 %d %d">`, Escaped(label), size, size)
	for turn, i := range order {
		x, y := place(i, n)
		fmt.Fprintf(&svg, `<circle cx="%d" cy="%d" r="%d"/><text x="%d" y="%d">%d</text>`, x, y, nutRadius, x, y+9, turn+1)
	}
	svg.WriteString(`</svg>`)
	return HTML(svg.String())
}

// InOrder says in which order a fastener is tightened. A star and a spiral are words of
// the format, and said in the page's language; another order is in the shop's words.
func (s *Site) InOrder(f *model.Fastener) string {
	if len(f.Sequence) == 0 {
		return ""
	}
	said := s.SayAll(f, "sequence", f.Sequence)
	if word, known := s.Words.Kinds[f.Sequence[0]]; known && len(f.Sequence) == 1 {
		said = []string{word}
	}
	return fmt.Sprintf(s.Words.Sequence, Joined(said))
}

// The drawing's measures, in its own units: it grows with the fasteners, so
// that none lies over another and the figures stay as large.
const (
	nutRadius = 24
	apart     = 2*nutRadius + 2 // from middle to middle, at least
	middle    = 100             // of a drawing of few
)

// circle is how far from the middle n fasteners stand in a ring.
func circle(n int) float64 {
	return max(74, apart/2/math.Sin(math.Pi/float64(n)))
}

func circleSize(n int) int { return 2 * (int(math.Ceil(circle(n))) + nutRadius + 2) }

// onCircle is the place of the i-th of n, from the top in the direction of the
// clock.
func onCircle(i, n int) (x, y int) {
	angle, centre := 2*math.Pi*float64(i)/float64(n), float64(circleSize(n))/2
	return int(math.Round(centre + circle(n)*math.Sin(angle))), int(math.Round(centre - circle(n)*math.Cos(angle)))
}

// rowStep is how far apart the columns of two rows stand.
func rowStep(n int) int { return max(apart, 168/max(n/2-1, 1)) }

func rowSize(n int) int { return max(2*middle, rowStep(n)*(n/2-1)+2*nutRadius+4) }

// inTwoRows is the place of the i-th of n, row by row.
func inTwoRows(i, n int) (x, y int) {
	columns, centre := n/2, rowSize(n)/2
	return centre - rowStep(n)*(columns-1)/2 + rowStep(n)*(i%columns), centre - 40 + 80*(i/columns)
}

// FastenersAt is how many of a fastener hold a part.
func FastenersAt(p *model.Part, f *model.Fastener) int {
	for _, h := range p.HeldBy {
		if h.To == f {
			if n, err := strconv.Atoi(h.Amount); err == nil {
				return n
			}
			return 1
		}
	}
	return 0
}
