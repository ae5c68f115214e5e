package walk_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/prove/walk"
)

func standing(list []walk.Standing) []string {
	var out []string
	for _, s := range list {
		words := s.Label() + ": " + s.Word
		if s.When != "" {
			words += " " + s.When
		}
		if s.Since != nil {
			words += " (" + s.Since.Number + ")"
		}
		out = append(out, words)
	}
	return out
}

// Where things stand after each step: energies, points, parts, fasteners,
// fluids, settings, tools, in the order of the machine file.
func TestWhereThingsStand(t *testing.T) {
	r, _, p := walkText(t, "expects: { axle-stand: placed }\nleaves: { axle-stand: placed, traction: dead, cab-door: off, bleed-screw: loose }\n", nil,
		"## Work",
		"[Pull the plug](isolate:traction).",
		"[Lock it](lock:traction).",
		"[Wait](hold:capacitor-wait).",
		"[Prove it](prove:traction). [](hold:bus-dead)",
		"[If it is above](if-not:bus-dead), do this.",
		"   1. [Measure again](again:bus-dead).",
		"[With a cab](when:cab), [lift the door off](remove:cab-door).",
		"[Undo two](loosen:seat-bolt) and [raise it](alter:relief).",
		"[Tighten](tighten:seat-bolt), [set it back](reset:relief), [open](loosen:bleed-screw).",
	)
	stand := "axle stand: placed"
	on := []string{"lift hydraulics: live", "raised forks: live", "raised tug: live", "tank heater: live on units with Tank heater"}
	onInCab := []string{
		"lift hydraulics: live on units with Enclosed cab", "raised forks: live on units with Enclosed cab",
		"raised tug: live on units with Enclosed cab", "tank heater: live on units with Tank heater and with Enclosed cab",
	}
	proved := []string{"traction battery: dead (1.4)"}
	for _, c := range []struct {
		step string
		want []string
	}{
		{"1.1", []string{"traction battery: isolated (1.1)", "service plug: isolated (1.1)", stand}},
		{"1.2", []string{"traction battery: locked (1.2)", "service plug: locked (1.2)", stand}},
		{"1.3", []string{"traction battery: released (1.3)", "service plug: locked (1.2)", stand}},
		{"1.4", []string{
			"traction battery: released where the bus voltage in step 1.4 failed (1.3)",
			"traction battery: dead where the bus voltage in step 1.4 passed (1.4)",
			"service plug: locked (1.2)", stand,
		}},
		{"1.5", []string{"traction battery: dead (1.4)", "service plug: locked (1.2)", stand}},
		{"1.6", slices.Concat(proved, onInCab, []string{"service plug: locked (1.2)", "cab door: off on units with Enclosed cab (1.6)", stand})},
		{"1.7", slices.Concat(proved, on, []string{
			"service plug: locked (1.2)", "cab door: off on units with Enclosed cab (1.6)",
			"seat bolt at the seat base: loose (1.7)", "relief valve: altered (1.7)", stand,
		})},
		{"1.8", slices.Concat(proved, on, []string{
			"service plug: locked (1.2)", "cab door: off on units with Enclosed cab (1.6)",
			"bleed screw: loose (1.8)", stand,
		})},
	} {
		if got := standing(r.Stand(p, p.FindStep(c.step))); !slices.Equal(got, c.want) {
			t.Errorf("after %s:\n%s\nwant:\n%s", c.step, strings.Join(got, "\n"), strings.Join(c.want, "\n"))
		}
	}
	if got := standing(r.StandAtStart(p)); !slices.Equal(got, []string{stand}) {
		t.Errorf("at the start: %v", got)
	}
	if last, end := standing(r.Stand(p, p.FindStep("1.8"))), standing(r.Stand(p, nil)); !slices.Equal(last, end) {
		t.Errorf("at the end: %v", end)
	}
}

