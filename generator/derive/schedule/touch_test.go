package schedule_test

import (
	"slices"
	"testing"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// bench is a machine whose parts, energies and holds hang on each other only by
// the fields that the rows of TestFree are about.
var bench = map[string]string{
	"shop.yaml": "title: Shop\n",
	"machines/rig.yaml": `name: Rig
points: { plug: { name: plug, lock: yes }, valve: { name: valve }, main: { name: main switch, lock: yes }, spare: { name: spare cock, lock: yes } }
energies:
  power: { name: power, kind: electric, voltage: 360 V dc, points: [plug], before-isolate: [told] }
  air: { name: air, kind: pressure, pressure: 8 bar, points: [valve] }
  load: { name: load, kind: gravity, points: [], stored: yes, blocked-by: [prop] }
  charge: { name: charge, kind: pressure, pressure: 8 bar, points: [], contained-by: [cage, screen] }
  light: { name: light, kind: electric, voltage: 24 V dc, points: [main] }
  heat: { name: heat, kind: heat, points: [main] }
parts:
  left: { name: left wire, kind: wire, alike: pair, prove-dead: [light] }
  right: { name: right wire, kind: wire, alike: pair }
  cover: { name: cover, guards: [heat] }
  lid: { name: lid, held-by: { bolt: 2 } }
  chain: { name: chain, freed-by: [bolt] }
  motor: { name: motor, under: [lid] }
  pump: { name: pump, held-by: { nut: 2 } }
  hose: { name: hose, kind: line, carries: air }
  pipe: { name: pipe, kind: line, carries: water }
  slide: { name: slide, freed-by: [vent] }
fasteners: { bolt: { name: bolt }, nut: { name: nut }, vent: { name: vent screw } }
fluids:
  oil: { name: oil, supply: oil, capacity: 2 L, needed-by: [charge] }
  water: { name: water, supply: oil, capacity: 2 L }
settings: { relief: { name: relief, value: 8 bar }, governor: { name: governor, value: 750 rpm } }
`,
	"register/supplies.yaml": "oil: { name: oil, unit: L }\n",
	"register/tools.yaml": `cage: { name: cage, kind: aid }
screen: { name: screen, kind: aid }
chock: { name: chock, kind: aid }
prop: { name: prop, kind: aid }
`,
	"register/holds.yaml": `told: { name: told, kind: look, at: [everybody], of: water }
seen: { name: seen, kind: look, at: [the pump], of: water }
leaks: { name: leaks, kind: look, what: joints, of: oil, looks-for: leak }
clean: { name: clean, kind: look, what: joints, of: oil }
anything: { name: anything, kind: look, what: everything }
settle: { name: settle, kind: wait, for: 5 min, of: water }
word: { name: word, kind: sign, by: boss }
state: { name: state, kind: ask, answers: { good: clean, worn: scored }, of: water }
`,
	"register/roles.yaml":   "boss: { name: Boss }\n",
	"register/hazards.yaml": "hot: { name: hot, nature: a, harm: death, consequence: b, avoid: [c], of: heat }\nnoise: { name: noise, nature: a, harm: damage, consequence: b, avoid: [c] }\n",
	"procedures/open.md":    "---\ntitle: Open\nfor: rig\n---\n## Work\n\n1. [Off](remove:lid).\n",
	"procedures/stand.md":   "---\ntitle: Stand\nfor: rig\nexpects: { light: isolated }\nleaves: { pump: off, cage: placed, nut: loose, relief: altered }\n---\n## Work\n\n1. Stand by.\n",
	"procedures/found.md":   "---\ntitle: Found\nfor: rig\nexpects: { plug: isolated, spare: isolated, vent: loose, bolt: loose }\n---\n## Work\n\n1. Stand by.\n",
	"procedures/lower.md":   "---\ntitle: Lower\n---\n## Work\n\n1. [Out](clear:prop).\n",
	"procedures/hold.md":    "---\ntitle: Hold\n---\n## Work\n\n1. [In](place:prop).\n",
	"procedures/chock.md":   "---\ntitle: Chock\n---\n## Work\n\n1. [In](place:chock).\n",
	"procedures/lead.md":    "---\ntitle: Lead\nfor: rig\n---\n## Work\n\nWith [the relief](alter:relief) so.\n\n1. Look.\n",
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
		{"freed by a screw of no part", "remove:slide", "loosen:vent", false},
		{"a screw of no part", "loosen:vent", "tighten:vent", false},
		{"a line and what it carries", "remove:pipe", "fill:water", false},
		{"a line and what it does not carry", "remove:pipe", "fill:oil", true},
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
		{"energies of one point", "isolate:light", "isolate:heat", false},
		{"energies of two points", "isolate:light", "isolate:air", true},
		{"a hazard of what its point cuts too", "isolate:light", "hazard:hot", false},
		{"a point and what it cuts", "lock:main", "prove:heat", false},
		{"a point and what another cuts", "lock:main", "prove:air", true},
		{"a point that cuts nothing", "isolate:spare", "lock:spare", false},
		{"that point and another", "isolate:spare", "lock:main", true},
		{"proofs at one point", "prove:light", "prove:heat", true},
		{"a proof and its point", "prove:light", "isolate:main", false},
		{"let out at one point", "release:light", "release:heat", true},
		{"energy that comes back", "restore:light", "place:chock", false},
		{"energy on for a test", "test-live:light", "place:chock", false},
		{"the tool away that holds a load", "clear:prop", "place:chock", false},
		{"parts that look alike, marked", "mark:pair", "disconnect:right", false},
		{"marked, and another part", "mark:pair", "remove:pump", true},
		{"what must be dead", "disconnect:left", "prove:light", false},
		{"what need not be dead", "disconnect:left", "prove:charge", true},
		{"what it keeps hands from", "remove:cover", "prove:heat", false},
		{"what it keeps no hands from", "remove:cover", "prove:light", true},
		{"a circuit that an energy needs", "fill:oil", "prove:charge", false},
		{"a circuit that no energy needs", "fill:water", "prove:charge", true},
		{"what holds the part", "tighten:bolt", "refit:lid", false},
		{"what holds another part", "tighten:bolt", "refit:pump", true},
		{"one setting", "alter:relief", "reset:relief", false},
		{"two settings", "alter:relief", "reset:governor", true},
		{"a hazard of the energy", "hazard:hot", "prove:heat", false},
		{"a hazard of nothing", "hazard:noise", "prove:heat", true},
		{"a leak look wants the pressure on", "hold:leaks", "prove:charge", false},
		{"any other look does not", "hold:clean", "prove:charge", true},
		{"a look at nothing that is named", "hold:anything", "place:chock", false},
		{"a wait for a fluid", "hold:settle", "fill:water", false},
		{"a wait for another fluid", "hold:settle", "fill:oil", true},
		{"a signature", "hold:word", "place:chock", false},
		{"a question", "hold:state", "place:chock", false},
		{"a line that is open across a hold", "hold:seen", "cap:hose", false},
		{"a part that is no line", "hold:seen", "remove:pump", true},
		{"what came of a hold", "if-not:seen", "hold:seen", false},
		{"what came of another hold", "if-not:seen", "hold:clean", true},
		{"performed on the same part", "do:open", "remove:lid", false},
		{"performed on another part", "do:open", "remove:pump", true},
		{"how a callee finds an energy", "do:stand", "prove:light", false},
		{"what a callee leaves off", "do:stand", "refit:pump", false},
		{"what a callee leaves in place", "do:stand", "clear:cage", false},
		{"what a callee leaves loose", "do:stand", "tighten:nut", false},
		{"what a callee leaves altered", "do:stand", "reset:relief", false},
		{"what a callee says nothing of", "do:stand", "reset:governor", true},
		{"a point as a callee finds it, and what it cuts", "do:found", "prove:power", false},
		{"a point that cuts nothing, as a callee finds it", "do:found", "isolate:spare", false},
		{"a point that a callee does not find", "do:found", "prove:charge", true},
		{"a screw of no part, as a callee finds it", "do:found", "tighten:vent", false},
		{"bolts as a callee finds them, and their part", "do:found", "remove:lid", false},
		{"a callee for any machine lets the load down", "do:lower", "alter:relief", false},
		{"a callee for any machine holds the load", "do:hold", "prove:load", false},
		{"a callee for any machine holds nothing", "do:chock", "prove:load", true},
		{"said over the whole phase of a callee", "do:lead", "reset:relief", false},
		{"not said there", "do:lead", "reset:governor", true},
		{"two looks at one thing", "if-not:seen", "if-not:seen", true},
		{"words of the same part", "part:lid", "remove:lid", true},
	} {
		files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [One](" + c.a + ").\n2. [Two](" + c.b + ").\n"}
		for name, text := range bench {
			files[name] = text
		}
		m, found := bound(files)
		if len(found) > 0 {
			t.Fatalf("%s: %v", c.name, found)
		}
		steps := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })].Steps
		book := schedule.NewCache(walk.All(m))
		if got := book.Free(steps[0], steps[1]); got != c.free || book.Free(steps[1], steps[0]) != got {
			t.Errorf("%s: %s and %s free: %v", c.name, c.a, c.b, got)
		}
	}
}

