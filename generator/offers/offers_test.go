package offers_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN, DERIVED.

var today = model.Date{Year: 2026, Month: 5, Day: 4}

// shop is a manual without machines. All values are invented.
var shop = map[string]string{
	"shop.yaml":           "title: Shop\n",
	"machines/spare.yaml": "name: Spare\nenergies:\n  power: { kind: electric, points: [] }\n  load: { kind: gravity, points: [] }\n", // what the registers speak of
	"register/tools.yaml": `
socket-10: { name: 10 mm socket, kind: socket, fits: [10 mm] }
socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm] }
wrench: { name: torque wrench, kind: torque-wrench, range: 5 to 25 N·m }
tester: { name: two-pole tester, kind: tester, rated: CAT III }
proving-unit: { name: proving unit, kind: tester }
prop: { name: prop, kind: aid }
`,
	"register/hazards.yaml": `
shock: { name: live terminals, harm: death, nature: The terminals are live., consequence: A shock can kill., avoid: [Prove dead.], of: power }
`,
	"register/holds.yaml": `
dead: { name: supply voltage, kind: measure, of: power, what: voltage, limit: at most 5 V dc, with: tester, proved-on: proving-unit }
wait: { name: capacitor wait, kind: wait, for: 60 min, of: power }
seen: { name: load on the prop, kind: look, what: the prop, good: carries, of: load }
clear: { name: everybody clear, kind: look, what: the bay, good: clear }
`,
	"register/supplies.yaml": "gasket: { name: gasket, unit: each }\n",
	"register/roles.yaml":    "fitter: { name: Fitter }\n",
}

// rig is a small machine.
const rig = `
name: Rig
points:
  plug: { name: plug, where: behind the seat, lock: yes }
energies:
  power: { name: battery, kind: electric, voltage: 360 V dc, points: [plug], stored: { wait: 5 min } }
parts:
  seat: { name: seat, held-by: { bolt: 4 }, mass: 14 kg }
  lid: { name: lid, under: [seat], held-by: { bolt: 2 }, guards: [power] }
  bar: { name: bus bar, under: [lid], prove-dead: [power], held-by: { nut: 1 } }
fasteners:
  bolt: { name: bolt, across-flats: 13 mm }
  nut: { name: nut, across-flats: 10 mm, torque: 10 N·m }
`

func manual(machine, job string) map[string]string {
	files := maps.Clone(shop)
	files["machines/rig.yaml"] = machine
	files["procedures/job.md"] = job
	return files
}

func bench(files map[string]string) *offers.Bench {
	bound := bind.All(source.FromText(files))
	return &offers.Bench{Bound: bound, Walks: walk.All(bound.Manual), Context: &check.Context{Manual: bound.Manual, Today: today}}
}

// found is what check says of a manual.
func found(files map[string]string) []finding.Finding {
	m, list := bind.Manual(source.FromText(files))
	list = append(list, walk.All(m).Findings(m)...)
	list = append(list, check.Run(&check.Context{Manual: m, Today: today})...)
	return finding.Sort(check.Soften(m, list))
}

const begun = `---
title: Job
for: rig
---

## Make safe

1. Tell the foreman.

## Strip

1. Clean the seat.

## Refit

1. Sweep the floor.
`

// at is what is offered behind a step.
func at(t *testing.T, files map[string]string, step string) []offers.Offer {
	t.Helper()
	b := bench(files)
	p := b.Procedure("procedures/job.md")
	slot, ok := b.SlotAfter(p.FindStep(step))
	if !ok {
		t.Fatalf("no step can be written behind %s of\n%s", step, p.File.Text)
	}
	return b.Offers(slot)
}

func taken(t *testing.T, files map[string]string, step, address string, words ...string) map[string]string {
	t.Helper()
	for _, o := range at(t, files, step) {
		all := !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(o.Sentence, w) })
		if o.Address == address && o.Possible() && all {
			return take(files, o)
		}
	}
	t.Fatalf("%s is not offered behind step %s of\n%s", address, step, files["procedures/job.md"])
	return nil
}

func take(files map[string]string, o offers.Offer) map[string]string {
	after := maps.Clone(files)
	f := o.Edits[0].At.File
	after[f.Path] = offers.Apply(f, o.Edits)
	return after
}

