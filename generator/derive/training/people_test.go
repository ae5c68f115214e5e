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

// "What somebody held on a day is what the rows up to and on that day say, in
// file order", "The roles in people.csv are what a person brought", and "What was
// withdrawn never comes back by itself".
func TestRowsOfRolesSayWhatWasHeld(t *testing.T) {
	rows := rolesHead + "2026-02-01,t-01,cleaner,gained,t-02,taken on\n2026-03-01,t-02,teacher,withdrawn,t-01,a reason\n2026-04-01,t-02,teacher,gained,t-01,back\n" +
		"2026-05-01,t-02,teacher,withdrawn,t-01,another\n2026-05-01,t-03,teacher,withdrawn,t-01,never had it\n"
	m := shop("readings/people.csv", three, "readings/roles.csv", rows)
	for _, c := range []struct {
		who       int
		role, day string
		want      bool
	}{
		{0, "cleaner", "2026-01-31", false},
		{0, "cleaner", "2026-02-01", true},
		{0, "teacher", "2026-02-01", false},
		{1, "teacher", "2026-02-28", true},
		{1, "teacher", "2026-03-01", false},
		{1, "teacher", "2026-03-31", false},
		{1, "teacher", "2026-04-01", true},
		{1, "teacher", "2026-05-01", false},
		{1, "cleaner", "2026-02-01", false},
		{2, "teacher", "2026-06-01", false},
	} {
		for _, today := range []string{c.day, "2026-06-01"} {
			if got := NewStandings(m, on(today)).HoldsRole(m.People[c.who], c.role, on(c.day)); got != c.want {
				t.Errorf("seen on %s, %s holds %s on %s: %v", today, m.People[c.who].ID, c.role, c.day, got)
			}
		}
	}
	a := NewStandings(m, on("2026-06-01")).PersonAccount(m.People[1])
	var got []string
	for _, r := range a.Roles {
		got = append(got, fmt.Sprint(r.Role.ID, " ", r.From, " ", r.Ended, " ", r.Why, " ", r.Held))
	}
	if want := []string{"teacher 2026-01-10 2026-03-01 a reason false", "teacher 2026-04-01 2026-05-01 another false"}; !slices.Equal(got, want) || !a.There {
		t.Errorf("the account says %q, want %q", got, want)
	}
	if a := NewStandings(m, on("2026-03-31")).PersonAccount(m.People[1]); len(a.Roles) != 1 || a.Roles[0].Why != "a reason" {
		t.Errorf("on a day between: %+v", a.Roles)
	}
}

