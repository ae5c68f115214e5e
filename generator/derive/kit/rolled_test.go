package kit_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/derive/kit"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// rolled is a job that performs another procedure twice.
func rolled() map[string]string {
	return map[string]string{
		"shop.yaml":              "title: Shop\n",
		"machines/press.yaml":    press,
		"register/roles.yaml":    "boss: { name: Boss }\nfitter: { name: Fitter }\n",
		"register/tools.yaml":    "chock: { name: chock, kind: aid }\nbox: { name: box, kind: aid }\ntester: { name: tester, kind: tester }\nunit: { name: proving unit, kind: aid }\ngloves: { name: gloves, kind: ppe }\nmask: { name: mask, kind: ppe }\n",
		"register/supplies.yaml": "oil: { name: oil, unit: L }\nbolt: { name: bolt }\nnut: { name: nut }\nrag: { name: rag }\n",
		"register/hazards.yaml": "shock: { name: shock, nature: A shock., harm: death, happens: could, consequence: It kills., avoid: [Wait.], wear: [gloves] }\n" +
			"dust: { name: dust, nature: Dust., harm: minor-injury, happens: could, consequence: It hurts., avoid: [Wet it.], wear: [gloves, mask] }\n",
		"register/holds.yaml": "dead: { name: dead, kind: measure, of: power, what: voltage, limit: at most 5 V dc, with: tester, proved-on: unit }\n",
		"procedures/job.md": job("1", "tools: [box, chock: 4]\nsupplies: [oil: 500 mL, bolt: 4, rag]\nhazards: [shock]\nholds: [dead]\nneeds: [boss, fitter]\n",
			"1. [a](isolate:power). [](hold:dead)\n2. [x](do:other).\n3. [x](do:other).\n4. [a](isolate:power).\n"),
		"procedures/other.md": job("3", "tools: [box, chock: 2]\nsupplies: [oil: 2 L, bolt: 2, nut: 1, rag]\nhazards: [shock, dust]\nneeds: [fitter]\n",
			"1. [a](isolate:power).\n2. [a](isolate:air).\n"),
	}
}

// kitOf is the kit of the job of a manual.
func kitOf(files map[string]string) *kit.Kit {
	m, _ := bind.Manual(source.FromText(files))
	p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })]
	return kit.NewCache(m.Shop, walk.All(m)).Of(p)
}

// told is a kit in words: of tools how many, of supplies how much and of how many
// procedures, in alphabetical order.
func told(k *kit.Kit) string {
	lines := map[string]bool{}
	for _, t := range k.Tools {
		lines[fmt.Sprintf("%s %d", t.Tool.ID, t.Count)] = true
	}
	for _, s := range k.Supplies {
		line := s.Supply.ID
		if s.Said {
			line += fmt.Sprintf(" %s of %d", s.Amount, len(s.Parts))
		}
		lines[line] = true
	}
	return strings.Join(slices.Sorted(maps.Keys(lines)), ", ")
}

// "tools: the most needed at once; supplies: the sum", and what a hazard's wear, a
// hold's with and its proved-on bring: by hand. An amount is in the unit in which the
// supply is stocked: 0.5 L and twice 2 L.
func TestKitAddsUp(t *testing.T) {
	k := kitOf(rolled())
	want := "bolt 8 each of 3, box 1, chock 4, gloves 1, mask 1, nut 2 each of 2, oil 4.5 L of 3, rag, tester 1, unit 1"
	if got := told(k); got != want || len(k.Tools) != 6 || len(k.Supplies) != 4 {
		t.Errorf("%s\nby hand %s", got, want)
	}
	if k.People != 3 {
		t.Errorf("%d people", k.People)
	}
	ids := func(n int, id func(int) string) string {
		var out []string
		for i := range n {
			out = append(out, id(i))
		}
		return strings.Join(out, " ")
	}
	got := ids(len(k.Hazards), func(i int) string { return k.Hazards[i].ID }) + ", " + ids(len(k.Roles), func(i int) string { return k.Roles[i].ID }) +
		", " + ids(len(k.Energies), func(i int) string { return k.Energies[i].ID }) + ", " + ids(len(k.Points), func(i int) string { return k.Points[i].ID })
	if want := "shock dust, boss fitter, power air, breaker valve switch"; got != want {
		t.Errorf("%s, by hand %s", got, want)
	}
}

// What the kit cannot know it leaves out, and adds up the rest.
func TestKitOfWhatIsNotThere(t *testing.T) {
	files := rolled()
	files["procedures/job.md"] = job("1", "tools: [bx, chock: 4]\nsupplies: [ol: 500 mL, bolt: 4]\nhazards: [shok]\nneeds: [bos]\n", "1. Look.\n")
	if got, want := told(kitOf(files)), "bolt 4 each of 1, chock 4"; got != want {
		t.Errorf("%s, by hand %s", got, want)
	}
}
