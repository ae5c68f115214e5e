package implied_test

import (
	"testing"

	"baybinder/generator/derive/implied"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

const machine = `name: Stand
options: { tall: Tall, box: Box }
points: { plug: { name: plug, lock: yes } }
energies: { current: { name: current, kind: electric, voltage: 24 V dc, points: [plug] } }
parts:
  cap: { name: cap, only-with: tall, held-by: { cap-bolt: 2 } }
  lid: { name: lid, only-with: "!tall" }
  case: { name: case, only-with: box }
  foot: { name: foot, held-by: { foot-bolt: 2 } }
fasteners: { cap-bolt: { name: cap bolt }, foot-bolt: { name: foot bolt } }
`

// A step that only acts on what a unit may lack is for the units that have it;
// any word more that tells to do something makes it one for all.
func TestWhen(t *testing.T) {
	for step, want := range map[string]string{
		"[Off](remove:cap).":                                 "tall",
		"[Off](remove:lid).":                                 "!tall",
		"[Off](remove:cap) with the hand. [](time:5min)":     "tall",
		"[Undo](loosen:cap-bolt), [off](remove:cap).":        "tall",
		"[Undo](loosen:foot-bolt).":                          "",
		"[Off](remove:cap). Wipe the mast.":                  "",
		"[Off](remove:cap) and [off](remove:foot).":          "",
		"[Off](remove:cap) and [off](remove:case).":          "",
		"[Off](remove:cap). [](hold:look)":                   "",
		"[With it](when:tall), [off](remove:cap).":           "",
		"[Off](isolate:current).":                            "",
		"Look at the [cap](part:cap).":                       "",
		"[Off](remove:cap).\n\n   [Because](why:) it rusts.": "tall",
		"[Off](remove:cap).\n\n   1. Wipe it.":               "",
	} {
		m, _ := bind.Manual(source.FromText(map[string]string{
			"shop.yaml": "title: Shop\n", "machines/stand.yaml": machine, "register/holds.yaml": "look: { name: look, kind: look, what: it, good: dry }\n",
			"procedures/job.md": "---\ntitle: Job\nfor: stand\n---\n## Work\n\n1. " + step + "\n",
		}))
		got := ""
		if c, ok := implied.When(m.Procedures[0].Steps[0]); ok {
			got = map[bool]string{true: "!"}[c.Not] + c.Option
		}
		if got != want {
			t.Errorf("%q: %q, want %q", step, got, want)
		}
	}
}
