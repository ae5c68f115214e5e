package page

import (
	"fmt"
	"slices"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/trade/electrical"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/lifting"
	"baybinder/generator/trade/pressure"
	"baybinder/generator/trade/working"
)

// Computed is a computed result in words, which opens to its working.
type Computed struct {
	Title   string
	Working working.Working
	Anchor  string // of its working at the page's foot; "" where that stands beside it
}

// LeastWait is the computed minimum of a wait for an electric energy that
// stores a charge, on the procedure's machine.
func (s *Site) LeastWait(m *model.Machine, h *model.Hold) (least string, w working.Working) {
	e, ok := m.Find(h.Of.ID).(*model.Energy)
	if h.Kind != "wait" || !ok {
		return "", working.Working{}
	}
	return s.discharge(e)
}

// discharge is the computed minimum of the wait for an energy's charge.
func (s *Site) discharge(e *model.Energy) (least string, w working.Working) {
	if e.Kind != "electric" {
		return "", working.Working{}
	}
	store := electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
	wait, ok := store.WaitFor(s.Manual.Shop.Limits.SafeVoltageDC)
	if !ok {
		return "", working.Working{}
	}
	return wait.Least.String(), wait.Explain(&s.Speaks.Worked.Discharge).With(s.Marker)
}

// ComputedEnergy is what can be worked out of an energy: the wait for its
// charge, what its gas lets out.
func (s *Site) ComputedEnergy(e *model.Energy) []Computed {
	if least, w := s.discharge(e); least != "" {
		return []Computed{{Title: words.Fill(s.Words.Computed, least), Working: w}}
	}
	return s.release(e)
}

// release is what comes out when the gas of an energy is let down.
func (s *Site) release(e *model.Energy) []Computed {
	if e.Kind != "pressure" {
		return nil
	}
	r, ok := pressure.Store{Volume: e.Stored.GasVolume, Pressure: e.Pressure, Precharge: e.Stored.Precharge}.Release()
	if !ok {
		return nil
	}
	text := s.Speaks.Worked.GasOut
	if r.Fluid {
		text = s.Speaks.Worked.FluidOut
	}
	return []Computed{{Title: fmt.Sprintf(text, e.Label(), s.Both(r.Out)), Working: r.Explain(&s.Speaks.Worked.Gas).With(s.Marker)}}
}

// ComputedLift is the lifting index of a part for so many people.
func (s *Site) ComputedLift(p *model.Part, people int) []Computed {
	a, ok := lifting.OfPart(p, people)
	if !ok {
		return nil
	}
	w, mass, limit, index := &s.Speaks.Worked, s.Both(p.Mass), s.Both(a.Limit), s.Marker.Write(a.IndexText())
	title := fmt.Sprintf(w.LiftAlone, index, p.Label(), mass, limit)
	if people > 1 {
		title = fmt.Sprintf(w.LiftTogether, index, p.Label(), mass, people, limit)
	}
	return []Computed{{Title: title, Working: a.Explain(&w.Lift).With(s.Marker)}}
}

// Computed is what can be worked out of a step: the settings of a wrench with
// an adapter, lifts by hand, and what is let out.
func (s *Site) Computed(st *model.Step, again map[*model.Link]bool) []Computed {
	var out []Computed
	for _, l := range st.Links {
		switch to := l.To.(type) {
		case *model.Fastener:
			if l.Kind.Act == model.Tighten {
				out = append(out, s.settings(fastening.Asked(to, again[l]), st, st.Links)...)
			}
		case *model.Part:
			if l.Kind.MovesPart() {
				out = append(out, s.lift(to, st, st.Links)...)
			}
		case *model.Energy:
			if l.Kind.Act == model.Release {
				out = append(out, s.release(to)...)
			}
		}
	}
	return out
}

// ComputedBack is what can be worked out of a derived step, with the tools of
// the step that it takes back and of the one that says so.
func (s *Site) ComputedBack(d *walk.Derived, by *model.Step) []Computed {
	links := slices.Concat(d.From.Links, by.Links)
	var out []Computed
	if part, is := d.Thing.(*model.Part); is && d.Verb == model.Refit {
		out = s.lift(part, d.From, links)
	}
	for _, f := range d.Fasteners {
		if !d.Begun {
			out = append(out, s.settings(f.Fastener, by, links)...)
		}
	}
	return out
}

// lift is the lifting index of a part for the people of a step, where no
// lifting gear is among the tools.
func (s *Site) lift(p *model.Part, st *model.Step, tools []*model.Link) []Computed {
	people, known := st.Crew()
	geared := slices.ContainsFunc(tools, func(l *model.Link) bool {
		t, is := l.To.(*model.Tool)
		return is && t.Kind == "lifting"
	})
	if !known || geared {
		return nil
	}
	return s.ComputedLift(p, people)
}

// settings are what a wrench is set to for a fastener behind an adapter: for each
// torque, or each torque stage, one for each wrench that covers it as set.
func (s *Site) settings(f *model.Fastener, st *model.Step, links []*model.Link) []Computed {
	at := fastening.AtHand{Named: toolsIn(links)}
	for _, use := range st.Of.Tools {
		if use.To != nil {
			at.Listed = append(at.Listed, use.To)
		}
	}
	wrenches, drivers := at.Wrenches(), at.Drivers()
	var out []Computed
	for _, torque := range fastening.Torques(f) {
		for _, way := range fastening.Ways(f, torque, wrenches, drivers) {
			if w := way.Explain(&s.Speaks.Worked.Adapter).With(s.Marker); w.Known() {
				out = append(out, Computed{Title: fmt.Sprintf(s.Speaks.Worked.Setting,
					f.Label(), s.Both(torque), way.Adapter.Label(), way.Wrench.Label(), s.Both(way.Set)), Working: w})
			}
		}
	}
	return out
}

// toolsIn are the tools that links name.
func toolsIn(links []*model.Link) []*model.Tool {
	var out []*model.Tool
	for _, l := range links {
		if t, is := l.To.(*model.Tool); is && !slices.Contains(out, t) {
			out = append(out, t)
		}
	}
	return out
}
