package procedure

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
)

// Known: FROM MEMORY.

var oilShop = map[string]string{
	"shop.yaml":              "title: Shop\nalso: [es]\nshow-units: { pressure: [bar, psi] }\n",
	"register/hazards.yaml":  "oil-on-skin: { name: oil on the skin, nature: It is thin., harm: minor-injury, consequence: It cracks skin., avoid: [Wear gloves.], symbol: W039 }\n",
	"register/supplies.yaml": "oil: { name: oil, unit: L, hazards: [oil-on-skin] }\n",
	"machines/rig.yaml": `name: Rig
energies:
  air: { name: air, kind: pressure, pressure: 6 to 8 bar, points: [] }
  plate: { name: plate, kind: heat, temperature: about 165 °C, points: [] }
fasteners:
  knob: { name: knob, thread: M6x1, torque: hand }
  stud: { name: stud, thread: 3/8-16 UNC, class: A2-70, torque: 30 N·m }
  bolt: { name: bolt, thread: M8x1.25, class: 8.8, torque: 22 N·m }
fluids:
  sump: { name: sump oil, supply: oil, capacity: about 0.8 L }
`,
	"procedures/oil.md": "---\ntitle: Oil\nfor: rig\nhazards: [oil-on-skin]\nsupplies: { oil: 1 L }\n---\n## Out\n\n1. [Drain it](drain:sump).\n2. Wipe with [oil](supply:oil).\n\n" +
		"## In\n\n1. [Turn the knob in](tighten:knob).\n2. [Fill it](fill:sump).\n3. Top up with [oil](supply:oil). [Mind your skin.](hazard:oil-on-skin)\n",
}

// boxesOf counts the boxes of each step, in reading order.
func boxesOf(s *Pages, p *model.Procedure) (counts []int) {
	for _, st := range p.Steps {
		counts = append(counts, len(s.Boxes("", HazardsBefore(st))))
	}
	return counts
}

// The box of what comes with a supply stands before the first step of each
// phase that uses it; a link shows it at its own step as ever.
func TestSuppliedHazardsStandOnceAPhase(t *testing.T) {
	s := siteOf(t, oilShop)
	got := boxesOf(s, procedureOf(t, s, "oil"))
	for i, want := range []int{1, 0, 0, 1, 1} {
		if got[i] != want {
			t.Errorf("boxes are %v; step %d wants %d", got, i+1, want)
		}
	}
}

// W039 is falling ice in the register of ISO 7010, from memory: it is not
// drawn, so its name stands in the box.
func TestUndrawnSignIsNamed(t *testing.T) {
	s := siteOf(t, oilShop)
	box := s.Boxes("", HazardsBefore(procedureOf(t, s, "oil").Steps[0]))[0]
	if sign := string(box.Messages[0].Sign); !strings.Contains(sign, "W039 Falling ice") {
		t.Errorf("the sign is %q", sign)
	}
}

func TestDeclaredAmountsAreShownAsTyped(t *testing.T) {
	s := siteOf(t, oilShop)
	m := procedureOf(t, s, "oil").For.To
	if got := s.Capacity(m.Fluids[0]); got != "about 0.8 L" {
		t.Errorf("the capacity is %q", got)
	}
	if got := s.energyWords(m.Energies[0]); !strings.HasPrefix(got, "air, 6 to 8 bar") {
		t.Errorf("the air is %q", got)
	}
	if got := s.energyWords(m.Energies[1]); got != "plate, about 165 °C" {
		t.Errorf("the plate is %q", got)
	}
	if m.Energies[0].Pressure.String() != "8 bar" {
		t.Errorf("the greater does not count: %s", m.Energies[0].Pressure)
	}
	knob := procedureOf(t, s, "oil").Steps[2]
	if got := s.fastener(knob.Links[0], m.Fasteners[0], false); len(got) != 1 || got[0] != "knob: hand-tight" {
		t.Errorf("the knob is %q", got)
	}
}

// Who sees a check done stands under who is needed, and in the time line, with
// the step; who looks later does not.
func TestSecondPersonIsShownAtTheStep(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\n",
		"register/roles.yaml": "boss: { name: Boss }\nfitter: { name: Fitter }\n",
		"register/holds.yaml": "seen: { name: seen, kind: check, by: boss, how: together }\nlater: { name: later, kind: check, by: fitter, how: apart }\n",
		"procedures/count.md": "---\ntitle: Count\nholds: [seen, later]\n---\n## Count\n\n1. Count. [](time:5min) [](hold:later)\n2. Count. [](time:5min) [](hold:seen)\n",
	})
	v := s.Procedure(procedureOf(t, s, "count"))
	if got := v.Before.Seconds; len(got) != 1 || got[0].Name != "Boss" || got[0].Note != "1.2" {
		t.Errorf("needed besides: %v", got)
	}
	if says := v.TimeLine.Units[0].Rows[0].Says; !strings.Contains(says, "at step 1.2 besides: Boss") || strings.Contains(says, "Fitter") {
		t.Errorf("the time line says %q", says)
	}
}

