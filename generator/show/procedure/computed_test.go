package procedure

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/show/register"
)

// A job with one of everything that is worked out on its page.
var workshop = map[string]string{
	"shop.yaml": "title: Shop\nshow-units: { torque: [N·m, lbf·ft], pressure: [bar, psi], volume: [L, qt], mass: [kg, lb] }\n",
	"register/tools.yaml": "wrench: { name: torque wrench, kind: torque-wrench, range: 10 to 60 N·m, length: 380 mm, calibration: { every: 12 months, last: 2026-03-02 } }\n" +
		"crow-foot: { name: 16 mm crow-foot, kind: spanner, fits: [16 mm], adds: 45 mm }\n" +
		"hoist: { name: hoist, kind: lifting }\n",
	"register/supplies.yaml": "oil: { name: oil, unit: L, ghs: [H304, H319] }\n",
	"register/hazards.yaml":  "fall: { name: fall, nature: It falls., harm: death, happens: could, consequence: It kills., avoid: [Stand clear.] }\n",
	"machines/rig.yaml": `name: Rig
points: { cock: { name: cock } }
energies:
  air: { name: air, kind: pressure, pressure: 10 bar, points: [cock], stored: { gas-volume: 270 L } }
  oil-side: { name: oil side, kind: pressure, pressure: 230 bar, points: [cock], stored: { gas-volume: 4 L, precharge: 90 bar } }
parts:
  lid: { name: lid, held-by: { lid-bolt: 4, long-bolt: 2 }, mass: 31 kg, lift: { horizontal: 25 cm, vertical: 75 cm, travel: 25 cm, coupling: good } }
  cap: { name: cap, mass: 4 kg }
fasteners:
  lid-bolt: { name: lid bolt, across-flats: 16 mm, torque: 50 N·m }
  long-bolt: { name: long bolt, across-flats: 13 mm, stages: [25 N·m, 60°] }
fluids:
  sump: { name: sump oil, supply: oil, capacity: 750 mL }
`,
	"procedures/lid.md": `---
title: Lid
for: rig
people: 2
tools: [wrench, crow-foot]
supplies: { oil: 250 mL }
---
## Strip

1. [Let it down](release:air), and [the oil](release:oil-side).
2. [Lift the lid off](remove:lid) with the [crow-foot](tool:crow-foot). [](people:2) [](supply:oil)
3. [Lift the cap off](remove:cap). [Top up](do:top-up).

## Refit

1. [In reverse](reverse:strip) with the [wrench](tool:wrench).
`,
	"procedures/geared.md": "---\ntitle: Geared\nfor: rig\ntools: [hoist]\n---\n## Strip\n\n1. [Lift the lid off](remove:lid) with the [hoist](tool:hoist).\n",
	"procedures/top-up.md": "---\ntitle: Top up\nsupplies: { oil: 0.5 L }\n---\n## Work\n\n1. Pour in [oil](supply:oil).\n",
}

func titles(list []page.Computed) string {
	var out []string
	for _, c := range list {
		out = append(out, page.Unworked(c.Title))
		if !c.Working.Known() || c.Working.Source == "" {
			out = append(out, "with no working")
		}
	}
	return strings.Join(out, "\n")
}

func procedureOf(t *testing.T, s *Pages, id string) *model.Procedure {
	t.Helper()
	i := slices.IndexFunc(s.Manual.Procedures, func(p *model.Procedure) bool { return p.ID == id })
	if i < 0 {
		t.Fatal(id)
	}
	return s.Manual.Procedures[i]
}

