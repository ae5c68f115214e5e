package register

import (
	"fmt"
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/fastening"
)

// TorqueCard is a machine's torques on one printed side.
type TorqueCard struct {
	page.Frame
	Machine page.Link
	Rows    []TorqueRow
}

// TorqueRow is one fastener of the card.
type TorqueRow struct {
	Name    string
	Where   []string // "4 at the cover"
	Thread  string
	Head    string          // across flats, or the drive
	Torques []string        // the torque in each unit, or the stages one by one
	Notes   []string        // condition, new ones, start, mark, tighten again
	Order   page.HTML       // the sequence drawn
	Clamp   []page.Computed // the pull of the bolt; none where it is not worked out
	NoClamp string          // why none is worked out; "" where nothing is to say
}

// CardOf is the path of a machine's card: "machines/shop-press.torque.html".
// An id holds no dot, so no machine's page has that name.
func CardOf(m *model.Machine, card string) string { return "machines/" + m.ID + "." + card + ".html" }

// TorqueCard makes the torque card of a machine.
func (s *Pages) TorqueCard(m *model.Machine) *TorqueCard {
	title := fmt.Sprintf(s.Words.TorqueCard, m.Label())
	v := &TorqueCard{Frame: s.Frame(CardOf(m, "torque"), title)}
	v.Machine = s.Link(v.Up, m)
	for _, f := range m.Fasteners {
		v.Rows = append(v.Rows, s.torqueRow(f))
	}
	return v
}

func (s *Pages) torqueRow(f *model.Fastener) TorqueRow {
	r := TorqueRow{Name: f.Label(), Thread: page.Phrase(f.Thread, f.Class), Head: f.Drive}
	if !f.AcrossFlats.IsZero() {
		r.Head = s.Both(f.AcrossFlats)
	}
	most := 0
	for _, p := range f.Holds {
		n := page.FastenersAt(p, f)
		most = max(most, n)
		r.Where = append(r.Where, fmt.Sprintf("%d × %s", n, p.Label()))
	}
	for i, stage := range f.Stages {
		r.Torques = append(r.Torques, fmt.Sprintf("%d: %s", i+1, s.Both(stage)))
	}
	if len(f.Stages) == 0 && !f.Torque.IsZero() {
		r.Torques = []string{s.BothLimit(f.Torque)}
	}
	r.Notes = s.fastenerNotes(f)
	r.Order = page.SequenceDrawing(f.Sequence, most, s.InOrder(f))
	s.clamp(&r, f)
	return r
}

func (s *Pages) fastenerNotes(f *model.Fastener) []string {
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
func (s *Pages) clamp(r *TorqueRow, f *model.Fastener) {
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
		r.Clamp = []page.Computed{{Title: words.Fill(s.Words.ClampLoad, s.Both(load.Clamp)), Working: load.Explain(&s.Speaks.Worked.Bolt).With(s.Marker)}}
	}
}

// afterAngle says that the torque of a bolt with an angle stage tells nothing of
// its load; "" of others.
func (s *Pages) afterAngle(f *model.Fastener) string {
	if !slices.ContainsFunc(f.Stages, func(q quantity.Quantity) bool { return q.Unit.Dimension() == quantity.Angle }) {
		return ""
	}
	return s.Speaks.Worked.AfterAngle
}

// FluidCard is a machine's fluids on one printed side.
type FluidCard struct {
	page.Frame
	Machine page.Link
	Rows    []FluidRow
}

// FluidRow is one fluid of the card.
type FluidRow struct {
	Name     string
	Supply   page.Link
	Capacity string
	Lines    []string
	Bleed    bool
	Waste    string
	Label    *page.Chemical
}

// FluidCard makes the fluid card of a machine.
func (s *Pages) FluidCard(m *model.Machine) *FluidCard {
	v := &FluidCard{Frame: s.Frame(CardOf(m, "fluids"), fmt.Sprintf(s.Words.FluidCard, m.Label()))}
	v.Machine = s.Link(v.Up, m)
	for _, f := range m.Fluids {
		r := FluidRow{Name: f.Label(), Bleed: f.Bleed}
		r.Capacity = s.Capacity(f)
		if f.Supply.To != nil {
			r.Supply, r.Waste, r.Label = s.Link(v.Up, f.Supply.To), f.Supply.To.Waste, s.Chemical(f.Supply.To)
		}
		for _, l := range f.Lines {
			r.Lines = append(r.Lines, l.Label())
		}
		v.Rows = append(v.Rows, r)
	}
	return v
}
