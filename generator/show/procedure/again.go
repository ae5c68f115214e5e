package procedure

import "baybinder/generator/show/page"

// told marks the messages of a phase that were whole before in it: they are
// said again in one line (grouped messages of ANSI Z535.6, from memory). Only
// what every unit passes counts as said before: a box of a conditional step may
// be out of sight.
type told map[string]bool // by the hazard's address

func (p *Phase) tell() {
	t := told{}
	t.boxes(p.Boxes, true)
	for _, part := range p.Parts {
		if part.Step != nil {
			t.step(part.Step, true)
		}
	}
}

func (t told) step(st *Step, sure bool) {
	sure = sure && st.Terms == (Terms{}) && !st.Optional
	t.boxes(st.Boxes, sure)
	for i := range st.Derived {
		d := &st.Derived[i]
		t.boxes(d.Boxes, sure && d.Terms == (Terms{}))
	}
	for i := range st.Subs {
		t.step(&st.Subs[i], sure)
	}
}

func (t told) boxes(list []page.Box, sure bool) {
	for i := range list {
		b := &list[i]
		b.Met = true
		for j := range b.Messages {
			m := &b.Messages[j]
			m.Told = t[m.Address]
			b.Met = b.Met && m.Told
		}
	}
	for _, b := range list {
		for _, m := range b.Messages {
			if sure {
				t[m.Address] = true
			}
		}
	}
}
