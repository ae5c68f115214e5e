package training

import (
	"strings"
	"testing"

	"baybinder/generator/model"
)

// The expectations follow the format's "People and roles over time"; each names
// the sentence.

// "inspected counts for no plan: person works by the procedure; by, someone else
// who holds at least one of the roles that it needs (else same-person,
// not-authorised, and it is none), inspects."
func TestWhoMayInspect(t *testing.T) {
	cases := map[string]struct{ text, date, by, want string }{
		"holds one of two":         {leadNeeds, "2026-02-01", "t-02", ""},
		"on the role's first day":  {leadNeeds, "2026-01-10", "t-02", ""},
		"before the role's day":    {leadNeeds, "2026-01-09", "t-02", NotAuthorised},
		"on the last day there":    {leadNeeds, "2026-06-30", "t-02", ""},
		"after having left":        {leadNeeds, "2026-07-01", "t-02", NotAuthorised},
		"holds none":               {leadNeeds, "2026-02-01", "t-03", NotAuthorised},
		"nobody that is known":     {leadNeeds, "2026-02-01", "t-09", NotAuthorised},
		"oneself":                  {leadNeeds, "2026-02-01", "t-01", SamePerson},
		"nothing needed, no role":  {alone, "2026-02-01", "t-03", ""},
		"nothing needed, but left": {alone, "2026-07-01", "t-02", NotAuthorised},
	}
	for name, c := range cases {
		m := shop("readings/people.csv", three, "procedures/alone.md", c.text)
		r := &model.Reading{
			Date: on(c.date), Act: "inspected", By: c.by,
			Person: model.Ref[model.Person]{ID: "t-01", To: m.People[0]}, Procedure: model.Ref[model.Procedure]{ID: "alone", To: procedure(m, "alone")},
		}
		if got := NewStandings(m, on("2026-12-31")).InspectionFault(r); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// "With inspect-every in shop.yaml, a procedure with lock: in its own steps that
// was not inspected for so long, counted from its last inspection, else from its
// first issue, is review-due." An inspection that is none does not count.
func TestByWhenIsInspected(t *testing.T) {
	const every = "title: Shop\ninspect-every: 12 months\n"
	issued := revs + "alone,1,2026-01-05,1-1111111111111111,why,a,b,,,reread\nalone,2,2026-02-05,1-2222222222222222,why,a,b,,,none\n"
	const good = "2026-03-01,t-01,alone,inspected,,t-02\n"
	cases := map[string]struct {
		shop, revs, rows string
		locks            bool
		want             string
		later            bool // a row counts only after the day that is asked of
	}{
		"first issue":                  {every, issued, "", true, "2027-01-05", false},
		"inspected":                    {every, issued, good, true, "2027-03-01", false},
		"twice, the later first":       {every, issued, "2026-04-01,t-01,alone,inspected,,t-02\n" + good, true, "2027-04-01", false},
		"by who may not":               {every, issued, "2026-03-01,t-01,alone,inspected,,t-03\n", true, "2027-01-05", false},
		"of a day that is yet to come": {every, issued, "2026-08-01,t-01,alone,inspected,,t-02\n", true, "2027-01-05", true},
		"read and not inspected":       {every, issued, "2026-03-01,t-01,alone,read,1-2222222222222222,t-02\n", true, "2027-01-05", false},
		"nothing locks":                {every, issued, good, false, "", false},
		"never issued":                 {every, revs, good, true, "", false},
		"the shop does not say":        {"title: Shop\n", issued, good, true, "", false},
	}
	lock, _ := model.KindNamed("lock")
	for name, c := range cases {
		m := shop("shop.yaml", c.shop, "readings/people.csv", three, "procedures/alone.md", leadNeeds, "revisions.csv", c.revs, "readings/record.csv", heads+c.rows)
		p := procedure(m, "alone")
		if c.locks {
			p.Steps[0].Links = append(p.Steps[0].Links, &model.Link{Kind: lock})
		}
		var got []string
		for _, i := range NewStandings(m, on("2026-06-01")).Inspections() {
			got = append(got, i.By.String())
			if i.State != Due || i.Person != nil || i.What != p {
				t.Errorf("%s: %+v", name, i)
			}
		}
		if c.want != "" {
			until, late := on(c.want), model.DateOf(on(c.want).Time().AddDate(0, 0, 1))
			for day, want := range map[model.Date]State{until: Due, late: Overdue} {
				if c.later {
					continue // by then it counts
				}
				if all := NewStandings(m, day).Inspections(); len(all) != 1 || all[0].State != want {
					t.Errorf("%s: on %s %+v, want it %s", name, day, all, want)
				}
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: by %v, want %s", name, got, c.want)
		}
	}
}
