package page

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/working"
)

// TorqueCard is a machine's torques on one printed side.
type TorqueCard struct {
	Frame
	Machine Link
	Rows    []TorqueRow
}

// TorqueRow is one fastener of the card.
type TorqueRow struct {
	Name    string
	Where   []string // "4 at the cover"
	Thread  string
	Head    string   // across flats, or the drive
	Torques []string // the torque in each unit, or the stages one by one
	Notes   []string // condition, new ones, start, mark, tighten again
	Order   HTML     // the sequence drawn
	Working working.Working
	Clamp   string
	NoClamp string // why none is worked out; "" where nothing is to say
}

// CardOf is the path of a machine's card: "machines/shop-press.torque.html".
// An id holds no dot, so no machine's page has that name.
func CardOf(m *model.Machine, card string) string { return "machines/" + m.ID + "." + card + ".html" }

// TorqueCard makes the torque card of a machine.
func (s *Site) TorqueCard(m *model.Machine) *TorqueCard {
	title := fmt.Sprintf(s.Words.TorqueCard, m.Label())
	v := &TorqueCard{Frame: s.Frame(CardOf(m, "torque"), title)}
	v.Machine = s.link(v.Up, m)
	for _, f := range m.Fasteners {
		v.Rows = append(v.Rows, s.torqueRow(f))
	}
	return v
}

func (s *Site) torqueRow(f *model.Fastener) TorqueRow {
	r := TorqueRow{Name: f.Label(), Thread: phrase(f.Thread, f.Class), Head: f.Drive}
	if !f.AcrossFlats.IsZero() {
		r.Head = s.both(f.AcrossFlats)
	}
	most := 0
	for _, p := range f.Holds {
		n := fastenersAt(p, f)
		most = max(most, n)
		r.Where = append(r.Where, fmt.Sprintf("%d × %s", n, p.Label()))
	}
	for i, stage := range f.Stages {
		r.Torques = append(r.Torques, fmt.Sprintf("%d: %s", i+1, s.both(stage)))
	}
	if len(f.Stages) == 0 && !f.Torque.IsZero() {
		r.Torques = []string{s.bothLimit(f.Torque)}
	}
	r.Notes = s.fastenerNotes(f)
	r.Order = sequenceDrawing(f.Sequence, most, fmt.Sprintf(s.Words.Sequence, joined(f.Sequence)))
	s.clamp(&r, f)
	return r
}

// fastenersAt is how many of a fastener hold a part.
func fastenersAt(p *model.Part, f *model.Fastener) int {
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

func (s *Site) fastenerNotes(f *model.Fastener) []string {
	var out []string
	if f.Condition != "" {
		out = append(out, f.Condition)
	}
	if f.Lubricant != "" {
		out = append(out, f.Lubricant)
	}
	if f.RenewWith.To != nil {
		out = append(out, fmt.Sprintf(s.Words.NewFastener, f.RenewWith.To.Label()))
	}
	if f.Start != "" {
		out = append(out, fmt.Sprintf(s.Words.Start, f.Start))
	}
	if f.MarkAfter != "" {
		out = append(out, fmt.Sprintf(s.Words.MarkWith, f.MarkAfter))
	}
	if f.Retorque != "" {
		out = append(out, fmt.Sprintf(s.Words.Retorque, f.Retorque))
	}
	return out
}

// clamp computes the pull that a torque makes, where thread and class are
// known: of several stages the last one's. A bolt that is turned by an angle is
// pulled as far as that turns it, whatever the torque was.
func (s *Site) clamp(r *TorqueRow, f *model.Fastener) {
	r.NoClamp = s.afterAngle(f)
	torques := fastening.Torques(f)
	if r.NoClamp != "" || len(torques) == 0 {
		return
	}
	thread, errA := fastening.ParseThread(f.Thread)
	class, errB := fastening.ParseClass(f.Class)
	friction, ok := fastening.FrictionOf(f.Condition)
	if errA != nil || errB != nil || !ok {
		return
	}
	if load, ok := fastening.LoadOf(thread, class, friction, torques[len(torques)-1]); ok {
		r.Clamp, r.Working = load.Clamp.String(), load.Working
	}
}

// afterAngle says that the torque of a bolt with an angle stage tells nothing of
// its load; "" of others.
func (s *Site) afterAngle(f *model.Fastener) string {
	if !slices.ContainsFunc(f.Stages, func(q quantity.Quantity) bool { return q.Unit.Dimension() == quantity.Angle }) {
		return ""
	}
	return s.speaks.Worked.AfterAngle
}

// FluidCard is a machine's fluids on one printed side.
type FluidCard struct {
	Frame
	Machine Link
	Rows    []FluidRow
}

// FluidRow is one fluid of the card.
type FluidRow struct {
	Name     string
	Supply   Link
	Capacity string
	Lines    []string
	Bleed    bool
	Waste    string
	Label    *Chemical
}

// FluidCard makes the fluid card of a machine.
func (s *Site) FluidCard(m *model.Machine) *FluidCard {
	v := &FluidCard{Frame: s.Frame(CardOf(m, "fluids"), fmt.Sprintf(s.Words.FluidCard, m.Label()))}
	v.Machine = s.link(v.Up, m)
	for _, f := range m.Fluids {
		r := FluidRow{Name: f.Label(), Bleed: f.Bleed}
		r.Capacity = s.capacity(f)
		if f.Supply.To != nil {
			r.Supply, r.Waste, r.Label = s.link(v.Up, f.Supply.To), f.Supply.To.Waste, s.chemical(f.Supply.To)
		}
		for _, l := range f.Lines {
			r.Lines = append(r.Lines, l.Label())
		}
		v.Rows = append(v.Rows, r)
	}
	return v
}

// sequenceDrawing draws the order of n fasteners: a star round a circle, or a
// spiral from the middle of two rows; "" for another order, which is said in
// words.
func sequenceDrawing(sequence []string, n int, label string) HTML {
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
	fmt.Fprintf(&svg, ` aria-label="%s" viewBox="0 0 %d %d">`, escaped(label), size, size)
	for turn, i := range order {
		x, y := place(i, n)
		fmt.Fprintf(&svg, `<circle cx="%d" cy="%d" r="%d"/><text x="%d" y="%d">%d</text>`, x, y, nutRadius, x, y+9, turn+1)
	}
	svg.WriteString(`</svg>`)
	return HTML(svg.String())
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