// What is on while something is off, loose or altered is named: everything that
// can hurt is on that list. What is on for a test comes first.
func TestWhatIsOnWhileSomethingIsOpen(t *testing.T) {
	r, _, p := walkText(t, "leaves: { traction: live, cab-door: off }\n", nil,
		"## Work",
		"Look.",
		"[With a cab](when:cab), [lift the door off](remove:cab-door).",
		"[Pull the plug](isolate:service-plug).",
		"[Raise it](alter:relief).",
		"[On for a test](test-live:traction). [](hazard:charged-capacitors) [](hold:foreman-release) [](people:2)",
		"[Off](isolate:traction), [on](restore:traction).",
		"[Set it back](reset:relief).",
	)
	cab, always := " on units with Enclosed cab", ""
	on := func(when, battery string) []string {
		var out []string
		for _, e := range []string{"traction battery", "lift hydraulics", "raised forks", "raised tug"} {
			if e == "traction battery" {
				out = append(out, battery)
				continue
			}
			out = append(out, e+": live"+when)
		}
		return append(out, "tank heater: live on units with "+map[bool]string{true: "Tank heater", false: "Tank heater and with Enclosed cab"}[when == always])
	}
	door, relief := "cab door: off on units with Enclosed cab (1.2)", "relief valve: altered (1.4)"
	plug := "service plug: isolated (1.3)"
	for step, want := range map[string][]string{
		"1.1": nil,
		"1.2": append(on(cab, "traction battery: live on units with Enclosed cab"), door),
		"1.3": append(on(cab, "traction battery: isolated (1.3)"), plug, door),
		"1.4": append(on(always, "traction battery: isolated (1.3)"), plug, door, relief),
		"1.5": append(on(always, "traction battery: live (1.5)"), door, relief),
		"1.6": append(on(always, "traction battery: live (1.6)"), door, relief),
		"1.7": append(on(cab, "traction battery: live on units with Enclosed cab (1.6)"), door),
	} {
		if got := standing(r.Stand(p, p.FindStep(step))); !slices.Equal(got, want) {
			t.Errorf("after %s:\n%s\nwant:\n%s", step, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
	for step, test := range map[string]bool{"1.4": false, "1.5": true, "1.6": false} {
		if got := r.Stand(p, p.FindStep(step))[0].Test; got != test {
			t.Errorf("after %s the first is on for a test: %t", step, got)
		}
	}
}

// A call that changes nothing collapses; the same call elsewhere does not.
func TestCallThatOnlyConfirms(t *testing.T) {
	safe := procedureText("leaves: { traction: dead }\n", "## Work", "Park it.", "[Pull the plug](isolate:traction) and [lock it](lock:traction).", "[Wait](hold:capacitor-wait).", "[Prove it](prove:traction). [](hold:bus-dead)")
	words := procedureText("", "## Work", "Sweep the floor.")
	r, _, p := walkText(t, "", map[string]string{"procedures/safe.md": safe, "procedures/words.md": words},
		"## Work", "[Make it safe](do:safe).", "[Again](do:safe).", "[Sweep](do:words).", "[Unlock](unlock:traction).", "[On](restore:traction).")
	var got []bool
	for _, l := range p.Calls {
		got = append(got, r.Of(p).Confirms[l])
	}
	if want := []bool{false, true, false}; !slices.Equal(got, want) {
		t.Errorf("confirms %v, want %v", got, want)
	}
	if w := r.Of(p); w.Acts != 5 || len(w.Words) != 0 || !w.Done {
		t.Errorf("%d acts, %d steps of words", w.Acts, len(w.Words))
	}
}

// An energy with nothing to switch off is on until it is held or let out: named
// from the first thing that comes off, and as it stands while it is put away.
func TestAnEnergyWithNothingToSwitchOffStands(t *testing.T) {
	r, _, p := walkText(t, "supplies: [new-seat-bolt: 4]\n", nil,
		"## Work",
		"[Base off](remove:seat-base).",
		"[Stands under it](place:axle-stand).",
		"[Push it](prove:raised-tug). [](hold:push-test)",
		"[Stands away](clear:axle-stand).",
		"[Base on](refit:seat-base), [tighten it](tighten:seat-bolt).",
	)
	for step, want := range map[string]string{
		"1.1": "raised tug: live", "1.2": "raised tug: released (1.2)", "1.3": "raised tug: dead (1.3)",
		"1.4": "raised tug: live (1.4)", "1.5": "",
	} {
		got := slices.DeleteFunc(standing(r.Stand(p, p.FindStep(step))), func(s string) bool { return !strings.HasPrefix(s, "raised tug") })
		if strings.Join(got, "; ") != want {
			t.Errorf("after %s: %q, want %q", step, got, want)
		}
	}
}

// Three words-only steps and three acts are counted.
func TestCounts(t *testing.T) {
	r, _, p := walkText(t, "supplies: [new-seat-bolt: 4]\n", nil, "## Strip", "Look.", "[Base off](remove:seat-base).", "Do these.", "   1. Wipe.", "   2. [Note](hold:shims-found).", "## Refit", "[Back](reverse:strip).")
	w := r.Of(p)
	if w.Acts != 3 { // the removal, the reverse: and what it derives
		t.Errorf("%d acts", w.Acts)
	}
	words := numbersOf(w.Words)
	if want := []string{"1.1", "1.3.1"}; !slices.Equal(words, want) {
		t.Errorf("words only: %v, want %v", words, want)
	}
}
