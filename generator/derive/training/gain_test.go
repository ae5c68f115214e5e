package training

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/model"
)

// Three people go through two plans, of which the second's witnesses are made
// by the first.
const (
	crewRoles  = "mate: { name: Mate, renew-every: 1 month }\nlead: { name: Lead, renew-every: 2 months }\n"
	crewPeople = "person,name,roles,started,plans\nt-01,A,,2026-01-01,first second\nt-02,B,,2026-01-01,second first\nt-03,C,lead@2026-01-03 mate@2026-01-02,2026-01-01,first\n"
	crewFirst  = "title: First\ngives: [mate]\nread: [wash]\nperform: [sweep]\nassessor: lead\n"
	crewSecond = "title: Second\ngives: [lead]\nwatch: [alone]\nperform: [alone: 2]\nassessor: mate\n"
)

func crew(rows []string) *model.Manual {
	return shop("register/roles.yaml", crewRoles, "readings/people.csv", crewPeople, "readings/plans/start.yaml", "title: Start\n",
		"readings/plans/first.yaml", crewFirst, "readings/plans/second.yaml", crewSecond, "readings/record.csv", heads+strings.Join(rows, ""))
}

func drawRows(t *rapid.T, m *model.Manual) []string {
	var rows []string
	for range rapid.IntRange(0, 40).Draw(t, "rows") {
		id := rapid.SampledFrom([]string{"sweep", "wash", "alone"}).Draw(t, "procedure")
		rows = append(rows, fmt.Sprintf("2026-01-%02d,t-0%d,%s,%s,%s,%s\n", rapid.IntRange(1, 12).Draw(t, "day"), rapid.IntRange(1, 3).Draw(t, "who"),
			id, rapid.SampledFrom([]string{"read", "read", "watched", "performed", "performed"}).Draw(t, "act"), print(m, id),
			rapid.SampledFrom([]string{"", "t-01", "t-02", "t-03"}).Draw(t, "by")))
	}
	return rows
}

// finishes are all the days on which anybody finished anything.
func finishes(m *model.Manual, today string) []string {
	h := NewStandings(m, on(today))
	var out []string
	for _, p := range m.People {
		for _, plan := range p.Plans {
			for _, day := range h.Finished(p, plan.To) {
				out = append(out, fmt.Sprint(p.ID, " ", plan.ID, " ", day))
			}
		}
	}
	return out
}

// The order of the rows says nothing, so that two branches that were merged
// either way say the same; and what comes later changes nothing of a day that
// is past, so that an auditor's answer does not move.
func TestGainsAreOfTheirDay(t *testing.T) {
	bare := crew(nil)
	some := 0
	rapid.Check(t, func(t *rapid.T) {
		rows := drawRows(t, bare)
		all := finishes(crew(rows), "2026-02-01")
		if shuffled := finishes(crew(rapid.Permutation(rows).Draw(t, "order")), "2026-02-01"); !slices.Equal(all, shuffled) {
			t.Fatalf("the order of rows moved it: %v, then %v", all, shuffled)
		}
		day := fmt.Sprintf("2026-01-%02d", rapid.IntRange(1, 12).Draw(t, "today"))
		past := slices.DeleteFunc(slices.Clone(all), func(f string) bool { return f[len(f)-len(day):] > day })
		if then := finishes(crew(rows), day); !slices.Equal(then, past) {
			t.Fatalf("on %s it was %v, and later it is said to have been %v", day, then, past)
		}
		some += len(all)
	})
	if some == 0 {
		t.Error("nobody ever finished anything: the test showed nothing")
	}
}

// Where the one person who holds a role to begin with sees nobody, nobody can
// see anybody: the others cannot make each other witnesses, however often.
func TestNobodyLiftsThemselves(t *testing.T) {
	bare := crew(nil)
	rapid.Check(t, func(t *rapid.T) {
		var rows []string
		for _, r := range drawRows(t, bare) {
			if !strings.HasSuffix(r, ",t-03\n") { // the only one who has a role to begin with
				rows = append(rows, r)
			}
		}
		if all := finishes(crew(rows), "2026-02-01"); len(all) > 0 {
			t.Fatalf("nobody could witness anything, and these were finished: %v", all)
		}
	})
}

