package procedure

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// clock is a workshop with waits and second persons.
var clock = map[string]string{
	"shop.yaml":           "title: Shop\n",
	"register/roles.yaml": "boss: { name: Boss }\n",
	"register/holds.yaml": "soak: { name: soak, kind: wait, for: 10 min }\nrest: { name: rest, kind: wait, for: 5 min }\nseen: { name: seen, kind: check, by: boss, how: together }\n",
	"machines/rig.yaml":   "name: Rig\noptions: { cab: Cab, pack: Pack }\nparts: { lid: { name: lid }, pump: { name: pump } }\n",
	"procedures/low.md":   "---\ntitle: Low\npeople: 2\n---\n## Work\n\n1. Sweep. [](time:7min) [](people:2)\n",
}

// rowsIn are the lines of a time line: "phase: times | waits | says".
func rowsIn(u UnitLine) string {
	var out []string
	for _, r := range u.Rows {
		out = append(out, page.Unworked(fmt.Sprintf("%s: %s | %s | %s", r.Title, r.Times, r.Waits, r.Says)))
	}
	return strings.Join(out, "\n")
}

// From when to when each phase goes, how much of it waits, how many it takes, and
// how many of its steps have no time: one after another, by hand.
func TestTheTimeLineInWords(t *testing.T) {
	v := jobAt(t, clock, "for: rig\npeople: 2\nholds: [soak, seen]\n", "## One\n\n1. A. [](time:5min)\n2. B. [](time:5min) [](people:2)\n3. C. [](hold:seen) [](time:1min)\n4. D.\n\n"+
		"## Two\n\n1. [Wait](hold:soak).\n2. A.\n3. B.\n\n## Three\n\n1. [Do it](do:low).\n2. A. [](time:2min)\n")
	if len(v.TimeLine.Units) != 1 {
		t.Fatalf("%d lines", len(v.TimeLine.Units))
	}
	u := v.TimeLine.Units[0]
	want := "One: from 0 min to 11 min |  | up to 2 people · at step 1.3 besides: Boss · 1 step has no time\n" +
		"Two: from 11 min to 21 min | 10 min of it waits | 2 steps have no time\n" +
		"Three: from 21 min to 30 min |  | up to 2 people"
	if got := rowsIn(u); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	// Work: 5 + 2·5 + 1 in one, none in two, 2·7 + 2 in three.
	if got := page.Unworked(strings.Join(u.Notes, "|")); !strings.HasPrefix(got, "3 steps have no time.") || !strings.Contains(u.Notes[0], "1 + 2 + 0") {
		t.Errorf("notes: %s", got)
	}
	if len(v.Before.Times) != 1 || v.Before.Range != "" {
		t.Fatalf("%+v", v.Before)
	}
	times := v.Before.Times[0]
	if page.Unworked(times.Work) != "32 min" || page.Unworked(times.Bay) != "30 min" || page.Unworked(times.Note) != "of that 10 min is waiting; 3 steps have no time" || times.When != "" {
		t.Errorf("%+v", times)
	}
	if !strings.Contains(times.Work, "16 min + 0 min + 16 min") || !strings.Contains(times.Note, "10 min (2.1)") {
		t.Errorf("worked: %s, %s", times.Work, times.Note)
	}
	for what, said := range map[string][2]string{
		"a phase":       {u.Rows[0].Times, "0 min + 5 min (1.1) + 5 min (1.2) + 1 min (1.3)"},
		"a later phase": {u.Rows[2].Times, "21 min + 7 min (3.1) + 2 min (3.2)"},
		"its waits":     {u.Rows[1].Waits, "10 min (2.1)"},
		"its people":    {u.Rows[0].Says, "max(2 (1.2))"},
		"of a call":     {u.Rows[2].Says, "max(2 (3.1))"},
	} {
		if !strings.Contains(said[0], said[1]) {
			t.Errorf("%s: %q has no %q", what, said[0], said[1])
		}
	}
	for _, none := range []string{"1. A.\n", "1. [With a cab](when:cab), a.\n"} {
		if v := jobAt(t, clock, "for: rig\n", "## One\n\n"+none); len(v.TimeLine.Units) != 0 || len(v.Before.Times) != 0 || v.Before.Range != "" {
			t.Errorf("without any time: %+v, %+v", v.TimeLine.Units, v.Before.Times)
		}
	}
	if v := jobAt(t, clock, "for: rig\n", "## One\n\n1. A. [](time:1s)\n"); len(v.TimeLine.Units) != 1 || len(v.Before.Times) != 1 || v.Before.Times[0].Note != "" || v.TimeLine.Units[0].Rows[0].Says != "" || len(v.TimeLine.Units[0].Notes) != 0 {
		t.Errorf("one second: %+v %+v", v.TimeLine.Units, v.Before.Times)
	}
}

