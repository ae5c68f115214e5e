package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// jobOf is a procedure of a manual, and a book of it.
func jobOf(t *testing.T, base map[string]string, head, body string) (*model.Procedure, *schedule.Cache) {
	t.Helper()
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\n" + head + "---\n" + body}
	for name, text := range base {
		files[name] = text
	}
	m, found := bound(files)
	if len(found) > 0 {
		t.Fatalf("%v\n%s", found, body)
	}
	p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })]
	return p, schedule.NewCache(walk.All(m))
}

// spans are the spans of a plan in words: "work 1.1 0-60 x2".
func spans(p *schedule.Plan) string {
	var out []string
	for _, ph := range p.Phases {
		for _, s := range ph.Spans {
			out = append(out, fmt.Sprintf("%s %s %d-%d x%d", [...]string{"work", "wait", "call"}[s.Doing], s.Step.Number, s.From, s.To, s.People))
		}
	}
	return strings.Join(out, ", ")
}

// The chain is what must follow each other: what touches one thing, where one
// of them changes it; what stops for a hold of all; what stands in one step.
// The seconds are worked out by hand, a minute and its multiples.
func TestChain(t *testing.T) {
	for _, c := range []struct {
		name, body string
		chain      int // minutes
		critical   string
	}{
		{"two things", "1. [One](isolate:power). [](time:5min)\n2. [Two](isolate:air). [](time:7min)\n", 7, "1.2"},
		{"a signature between them", "1. [One](isolate:power). [](time:5min)\n2. Get [the word](hold:sign).\n3. [Two](isolate:air). [](time:7min)\n", 12, "1.1 1.3"},
		{"no times at all", "1. [One](isolate:power).\n2. [Two](lock:power).\n", 0, ""},
		{"a signature first", "1. Get [the word](hold:sign). [](time:5min)\n2. [One](isolate:power). [](time:2min)\n3. [Two](isolate:air). [](time:7min)\n", 12, "1.1 1.3"},
		{"all before a signature", "1. [One](isolate:power). [](time:5min)\n2. [Two](isolate:air). [](time:7min)\n3. Get [the word](hold:sign). [](time:1min)\n4. [Three](place:chock). [](time:2min)\n", 10, "1.2 1.3 1.4"},
		{"two signatures", "1. [One](isolate:power). [](time:5min)\n2. Get [the word](hold:sign).\n3. [Two](isolate:air). [](time:7min)\n4. Get [the word](hold:sign).\n5. [Three](place:chock). [](time:2min)\n", 14, "1.1 1.3 1.5"},
		{"two that look", "1. [Lid](remove:lid). [](time:5min)\n2. [Mind](hazard:shock) it. [](time:3min)\n3. [Mind](hazard:shock) it. [](time:4min)\n", 5, "1.1"},
		{"looked at, then changed", "1. [Mind](hazard:shock) it. [](time:3min)\n2. [Mind](hazard:shock) it. [](time:4min)\n3. [Off](isolate:power). [](time:2min)\n", 6, "1.2 1.3"},
		{"changed, then looked at", "1. [Off](isolate:power). [](time:2min)\n2. [Mind](hazard:shock) it. [](time:3min)\n3. [Mind](hazard:shock) it. [](time:4min)\n", 6, "1.1 1.3"},
		{"changed between two looks", "1. [Mind](hazard:shock) it. [](time:3min)\n2. [Off](isolate:power). [](time:2min)\n3. [Mind](hazard:shock) it. [](time:4min)\n4. [Lock](lock:power). [](time:1min)\n", 10, "1.1 1.2 1.3 1.4"},
		{"a sub-step follows its step", "1. [One](isolate:power). [](time:5min)\n   1. [Two](isolate:air). [](time:7min)\n2. [Three](place:chock). [](time:6min)\n", 12, "1.1 1.1.1"},
		{"what follows a sub-step follows no wait beside it", "1. [Off](isolate:power). [](time:1min)\n2. [Wait](hold:wait-power).\n\n   1. [Off](isolate:air). [](time:5min)\n3. [Prove](prove:air) by [the gauge](hold:no-air). [](time:7min)\n", 21, "1.1 1.2"},
		{"a sub-step beside a wait, and what follows it", "1. [Wait](hold:wait-power).\n\n   1. [Off](isolate:air). [](time:15min)\n2. [Prove](prove:air) by [the gauge](hold:no-air). [](time:7min)\n", 22, "1.1.1 1.2"},
		{"words are in no chain", "1. Sweep. [](time:5min)\n2. Look. [](time:7min)\n", 7, "1.2"},
		{"a step whose time is not said", "1. [One](isolate:power).\n2. [Two](lock:power). [](time:5min)\n", 5, "1.2"},
		{"its own time before its wait", "1. [Wait](hold:wait-power). [](time:2min)\n2. [Off](isolate:air). [](time:3min)\n", 22, "1.1"},
	} {
		plan, _ := planOf(t, "people: 3\n", "## Work\n\n"+c.body)
		var critical []string
		for _, s := range plan.Critical {
			critical = append(critical, s.Number)
		}
		if got := strings.Join(critical, " "); plan.Chain != c.chain*60 || got != c.critical {
			t.Errorf("%s: %d s by way of %s, not %d min by %s", c.name, plan.Chain, got, c.chain, c.critical)
		}
	}
}

