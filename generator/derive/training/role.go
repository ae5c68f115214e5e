package training

import (
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// Within is how long a plan gives; false where it does not say, or not so that it
// can be read.
func Within(plan *model.Plan) (quantity.Span, bool) {
	q, err := quantity.Parse(plan.Within, quantity.Calendar)
	if err != nil {
		return quantity.Span{}, false
	}
	return q.Span()
}

// Until is the last day on which a role that was gained is held. One without a
// day, or that needs no renewal, does not run out.
func Until(g *model.Gained) (model.Date, bool) {
	if g.On.IsZero() || g.To == nil {
		return model.Date{}, false
	}
	span, ok := g.To.RenewEvery.Span()
	if !ok {
		return model.Date{}, false
	}
	return model.DateOf(span.AddTo(g.On.Time())), true
}

// holds says whether one of the roles is held on a day. One that stands twice,
// as after a renewal, is held by either.
func holds(roles []model.Gained, role string, on model.Date) bool {
	for i := range roles {
		g := &roles[i]
		if g.ID != role || on.Before(g.On) || on.Before(g.From) || !g.Ended.IsZero() && !on.Before(g.Ended) {
			continue
		}
		if until, runs := Until(g); !runs || !until.Before(on) {
			return true
		}
	}
	return false
}
