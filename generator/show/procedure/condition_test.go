package procedure

import (
	"strings"
	"testing"

	"baybinder/generator/model"
)

func textsOf(list []Condition) string {
	var out []string
	for _, c := range list {
		text := c.Text
		if c.OfUnit {
			text += " (unit)"
		}
		out = append(out, text)
	}
	return strings.Join(out, "; ")
}

// What every step asks of the unit is said once, at the head; what a phase or a
// step holds is not said again below it. Outcomes are said where they are asked.
func TestConditionsAreSaidOnce(t *testing.T) {
	for _, c := range []struct{ body, head, phases, steps string }{
		{"## A\n\n1. [With a cab](when:cab), a.\n2. [With a cab](when:cab), b.\n", "Only with: Cab. (unit)", "", "; "},
		{"## A\n\n1. [With a cab](when:cab), a.\n2. B.\n", "", "", "Only with: Cab. (unit); "},
		{"## A\n\n1. A.\n2. [With a cab](when:cab), b.\n", "", "", "; Only with: Cab. (unit)"},
		{"## A\n\n1. [With](when:cab) and [without](when:!pack), a.\n2. [Without](when:!pack), b.\n", "Only without: Cold pack. (unit)", "", "Only with: Cab. (unit); "},
		{"## A\n\n1. [With a cab](when:cab), these.\n   1. [With a pack](when:pack), a.\n2. [With a cab](when:cab), b.\n", "Only with: Cab. (unit)", "", "|Only with: Cold pack. (unit); "},
		{"## A\n\n[With a cab](when:cab).\n\n1. A.\n   1. [With a cab](when:cab), b.\n\n## B\n\n1. C.\n", "", "Only with: Cab. (unit); ", "|; "},
		{"## A\n\n[With a cab](when:cab).\n\n1. A.\n\n## B\n\n1. [With a cab](when:cab), b.\n", "Only with: Cab. (unit)", "; ", "; "},
		{"## A\n\n1. A. [](hold:seat) [](hold:bus)\n2. [Worn](if:seat=worn), b.\n3. [Failed](if-not:bus), c.\n", "", "",
			"; Only if seat: scored.; Only if it was not met: bus."},
	} {
		base := with(yard, "register/holds.yaml", "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\nbus: { name: bus, kind: measure, what: it, limit: at most 5 V dc }\n")
		v := jobAt(t, base, "for: tug\nholds: [seat, bus]\n", c.body)
		var phases, steps []string
		for _, phase := range v.Phases {
			phases = append(phases, textsOf(phase.When))
			for _, part := range phase.Parts {
				text := textsOf(part.Step.When)
				for i := range part.Step.Subs {
					text += "|" + textsOf(part.Step.Subs[i].When)
				}
				steps = append(steps, text)
			}
		}
		if got := textsOf(v.When); got != c.head {
			t.Errorf("%s\nhead %q, want %q", c.body, got, c.head)
		}
		if got := strings.Join(phases, "; "); got != c.phases {
			t.Errorf("%s\nphases %q, want %q", c.body, got, c.phases)
		}
		if got := strings.Join(steps, "; "); got != c.steps {
			t.Errorf("%s\nsteps %q, want %q", c.body, got, c.steps)
		}
	}
}

// A phase's first paragraph that only says for which units it is, is said by the
// line of its conditions alone; one with more to say stays.
func TestALeadOfConditionsAlone(t *testing.T) {
	for lead, stays := range map[string]bool{
		"[With a cab](when:cab).":                                false,
		"[With a cab](when:cab), [without a pack](when:!pack):":  false,
		"[With a cab](when:cab). [](time:10min) [](hazard:heat)": false,
		"[](when:cab)":                                          false,
		"[With a cab](when:cab), mind the step.":                true,
		"[With a cab](when:cab), mind [the heat](hazard:heat).": true,
		"[With a cab](when:cab), [the heat](hazard:heat).":      true,
		"[With a cab](when:cab), With a cab.":                   true,
		"With a cab.":                                           true,
	} {
		v := jobAt(t, yard, "for: tug\nhazards: [heat]\n", "## Work\n\n"+lead+"\n\n1. A. [](hazard:heat)\n\n## More\n\n1. B.\n")
		if got := strings.Trim(string(v.Phases[0].Lead), " ") != ""; got != stays {
			t.Errorf("%s: stays %v, %q", lead, got, v.Phases[0].Lead)
		}
	}
	if onlyWhen(&model.Block{Plain: "."}) {
		t.Error("what has no link says for which units it is")
	}
}

// The places where conditions are asked for outside the page.
func TestConditionsInWords(t *testing.T) {
	s := siteOf(t, with(yard, "procedures/job.md", "---\ntitle: Job\nfor: tug\n---\n## Work\n\n1. [With](when:cab) and [without](when:!pack), a.\n"))
	p := procedureOf(t, s, "job")
	if got := strings.Join(s.Conditions(p, p.Steps[0].Links), " "); got != "Only with: Cab. Only without: Cold pack." {
		t.Error(got)
	}
}
