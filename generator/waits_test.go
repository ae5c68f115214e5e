package generator_test

import (
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// soak is a manual with waits that stand alone in their step, and waits behind
// something that the same step asks for.
var soak = map[string]string{
	"shop.yaml":              "title: Shop of the soak\n",
	"register/tools.yaml":    "lamp: { name: lamp, kind: aid }\n",
	"register/holds.yaml":    "settle: { name: settling, kind: wait, for: 10 min }\n",
	"register/supplies.yaml": "acid: { name: citric acid, unit: g }\n",
	"machines/rig.yaml":      "name: rig\noptions: { gas: Gas burner }\npoints: { plug: { name: plug, lock: no } }\nenergies: { mains: { name: mains, kind: electric, voltage: 24 V dc, points: [plug] } }\n",
	"procedures/soak.md": "---\ntitle: Soak\nfor: rig\ntools: [lamp]\nsupplies: { acid: 250 g }\nholds: [settle]\n---\n\n## Alone\n\n" + `1. Open the lid.
2. [Wait 10 min](hold:settle).
3. Wait for the oil. [10 min](hold:settle)
4. Let it [settle for 10 min](hold:settle) with the [](tool:lamp) on.
5. [With gas](when:gas), [wait 10 min](hold:settle).

## Behind something

1. [Pull the plug](isolate:mains) and [wait 10 min](hold:settle).
2. Dissolve 250 g of [](supply:acid) and leave it [for 10 min](hold:settle).
3. Hang up the sign. [Wait 10 min](hold:settle).
4. [Wait 10 min](hold:settle), stir, and [wait 10 min](hold:settle) again.
5. [Put the plug in](restore:mains).
`,
}

// A wait that stands behind something in its own step does not run from the tick
// of the step before: it would be over before the plug is pulled that it waits
// for.
func TestAWaitBehindAnActIsBegunByAPress(t *testing.T) {
	t.Parallel()
	site := smallSite(t, soak)
	page, err := os.ReadFile(filepath.Join(site, "procedures", "soak.html"))
	must(t, err)
	var got []string
	for _, step := range strings.Split(string(page), `data-step="`)[1:] {
		number, rest, _ := strings.Cut(step, `"`)
		for _, hold := range strings.Split(rest, `class="hold"`)[1:] {
			tag, _, _ := strings.Cut(hold, ">")
			if strings.Contains(tag, "data-pressed") {
				number += " pressed"
			} else {
				number += " follows"
			}
		}
		got = append(got, number)
	}
	want := "1.1, 1.2 follows, 1.3 follows, 1.4 follows, 1.5 follows, 2.1 pressed, 2.2 pressed, 2.3 pressed, 2.4 follows pressed, 2.5"
	if strings.Join(got, ", ") != want {
		t.Errorf("%s\nwant %s", strings.Join(got, ", "), want)
	}

	ctx, complaints := browser(t)
	work(t, ctx, "file://"+filepath.ToSlash(filepath.Join(site, "procedures", "soak.html")))
	js[any](t, ctx, `{ const real = Date.now; window.jump = 0; Date.now = () => real() + window.jump; } var own = window.baybinder.page;
		var wait = () => own.steps.find((s) => s.element === step('2.1')).holds[0];
		for (const n of ['1.1', '1.2', '1.3', '1.4', '1.5']) own.setStep(own.steps.find((s) => s.element === step(n)), 'done', {}); window.jump = 3600000; own.beat(); 0`)
	runs := func(when string, want bool) {
		t.Helper()
		if got := js[bool](t, ctx, `wait().until !== null`); got != want {
			t.Errorf("%s: the wait runs: %v", when, got)
		}
	}
	runs("an hour after the step before", false)
	js[any](t, ctx, `press(step('2.1'), 'Start the wait'); 0`)
	runs("pressed", true)
	js[any](t, ctx, `var first = wait().until; window.jump += 60000; press(step('2.1'), 'Start again'); 0`)
	if !js[bool](t, ctx, `wait().until >= first + 60000 && !wait().met`) {
		t.Error("a press by mistake cannot be taken back")
	}
	js[any](t, ctx, `window.jump += 600001; own.beat(); 0`)
	if !js[bool](t, ctx, `wait().met`) {
		t.Error("the wait is never over")
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// Of steps that say no time nobody has said that they take none: the page says how
// many they are, and speaks of no work. A step with a wait has a time: here are nine
// waits of 10 min, and two steps without one.
func TestStepsWithoutATimeAreNotNoWork(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ step, want string }{
		{"Open the lid.", "1 h 30 min in the bay (of that 1 h 30 min is waiting; 2 steps have no time)"},
		{"Open the lid. [](time:5min)", "5 min of work, 1 h 35 min in the bay (of that 1 h 30 min is waiting; 1 step has no time)"},
	} {
		files := maps.Clone(soak)
		files["procedures/soak.md"] = strings.Replace(strings.Replace(files["procedures/soak.md"], "Open the lid.", c.step, 1), "[With gas](when:gas), ", "", 1)
		page, err := os.ReadFile(filepath.Join(smallSite(t, files), "procedures", "soak.html"))
		must(t, err)
		_, times, _ := strings.Cut(string(page), "<h2>Time</h2>")
		times, _, _ = strings.Cut(times, "<h2>")
		if got := strings.Join(strings.Fields(anyTag.ReplaceAllString(times, "")), " "); got != c.want {
			t.Errorf("%s\n%q, want\n%q", c.step, got, c.want)
		}
	}
}
