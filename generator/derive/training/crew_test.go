package training

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

// The expectations follow the format's "People and roles over time"; each names
// the sentence.

func idsOf(people []*model.Person) string {
	var out []string
	for _, p := range people {
		out = append(out, p.ID)
	}
	return strings.Join(out, " ")
}

// Who may do a job on a day: who holds each of its roles and until when, whose
// ran out, who has read it and all that it performs, who may teach it. Who left
// is nowhere ("they are in no list, hold nothing").
func TestCrew(t *testing.T) {
	const team = "person,name,roles,started,plans,left\nt-01,First,cleaner@2026-01-10,2026-01-01,start,\nt-02,Second,teacher@2026-01-05 cleaner@2025-01-10,2025-01-01,,\n" +
		"t-03,Third,cleaner@2026-01-10,2026-01-01,,2026-05-31\nt-04,Fourth,teacher@2026-07-01,2026-01-01,,\nt-05,Fifth,cleaner@2025-01-10 cleaner@2026-02-01,2025-01-01,,\n"
	const old = "2-0000000000000000"
	job := strings.Replace(wash, "title: Wash\n", "title: Wash\nneeds: [cleaner, teacher]\npeople: 2\n", 1)
	base := []string{"readings/people.csv", team, "procedures/wash.md", job, "readings/plans/before.yaml", "title: Of something else\nread: [alone]\n"}
	now := shop(base...)
	p, callee := print(now, "wash"), print(now, "sweep")
	rows := "2026-02-01,t-01,wash,read," + p + ",\n2026-02-01,t-01,sweep,read," + callee + ",\n2026-02-01,t-02,wash,read," + old + ",\n2026-02-01,t-05,wash,read," + p + ",\n2026-02-01,t-03,wash,read," + p + ",\n2026-02-01,t-03,sweep,read," + callee + ",\n"
	m := shop(append(base, "readings/record.csv", heads+rows, "revisions.csv", revs+"wash,1,2026-01-01,"+old+",why,a,b,,,reread\nwash,2,2026-01-20,"+p+",why,a,b,,,reread\n")...)
	h := NewStandings(m, on("2026-06-15"))
	c := h.Crew(procedure(m, "wash"))
	var roles []string
	for _, r := range c.Roles {
		line := r.Role.ID + ":"
		for _, x := range r.Holds {
			line += " " + x.Person.ID + " until " + x.Until.String()
		}
		for _, x := range r.RanOut {
			line += " " + x.Person.ID + " ran out " + x.Until.String()
		}
		roles = append(roles, line)
	}
	// A year from 10 January 2026 is 10 January 2027; the teacher's does not run out,
	// and the fourth is one from July on only.
	want := []string{"cleaner: t-01 until 2027-01-10 t-05 until 2027-02-01 t-02 ran out 2026-01-10", "teacher: t-02 until " + (model.Date{}).String()}
	if !slices.Equal(roles, want) {
		t.Errorf("the roles are %q, want %q", roles, want)
	}
	if c.People != 2 || idsOf(c.Readers) != "t-01" || idsOf(c.Stale) != "t-02" || len(c.Partly) != 1 || c.Partly[0].Person.ID != "t-05" || c.Partly[0].Lacks[0].ID != "sweep" {
		t.Errorf("%d people; read by %s, before it changed by %s, partly %v", c.People, idsOf(c.Readers), idsOf(c.Stale), c.Partly)
	}
	if idsOf(c.Teach) != "t-02" {
		t.Errorf("taught by %s", idsOf(c.Teach))
	}
	if got := idsOf(h.HaveRead(procedure(m, "wash"), "")); got != "t-01 t-02 t-05" {
		t.Errorf("in any revision read by %s", got)
	}
	if other := h.Crew(procedure(m, "alone")); len(other.Roles) != 0 || other.People != 1 || len(other.Readers) != 0 || idsOf(other.Teach) != "t-02" {
		t.Errorf("of what needs nobody %+v", other)
	}
}