// callees are what a job performs: one with a wait, a second person and a step
// without a time; one that performs that.
var callees = map[string]string{
	"procedures/low.md":   "---\ntitle: Low\npeople: 2\n---\n## One\n\n1. Sweep. [](time:3min) [](people:2)\n2. Count. [](hold:seen)\n\n## Two\n\n1. Look. [](time:1min)\n2. [Wait](hold:wait).\n",
	"procedures/apart.md": "---\ntitle: Apart\nfor: rig\npeople: 2\n---\n## Work\n\n1. [One](isolate:power). [](time:5min)\n2. [Two](isolate:air). [](time:7min)\n",
	"procedures/high.md":  "---\ntitle: High\npeople: 2\n---\n## Work\n\n1. Sweep. [](time:5min)\n2. [Do it](do:low).\n",
}

// A procedure that is performed takes its time, its people, its waits, its
// second persons and what it has without a time along, also through another.
func TestCallTakesAllAlong(t *testing.T) {
	base := map[string]string{}
	for _, files := range []map[string]string{rig, callees} {
		for name, text := range files {
			base[name] = text
		}
	}
	p, book := jobOf(t, base, "people: 2\n", "## Work\n\n1. [First](do:high). [](time:2min)\n2. Sweep. [](time:4min)\n")
	plan := book.Rows(p)[0].Plan
	// Low: 3 min for two, 1 min, 20 min of wait; High: 5 min and Low.
	want := schedule.Times{Work: (2*2 + 5 + 3*2 + 1 + 4) * 60, Bay: (2 + 5 + 3 + 1 + 20 + 4) * 60, Waits: 20 * 60, Untimed: 1, People: 2}
	got := plan.Times
	got.Least = 0
	if got != want {
		t.Errorf("%+v, not %+v", got, want)
	}
	// The step's own time is for as many as what it performs takes.
	if got := spans(plan); got != "work 1.1 0-120 x2, call 1.1 120-1860 x2, work 1.2 1860-2100 x1" {
		t.Errorf("the spans are %s", got)
	}
	ph := plan.Phases[0]
	if len(ph.Waited) != 1 || ph.Waited[0].Seconds != 20*60 || ph.Waited[0].Step.Number != "1.1" {
		t.Errorf("waited: %v", ph.Waited)
	}
	if len(ph.Seconds) != 1 || ph.Seconds[0].Step.Number != "1.1" || ph.Seconds[0].By.ID != "boss" {
		t.Errorf("the seconds are %v", ph.Seconds)
	}
	// One without a wait adds none; in the chain it takes no longer than it must.
	p, book = jobOf(t, base, "for: rig\npeople: 2\n", "## Work\n\n1. [Both](do:apart).\n")
	plan = book.Rows(p)[0].Plan
	if len(plan.Phases[0].Waited) != 0 || plan.Bay != 12*60 || plan.Chain != 7*60 {
		t.Errorf("waited %v, %d s in the bay, a chain of %d s", plan.Phases[0].Waited, plan.Bay, plan.Chain)
	}
}