// By hand: 31 kg are 15.5 kg for each of two, 15.5/23 = 0.67 (NIOSH 94-110 at
// its best place: 23 kg, which are 50.7 lb); 270 · 10/1.01325 = 2665 L, which
// are printed as 2700 L, and those are 2853 qt; 4 · (1 − 91.01325/231.01325) =
// 2.424 L, printed as 2.4 L, which are 2.536 qt; 50 ·
// 380/425 = 44.7 N·m (TM 9-254), which are 32.97 lbf·ft.
func TestStepsAreWorkedOut(t *testing.T) {
	s := siteOf(t, workshop)
	v := s.Procedure(procedureOf(t, s, "lid"))
	strip, refit := v.Phases[0].Parts, v.Phases[1].Parts[0].Step
	for name, c := range map[string]struct{ got, want string }{
		"release": {titles(strip[0].Step.Computed), "Letting down the air lets out about 2700 L (2850 qt) of gas. How this was worked out\n" +
			"Letting down the oil side lets out about 2.4 L (2.54 qt) of fluid from its accumulator. How this was worked out"},
		"lift":    {titles(strip[1].Step.Computed), "Lifting index 0.7: lid, 31 kg (68 lb), by hand by 2 people; recommended limit 23.0 kg (50.7 lb) each. How this was worked out"},
		"no lift": {titles(strip[2].Step.Computed), ""},
		"cap on":  {titles(refit.Derived[0].Computed), ""},
		"lid on": {titles(refit.Derived[1].Computed), "Lifting index 0.7: lid, 31 kg (68 lb), by hand by 2 people; recommended limit 23.0 kg (50.7 lb) each. How this was worked out\n" +
			"lid bolt, 50 N·m (37 lbf·ft): behind the 16 mm crow-foot, set the torque wrench to 44.7 N·m (33 lbf·ft). How this was worked out"},
	} {
		if c.got != c.want {
			t.Errorf("%s:\n%s\nwant\n%s", name, c.got, c.want)
		}
	}
	if geared := s.Procedure(procedureOf(t, s, "geared")).Phases[0].Parts[0].Step; len(geared.Computed) != 0 {
		t.Errorf("what a hoist lifts: %s", titles(geared.Computed))
	}
}

// A machine's page has its parts for one person: 31/23 = 1.35.
func TestMachineIsWorkedOut(t *testing.T) {
	s := siteOf(t, workshop)
	v := register.Of(s.Pages).Machine(s.Manual.Machines[0])
	if got := titles(v.Parts[0].Computed); !strings.HasPrefix(got, "Lifting index 1.3: lid") {
		t.Error(got)
	}
	if got := titles(v.Energies[0].Computed); !strings.Contains(got, "2700 L") {
		t.Error(got)
	}
}

// 250 mL of what is stocked in litres are 0.250 L, with 0.5 L they are 0.75 L:
// 0.79 qt (GNU units: 0.7925). The fluid card has the author's unit, the
// shelf's, and the other system's.
func TestAmountsAreInTheUnitOfTheShelf(t *testing.T) {
	s := siteOf(t, workshop)
	fetched := ""
	for _, shelf := range s.Procedure(procedureOf(t, s, "lid")).Before.Shelves {
		for _, item := range shelf.Items {
			if item.Name == "oil" {
				fetched = item.Amount
			}
		}
	}
	if page.Unworked(fetched) != "0.75 L (0.79 qt)" {
		t.Errorf("to fetch: %s", fetched)
	}
	if got := register.Of(s.Pages).FluidCard(s.Manual.Machines[0]).Rows[0].Capacity; page.Unworked(got) != "750 mL (0.75 L) (0.793 qt)" {
		t.Errorf("on the card: %s", got)
	}
	var used []string
	for _, u := range register.Of(s.Pages).Supply(s.Manual.Supplies[0]).Uses {
		used = append(used, u.Name+" "+page.Unworked(u.Amount))
	}
	if got := strings.Join(used, ", "); got != "Lid 0.25 L (0.264 qt), Top up 0.5 L (0.53 qt)" {
		t.Errorf("used by: %s", got)
	}
}

// The word of a label, that of a hazard, and the last day of a calibration open
// to their workings too.
func TestEntriesAreWorkedOut(t *testing.T) {
	s := siteOf(t, workshop)
	label := register.Of(s.Pages).Supply(s.Manual.Supplies[0]).Label.Computed[0].Working
	if label.Result != "Danger" || label.Put != "H304 Danger, H319 Warning" {
		t.Errorf("label: %s", label)
	}
	hazard := register.Of(s.Pages).Hazard(s.Manual.Hazards[0]).Computed[0].Working
	if hazard.Result != "WARNING" || hazard.Put != "death that could follow" {
		t.Errorf("hazard: %s", hazard)
	}
	facts := fmt.Sprint(register.Of(s.Pages).Tool(s.Manual.Tools[0]).Facts)
	if !strings.Contains(facts, "2026-03-02 + 12 months") || !strings.Contains(page.Unworked(facts), "2027-03-02") {
		t.Errorf("tool: %s", facts)
	}
}
