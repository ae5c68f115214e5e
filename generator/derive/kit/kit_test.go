package kit_test

import (
	"slices"
	"testing"

	"baybinder/generator/derive/kit"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN, DERIVED, FROM MEMORY.

const press = `name: Press
options: { drive: Drive, pack: Power pack }
only-one-of: [[drive, pack]]
points:
  breaker: { name: breaker, lock: yes }
  valve: { name: valve, lock: yes }
  switch: { name: switch, lock: no }
  plug: { name: plug, lock: kept }
energies:
  saw: { name: saw, kind: electric, points: [plug] }
  power: { name: power, kind: electric, points: [breaker] }
  air: { name: air, kind: pressure, points: [valve, switch] }
`

// job is a procedure of so many people, and what stands in its steps.
func job(people, front, steps string) string {
	return "---\ntitle: Job\nfor: press\npeople: " + people + "\n" + front + "---\n## Work\n\n" + steps
}

// Locks at once are counted by hand. Each person who works fits their own at
// each point (29 CFR 1910.147(d)(4)(i) and (f)(3)(ii)(D), the second from
// memory); with each: job one holds it for all.
func TestLocks(t *testing.T) {
	both := "1. [a](isolate:power) [b](lock:power).\n2. [a](isolate:air) [b](lock:air).\n"
	back := "1. [c](unlock:air) [d](restore:air).\n2. [c](unlock:power) [d](restore:power).\n"
	for name, c := range map[string]struct {
		each, job, callee string
		want              int
	}{
		"one person at two points":            {"person", job("1", "leaves: { power: locked, air: locked }\n", both), "", 2},
		"two people at two points":            {"person", job("2", "", both+back), "", 4},
		"a lock for the job at two points":    {"job", job("2", "", both+back), "", 2},
		"one after the other":                 {"person", job("2", "", "1. [a](isolate:power) [b](lock:power).\n2. [c](unlock:power) [d](restore:power).\n3. [a](isolate:air) [b](lock:air).\n4. [c](unlock:air) [d](restore:air).\n"), "", 2},
		"a callee's people do not count":      {"person", job("2", "", "1. [x](do:other).\n"), job("3", "", both+back), 4},
		"nor are they too few":                {"person", job("3", "", "1. [x](do:other).\n"), job("1", "", both+back), 6},
		"a callee's locks beside the job's":   {"person", job("2", "", "1. [a](isolate:power) [b](lock:power).\n2. [x](do:other).\n3. [c](unlock:power) [d](restore:power).\n"), job("1", "", "1. [a](isolate:air) [b](lock:air).\n2. [c](unlock:air) [d](restore:air).\n"), 4},
		"a callee that locks what is locked":  {"person", job("2", "", "1. [a](isolate:power) [b](lock:power).\n2. [x](do:other).\n3. [c](unlock:power) [d](restore:power).\n"), job("2", "expects: { power: locked }\nleaves: { power: locked }\n", "1. [b](lock:power).\n"), 2},
		"a callee after the job's own":        {"person", job("2", "", "1. [a](isolate:power) [b](lock:power).\n2. [c](unlock:power) [d](restore:power).\n3. [x](do:other).\n"), job("1", "", "1. [a](isolate:air) [b](lock:air).\n2. [c](unlock:air) [d](restore:air).\n"), 2},
		"where only one of two can be":        {"person", job("2", "", "1. [With a drive](when:drive), [a](isolate:power) [b](lock:power).\n2. [With a pack](when:pack), [a](isolate:air) [b](lock:air).\n3. [With a pack](when:pack), [c](unlock:air) [d](restore:air).\n4. [With a drive](when:drive), [c](unlock:power) [d](restore:power).\n"), "", 2},
		"a plug that is kept":                 {"person", job("1", "", "1. [a](isolate:saw) [b](lock:saw).\n2. [c](unlock:saw) [d](restore:saw).\n"), "", 0},
		"a plug that two cannot keep":         {"person", job("2", "", "1. [a](isolate:saw).\n2. [d](restore:saw).\n"), "", 0},
		"what takes no lock":                  {"person", job("2", "", "1. [a](isolate:switch) [b](lock:switch).\n2. [d](restore:switch).\n"), "", 0},
		"locks that are on before it begins":  {"person", job("2", "expects: { power: locked, air: locked }\n", back), "", 0},
		"a procedure that performs one twice": {"person", job("2", "", "1. [x](do:other).\n2. [x](do:other).\n"), job("1", "", both+back), 4},
	} {
		files := map[string]string{
			"shop.yaml":           "title: Shop\nlocks: { tool: padlock, each: " + c.each + " }\n",
			"register/tools.yaml": "padlock: { name: padlock, kind: lock }\n",
			"machines/press.yaml": press, "procedures/job.md": c.job,
		}
		if c.callee != "" {
			files["procedures/other.md"] = c.callee
		}
		m, found := bind.Manual(source.FromText(files))
		if len(found) > 0 {
			t.Fatalf("%s: %v", name, found)
		}
		p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "job" })]
		if got := padlocks(kit.NewCache(m.Shop, walk.All(m)).Of(p)); got != c.want {
			t.Errorf("%s: %d padlocks, by hand %d", name, got, c.want)
		}
	}
}

