package schedule_test

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// rig is a machine with two energies that have nothing in common, and what is
// done to it.
var rig = map[string]string{
	"shop.yaml": "title: Shop\n",
	"machines/rig.yaml": `name: Rig
options: { cab: a cab }
points: { plug: { name: plug, lock: yes }, valve: { name: valve } }
energies:
  power: { name: power, kind: electric, voltage: 360 V dc, points: [plug], stored: yes }
  air: { name: air, kind: pressure, pressure: 8 bar, points: [valve] }
parts:
  lid: { name: lid }
  pump: { name: pump, under: [lid], prove-dead: [power] }
fluids: { oil: { name: oil, supply: oil, capacity: 2 L } }
`,
	"register/supplies.yaml": "oil: { name: oil, unit: L }\n",
	"register/tools.yaml":    "chock: { name: chock, kind: aid }\ntester: { name: tester, kind: tester }\n",
	"register/roles.yaml":    "boss: { name: Boss }\n",
	"register/hazards.yaml":  "shock: { name: shock, nature: a, harm: death, consequence: b, avoid: [c], of: power }\n",
	"register/holds.yaml": `wait-power: { name: wait, kind: wait, for: 20 min, of: power }
wait-oil: { name: wait for the oil, kind: wait, for: 20 min, of: oil }
wait: { name: wait for what, kind: wait, for: 20 min }
no-air: { name: pressure, kind: measure, what: pressure, limit: at most 0 bar, of: air, with: tester }
dead: { name: volts, kind: measure, what: volts, limit: at most 5 V dc, of: power, with: tester, proved-on: tester }
sign: { name: word, kind: sign, by: boss }
seen: { name: seen, kind: check, by: boss, how: together }
later: { name: later, kind: check, by: boss, how: apart }
`,
	"procedures/put-chocks.md": "---\ntitle: Chocks\nfor: rig\ntools: [chock]\nleaves: { chock: placed }\n---\n## Work\n\n1. [Chock](place:chock).\n",
}

func planOf(t interface{ Fatalf(string, ...any) }, head, body string) (*schedule.Plan, []schedule.Move) {
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n" + head + "---\n" + body}
	for name, text := range rig {
		files[name] = text
	}
	m, found := bound(files)
	if len(found) > 0 {
		t.Fatalf("%v\n%s", found, body)
	}
	book := schedule.NewCache(walk.All(m))
	p := m.Procedures[0]
	return book.Rows(p)[0].Plan, book.Moves(p)
}

func bound(files map[string]string) (*model.Manual, []string) {
	m, list := bind.Manual(source.FromText(files))
	var out []string
	for _, f := range list {
		if f.Level == finding.Error {
			out = append(out, f.Message)
		}
	}
	return m, out
}

