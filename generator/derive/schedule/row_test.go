package schedule_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// lift is a machine with options of which some exclude each other, and a
// procedure that others perform on it.
var lift = map[string]string{
	"shop.yaml": "title: Shop\n",
	"machines/lift.yaml": `name: Lift
options: { two: two posts, four: four posts, lamp: a lamp }
only-one-of: [[two, four]]
parts: { lid: { name: lid }, post: { name: post, only-with: two } }
`,
	"register/tools.yaml": "chock: { name: chock, kind: aid }\n",
	"register/roles.yaml": "boss: { name: Boss }\n",
	"register/holds.yaml": `wait: { name: wait, kind: wait, for: 20 min }
seat: { name: seat, kind: look, what: seat, good: dry }
state: { name: state, kind: ask, answers: { good: clean, worn: scored } }
`,
	"procedures/callee.md": `---
title: Callee
for: lift
---
## Work

1. [On two posts](when:two), sweep. [](time:7min)
2. Sweep. [](time:1min)
`,
}

func rowsOf(t interface{ Fatalf(string, ...any) }, units, head, body string) []schedule.Row {
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: lift\n" + head + "---\n" + body}
	for name, text := range lift {
		files[name] = text
	}
	files["machines/lift.yaml"] += units
	m, found := bound(files)
	if len(found) > 0 {
		t.Fatalf("%v\n%s", found, body)
	}
	p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })]
	return schedule.NewCache(walk.All(m)).Rows(p)
}

// said are rows in words: "two 8 min; lamp !two 3 min".
func said(rows []schedule.Row) string {
	var out []string
	for _, r := range rows {
		var where []string
		for _, c := range r.Where {
			var terms []string
			for _, x := range c {
				terms = append(terms, map[bool]string{true: "", false: "!"}[x.Is]+x.Option)
			}
			where = append(where, strings.Join(terms, " "))
		}
		out = append(out, strings.TrimSpace(fmt.Sprintf("%s %d min", strings.Join(where, " | "), r.Bay/60)))
	}
	return strings.Join(out, "; ")
}

// A row is a kind of unit; branches of what failed, other answers than the
// first and optional steps are not in it. Worked out by hand.
func TestRows(t *testing.T) {
	const list = "units:\n  - { serials: 1 to 9, options: [two, lamp] }\n  - { serials: 10 to 19, options: [two] }\n  - { serials: 20 to 29, options: [four, lamp] }\n"
	for _, c := range []struct{ name, units, body, want string }{
		{"no condition", "", "1. Sweep. [](time:3min)\n", "3 min"},
		{"one option", "", "1. [With a lamp](when:lamp), sweep. [](time:3min)\n2. Sweep. [](time:2min)\n", "!lamp 2 min; lamp 5 min"},
		{"without it", "", "1. [Without](when:!lamp), sweep. [](time:3min)\n2. Sweep. [](time:2min)\n", "!lamp 5 min; lamp 2 min"},
		{"options that exclude each other", "", "1. [Two](when:two), sweep. [](time:3min)\n2. [Four](when:four), sweep. [](time:4min)\n", "four !two 4 min; !four two 3 min"},
		{"the rows of a list", list, "1. [Two](when:two), sweep. [](time:3min)\n2. [Four](when:four), sweep. [](time:4min)\n", "two 3 min; !two 4 min"},
		{"a step without a time", list, "1. [Lamp](when:lamp), look.\n2. Sweep. [](time:4min)\n", "4 min"},
		{"for some units only", list, "1. [Two](when:two), sweep. [](time:3min)\n", "3 min"},
		{"a callee's", list, "1. [Do it](do:callee). [](time:1min)\n", "two 9 min; !two 2 min"},
		{"a failed look", "", "1. [Look](hold:seat). [](time:3min)\n2. [If it is wet](if-not:seat), wipe. [](time:4min)\n   1. Dry. [](time:5min)\n", "3 min"},
		{"answers", "", "1. [Ask](hold:state). [](time:3min)\n2. [If clean](if:state=good), go on. [](time:4min)\n3. [If scored](if:state=worn), renew. [](time:50min)\n", "7 min"},
		{"an optional step", "", "1. [If you like](optional:), sweep. [](time:3min)\n2. Sweep. [](time:4min)\n", "4 min"},
		{"the same time at another step", list, "1. [Two](when:two), sweep. [](time:3min)\n2. [Four](when:four), sweep. [](time:3min)\n", "two 3 min; !two 3 min"},
		{"the same time and chain at another step", list, "1. Sweep. [](time:9min)\n2. [Two](when:two), sweep. [](time:3min)\n3. [Four](when:four), sweep. [](time:3min)\n", "two 12 min; !two 12 min"},
		{"what only some units have", list, "1. [Post off](remove:post). [](time:3min)\n2. Sweep. [](time:2min)\n", "two 5 min; !two 2 min"},
		{"a phase for some units", list, "1. Sweep. [](time:2min)\n\n## More\n\n[On two posts](when:two).\n\n1. Sweep. [](time:3min)\n", "two 5 min; !two 2 min"},
		{"what came off on some units", list, "1. [Two](when:two), [post off](remove:post). [](time:3min)\n2. [Lid off](remove:lid). [](time:4min)\n\n## Back\n\n1. [All back](reverse:work)\n", "two 14 min; !two 8 min"},
	} {
		if got := said(rowsOf(t, c.units, "", "## Work\n\n"+c.body)); got != c.want {
			t.Errorf("%s: %q, not %q", c.name, got, c.want)
		}
	}
}

