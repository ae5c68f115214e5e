package training

import (
	"fmt"
	"os"
	"path/filepath"
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

// Several revisions to be told of stand beside a procedure whose reading is of
// nothing that was issued, which hides none of the others.
func TestOneUnknownReadingHidesNoOther(t *testing.T) {
	now, other := print(shop(), "alone"), print(shop(), "sweep")
	const head = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words\n"
	rows := heads
	text := head
	for _, p := range []struct{ id, print string }{{"alone", now}, {"sweep", other}} {
		rows += "2026-01-15,t-01," + p.id + ",read," + p.print + ",\n"
		text += p.id + ",1,2026-01-02," + p.print + ",First,a,b,,,reread,1111111111111111\n" + p.id + ",2,2026-02-01," + p.print + ",A word,a,b,,,tell,2222222222222222\n"
	}
	for name, c := range map[string]struct {
		rows string
		want int
	}{
		"both read":              {rows, 2},
		"the first never":        {strings.Replace(rows, ",alone,read,", ",alone,watched,", 1), 1},
		"the second never":       {strings.Replace(rows, ",sweep,read,", ",sweep,watched,", 1), 1},
		"the first of something": {strings.Replace(rows, now, "1-9999999999999999", 1), 1},
		"read twice, told once":  {rows + "2026-02-01,t-01,sweep,told,,\n", 1},
	} {
		m := shop("readings/people.csv", early, "revisions.csv", text, "readings/record.csv", c.rows)
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

// Until when a role is held: of several gains the last of its days; not at all
// where one of them does not run out.
func TestUntilWhenARoleIsHeld(t *testing.T) {
	for name, c := range map[string]struct {
		roles, day, until string
		runs              bool
	}{
		"one":                    {"cleaner@2026-01-01", "2026-02-01", "2027-01-01", true},
		"the later first":        {"cleaner@2026-06-01 cleaner@2026-01-01", "2026-07-01", "2027-06-01", true},
		"the later not yet":      {"cleaner@2026-01-01 cleaner@2026-06-01", "2026-05-31", "2027-01-01", true},
		"one that does not":      {"cleaner@2026-01-01 cleaner", "2026-02-01", "", false},
		"another role before it": {"teacher@2026-01-01 cleaner@2026-01-01", "2026-02-01", "2027-01-01", true},
	} {
		m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,"+c.roles+",2020-01-01,\n")
		until, runs := NewStandings(m, on("2027-12-31")).UntilOn(m.People[0], "cleaner", on(c.day))
		if runs != c.runs || runs && until != on(c.until) {
			t.Errorf("%s: %s, %v", name, until, runs)
		}
	}
}

// What several rows finish together is told at the last of them, once; and the
// row of the role is written: "Every readings record adds the rows that are
// missing: the day the plan was finished, gained or renewed, by the last witness
// who counted."
func TestWhatARowFinishes(t *testing.T) {
	files := []string{"readings/people.csv", "person,name,roles,started,plans\nt-01,First,,2026-01-01,start\nt-02,Second,teacher@2026-01-01,2026-01-01,\n",
		"readings/plans/start.yaml", "title: Start\nread: [alone]\nwatch: [alone]\nperform: [sweep: 2]\nassessor: teacher\ngives: [cleaner]\n"}
	m := shop(files...)
	folder := t.TempDir()
	entry := func(id, act, by string) Entry {
		return Entry{Folder: folder, Person: "t-01", Procedure: id, Act: act, By: by, Date: on("2026-02-01")}
	}
	done, err := RecordAll(m, folder, []Entry{entry("alone", "read", ""), entry("sweep", "read", ""), entry("alone", "watched", ""), entry("sweep", "performed", "t-02"), entry("sweep", "performed", ""), entry("sweep", "performed", "t-02"), entry("alone", "told", "")})
	if err != nil {
		t.Fatal(err)
	}
	for i, d := range done {
		if last := i == len(done)-1; (len(d.Finished) == 1) != last || (d.Why != "") != (i == 4) {
			t.Errorf("row %d finishes %d plans and counts not because of %q", i, len(d.Finished), d.Why)
		}
	}
	text, err := os.ReadFile(filepath.Join(folder, "readings", "roles.csv"))
	if want := rolesHead + "2026-02-01,t-01,cleaner,gained,t-02,finished start\n"; err != nil || string(text) != want {
		t.Errorf("%q, %v, want %q", text, err, want)
	}
	record, err := os.ReadFile(filepath.Join(folder, "readings", "record.csv"))
	if err != nil {
		t.Fatal(err)
	}
	again := shop(append(files, "readings/roles.csv", string(text), "readings/record.csv", string(record))...)
	more, err := RecordAll(again, folder, []Entry{entry("alone", "told", "")})
	if err != nil || len(more[0].Finished) != 0 || !more[0].Twice {
		t.Errorf("a later row: %+v, %v", more, err)
	}
	if now, _ := os.ReadFile(filepath.Join(folder, "readings", "roles.csv")); string(now) != string(text) {
		t.Errorf("the row of the role was written again: %q", now)
	}
}

// Renewing says what is left of the plan's watching and performing, "perform X"
// of what is left once; what was done since the last time is no longer there.
func TestWhatIsLeftToRenewARole(t *testing.T) {
	perform := func(n int) string {
		return fmt.Sprintf("title: Start\nread: [alone]\nwatch: [alone]\nperform: [sweep: %d]\nassessor: teacher\ngives: [cleaner]\n", n)
	}
	now := print(shop(), "sweep")
	seen := "2026-02-01,t-01,sweep,performed," + now + ",t-02\n"
	for name, c := range map[string]struct {
		n    int
		rows string
		want []string
	}{
		"once":                {1, "", []string{"read Alone", "watch Alone", "read Sweep", "perform Sweep"}},
		"three times":         {3, "", []string{"read Alone", "watch Alone", "read Sweep", "perform Sweep 3 times"}},
		"two of three left":   {3, seen, []string{"read Alone", "watch Alone", "read Sweep", "perform Sweep 2 times"}},
		"one of three left":   {3, seen + seen, []string{"read Alone", "watch Alone", "read Sweep", "perform Sweep"}},
		"none left, watched":  {2, seen + seen + "2026-02-01,t-01,alone,watched," + now + ",\n", []string{"read Alone", "read Sweep"}},
		"read, as it stands":  {1, "2026-02-01,t-01,alone,read," + print(shop(), "alone") + ",\n", []string{"watch Alone", "read Sweep", "perform Sweep"}},
		"more than was asked": {1, seen + seen, []string{"read Alone", "watch Alone", "read Sweep"}},
	} {
		m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,cleaner@2025-01-01,2025-01-01,start\nt-02,Second,teacher@2025-01-01,2025-01-01,\n",
			"readings/plans/start.yaml", perform(c.n), "readings/record.csv", heads+c.rows)
		var got []string
		for _, i := range NewStandings(m, on("2026-03-01")).Items() {
			if i.Act == "renew" {
				got = append(got, i.Again...)
			}
			if i.Left < 1 || (i.Act == "read" || i.Act == "watch" || i.Act == "renew") && i.Left != 1 {
				t.Errorf("%s: %s %d times", name, i.ToDo(), i.Left)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", name, got, c.want)
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

// Of several readings up to a job's day the last counts, and of two of one day
// the one that held then: what was read later, or of what was asked for again, is
// none of it.
func TestWhichReadingCountsForAJob(t *testing.T) {
	now, was := print(shop(), "alone"), "1-1111111111111111"
	revisions := revs + "alone,1,2026-01-02," + was + ",why,a,b,,,reread\nalone,2,2026-02-01," + now + ",why,a,b,,,reread\n"
	read := func(day, print string) string { return day + ",t-01,alone,read," + print + ",\n" }
	for name, c := range map[string]struct{ rows, last string }{
		"the old alone":             {read("2026-01-15", was), ""},
		"the new alone":             {read("2026-02-02", now), "2026-02-02"},
		"the old, then the new":     {read("2026-01-15", was) + read("2026-02-02", now), "2026-02-02"},
		"the new, then the old":     {read("2026-02-02", now) + read("2026-01-15", was), "2026-02-02"},
		"both on a day":             {read("2026-02-02", was) + read("2026-02-02", now), "2026-02-02"},
		"both on a day, other way":  {read("2026-02-02", now) + read("2026-02-02", was), "2026-02-02"},
		"on the day of the job":     {read("2026-02-10", now), "2026-02-10"},
		"after the job":             {read("2026-02-11", now), ""},
		"watched, and never read":   {strings.Replace(read("2026-02-02", now), ",read,", ",watched,", 1), ""},
		"before, and after the job": {read("2026-02-02", now) + read("2026-02-11", was), "2026-02-02"},
	} {
		m := shop("readings/people.csv", early, "revisions.csv", revisions, "readings/record.csv", heads+c.rows)
		at := on("2026-02-10").Time()
		f := NewStandings(m, on("2026-12-01")).Fitness(&model.Job{Procedure: "alone", To: procedure(m, "alone"), Worker: "t-01", Started: at, Saved: at})
		w := f.Workers[0]
		if (len(w.Unread) == 0) != (c.last != "") || c.last != "" && (len(w.Read) != 1 || w.Read[0].Date != on(c.last) || w.Read[0].Fingerprint != now) {
			t.Errorf("%s: read %+v, not read %d", name, w.Read, len(w.Unread))
		}
	}
}

// Nothing is left to do of what was read as it stands, watched where it is to be,
// and performed as often as is asked.
func TestWhenNothingIsLeftToDo(t *testing.T) {
	for want, all := range map[bool][]Standing{
		true: {
			{State: Good}, {State: Good, MustWatch: true, Watched: true}, {State: Good, Watched: true},
			{State: Good, Perform: 2, Performed: 2}, {State: Good, Perform: 2, Performed: 3},
		},
		false: {
			{State: Stale}, {State: Due}, {State: Overdue, Watched: true, Performed: 1}, {State: Good, MustWatch: true},
			{State: Good, Perform: 2, Performed: 1}, {State: Good, Perform: 1, Watched: true, MustWatch: true},
		},
	} {
		for _, s := range all {
			if s.Done() != want {
				t.Errorf("%+v: done is %v", s, s.Done())
			}
		}
	}
}

// A renewal names the plan by which the role was gained, and what each plan that
// gives it asks for; a plan that does not give it says nothing.
func TestByWhichPlanARoleIsRenewed(t *testing.T) {
	m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,,2025-01-01,other start\nt-02,Second,teacher@2025-01-01 cleaner@2025-02-01,2025-01-01,other start\n",
		"readings/plans/other.yaml", "title: Other\nread: [wash]\n", "readings/plans/start.yaml", "title: Start\nread: [alone]\ngives: [cleaner]\n",
		"readings/record.csv", heads+"2025-02-01,t-01,alone,read,"+print(shop(), "alone")+",\n")
	var got []string
	for _, i := range NewStandings(m, on("2026-03-01")).Items() {
		if i.Act == "renew" {
			got = append(got, i.Person.ID+" by "+i.Plan+": "+strings.Join(i.Again, ", "))
		}
	}
	if want := []string{"t-01 by start: read Alone", "t-02 by : read Alone"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
