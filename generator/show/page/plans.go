package page

import (
	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
)

// planBook is what plans have read, in order, and which plans have a procedure
// read. Drafts and retired procedures are asked of nobody.
type planBook struct {
	orders map[*model.Plan][]training.Reading
	with   map[*model.Procedure][]*model.Plan
}

func (s *Site) planBook() planBook {
	b := planBook{orders: map[*model.Plan][]training.Reading{}, with: map[*model.Procedure][]*model.Plan{}}
	for _, plan := range s.Manual.Plans {
		for _, r := range training.Order(plan) {
			if r.Procedure.Issued() {
				b.orders[plan] = append(b.orders[plan], r)
				b.with[r.Procedure] = append(b.with[r.Procedure], plan)
			}
		}
	}
	return b
}

// Training are the words of the pages about reading.
func (s *Site) Training() *words.Readings { return &s.Speaks.Readings }

// PlanLinks are links to the pages of all plans.
func (s *Site) PlanLinks(up string) []Link {
	var out []Link
	for _, plan := range s.Manual.Plans {
		out = append(out, s.Link(up, plan))
	}
	return out
}

// PlansWith are links to the plans that have a procedure read.
func (s *Site) PlansWith(up string, p *model.Procedure) []Link {
	var out []Link
	for _, plan := range s.plans.with[p] {
		out = append(out, s.Link(up, plan))
	}
	return out
}

// ReadingOrder is what a plan has read, in order.
func (s *Site) ReadingOrder(plan *model.Plan) []training.Reading { return s.plans.orders[plan] }
