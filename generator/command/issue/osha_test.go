package issue

import (
	"strings"
	"testing"

	"baybinder/generator/derive/training"
)

// Known: FROM MEMORY.

// press is a shop with one energy-control procedure, issued, whose inspections
// are asked for every 12 months.
func press(t *testing.T) *binder {
	t.Helper()
	b := &binder{t, folder(t)}
	put(t, b.root, "shop.yaml", "title: Shop\ninspect-every: 12 months\n")
	put(t, b.root, "register/tools.yaml", "padlock: { name: padlock, kind: lock }\n")
	put(t, b.root, "register/roles.yaml", "fitter: { name: Fitter, renew-every: 36 months }\ntrainer: { name: Trainer }\n")
	put(t, b.root, "machines/press.yaml", "name: Press\npoints: { valve: { name: valve, lock: yes } }\nenergies: { oil: { name: oil, kind: pressure, points: [valve] } }\n")
	put(t, b.root, "procedures/lid.md", "---\ntitle: Lock the press\nfor: press\nneeds: [fitter]\n---\n## Work\n\n1. [Close the valve](isolate:oil), [lock it](lock:oil).\n2. [Take the lock off](unlock:oil), [open it](restore:oil).\n")
	put(t, b.root, "readings/people.csv", "person,name,roles,started,plans\nt-01,First,,2026-01-05,start\nt-02,Second,fitter@2026-01-05 trainer,2026-01-05,\nt-03,Third,,2026-01-05,\n")
	put(t, b.root, "readings/plans/start.yaml", "title: Start\nread: [lid]\nperform: [lid]\ngives: [fitter]\nassessor: trainer\nwithin: 14 days\n")
	issued(t, b.root, "2026-01-06")
	return b
}

func (b *binder) did(day, person, act, by, on, note string) error {
	_, err := training.RecordAll(b.manual(), b.root, []training.Entry{{Folder: b.root, Person: person, Procedure: "lid", Act: act, By: by, On: on, Note: note, Date: date(b.t, day)}})
	return err
}

// due is by when working by the procedure is to be inspected.
func (b *binder) due(day string) string {
	m := b.manual()
	by, _, _ := training.NewStandings(m, date(b.t, day)).InspectBy(m.Procedures[0])
	return by.String()
}

func (b *binder) holds(person, day string) bool {
	m := b.manual()
	for _, p := range m.People {
		if p.ID == person {
			return training.NewStandings(m, date(b.t, day)).HoldsRole(p, "fitter", date(b.t, day))
		}
	}
	return false
}