// Where units take other times, each kind has its own, and their range is told;
// where they take as long, one is told for all.
func TestTimesOfKindsOfUnits(t *testing.T) {
	for _, c := range []struct{ body, times, spread string }{
		{"1. [With a cab](when:cab), a. [](time:3min)\n2. B. [](time:2min)\n", "On units without Cab !cab 2 min 2 min ; On units with Cab cab 5 min 5 min ", "2 min to 5 min"},
		{"1. [With a cab](when:cab), a. [](time:3min)\n2. [Without](when:!cab), a. [](time:3min)\n", "  3 min 3 min ", ""},
		{"1. [With a cab](when:cab), a. [](time:3min) [](people:2)\n2. [Without](when:!cab), a. [](time:3min)\n", "On units without Cab !cab 3 min 3 min ; On units with Cab cab 6 min 3 min ", ""},
		{"1. [With a cab](when:cab), wait. [](hold:soak)\n2. [Without](when:!cab), a. [](time:10min)\n", "On units without Cab !cab 10 min 10 min ; On units with Cab cab 0 min 10 min of that 10 min is waiting", ""},
		{"1. [With a cab](when:cab), wait. [](hold:soak)\n2. [Without](when:!cab), wait. [](hold:rest)\n3. [Without](when:!cab), wait. [](hold:rest)\n", "On units without Cab !cab 0 min 10 min of that 10 min is waiting; On units with Cab cab 0 min 10 min of that 10 min is waiting", ""},
	} {
		v := jobAt(t, clock, "for: rig\npeople: 2\nholds: [soak, rest]\n", "## One\n\n"+c.body)
		var got []string
		for _, u := range v.Before.Times {
			got = append(got, page.Unworked(strings.Join([]string{u.When, u.Cases, u.Work, u.Bay, u.Note}, " ")))
		}
		if text := strings.Join(got, "; "); text != c.times {
			t.Errorf("%s\n got %q\nwant %q", c.body, text, c.times)
		}
		if got := page.Unworked(v.Before.Range); got != c.spread {
			t.Errorf("%s: range %q, want %q", c.body, got, c.spread)
		}
		for i, u := range v.TimeLine.Units {
			if !strings.Contains(string(u.Picture), fmt.Sprintf("time-line-%d", i+1)) {
				t.Errorf("%s: picture %d has another id", c.body, i+1)
			}
		}
	}
}

// Two kinds of units take as long where work, bay and waits are the same.
func TestTheSameTime(t *testing.T) {
	a := UnitTime{When: "x", Work: "1", Bay: "2", Note: "3"}
	for _, c := range []struct {
		b    UnitTime
		want bool
	}{{UnitTime{Work: "1", Bay: "2", Note: "3"}, true}, {UnitTime{Work: "9", Bay: "2", Note: "3"}, false}, {UnitTime{Work: "1", Bay: "9", Note: "3"}, false}, {UnitTime{Work: "1", Bay: "2", Note: "9"}, false}, {UnitTime{Work: "9", Bay: "9", Note: "9"}, false}} {
		if got := a.sameTime(c.b); got != c.want {
			t.Errorf("%+v: %v", c.b, got)
		}
	}
}

// How many steps have no time, on units that may differ in it.
func TestStepsWithoutATimeInWords(t *testing.T) {
	s := siteOf(t, map[string]string{})
	w := &s.Speaks.TimeLine
	for _, c := range []struct {
		n      int
		varies bool
		want   string
	}{{1, false, "1 step has no time"}, {1, true, "on some of these units 1 step has no time"}, {2, false, "2 steps have no time"}, {2, true, "up to 2 steps have no time"}, {3, false, "3 steps have no time"}} {
		if got := untimedWords(w, c.n, c.varies); got != c.want {
			t.Errorf("%d, %v: %q", c.n, c.varies, got)
		}
	}
}

