package model

import "slices"

// Supplies are what a link uses up or lets out: the supply that it names, or
// that is in the circuit which it fills, drains, bleeds or opens. What could
// not be read is left out.
func (l *Link) Supplies() []*Supply {
	if l.Bad {
		return nil
	}
	if s, is := l.To.(*Supply); is {
		return read(s)
	}
	if !l.Kind.Spills {
		return nil
	}
	switch to := l.To.(type) {
	case *Fluid:
		return inCircuit(to)
	case *Part:
		return carried(to)
	}
	return nil
}

// carried is what a line is full of.
func carried(p *Part) []*Supply {
	if p.Carries.To == nil {
		return nil
	}
	return inCircuit(p.Carries.To)
}

func inCircuit(f *Fluid) []*Supply {
	return read(f.Supply.To)
}

func read(s *Supply) []*Supply {
	if s == nil {
		return nil
	}
	return []*Supply{s}
}

// SuppliedHazards are the hazards that come with what links use, each once.
func SuppliedHazards(links []*Link) []*Hazard {
	var out []*Hazard
	for _, l := range links {
		for _, s := range l.Supplies() {
			for _, h := range s.Hazards {
				if h.To != nil && !slices.Contains(out, h.To) {
					out = append(out, h.To)
				}
			}
		}
	}
	return out
}