// Who read a procedure in a language, however its tag is written, of who is
// still there; only what was read counts.
func TestHaveReadInALanguage(t *testing.T) {
	const team = "person,name,roles,started,plans,left\nt-01,First,,2026-01-01,,\nt-02,Second,,2026-01-01,,\nt-03,Third,,2026-01-01,,2026-02-28\nt-04,Fourth,,2026-01-01,,\n"
	const head = "date,person,procedure,act,fingerprint,by,on,language,score,note,after\n"
	f := print(shop(), "alone")
	rows := "2026-02-01,t-01,alone,read," + f + ",,,ES,,,\n2026-02-01,t-02,alone,read," + f + ",,,,,,\n2026-02-01,t-03,alone,read," + f + ",,,es,,,\n2026-02-01,t-04,alone,taught," + f + ",t-01,,es,,,\n"
	m := shop("shop.yaml", "title: Shop\nalso: [es]\n", "readings/people.csv", team, "readings/record.csv", head+rows)
	h := NewStandings(m, on("2026-03-01"))
	for language, want := range map[string]string{"es": "t-01", "": "t-01 t-02", "de": ""} {
		if got := idsOf(h.HaveRead(procedure(m, "alone"), language)); got != want {
			t.Errorf("in %q read by %q, want %q", language, got, want)
		}
	}
}

// Since when a procedure is out of use: "A retired procedure has a row too …; a
// later issue brings it back; without such a row it is retired since an unknown
// day."
func TestRetired(t *testing.T) {
	row := func(id, date, readers string) string {
		return id + ",1," + date + ",1-1111111111111111,why,a,b,,," + readers + "\n"
	}
	issued, gone := row("alone", "2026-01-05", "reread"), row("alone", "2026-03-01", "retired")
	for name, c := range map[string]struct {
		rows, status, day string
		gone              bool
		since             string
	}{
		"in use":                          {issued, "issued", "2026-06-01", false, ""},
		"on its day":                      {issued + gone, "retired", "2026-03-01", true, "2026-03-01"},
		"the day before":                  {issued + gone, "retired", "2026-02-28", false, ""},
		"brought back":                    {issued + gone + row("alone", "2026-04-01", "tell"), "issued", "2026-06-01", false, ""},
		"without a row":                   {issued, "retired", "2026-06-01", true, ""},
		"another's row":                   {issued + row("sweep", "2026-03-01", "retired"), "issued", "2026-06-01", false, ""},
		"another's row, and none of its":  {issued + row("sweep", "2026-07-01", "retired"), "retired", "2026-06-01", true, ""},
		"brought back, then without one":  {issued + gone + row("alone", "2026-04-01", "tell"), "retired", "2026-06-01", true, ""},
		"a later issue, and no row of it": {issued + row("alone", "2026-07-01", "tell"), "retired", "2026-06-01", true, ""},
	} {
		m := shop("procedures/alone.md", strings.Replace(alone, "title: Alone\n", "title: Alone\nstatus: "+c.status+"\n", 1), "revisions.csv", revs+c.rows)
		var since model.Date
		if c.since != "" {
			since = on(c.since)
		}
		if gone, day := NewStandings(m, on(c.day)).Retired(procedure(m, "alone")); gone != c.gone || day != since {
			t.Errorf("%s: %v since %s", name, gone, day)
		}
	}
}

// Those that perform a procedure themselves and are in use: no draft, nothing
// retired, not by way of another.
func TestCallers(t *testing.T) {
	with := func(head, id string) string {
		return "---\ntitle: T\n" + head + "---\n## Work\n\n1. [Do](do:" + id + ").\n"
	}
	m := shop("procedures/a.md", with("", "sweep"), "procedures/b.md", with("status: draft\n", "sweep"), "procedures/c.md", with("status: retired\n", "sweep"), "procedures/d.md", with("", "a"))
	var got []string
	for _, p := range NewStandings(m, on("2026-03-01")).Callers(procedure(m, "sweep")) {
		got = append(got, p.ID)
	}
	if strings.Join(got, " ") != "a wash" {
		t.Errorf("performed by %q", got)
	}
}

