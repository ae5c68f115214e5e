package procedure

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/language/words"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// footnotes gives every computed number of a procedure's page the place of its
// working at the page's foot. The same working stands there once.
func (v *Procedure) footnotes() {
	for i := range v.Before.Times {
		v.footnote(v.Before.Times[i].Computed)
	}
	for i := range v.Phases {
		for _, part := range v.Phases[i].Parts {
			if part.Step != nil {
				v.stepNotes(part.Step)
			}
		}
	}
}

func (v *Procedure) stepNotes(s *Step) {
	for i := range s.Holds {
		v.footnote(s.Holds[i].Computed)
	}
	v.footnote(s.Computed)
	for i := range s.Derived {
		v.footnote(s.Derived[i].Computed)
	}
	for i := range s.Subs {
		v.stepNotes(&s.Subs[i])
	}
}

func (v *Procedure) footnote(list []page.Computed) {
	for i := range list {
		c := &list[i]
		at := slices.IndexFunc(v.Workings, func(o page.Computed) bool { return o.Title == c.Title && o.Working.String() == c.Working.String() })
		if at < 0 {
			at = len(v.Workings)
			v.Workings = append(v.Workings, page.Computed{Title: c.Title, Working: c.Working, Anchor: fmt.Sprintf("working-%d", at+1)})
		}
		c.Anchor = v.Workings[at].Anchor
	}
}

// computedTimes are the workings of a plan's times: the sums of its phases.
func computedTimes(w *words.TimeLine, plan *schedule.Plan) []page.Computed {
	var bays, works []string
	for i := range plan.Phases {
		bays = append(bays, page.Duration(plan.Phases[i].Bay))
		works = append(works, page.Duration(plan.Phases[i].Work))
	}
	sum := func(title, formula, result string, parts []string) page.Computed {
		return page.Computed{Title: fmt.Sprintf(title, result), Working: working.Working{
			Formula: formula, Put: strings.Join(parts, " + "), Result: result, Source: w.SumSource,
		}}
	}
	return []page.Computed{
		sum(w.WorkWorked, w.WorkFormula, page.Duration(plan.Work), works),
		sum(w.BayWorked, w.BayFormula, page.Duration(plan.Bay), bays),
	}
}
