package begin

import (
	"fmt"
	"slices"
	"strings"

	"pgregory.net/rapid"
)

// fullShop is a small manual whose registers have all that reaching the core
// takes.
func fullShop() map[string]string {
	return map[string]string{
		"shop.yaml": "title: Shop\nlocks: { tool: padlock }\n",
		"register/tools.yaml": `padlock: { name: padlock, kind: lock, needs: [keeper] }
tester: { name: tester, kind: tester }
socket: { name: 13 mm socket, kind: socket, fits: [13 mm] }
hoist: { name: chain, kind: lifting, needs: [slinger] }
wrench: { name: "torque wrench, 20 to 100 N·m", kind: torque-wrench, range: 20 to 100 N·m }
gauge: { name: degree disc, kind: angle-gauge }
`,
		"register/roles.yaml":    "slinger: { name: Slinger }\nkeeper: { name: Keeper }\nforeman: { name: Foreman }\n",
		"register/hazards.yaml":  "shock: { name: electric shock, of: mains, nature: It kills., harm: death, consequence: You die., avoid: [Prove it dead.] }\n",
		"register/supplies.yaml": "oil-46: { name: oil 46, unit: L }\nnew-bolt: { name: new bolt }\n",
		"register/holds.yaml": `mains-wait: { name: wait of the rig, kind: wait, for: 10 min, of: mains }
mains-dead: { name: voltage of the rig, kind: measure, of: mains, what: voltage, with: tester, proved-on: tester, limit: at most 5 V dc }
seat: { name: joints dry, kind: look, what: the joints, good: dry, of: oil, looks-for: leak }
release: { name: release of the rig, kind: sign, by: foreman }
`,
		"machines/rig.yaml": `name: Rig
points: { plug: { name: plug, where: behind the seat, lock: yes } }
energies:
  mains: { name: mains, kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ } }
parts:
  core: { name: core, under: [pipe-b, pipe-a] }
  lid: { name: lid, held-by: { bolt: 8, nut: 2 }, guards: [mains], mass: 120 kg }
  pipe-a: { name: pipe A, kind: line, under: [lid], alike: pipes, prove-dead: [mains], carries: oil }
  pipe-b: { name: pipe B, kind: line, under: [lid], alike: pipes, prove-dead: [mains], carries: oil }
fasteners:
  bolt: { name: bolt, across-flats: 13 mm, torque: 22 N·m, renew-with: new-bolt }
  nut: { name: nut, stages: [30 N·m, 90°] }
fluids: { oil: { name: oil, supply: oil-46, capacity: 4 L, bleed: yes, needed-by: [mains] } }
`,
	}
}

// rig is a random machine on its way, with registers that have all it takes.
type rig struct {
	*rapid.T
	options  []string
	energies []string
	shared   bool // two energies come back together, by a point in common or by the prop
	propped  bool // a load comes back as the prop is taken away
	text     map[string]*strings.Builder
}

// drawShop is a manual with one machine.
func drawShop(t *rapid.T) map[string]string {
	r := &rig{T: t, text: map[string]*strings.Builder{}}
	r.add("shop.yaml", "title: Shop\nlocks: { tool: padlock }\n")
	r.add("tools", "padlock: { name: padlock, kind: lock }\ntester: { name: tester, kind: tester }\nprop: { name: prop, kind: aid }\n")
	r.add("tools", "chain: { name: chain, kind: lifting }\ndisc: { name: degree disc, kind: angle-gauge }\n")
	r.add("tools", "wrench-small: { name: small wrench, kind: torque-wrench, range: 5 to 25 N·m, needs: [fitter] }\n")
	r.add("tools", "wrench-large: { name: large wrench, kind: torque-wrench, range: 20 to 100 N·m }\n")
	r.add("roles", "fitter: { name: Fitter }\nforeman: { name: Foreman }\n")
	r.add("supplies", "oil-46: { name: oil 46, unit: L }\nnew-bolt: { name: new bolt }\n")
	if r.yes("sign") {
		r.add("holds", "release: { name: word, kind: sign, by: foreman }\n")
	}
	r.add("rig", "name: Rig\n")
	r.drawOptions()
	r.drawEnergies()
	r.drawParts()
	out := map[string]string{"shop.yaml": r.text["shop.yaml"].String(), "machines/rig.yaml": r.text["rig"].String()}
	for _, name := range []string{"tools", "roles", "supplies", "holds", "hazards"} {
		if text := r.text[name]; text != nil {
			out["register/"+name+".yaml"] = text.String()
		}
	}
	return out
}