// Where another order could be shorter, the bound is told, and what decides it
// where that is the longest chain: 10 min of work for one person, a chain of 10.
func TestWhatTheTimeCouldBe(t *testing.T) {
	s := siteOf(t, map[string]string{})
	w := &s.Speaks.TimeLine
	steps := []*model.Step{{Number: "1.1"}, {Number: "1.3"}}
	plan := func(bay, least, chain, work, people int) *schedule.Plan {
		p := &schedule.Plan{Chain: chain, Critical: steps}
		p.Bay, p.Least, p.Work, p.People = bay, least, work, people
		return p
	}
	for i, c := range []struct {
		plan *schedule.Plan
		want string
		put  string
	}{
		{plan(600, 600, 600, 600, 1), "", ""},
		{plan(500, 600, 600, 600, 1), "", ""},
		{plan(900, 600, 600, 600, 1), "The same work cannot take less than 10 min with one person, in whatever order.|What decides it: steps 1.1, 1.3. The steps stay in the order in which they are written.", "max(10 min (steps 1.1, 1.3); 10 min of work / 1)"},
		{plan(900, 600, 300, 1200, 2), "The same work cannot take less than 10 min with 2 people, in whatever order.", "max(5 min (steps 1.1, 1.3); 20 min of work / 2)"},
		{plan(900, 600, 300, 600, 0), "The same work cannot take less than 10 min with one person, in whatever order.", "/ 1)"},
	} {
		notes := s.timeNotes(w, c.plan)
		if got := page.Unworked(strings.Join(notes, "|")); got != c.want || !strings.Contains(strings.Join(notes, "|"), c.put) {
			t.Errorf("%d: %q, want %q", i, strings.Join(notes, "|"), c.want)
		}
	}
	one := plan(600, 600, 600, 600, 1)
	one.Untimed, one.Phases = 1, []schedule.Phase{{}, {}}
	one.Phases[1].Untimed = 1
	if got := s.timeNotes(w, one); len(got) != 1 || page.Unworked(got[0]) != "1 step has no time." || !strings.Contains(got[0], "0 + 1") {
		t.Errorf("%q", got)
	}
}

// The picture has a bar for each span, work and waits apart and as tall as the
// people; what goes on in the same way side by side is one bar, two calls are two.
func TestThePictureOfTheTimeLine(t *testing.T) {
	s := siteOf(t, with(clock, "procedures/job.md", "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. A.\n"))
	phase := procedureOf(t, s, "job").Phases[0]
	step := &model.Step{Number: "1.1"}
	span := func(doing schedule.Doing, from, to, people, beside int) schedule.Span {
		return schedule.Span{Doing: doing, Step: step, From: from * 60, To: to * 60, People: people, Beside: beside}
	}
	work, wait, call := schedule.Work, schedule.Wait, schedule.Call
	for _, c := range []struct {
		name  string
		spans []schedule.Span
		bars  int
	}{
		{"one", []schedule.Span{span(work, 0, 5, 1, 0)}, 1},
		{"side by side", []schedule.Span{span(work, 0, 5, 1, 0), span(work, 5, 9, 1, 0)}, 1},
		{"a gap", []schedule.Span{span(work, 0, 5, 1, 0), span(work, 6, 9, 1, 0)}, 2},
		{"more people", []schedule.Span{span(work, 0, 5, 1, 0), span(work, 5, 9, 2, 0)}, 2},
		{"as many with who sees it done", []schedule.Span{span(work, 0, 5, 2, 0), span(work, 5, 9, 1, 1)}, 1},
		{"one more who sees it done", []schedule.Span{span(work, 0, 5, 1, 0), span(work, 5, 9, 1, 1)}, 2},
		{"a wait after work", []schedule.Span{span(work, 0, 5, 0, 0), span(wait, 5, 9, 0, 0)}, 2},
		{"two waits", []schedule.Span{span(wait, 0, 5, 0, 0), span(wait, 5, 9, 0, 0)}, 1},
		{"two calls", []schedule.Span{span(call, 0, 5, 1, 0), span(call, 5, 9, 1, 0)}, 2},
		{"work after a call", []schedule.Span{span(call, 0, 5, 1, 0), span(work, 5, 9, 1, 0)}, 2},
		{"a call after work", []schedule.Span{span(work, 0, 5, 1, 0), span(call, 5, 9, 1, 0)}, 2},
		{"three in a row", []schedule.Span{span(work, 0, 2, 1, 0), span(work, 2, 5, 1, 0), span(work, 5, 9, 1, 0)}, 1},
		{"another, then two alike", []schedule.Span{span(work, 0, 2, 2, 0), span(work, 2, 5, 1, 0), span(work, 5, 9, 1, 0)}, 2},
	} {
		plan := &schedule.Plan{Phases: []schedule.Phase{{Phase: phase, Spans: c.spans}}}
		plan.Bay = 9 * 60
		row := s.timeRow(&plan.Phases[0])
		if len(row.Bars) != c.bars || row.Bars[len(row.Bars)-1].To != c.spans[len(c.spans)-1].To {
			t.Errorf("%s: %+v", c.name, row.Bars)
		}
		if last := c.spans[len(c.spans)-1]; row.Bars[len(row.Bars)-1].People != last.People+last.Beside {
			t.Errorf("%s: as tall as %d", c.name, row.Bars[len(row.Bars)-1].People)
		}
		svg := s.drawnLine(&s.Speaks.TimeLine, plan, 1)
		for word, doing := range map[string]schedule.Doing{s.Speaks.TimeLine.Work: work, s.Speaks.TimeLine.Wait: wait, s.Speaks.TimeLine.Call: call} {
			has := false
			for _, one := range c.spans {
				has = has || one.Doing == doing
			}
			if strings.Contains(svg, word) != has {
				t.Errorf("%s: the key says %q: %v", c.name, word, !has)
			}
		}
		if !strings.Contains(svg, "time-line-2") {
			t.Errorf("%s: its id is another", c.name)
		}
	}
}

