package page

import (
	"fmt"

	"baybinder/generator/model"
	"baybinder/generator/trade/chemical"
	"baybinder/theme/signs"
)

// Chemical is what a supply's label says: a scale of its own, which is not that
// of the caution boxes.
type Chemical struct {
	Word        string // Danger or Warning, as the label writes it
	Signs       []HTML
	Statements  []string // "H304: may be fatal if swallowed and enters airways"
	Unsaid      []string // of which statements the category is not known
	Precautions []string
	Computed    []Computed // how word and pictograms came about
}

// Chemical works out a supply's label from its hazard statements; nil where it
// has none, or one that is unknown, which is a finding.
func (s *Site) Chemical(u *model.Supply) *Chemical {
	if len(u.GHS) == 0 {
		return nil
	}
	label, err := chemical.LabelOf(u.GHS)
	if err != nil {
		return nil
	}
	say := &s.Speaks.Worked.Chemical
	v := &Chemical{Word: label.Word.In(say)}
	for _, sign := range label.Signs {
		if drawn, ok := signs.Find(sign.String()); ok {
			v.Signs = append(v.Signs, HTML(drawn.Inline("sign", say.Signs[sign.String()])))
		}
	}
	for _, st := range label.Statements {
		v.Statements = append(v.Statements, fmt.Sprintf("%s: %s", st.Code, st.In(say)))
	}
	v.Unsaid = label.Unsaid(say)
	for _, p := range label.Precautions() {
		v.Precautions = append(v.Precautions, p.In(say))
	}
	v.Computed = []Computed{{Title: s.Speaks.Worked.Label, Working: label.Explain(say)}}
	return v
}
