package training

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"baybinder/generator/language"
	"baybinder/generator/model"
)

// Known: SEEN. The expectations follow the format's "People and roles over time";
// each names the sentence.

const (
	leadNeeds = "---\ntitle: Alone\nneeds: [teacher, cleaner]\n---\n## Work\n\n1. Sit down.\n"
	rolesHead = "date,person,role,act,by,reason\n"
	three     = "person,name,roles,started,plans,left\nt-01,First,,2026-01-01,start,\nt-02,Second,teacher@2026-01-10,2026-01-01,,2026-06-30\n" +
		"t-03,Third,,2026-01-01,,\n"
)

func procedure(m *model.Manual, id string) *model.Procedure {
	return m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == id })]
}

// A job of two people: "A job's worker is looked up by id or name, in any case;
// one not known is told as unknown, never as unqualified."
func TestHowThoseWhoDidAJobStood(t *testing.T) {
	text := revs + "alone,1,2026-01-05,%s,why,a,b,,,reread\n"
	read := "2026-01-20,t-02,alone,read,%s,\n"
	day := func(s string) time.Time { return on(s).Time().Add(9 * time.Hour) }
	for name, c := range map[string]struct {
		worker, day, signed string
		rows                bool
		want                []string // what the marks hold, in order
	}{
		"fit, and known by name in any case": {"SECOND", "2026-02-01", "second", true, nil},
		"not read":                           {"t-02", "2026-02-01", "", false, []string{"Alone"}},
		"not yet read on the day":            {"t-02", "2026-01-19", "", true, []string{"Alone"}},
		"read on the day":                    {"t-02", "2026-01-20", "", true, nil},
		"one of two lacks the reading":       {"t-02, t-03", "2026-02-01", "", true, []string{"Third"}},
		"holds no role that it needs":        {"t-03", "2026-02-01", "", true, []string{"Third", "Teacher"}},
		"one of them is not known":           {"t-03, somebody", "2026-02-01", "", true, []string{"Third"}},
		"not known":                          {"somebody", "2026-02-01", "somebody", false, nil},
		"gone, and so holds nothing":         {"t-02", "2026-07-01", "", true, []string{"Second", "Teacher"}},
		"signed by who lacks the role":       {"t-02", "2026-02-01", "t-03", true, []string{"Third"}},
		"signed by nobody":                   {"t-02", "2026-02-01", " ", true, nil},
		"before anything was issued":         {"t-02", "2026-01-04", "", false, []string{"Teacher"}},
	} {
		needs := strings.Replace(leadNeeds, ", cleaner", "", 1)
		now := print(shop("readings/people.csv", three, "procedures/alone.md", needs), "alone")
		rows := ""
		if c.rows {
			rows = fmt.Sprintf(read, now)
		}
		m := shop("readings/people.csv", three, "procedures/alone.md", needs, "revisions.csv", fmt.Sprintf(text, now), "readings/record.csv", heads+rows)
		j := &model.Job{Procedure: "alone", To: procedure(m, "alone"), Worker: c.worker, Started: day(c.day), Saved: day(c.day)}
		m.Holds = append(m.Holds, &model.Hold{Common: model.Common{Entry: model.Entry{ID: "look"}}, By: model.Ref[model.Role]{ID: "teacher", To: m.Roles[slices.IndexFunc(m.Roles, func(r *model.Role) bool { return r.ID == "teacher" })]}})
		if c.signed != "" {
			j.Holds = []model.JobHold{{Hold: "look", Signed: &model.JobSigned{Name: c.signed, At: day(c.day)}}}
		}
		f := NewStandings(m, on("2026-12-01")).Fitness(j)
		got := f.Marks(&language.Default().Readings.Marks)
		ok := len(got) == len(c.want) && f.UpToDate() == (len(c.want) == 0)
		for i := range c.want {
			ok = ok && strings.Contains(got[i], c.want[i])
		}
		if !ok {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// What presses comes first: the longest past its day, then the soonest, then what
// has no day, the stale before the due; of one day the order stays.
func TestWhatPressesComesFirst(t *testing.T) {
	first, second := &model.Person{Entry: model.Entry{ID: "a"}}, &model.Person{Entry: model.Entry{ID: "b"}}
	items := []Item{
		{Act: "1", State: Due, Person: first}, {Act: "2", State: Stale, Person: second}, {Act: "3", State: Due, By: on("2026-03-01"), Person: first},
		{Act: "4", State: Overdue, By: on("2026-01-01"), Person: first}, {Act: "5", State: Due, By: on("2026-03-01")}, {Act: "6", State: Due, Person: first},
	}
	acts := func(items []Item) string {
		out := ""
		for _, i := range items {
			out += i.Act
		}
		return out
	}
	ByLateness(items)
	if got := acts(items); got != "435216" {
		t.Errorf("in the order %s, want 435216", got)
	}
	if most, rest := FirstOfEach(items); acts(most) != "42" || acts(rest) != "3516" {
		t.Errorf("first %s and then %s, want 42 and 3516", acts(most), acts(rest))
	}
}

// A row of the table: by which day stands in it, where there is one.
func TestItemsAsATable(t *testing.T) {
	p, who := &model.Procedure{Entry: model.Entry{ID: "lid"}}, &model.Person{Entry: model.Entry{ID: "t-01"}}
	var out strings.Builder
	err := CSV(&out, []Item{
		{Act: "read", What: p, State: Due, By: on("2026-03-01"), Person: who, Plan: "start", Left: 1},
		{Act: "review", What: p, State: Overdue},
	})
	if want := "person,what,plan,state,by,act,times\nt-01,lid,start,due,2026-03-01,read,1\n,lid,,overdue,,review,0\n"; err != nil || out.String() != want {
		t.Errorf("%v\n%s", err, out.String())
	}
}

// What is to be done, in words.
func TestWhatIsToBeDoneInWords(t *testing.T) {
	p := &model.Procedure{Title: "Lid off", Entry: model.Entry{ID: "lid"}}
	for want, i := range map[string]Item{
		"read Lid off":                     {What: p, Act: "read", Left: 1},
		"read Lid off again":               {What: p, Act: "read", Left: 1, Last: &model.Reading{}},
		"perform Lid off":                  {What: p, Act: "perform", Left: 1},
		"perform Lid off 2 times":          {What: p, Act: "perform", Left: 2},
		"renew Lid off: read A":            {What: p, Act: "renew", Left: 1, Again: []string{"read A"}},
		"renew Lid off: read A, perform B": {What: p, Act: "renew", Left: 1, Again: []string{"read A", "perform B"}},
		"inspect working by Lid off":       {What: p, Act: "inspect", Left: 1},
		"review Lid off":                   {What: p, Act: "review", Left: 1},
	} {
		if got := i.ToDo(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Who read a translation is told of one that was issued after that day, and not
// of one whose readers need not know or that was told them since.
func TestWhoIsToldOfATranslation(t *testing.T) {
	now := print(shop(), "alone")
	const head = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words,language\n"
	row := func(lang, date, readers, words string) string {
		return "alone,1," + date + "," + now + ",why,a,b,,," + readers + "," + words + "," + lang + "\n"
	}
	first := head + row("", "2026-01-02", "reread", "1111111111111111") + row("es", "2026-01-03", "reread", "1111111111111111")
	later := row("es", "2026-02-01", "tell", "2222222222222222")
	for name, c := range map[string]struct {
		lang, more, rows string
		want             int
	}{
		"issued again":               {"es", later, "", 1},
		"in capitals":                {"ES", later, "", 1},
		"another language":           {"fr", later, "", 0},
		"the original":               {"", later, "", 0},
		"nothing new":                {"es", "", "", 0},
		"readers need not know":      {"es", row("es", "2026-02-01", "none", "2222222222222222"), "", 0},
		"a comma behind it":          {"es", later + row("es", "2026-02-02", "none", "3333333333333333"), "", 1},
		"another language behind it": {"es", later + row("fr", "2026-02-02", "tell", "3333333333333333"), "", 1},
		"yet to come":                {"es", row("es", "2026-02-09", "tell", "2222222222222222"), "", 0},
		"one now, one yet to come":   {"es", later + row("es", "2026-02-09", "tell", "3333333333333333"), "", 1},
		"without a hash":             {"es", row("es", "2026-02-01", "tell", ""), "", 0},
		"issued on the day":          {"es", row("es", "2026-01-15", "tell", "2222222222222222"), "", 0},
		"told":                       {"es", later, "2026-02-01,t-01,alone,told,,,\n", 0},
		"told before":                {"es", later, "2026-01-31,t-01,alone,told,,,\n", 1},
		"watched only":               {"es", later, "2026-02-02,t-01,alone,watched," + now + ",,\n", 1},
	} {
		m := shop("readings/people.csv", early, "revisions.csv", first+c.more,
			"readings/record.csv", "date,person,procedure,act,fingerprint,by,language\n2026-01-15,t-01,alone,read,"+now+",,"+c.lang+"\n"+c.rows)
		n := 0
		for _, i := range NewStandings(m, on("2026-02-08")).Items() {
			if i.Act == "tell" {
				n++
			}
		}
		if n != c.want {
			t.Errorf("%s: %d to be told, want %d", name, n, c.want)
		}
	}
}

// A person's account has each role once and the deeds and jobs by the day, up to
// the day that is asked of.
func TestAPersonsAccountUpToADay(t *testing.T) {
	const roles = "person,name,roles,started,plans\nt-01,First,cleaner@2026-01-01 cleaner@2026-01-01 cleaner@2026-03-01 cleaner@2026-09-01 teacher,2026-01-01,\nt-02,Second,,2026-01-01,\n"
	rows := heads + "2026-04-01,t-01,alone,told,,\n2026-02-01,t-01,sweep,read,1-1111111111111111,\n2026-03-01,t-02,sweep,read,1-1111111111111111,\n2026-08-01,t-01,sweep,read,1-1111111111111111,\n"
	m := shop("readings/people.csv", roles, "readings/record.csv", rows)
	job := func(id, worker, day string) *model.Job {
		at := on(day).Time().Add(8 * time.Hour)
		return &model.Job{Procedure: id, To: procedure(m, id), Worker: worker, Started: at, Saved: at}
	}
	m.Jobs = []*model.Job{job("alone", "t-01", "2026-05-03"), job("sweep", "t-01", "2026-05-01"), job("wash", "first", "2026-05-02"), job("alone", "t-02", "2026-05-01"), job("alone", "t-01", "2026-08-01")}
	a := NewStandings(m, on("2026-06-01")).PersonAccount(m.People[0])
	var got []string
	for _, r := range a.Roles {
		got = append(got, fmt.Sprint(r.Role.ID, " ", r.From, " ", r.Held))
	}
	for _, d := range a.Deeds {
		got = append(got, d.Date.String())
	}
	for _, j := range a.Jobs {
		got = append(got, j.Job.Procedure)
	}
	want := []string{"cleaner 2026-01-01 true", "cleaner 2026-03-01 true", "teacher 2026-01-01 true", "2026-02-01", "2026-04-01", "sweep", "wash", "alone"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// A role that ran out and was gained again is not held by the old gain, and held
// anew; one that nobody gained again is not.
func TestWhichRolesAreHeldAnew(t *testing.T) {
	for roles, want := range map[string]string{
		"cleaner@2024-01-01 cleaner@2026-01-01": "cleaner false true, cleaner true false",
		"cleaner@2024-01-01 teacher@2024-01-01": "cleaner false false, teacher true false",
		"cleaner@2024-01-01 cleaner@2024-06-01": "cleaner false false, cleaner false false",
	} {
		m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,"+roles+",2024-01-01,\n")
		var got []string
		for _, r := range NewStandings(m, on("2026-06-01")).PersonAccount(m.People[0]).Roles {
			got = append(got, fmt.Sprint(r.Role.ID, " ", r.Held, " ", r.Anew))
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%s: %q, want %q", roles, got, want)
		}
	}
}

// What changed for those whose readings are stale is told once with all of them,
// and that the words that they read are not kept is told with it.
func TestWhatChangedForWhom(t *testing.T) {
	now, was := print(shop(), "alone"), "1-1111111111111111"
	both := "person,name,roles,started,plans\nt-01,First,,2026-01-01,start again\nt-02,Second,teacher@2026-01-01,2026-01-01,start\n"
	for name, revisions := range map[string]string{
		"issued": revs + "alone,1,2026-01-02," + was + ",why,a,b,,,reread\nalone,2,2026-02-01," + now + ",why,a,b,,,reread\n",
		"never":  revs + "alone,1,2026-01-02," + now + ",why,a,b,,,reread\n",
	} {
		m := shop("readings/people.csv", both, "readings/plans/again.yaml", "title: Again\nread: [alone]\n", "revisions.csv", revisions,
			"readings/record.csv", heads+"2026-01-15,t-01,alone,read,"+was+",\n2026-01-16,t-02,alone,read,"+was+",\n")
		h := NewStandings(m, on("2026-02-08"))
		changes := h.Changes(h.Items())
		if len(changes) != 1 || len(changes[0].People) != 2 {
			t.Fatalf("%s: %+v", name, changes)
		}
		if c := changes[0]; !c.Unkept || c.Steps != nil || c.Print != was || (c.Read != nil) != (name == "issued") || c.Procedure.ID != "alone" {
			t.Errorf("%s: %+v", name, c)
		}
	}
}

// "What somebody held on a day is what the rows up to and on that day say", and "a
// later change … does not undo it": of a past day a person's account is the one that
// the files gave on that day, whatever was written into them since.
func TestAnAccountOfAPastDayHasNothingLater(t *testing.T) {
	t.Parallel()
	const (
		head = "person,name,roles,started,plans,left\nt-01,First,,2026-01-01,,\n"
		gone = "2026-05-01,t-02,teacher,withdrawn,t-01,a reason\n"
	)
	said := func(person, rows, day string) string {
		m := shop("readings/people.csv", head+person, "readings/roles.csv", rolesHead+rows)
		a := NewStandings(m, on(day)).PersonAccount(m.People[1])
		out := fmt.Sprint(a.There, " ", a.Started, " ", a.Left)
		for _, r := range a.Roles {
			out += fmt.Sprint("; ", r.Role.ID, " ", r.From, " ", r.Until, " ", r.Ended, " ", r.Why, " ", r.Held)
		}
		return out
	}
	const last = "t-02,Second,teacher cleaner@2026-03-01,2026-01-10,,2026-02-10..2026-04-01 2026-06-30\n"
	for _, c := range []struct{ day, person, rows string }{
		{"2026-01-10", "t-02,Second,teacher,2026-01-10,,\n", ""},
		{"2026-02-09", "t-02,Second,teacher,2026-01-10,,\n", ""},
		{"2026-02-10", "t-02,Second,teacher,2026-01-10,,2026-02-10\n", ""},
		{"2026-02-28", "t-02,Second,teacher,2026-01-10,,2026-02-10\n", ""},
		{"2026-03-31", "t-02,Second,teacher cleaner@2026-03-01,2026-01-10,,2026-02-10\n", ""},
		{"2026-04-01", "t-02,Second,teacher cleaner@2026-03-01,2026-01-10,,2026-02-10..2026-04-01\n", ""},
		{"2026-04-30", "t-02,Second,teacher cleaner@2026-03-01,2026-01-10,,2026-02-10..2026-04-01\n", ""},
		{"2026-05-01", "t-02,Second,teacher cleaner@2026-03-01,2026-01-10,,2026-02-10..2026-04-01\n", gone},
		{"2026-06-30", last, gone},
	} {
		if got, want := said(last, gone, c.day), said(c.person, c.rows, c.day); got != want {
			t.Errorf("on %s: %s, and the files of that day said %s", c.day, got, want)
		}
	}
	if got, want := said(last, gone, "2026-01-09"), fmt.Sprint(false, " ", model.Date{}, " ", []model.Absence(nil)); got != want {
		t.Errorf("before the start: %s, want %s", got, want)
	}
}