// A phase's time is shared out to the second, and none of it is lost; what a
// strip took is shared out over its refit as it took, with the people of each.
func TestTimesAreSharedOut(t *testing.T) {
	for _, c := range []struct{ name, body, want string }{
		{"to the second", "## Work\n\n[](time:100s)\n\n1. Sweep.\n2. Look.\n3. Count.\n", "work 1.1 0-33 x1, work 1.2 33-66 x1, work 1.3 66-100 x1"},
		{"beside a step with its own", "## Work\n\n[](time:100s)\n\n1. Sweep.\n2. Look. [](time:30s)\n3. Count.\n", "work 1.1 0-50 x1, work 1.2 50-80 x1, work 1.3 80-130 x1"},
		{"among sub-steps", "## Work\n\n[](time:100s)\n\n1. Sweep:\n   1. Left.\n   2. Right.\n", "work 1.1.1 0-50 x1, work 1.1.2 50-100 x1"},
		{"over the refit as the strip took", "## Work\n\n1. [Lid](remove:lid). [](time:10min) [](people:2)\n2. [Pump](remove:pump). [](time:5min)\n\n## Back\n\n1. [All back](reverse:work). [](time:9min)\n",
			"work 1.1 0-600 x2, work 1.2 600-900 x1, work 2.1 900-1080 x1, work 2.1 1080-1440 x2"},
		{"what one step took off together, once", "## Work\n\n1. [Lid](remove:lid), [chock](place:chock). [](time:10min)\n\n## Back\n\n1. [All back](reverse:work).\n",
			"work 1.1 0-600 x1, work 2.1 600-1200 x1"},
		{"evenly where the strip has no time", "## Work\n\n1. [Lid](remove:lid).\n2. [Pump](remove:pump).\n\n## Back\n\n1. [All back](reverse:work). [](time:9min) [](people:2)\n",
			"work 2.1 0-270 x2, work 2.1 270-540 x2"},
		{"a refit without any time", "## Work\n\n1. [Lid](remove:lid).\n\n## Back\n\n1. [All back](reverse:work).\n", ""},
	} {
		plan, _ := planOf(t, "people: 2\n", c.body)
		if got := spans(plan); got != c.want {
			t.Errorf("%s: %s, not %s", c.name, got, c.want)
		}
	}
}

// Steps are without a time where neither they nor their phase say one: not
// those that have sub-steps, wait, or perform something.
func TestUntimed(t *testing.T) {
	for _, c := range []struct {
		name, body string
		untimed    int
		given      int // seconds of the phase
	}{
		{"none has any", "1. Sweep.\n2. Look.\n", 2, 0},
		{"one has", "1. Sweep. [](time:1min)\n2. Look.\n", 1, 0},
		{"the phase has", "[](time:4min)\n\n1. Sweep.\n2. Look.\n", 0, 240},
		{"the phase has, and each step", "[](time:4min)\n\n1. Sweep. [](time:1min)\n2. Look. [](time:1min)\n", 0, 0},
		{"a wait", "1. [Wait](hold:wait).\n", 0, 0},
		{"a refit of what has none", "1. [Lid](remove:lid).\n\n## Back\n\n1. [All back](reverse:work).\n", 2, 0},
		{"a step with sub-steps", "1. Sweep:\n   1. Left. [](time:1min)\n   2. Right.\n", 1, 0},
		{"a phase whose sub-steps have it", "[](time:4min)\n\n1. Sweep:\n   1. Left. [](time:1min)\n   2. Right. [](time:1min)\n", 0, 0},
	} {
		p, book := jobOf(t, rig, "for: rig\n", "## Work\n\n"+c.body)
		if plan := book.Rows(p)[0].Plan; plan.Untimed != c.untimed {
			t.Errorf("%s: %d without a time, not %d", c.name, plan.Untimed, c.untimed)
		}
		if got := schedule.Given(p.Phases[0]); got != c.given {
			t.Errorf("%s: the phase gives %d s, not %d", c.name, got, c.given)
		}
	}
}

