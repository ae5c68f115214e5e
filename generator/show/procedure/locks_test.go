package procedure

import (
	"strconv"
	"testing"

	"baybinder/generator/show/page"
)

// A job of two people that performs a lock-out of three: two locks come off at
// each of two points, and four are fetched (29 CFR 1910.147(d)(4)(i): by each
// who works; how many lock in another's job says nothing of this one).
func TestLocksOffAreLocksFetched(t *testing.T) {
	front := "---\ntitle: T\nfor: press\npeople: "
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\nlocks: { tool: padlock, each: person }\n",
		"register/tools.yaml": "padlock: { name: padlock, kind: lock }\n",
		"machines/press.yaml": "name: Press\npoints:\n  breaker: { name: breaker, lock: yes }\n  valve: { name: valve, lock: yes }\nenergies:\n" +
			"  power: { name: power, kind: electric, points: [breaker] }\n  air: { name: air, kind: pressure, points: [valve] }\n",
		"procedures/lock-out.md": front + "3\nleaves: { power: locked, air: locked }\n---\n## Work\n\n1. [a](isolate:power) [b](lock:power).\n2. [a](isolate:air) [b](lock:air).\n",
		"procedures/bring-back.md": front + "4\nexpects: { power: locked, air: locked }\n---\n## Work\n\n" +
			"1. [c](unlock:air) [d](restore:air).\n2. [c](unlock:power) [d](restore:power).\n",
		"procedures/job.md": front + "2\n---\n## Work\n\n1. [x](do:lock-out).\n2. Work.\n3. [x](do:bring-back).\n",
	})
	p := procedureOf(t, s, "job")
	off := 0
	for _, r := range s.closeOut(p, nil, nil).Rows {
		if r.Key == "point:breaker" || r.Key == "point:valve" {
			n, err := strconv.Atoi(page.Unworked(r.Count))
			if err != nil {
				t.Fatal(err)
			}
			off += n
		}
	}
	fetched := page.Unworked(s.ofTool(p, s.Manual.Tools[0]))
	if off != 4 || fetched != "4" {
		t.Errorf("%d locks come off and %s are fetched; by hand 4", off, fetched)
	}
}