// "A role that was withdrawn is gained again by a plan only through what is done
// after that day" (the package's own rule), in whichever order the days were
// written down.
func TestWhatWasDoneBeforeAWithdrawalCountsForNothingAfterIt(t *testing.T) {
	f := print(shop(), "alone")
	for name, c := range map[string]struct{ days, want string }{
		"on the day":                       {"2026-03-02", "[2026-03-02]"},
		"the day before":                   {"2026-03-01", "[]"},
		"between":                          {"2026-03-01 2026-05-01", "[]"},
		"between, the later written first": {"2026-05-01 2026-03-01", "[]"},
		"after":                            {"2026-05-01", "[2026-03-02]"},
	} {
		rows := rolesHead
		for _, day := range strings.Fields(c.days) {
			rows += day + ",t-01,cleaner,withdrawn,t-02,why\n"
		}
		m := shop("readings/people.csv", early, "readings/plans/start.yaml", "title: Start\nread: [alone]\nwatch: [alone]\ngives: [cleaner]\n", "readings/roles.csv", rows,
			"readings/record.csv", heads+"2026-02-01,t-01,alone,read,"+f+",\n2026-03-02,t-01,alone,watched,"+f+",\n")
		if got := fmt.Sprint(NewStandings(m, on("2026-06-01")).Finished(m.People[0], m.Plans[0])); got != c.want {
			t.Errorf("withdrawn %s: finished on %s, want %s", name, got, c.want)
		}
	}
}

// Who gains on a day what a witness needs witnesses on that day, whichever row
// stands first: "Who witnesses holds, on that day, the assessor's role".
func TestAWitnessMayBeMadeOnTheDay(t *testing.T) {
	bare := crew(nil)
	row := func(who, id, act, by string) string {
		return "2026-01-05,t-0" + who + "," + id + "," + act + "," + print(bare, id) + "," + by + "\n"
	}
	seen := []string{row("1", "alone", "performed", "t-02"), row("1", "alone", "performed", "t-02"), row("1", "alone", "read", ""), row("1", "alone", "watched", "")}
	made := []string{row("2", "sweep", "performed", "t-03"), row("2", "sweep", "read", ""), row("2", "wash", "read", "")}
	want := []string{"t-01 second 2026-01-05", "t-02 first 2026-01-05"}
	for _, rows := range [][]string{slices.Concat(seen, made), slices.Concat(made, seen)} {
		if got := finishes(crew(rows), "2026-02-01"); !slices.Equal(got, want) {
			t.Errorf("finished %q, want %q", got, want)
		}
	}
	if got := finishes(crew(seen), "2026-02-01"); len(got) > 0 {
		t.Errorf("seen by who gained nothing, and finished %q", got)
	}
}

func TestAPlanIsFinishedOnTheDayOfItsLastAct(t *testing.T) {
	m := crew(nil)
	wash, sweep := print(m, "wash"), print(m, "sweep")
	rows := []string{
		"2026-01-05,t-01,wash,read," + wash + ",\n", "2026-01-04,t-01,sweep,read," + sweep + ",\n",
		"2026-01-31,t-01,sweep,performed," + sweep + ",t-03\n",
	}
	m = crew(rows)
	h := NewStandings(m, on("2026-04-01"))
	if got := fmt.Sprint(h.Finished(m.People[0], m.Plans[0])); got != "[2026-01-31]" {
		t.Fatalf("finished on %s", got)
	}
	for day, want := range map[string]bool{"2026-01-30": false, "2026-01-31": true, "2026-02-28": true, "2026-03-01": false} {
		if got := h.HoldsRole(m.People[0], "mate", on(day)); got != want {
			t.Errorf("%s: holds it %v, want %v", day, got, want)
		}
	}
	if holds(m.People[0].Roles, "mate", on("2026-02-01")) {
		t.Error("the list of people is said to name a role that it does not")
	}
}