// A phase's first paragraph gives its time and its people; one person and no
// time where it says nothing.
func TestLead(t *testing.T) {
	p, _ := jobOf(t, rig, "for: rig\npeople: 3\n", "## A\n\n[](time:4min) [](people:3)\n\n1. Sweep.\n\n## B\n\nSlowly.\n\n1. Sweep.\n\n## C\n\n1. Sweep.\n")
	for i, want := range [][2]int{{240, 3}, {0, 1}, {0, 1}} {
		if seconds, people := schedule.Lead(p.Phases[i]); seconds != want[0] || people != want[1] {
			t.Errorf("phase %d: %d s for %d", i+1, seconds, people)
		}
	}
}

// From ten minutes on a time is said without its seconds, and never as more
// than it is.
func TestRough(t *testing.T) {
	for seconds, want := range map[int]int{0: 0, 59: 59, 61: 61, 599: 599, 600: 600, 601: 600, 659: 600, 660: 660, 3661: 3660} {
		if got := schedule.Rough(seconds); got != want {
			t.Errorf("%d s is said as %d, not %d", seconds, got, want)
		}
	}
}

// The waits that make up a tenth of the time in the bay, the longest first.
func TestLongWaits(t *testing.T) {
	base := map[string]string{}
	for name, text := range rig {
		base[name] = text
	}
	base["register/holds.yaml"] += "short: { name: short, kind: wait, for: 595 s }\ntenth: { name: tenth, kind: wait, for: 10 min }\nlong: { name: long, kind: wait, for: 15 min }\n"
	// 3905 s of work and 2095 of waits: a tenth is 10 min.
	p, book := jobOf(t, base, "for: rig\n", "## Work\n\n1. [Wait](hold:short). [](time:3905s)\n2. [Wait](hold:tenth).\n\n## More\n\n1. [Wait](hold:long).\n")
	var got []string
	for _, s := range book.Rows(p)[0].LongWaits() {
		got = append(got, fmt.Sprint(s.Step.Number, " ", (s.To-s.From)/60))
	}
	if strings.Join(got, ", ") != "2.1 15, 1.2 10" {
		t.Errorf("the long waits are %q", got)
	}
	p, book = jobOf(t, base, "for: rig\n", "## Work\n\n1. [Wait](hold:long).\n2. [Wait](hold:tenth).\n3. [Wait](hold:long).\n")
	got = nil
	for _, s := range book.Rows(p)[0].LongWaits() {
		got = append(got, s.Step.Number)
	}
	if strings.Join(got, ", ") != "1.1, 1.3, 1.2" {
		t.Errorf("the long waits, the longest first and of two the earlier, are of the steps %q", got)
	}
}

// The shortest and the longest of a procedure's rows.
func TestRange(t *testing.T) {
	rows := rowsOf(t, "", "", "## Work\n\n1. [With a lamp](when:lamp), sweep. [](time:3min)\n2. [On two](when:two), sweep. [](time:9min)\n3. Sweep. [](time:2min)\n")
	if least, most := schedule.Range(rows); least != 2*60 || most != 14*60 {
		t.Errorf("%d to %d s", least, most)
	}
	if least, most := schedule.Range(nil); least != 0 || most != 0 {
		t.Errorf("of no rows %d to %d s", least, most)
	}
}

