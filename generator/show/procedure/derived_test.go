package procedure

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// pump is a machine whose parts go back in many ways.
var pump = map[string]string{
	"shop.yaml":              "title: Shop\nshow-units: { torque: [N·m, lbf·ft] }\n",
	"register/tools.yaml":    "socket: { name: socket, kind: socket, fits: [13 mm] }\nwrench: { name: wrench, kind: torque-wrench, range: 10 to 100 N·m }\nstand: { name: stand, kind: aid }\n",
	"register/supplies.yaml": "gasket: { name: gasket, unit: each }\nnew-bolt: { name: new bolt, unit: each }\nnew-pump: { name: exchange pump, unit: each }\n",
	"machines/rig.yaml": `name: Rig
options: { cab: Cab }
parts:
  lid: { name: lid, held-by: { bolt: 4 } }
  head: { name: head, held-by: { stud: 6 } }
  case: { name: case, held-by: { long-stud: 6 } }
  ring: { name: ring, held-by: { short-stud: 2 } }
  cover: { name: cover, held-by: { ring-bolt: 5, latch: 1 } }
  pump: { name: pump, renew-with: new-pump, serial: yes, old: return }
  core: { name: core, serial: yes }
  plate: { name: plate }
  pipe: { name: pipe, kind: line }
  lead: { name: lead, kind: wire }
  plug: { name: plug, kind: connector }
  door: { name: door, only-with: cab }
  one: { name: line one, kind: line, held-by: { nut: 1 } }
  two: { name: line two, kind: line, held-by: { nut: 1 } }
fasteners:
  bolt: { name: bolt, torque: 22 N·m, renew-with: new-bolt, lubricant: oil, mark-after: paint, retorque: after 50 km }
  stud: { name: stud, stages: [30 N·m, 60 N·m, 90°], start: by hand, sequence: star }
  long-stud: { name: long stud, stages: [30 N·m, 60 N·m, 90°], sequence: star }
  short-stud: { name: short stud, stages: [30 N·m] }
  ring-bolt: { name: ring bolt, sequence: star, torque: 10 N·m }
  latch: { name: latch }
  nut: { name: nut, start: "by hand, two turns", torque: 30 N·m }
  screw: { name: screw, torque: 8 N·m }
settings:
  relief: { name: relief, value: 180 bar }
  stop: { name: stop }
`,
}

func refitOf(t *testing.T, strip, reversing string) []Derived {
	t.Helper()
	v := jobAt(t, pump, "for: rig\ntools: [socket, wrench, stand]\nsupplies: [new-pump, gasket, new-bolt: 4]\n", "## Strip\n\n"+strip+"\n## Refit\n\n1. "+reversing+"\n")
	return v.Phases[1].Parts[0].Step.Derived
}

// fasteningOf are the fasteners of a derived step as they are read: the turns,
// the name, the rest; "~" with a drawing of their order.
func fasteningOf(d *Derived) string {
	var out []string
	for _, f := range d.Fastened {
		var turns []string
		for _, turn := range f.Turns {
			turns = append(turns, string(turn))
		}
		text := page.Unworked(strings.Join(turns, " / ")) + " " + f.Name
		if f.More != "" {
			text += ": " + f.More
		}
		if len(f.Orders) > 0 {
			text += " ~"
		}
		out = append(out, text)
	}
	return strings.Join(out, ", ")
}