// inspections are 29 CFR 1910.147(c)(6) and (c)(7), paragraph by paragraph, from
// memory; and ISO 9001:2015, 7.2, of what people can do, as public summaries have
// it. Both ask an employer; what is shown is what the program does of it.
var inspections = []struct {
	paragraph, asks string
	shows           func(b *binder) bool
}{
	{"(c)(6)(i)", "an inspection of the procedure at least annually", func(b *binder) bool {
		return b.due("2026-02-01") == "2027-01-06" && !has(b.found("2027-01-06"), "review-due") && has(b.found("2027-01-07"), "review-due")
	}},
	{"(c)(6)(i), done", "once it is inspected, the year begins anew, and nothing is issued for it", func(b *binder) bool {
		return b.did("2026-06-01", "t-03", "inspected", "t-02", "press 1", "nothing to change") == nil && b.due("2026-06-01") == "2027-06-01" &&
			strings.Count(b.text("revisions.csv"), "\n") == 2
	}},
	{"(c)(6)(i)(A)", "by an authorized employee other than the ones utilizing the procedure", func(b *binder) bool {
		own := b.did("2026-06-01", "t-02", "inspected", "t-02", "press 1", "")
		unfit := b.did("2026-06-01", "t-01", "inspected", "t-03", "press 1", "")
		refused := own != nil && unfit != nil && b.due("2026-06-01") == "2027-01-06" && !has(b.found("2026-06-01"), "not-authorised")
		put(b.t, b.root, "readings/record.csv", "date,person,procedure,act,fingerprint,by\n2026-06-01,t-01,lid,inspected,,t-03\n") // by hand
		return refused && b.due("2026-06-01") == "2027-01-06" && has(b.found("2026-06-01"), "not-authorised")
	}},
	{"(c)(6)(ii)", "certified: the machine, the date, the employees included, the person performing it", func(b *binder) bool {
		err := b.did("2026-06-01", "t-03", "inspected", "t-02", "press 1", "the tag was missing")
		for _, d := range b.account("2026-06-02").Deeds {
			if d.Act == "inspected" {
				return err == nil && d.On == "press 1" && d.Date.String() == "2026-06-01" && d.Person.ID == "t-03" && d.By == "t-02" && d.Note == "the tag was missing"
			}
		}
		return false
	}},
	{"(c)(7)(i)", "each authorized employee is trained before the role is held", func(b *binder) bool {
		before := b.holds("t-01", "2026-01-20")
		return b.did("2026-01-19", "t-01", "read", "", "", "") == nil && b.did("2026-01-20", "t-01", "performed", "t-02", "press 1", "") == nil && !before && b.holds("t-01", "2026-01-20") && !b.holds("t-01", "2026-01-19")
	}},
	{"(c)(7)(iii)(A)", "retraining where the procedure changes", func(b *binder) bool {
		if err := b.did("2026-01-19", "t-01", "read", "", "", ""); err != nil {
			return false
		}
		put(b.t, b.root, "procedures/lid.md", strings.Replace(b.text("procedures/lid.md"), "lock it", "lock and tag it", 1))
		issued(b.t, b.root, "2026-03-02")
		return has(b.found("2026-03-03"), "reading-stale")
	}},
	{"(c)(7)(iii)(B)", "retraining where an inspection shows the need, with its reason; until then the role is withdrawn", func(b *binder) bool {
		ok := b.did("2026-01-19", "t-01", "read", "", "", "") == nil && b.did("2026-01-20", "t-01", "performed", "t-02", "press 1", "") == nil
		put(b.t, b.root, "readings/roles.csv", b.text("readings/roles.csv")+"2026-06-01,t-01,fitter,withdrawn,t-02,No tag at the inspection.\n")
		gone := !b.holds("t-01", "2026-06-02")
		ok = ok && b.did("2026-06-03", "t-01", "read", "", "", "after the inspection of 2026-06-01") == nil && b.did("2026-06-03", "t-01", "performed", "t-02", "press 1", "") == nil
		return ok && gone && b.holds("t-01", "2026-06-03") && strings.Contains(b.text("readings/record.csv"), "after the inspection of 2026-06-01")
	}},
	{"(c)(7)(iv)", "certified that training was done and is up to date: each name and the dates", func(b *binder) bool {
		ok := b.did("2026-01-19", "t-01", "read", "", "", "") == nil
		m := b.manual()
		a := training.NewStandings(m, date(b.t, "2026-01-31")).PersonAccount(m.People[0])
		return ok && len(a.Deeds) == 1 && a.Deeds[0].Date.String() == "2026-01-19" && a.Deeds[0].State == training.Good
	}},
	{"ISO 9001 7.2 a", "the competence that a job needs is determined", func(b *binder) bool {
		m := b.manual()
		c := training.NewStandings(m, date(b.t, "2026-01-31")).Crew(m.Procedures[0])
		return len(c.Roles) == 1 && c.Roles[0].Role.ID == "fitter" && len(c.Roles[0].Holds) == 1
	}},
	{"ISO 9001 7.2 b", "people are competent on the basis of training: a job by others is marked", func(b *binder) bool {
		put(b.t, b.root, "records/a.json", `{ "record": 1, "shop": "Shop", "procedure": "lid", "title": "Lock the press", "revision": "1",
"unit": { "serial": "", "options": [] }, "worker": "Third", "started": "2026-02-02T08:00:00Z", "saved": "2026-02-02T09:00:00Z",
"steps": [], "holds": [], "gaps": [], "notes": [], "clock": [] }`)
		return has(b.found("2026-02-03"), "not-qualified")
	}},
	{"ISO 9001 7.2 c", "actions are taken, and their effect is looked at: what is due, and the score of an exercise", func(b *binder) bool {
		m := b.manual()
		items := training.NewStandings(m, date(b.t, "2026-01-31")).Items()
		_, err := training.RecordAll(m, b.root, []training.Entry{{Folder: b.root, Person: "t-01", Procedure: "lid", Act: "taught", Score: "9 of 10", Date: date(b.t, "2026-01-31")}})
		return len(items) == 2 && items[0].State == training.Overdue && err == nil && strings.Contains(b.text("readings/record.csv"), ",9 of 10,")
	}},
	{"ISO 9001 7.2 d", "documented information is kept as evidence: what was held stays held when plan and people change", func(b *binder) bool {
		ok := b.did("2026-01-19", "t-01", "read", "", "", "") == nil && b.did("2026-01-20", "t-01", "performed", "t-02", "press 1", "") == nil
		put(b.t, b.root, "readings/plans/start.yaml", "title: Start\nread: [lid]\nperform: [lid: 9]\nwithin: 14 days\n")
		put(b.t, b.root, "readings/people.csv", strings.Replace(b.text("readings/people.csv"), "fitter@2026-01-05 trainer", "", 1))
		return ok && b.holds("t-01", "2026-01-21")
	}},
}

func TestInspectionTrainingAndCompetence(t *testing.T) {
	for _, point := range inspections {
		t.Run(point.paragraph, func(t *testing.T) {
			b := press(t)
			if codes := b.found("2026-01-06"); has(codes, "syntax") || has(codes, "wrong-type") || has(codes, "unknown-reference") {
				t.Fatalf("the manual has findings before anything was done: %v", codes)
			}
			if !point.shows(b) {
				t.Errorf("not shown: %s", point.asks)
			}
		})
	}
}