// What may go on during a wait, worked out by hand from the rule: nothing that
// shares anything with it, no hands in the machine while an energy is waited
// for, nothing past words, a signature or a step that it rests on.
func TestMoves(t *testing.T) {
	const start = "## Work\n\n1. [Off](isolate:power) and [lock](lock:power). [](time:1min)\n2. [Wait](hold:wait-power).\n"
	for _, c := range []struct{ name, body, want string }{
		{"another energy", start + "3. [Off](isolate:air). [](time:3min)\n", "1.3 180"},
		{"a procedure", start + "3. [Put the chocks](do:put-chocks). [](time:3min)\n", ""},
		{"no time", start + "3. [Off](isolate:air).\n", ""},
		{"the same energy", start + "3. [Prove](prove:power) by [volts](hold:dead). [](time:3min)\n", ""},
		{"hands in the machine", start + "3. [Take the lid off](remove:lid). [](time:3min)\n", ""},
		{"a hazard of it", start + "3. [Off](isolate:air). Mind [it](hazard:shock). [](time:3min)\n", ""},
		{"energy back", start + "3. [Off](isolate:air).\n4. [On](restore:air). [](time:3min)\n", ""},
		{"another unit", start + "3. [With a cab](when:cab), [off](isolate:air). [](time:3min)\n", ""},
		{"words", start + "3. Look around. [](time:3min)\n", ""},
		{"past words", start + "3. Look around.\n4. [Off](isolate:air). [](time:3min)\n", ""},
		{"past a signature", start + "3. [Off](isolate:air) with [the word](hold:sign).\n4. [Chock](place:chock). [](time:3min)\n", ""},
		{"past what it rests on", start + "3. [Off](isolate:air).\n4. [Prove it](prove:air) at [the gauge](hold:no-air). [](time:3min)\n", ""},
		{"past a proof of something else", start + "3. [Prove](prove:power) by [volts](hold:dead).\n4. [Chock](place:chock). [](time:3min)\n", "1.4 180"},
		{"more than the wait", start + "3. [Off](isolate:air). [](time:15min)\n4. [Chock](place:chock). [](time:15min)\n", "1.3 900, 1.4 300"},
		{"a wait of nothing", strings.Replace(start, "hold:wait-power", "hold:wait", 1) + "3. [Off](isolate:air). [](time:3min)\n", ""},
		{"nothing left of the wait", start + "3. [Off](isolate:air). [](time:20min)\n4. [Chock](place:chock). [](time:1min)\n", "1.3 1200"},
		{"with its sub-steps", start + "3. [Off](isolate:air). [](time:1min)\n   1. [Chock](place:chock). [](time:2min)\n", "1.3 180"},
		{"words below it", start + "3. [Off](isolate:air). [](time:1min)\n   1. Sweep. [](time:2min)\n", ""},
		{"the same unit", strings.Replace(start, "2. [Wait]", "2. [With a cab](when:cab), [wait]", 1) + "3. [With a cab](when:cab), [off](isolate:air). [](time:3min)\n", "1.3 180"},
		{"a wait of another unit", strings.Replace(start, "2. [Wait]", "2. [With a cab](when:cab), [wait]", 1) + "3. [Off](isolate:air). [](time:3min)\n", ""},
		{"a wait that does something too", strings.Replace(start, "2. [Wait]", "2. [Chock](place:chock) and [wait]", 1) + "3. [Off](isolate:air). [](time:3min)\n", ""},
		{"a wait that has sub-steps", start + "   1. Sweep. [](time:1min)\n3. [Off](isolate:air). [](time:3min)\n", ""},
		{"two waits in a step", strings.Replace(start, ".\n", ".\n", 1)[:len(start)-2] + " and [wait](hold:wait-oil).\n3. [Off](isolate:air). [](time:3min)\n", ""},
		{"offered at the first wait alone", start + "3. [Wait](hold:wait-oil).\n4. [Off](isolate:air). [](time:3min)\n", "1.4 180"},
		{"at the second wait what the first has no time for", start + "3. [Wait](hold:wait-oil).\n4. [Off](isolate:air). [](time:20min)\n5. [Chock](place:chock). [](time:5min)\n", "1.4 1200, 1.5 300"},
		{"a strip that is put back", start + "3. [Off](isolate:air). [](time:3min)\n\n## Back\n\n1. [All back](reverse:work).\n", ""},
		{"past a strip that is put back, from another phase", start + "3. [Chock](place:chock).\n\n## More\n\n1. [Off](isolate:air). [](time:3min)\n\n## Back\n\n1. [All back](reverse:work).\n", ""},
		{"from another phase", start + "3. [Chock](place:chock).\n\n## More\n\n1. [Off](isolate:air). [](time:3min)\n", "2.1 180"},
		{"a wait that measures too", strings.Replace(start, "[Wait]", "Read [the gauge](hold:no-air) and [wait]", 1) + "3. [Chock](place:chock). [](time:3min)\n", ""},
		{"past the measuring of something else", start + "3. Read [the gauge](hold:no-air).\n4. [Chock](place:chock). [](time:3min)\n", "1.4 180"},
		{"proving something else", "## Work\n\n1. [Off](isolate:air).\n2. [Wait](hold:wait-power).\n3. [Prove it](prove:air) at [the gauge](hold:no-air). [](time:3min)\n", "1.3 180"},
		{"hands in a sub-step", start + "3. [Off](isolate:air). [](time:1min)\n   1. [Lid](remove:lid). [](time:2min)\n", ""},
		{"hands in a sub-step for some units", start + "3. [Off](isolate:air). [](time:1min)\n   1. [With a cab](when:cab), [lid](remove:lid). [](time:2min)\n", ""},
		{"a procedure in a sub-step", start + "3. [Off](isolate:air). [](time:1min)\n   1. [Put the chocks](do:put-chocks). [](time:2min)\n", ""},
		{"tighten while it is waited for", start + "3. [Alter](fill:oil). [](time:3min)\n", ""},
		{"a fluid", strings.Replace(start, "hold:wait-power", "hold:wait-oil", 1) + "3. [Lid](remove:lid). [](time:3min)\n4. [Fill](fill:oil). [](time:3min)\n", "1.3 180"},
	} {
		_, moves := planOf(t, "", c.body)
		var got []string
		for _, m := range moves {
			got = append(got, fmt.Sprintf("%s %d", m.Step.Number, m.Gain))
		}
		if s := strings.Join(got, ", "); s != c.want {
			t.Errorf("%s: %q, not %q", c.name, s, c.want)
		}
	}
}

