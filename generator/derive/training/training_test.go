package training

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"gonum.org/v1/gonum/graph/simple"
	"gonum.org/v1/gonum/graph/topo"
	"pgregory.net/rapid"

	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN.

// calls is a manual of procedures that perform some of those after them.
func calls(t *rapid.T, n int) []*model.Procedure {
	list := make([]*model.Procedure, n)
	for i := range list {
		list[i] = &model.Procedure{Status: "issued", Entry: model.Entry{ID: fmt.Sprint(i)}}
	}
	kind, _ := model.KindNamed("do")
	for i, p := range list {
		for _, to := range list[i+1:] {
			if rapid.IntRange(0, 3).Draw(t, "calls") == 0 {
				p.Calls = append(p.Calls, &model.Link{Kind: kind, To: to})
			}
		}
	}
	return list
}

// The order is one that gonum's topological sort accepts as one of the graph's,
// closed over what is performed, and in the plan's order where that is free.
func TestOrderAgainstGonum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		list := calls(t, rapid.IntRange(1, 12).Draw(t, "n"))
		plan := &model.Plan{}
		for _, i := range rapid.Permutation(indexes(len(list))).Draw(t, "plan")[:rapid.IntRange(1, len(list)).Draw(t, "listed")] {
			plan.Read = append(plan.Read, model.Ref[model.Procedure]{To: list[i]})
		}
		order := Order(plan)
		at := map[*model.Procedure]int64{}
		g := simple.NewDirectedGraph()
		for i, r := range order {
			at[r.Procedure] = int64(i)
			g.AddNode(simple.Node(i))
		}
		if len(at) != len(order) || len(order) != len(reachable(plan)) {
			t.Fatalf("%d readings, %d of them different, %d wanted", len(order), len(at), len(reachable(plan)))
		}
		for _, r := range order {
			for _, callee := range r.BuildsOn {
				g.SetEdge(g.NewEdge(simple.Node(at[callee]), simple.Node(at[r.Procedure])))
			}
		}
		// Numbered by our order and sorted by number where free, gonum's order
		// is 0, 1, 2 … exactly if ours is a topological one.
		sorted, err := topo.SortStabilized(g, nil)
		if err != nil {
			t.Fatal(err)
		}
		for i, node := range sorted {
			if node.ID() != int64(i) {
				t.Fatalf("gonum puts %d at %d", node.ID(), i)
			}
		}
	})
}

// What a procedure performs is each once: not itself, and not what is not known.
func TestWhatIsPerformed(t *testing.T) {
	one, other := &model.Procedure{Entry: model.Entry{ID: "one"}}, &model.Procedure{Entry: model.Entry{ID: "other"}}
	p := &model.Procedure{Entry: model.Entry{ID: "p"}}
	p.Calls = []*model.Link{{}, {To: one}, {To: p}, {To: other}, {To: one}}
	if got := performs(p); !slices.Equal(got, []*model.Procedure{one, other}) {
		t.Errorf("it performs %v", got)
	}
}

func indexes(n int) []int {
	var out []int
	for i := range n {
		out = append(out, i)
	}
	return out
}

func reachable(plan *model.Plan) map[*model.Procedure]bool {
	out := map[*model.Procedure]bool{}
	var todo []*model.Procedure
	for _, r := range plan.Read {
		todo = append(todo, r.To)
	}
	for len(todo) > 0 {
		p := todo[0]
		todo = todo[1:]
		if !out[p] {
			out[p] = true
			todo = append(todo, performs(p)...)
		}
	}
	return out
}