// A grant is refused where it cannot be so on its day; it says why.
func TestGrantsThatCannotBe(t *testing.T) {
	m := shop("readings/people.csv", three)
	for name, c := range map[string]struct {
		g    Grant
		want string
	}{
		"no such role":           {Grant{Role: "cleanr", Act: "gained"}, "did you mean cleaner"},
		"nothing like a role":    {Grant{Role: "xyzzy-plugh", Act: "gained"}, "there is no role xyzzy-plugh"},
		"by nobody known":        {Grant{Role: "cleaner", Act: "gained", By: "t-99x"}, "who is to have decided it is not known"},
		"by oneself":             {Grant{Role: "cleaner", Act: "gained", By: "t-01"}, "cannot decide over a role of their own"},
		"withdrawn, no reason":   {Grant{Role: "teacher", Act: "withdrawn", By: "t-03", Reason: " ", People: []string{"t-02"}}, "why it is withdrawn"},
		"withdrawn, never had":   {Grant{Role: "teacher", Act: "withdrawn", By: "t-03", Reason: "x"}, "has no teacher"},
		"renewed, never had":     {Grant{Role: "cleaner", Act: "renewed"}, "has no cleaner that could be renewed"},
		"renewed before it was":  {Grant{Role: "teacher", Act: "renewed", People: []string{"t-02"}, Date: on("2026-01-09")}, "has no teacher"},
		"gained, holds it":       {Grant{Role: "teacher", Act: "gained", People: []string{"t-02"}}, "write renewed"},
		"gone":                   {Grant{Role: "teacher", Act: "renewed", People: []string{"t-02"}, Date: on("2026-07-01")}, "was not there on 2026-07-01"},
		"not in the list":        {Grant{Role: "cleaner", Act: "gained", People: []string{"t-99x"}}, "t-99x"},
		"one of two is refused":  {Grant{Role: "cleaner", Act: "renewed", People: []string{"t-01", "t-03"}}, "t-03 has no cleaner"},
		"":                       {Grant{Role: "cleaner", Act: "gained", By: "t-02"}, ""},
		"renewed on its day":     {Grant{Role: "teacher", Act: "renewed", People: []string{"t-02"}, Date: on("2026-01-10")}, ""},
		"withdrawn for a reason": {Grant{Role: "teacher", Act: "withdrawn", By: "t-03", Reason: "x", People: []string{"t-02"}}, ""},
	} {
		if c.g.People == nil {
			c.g.People = []string{"t-01"}
		}
		if c.g.Date.IsZero() {
			c.g.Date = on("2026-02-01")
		}
		folder := t.TempDir()
		err := Award(m, folder, c.g)
		if c.want == "" && err != nil || c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
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

// What is to be done, in words.
func TestWhatIsToBeDoneInWords(t *testing.T) {
	p := &model.Procedure{Title: "Lid off", Entry: model.Entry{ID: "lid"}}
	for want, i := range map[string]Item{
		"read Lid off":                     {What: p, Act: "read", Left: 1},
		"read Lid off again":               {What: p, Act: "read", Left: 1, Last: &model.Reading{}},
		"perform Lid off":                  {What: p, Act: "perform", Left: 1},
		"perform Lid off 2 times":          {What: p, Act: "perform", Left: 2},
		"renew Lid off: read A, perform B": {What: p, Act: "renew", Left: 1, Again: []string{"read A", "perform B"}},
		"inspect working by Lid off":       {What: p, Act: "inspect", Left: 1},
		"review Lid off":                   {What: p, Act: "review", Left: 1},
	} {
		if got := i.ToDo(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// A role is told of from 60 days before its last day on (the package's own rule),
// once however often it stands, and the last gain counts.
func TestWhenARoleIsToldOf(t *testing.T) {
	for name, c := range map[string]struct{ roles, today, want string }{
		"61 days before":        {"cleaner@2026-01-01", "2026-11-01", ""},
		"60 days before":        {"cleaner@2026-01-01", "2026-11-02", "runs out 2027-01-01"},
		"on the last day":       {"cleaner@2026-01-01", "2027-01-01", "runs out 2027-01-01"},
		"the day after":         {"cleaner@2026-01-01", "2027-01-02", "run out 2027-01-01"},
		"renewed":               {"cleaner@2026-01-01 cleaner@2026-06-01", "2027-01-02", ""},
		"renewed, written last": {"cleaner@2026-06-01 cleaner@2026-01-01", "2027-01-02", ""},
		"renewed today":         {"cleaner@2026-01-01 cleaner@2027-01-02", "2027-01-02", ""},
		"twice the same":        {"cleaner@2026-01-01 cleaner@2026-01-01", "2027-01-02", "run out 2027-01-01"},
		"needs no renewal":      {"teacher@2020-01-01", "2027-01-02", ""},
		"without a day":         {"cleaner", "2027-01-02", ""},
	} {
		m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,"+c.roles+",2020-01-01,\n")
		var got []string
		for _, i := range NewStandings(m, on(c.today)).Items() {
			got = append(got, string(i.State)+" "+i.By.String())
		}
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// "Twice the same row is record-twice, save performed: a plan counts how often."
// Any column that differs makes another row of it; where it was read from does not.
func TestTheSameRowTwice(t *testing.T) {
	whole := Entry{Person: "t-01", Procedure: "alone", Act: "taught", By: "t-02", On: "x", Language: "es", Score: "9", Note: "n", Date: on("2026-02-01"), Where: "a.csv:2"}
	m := shop("readings/people.csv", early, "readings/record.csv", "date,person,procedure,act,fingerprint,by,on,language,score,note\n2026-02-01,t-01,alone,taught,"+print(shop(), "alone")+",t-02,x,es,9,n\n")
	empty := shop("readings/people.csv", early)
	for name, change := range map[string]func(e *Entry){
		"":          func(e *Entry) { e.Where = "a.csv:3" },
		"date":      func(e *Entry) { e.Date = on("2026-02-02") },
		"person":    func(e *Entry) { e.Person, e.By = "t-02", "" },
		"procedure": func(e *Entry) { e.Procedure = "sweep" },
		"act":       func(e *Entry) { e.Act = "told" },
		"by":        func(e *Entry) { e.By = "" },
		"on":        func(e *Entry) { e.On = "y" },
		"language":  func(e *Entry) { e.Language = "" },
		"score":     func(e *Entry) { e.Score = "8" },
		"note":      func(e *Entry) { e.Note = "" },
		"performed": func(e *Entry) { e.Act = "performed" },
	} {
		again := whole
		change(&again)
		for where, m := range map[string]*model.Manual{"in the record": m, "among the new": empty} {
			entries := []Entry{whole, again}
			done, err := Prepare(m, entries)
			if err != nil {
				t.Fatal(name, err)
			}
			if got := done[1].Twice; got != (name == "") {
				t.Errorf("another %q, %s: twice is %v", name, where, got)
			}
		}
	}
}

// Rows of a file: what a cell leaves open is as in all; the error says file and line.
func TestRowsFromAFile(t *testing.T) {
	all := Entry{Act: "read", Date: on("2026-03-02"), By: "t-02"}
	got, err := From("rows.csv", []byte("\ufeffprocedure, person ,date,note,fingerprint\nalone,t-01,2026-03-01,x,\n,,,,\nsweep, t-03 \n"), all)
	want := []Entry{
		{Person: "t-01", Procedure: "alone", Act: "read", By: "t-02", Note: "x", Date: on("2026-03-01"), Where: "rows.csv:2"},
		{Person: "t-03", Procedure: "sweep", Act: "read", By: "t-02", Date: on("2026-03-02"), Where: "rows.csv:4"},
	}
	if err != nil || !slices.Equal(got, want) {
		t.Errorf("%+v, %v", got, err)
	}
	if got, err := From("rows.csv", []byte("person,procedure,date\nt-01,alone,2026-03-02\n"), all); err != nil || len(got) != 1 {
		t.Errorf("a row of today: %v, %v", got, err)
	}
	for text, want := range map[string]string{
		"":                                        "holds no rows",
		"person;procedure\n":                      "semicolons",
		"person,procedure\n":                      "no row below",
		"person,procedur\n":                       "rows.csv:1: there is no column procedur: did you mean procedure?",
		"person,procedure,xyzzyplugh\n":           "there is no column xyzzyplugh: the first line is",
		"person,note\nt-01,x\n":                   "the column procedure is not there",
		"person,procedure\nt-01,a,b\n":            "rows.csv:2: this row has 3 cells, the first line has 2",
		"person,procedure,date\na,b,2026-02-30\n": "rows.csv:2: \"2026-02-30\" is not a day",
		"person,procedure,date\na,b,\nc,d,2026-03-03\n": "rows.csv:3: 2026-03-03 lies ahead",
		"person,procedure,fingerprint\na,b,1-1\n":       "rows.csv:2: a fingerprint stands here",
		"person,procedure\na,\"b\n":                     "rows.csv: ",
	} {
		if _, err := From("rows.csv", []byte(text), all); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
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
