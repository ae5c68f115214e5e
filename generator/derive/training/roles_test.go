package training

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The expectations follow the format's "People and roles over time"; each names
// the sentence.

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

// "What was withdrawn never comes back by itself": the row of a plan that was
// finished before the withdrawal would stand behind it, and "what the rows say, in
// file order" would be that the role is held. Nobody had written that row yet.
func TestRecordingBringsNoRoleBack(t *testing.T) {
	const short = "title: Start\nread: [alone]\ngives: [cleaner]\n"
	withdrawn := rolesHead + "2026-03-01,t-01,cleaner,withdrawn,t-02,why\n"
	files := []string{"readings/people.csv", three, "readings/plans/start.yaml", short, "readings/record.csv", heads + "2026-02-01,t-01,alone,read," + print(shop(), "alone") + ",\n"}
	for _, day := range []string{"2026-02-15", "2026-06-01"} { // the first is recorded late
		folder := t.TempDir()
		if err := os.MkdirAll(filepath.Join(folder, "readings"), 0o700); err != nil {
			t.Fatal(err)
		}
		name := filepath.Join(folder, "readings", "roles.csv")
		if err := os.WriteFile(name, []byte(withdrawn), 0o600); err != nil {
			t.Fatal(err)
		}
		other := Entry{Folder: folder, Person: "t-02", Procedure: "alone", Act: "read", Date: on(day)}
		if _, err := RecordAll(shop(append(files, "readings/roles.csv", withdrawn)...), folder, []Entry{other}); err != nil {
			t.Fatal(err)
		}
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		m := shop(append(files, "readings/roles.csv", string(text))...)
		h := NewStandings(m, on("2026-06-02"))
		if before, after := h.HoldsRole(m.People[0], "cleaner", on("2026-02-28")), h.HoldsRole(m.People[0], "cleaner", on("2026-03-01")); !before || after {
			t.Errorf("recorded on %s: held before it was withdrawn %v, and after %v\n%s", day, before, after, text)
		}
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
		"renewed, not yet":      {"cleaner@2026-01-01 cleaner@2027-02-01", "2027-01-02", "run out 2027-01-01"},
		"beside one for ever":   {"cleaner@2026-01-01 cleaner", "2027-01-02", ""}, // "one without a day … does not run out"
		"another role, later":   {"cleaner@2026-01-01 teacher@2026-06-01", "2027-01-02", "run out 2027-01-01"},
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
		if last := i == len(done)-1; (len(d.Finished) == 1) != last || (!d.Why.IsZero()) != (i == 4) {
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

// Rows of several days, in any order: each is judged on its own day, the last of
// them finishes the plan, and the row of the role is of that day.
func TestRowsOfSeveralDays(t *testing.T) {
	m := shop("readings/people.csv", "person,name,roles,started,plans\nt-01,First,,2026-01-01,start\n",
		"readings/plans/start.yaml", "title: Start\nread: [alone]\nwatch: [alone]\ngives: [cleaner]\n")
	read := Entry{Person: "t-01", Procedure: "alone", Act: "read", Date: on("2026-02-01")}
	watched := Entry{Person: "t-01", Procedure: "alone", Act: "watched", Date: on("2026-03-02")}
	for _, entries := range [][]Entry{{read, watched}, {watched, read}} {
		folder := t.TempDir()
		done, err := RecordAll(m, folder, entries)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range done {
			if finishes := len(d.Finished) == 1; finishes != (d.Act == "watched") {
				t.Errorf("%s finishes the plan: %v", d.Act, finishes)
			}
		}
		text, err := os.ReadFile(filepath.Join(folder, "readings", "roles.csv"))
		if want := rolesHead + "2026-03-02,t-01,cleaner,gained,,finished start\n"; err != nil || string(text) != want {
			t.Errorf("%q, %v, want %q", text, err, want)
		}
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