// Of more than ten options the later ones count as absent: a minute doubled for
// each, so that every combination has a time of its own.
func TestMoreOptionsThanAreToldApart(t *testing.T) {
	options, body := "", "## Work\n\n1. Sweep. [](time:1s)\n"
	for i := range 11 {
		id := string(rune('a' + i))
		options += fmt.Sprintf("  %s: option %s\n", id, id)
		body += fmt.Sprintf("1. [With it](when:%s), sweep. [](time:%ds)\n", id, 2<<i)
	}
	p, book := jobOf(t, map[string]string{"shop.yaml": "title: Shop\n", "machines/many.yaml": "name: Many\noptions:\n" + options}, "for: many\n", body)
	rows := book.Rows(p)
	if least, most := schedule.Range(rows); len(rows) != 1024 || least != 1 || most != 2047 {
		t.Errorf("%d rows from %d to %d s, not 1024 from 1 to 2047", len(rows), least, most)
	}
}

// What is forgotten is worked out anew, and what is not stays.
func TestForget(t *testing.T) {
	p, book := jobOf(t, rig, "for: rig\n", "## Work\n\n1. Sweep. [](time:1min)\n")
	if got := book.Rows(p)[0].People; got != 1 {
		t.Fatalf("%d people", got)
	}
	p.People = 3
	if got := book.Rows(p)[0].People; got != 1 {
		t.Errorf("%d people before it is forgotten", got)
	}
	book.Forget(p)
	if got := book.Rows(p)[0].People; got != 3 {
		t.Errorf("%d people after it was forgotten", got)
	}
}

// What a callee touches is worked out anew where that is forgotten, and nothing
// else is.
func TestForgetWhatACalleeTouches(t *testing.T) {
	p, book := jobOf(t, bench, "for: rig\n", "## Work\n\n1. [One](do:open).\n2. [Two](do:chock).\n3. [Three](alter:relief).\n")
	free := func() [2]bool { return [2]bool{book.Free(p.Steps[0], p.Steps[2]), book.Free(p.Steps[1], p.Steps[2])} }
	if got := free(); got != [2]bool{true, true} {
		t.Fatalf("free: %v", got)
	}
	for _, call := range p.Calls {
		call.To.(*model.Procedure).Unread = true
	}
	book.Forget(p.Calls[0].To.(*model.Procedure))
	if got := free(); got != [2]bool{false, true} {
		t.Errorf("free after the first was forgotten: %v", got)
	}
}

// Of units that take the same time a row has, phase by phase, as many steps
// without a time as the unit with the most, and says that they differ.
func TestUnitsDifferInWhatHasNoTime(t *testing.T) {
	rows := rowsOf(t, "", "", "## A\n\n1. Sweep. [](time:2min)\n2. [On two](when:two), look.\n\n## B\n\n1. Sweep. [](time:1min)\n2. [Without](when:!two), look.\n\n## C\n\n1. Sweep. [](time:1min)\n2. Look.\n")
	if len(rows) != 1 || !rows[0].Varies || rows[0].Untimed != 3 {
		t.Fatalf("%d rows, vary %v, %d without a time", len(rows), rows[0].Varies, rows[0].Untimed)
	}
	for i, varies := range []bool{true, true, false} {
		if ph := rows[0].Phases[i]; ph.Varies != varies || ph.Untimed != 1 {
			t.Errorf("phase %s: varies %v, %d without a time", ph.ID, ph.Varies, ph.Untimed)
		}
	}
}

// A callee is taken for what is done of it on the unit: with the chock placed in
// it, clearing it comes after the five minutes that it takes its one worker; where
// it places none, nothing has to.
func TestChainOfACalleeIsTheUnits(t *testing.T) {
	base := map[string]string{"procedures/marks.md": "---\ntitle: Marks\nfor: lift\n---\n## Work\n\n1. [On two posts](when:two), [chock](place:chock). [](time:4min)\n2. Sweep. [](time:1min)\n"}
	for name, text := range lift {
		base[name] = text
	}
	p, book := jobOf(t, base, "for: lift\npeople: 2\n", "## Work\n\n1. [Do it](do:marks).\n2. [Away](clear:chock). [](time:7min)\n")
	var got []string
	for _, r := range book.Rows(p) {
		got = append(got, fmt.Sprint(r.Where[0][0].Is, " ", r.Chain/60))
	}
	if strings.Join(got, ", ") != "false 7, true 12" {
		t.Errorf("the chains of units without and with two posts: %q min", got)
	}
}
