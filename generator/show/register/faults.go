package register

import (
	"slices"
	"strings"

	"baybinder/generator/show/page"
)

// FaultCodes makes the index of the fault codes that steps name, by system, as
// the structure of the code gives it (SAE J2012, ISO 15031-6); nil where there
// are none.
func (s *Pages) FaultCodes() *Index {
	if !s.Coded {
		return nil
	}
	type named struct {
		*page.Row
		page.RowCode
	}
	var rows []named
	for i := range s.Rows {
		for _, code := range s.Rows[i].Codes {
			rows = append(rows, named{&s.Rows[i], code})
		}
	}
	slices.SortStableFunc(rows, func(a, b named) int { return strings.Compare(a.Code.Text, b.Code.Text) })
	v := &Index{Frame: s.Frame("codes.html", s.Words.FaultCodes), Name: s.Words.FaultCodes}
	var g grouping
	for _, r := range rows {
		address := r.Sheet.At(v.Up).Address + "#" + r.Step.Anchor
		note := page.Phrase(r.Code.Class.String(), r.Code.Area, r.Of+", "+s.Words.Step+" "+r.Step.Number)
		g.add(page.Titled(r.Code.System.String()), Row{Link: page.Link{Name: r.Code.Text, Address: address, Note: note}, Count: 1})
	}
	v.Groups = g.groups()
	return v
}
