package register

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/show/page"
)

const cardMachine = `name: Rig
points: { plug: { name: plug, where: left } }
energies: { bus: { name: bus, kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ } } }
parts:
  lid: { name: lid, held-by: { lid-bolt: 5, long-bolt: 4 } }
fasteners:
  lid-bolt: { name: lid bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, torque: 50 N·m, sequence: star }
  long-bolt: { name: long bolt, stages: [25 N·m, 60°, 30°], start: "by hand, two turns" }
  clip: { name: clip }
`

// Stages are never added up (tightening in stages, an OEM repair text as
// quoted in the trade notes): three lines, and no line with their sum.
func TestTorqueCard(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": cardMachine})
	card := s.TorqueCard(s.Manual.Machines[0])
	if len(card.Rows) != 3 {
		t.Fatalf("%d rows for 3 fasteners", len(card.Rows))
	}
	if got := page.Unworked(strings.Join(card.Rows[1].Torques, " | ")); got != "1: 25 N·m (18.4 lbf·ft) | 2: 60° | 3: 30°" {
		t.Error(got)
	}
	// 50 N·m is 36.878 lbf·ft (GNU units 2.22).
	if got := page.Unworked(strings.Join(card.Rows[0].Torques, " | ")); got != "50 N·m (37 lbf·ft)" {
		t.Error(got)
	}
	// F = 50 N·m/(0.20 · 10 mm) = 25 kN: a worked example on an engineering
	// site, "Bolt torque", M10 8.8.
	if !strings.HasPrefix(card.Rows[0].Clamp[0].Working.Result, "25") || card.Rows[0].Clamp[0].Working.Formula != "F = T/(K·d)" {
		t.Errorf("%v", card.Rows[0].Clamp)
	}
	if len(card.Rows[2].Clamp) != 0 || len(card.Rows[2].Torques) != 0 {
		t.Error("a clip has a torque")
	}
}

// A bolt in torque stages is judged at its last one: F = 50 N·m/(0.20 · 10 mm) =
// 25 kN, the worked example above, whatever the stages before it. After an angle
// nothing is worked out, and the card and the machine's page say so (a bolt that
// is turned past a torque is pulled by the angle: common practice, no source).
func TestLoadOfStages(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": `name: Rig
fasteners:
  head-bolt: { name: head bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, stages: [20 N·m, 50 N·m] }
  rod-bolt: { name: rod bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, stages: [50 N·m, 90°] }
`})
	rows := s.TorqueCard(s.Manual.Machines[0]).Rows
	if !strings.HasPrefix(rows[0].Clamp[0].Working.Result, "25") || rows[0].NoClamp != "" {
		t.Errorf("torque stages: %v, %q", rows[0].Clamp, rows[0].NoClamp)
	}
	if len(rows[1].Clamp) != 0 || !strings.Contains(rows[1].NoClamp, "says nothing of the load") {
		t.Errorf("after an angle: %v, %q", rows[1].Clamp, rows[1].NoClamp)
	}
	thing := s.machineFastener(s.Manual.Machines[0], s.Manual.Machines[0].Fasteners[1])
	if !slices.ContainsFunc(thing.Facts, func(f Fact) bool { return strings.Contains(fmt.Sprint(f), "says nothing of the load") }) {
		t.Errorf("the machine's page: %+v", thing.Facts)
	}
}

// 5 bar is 72.5 psi (NIST SP 811: 1 psi is 6.894 757 kPa).
func TestLimitInBothUnits(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": cardMachine})
	for text, want := range map[string]string{
		"at most 5 bar":  "at most 5 bar (73 psi)",
		"5 to 10 bar":    "5 to 10 bar (73–145 psi)",
		"at most 5 V dc": "at most 5 V dc",
	} {
		l, err := quantity.ParseLimit(text, quantity.None)
		if err != nil {
			t.Fatal(err)
		}
		if got := page.Unworked(s.BothLimit(l)); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// t = R·C·ln(V/safe) = 100 kΩ · 1000 µF · ln(360/60) = 179.2 s, by hand from
// the textbook form V = V0·e^(−t/RC).
func TestLeastWait(t *testing.T) {
	s := siteOf(t, map[string]string{
		"machines/rig.yaml":   cardMachine,
		"register/holds.yaml": "settle: { name: settling, kind: wait, for: 10 min, of: bus }\nother: { name: other, kind: wait, for: 1 min }\n",
	})
	least, working := s.LeastWait(s.Manual.Machines[0], s.Manual.Holds[0])
	if least != "3 min" || !strings.Contains(working.Formula, "ln") {
		t.Errorf("%s: %s", least, working)
	}
	if least, _ := s.LeastWait(s.Manual.Machines[0], s.Manual.Holds[1]); least != "" {
		t.Error("a wait of nothing has a computed minimum")
	}
	if least, _ := s.LeastWait(nil, s.Manual.Holds[0]); least != "" {
		t.Error("a wait without a machine has a computed minimum")
	}
}

// The tables are those of ISO 898-1: a UNC thread and a stainless class are of
// other standards, and no finding.
func TestUnjudgedBoltLoadIsSaid(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": `name: Rig
fasteners:
  knob: { name: knob, thread: M6x1, torque: hand }
  stud: { name: stud, thread: 3/8-16 UNC, class: A2-70, torque: 30 N·m }
  bolt: { name: bolt, thread: M8x1.25, class: 8.8, torque: 22 N·m }
`})
	for _, f := range s.Manual.Machines[0].Fasteners {
		said := false
		for _, fact := range s.machineFastener(s.Manual.Machines[0], f).Facts {
			said = said || fact.Name == "Bolt load"
		}
		if said != (f.ID == "stud") {
			t.Errorf("%s: said is %t", f.ID, said)
		}
	}
}

// Where a statement stands for two categories and the supply cannot say which, the
// label shows the graver one and says that it does, in the page's language.
func TestTheLabelSaysWhatIsNotKnown(t *testing.T) {
	for language, want := range map[string]string{
		"en": "H221 is category 1B (Danger, GHS02) or 2 (Warning, no pictogram). Which it is here is not said, so the graver one is shown.",
		"es": "H221 es de la categoría 1B (Peligro, GHS02) o 2 (Atención, sin pictograma). Aquí no se dice cuál, así que se muestra la más grave.",
	} {
		s := siteOf(t, map[string]string{"shop.yaml": "title: Shop\nlanguage: " + language + "\n", "register/supplies.yaml": "gas: { name: gas, unit: L, ghs: [H221] }\noil: { name: oil, unit: L, ghs: [H304] }\n"})
		gas := s.Supply(s.Manual.Supplies[0]).Label
		if gas.Word != map[string]string{"en": "Danger", "es": "Peligro"}[language] || len(gas.Signs) != 1 || !slices.Equal(gas.Unsaid, []string{want}) {
			t.Errorf("%s: %s, %q", language, gas.Word, gas.Unsaid)
		}
		if said := map[string]string{"en": "H221: Flammable gas", "es": "H221: Gas inflamable"}[language]; gas.Statements[0] != said {
			t.Errorf("%s: %q, want %q", language, gas.Statements[0], said)
		}
		if oil := s.Supply(s.Manual.Supplies[1]).Label; len(oil.Unsaid) != 0 {
			t.Errorf("%s: %q", language, oil.Unsaid)
		}
	}
}