// Sub-steps below a wait go on during it, where they have nothing to do with
// it; else they follow it. Worked out by hand. All of it stands in one step or
// touches one energy, so that its chain is as long.
func TestSubStepsDuringAWait(t *testing.T) {
	const start = "## Work\n\n1. [Off](isolate:power). [](time:1min)\n2. [Wait](hold:wait-power), and meanwhile:\n\n"
	for _, c := range []struct {
		name, body string
		bay        int // minutes
	}{
		{"words", "   1. Sweep. [](time:5min)\n   2. Look. [](time:6min)\n", 21},
		{"longer than the wait", "   1. Sweep. [](time:15min)\n   2. Look. [](time:16min)\n", 32},
		{"another energy", "   1. [Off](isolate:air). [](time:5min)\n", 21},
		{"the same energy", "   1. [Prove](prove:power) by [volts](hold:dead). [](time:5min)\n", 26},
		{"hands in the machine", "   1. [Lid](remove:lid). [](time:5min)\n", 26},
		{"a stop", "   1. Get [the word](hold:sign). [](time:5min)\n", 26},
		{"a wait in it", "   1. [Wait](hold:wait-oil).\n", 41},
		{"one of the same energy beside others", "   1. Sweep. [](time:5min)\n   2. [Lid](remove:lid). [](time:5min)\n", 31},
		{"for another unit", "   1. Sweep. [](time:5min)\n   2. [With a cab](when:cab), [lid](remove:lid). [](time:5min)\n", 21},
	} {
		plan, _ := planOf(t, "", start+c.body)
		if plan.Bay != c.bay*60 || plan.Chain != c.bay*60 {
			t.Errorf("%s: %d s, the chain %d s, not %d min", c.name, plan.Bay, plan.Chain, c.bay)
		}
	}
	for _, wait := range []string{"[](people:1) [Wait](hold:wait-power)", "[Wait](hold:wait)"} { // with a link before it; of nothing that is named
		plan, _ := planOf(t, "", "## Work\n\n1. "+wait+".\n\n   1. [Off](isolate:air). [](time:5min)\n")
		if plan.Bay != 20*60 || plan.Chain != 20*60 {
			t.Errorf("%s: %d s, the chain %d s, not 20 min", wait, plan.Bay, plan.Chain)
		}
	}
}

// A plan as it is written and its bound, worked out by hand. With one person
// the work and the waits of what follows them decide.
func TestPlan(t *testing.T) {
	plan, _ := planOf(t, "people: 2\n", `## Safe

[](time:4min)

1. [Off](isolate:power). [](people:2)
2. [Off](isolate:air).
3. [Wait](hold:wait-power).
4. [Prove](prove:power) by [volts](hold:dead). [](time:3min)

## Strip

1. [Lid](remove:lid). [](time:10min)
2. [Pump](remove:pump). [](time:5min)
3. [Chock](place:chock).

## Refit

1. [All back](reverse:strip).
`)
	// Safe: 4 min over two steps, 20 min wait, 3 min; Strip 15 min and a step
	// without a time; Refit as long as the strip, for want of a time.
	want := schedule.Times{Work: (2*2 + 2 + 3 + 15 + 15) * 60, Bay: (4 + 20 + 3 + 15 + 15) * 60, Waits: 20 * 60, Untimed: 1, People: 2}
	got := plan.Times
	got.Least = 0
	if got != want {
		t.Errorf("%+v, not %+v", got, want)
	}
	// The switch, the wait of its energy, the proof; the lid may be off by then;
	// the pump and the refit of both. The air has nothing to do with it.
	if chain := (2 + 20 + 3 + 5 + 15) * 60; plan.Chain != chain || plan.Least != chain {
		t.Errorf("chain %d, least %d, not %d", plan.Chain, plan.Least, chain)
	}
	var numbers []string
	for _, s := range plan.Critical {
		numbers = append(numbers, s.Number)
	}
	if got := strings.Join(numbers, " "); got != "1.1 1.3 1.4 2.2 3.1" {
		t.Errorf("critical: %s", got)
	}
}

