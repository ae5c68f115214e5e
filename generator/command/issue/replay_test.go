package issue

import (
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/command/people"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

// Known: DERIVED.
//
// A year of random events is given to the program, and beside it to a plain
// calculation that shares nothing with it: no type, no date sum, no file. Every
// few days both are asked how everybody stands. The second was worked out from
// the format's words, "Reading plans and records" and "People and roles over
// time".

// program is how everybody stands by the program.
func program(t *testing.T, m *model.Manual, day plainDay) map[string]string {
	t.Helper()
	out := map[string]string{}
	today := date(t, day.String())
	h := training.NewStandings(m, today)
	for _, p := range m.People {
		for role := range plainRenew {
			out["role "+p.ID+" "+role] = fmt.Sprint(h.HoldsRole(p, role, today))
		}
	}
	for _, s := range h.Standings() {
		says := string(s.State)
		if s.State != training.Good {
			says += " " + s.By.String()
		}
		out["standing "+s.Person.ID+" "+s.Plan.ID+" "+s.Reading.Procedure.ID] = says
	}
	tell := map[string]bool{}
	for _, i := range h.Items() {
		if i.Act == "tell" {
			tell[i.Person.ID+" "+i.What.Base().ID] = true
		}
	}
	for _, proc := range m.Procedures {
		readers := h.Crew(proc).Readers
		for _, p := range h.Here() {
			out["reader "+p.ID+" "+proc.ID] = fmt.Sprint(slices.Contains(readers, p))
			out["told "+p.ID+" "+proc.ID] = fmt.Sprint(tell[p.ID+" "+proc.ID])
		}
		if by, _, ok := h.InspectBy(proc); ok {
			out["inspect "+proc.ID] = by.String()
		}
	}
	return out
}

// replay gives the same events to both.
type replay struct {
	t     *testing.T
	root  string
	rand  *rand.Rand
	plain *plainShop
	today []*plainRow
	asked int
	wrong int
	said  map[string]int // how often an answer came up
}

func (r *replay) file(p string) {
	body := ""
	for _, c := range plainCalls[p] {
		body += "1. [Perform it](do:" + c + ").\n"
	}
	front := "title: Job " + p + "\n"
	if role := plainNeeds[p]; role != "" {
		front += "for: press\nneeds: [" + role + "]\n"
		body += "1. [Close the valve](isolate:oil), [lock it](lock:oil).\n1. [Take the lock off](unlock:oil), [open it](restore:oil).\n"
	}
	word := strings.Repeat("a", r.plain.words[p]+1)
	put(r.t, r.root, "procedures/"+p+".md", "---\n"+front+"---\n## Work\n\n"+body+"1. Wipe it "+word+".\n")
}

func (r *replay) begin(day plainDay) {
	put(r.t, r.root, "shop.yaml", "title: Shop\ninspect-every: 12 months\n")
	put(r.t, r.root, "register/tools.yaml", "padlock: { name: padlock, kind: lock }\n")
	put(r.t, r.root, "machines/press.yaml", "name: Press\npoints: { valve: { name: valve, lock: yes } }\nenergies: { oil: { name: oil, kind: pressure, points: [valve] } }\n")
	put(r.t, r.root, "register/roles.yaml", "fitter: { name: Fitter, renew-every: 3 months }\nlead: { name: Lead }\ntrainer: { name: Trainer, renew-every: 11 months }\n")
	for name, plan := range plainPlans {
		text := "title: Plan " + name + "\nread: [" + strings.Join(plan.read, ", ") + "]\nwatch: [" + strings.Join(plan.watch, ", ") + "]\ngives: [" + strings.Join(plan.gives, ", ") + "]\n"
		var performs []string
		for p, n := range plan.perform {
			performs = append(performs, fmt.Sprint(p, ": ", n))
		}
		text += "perform: [" + strings.Join(performs, ", ") + "]\n"
		if plan.assessor != "" {
			text += "assessor: " + plan.assessor + "\n"
		}
		put(r.t, r.root, "readings/plans/"+name+".yaml", text+fmt.Sprintf("within: %d days\n", plan.within))
	}
	for _, p := range plainProcs {
		r.file(p)
	}
	for i := range 6 {
		r.add(day, fmt.Sprint("t-0", i), i)
	}
	r.issue(day, plainProcs, "")
}

func (r *replay) add(day plainDay, id string, n int) {
	plans := [][]string{{"first"}, {"first", "second"}, {"third"}, {"second", "third"}, {"fourth", "first"}, {"first", "third"}}[n%6]
	p := &plainPerson{id: id, started: day, plans: plans, courses: map[string]*plainCourse{}}
	for _, name := range plans {
		p.courses[name] = &plainCourse{}
	}
	var roles []string
	if n%6 == 2 || n%6 == 3 {
		from := day - plainDay(r.rand.Intn(60))
		p.grants = []plainGrant{{role: "trainer", day: from}, {role: "fitter", day: day}}
		roles = []string{"trainer@" + from.String(), "fitter@" + day.String()}
	}
	r.plain.people[id] = p
	must(r.t, people.Add(bound(r.t, r.root), r.root, people.New{ID: id, Started: date(r.t, day.String()), Plans: plans, Roles: roles}))
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func (r *replay) issue(day plainDay, list []string, readers string) {
	_, err := Run(bound(r.t, r.root), nil, Order{Folder: r.root, Procedures: list, Date: date(r.t, day.String()), Reason: "Why.", Readers: readers})
	must(r.t, err)
	for _, p := range list {
		said := readers
		if said == "" {
			said = "reread"
		}
		r.plain.revisions[p] = append(r.plain.revisions[p], plainRevision{day, r.plain.text(p), said})
	}
}

// one of the names.
func (r *replay) one(list []string) string { return list[r.rand.Intn(len(list))] }

func (r *replay) somebody(day plainDay) string {
	var here []string
	for _, id := range sortedKeys(r.plain.people) {
		if r.plain.there(id, day) {
			here = append(here, id)
		}
	}
	return r.one(here)
}

// record records what one person did, of one or of several procedures.
func (r *replay) record(day plainDay) {
	act := r.one([]string{"read", "read", "read", "performed", "performed", "watched", "told", "taught", "inspected"})
	who, by := r.somebody(day), ""
	if act == "performed" || act == "inspected" {
		by = r.somebody(day)
	}
	of := []string{r.one(plainProcs)}
	if act == "read" && r.rand.Intn(2) == 0 {
		of = plainProcs
	}
	if act == "inspected" {
		of = []string{"p6"}
	}
	if by == who {
		return
	}
	m := bound(r.t, r.root)
	var entries []training.Entry
	for _, p := range of {
		if r.plain.retired[p] {
			continue
		}
		entries = append(entries, training.Entry{Folder: r.root, Person: who, Procedure: p, Act: act, By: by, Date: date(r.t, day.String())})
		revisions := r.plain.revisions[p]
		row := &plainRow{day: day, person: who, procedure: p, act: act, text: revisions[len(revisions)-1].text, by: by}
		r.plain.rows, r.today = append(r.plain.rows, row), append(r.today, row)
	}
	if len(entries) == 0 {
		return
	}
	_, err := training.RecordAll(m, r.root, entries)
	if act == "inspected" && err != nil { // refused of who holds no role for it; the plain row stays, and counts where that is wrong
		return
	}
	must(r.t, err)
}

func (r *replay) revise(day plainDay) {
	p := r.one(plainProcs)
	if r.plain.retired[p] {
		return
	}
	if r.rand.Intn(4) > 0 { // else it is issued again as it stands
		r.plain.words[p]++
		r.file(p)
	}
	r.issue(day, []string{p}, r.one([]string{"reread", "tell", "none"}))
}

// retire takes out of use what nobody performs, or brings it back.
func (r *replay) retire(day plainDay) {
	const p = "p9"
	o := Order{Folder: r.root, Procedures: []string{p}, Date: date(r.t, day.String()), Reason: "Why.", Retire: !r.plain.retired[p], Readers: "none"}
	_, err := Run(bound(r.t, r.root), nil, o)
	must(r.t, err)
	revisions := r.plain.revisions[p]
	text, readers := r.plain.text(p), "none"
	if o.Retire {
		text, readers = revisions[len(revisions)-1].text, "retired"
	}
	r.plain.revisions[p] = append(revisions, plainRevision{day, text, readers})
	r.plain.retired[p] = o.Retire
}

func (r *replay) move(day plainDay) {
	id := r.somebody(day)
	m := bound(r.t, r.root)
	for _, other := range sortedKeys(r.plain.people) {
		p := r.plain.people[other]
		if n := len(p.left); n > 0 && p.left[n-1][1] == 0 && p.left[n-1][0] < day {
			p.left[n-1][1] = day
			must(r.t, people.Back(m, r.root, []string{other}, date(r.t, day.String())))
			return
		}
	}
	if p := r.plain.people[id]; len(p.left) == 0 || p.left[len(p.left)-1][1] != 0 && p.left[len(p.left)-1][1] < day {
		p.left = append(p.left, [2]plainDay{day, 0})
		must(r.t, people.Leave(m, r.root, []string{id}, date(r.t, day.String())))
	}
}

// withdraw takes a role from somebody, in the evening.
func (r *replay) withdraw(day plainDay) {
	p, role := r.plain.people[r.somebody(day)], r.one([]string{"fitter", "lead", "trainer"})
	name := filepath.Join(r.root, "readings", "roles.csv")
	text, err := os.ReadFile(name)
	must(r.t, err)
	must(r.t, os.WriteFile(name, append(text, fmt.Sprintf("%s,%s,%s,withdrawn,,Why.\n", day, p.id, role)...), 0o600))
	for i := range p.grants {
		if g := &p.grants[i]; g.role == role && (g.ended == 0 || day < g.ended) {
			g.ended = day
		}
	}
	for name, course := range p.courses {
		if slices.Contains(plainPlans[name].gives, role) {
			course.rows = nil
		}
	}
}

func (r *replay) compare(day plainDay) {
	want, got := r.plain.say(day), program(r.t, bound(r.t, r.root), day)
	for _, k := range sortedKeys(got) {
		if _, has := want[k]; !has {
			r.t.Errorf("%s: %s is %q by the program alone", day, k, got[k])
			r.wrong++
		}
	}
	for _, k := range sortedKeys(want) {
		kind, _, _ := strings.Cut(k, " ")
		answer, _, _ := strings.Cut(want[k], " ")
		r.said[kind+" "+answer]++
		if r.asked++; want[k] != got[k] {
			r.t.Errorf("%s: %s is %q by the program, and %q", day, k, got[k], want[k])
			r.wrong++
		}
	}
}

func TestAYearIsReplayedBesideAPlainCalculation(t *testing.T) {
	r := &replay{t: t, root: t.TempDir(), rand: rand.New(rand.NewSource(0)), said: map[string]int{}, plain: &plainShop{
		people: map[string]*plainPerson{}, words: map[string]int{}, revisions: map[string][]plainRevision{}, retired: map[string]bool{},
	}}
	first := dayNo(2026, 1, 5)
	r.begin(first)
	for day := first + 1; day < first+365 && r.wrong < 20; day++ {
		r.day(day)
	}
	if r.asked < 10000 {
		t.Errorf("%d comparisons, and 10,000 were asked for", r.asked)
	}
	// Every answer came up, so that none was compared with itself alone.
	for _, answer := range strings.Split("role true,role false,reader true,reader false,told true,told false,standing good,standing stale,standing due,standing overdue", ",") {
		if r.said[answer] < 20 {
			t.Errorf("%q came up %d times", answer, r.said[answer])
		}
	}
	t.Logf("%d comparisons: %v", r.asked, r.said)
}

// day is one day of the year.
func (r *replay) day(day plainDay) {
	r.today = nil
	for range 1 + r.rand.Intn(2) {
		switch n := r.rand.Intn(40); {
		case n < 30:
			r.record(day)
		case n < 36:
			r.revise(day)
		case n == 36:
			r.move(day)
		case n == 37 && len(r.plain.people) < 12:
			r.add(day, fmt.Sprintf("t-%02d", len(r.plain.people)), r.rand.Intn(6))
		case n == 38:
			r.retire(day)
		}
	}
	r.plain.evening(day, r.today)
	if r.rand.Intn(25) == 0 {
		r.withdraw(day)
	}
	if r.rand.Intn(7) == 0 {
		r.compare(day)
	}
}