// What was read of an old revision does not finish a plan; after it was read
// again, that does.
func TestAStaleReadingFinishesNothing(t *testing.T) {
	m := crew(nil)
	wash, sweep := print(m, "wash"), print(m, "sweep")
	revisions := revs + "wash,1,2026-01-01,1-1111111111111111,why,a,b,,,reread\nwash,2,2026-01-10,%s,why,a,b,,,%s\n"
	rows := heads + "2026-01-05,t-01,wash,read,1-1111111111111111,\n2026-01-05,t-01,sweep,read," + sweep + ",\n2026-01-11,t-01,sweep,performed," + sweep + ",t-03\n"
	for readers, want := range map[string]string{"reread": "[]", "tell": "[2026-01-11]", "none": "[2026-01-11]"} {
		m := shop("register/roles.yaml", crewRoles, "readings/people.csv", crewPeople, "readings/plans/first.yaml", crewFirst, "readings/plans/second.yaml", crewSecond,
			"readings/record.csv", rows, "revisions.csv", fmt.Sprintf(revisions, wash, readers))
		if got := fmt.Sprint(NewStandings(m, on("2026-01-20")).Finished(m.People[0], m.Plans[0])); got != want {
			t.Errorf("%s: finished on %s, want %s", readers, got, want)
		}
	}
	for name, c := range map[string]struct{ more, want string }{ // of several readings the last counts, and none that was never issued
		"then what was never issued": {"2026-01-11,t-01,wash,read,1-9999999999999999,\n", "[2026-01-12]"},
		"then the old":               {"2026-01-11,t-01,wash,read,1-1111111111111111,\n", "[]"},
		"and the old on one day":     {"2026-01-10,t-01,wash,read,1-1111111111111111,\n", "[2026-01-12]"},
		"then the same":              {"2026-01-11,t-01,wash,read," + wash + ",\n", "[2026-01-12]"},
	} {
		rows := heads + "2026-01-10,t-01,wash,read," + wash + ",\n" + c.more + "2026-01-05,t-01,sweep,read," + sweep + ",\n2026-01-12,t-01,sweep,performed," + sweep + ",t-03\n"
		m := shop("register/roles.yaml", crewRoles, "readings/people.csv", crewPeople, "readings/plans/first.yaml", crewFirst, "readings/plans/second.yaml", crewSecond,
			"readings/record.csv", rows, "revisions.csv", fmt.Sprintf(revisions, wash, "reread"))
		if got := fmt.Sprint(NewStandings(m, on("2026-01-20")).Finished(m.People[0], m.Plans[0])); got != c.want {
			t.Errorf("read as it stands, %s: finished on %s, want %s", name, got, c.want)
		}
	}
	again := rows + "2026-01-12,t-01,wash,read," + wash + ",\n"
	m = shop("register/roles.yaml", crewRoles, "readings/people.csv", crewPeople, "readings/plans/first.yaml", crewFirst, "readings/plans/second.yaml", crewSecond,
		"readings/record.csv", again, "revisions.csv", fmt.Sprintf(revisions, wash, "reread"))
	if got := fmt.Sprint(NewStandings(m, on("2026-01-20")).Finished(m.People[0], m.Plans[0])); got != "[2026-01-12]" {
		t.Errorf("read again: finished on %s", got)
	}
}

// The calendar: 2000 was a leap year, 1900 none and 2100 will be none
// (Gregorian calendar, as in Inter gravissimas, 1582: of the years that end a
// century only those divisible by 400); April, June, September and November
// have 30 days. A role is good on its last day.
func TestRolesRunOutByTheCalendar(t *testing.T) {
	cases := []struct{ gained, every, last string }{
		{"2026-01-31", "1 month", "2026-02-28"},
		{"2024-01-31", "1 month", "2024-02-29"},
		{"2026-03-31", "1 month", "2026-04-30"},
		{"2026-05-31", "1 month", "2026-06-30"},
		{"2026-08-31", "1 month", "2026-09-30"},
		{"2026-10-31", "1 month", "2026-11-30"},
		{"2026-12-31", "2 months", "2027-02-28"},
		{"2024-02-29", "12 months", "2025-02-28"},
		{"2024-02-29", "48 months", "2028-02-29"},
		{"2096-02-29", "4 years", "2100-02-28"},
		{"1999-02-28", "12 months", "2000-02-28"},
		{"2026-02-28", "2 days", "2026-03-02"},
		{"2028-02-28", "2 days", "2028-03-01"},
		{"2026-12-25", "2 weeks", "2027-01-08"},
		{"2026-11-03", "36 months", "2029-11-03"},
	}
	for _, c := range cases {
		m := shop("register/roles.yaml", "cleaner: { name: Cleaner, renew-every: "+c.every+" }\nteacher: { name: Teacher }\n",
			"readings/people.csv", "person,name,roles,started,plans\nt-01,First,cleaner@"+c.gained+",2026-01-31,\n")
		until, runs := Until(&m.People[0].Roles[0])
		after := model.DateOf(until.Time().AddDate(0, 0, 1))
		if !runs || until != on(c.last) || !holds(m.People[0].Roles, "cleaner", until) || holds(m.People[0].Roles, "cleaner", after) {
			t.Errorf("%s from %s: until %s, want %s", c.every, c.gained, until, c.last)
		}
	}
}