var drawnSteps = []string{
	"[Off](isolate:power)", "[Off](isolate:air)", "[Lock](lock:power)", "[Lid](remove:lid)", "[Lid](refit:lid)", "[Pump](remove:pump)",
	"[Chock](place:chock)", "[Drain](drain:oil)", "[Volts](hold:dead)", "[Word](hold:sign)", "[Wait](hold:wait-oil)", "[On](restore:air)", "Sweep",
}

// A wait or a hold more never shortens the plan or its bound; the plan is never
// shorter than the bound, and never has more people at once than the job; a
// wait is as long as it is written, and begins when what came before is over.
func TestPlansHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		people := rapid.IntRange(1, 3).Draw(t, "people")
		n := rapid.IntRange(1, 8).Draw(t, "steps")
		var lines []string
		for range n {
			line := rapid.SampledFrom(drawnSteps).Draw(t, "step")
			if minutes := rapid.IntRange(0, 9).Draw(t, "minutes"); minutes > 0 {
				line += fmt.Sprintf(" [](time:%dmin)", minutes)
			}
			lines = append(lines, line+fmt.Sprintf(" [](people:%d)", rapid.IntRange(1, people).Draw(t, "crew")))
		}
		head := fmt.Sprintf("people: %d\n", people)
		body := func(lines []string) string { return "## Work\n\n1. " + strings.Join(lines, "\n1. ") + "\n" }
		plan, _ := planOf(t, head, body(lines))
		if plan.Least > plan.Bay {
			t.Fatalf("bound %d, plan %d\n%s", plan.Least, plan.Bay, body(lines))
		}
		now := 0
		for _, s := range plan.Phases[0].Spans {
			if s.From != now || s.People > people || s.Doing == schedule.Wait && s.To-s.From != 20*60 {
				t.Fatalf("%+v after %d\n%s", s, now, body(lines))
			}
			now = s.To
		}
		at := rapid.IntRange(0, n-1).Draw(t, "at")
		hold := rapid.SampledFrom([]string{"wait-power", "wait", "wait-oil", "sign", "dead"}).Draw(t, "hold")
		lines[at] += " [Hold](hold:" + hold + ")"
		more, _ := planOf(t, head, body(lines))
		if more.Bay < plan.Bay || more.Least < plan.Least || more.Chain < plan.Chain {
			t.Fatalf("%s at %d: bound %d to %d, plan %d to %d\n%s", hold, at+1, plan.Least, more.Least, plan.Bay, more.Bay, body(lines))
		}
	})
}

// The second person of a check is shown at its step, and is none of the people:
// the times are those of the same job without the check, worked out by hand.
func TestSecondPersonOfACheck(t *testing.T) {
	plan, _ := planOf(t, "holds: [seen, later]\n", "## One\n\n1. Count. [](time:10min) [](hold:seen)\n2. Count. [](time:5min) [](hold:later)\n")
	ph := plan.Phases[0]
	if len(ph.Seconds) != 1 || ph.Seconds[0].Step.Number != "1.1" || ph.Seconds[0].By.ID != "boss" {
		t.Errorf("the seconds are %v", ph.Seconds)
	}
	if ph.Spans[0].Beside != 1 || ph.Spans[1].Beside != 0 {
		t.Errorf("the spans are %v", ph.Spans)
	}
	if plan.People != 1 || plan.Work != 900 || plan.Bay != 900 {
		t.Errorf("%d people, %d s of work, %d s in the bay", plan.People, plan.Work, plan.Bay)
	}
}