// What is near a limit is printed with it, its ends in the unit of the blanks:
// 0.2 to 0.3 cm are 2 to 3 mm.
func TestNearTheLimitIsShown(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\nshow-units: { length: [mm] }\n",
		"register/holds.yaml": "pad: { name: pad, kind: measure, what: thickness, limit: at least 2 mm, near: 0.2 to 0.3 cm, again-in: 3 months }\nrim: { name: rim, kind: measure, what: thickness, limit: at least 2 mm }\n",
	})
	pad := s.HoldView(s.Manual.Holds[0])
	if pad.NearLow != "2" || pad.NearHigh != "3" || pad.Again != "3 months" || !strings.Contains(pad.Near, "measure again in 3 months") {
		t.Errorf("%+v", pad)
	}
	if rim := s.HoldView(s.Manual.Holds[1]); rim.Near != "" || rim.NearLow != "" {
		t.Errorf("%+v", rim)
	}
}

// By when a step ends stands in its marks and is counted from the step before,
// or the named one; a wait's longest time stands with it, in seconds by hand.
func TestLongestTimesAreShown(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\n",
		"register/holds.yaml": "cure: { name: cure, kind: wait, for: 24 to 72 h }\nsoak: { name: soak, kind: wait, for: 10 min }\n",
		"procedures/glue.md":  "---\ntitle: Glue\nholds: [cure, soak]\n---\n## Glue\n\n1. Lay it. [](step:lay)\n2. Press it. [](within:5min)\n3. Close it. [](within:1h30min#lay)\n4. Wait. [](hold:cure) [](hold:soak)\n",
	})
	parts := s.Procedure(procedureOf(t, s, "glue")).Phases[0].Parts
	press, shut := parts[1].Step, parts[2].Step
	if press.Within != "300" || press.Tags[0] != "done no later than 5 min after the step before" || strings.Contains(string(press.Text[0]), "5") {
		t.Errorf("%q %q %q", press.Within, press.Tags, press.Text)
	}
	if shut.Within != "5400#lay" || shut.Tags[0] != "done no later than 1 h 30 min after step 1.1" {
		t.Errorf("%q %q", shut.Within, shut.Tags)
	}
	cure, soak := parts[3].Step.Holds[0], parts[3].Step.Holds[1]
	if cure.Title != "Wait 24 to 72 h: cure" || cure.Seconds != 86400 || cure.Longest != 259200 || !strings.Contains(strings.Join(cure.Lines, " "), "No longer than 72 h.") {
		t.Errorf("%+v", cure)
	}
	if soak.Longest != 0 || strings.Contains(strings.Join(soak.Lines, " "), "longer") {
		t.Errorf("%+v", soak)
	}
}

// A look has a tick for each of its places and names its tool; the kit has it.
func TestLookAtPlaces(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\n",
		"register/tools.yaml": "lamp: { name: lamp, kind: aid }\n",
		"register/holds.yaml": "joints: { name: joints, kind: look, what: every joint, good: dry, at: [pump, valve], with: lamp }\nseat: { name: seat, kind: look, what: the seat }\n",
		"procedures/look.md":  "---\ntitle: Look\nholds: [joints, seat]\n---\n## Look\n\n1. Look. [](hold:joints) [](hold:seat)\n",
	})
	p := procedureOf(t, s, "look")
	holds := s.Procedure(p).Phases[0].Parts[0].Step.Holds
	if got := strings.Join(holds[0].Places, ", "); got != "pump, valve" || !strings.Contains(strings.Join(holds[0].Lines, " "), "With the lamp.") {
		t.Errorf("%+v", holds[0])
	}
	if len(holds[1].Places) > 0 {
		t.Errorf("%+v", holds[1])
	}
	if kit := s.Kits.Of(p); len(kit.Tools) != 1 || kit.Tools[0].Tool.ID != "lamp" {
		t.Errorf("%+v", kit.Tools)
	}
	good := true
	j := &model.Job{Holds: []model.JobHold{{Step: "1.1", Hold: "joints", Kind: "look", Met: true, Good: &good, Ticked: []string{"pump", "valve"}}}}
	if got := s.RecordHold(j, &j.Holds[0], false); got != "joints: good; looked at: pump, valve" {
		t.Error(got)
	}
}

// A second tightening of what is tight asks for the last stage alone, on the
// page and of the tools: no angle gauge, no small wrench. What was loosened in
// between, or was tightened on some units alone, has all its stages again.
func TestASecondTighteningHasTheLastStageAlone(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":            "title: Shop\n",
		"machines/engine.yaml": "name: Engine\noptions: { cab: Cab }\nparts: { head: { name: head, held-by: { head-bolt: 6 } } }\nfasteners: { head-bolt: { name: head bolt, stages: [30 N·m, 90°, 60 N·m] } }\n",
		"procedures/head.md":   "---\ntitle: Head\nfor: engine\n---\n## Strip\n\n1. [Head off](remove:head).\n\n## Refit\n\n1. [Back](reverse:strip).\n2. [Tighten](tighten:head-bolt).\n3. [Undo](loosen:head-bolt).\n4. [With a cab](when:cab), [tighten](tighten:head-bolt).\n5. [Tighten](tighten:head-bolt).\n6. [Tighten](tighten:head-bolt).\n",
	})
	p := procedureOf(t, s, "head")
	var got []int
	for _, st := range s.Procedure(p).Phases[1].Parts {
		got = append(got, len(st.Step.Tags))
	}
	if want := []int{0, 1, 0, 3, 3, 1}; !slices.Equal(got, want) {
		t.Errorf("stages shown by step: %v, want %v", got, want)
	}
	if got := s.Procedure(p).Phases[1].Parts[5].Step.Tags[0]; !strings.Contains(got, "60 N·m") || !strings.Contains(got, "3") {
		t.Errorf("the last stage is shown as %q", got)
	}
}
