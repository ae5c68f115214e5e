package page

import (
	"sort"

	"baybinder/generator/model"
	"baybinder/generator/trade/faultcode"
)

// faultRow is a fault code where a step names it.
type faultRow struct {
	Code faultcode.Code
	Step *model.Step
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
	sort.SliceStable(out, func(i, j int) bool { return out[i].Code.Text < out[j].Code.Text })
	return out
}