func (r *rig) add(to, format string, args ...any) {
	if r.text[to] == nil {
		r.text[to] = &strings.Builder{}
	}
	fmt.Fprintf(r.text[to], format, args...)
}

func (r *rig) yes(what string) bool { return rapid.Bool().Draw(r.T, what) }

func (r *rig) one(what string, of ...string) string { return rapid.SampledFrom(of).Draw(r.T, what) }

func (r *rig) upTo(n int, what string) int { return rapid.IntRange(0, n).Draw(r.T, what) }

// some are some of a list, as YAML.
func (r *rig) some(what string, of []string) string {
	var out []string
	for _, x := range of {
		if r.upTo(2, what) == 0 {
			out = append(out, x)
		}
	}
	return "[" + strings.Join(out, ", ") + "]"
}

func numbered(what string, n int) []string {
	var out []string
	for i := range n {
		out = append(out, fmt.Sprintf("%s-%d", what, i))
	}
	return out
}

func (r *rig) drawOptions() {
	r.options = numbered("opt", r.upTo(3, "options"))
	if len(r.options) == 0 {
		return
	}
	r.add("rig", "options: {")
	for i, o := range r.options {
		r.add("rig", "%s %s: variant %d", []string{"", ","}[min(i, 1)], o, i)
	}
	r.add("rig", " }\n")
	switch {
	case len(r.options) > 1 && r.yes("only one"):
		r.add("rig", "only-one-of: [[%s, %s]]\n", r.options[0], r.options[1])
	case r.yes("units"):
		r.add("rig", "units:\n")
		for i := range 1 + r.upTo(2, "units") {
			r.add("rig", "  - { serials: %d to %d, options: %s }\n", 10*i, 10*i+9, r.some("has", r.options))
		}
	}
}

// only is a thing's only-with:.
func (r *rig) only() string {
	if len(r.options) == 0 || r.upTo(2, "only with") > 0 {
		return ""
	}
	return fmt.Sprintf(", only-with: %q", r.one("not", "", "!")+r.one("option", r.options...))
}

func (r *rig) drawEnergies() {
	points := numbered("tap", 1+r.upTo(2, "points"))
	r.add("rig", "points:\n")
	for _, p := range points {
		r.add("rig", "  %s: { lock: %s%s }\n", p, r.one("lock", "yes", "no"), r.one("where", "", ", where: below"))
	}
	r.energies = numbered("power", r.upTo(3, "energies"))
	if len(r.energies) == 0 {
		return
	}
	r.add("rig", "energies:\n")
	taken := map[string]bool{}
	for _, e := range r.energies {
		r.add("hazards", "of-%s: { name: harm of %s, of: %s, nature: It is., harm: death, consequence: It kills., avoid: [Stand back.] }\n", e, e, e)
		at := r.some("at", points)
		for _, p := range points {
			if strings.Contains(at, p) {
				r.shared = r.shared || taken[p]
				taken[p] = true
			}
		}
		r.drawEnergy(e, at)
	}
	if !r.shared && r.yes("order") {
		order := rapid.Permutation(r.energies).Draw(r.T, "order")
		r.add("rig", "restore-order: [%s]\n", strings.Join(order[:1+r.upTo(len(order)-1, "ordered")], ", "))
	}
}