// "Reverse: … each as one derived step: refit (a new one where it was renewed),
// new fasteners, tighten to the torque, clear, reset": in the words of the part's
// kind. 22 N·m are 16.2 lbf·ft, 30 are 22.1 (shown as 22:
// within 1 %), 60 are 44.3 (as 44), 10 are 7.4, 8 are 5.9.
func TestWhatTheRefitSays(t *testing.T) {
	for _, c := range []struct{ strip, text, fastened, fresh, uncap string }{
		{"[Off](remove:plate).", "Refit the plate", "", "", ""},
		{"[Off](disconnect:pipe).", "Connect the pipe", "", "", ""},
		{"[Off](disconnect:lead).", "Connect and secure the lead", "", "", ""},
		{"[Off](disconnect:plug).", "Plug in the plug", "", "", ""},
		{"[Off](disconnect:pipe), [shut](cap:pipe).", "Connect the pipe", "", "", "Take the cap out first"},
		{"[Off](disconnect:lead), [taped](cap:lead).", "Connect and secure the lead", "", "", "Take the insulation off its end first"},
		{"[Out](renew:pump).", "Fit a new pump", "", "New: exchange pump; write down its serial number", ""},
		{"[Out](renew:core).", "Fit a new core", "", "Write down its serial number", ""},
		{"[Off](remove:core).", "Refit the core", "", "", ""},
		{"[Under it](place:stand).", "Take away the stand", "", "", ""},
		{"[Up](alter:relief).", "Set the relief back to 180 bar", "", "", ""},
		{"[Up](alter:stop).", "Set the stop back", "", "", ""},
		{"[Loose](loosen:screw).", "Tighten the screw", "8 N·m <small>(5.9 lbf·ft)</small> screw", "", ""},
		{"[Off](remove:lid).", "Refit the lid", "4 × 22 N·m <small>(16.2 lbf·ft)</small> bolt: new: new bolt; on the thread: oil; mark: paint; tighten again: after 50 km", "", ""},
		{"[Off](remove:case).", "Refit the case", "6 × / 1: 30 N·m <small>(22 lbf·ft)</small> / 2: 60 N·m <small>(44 lbf·ft)</small> / 3: 90° long stud: sequence: star ~", "", ""},
		{"[Off](remove:ring).", "Refit the ring", "2 × 30 N·m <small>(22 lbf·ft)</small> short stud", "", ""},
		{"[Off](remove:cover).", "Refit the cover", "5 × 10 N·m <small>(7.4 lbf·ft)</small> ring bolt: sequence: star ~, 1 × latch", "", ""},
	} {
		got := refitOf(t, "1. "+c.strip+"\n", "[In reverse](reverse:strip)")
		if len(got) != 1 {
			t.Fatalf("%s: %d steps", c.strip, len(got))
		}
		d := &got[0]
		if text := strings.ReplaceAll(d.Text, " (2610 psi)", ""); text != c.text {
			t.Errorf("%s: %q, want %q", c.strip, d.Text, c.text)
		}
		if !strings.EqualFold(fasteningOf(d), c.fastened) {
			t.Errorf("%s: fasteners %q, want %q", c.strip, fasteningOf(d), c.fastened)
		}
		if !strings.EqualFold(d.New, c.fresh) || d.Uncap != c.uncap {
			t.Errorf("%s: new %q, cap %q", c.strip, d.New, d.Uncap)
		}
	}
}

// "A run is the derived refits in a row whose fasteners have start: they are
// begun as their part goes on, and tightened, in the order of refit".
func TestARunIsBegunByHand(t *testing.T) {
	got := refitOf(t, "1. [Off](disconnect:one).\n2. [Off](disconnect:two).\n", "[In reverse](reverse:strip)")
	var said []string
	for i := range got {
		said = append(said, got[i].Text+" | "+fasteningOf(&got[i]))
	}
	want := []string{
		"Connect the line two | 1 × nut: begin: by hand, two turns; begin them by hand; they are tightened later", "Connect the line one | 1 × nut: begin: by hand, two turns; begin them by hand; they are tightened later",
		"Tighten what holds the line two | 1 × 30 N·m <small>(22 lbf·ft)</small> nut", "Tighten what holds the line one | 1 × 30 N·m <small>(22 lbf·ft)</small> nut",
	}
	if !strings.EqualFold(strings.Join(said, "\n"), strings.Join(want, "\n")) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(said, "\n"), strings.Join(want, "\n"))
	}
	// Of a run no order is drawn before the fasteners are tightened.
	heads := refitOf(t, "1. [Off](remove:head).\n2. [Off](disconnect:two).\n", "[In reverse](reverse:strip)")
	drawn := ""
	for i := range heads {
		drawn += fmt.Sprint(len(strings.Split(fasteningOf(&heads[i]), "~"))-1, " ")
	}
	if drawn != "0 0 0 1 " {
		t.Errorf("orders are drawn at %s", drawn)
	}
}

// A derived step brings the tools of the step that it takes back, its people, a
// link to it, and what that step says of the refit.
func TestTheRefitBringsAlong(t *testing.T) {
	got := refitOf(t, "1. [Off](remove:plate) with the [](tool:socket). [](people:2) [](supply:gasket)\n\n   [When you refit it](on:refit), wipe it.\n", "[In reverse](reverse:strip)")
	d := &got[0]
	if len(d.Tools) != 1 || d.Tools[0].Name != "socket" || d.People != 2 || d.Reverses.Name != "reverses 1.1" || d.Reverses.Address != "#s1-1" || len(d.Notes) != 1 || d.Number != "2.1.1" || d.Anchor != "r2-1-1" {
		t.Errorf("%+v", d)
	}
	if got := refitOf(t, "1. [Under](place:stand) with the [](tool:socket).\n", "[In reverse](reverse:strip)")[0].Tools; len(got) != 1 || got[0].Name != "socket" {
		t.Errorf("what was placed is no tool of taking it away: %+v", got)
	}
}