// A step does what its sub-steps do: their acts keep its place too.
func TestFreeLooksAtSubSteps(t *testing.T) {
	for _, c := range []struct {
		sub, act string
		free     bool
	}{
		{"remove:lid", "refit:lid", false},
		{"remove:lid", "refit:pump", true},
		{"remove:lid", "hold:told", false}, // what was asked before it counts no more
		{"hold:told", "remove:lid", false},
		{"hold:seen", "remove:lid", true},
		{"hold:word", "remove:lid", false}, // all work stops
	} {
		files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [One](mark:pair).\n   1. [In it](" + c.sub + ").\n2. [Two](" + c.act + ").\n"}
		for name, text := range bench {
			files[name] = text
		}
		m, found := bound(files)
		if len(found) > 0 {
			t.Fatal(found)
		}
		steps := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })].Phases[0].Steps
		book := schedule.NewCache(walk.All(m))
		if book.Free(steps[0], steps[1]) != c.free || book.Free(steps[1], steps[0]) != c.free {
			t.Errorf("%s in a sub-step, and %s: free %v", c.sub, c.act, !c.free)
		}
	}
}

// What a reverse: link brings back hangs on the order in that phase: its steps
// keep their order, and those of other phases do not.
func TestNothingIsFreeThatIsReversed(t *testing.T) {
	const body = "## Work\n\n1. [One](place:chock).\n2. [Two](alter:relief).\n\n## More\n\n1. [One](place:screen).\n2. [Two](alter:governor).\n\n## Back\n\n1. [All back](reverse:work).\n"
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n---\n" + body}
	for name, text := range bench {
		files[name] = text
	}
	m, found := bound(files)
	if len(found) > 0 {
		t.Fatal(found)
	}
	p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })]
	book := schedule.NewCache(walk.All(m))
	for phase, free := range []bool{false, true} {
		if steps := p.Phases[phase].Steps; book.Free(steps[0], steps[1]) != free {
			t.Errorf("the steps of %s are free: %v", p.Phases[phase].ID, !free)
		}
	}
}

