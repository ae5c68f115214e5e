package register

import "baybinder/generator/show/page"

// FaultCodes makes the index of the fault codes that steps name, by system, as
// the structure of the code gives it (SAE J2012, ISO 15031-6); nil where there
// are none.
func (s *Pages) FaultCodes() *Index {
	rows := s.Faults
	if len(rows) == 0 {
		return nil
	}
	v := &Index{Frame: s.Frame("codes.html", s.Words.FaultCodes), Name: s.Words.FaultCodes}
	var g grouping
	for _, r := range rows {
		address := s.Address(v.Up, r.Step.Of) + "#" + page.Anchor(r.Step)
		note := page.Phrase(r.Code.Class.String(), r.Code.Area, r.Step.Of.Label()+", "+s.Words.Step+" "+r.Step.Number)
		g.add(page.Titled(r.Code.System.String()), Row{Link: page.Link{Name: r.Code.Text, Address: address, Note: note}, Count: 1})
	}
	v.Groups = g.groups()
	return v
}