// A whole job is written by taking what is offered, in the order of 29 CFR
// 1910.147 (d): cut, lock, let out, prove; and back in the order of (e), as
// quoted beside the walk's own test.
func TestAJobIsWrittenFromOffers(t *testing.T) {
	files := manual(rig, begun)
	if list := found(files); len(list) > 0 {
		t.Fatalf("the begun job has findings: %v", list)
	}
	if first := at(t, files, "1.1")[0]; first.Address != "isolate:plug" {
		t.Errorf("the first offer is %s", first.Address)
	}
	files = taken(t, files, "1.1", "isolate:plug", "lock:plug")
	if first := at(t, files, "1.2")[0]; first.Address != "hold:wait" {
		t.Errorf("after the lock the first offer is %s", first.Address)
	}
	files = taken(t, files, "1.2", "hold:wait")
	files = taken(t, files, "1.3", "prove:power", "hold:dead", "tool:tester")
	files = taken(t, files, "2.1", "remove:seat", "tool:socket-13")
	files = taken(t, files, "2.2", "remove:lid")
	files = taken(t, files, "2.3", "remove:bar", "tool:socket-10")
	if first := at(t, files, "3.1")[0]; first.Address != "reverse:strip" {
		t.Errorf("with everything off the first offer is %s", first.Address)
	}
	files = taken(t, files, "3.1", "reverse:strip", "tool:wrench")
	files = taken(t, files, "3.2", "unlock:plug")
	files = taken(t, files, "3.3", "restore:power")
	for _, f := range found(files) {
		t.Errorf("%s: %s [%s]\n%s", f.At.Text(), f.Message, f.Code, files["procedures/job.md"])
	}
}

// What cannot be done yet says what is in the way.
func TestWhatIsInTheWay(t *testing.T) {
	for address, way := range map[string]string{
		"remove:lid": "still in the way: seat",
		"remove:bar": "still in the way: lid",
	} {
		for _, o := range at(t, manual(rig, begun), "1.1") {
			if o.Address == address && !strings.Contains(strings.Join(o.InTheWay, "\n"), way) {
				t.Errorf("%s: %q is in the way, want %q", address, o.InTheWay, way)
			}
		}
	}
	off := strings.Replace(begun, "1. Clean the seat.", "1. [Take the seat off](remove:seat).", 1)
	var lid *offers.Offer
	for _, o := range at(t, manual(rig, off), "2.1") {
		if o.Address == "remove:lid" {
			lid = &o
		}
	}
	if lid == nil || !strings.Contains(strings.Join(lid.InTheWay, " "), "its guard comes off before it is isolated") {
		t.Errorf("the lid keeps hands from what is live: %+v", lid)
	}
}

// A procedure that only makes safe is performed from the first on: it is offered
// before it says what it leaves, and one press says it. One that opens something
// is not asked to leave it.
func TestAProcedureThatMakesSafe(t *testing.T) {
	files := manual(rig, begun)
	files["procedures/safe.md"] = "---\ntitle: Make safe\nfor: rig\n---\n\n## Off\n\n1. [Off](isolate:plug) and [locked](lock:plug).\n"
	if o := offered(t, files, "1.1", "do:safe"); !o.Possible() || o.Why != "it leaves battery locked" {
		t.Errorf("%q, in the way: %q", o.Why, o.InTheWay)
	}
	mended := func() map[string]string {
		for _, f := range found(files) {
			for _, m := range bench(files).Mends(f) {
				if f.Code == "left-isolated" {
					return take(files, offers.Offer{Edits: m.Edits})
				}
			}
		}
		return nil
	}
	after := mended()
	if !strings.Contains(after["procedures/safe.md"], "leaves: { power: locked }") || slices.ContainsFunc(found(after), func(f finding.Finding) bool { return f.Code == "left-isolated" }) {
		t.Errorf("%q", after["procedures/safe.md"])
	}
	files["procedures/safe.md"] += "2. [Take the seat off](remove:seat).\n"
	if after := mended(); after != nil {
		t.Errorf("%q", after["procedures/safe.md"])
	}
}

// offered is the offer of an act behind a step.
func offered(t *testing.T, files map[string]string, step, address string) offers.Offer {
	t.Helper()
	list := at(t, files, step)
	i := slices.IndexFunc(list, func(o offers.Offer) bool { return o.Address == address })
	if i < 0 {
		t.Fatalf("%s is not offered", address)
	}
	return list[i]
}