// For which units a derived step is, it says unless it stands above; what of the
// strip does not come back is named.
func TestForWhichUnitsTheRefitIs(t *testing.T) {
	for _, c := range []struct {
		strip, refit, when string
		ofUnit             bool
		notBack            string
	}{
		{"1. [Off](remove:plate).\n", "1. [R](reverse:strip)\n", "", true, ""},
		{"1. [Off](remove:door).\n", "1. [R](reverse:strip)\n", "on units with Cab", true, ""},
		{"1. [With a cab](when:cab), [off](remove:plate).\n", "1. [R](reverse:strip)\n", "on units with Cab", true, ""},
		{"1. [With a cab](when:cab), [off](remove:plate).\n", "[With a cab](when:cab).\n\n1. [R](reverse:strip)\n", "", true, ""},
		{"1. [With a cab](when:cab), [off](remove:plate).\n", "1. [With a cab](when:cab), [R](reverse:strip)\n", "", true, ""},
		{"1. [If you like](optional:), [off](remove:plate).\n", "1. [R](reverse:strip)\n", "where step 1.1 is done", false, ""},
		{"1. [With a cab](when:cab), [if you like](optional:), [off](remove:plate).\n", "[With a cab](when:cab).\n\n1. [R](reverse:strip)\n", "on units with Cab, where step 1.1 is done", false, ""},
		{"1. [Off](disconnect:pipe).\n2. [With a cab](when:cab), [shut](cap:pipe).\n", "1. [R](reverse:strip)\n", "", true, ""},
		{"1. [Off](remove:plate).\n2. [Do it](do:other).\n3. [And](do:other).\n", "1. [R](reverse:strip)\n", "", true, "1.2, 1.3"},
		{"1. [Off](remove:plate).\n2. [Do it](do:other).\n", "1. [R](reverse:strip)\n", "", true, "1.2"},
	} {
		base := with(pump, "procedures/other.md", "---\ntitle: Other\nfor: rig\nleaves: { lid: off }\n---\n## Work\n\n1. [Off](remove:lid).\n")
		v := jobAt(t, base, "for: rig\n", "## Strip\n\n"+c.strip+"\n## Refit\n\n"+c.refit)
		st := v.Phases[1].Parts[0].Step
		d := &st.Derived[0]
		if d.When != c.when || d.OfUnit != c.ofUnit {
			t.Errorf("%s%s: %q, of the unit %v", c.strip, c.refit, d.When, d.OfUnit)
		}
		if (st.NotBack == "") != (c.notBack == "") || !strings.Contains(st.NotBack, c.notBack) {
			t.Errorf("%s: not back %q", c.strip, st.NotBack)
		}
		if strings.Contains(c.strip, "cap:") && d.Uncap != "Take the cap out first (on units with Cab)" {
			t.Errorf("the cap: %q", d.Uncap)
		}
	}
}

// A condition is told already where all of one case stands above.
func TestWhatStandsAbove(t *testing.T) {
	s := siteOf(t, with(pump, "procedures/job.md", "---\ntitle: Job\nfor: rig\n---\n## Work\n\n[With a cab](when:cab).\n\n1. A.\n\n## More\n\n1. B.\n"))
	p := procedureOf(t, s, "job")
	cab, other := walk.Condition{Option: "cab", Is: true}, walk.Condition{Option: "cab"}
	for i, c := range []struct {
		where walk.Cases
		phase int
		want  bool
	}{
		{nil, 0, false}, {walk.Cases{nil}, 0, false}, {walk.Cases{{cab}}, 0, true}, {walk.Cases{{cab}}, 1, false}, {walk.Cases{{other}}, 0, false},
		{walk.Cases{{cab}, {cab}}, 0, false}, {walk.Cases{{cab, other}}, 0, false},
	} {
		if got := said(p, p.Phases[c.phase], c.where); got != c.want {
			t.Errorf("%d: %v", i, got)
		}
	}
	for i, c := range []struct {
		where walk.Cases
		want  bool
	}{{nil, true}, {walk.Cases{{cab}}, true}, {walk.Cases{nil}, false}, {walk.Cases{{cab}, {cab, {Step: &model.Step{}}}}, false}} {
		if got := ofUnits(c.where); got != c.want {
			t.Errorf("of units, %d: %v", i, got)
		}
	}
}

// A fastener's own picture goes before a drawing of its order.
func TestAPictureGoesBeforeADrawing(t *testing.T) {
	base := with(pump, "pictures/order.svg", `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"></svg>`)
	for words, want := range map[string]int{"": 1, " Look at [the stud](fastener:stud).": 1, " ![the order](../pictures/order.svg)": 1, " ![the order](../pictures/order.svg) of [the stud](fastener:stud).": 0} {
		v := jobAt(t, base, "for: rig\ntools: [wrench]\n", "## Strip\n\n1. [Off](remove:head).\n2. Look."+words+"\n\n## Refit\n\n1. [R](reverse:strip)\n\n## Again\n\n1. [Tight](tighten:stud).\n2. [Look](fastener:stud).\n3. [Loose](loosen:stud).\n4. [Tight](tighten:bolt), [one](tighten:nut#one).\n5. [Tight](tighten:stud#head).\n")
		again := v.Phases[2].Parts
		if got := len(v.Phases[1].Parts[0].Step.Derived[1].Fastened[0].Orders); got != want {
			t.Errorf("%q: %d drawings at the refit", words, got)
		}
		for i, n := range []int{want, 0, 0, 0, want} {
			if got := len(again[i].Step.Orders); got != n {
				t.Errorf("%q: %d drawings at step 3.%d", words, got, i+1)
			}
		}
	}
}
