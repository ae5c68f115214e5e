package issue

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Run issues what an order names of a checked manual, as the command does whose
// questions are answered.
func Run(m *model.Manual, found []finding.Finding, o Order) ([]*Issued, error) {
	list, err := Prepare(m, found, o)
	if err != nil {
		return nil, err
	}
	if err := Settle(list, o.Readers); err != nil {
		return nil, err
	}
	return list, Write(list, o)
}