const (
	sweep  = "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep the bay.\n"
	wash   = "---\ntitle: Wash\n---\n## Work\n\n1. [Sweep](do:sweep).\n2. Wash the floor.\n"
	alone  = "---\ntitle: Alone\n---\n## Work\n\n1. Sit down.\n"
	roles  = "cleaner: { name: Cleaner, renew-every: 12 months }\nteacher: { name: Teacher }\n"
	people = "person,name,roles,started,plans\nt-01,First,,2026-01-31,start\nt-02,Second,teacher@2026-01-01 cleaner@2024-02-29,2026-01-01,\n"
	plan   = "title: Start\nread: [alone, wash]\nwatch: [wash]\nperform: [sweep: 2]\nassessor: teacher\nwithin: 1 month\n"
	heads  = "date,person,procedure,act,fingerprint,by\n"
	early  = "person,name,roles,started,plans\nt-01,First,,2026-01-01,start\nt-02,Second,teacher@2026-01-01 cleaner@2024-02-29,2026-01-01,\n"
	revs   = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\n"
)

func shop(more ...string) *model.Manual {
	files := map[string]string{
		"shop.yaml": "title: Shop\n", "register/roles.yaml": roles, "readings/people.csv": people, "readings/plans/start.yaml": plan,
		"procedures/sweep.md": sweep, "procedures/wash.md": wash, "procedures/alone.md": alone,
	}
	for i := 0; i < len(more); i += 2 {
		files[more[i]] = more[i+1]
	}
	m, _ := bind.Manual(source.FromText(files))
	return m
}

func on(text string) model.Date {
	d, ok := model.ParseDate(text)
	if !ok {
		panic(text)
	}
	return d
}

func print(m *model.Manual, id string) string {
	for _, p := range m.Procedures {
		if p.ID == id {
			return fingerprint.NewCache().Of(p)
		}
	}
	panic(id)
}

func standing(m *model.Manual, today, id string) Standing {
	for _, s := range NewStandings(m, on(today)).Standings() {
		if s.Reading.Procedure.ID == id {
			return s
		}
	}
	panic(id)
}