// What an offer does to a procedure that performs this one is named with it: its
// lid cannot come off any more once the seat is back.
func TestWhatAnOfferBringsToCallersIsNamed(t *testing.T) {
	machine := strings.NewReplacer("guards: [power]", "mass: 1 kg", "held-by: { bolt: 4 }, ", "", "held-by: { bolt: 2 }, ", "").Replace(rig)
	files := manual(machine,
		strings.Replace(strings.Replace(begun, "for: rig\n", "for: rig\nleaves: { seat: off }\n", 1), "1. Clean the seat.", "1. [Take the seat off](remove:seat).", 1))
	files["procedures/caller.md"] = "---\ntitle: Caller\nfor: rig\n---\n\n## Work\n\n1. [Do the job](do:job).\n2. [Take the lid off](remove:lid).\n3. [Put it back](refit:lid).\n4. [And the seat](refit:seat).\n"
	for _, f := range found(files) {
		if f.Level == finding.Error {
			t.Fatalf("%s: %s", f.Code, f.Message)
		}
	}
	back := offered(t, files, "2.1", "refit:seat")
	var brought []string
	for _, f := range back.Brings {
		if f.At.Path() == "procedures/caller.md" {
			brought = append(brought, f.Code)
		}
	}
	if !slices.Contains(brought, "not-reachable") {
		t.Errorf("the caller would have %q, and in the way is %q", brought, back.InTheWay)
	}
	for _, f := range offered(t, files, "3.1", "isolate:plug").Brings {
		if f.At.Path() == "procedures/caller.md" && f.Code == "not-reachable" {
			t.Errorf("what stood before is named: %s", f.Message)
		}
	}
}

// What only some units have is said, and no condition is written: the act implies
// it. A fluid is listed with what its circuit holds.
func TestUnitsAndLitresOfAnOffer(t *testing.T) {
	machine := strings.Replace(rig, "name: Rig\n", "name: Rig\noptions: { cab: Enclosed cab }\n", 1) +
		"fluids:\n  coolant: { name: coolant, supply: antifreeze, capacity: 4 L, only-with: cab }\n"
	machine = strings.Replace(machine, "  seat: { name: seat,", "  seat: { name: seat, only-with: cab,", 1)
	job := strings.Replace(begun, "1. Clean the seat.", "1. [Drain it](drain:coolant).", 1)
	for front, want := range map[string]string{"": "supplies: [antifreeze: 4 L]", "supplies: [gasket]\n": "supplies: [gasket, antifreeze: 4 L]", "supplies: { gasket: 2 }\n": "supplies: { gasket: 2, antifreeze: 4 L }",
		"supplies:\n  - gasket\n": "  - antifreeze: 4 L", "supplies:\n  gasket: 2\n": "  antifreeze: 4 L"} {
		files := manual(machine, strings.Replace(job, "for: rig\n", "for: rig\n"+front, 1))
		files["register/supplies.yaml"] += "antifreeze: { name: antifreeze, unit: L }\n"
		fill := offered(t, files, "2.1", "fill:coolant")
		if text := take(files, fill)["procedures/job.md"]; !strings.Contains(text, want) {
			t.Errorf("%q: %s", want, text)
		}
		if !strings.Contains(fill.Detail, "only with: Enclosed cab") {
			t.Errorf("the fluid: %s", fill.Detail)
		}
		for _, f := range found(take(files, fill)) {
			if f.Code == "not-supplied" {
				t.Error(f.Message)
			}
		}
		if seat := offered(t, files, "2.1", "remove:seat"); !strings.Contains(seat.Detail, "only with: Enclosed cab") || strings.Contains(seat.Sentence, "when:") {
			t.Errorf("the seat: %s, %s", seat.Detail, seat.Sentence)
		}
	}
}

// An offer holds nothing that no register says.
func TestNothingIsInvented(t *testing.T) {
	files := manual(rig, begun)
	files["register/hazards.yaml"], files["register/holds.yaml"], files["register/tools.yaml"] = "", "", ""
	for _, o := range at(t, files, "1.1") {
		if len(o.Needs) > 0 {
			t.Errorf("%s asks for %v", o.Sentence, o.Needs)
		}
	}
}

func TestOffersInTheShopsLanguage(t *testing.T) {
	files := manual(rig, begun)
	files["shop.yaml"] = "title: Taller\nlanguage: es\n"
	if first := at(t, files, "1.1")[0]; !strings.HasPrefix(first.Sentence, "[Corte en: plug](isolate:plug) y [ponga su candado](lock:plug).") {
		t.Errorf("it writes %q", first.Sentence)
	}
}

