package offers

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/lifting"
)

// hazardOf is the hazard of an energy that a step can meet: one that the
// procedure lists before another; nil where the register has none that says all.
func (d *drawing) hazardOf(e *model.Energy) *model.Hazard {
	var best *model.Hazard
	for _, h := range d.Manual().Hazards {
		if h.Of.ID != e.ID || h.Misread || h.Nature == "" || h.Consequence == "" || len(h.Avoid) == 0 {
			continue
		}
		if listed(d.p, "hazards", h.ID) {
			return h
		}
		if best == nil {
			best = h
		}
	}
	return best
}

// holdsOf are the holds of some kinds that are of an energy.
func (d *drawing) holdsOf(e *model.Energy, kinds ...string) []*model.Hold {
	var out []*model.Hold
	for _, h := range d.Manual().Holds {
		if h.Of.ID == e.ID && slices.Contains(kinds, h.Kind) && !h.Misread {
			out = append(out, h)
		}
	}
	return out
}

// heldBy names what undoes the fasteners of a part, and says in the detail what
// holds it.
func (d *drawing) heldBy(s *sentence, p *model.Part) {
	var tools []*model.Tool
	var details []string
	for _, h := range p.HeldBy {
		if h.To == nil {
			continue
		}
		n, err := strconv.Atoi(h.Amount)
		if err != nil {
			n = 1
		}
		detail := fmt.Sprintf("%d × %s", n, h.To.Label())
		if size := sizeWords(h.To); size != "" {
			detail += ", " + size
		}
		details = append(details, detail)
		if t := d.driver(h.To); t != nil && !slices.Contains(tools, t) {
			tools = append(tools, t)
		}
	}
	s.uses(tools...)
	s.detail = strings.Join(details, "; ")
}

func sizeWords(f *model.Fastener) string {
	if !f.AcrossFlats.IsZero() {
		return f.AcrossFlats.String()
	}
	return f.Drive
}

func torqueWords(f *model.Fastener) string {
	if len(f.Stages) == 0 {
		if f.Torque.IsZero() {
			return ""
		}
		return f.Torque.String()
	}
	var each []string
	for _, q := range f.Stages {
		each = append(each, q.String())
	}
	return strings.Join(each, ", ")
}

func (d *drawing) turnedWith(s *sentence, f *model.Fastener) {
	if t := d.driver(f); t != nil {
		s.uses(t)
	}
}

// driver is a tool that turns a fastener: a listed one before another, a socket
// before a spanner, a plain one before an adapter.
func (d *drawing) driver(f *model.Fastener) *model.Tool {
	heads := fastening.Heads(f.AcrossFlats, f.Drive)
	return d.best(func(t *model.Tool) int {
		i := slices.Index([]string{"socket", "spanner", "screwdriver"}, t.Kind)
		if i < 0 || !fastening.FitsAny(fastening.Sizes(t.Fits), heads) {
			return -1
		}
		if !t.Adds.IsZero() {
			i += 3
		}
		return i
	})
}

// best is the tool with the lowest mark, the listed ones first; -1 is none.
func (d *drawing) best(mark func(*model.Tool) int) *model.Tool {
	var best *model.Tool
	least := 0
	for _, t := range d.Manual().Tools {
		m := mark(t)
		if m < 0 || t.Misread {
			continue
		}
		if !listed(d.p, "tools", t.ID) {
			m += 10
		}
		if best == nil || m < least {
			best, least = t, m
		}
	}
	return best
}

// torquedWith names a wrench for each torque, and the gauge for an angle.
func (d *drawing) torquedWith(s *sentence, f *model.Fastener) {
	for _, q := range fastening.Torques(f) {
		var drivers []*model.Tool
		if t := d.driver(f); t != nil {
			drivers = []*model.Tool{t}
		}
		wrench := d.best(func(t *model.Tool) int {
			if t.Kind == "torque-wrench" && len(fastening.Ways(f, q, []*model.Tool{t}, drivers)) > 0 {
				return 0
			}
			return -1
		})
		if wrench != nil && !slices.Contains(s.needs, Need{model.LinkTool, model.Named(wrench)}) {
			s.uses(wrench)
		}
	}
}

// carries asks for people, or for lifting gear, where a part is heavy.
func (d *drawing) carries(s *sentence, p *model.Part) {
	limit := d.Manual().Shop.Limits.Lift.Base()
	if limit <= 0 || p.Mass.IsZero() {
		return
	}
	switch people := lifting.PeopleFor(p.Mass.Base(), limit); {
	case people < 2:
	case people == 2 || people <= d.p.People:
		s.beside = append(s.beside, fmt.Sprintf("[](people:%d)", people))
	default:
		gear := d.best(func(t *model.Tool) int { return slices.Index([]string{"lifting"}, t.Kind) })
		if gear != nil {
			s.need(model.LinkTool, gear)
			s.beside = append(s.beside, fmt.Sprintf(s.Carries, of(model.LinkTool, gear)))
		}
	}
	s.detail = strings.TrimPrefix(s.detail+"; "+p.Mass.String(), "; ")
}
