package issue

import (
	"fmt"
	"slices"
	"strings"
	"time"
)

// The plain calculation beside which replay_test.go puts the program. It shares
// nothing with it.

// plainDay is a day as the second calculation has it: days since 1970.
type plainDay int

func dayNo(year int, month time.Month, day int) plainDay {
	return plainDay(time.Date(year, month, day, 12, 0, 0, 0, time.UTC).Unix() / 86400)
}

func (d plainDay) String() string {
	return time.Unix(int64(d)*86400, 0).UTC().Format("2006-01-02")
}

// months is so many months later; a month that is too short ends the sum.
func (d plainDay) months(n int) plainDay {
	t := time.Unix(int64(d)*86400, 0).UTC()
	year, month := t.Year(), int(t.Month())-1+n
	year, month = year+month/12, month%12
	last := dayNo(year, time.Month(month+2), 1) - 1
	return min(dayNo(year, time.Month(month+1), 1)+plainDay(t.Day())-1, last)
}

// The shop of the replay. All invented.
var (
	plainCalls = map[string][]string{"p3": {"p1"}, "p4": {"p1", "p2"}, "p5": {"p4"}, "p7": {"p6"}}
	plainNeeds = map[string]string{"p6": "fitter"}
	plainPlans = map[string]plainPlan{
		"first":  {read: []string{"p3", "p2"}, perform: map[string]int{"p1": 2}, watch: []string{"p2"}, gives: []string{"fitter"}, assessor: "trainer", within: 14},
		"second": {read: []string{"p5"}, perform: map[string]int{"p4": 1}, gives: []string{"lead"}, assessor: "fitter", within: 30},
		"third":  {read: []string{"p7", "p8", "p9"}, within: 60},
		"fourth": {perform: map[string]int{"p2": 1}, gives: []string{"trainer"}, within: 20},
	}
	plainRenew = map[string]int{"fitter": 3, "lead": 0, "trainer": 11} // months
	plainProcs = strings.Fields("p1 p2 p3 p4 p5 p6 p7 p8 p9")
)

type plainPlan struct {
	read, watch []string
	perform     map[string]int
	gives       []string
	assessor    string
	within      plainDay
}

type plainPerson struct {
	id      string
	started plainDay
	left    [][2]plainDay // last, back; back 0 where they did not come back
	plans   []string
	grants  []plainGrant
	courses map[string]*plainCourse
}

type plainGrant struct {
	role  string
	day   plainDay // 0: always
	ended plainDay
}

type plainCourse struct {
	rows []*plainRow // since it was begun
}

type plainRow struct {
	day       plainDay
	person    string
	procedure string
	act       string
	text      string // what stood as the last revision
	by        string
}

type plainRevision struct {
	day     plainDay
	text    string
	readers string
}

// plainShop is the second calculation.
type plainShop struct {
	people    map[string]*plainPerson
	rows      []*plainRow
	words     map[string]int // the version of the words that stand in the file
	revisions map[string][]plainRevision
	retired   map[string]bool
}

// text is what a procedure says, with what it performs.
func (s *plainShop) text(p string) string {
	out := fmt.Sprint(p, "/", s.words[p])
	for _, c := range plainCalls[p] {
		out += " (" + s.text(c) + ")"
	}
	return out
}

func (s *plainShop) there(id string, day plainDay) bool {
	p := s.people[id]
	if p == nil || day < p.started {
		return false
	}
	return !s.away(id, day)
}

func (s *plainShop) away(id string, day plainDay) bool {
	for _, a := range s.people[id].left {
		if day > a[0] && (a[1] == 0 || day < a[1]) {
			return true
		}
	}
	return false
}

func (s *plainShop) holds(id, role string, day plainDay) bool {
	p := s.people[id]
	if p == nil || s.away(id, day) {
		return false
	}
	for _, g := range p.grants {
		if g.role != role || day < g.day || g.ended != 0 && day >= g.ended || g.day == 0 && day < p.started {
			continue
		}
		if n := plainRenew[role]; n == 0 || g.day == 0 || day <= g.day.months(n) {
			return true
		}
	}
	return false
}

// read is which revision a row is of: the last of its words issued by its day.
func (s *plainShop) read(r *plainRow) int {
	at := -1
	for i, rev := range s.revisions[r.procedure] {
		if rev.day <= r.day && rev.text == r.text {
			at = i
		}
	}
	return at
}

// again is the first day on which a reading was asked for again by a day; 0 where
// it is good.
func (s *plainShop) again(r *plainRow, day plainDay) plainDay {
	at := s.read(r)
	for i, rev := range s.revisions[r.procedure] {
		if i > at && rev.day <= day && rev.readers == "reread" {
			return rev.day
		}
	}
	return 0
}

// last is somebody's last reading among rows, of one day the good one.
func (s *plainShop) last(rows []*plainRow, procedure string, day plainDay) *plainRow {
	var last *plainRow
	for _, r := range rows {
		if r.act != "read" || r.procedure != procedure {
			continue
		}
		if last == nil || r.day > last.day || r.day == last.day && s.again(last, day) != 0 {
			last = r
		}
	}
	return last
}

func (s *plainShop) rowsOf(id string) []*plainRow {
	return slices.DeleteFunc(slices.Clone(s.rows), func(r *plainRow) bool { return r.person != id })
}

