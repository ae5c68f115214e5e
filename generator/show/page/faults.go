package page

import (
	"sort"

	"baybinder/generator/model"
	"baybinder/generator/trade/faultcode"
)

// faultRow is a fault code where a step names it.
type faultRow struct {
	code faultcode.Code
	step *model.Step
}

// faultRows are the fault codes of the published steps, by code.
func (s *Site) faultRows() []faultRow {
	var out []faultRow
	for _, p := range s.Shown {
		for _, st := range p.Steps {
			for i := range st.Blocks {
				for _, f := range faultcode.Find(st.Blocks[i].Plain) {
					if f.Err == nil {
						out = append(out, faultRow{f.Code, st})
					}
				}
			}
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].code.Text < out[j].code.Text })
	return out
}

// FaultCodes makes the index of the fault codes that steps name, by system, as
// the structure of the code gives it (SAE J2012, ISO 15031-6); nil where there
// are none.
func (s *Site) FaultCodes() *Index {
	rows := s.faults
	if len(rows) == 0 {
		return nil
	}
	v := &Index{Frame: s.Frame("codes.html", s.Words.FaultCodes), Name: s.Words.FaultCodes}
	var g grouping
	for _, r := range rows {
		address := s.Address(v.Up, r.step.Of) + "#" + Anchor(r.step)
		note := phrase(r.code.Class.String(), r.code.Area, r.step.Of.Label()+", "+s.Words.Step+" "+r.step.Number)
		g.add(titled(r.code.System.String()), Row{Link: Link{Name: r.code.Text, Address: address, Note: note}, Count: 1})
	}
	v.Groups = g.groups()
	return v
}