// drawMachine draws a machine on which hands meet energies.
func drawMachine(t *rapid.T) string {
	yes := func(what string) bool { return rapid.Bool().Draw(t, what) }
	var b strings.Builder
	b.WriteString("name: Rig\npoints:\n")
	fmt.Fprintf(&b, "  plug: { name: plug, lock: %s }\n  valve: { name: valve, lock: %s }\n", word(yes("lock")), word(yes("lock")))
	fmt.Fprintf(&b, "energies:\n  power: { name: battery, kind: electric, voltage: 360 V dc, points: [plug], stored: %s }\n", word(yes("stored")))
	fmt.Fprintf(&b, "  load: { name: load, kind: gravity, points: [valve], stored: yes, blocked-by: [prop] }\nparts:\n")
	names := []string{"seat", "lid", "bar", "frame", "hose"}
	for i, n := range names {
		fmt.Fprintf(&b, "  %s: { name: %s", n, n)
		if i > 0 && yes("under") {
			fmt.Fprintf(&b, ", under: [%s]", names[rapid.IntRange(0, i-1).Draw(t, "which")])
		}
		for _, field := range []string{"prove-dead: [power]", "guards: [load]", "held-by: { bolt: 2 }", "held-by: { nut: 1 }", "alike: twins"} {
			if key, _, _ := strings.Cut(field, ":"); yes(field) && !strings.Contains(lastLine(b.String()), key) {
				b.WriteString(", " + field)
			}
		}
		if n == "hose" {
			b.WriteString(", kind: line, carries: oil")
		}
		b.WriteString(" }\n")
	}
	b.WriteString("fasteners:\n  bolt: { name: bolt, across-flats: 13 mm }\n  nut: { name: nut, across-flats: 10 mm, torque: 10 N·m }\n  screw: { name: screw }\n")
	fmt.Fprintf(&b, "fluids:\n  oil: { name: oil, bleed: %s }\nsettings:\n  stop: { name: stop, value: 3 mm }\n", word(yes("bleed")))
	return b.String()
}

// drawCaller draws a procedure that performs the job, and goes on from there.
func drawCaller(t *rapid.T) string {
	acts := []string{"[Off](remove:seat).", "[Off](remove:lid).", "[On](restore:power).", "[Back](refit:seat).", "[Unlock it](unlock:plug).", "[Drain it](drain:oil)."}
	text := "---\ntitle: Caller\nfor: rig\n---\n\n## Work\n\n1. [Do the job](do:job).\n"
	for i := range rapid.IntRange(0, 3).Draw(t, "acts") {
		text += fmt.Sprintf("%d. %s\n", i+2, rapid.SampledFrom(acts).Draw(t, "act"))
	}
	return text
}

func word(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}

func lastLine(text string) string { return text[strings.LastIndexByte(text, '\n')+1:] }

// Every offer that is taken gives a manual whose findings are those of before
// and those that the offer named.
func TestWhatIsTakenBringsWhatWasNamed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		files := manual(drawMachine(t), begun)
		for n := range rapid.IntRange(0, 2).Draw(t, "callers") {
			files[fmt.Sprintf("procedures/caller-%d.md", n)] = drawCaller(t)
		}
		for range rapid.IntRange(1, 4).Draw(t, "steps") {
			b := bench(files)
			p := b.Procedure("procedures/job.md")
			slot, ok := b.SlotAfter(rapid.SampledFrom(p.Steps).Draw(t, "behind"))
			if rapid.Bool().Draw(t, "first of its phase") {
				slot, ok = b.SlotFirst(p, rapid.SampledFrom(p.Phases).Draw(t, "phase")), true
			}
			if !ok {
				t.Fatal("no step can be written here")
			}
			var can []offers.Offer
			for _, o := range b.Offers(slot) {
				if o.Possible() {
					can = append(can, o)
				}
			}
			if len(can) == 0 {
				return
			}
			o := rapid.SampledFrom(can).Draw(t, "offer")
			after := take(files, o)
			compare(t, files, after, o)
			files = after
		}
	})
}

func compare(t *rapid.T, before, after map[string]string, o offers.Offer) {
	allowed := map[string]int{}
	for _, f := range slices.Concat(found(before), o.Brings) {
		allowed[f.Code]++
	}
	for _, f := range found(after) {
		if allowed[f.Code]--; allowed[f.Code] < 0 {
			t.Fatalf("%s was not named: %s\n%s\n%s", f.Code, f.Message, o.Sentence, after["procedures/job.md"])
		}
	}
	for _, named := range o.Brings {
		if !slices.ContainsFunc(found(after), func(f finding.Finding) bool { return f.Code == named.Code && f.Message == named.Message }) {
			t.Fatalf("%s was named, and is not found: %s\n%s", named.Code, named.Message, after["procedures/job.md"])
		}
	}
}