// "in rows from since on both are then people (an empty cell is missing-field, a
// name that people.csv has not unknown-person; one of the roles suffices), and
// someone who did not hold it on the row's day is not-authorised".
func TestWhoMayIssue(t *testing.T) {
	m := shop("readings/people.csv", three)
	role := func(id string) model.Ref[model.Role] {
		i := slices.IndexFunc(m.Roles, func(r *model.Role) bool { return r.ID == id })
		return model.Ref[model.Role]{ID: id, To: m.Roles[i]}
	}
	h := NewStandings(m, on("2026-12-31"))
	for name, c := range map[string]struct {
		who, day string
		roles    []model.Ref[model.Role]
		want     string
	}{
		"asked for nothing":        {"", "2026-02-01", nil, ""},
		"nobody":                   {"", "2026-02-01", []model.Ref[model.Role]{role("teacher")}, NobodyNamed},
		"not in the list":          {"t-09", "2026-02-01", []model.Ref[model.Role]{role("teacher")}, NotKnown},
		"holds it":                 {"t-02", "2026-02-01", []model.Ref[model.Role]{role("teacher")}, ""},
		"one of two":               {"t-02", "2026-02-01", []model.Ref[model.Role]{role("cleaner"), role("teacher")}, ""},
		"on its first day":         {"t-02", "2026-01-10", []model.Ref[model.Role]{role("teacher")}, ""},
		"the day before":           {"t-02", "2026-01-09", []model.Ref[model.Role]{role("teacher")}, NotAuthorised},
		"after having left":        {"t-02", "2026-07-01", []model.Ref[model.Role]{role("teacher")}, NotAuthorised},
		"holds none of them":       {"t-03", "2026-02-01", []model.Ref[model.Role]{role("teacher"), role("cleaner")}, NotAuthorised},
		"a role that is not there": {"t-02", "2026-02-01", []model.Ref[model.Role]{{ID: "boss"}}, NotAuthorised},
	} {
		if got := h.IssuerFault(c.who, c.roles, on(c.day)); got != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// What the files show of a procedure on a day: the revision that stood, what is
// left of its words, the next one, and each row with its state of that day.
func TestAccountOfADay(t *testing.T) {
	form := func(text string) (string, string) {
		m := shop("procedures/alone.md", text)
		f := fingerprint.NewCache().Form(procedure(m, "alone"))
		return f.Print(), fingerprint.Keep(text, f)
	}
	old := strings.Replace(alone, "Sit down", "Stand up", 1)
	was, wasKept := form(old)
	now, _ := form(alone)
	rows := "2026-01-20,t-01,alone,read," + was + ",\n2026-03-02,t-01,alone,read," + now + ",\n2026-02-10,t-01,alone,performed," + was + ",t-02\n2026-02-11,t-01,alone,performed," + was + ",\n" +
		"2026-02-12,t-01,alone,inspected,,t-01\n2026-02-13,t-01,alone,inspected,,t-02\n2026-02-14,t-01,alone,read,2-0000000000000000,\n2026-02-01,t-01,sweep,read,2-0000000000000000,\n"
	m := shop("readings/people.csv", early, "readings/plans/start.yaml", "title: Start\nread: [alone]\nperform: [alone: 2]\nassessor: teacher\n", "readings/record.csv", heads+rows,
		"revisions.csv", revs+"alone,1,2026-01-10,"+was+",why,a,b,,,reread\nalone,2,2026-03-01,"+now+",why,a,b,,,reread\nsweep,1,2026-02-01,2-0000000000000000,why,a,b,,,reread\n")
	m.Revisions[0].Kept = position.NewFile("revisions/alone/1.md", wasKept)
	a := NewStandings(m, on("2026-02-20")).Account(procedure(m, "alone"))
	if a.Stood == nil || a.Stood.Number != "1" || a.Since == nil || a.Since.Number != "2" || a.Words != AsIssued {
		t.Errorf("stood %v, since %v, %s", a.Stood, a.Since, a.Words)
	}
	var got []string
	for _, d := range a.Deeds {
		revision := "none"
		if d.Revision != nil {
			revision = d.Revision.Number
		}
		got = append(got, fmt.Sprint(d.Date, " ", d.Act, " ", revision, " ", d.State, " ", d.Why, d.Fault))
	}
	want := []string{
		"2026-01-20 read 1 " + string(Good) + " ",
		"2026-02-10 performed 1  ",
		"2026-02-11 performed 1  nobody is named who saw it",
		"2026-02-12 inspected 1  " + SamePerson,
		"2026-02-13 inspected 1  ",
		"2026-02-14 read none " + string(Stale) + " ",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	later := NewStandings(m, on("2026-03-05")).Account(procedure(m, "alone"))
	if later.Stood.Number != "2" || later.Since != nil || later.Words != NotKept || len(later.Deeds) != 7 || later.Deeds[0].State != Stale || later.Deeds[6].State != Good {
		t.Errorf("later %+v", later)
	}
	m.Revisions[0].Kept = position.NewFile("revisions/alone/1.md", strings.Replace(wasKept, "Stand up", "Lie down", 1))
	if got := WordsOf(&m.Revisions[0]); got != Altered {
		t.Errorf("words that were edited are %s", got)
	}
	if before := NewStandings(m, on("2026-01-01")).Account(procedure(m, "alone")); before.Stood != nil || before.Since.Number != "1" || len(before.Deeds) != 0 {
		t.Errorf("before the first issue %+v", before)
	}
}

// "Every readings record adds the rows that are missing of any person: the day
// the plan was finished, gained or renewed, by the last witness who counted":
// once, and not where a row of that day says so.
func TestRowsOfRolesThatAreMissing(t *testing.T) {
	f := print(shop(), "sweep")
	const short = "title: Start\nperform: [sweep]\nassessor: teacher\ngives: [cleaner]\n"
	done := func(day string) string { // what is to be performed is to be read too
		return day + ",t-01,sweep,read," + f + ",\n" + day + ",t-01,sweep,performed," + f + ",t-02\n"
	}
	for name, c := range map[string]struct{ rows, awards, want string }{
		"finished once":              {done("2026-02-01"), "", "2026-02-01 cleaner gained t-02 finished start"},
		"finished twice":             {done("2026-02-01") + done("2026-05-01"), "", "2026-02-01 cleaner gained t-02 finished start, 2026-05-01 cleaner renewed t-02 finished start"},
		"said already":               {done("2026-02-01"), "2026-02-01,t-01,cleaner,gained,t-02,finished start\n", ""},
		"of another day":             {done("2026-02-01"), "2026-01-15,t-01,cleaner,gained,t-02,hired\n", "2026-02-01 cleaner renewed t-02 finished start"},
		"of another role":            {done("2026-02-01"), "2026-02-01,t-01,teacher,gained,t-02,hired\n", "2026-02-01 cleaner gained t-02 finished start"},
		"withdrawn, then done again": {done("2026-02-01") + done("2026-05-01"), "2026-02-01,t-01,cleaner,gained,t-02,finished start\n2026-03-01,t-01,cleaner,withdrawn,t-02,why\n", "2026-05-01 cleaner gained t-02 finished start"},
		"withdrawn since":            {done("2026-02-01"), "2026-03-01,t-01,cleaner,withdrawn,t-02,why\n", ""},
		"withdrawn on that day":      {done("2026-02-01"), "2026-02-01,t-01,cleaner,withdrawn,t-02,why\n", ""},
		"to be withdrawn":            {done("2026-02-01"), "2026-07-01,t-01,cleaner,withdrawn,t-02,why\n", ""},
		"another role withdrawn":     {done("2026-02-01"), "2026-03-01,t-01,teacher,withdrawn,t-02,why\n", "2026-02-01 cleaner gained t-02 finished start"},
		"withdrawn before":           {done("2026-02-01"), "2026-01-15,t-01,cleaner,withdrawn,t-02,why\n", "2026-02-01 cleaner gained t-02 finished start"},
		"seen by nobody who counts":  {strings.ReplaceAll(done("2026-02-01"), "t-02", "t-01"), "", ""},
		"not there on that day":      {done("2025-12-31"), "", ""},
	} {
		m := shop("readings/people.csv", early, "readings/plans/start.yaml", short, "readings/record.csv", heads+c.rows, "readings/roles.csv", rolesHead+c.awards)
		h := NewStandings(m, on("2026-06-01"))
		h.gains()
		var got []string
		for _, row := range h.missing {
			got = append(got, fmt.Sprint(row["date"], " ", row["role"], " ", row["act"], " ", row["by"], " ", row["reason"]))
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// A review is due so long after the last revision, or after somebody was seen to
// work by it; on its last day it is not overdue. Drafts are not looked over.
func TestReviews(t *testing.T) {
	issued := revs + "alone,1,2026-01-05,2-1111111111111111,why,a,b,,,reread\nalone,2,2026-02-05,2-2222222222222222,why,a,b,,,none\nwash,1,2026-01-05,2-3333333333333333,why,a,b,,,reread\n"
	base := []string{"shop.yaml", "title: Shop\nreview-every: 6 months\n", "readings/people.csv", three, "revisions.csv", issued, "procedures/wash.md", strings.Replace(wash, "title: Wash\n", "title: Wash\nstatus: draft\n", 1)}
	for name, c := range map[string]struct{ row, day, want string }{
		"its last day":           {"", "2026-08-05", "alone 2026-08-05 due"},
		"the day after":          {"", "2026-08-06", "alone 2026-08-05 overdue"},
		"seen since":             {"2026-03-01,t-01,alone,inspected,,t-03\n", "2026-08-06", "alone 2026-09-01 due"},
		"seen before it changed": {"2026-01-20,t-01,alone,inspected,,t-03\n", "2026-08-06", "alone 2026-08-05 overdue"},
	} {
		m := shop(append(slices.Clone(base), "readings/record.csv", heads+c.row)...)
		var got []string
		for _, i := range NewStandings(m, on(c.day)).Reviews() {
			got = append(got, fmt.Sprint(i.What.Base().ID, " ", i.By, " ", i.State))
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// What there is to read: words, of empty links the names that they print, and
// pictures and tables, each at its own time (12 s and 20 s, our rule).
func TestMatter(t *testing.T) {
	text := "---\ntitle: A\ntools: [broom]\n---\nOne two.\n\n## Three four\n\nFive six seven.\n\nEight.\n\n1. Nine with the [](tool:broom).\n\n![A worn seat](../pictures/seat.png)\n\n| ten | eleven |\n|---|---|\n| twelve | thirteen |\n"
	m := shop("procedures/alone.md", text, "register/tools.yaml", "broom: { name: wide broom, kind: other }\n", "pictures/seat.png", "x")
	got := MatterOf(procedure(m, "alone"))
	// Nine to "Nine", "with the", the tool's two, the picture's three and the table's four.
	if got != (Matter{Words: 20, Pictures: 1, Tables: 1}) {
		t.Errorf("%+v", got)
	}
	if bare := MatterOf(procedure(shop("procedures/alone.md", "---\ntitle: A\n---\nOne two.\n\n## Three four\n\nFive six seven.\n\nEight.\n\n1. Nine.\n"), "alone")); bare != (Matter{Words: 9}) {
		t.Errorf("of nine words %+v", bare)
	}
	// 238 words are a minute, and 12 + 20 s are looked at.
	seen := "---\ntitle: A\n---\n" + strings.Repeat("word ", 231) + "\n\n## Work\n\n1. Nine.\n\n![Seat](../pictures/seat.png)\n\n| ten | eleven |\n|---|---|\n| twelve | thirteen |\n"
	if p := procedure(shop("procedures/alone.md", seen, "pictures/seat.png", "x"), "alone"); Seconds(p) != 60+32 {
		t.Errorf("%+v take %d s", MatterOf(p), Seconds(p))
	}
	for seconds, minutes := range map[int]int{0: 1, 29: 1, 89: 1, 90: 2, 150: 3, 600: 10} {
		if got := Minutes(seconds); got != minutes {
			t.Errorf("%d s are %d min, want %d", seconds, got, minutes)
		}
	}
	if plan, err := Named(m, "start"); err != nil || plan.ID != "start" {
		t.Errorf("the plan is %v, %v", plan, err)
	}
	if _, err := Named(m, "end"); err == nil || !strings.Contains(err.Error(), "end") {
		t.Errorf("a plan that is not there: %v", err)
	}
}