// closure is a plan's list with all that it performs.
func (s *plainShop) closure(plan plainPlan) []string {
	all := map[string]bool{}
	var add func(p string)
	add = func(p string) {
		if s.retired[p] {
			return
		}
		all[p] = true
		for _, c := range plainCalls[p] {
			add(c)
		}
	}
	for _, p := range slices.Concat(plan.read, plan.watch) {
		add(p)
	}
	for p := range plan.perform {
		add(p)
	}
	var out []string
	for _, p := range plainProcs {
		if all[p] {
			out = append(out, p)
		}
	}
	return out
}

// counts says whether a performance counts for a plan.
func (s *plainShop) counts(plan plainPlan, r *plainRow) bool {
	roles := plan.gives
	if plan.assessor != "" {
		roles = []string{plan.assessor}
	}
	if len(roles) == 0 || r.by == "" || r.by == r.person || !s.there(r.by, r.day) {
		return false
	}
	return !slices.ContainsFunc(roles, func(role string) bool { return !s.holds(r.by, role, r.day) })
}

// evening takes the rows of a day into the courses, again and again until nothing
// more is gained.
func (s *plainShop) evening(day plainDay, rows []*plainRow) {
	taken := map[*plainRow]map[string]bool{}
	for more := true; more; {
		more = false
		for _, id := range sortedKeys(s.people) {
			p := s.people[id]
			for _, name := range p.plans {
				more = s.take(p, name, day, rows, taken) || more
			}
		}
	}
}

func (s *plainShop) take(p *plainPerson, name string, day plainDay, rows []*plainRow, taken map[*plainRow]map[string]bool) bool {
	plan, course, took := plainPlans[name], p.courses[name], false
	for _, r := range rows {
		if r.person != p.id || taken[r][name] || r.act == "performed" && !s.counts(plan, r) {
			continue
		}
		if taken[r] == nil {
			taken[r] = map[string]bool{}
		}
		taken[r][name], took = true, true
		course.rows = append(course.rows, r)
	}
	if !took || !s.finished(plan, course, day) {
		return took
	}
	course.rows = nil
	for _, role := range plan.gives {
		p.grants = append(p.grants, plainGrant{role: role, day: day})
	}
	return true
}

func (s *plainShop) finished(plan plainPlan, c *plainCourse, day plainDay) bool {
	list := s.closure(plan)
	for _, p := range list {
		last := s.last(c.rows, p, day)
		if last == nil || s.again(last, day) != 0 {
			return false
		}
		n, watched := 0, false
		for _, r := range c.rows {
			if r.procedure == p && r.act == "performed" {
				n++
			}
			watched = watched || r.procedure == p && r.act == "watched"
		}
		if n < plan.perform[p] || slices.Contains(plan.watch, p) && !watched {
			return false
		}
	}
	return len(list) > 0
}

func sortedKeys[V any](m map[string]V) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

// say is how everybody stands on a day, one line each.
func (s *plainShop) say(day plainDay) map[string]string {
	out := map[string]string{}
	for id, p := range s.people {
		rows := s.rowsOf(id)
		for role := range plainRenew {
			out["role "+id+" "+role] = fmt.Sprint(s.holds(id, role, day))
		}
		if s.away(id, day) {
			continue
		}
		for _, name := range p.plans {
			for _, proc := range s.closure(plainPlans[name]) {
				out["standing "+id+" "+name+" "+proc] = s.standing(p, plainPlans[name], proc, rows, day)
			}
		}
		for _, proc := range plainProcs {
			out["reader "+id+" "+proc] = fmt.Sprint(s.reader(rows, proc, day))
			out["told "+id+" "+proc] = fmt.Sprint(s.told(rows, proc, day))
		}
	}
	from := s.revisions["p6"][0].day
	for _, r := range s.rows {
		if r.act == "inspected" && r.procedure == "p6" && s.there(r.by, r.day) && s.holds(r.by, "fitter", r.day) {
			from = max(from, r.day)
		}
	}
	out["inspect p6"] = from.months(12).String()
	return out
}

func (s *plainShop) standing(p *plainPerson, plan plainPlan, proc string, rows []*plainRow, day plainDay) string {
	last := s.last(rows, proc, day)
	by, state := p.started+plan.within, "due"
	switch {
	case last == nil:
	case s.again(last, day) == 0:
		return "good"
	default:
		by, state = s.again(last, day)+plan.within, "stale"
	}
	if by < day {
		state = "overdue"
	}
	return state + " " + by.String()
}

func (s *plainShop) reader(rows []*plainRow, proc string, day plainDay) bool {
	last := s.last(rows, proc, day)
	if !s.retired[proc] && (last == nil || s.again(last, day) != 0) {
		return false
	}
	for _, c := range plainCalls[proc] {
		if !s.reader(rows, c, day) {
			return false
		}
	}
	return last != nil && s.again(last, day) == 0
}

func (s *plainShop) told(rows []*plainRow, proc string, day plainDay) bool {
	last := s.last(rows, proc, day)
	if last == nil || s.retired[proc] || s.again(last, day) != 0 {
		return false
	}
	at := s.read(last)
	for i, rev := range s.revisions[proc] {
		if i <= at || rev.readers != "tell" {
			continue
		}
		if !slices.ContainsFunc(rows, func(r *plainRow) bool {
			return r.procedure == proc && (r.act == "told" || r.act == "read") && r.day >= rev.day
		}) {
			return true
		}
	}
	return false
}
