package walk_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN.

// element is one thing that 29 CFR 1910.147 asks for, as the link that says
// it. The rank is the order that (d) and (e) make mandatory.
type element struct {
	paragraph string
	says      string
	link      string
}

// lockout is the sequence of (d), the work, and the release of (e), on an
// energy with stored charge.
var lockout = []element{
	{"(d)(3)", "energy isolating devices are operated so as to isolate", "[Pull the plug](isolate:traction)."},
	{"(d)(4)(i)", "lockout devices are affixed to each energy isolating device", "[Lock it](lock:traction)."},
	{"(d)(5)(i)", "stored energy is relieved, disconnected, restrained", "[Wait](hold:capacitor-wait)."},
	{"(d)(6)", "isolation and deenergization are verified before the work", "[Prove it](prove:traction). [](hold:bus-dead)"},
	{"work", "servicing", "[Take the inverter out](remove:inverter)."},
	{"(e)(1)", "components are operationally intact", "[Refit it](refit:inverter) and [tighten](tighten:lid-bolt#inverter)."},
	{"(e)(3)", "the lockout device is removed", "[Take the lock off](unlock:traction)."},
	{"(e)", "energy is restored", "[Put the plug in](restore:traction)."},
}

// machine on which the inverter alone is worked on.
func lockoutFindings(t *testing.T, steps []element, machine func(string) string) []string {
	files := shopFiles(t)
	yaml := strings.Replace(files["machines/yard-tug.yaml"], "inverter: { name: inverter, under: [inverter-lid],", "inverter: { name: inverter,", 1)
	files["machines/yard-tug.yaml"] = machine(yaml)
	text := "---\ntitle: Job\nfor: yard-tug\n---\n\n## Work\n\n"
	for _, s := range steps {
		text += "1. " + s.link + "\n"
	}
	files["procedures/job.md"] = text
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%s: %s", found[0].At.Path(), found[0].Message)
	}
	var codes []string
	for _, f := range walk.All(m).Findings(m) {
		codes = append(codes, f.Code)
	}
	return codes
}

func asItIs(yaml string) string { return yaml }

// Any order of the elements of (d) and (e) other than the mandatory one is an
// error: "shall be done in the following sequence".
func TestLockoutSequence(t *testing.T) {
	if got := lockoutFindings(t, lockout, asItIs); len(got) > 0 {
		t.Fatalf("the mandatory sequence gives %v", got)
	}
	orders := 0
	permute(lockout[:5], func(order []element) {
		if slices.Equal(order, lockout[:5]) {
			return
		}
		orders++
		steps := slices.Concat(order, lockout[5:])
		if got := lockoutFindings(t, steps, asItIs); len(got) == 0 {
			t.Errorf("nothing is found where the order is %v", paragraphs(order))
		}
	})
	permute(lockout[5:], func(order []element) {
		if slices.Equal(order, lockout[5:]) {
			return
		}
		orders++
		if got := lockoutFindings(t, slices.Concat(lockout[:5], order), asItIs); len(got) == 0 {
			t.Errorf("nothing is found where the order is %v", paragraphs(order))
		}
	})
	t.Logf("%d wrong orders found", orders)
}

func paragraphs(order []element) []string {
	var out []string
	for _, e := range order {
		out = append(out, e.paragraph)
	}
	return out
}

func permute(of []element, do func([]element)) {
	order := slices.Clone(of)
	var rec func(n int)
	rec = func(n int) {
		if n == len(order) {
			do(order)
			return
		}
		for i := n; i < len(order); i++ {
			order[n], order[i] = order[i], order[n]
			rec(n + 1)
			order[n], order[i] = order[i], order[n]
		}
	}
	rec(0)
}

// Each paragraph that is not done, or done in the wrong place, is told by its
// own code.
func TestLockoutParagraphs(t *testing.T) {
	without := func(paragraph string) []element {
		return slices.DeleteFunc(slices.Clone(lockout), func(e element) bool { return e.paragraph == paragraph })
	}
	swapped := func(a, b string) []element {
		out := slices.Clone(lockout)
		i := slices.IndexFunc(out, func(e element) bool { return e.paragraph == a })
		j := slices.IndexFunc(out, func(e element) bool { return e.paragraph == b })
		out[i], out[j] = out[j], out[i]
		return out
	}
	twoPoints := func(yaml string) string {
		yaml = strings.Replace(yaml, "points: [service-plug], stored: yes }", "points: [service-plug, charger-plug], stored: yes }", 1)
		return strings.Replace(yaml, "points:\n", "points:\n  charger-plug: { name: charger plug, lock: yes }\n", 1)
	}
	oneLock := slices.Clone(lockout)
	oneLock[1].link = "[Lock it](lock:service-plug)."
	charged := slices.Concat(lockout[:4], []element{
		{"(f)(1)", "energized for a test", "[Take the lock off](unlock:traction)."},
		{"(f)(1)(iv)", "energize and test", "[Test](test-live:traction). [](hazard:charged-capacitors) [](hold:foreman-release) [](people:2)"},
		{"(f)(1)(v)", "deenergize", "[Pull the plug](isolate:traction) and [lock it](lock:traction)."},
	}, lockout[4:])
	proved := slices.Insert(slices.Clone(charged), 7, lockout[2], lockout[3])
	for _, c := range []struct {
		about   string
		steps   []element
		machine func(string) string
		code    string // "" where nothing may be found
	}{
		{"(d)(3) left out: a lock on a live switch", without("(d)(3)"), asItIs, "energy-order"},
		{"(d)(4) left out: proved while not locked", without("(d)(4)(i)"), asItIs, "energy-order"},
		{"(d)(4) before (d)(3)", swapped("(d)(3)", "(d)(4)(i)"), asItIs, "energy-order"},
		{"(d)(4)(i) each device: one of two is not locked", oneLock, twoPoints, "energy-order"},
		{"(d)(4)(i) each device: both are", lockout, twoPoints, ""},
		{"(d)(5)(i) left out: the charge is still there", without("(d)(5)(i)"), asItIs, "not-released"},
		{"(d)(5)(i) before (d)(4): the wait does not count", swapped("(d)(4)(i)", "(d)(5)(i)"), asItIs, "not-released"},
		{"(d)(5)(ii) charged again by the test: the old proof is void", charged, asItIs, "live-work"},
		{"(d)(5)(ii) verified anew after the test", proved, asItIs, ""},
		{"(d)(6) left out", without("(d)(6)"), asItIs, "live-work"},
		{"(d)(6) after the work began", swapped("(d)(6)", "work"), asItIs, "live-work"},
		{"(e)(1) left out: a part is off", without("(e)(1)"), asItIs, "restored-while-open"},
		{"(e)(1) after the lock came off", swapped("(e)(1)", "(e)(3)"), asItIs, "live-work"},
		{"(e)(3) left out: switched on against the lock", without("(e)(3)"), asItIs, "energy-order"},
		{"(e)(3) after the start", swapped("(e)(3)", "(e)"), asItIs, "energy-order"},
		{"(e) left out: the machine stays isolated", without("(e)"), asItIs, "left-isolated"},
	} {
		got := lockoutFindings(t, c.steps, c.machine)
		switch {
		case c.code == "" && len(got) > 0:
			t.Errorf("%s: %v", c.about, got)
		case c.code != "" && !slices.Contains(got, c.code):
			t.Errorf("%s: %v, not %s", c.about, got, c.code)
		case len(got) > 3:
			t.Errorf("%s: %d findings %v", c.about, len(got), got)
		}
	}
}