// A phase's time counts, whatever its steps are, and what follows from the strip
// keeps its people. Worked out by hand.
func TestPhaseTimesCount(t *testing.T) {
	for _, c := range []struct {
		name, body string
		bay, work  int // minutes
	}{
		{"a wait alone", "## Work\n\n[](time:4min)\n\n1. [Wait](hold:wait).\n", 24, 4},
		{"a call alone", "## Work\n\n[](time:4min)\n\n1. [Do it](do:callee).\n", 5, 5},
		{"a wait beside words", "## Work\n\n[](time:4min)\n\n1. [Wait](hold:wait).\n2. Sweep.\n", 24, 4},
		{"each step has its own", "## Work\n\n[](time:4min)\n\n1. Sweep. [](time:3min)\n2. Look. [](time:2min)\n", 5, 5},
		{"a refit for two", "## Work\n\n1. [Lid off](remove:lid). [](people:2) [](time:3min)\n\n## Back\n\n1. [All back](reverse:work)\n", 6, 12},
		{"the same with a phase's time", "## Work\n\n1. [Lid off](remove:lid). [](people:2) [](time:3min)\n\n## Back\n\n[](time:10min)\n\n1. [All back](reverse:work)\n", 13, 26},
		{"and with the step's own", "## Work\n\n1. [Lid off](remove:lid). [](people:2)\n\n## Back\n\n1. [All back](reverse:work) [](time:10min)\n", 10, 20},
	} {
		rows := rowsOf(t, "", "people: 2\n", c.body)
		if got := rows[0]; got.Bay != c.bay*60 || got.Work != c.work*60 {
			t.Errorf("%s: %d s in the bay, %d s of work, not %d and %d min", c.name, got.Bay, got.Work, c.bay, c.work)
		}
	}
}

// Whatever is conditional, the bound of each row is never above its run in
// written order, and each phase's time is the sum of what goes on in it.
func TestBoundBelowWrittenOrder(t *testing.T) {
	conditions := []string{"", "[T](when:two), ", "[F](when:four), ", "[L](when:!lamp), ", "[If](if-not:seat), ", "[If](if:state=worn), ", "[Or](optional:), "}
	doings := []string{"sweep", "[look](hold:seat)", "[ask](hold:state)", "[chock](place:chock)", "[wait](hold:wait)", "[do](do:callee)", "[mind the lid](part:lid)"}
	rapid.Check(t, func(t *rapid.T) {
		body := "## First\n\n1. [Look](hold:seat).\n2. [Ask](hold:state).\n\n## Work\n\n"
		if minutes := rapid.IntRange(0, 9).Draw(t, "phase"); minutes > 0 {
			body += fmt.Sprintf("[](time:%dmin)\n\n", minutes)
		}
		for range rapid.IntRange(1, 9).Draw(t, "steps") {
			body += "1. " + rapid.SampledFrom(conditions).Draw(t, "condition") + rapid.SampledFrom(doings).Draw(t, "doing") + "."
			if minutes := rapid.IntRange(0, 9).Draw(t, "minutes"); minutes > 0 {
				body += fmt.Sprintf(" [](time:%dmin)", minutes)
			}
			body += "\n"
		}
		for _, r := range rowsOf(t, "", "", body) {
			sum := 0
			for _, phase := range r.Phases {
				in := 0
				for _, s := range phase.Spans {
					in += s.To - s.From
				}
				if in != phase.Bay || phase.To-phase.From != in {
					t.Fatalf("phase %s: %d s, and %d in its spans\n%s", phase.ID, phase.Bay, in, body)
				}
				sum += in
			}
			if r.Least > r.Bay || sum != r.Bay {
				t.Fatalf("bound %d, as written %d, phases %d\n%s", r.Least, r.Bay, sum, body)
			}
		}
	})
}