func (r *rig) drawEnergy(e, at string) {
	kind := r.one("kind", "electric", "pressure", "vacuum", "gravity", "spring", "motion", "heat", "chemical")
	r.add("rig", "  %s: { kind: %s, points: %s%s", e, kind, at, r.only())
	stored := r.yes("stored")
	if kind != "electric" {
		r.add("holds", "check-%s: { name: push, kind: check, of: %s, by: foreman }\n", e, e)
	}
	switch {
	case kind == "electric":
		flow := r.one("flow", "dc", "ac")
		r.add("rig", ", voltage: %s %s", r.one("voltage", "24 V", "400 V"), flow)
		r.add("holds", "dead-%s: { name: volts, kind: measure, of: %s, what: volts, with: tester, proved-on: tester, limit: at most 5 V %s }\n", e, e, flow)
		if stored {
			r.add("rig", ", stored: { capacitance: 1000 µF, resistance: 10 kΩ }")
			r.add("holds", "soon-%s: { name: pause, kind: wait, for: 10 s, of: %s }\nwait-%s: { name: pause, kind: wait, for: 10 min, of: %s }\n", e, e, e, e)
		}
	case stored:
		r.add("rig", ", stored: yes")
		if r.yes("blocked") {
			r.add("rig", ", blocked-by: [prop]")
			if at == "[]" {
				r.shared, r.propped = r.shared || r.propped, true
			}
		} else if r.yes("wait") {
			r.add("holds", "wait-%s: { name: pause, kind: wait, for: 10 min, of: %s }\n", e, e)
		}
	}
	r.add("rig", " }\n")
}

func (r *rig) drawParts() {
	parts := numbered("pod", 1+r.upTo(6, "parts"))
	depth := rapid.Permutation(numbered("pod", len(parts))).Draw(r.T, "depth")
	r.add("rig", "parts:\n")
	for _, p := range parts {
		r.add("rig", "  %s: { under: %s", p, r.some("under", depth[:slices.Index(depth, p)]))
		r.add("rig", ", prove-dead: %s, guards: %s%s", r.some("dead", r.energies), r.some("guards", r.energies), r.only())
		switch r.one("part", "part", "line", "wire", "connector", "oil line") {
		case "line":
			r.add("rig", ", kind: line")
		case "wire":
			r.add("rig", ", kind: wire")
		case "connector":
			r.add("rig", ", kind: connector")
		case "oil line":
			r.add("rig", ", kind: line, carries: %s", r.one("carries", "oil", "water"))
		}
		if r.yes("alike") {
			r.add("rig", ", alike: twins")
		}
		if held := r.some("held", []string{"bolt: 4", "nut: 1", "clip: 2", "stud: 6"}); held != "[]" {
			r.add("rig", ", held-by: { %s }", strings.Trim(held, "[]"))
		}
		r.add("rig", ", mass: %s }\n", r.one("mass", "2 kg", "40 kg", "300 kg"))
	}
	r.add("tools", "socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm] }\nspanner-17: { name: 17 mm spanner, kind: spanner, fits: [17 mm] }\n")
	r.add("rig", `fasteners:
  bolt: { across-flats: 13 mm, torque: %s, renew-with: new-bolt }
  nut: { across-flats: 17 mm, torque: 22 N·m, start: by hand }
  clip: {}
  stud: { across-flats: 13 mm, stages: [10 N·m, 60 N·m, 90°] }
fluids:
  oil: { supply: oil-46, capacity: 4 L, bleed: yes, needed-by: %s }
  water: { bleed: %s }
`, r.one("torque", "9 N·m", "22 N·m", "80 N·m", "10 to 90 N·m"), r.some("needed", r.energies), r.one("bleed", "yes", "no"))
	if r.yes("leak look") {
		r.add("holds", "dry: { name: joints, kind: look, what: the joints, good: dry, of: oil, looks-for: leak }\n")
	}
}