// What is made dead is every energy that a point cuts, by whichever of them the link
// names it, the one that it names first: of one point, counted by hand.
func TestEverythingThatIsCutIsMadeDead(t *testing.T) {
	const two = "name: Press\npoints: { main: { name: main, lock: yes }, side: { name: side, lock: yes } }\nenergies:\n  power: { name: power, kind: electric, points: [main] }\n  ram: { name: ram, kind: motion, points: [main] }\n  air: { name: air, kind: pressure, points: [side] }\n"
	for link, want := range map[string][]string{"isolate:power": {"power", "ram"}, "isolate:ram": {"ram", "power"}, "isolate:main": {"power", "ram"}, "isolate:air": {"air"}} {
		m, _ := bind.Manual(source.FromText(map[string]string{
			"shop.yaml": "title: Shop\n", "machines/press.yaml": two, "procedures/job.md": job("1", "", "1. [a]("+link+").\n"),
		}))
		k := kit.NewCache(m.Shop, walk.All(m)).Of(m.Procedures[0])
		var got []string
		for _, e := range k.Energies {
			got = append(got, e.ID)
		}
		if !slices.Equal(got, want) || len(k.Points) != 1 {
			t.Errorf("%s: %v at %d points, by hand %v at one", link, got, len(k.Points), want)
		}
	}
}

func padlocks(k *kit.Kit) int {
	for _, t := range k.Tools {
		if t.Tool.ID == "padlock" {
			return t.Count
		}
	}
	return 0
}

// A shop that says nothing of locks has a lock to take off, and no tool to fetch.
func TestNoLocks(t *testing.T) {
	m, _ := bind.Manual(source.FromText(map[string]string{
		"shop.yaml": "title: Shop\n", "machines/press.yaml": press,
		"procedures/job.md": job("2", "leaves: { power: locked }\n", "1. [a](isolate:power) [b](lock:power).\n"),
	}))
	p := m.Procedures[0]
	if n := kit.LocksAt(m.Shop.Locks, p); n != 1 || len(kit.NewCache(m.Shop, walk.All(m)).Of(p).Tools) != 0 {
		t.Error(n)
	}
}

// Who sees a check done is told at the step that takes it, or that performs the
// procedure with it, once for a role; of a check made apart nobody is. Nor are
// they among the people, or do they fit a lock. By hand.
func TestSeconds(t *testing.T) {
	m, found := bind.Manual(source.FromText(map[string]string{
		"shop.yaml":           "title: Shop\n",
		"machines/press.yaml": press,
		"register/roles.yaml": "boss: { name: Boss }\nfitter: { name: Fitter }\n",
		"register/holds.yaml": "seen: { name: seen, kind: check, by: boss, how: together }\nseen-too: { name: seen too, kind: check, by: boss, how: together }\n" +
			"later: { name: later, kind: check, by: fitter, how: apart }\nsigned: { name: signed, kind: sign, by: fitter }\n",
		"procedures/job.md":   job("1", "holds: [seen, later, signed]\n", "1. Look at it. [](hold:later) [](hold:signed)\n2. [x](do:other).\n3. Count. [](hold:seen)\n"),
		"procedures/other.md": job("1", "holds: [seen, seen-too]\n", "1. Count. [](hold:seen) [](hold:seen-too)\n"),
	}))
	if len(found) > 0 {
		t.Fatal(found)
	}
	k := kit.NewCache(m.Shop, walk.All(m)).Of(m.Procedures[0])
	var got []string
	for _, s := range k.Seconds {
		got = append(got, s.By.ID+" "+s.Step.Of.ID+" "+s.Step.Number)
	}
	if want := []string{"boss job 1.2", "boss job 1.3"}; !slices.Equal(got, want) || k.People != 1 {
		t.Errorf("%v with %d people, want %v with 1", got, k.People, want)
	}
}