// What goes on beside something longer adds nothing to a phase; a step that goes
// on in the same way is one span.
func TestWhatMakesAPhaseLonger(t *testing.T) {
	a, b := &model.Step{Number: "1.1"}, &model.Step{Number: "1.2"}
	for _, c := range []struct {
		name  string
		spans []schedule.Span
		want  string
	}{
		{"none", nil, ""},
		{"one after another", []schedule.Span{{Step: a, From: 60, To: 120}, {Step: b, From: 120, To: 180}}, "1.1 120 1.2 180"},
		{"beside a longer", []schedule.Span{{Step: a, From: 60, To: 180}, {Step: b, From: 60, To: 120}, {Step: b, From: 180, To: 240}}, "1.1 180 1.2 240"},
		{"beside one as long", []schedule.Span{{Step: a, From: 60, To: 180}, {Step: b, From: 60, To: 180}}, "1.1 180"},
		{"in no time", []schedule.Span{{Step: a, From: 60, To: 60}, {Step: b, From: 60, To: 120}}, "1.2 120"},
		{"one step in the same way", []schedule.Span{{Step: a, From: 60, To: 120}, {Step: a, From: 120, To: 240}}, "1.1 240"},
		{"one step in another way", []schedule.Span{{Step: a, From: 60, To: 120}, {Step: a, Doing: schedule.Wait, From: 120, To: 240}}, "1.1 120 1.1 240"},
		{"then one in the same way", []schedule.Span{{Step: b, From: 60, To: 90}, {Step: a, From: 90, To: 120}, {Step: a, From: 120, To: 240}}, "1.2 90 1.1 240"},
	} {
		ph := &schedule.Phase{From: 60, Spans: c.spans}
		var got []string
		for _, s := range longer(ph) {
			got = append(got, fmt.Sprint(s.Step.Number, " ", s.To))
		}
		if text := strings.Join(got, " "); text != c.want {
			t.Errorf("%s: %s, want %s", c.name, text, c.want)
		}
	}
}

// The most people of a phase are those of its steps for several, each said once.
func TestPeopleOfAPhase(t *testing.T) {
	a, b := &model.Step{Number: "1.1"}, &model.Step{Number: "1.2"}
	ph := &schedule.Phase{Spans: []schedule.Span{{Step: a, People: 2}, {Step: a, People: 2}, {Step: b, People: 1}, {Step: b, People: 3}, {Step: a, People: 0}}}
	if got := peopleOf(ph); got != "max(2 (1.1); 3 (1.2))" {
		t.Error(got)
	}
}