// "What could not be read is unknown, not absent": a step, or a callee, of which
// something could not be read may be about anything, and keeps its place.
func TestNothingPassesWhatCouldNotBeRead(t *testing.T) {
	for name, spoil := range map[string]func(job, callee *model.Procedure){
		"a callee that could not be read":       func(_, callee *model.Procedure) { callee.Unread = true },
		"a callee of which something could not": func(_, callee *model.Procedure) { callee.Broken = true },
		"what a callee finds":                   func(_, callee *model.Procedure) { callee.Expects = []model.State{{Unknown: true}} },
		"an act":                                func(job, _ *model.Procedure) { job.Steps[1].Links[0].Bad = true },
		"the thing of an act":                   func(job, _ *model.Procedure) { job.Steps[1].Links[0].To = nil },
		"a mention":                             func(job, _ *model.Procedure) { job.Steps[1].Links[1].Bad = true },
		"a hold":                                func(job, _ *model.Procedure) { job.Steps[1].Links[2].Bad = true },
		"the hold's fields":                     func(job, _ *model.Procedure) { job.Steps[1].Links[2].To.(*model.Hold).Unread = true },
		"":                                      func(_, callee *model.Procedure) { callee.Expects = []model.State{{}} },
	} {
		p, book := jobOf(t, bench, "for: rig\n", "## Work\n\n1. [One](do:open).\n2. [Two](alter:relief), [mind](hazard:noise), [see](hold:seen).\n3. [Three](remove:pump).\n")
		callee := p.Calls[0].To.(*model.Procedure)
		spoil(p, callee)
		free := book.Free(p.Steps[0], p.Steps[2]) && book.Free(p.Steps[1], p.Steps[2])
		if free != (name == "") {
			t.Errorf("%q: free %v", name, free)
		}
	}
}

// A job without a machine that performs one with options has one row, of a unit
// without any: what is wrong about it is told elsewhere.
func TestRowsWithoutAMachine(t *testing.T) {
	p, book := jobOf(t, lift, "", "## Work\n\n1. [Do it](do:callee).\n")
	if rows := book.Rows(p); len(rows) != 1 || rows[0].Bay != 60 {
		t.Errorf("%d rows, %d s", len(rows), rows[0].Bay)
	}
}