func TestAPlanIsClosedAndInOrder(t *testing.T) {
	var got []string
	for _, r := range Order(shop().Plans[0]) {
		got = append(got, fmt.Sprint(r.Procedure.ID, " ", r.Added))
	}
	if want := []string{"alone false", "sweep true", "wash false"}; !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

// 2380 words are ten minutes (Brysbaert 2019: 238 words a minute).
func TestReadingTime(t *testing.T) {
	long := shop("procedures/alone.md", "---\ntitle: A\n---\n## Work\n\n1. "+strings.Repeat("word ", 2379)+"\n")
	for _, r := range Order(long.Plans[0]) {
		if r.Procedure.ID == "alone" && r.Seconds != 600 {
			t.Errorf("%d s, want 600", r.Seconds)
		}
	}
}

// 2026 is no leap year: a month from 31 January is 28 February. 2024 is one: a
// year from its 29 February is 28 February 2025 (Gregorian calendar).
func TestDates(t *testing.T) {
	m := shop()
	if s := standing(m, "2026-02-28", "alone"); s.By != on("2026-02-28") || s.State != Due {
		t.Errorf("%s by %s", s.State, s.By)
	}
	if s := standing(m, "2026-03-01", "alone"); s.State != Overdue {
		t.Errorf("%s after its last day", s.State)
	}
	for _, within := range []string{"", "within: soon\n"} { // nothing can be late
		m := shop("readings/plans/start.yaml", "title: Start\nread: [alone]\n"+within)
		if s := standing(m, "2036-03-01", "alone"); s.State != Due || !s.By.IsZero() {
			t.Errorf("%q: %s by %s", within, s.State, s.By)
		}
	}
	second := m.People[1]
	for day, want := range map[string]bool{"2024-02-28": false, "2024-02-29": true, "2025-02-28": true, "2025-03-01": false} {
		if got := holds(second.Roles, "cleaner", on(day)); got != want {
			t.Errorf("%s: holds it %v, want %v", day, got, want)
		}
	}
}

func TestAReadingHoldsUntilARevisionAsksForItAgain(t *testing.T) {
	now := print(shop(), "alone")
	was := "1-1111111111111111"
	row := func(n int, date, print, readers string) string {
		return fmt.Sprintf("alone,%d,%s,%s,why,a,b,,,%s\n", n, date, print, readers)
	}
	cases := map[string]struct {
		read string
		revs string
		want State
	}{
		"what stands":                    {now, "", Good},
		"something else, never issued":   {was, "", Stale},
		"reread":                         {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-02-01", now, "reread"), Stale},
		"tell":                           {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-02-01", now, "tell"), Good},
		"none":                           {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-02-01", now, "none"), Good},
		"reread, then none":              {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-01-20", "1-2", "reread") + row(3, "2026-02-01", now, "none"), Stale},
		"of another manual":              {"1-9999999999999999", row(1, "2026-01-01", now, "reread"), Stale},
		"an older form, on the day":      {"0-1111111111111111", row(1, "2026-01-15", now, "reread"), Good},
		"an older form, before":          {"0-1111111111111111", row(1, "2026-01-01", "0-1111111111111111", "reread") + row(2, "2026-01-16", now, "reread"), Stale},
		"an older form, then a comma":    {"0-1111111111111111", row(1, "2026-01-01", "0-1111111111111111", "reread") + row(2, "2026-01-16", now, "none"), Good},
		"a revision that is yet to come": {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-02-09", now, "reread"), Good},
		"none written: it counts not":    {"", "", Overdue},
		"the same words again, reread":   {now, row(1, "2026-01-01", now, "reread") + row(2, "2026-02-01", now, "reread"), Stale},
		"the same words again, tell":     {now, row(1, "2026-01-01", now, "reread") + row(2, "2026-02-01", now, "tell"), Good},
		"before anything was issued":     {now, row(1, "2026-01-16", now, "reread"), Good},
		"stale for a month and a day":    {was, row(1, "2026-01-01", was, "reread") + row(2, "2026-01-02", was, "reread") + row(3, "2026-01-16", "1-3333333333333333", "none"), Good},
	}
	for name, c := range cases {
		m := shop("readings/record.csv", heads+"2026-01-15,t-01,alone,read,"+c.read+",\n", "revisions.csv", revs+c.revs,
			"readings/people.csv", early)
		if got := standing(m, "2026-02-08", "alone").State; got != c.want {
			t.Errorf("%s: %s, want %s", name, got, c.want)
		}
	}
}

// A row of words that were never issued, written by hand, says nothing against a
// reading of words that were, whichever comes first.
func TestWhatWasNeverIssuedHidesNoReading(t *testing.T) {
	now := print(shop(), "alone")
	good, by := "2026-01-15,t-01,alone,read,"+now+",\n", "2026-01-20,t-01,alone,read,1-9999999999999999,\n"
	issued := "alone,1,2026-01-01," + now + ",why,a,b,,,reread\n"
	for name, rows := range map[string]string{"behind it": good + by, "before it": strings.Replace(by, "01-20", "01-10", 1) + good, "in another order": by + good} {
		m := shop("readings/record.csv", heads+rows, "revisions.csv", revs+issued, "readings/people.csv", early)
		if s := standing(m, "2026-02-08", "alone"); s.State != Good || s.Last.Fingerprint != now {
			t.Errorf("%s: %s by %s", name, s.State, s.Last.Fingerprint)
		}
		if last := NewStandings(m, on("2026-02-08")).lastReadOn(m.People[0], m.Record[0].Procedure.To, on("2026-02-08")); last.Fingerprint != now {
			t.Errorf("%s: on the day of a job it is %s", name, last.Fingerprint)
		}
	}
	m := shop("readings/record.csv", heads+by, "revisions.csv", revs+issued, "readings/people.csv", early)
	if s := standing(m, "2026-02-08", "alone"); s.State != Stale {
		t.Errorf("alone it is %s", s.State)
	}
}

// Who reads the old words after the new ones has read the new ones still.
func TestOldWordsReadLaterTakeNothingBack(t *testing.T) {
	now := print(shop(), "alone")
	rows := "2026-01-20,t-01,alone,read," + now + ",\n2026-01-25,t-01,alone,read,1-0000000000000001,\n"
	issued := "alone,1,2026-01-01,1-0000000000000001,why,a,b,,,reread\nalone,2,2026-01-15," + now + ",why,a,b,,,reread\n"
	m := shop("readings/record.csv", heads+rows, "revisions.csv", revs+issued, "readings/people.csv", early)
	if s := standing(m, "2026-02-08", "alone"); s.State != Good || s.Last.Fingerprint != now {
		t.Errorf("%s by %s", s.State, s.Last.Fingerprint)
	}
	h := NewStandings(m, on("2026-02-08"))
	for day, want := range map[string]string{"2026-02-08": now, "2026-01-22": now} {
		if last := h.lastReadOn(m.People[0], m.Record[0].Procedure.To, on(day)); last.Fingerprint != want {
			t.Errorf("on %s it is %s", day, last.Fingerprint)
		}
	}
	m = shop("readings/record.csv", heads+strings.SplitAfter(rows, "\n")[1], "revisions.csv", revs+issued, "readings/people.csv", early)
	if s := standing(m, "2026-02-08", "alone"); s.State != Stale {
		t.Errorf("the old words alone: %s", s.State)
	}
}

// What counts as performed is what someone saw who may: not oneself, not
// someone without the assessor's role on that day.
func TestWhoMayWitness(t *testing.T) {
	rows := "2026-02-01,t-01,sweep,performed,x,t-02\n2026-02-01,t-01,sweep,performed,x,\n2026-02-02,t-01,sweep,performed,x,t-01\n" +
		"2025-12-31,t-01,sweep,performed,x,t-02\n2026-02-03,t-01,sweep,performed,x,t-02\n2026-05-05,t-01,sweep,performed,x,t-02\n"
	m := shop("readings/record.csv", heads+strings.ReplaceAll(rows, ",x,", ","+print(shop(), "sweep")+","))
	if s := standing(m, "2026-05-04", "sweep"); s.Performed != 2 || s.Perform != 2 {
		t.Errorf("performed %d of %d, want 2 of 2: one before the teacher was one, one unseen, one seen by oneself, one that is yet to come", s.Performed, s.Perform)
	}
}

// 29 CFR 1910.147(c)(7)(iii): employees are retrained whenever there is a
// change in the energy control procedures, and (iii)(B) additionally when an
// inspection shows deviations; (iv) the employer certifies that training has
// been done and is kept up to date, with each employee's name and dates. Shown
// here: a changed procedure makes its readings stale, and each record holds
// person and date. (c)(6)(i), the yearly inspection, is review-every: 12 months
// in the shop's file, which is the default. Local codes come first.
func TestLockoutTrainingIsKeptUpToDate(t *testing.T) {
	m := shop()
	if span, ok := m.Shop.ReviewEvery.Span(); !ok || span.AddTo(on("2025-06-01").Time()) != on("2026-06-01").Time() {
		t.Error("(c)(6)(i): the default review is not yearly")
	}
	row := heads + "2026-01-15,t-01,alone,read," + print(m, "alone") + ",\n"
	before := shop("readings/people.csv", early, "readings/record.csv", row)
	after := shop("readings/people.csv", early, "readings/record.csv", row, "procedures/alone.md", strings.Replace(alone, "Sit down", "Lock the plug", 1))
	if got := standing(before, "2026-02-01", "alone"); got.State != Good || got.Last.Person.ID != "t-01" || got.Last.Date != on("2026-01-15") {
		t.Errorf("(c)(7)(iv): %v", got)
	}
	if got := standing(after, "2026-02-01", "alone").State; got != Stale {
		t.Errorf("(c)(7)(iii): %s after the procedure changed", got)
	}
}

// Who left is in no list, holds nothing and witnesses nothing; what was before
// counts, and a row of a day on which they were not there does not. The last
// day, and the first day again, are days on which they were there.
func TestPeopleComeAndGo(t *testing.T) {
	const gone = "person,name,roles,started,plans,left\nt-01,First,,2026-01-01,start,\n" +
		"t-02,Second,teacher@2026-01-01,2026-01-01,start,2026-03-15..2026-08-02 2027-01-31\n"
	days := map[string]bool{
		"2025-12-31": false, "2026-01-01": true, "2026-03-15": true, "2026-03-16": false, "2026-08-01": false,
		"2026-08-02": true, "2027-01-31": true, "2027-02-01": false, "2030-01-01": false,
	}
	for day, there := range days {
		p := print(shop(), "sweep")
		m := shop("readings/people.csv", gone, "readings/record.csv", heads+"2026-01-02,t-02,sweep,read,"+p+",\n"+day+",t-01,sweep,performed,"+p+",t-02\n"+day+",t-02,wash,watched,"+p+",\n")
		h := NewStandings(m, on(day))
		listed := slices.ContainsFunc(h.Standings(), func(s Standing) bool { return s.Person.ID == "t-02" })
		before := day < "2026"
		if listed != (there || before) || h.HoldsRole(m.People[1], "teacher", on(day)) != there || slices.Contains(h.Here(), m.People[1]) != (there || before) {
			t.Errorf("%s: listed %v, there %v", day, listed, there)
		}
		if got := NewStandings(m, on("2026-12-01")).lastRead(m.People[1], m.Record[0].Procedure.To); got == nil {
			t.Error("what was before does not count")
		}
		if day < "2026-02" || day > "2026-12" {
			continue
		}
		s := standing(m, "2026-12-01", "sweep")
		if got := s.Performed == 1; got != there {
			t.Errorf("%s: a performance under the eye of who was there %v counts %v", day, there, got)
		}
		for _, x := range NewStandings(m, on("2026-12-01")).Standings() {
			if x.Person.ID == "t-02" && x.Reading.Procedure.ID == "wash" && x.Watched != there {
				t.Errorf("%s: what was watched counts %v, and there %v", day, x.Watched, there)
			}
		}
	}
}

// A job's readers have read everything that it performs; who has read the job
// alone is told apart.
func TestReadersHaveReadAllThatTheJobPerforms(t *testing.T) {
	wash, sweep := print(shop(), "wash"), print(shop(), "sweep")
	rows := "2026-02-01,t-01,wash,read," + wash + ",\n2026-02-01,t-02,wash,read," + wash + ",\n2026-02-02,t-02,sweep,read," + sweep + ",\n"
	m := shop("readings/record.csv", heads+rows)
	job := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "wash" })]
	c := NewStandings(m, on("2026-02-03")).Crew(job)
	if len(c.Readers) != 1 || c.Readers[0].ID != "t-02" || len(c.Partly) != 1 || c.Partly[0].Person.ID != "t-01" || c.Partly[0].Lacks[0].ID != "sweep" {
		t.Errorf("%+v", c)
	}
}

// A stale reading that was not read again in the plan's time is overdue, again.
func TestAStaleReadingBecomesOverdue(t *testing.T) {
	now, was := print(shop(), "alone"), "1-1111111111111111"
	m := shop("readings/people.csv", early, "readings/record.csv", heads+"2026-01-15,t-01,alone,read,"+was+",\n",
		"revisions.csv", revs+"alone,1,2026-01-01,"+was+",why,a,b,,,reread\nalone,2,2026-02-10,"+now+",why,a,b,,,reread\n")
	for day, want := range map[string]State{"2026-03-10": Stale, "2026-03-11": Overdue} {
		s := standing(m, day, "alone")
		if s.State != want || s.By != on("2026-03-10") || s.Last == nil {
			t.Errorf("%s: %s by %s, want %s", day, s.State, s.By, want)
		}
	}
	for _, i := range NewStandings(m, on("2026-03-11")).Items() {
		if i.What.Base().ID == "alone" && i.Act == "read" && (i.State != Overdue || !strings.HasSuffix(i.ToDo(), " again") || i.Last == nil) {
			t.Errorf("%+v: %s", i, i.ToDo())
		}
	}
}

// A renewal that lies ahead does not hide a role that ran out, and it is said
// what is to be done again.
func TestARenewalAheadHidesNothing(t *testing.T) {
	const ahead = "person,name,roles,started,plans\nt-01,First,cleaner@2024-01-01 cleaner@2027-01-01,2024-01-01,start\n"
	m := shop("readings/people.csv", ahead, "readings/plans/start.yaml", plan+"gives: [cleaner]\n")
	var got []string
	for _, i := range NewStandings(m, on("2026-06-01")).Items() {
		if i.Act == "renew" {
			got = append(got, string(i.State)+" "+i.By.String()+" "+i.ToDo())
		}
	}
	if len(got) != 1 || !strings.HasPrefix(got[0], "run out 2025-01-01 renew Cleaner: read ") || !strings.Contains(got[0], "perform Sweep 2 times") {
		t.Errorf("%q", got)
	}
}

// What is retired is asked of nobody, nor is what only that performs.
func TestWhatIsRetiredIsNotToBeRead(t *testing.T) {
	m := shop("procedures/wash.md", strings.Replace(wash, "---\n", "---\nstatus: retired\n", 1), "readings/plans/start.yaml", "title: Start\nread: [wash, alone]\n")
	for _, s := range NewStandings(m, on("2026-06-01")).Standings() {
		if s.Reading.Procedure.ID != "alone" {
			t.Errorf("asked: %s", s.Reading.Procedure.ID)
		}
	}
	if got := len(Order(m.Plans[0])); got != 1 {
		t.Errorf("%d in the plan's order", got)
	}
}

// A row with an error counts for nothing, and a start that cannot be read gives
// no year 1.
func TestARowWithAnErrorCountsForNothing(t *testing.T) {
	now := print(shop(), "alone")
	m := shop("readings/people.csv", strings.Replace(early, "First,,2026-01-01", "First,cleaner@2026-13-01 teacher,2026-02-30", 1),
		"readings/record.csv", heads+"2026-02-01,t-01,alone,read,"+now+",nobody\n2026-02-01,t-01,alone,raed,"+now+",\n2026-02-31,t-01,alone,read,"+now+",\n")
	s := standing(m, "2026-05-01", "alone")
	if s.Last != nil || s.State != Due || !s.By.IsZero() {
		t.Errorf("%s by %s, %v", s.State, s.By, s.Last)
	}
	h := NewStandings(m, on("2026-05-01"))
	if h.HoldsRole(m.People[0], "cleaner", on("2026-05-01")) || h.HoldsRole(m.People[0], "teacher", on("2026-05-01")) {
		t.Error("a role is held from a day that could not be read")
	}
}

// A revision that was issued with tell reaches those whose good reading is older,
// until they are told or read it; one without a hash of its words reaches nobody.
func TestWhoIsToBeTold(t *testing.T) {
	now := print(shop(), "alone")
	const head = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words\n"
	first := "alone,1,2026-01-02," + now + ",First,a,b,,,reread,1111111111111111\n"
	tell := "alone,2,2026-02-01," + now + ",A word,a,b,,,tell,2222222222222222\n"
	read := heads + "2026-01-15,t-01,alone,read," + now + ",\n"
	cases := map[string]struct {
		rows, revs string
		want       int
	}{
		"issued with tell":      {read, head + first + tell, 1},
		"told before":           {read + "2026-01-31,t-01,alone,told,,\n", head + first + tell, 1},
		"told on the day":       {read + "2026-02-01,t-01,alone,told,,\n", head + first + tell, 0},
		"read again":            {read + "2026-02-02,t-01,alone,read," + now + ",\n", head + first + tell, 0},
		"no hash of the words":  {read, head + first + strings.Replace(tell, "2222222222222222", "", 1), 0},
		"to be read again":      {read, head + first + tell + strings.NewReplacer("alone,2,2026-02-01", "alone,3,2026-02-02", "tell", "reread").Replace(tell), 0},
		"and a comma behind it": {read, head + first + tell + strings.NewReplacer("alone,2,2026-02-01", "alone,3,2026-02-02", "tell", "none").Replace(tell), 1},
	}
	for name, c := range cases {
		m := shop("readings/people.csv", early, "readings/record.csv", c.rows, "revisions.csv", c.revs)
		n := 0
		for _, i := range NewStandings(m, on("2026-02-08")).Items() {
			if i.Act == "tell" {
				n++
				if i.Person.ID != "t-01" || i.ToDo() != "be told of Alone, revision 2: A word" {
					t.Errorf("%s: %s", name, i.ToDo())
				}
			}
		}
		if n != c.want {
			t.Errorf("%s: %d to be told, want %d", name, n, c.want)
		}
	}
}

func TestTwoTrainersAtOnceLoseNothing(t *testing.T) {
	folder := t.TempDir()
	m := shop()
	var all sync.WaitGroup
	for _, person := range []string{"t-01", "t-02"} {
		all.Go(func() {
			for range 20 {
				if _, err := RecordAll(m, folder, []Entry{{Folder: folder, Person: person, Procedure: "sweep", Act: "read", Date: on("2026-05-04")}}); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
	data, err := os.ReadFile(filepath.Join(folder, "readings", "record.csv"))
	if err != nil {
		t.Fatal(err)
	}
	read := shop("readings/record.csv", string(data))
	if len(read.Record) != 40 {
		t.Errorf("%d rows, want 40", len(read.Record))
	}
}

func TestRecordRefusesWhatIsNotKnown(t *testing.T) {
	for _, e := range []Entry{
		{Person: "t-09", Procedure: "sweep"}, {Person: "t-01", Procedure: "swep"},
		{Person: "t-01", Procedure: "sweep", By: "t-09"}, {Person: "t-01", Procedure: "sweep", By: "t-01"},
	} {
		e.Folder, e.Date, e.Act = t.TempDir(), on("2026-05-04"), "performed"
		if _, err := RecordAll(shop(), e.Folder, []Entry{e}); err == nil {
			t.Errorf("%v was recorded", e)
		}
		if files, _ := os.ReadDir(e.Folder); len(files) > 0 {
			t.Errorf("%v: a file was written", e)
		}
	}
}

// RFC 5545: lines end with CRLF and have at most 75 octets (3.1); a comma, a
// semicolon and a backslash in a text are escaped (3.3.11); an event has a UID
// and a DTSTAMP (3.6.1).
func TestICalendar(t *testing.T) {
	long := &model.Procedure{Title: "Über, lang; \\ " + strings.Repeat("ü", 90), Entry: model.Entry{ID: "long"}}
	item := Item{Person: &model.Person{Entry: model.Entry{ID: "t-01"}, Name: "First"}, What: long, State: Due, By: on("2026-02-28"), Act: "read"}
	var out bytes.Buffer
	if err := ICal(&out, []Item{item, {Person: item.Person, What: long, State: Due}}, on("2026-02-01")); err != nil {
		t.Fatal(err)
	}
	text := out.String()
	for line := range strings.SplitSeq(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		if len(line) > 75 || strings.ContainsAny(line, "\r\n") {
			t.Errorf("%d octets: %q", len(line), line)
		}
	}
	unfolded := strings.ReplaceAll(text, "\r\n ", "")
	for _, want := range []string{"DTSTART;VALUE=DATE:20260228\r\n", `SUMMARY:First: read Über\, lang\; \\ ` + strings.Repeat("ü", 90), "UID:", "DTSTAMP:20260201T000000Z"} {
		if strings.Count(unfolded, want) != 1 {
			t.Errorf("%q is not there once:\n%s", want, unfolded)
		}
	}
}
