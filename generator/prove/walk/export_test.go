package walk

import "baybinder/generator/model"

// Everything walks a manual and tells again what was told: the reference knows
// no "once as long as the thing stands as it does".
func Everything(m *model.Manual) *Result {
	s := newShared(m, Placed(m))
	s.tellAll = true
	return all(s)
}

// Rough says that something which a procedure performs is left in ways that
// depend on more outcomes of its own than its summary keeps.
func (r *Result) Rough(p *model.Procedure) bool {
	s := r.shared
	var below func(c called) bool
	below = func(c called) bool {
		for _, q := range s.calls(c) {
			if s.leavesRoughly(q) || below(q) {
				return true
			}
		}
		return false
	}
	return below(called{p, s.layouts[p.For.To]})
}

func (s *shared) leavesRoughly(c called) bool {
	w := newWalk(s, c.procedure, c.layout, true)
	defer w.Free()
	w.run()
	for _, x := range w.touched {
		if w.inner(w.state[x]) > fewInside || w.inner(w.foundOpen[x]) > fewInside || w.inner(w.waited[x]) > fewInside {
			return true
		}
	}
	return false
}
