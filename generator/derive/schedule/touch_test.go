package schedule_test

import (
	"testing"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/prove/walk"
)

// bench is a machine whose parts, energies and holds hang on each other only by
// the fields that the rows of TestFree are about.
var bench = map[string]string{
	"shop.yaml": "title: Shop\n",
	"machines/rig.yaml": `name: Rig
points: { plug: { name: plug, lock: yes }, valve: { name: valve } }
energies:
  power: { name: power, kind: electric, voltage: 360 V dc, points: [plug], before-isolate: [told] }
  air: { name: air, kind: pressure, pressure: 8 bar, points: [valve] }
  load: { name: load, kind: gravity, points: [], stored: yes, blocked-by: [prop] }
  charge: { name: charge, kind: pressure, pressure: 8 bar, points: [], contained-by: [cage, screen] }
parts:
  lid: { name: lid, held-by: { bolt: 2 } }
  chain: { name: chain, freed-by: [bolt] }
  motor: { name: motor, under: [lid] }
  pump: { name: pump, held-by: { nut: 2 } }
  hose: { name: hose, kind: line, carries: air }
fasteners: { bolt: { name: bolt }, nut: { name: nut } }
fluids:
  oil: { name: oil, supply: oil, capacity: 2 L, needed-by: [charge] }
  water: { name: water, supply: oil, capacity: 2 L }
`,
	"register/supplies.yaml": "oil: { name: oil, unit: L }\n",
	"register/tools.yaml": `cage: { name: cage, kind: aid }
screen: { name: screen, kind: aid }
chock: { name: chock, kind: aid }
prop: { name: prop, kind: aid }
`,
	"register/holds.yaml": `told: { name: told, kind: look, at: [everybody], of: water }
seen: { name: seen, kind: look, at: [the pump], of: water }
`,
}

// Which of two steps may be done in either order, worked out by hand from what
// the format says of each field; each beside a pair that the field does not
// join.
func TestFree(t *testing.T) {
	for _, c := range []struct {
		name, a, b string
		free       bool
	}{
		{"freed by a fastener", "remove:chain", "loosen:bolt", false},
		{"a fastener elsewhere", "remove:chain", "loosen:nut", true},
		{"freed by what holds another part", "refit:chain", "remove:lid", false},
		{"another part", "refit:chain", "remove:pump", true},
		{"a line carries an energy", "remove:hose", "isolate:air", false},
		{"another energy", "remove:hose", "prove:charge", true},
		{"a tool stands round what is filled", "place:cage", "fill:oil", false},
		{"another fluid", "place:cage", "fill:water", true},
		{"two tools round one energy", "place:cage", "clear:screen", false},
		{"another tool", "place:chock", "clear:screen", true},
		{"a hold before it goes off", "hold:told", "isolate:power", false},
		{"another hold", "hold:seen", "isolate:power", true},
		{"opened before it goes off", "loosen:bolt", "isolate:power", false},
		{"tightened before it goes off", "tighten:bolt", "isolate:power", true},
		{"opened after the hold", "hold:told", "remove:lid", false},
		{"opened after another hold", "hold:seen", "remove:lid", true},
		{"a tool that holds a load", "place:prop", "prove:load", false},
		{"a tool that holds nothing", "place:chock", "prove:load", true},
		{"what lies over it", "remove:motor", "refit:lid", false},
		{"what lies nowhere near it", "remove:motor", "refit:pump", true},
		{"a stop for the night", "pause:", "isolate:air", false},
	} {
		files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [One](" + c.a + ").\n2. [Two](" + c.b + ").\n"}
		for name, text := range bench {
			files[name] = text
		}
		m, found := bound(files)
		if len(found) > 0 {
			t.Fatalf("%s: %v", c.name, found)
		}
		steps := m.Procedures[0].Steps
		book := schedule.NewCache(walk.All(m))
		if got := book.Free(steps[0], steps[1]); got != c.free || book.Free(steps[1], steps[0]) != got {
			t.Errorf("%s: %s and %s free: %v", c.name, c.a, c.b, got)
		}
	}
}
