package walk_test

import (
	"fmt"
	"slices"
	"strings"

	"pgregory.net/rapid"
)

// randomManual draws a small machine and a few procedures that call each
// other, as text.
type randomManual struct {
	t        *rapid.T
	files    map[string]string
	options  []string
	points   []string
	energies []string
	stored   map[string]bool
	parts    []string
	lines    []string
	alike    bool
	blocked  bool
	under    map[string]string
	kept     string   // the plug that is kept
	needed   []string // energies that need the oil
	holds    []string
	legal    bool // the machine is for a job that is right: it asks for nothing that stands in its own way
	asksOff  bool // a hold is asked before something goes off
	asksOn   bool // and before it comes back
	loosens  bool // a part is freed by the bleed screw
}

func (r *randomManual) yes(what string) bool { return rapid.Bool().Draw(r.t, what) }
func (r *randomManual) n(max int, what string) int {
	return rapid.IntRange(0, max).Draw(r.t, what)
}
func (r *randomManual) odds(n int, what string) bool { return r.n(n-1, what) == n/2 }
func (r *randomManual) one(of []string, what string) string {
	return of[r.n(len(of)-1, what)]
}

func (r *randomManual) some(of []string, what string) []string {
	var out []string
	for _, x := range of {
		if r.yes(what) {
			out = append(out, x)
		}
	}
	return out
}

func drawManual(t *rapid.T) map[string]string {
	r := &randomManual{t: t, files: map[string]string{}, stored: map[string]bool{}}
	r.files["shop.yaml"] = "title: Shop\n"
	r.machine()
	r.spare()
	r.registers()
	calls := []string{}
	if r.odds(3, "general") {
		r.general()
		calls = append(calls, "general")
	}
	for i := range 3 {
		id := fmt.Sprintf("p%d", i)
		r.procedure(id, calls)
		calls = append(calls, id)
	}
	return r.files
}

// spare is a machine that has whatever the registers speak of.
func (r *randomManual) spare() {
	r.files["machines/spare.yaml"] = "name: Spare\nenergies:\n  power: { kind: electric, points: [] }\n  air: { kind: pressure, points: [] }\n  load: { kind: gravity, points: [] }\nfluids:\n  oil: { name: oil }\n"
}

func list(of []string) string { return "[" + strings.Join(of, ", ") + "]" }

func (r *randomManual) only() string {
	if len(r.options) == 0 || !r.odds(5, "only") {
		return ""
	}
	o := r.one(r.options, "option")
	if r.yes("not") {
		return fmt.Sprintf(", only-with: \"!%s\"", o)
	}
	return ", only-with: " + o
}

func (r *randomManual) machine() {
	var b strings.Builder
	b.WriteString("name: Rig\n")
	r.options = []string{"cab", "cold"}[:r.n(2, "options")]
	if len(r.options) > 0 {
		b.WriteString("options: {")
		for i, o := range r.options {
			fmt.Fprintf(&b, "%s%s: with %s", []string{"", ", "}[min(i, 1)], o, o)
		}
		b.WriteString("}\n")
		switch r.n(3, "which units") {
		case 0:
			fmt.Fprintf(&b, "only-one-of: [%s]\n", list(r.options))
		case 1:
			fmt.Fprintf(&b, "units:\n  - { serials: 1 to 9, options: [%s] }\n  - { serials: 10 to 20, options: [] }\n", r.options[0])
		}
	}
	r.points = []string{"plug", "valve", "switch"}[:1+r.n(2, "points")]
	b.WriteString("points:\n")
	for _, p := range r.points {
		fmt.Fprintf(&b, "  %s: { name: %s, lock: %s%s }\n", p, p, r.lockOf(p), r.only())
	}
	r.drawEnergies(&b)
	r.drawParts(&b)
	fmt.Fprintf(&b, "fasteners:\n  bolt: { name: bolt, renew-with: new-bolt }\n  nut: { name: nut, start: by hand%s }\n  clip: { name: clip }\n  screw: { name: bleed screw%s }\n", r.only(), r.only())
	fmt.Fprintf(&b, "fluids:\n  oil: { name: oil, supply: oil-can, capacity: 2 L, bleed: %s, needed-by: %s%s }\n",
		r.bleeds(), list(r.needed), r.only())
	fmt.Fprintf(&b, "settings:\n  relief: { name: relief, needed-by: %s%s }\n", list(r.some(r.energies, "set for")), r.only())
	if r.odds(4, "asks") {
		b.WriteString("before-restore: [sign]\n")
		r.asksOn = true
	}
	if len(r.energies) > 1 && r.odds(3, "order") {
		fmt.Fprintf(&b, "restore-order: %s\n", list(r.energies[:2]))
	}
	r.files["machines/rig.yaml"] = b.String()
}

// bleeds draws whether the oil is bled, and which energies need it.
func (r *randomManual) bleeds() string {
	r.needed = r.some(r.energies, "needed")
	if how := []string{"no", "yes", "yes", "live"}[r.n(3, "bleed")]; how != "live" || len(r.needed) > 0 && !r.legal {
		return how
	}
	return "yes"
}

// lockOf draws whether a point takes a lock. Only the plug can be kept.
func (r *randomManual) lockOf(p string) string {
	if p == "plug" && r.odds(3, "kept") {
		r.kept = p
		return "kept"
	}
	return []string{"no", "yes", "yes"}[r.n(2, "lock")]
}

func (r *randomManual) drawEnergies(b *strings.Builder) {
	r.energies = []string{"power", "air", "load"}[:1+r.n(2, "energies")]
	b.WriteString("energies:\n")
	for _, e := range r.energies {
		kind := map[string]string{"power": "electric, voltage: 360 V dc", "air": "pressure", "load": "gravity"}[e]
		points := r.some(r.points, "cut by")
		if kept := slices.Index(points, r.kept); kept >= 0 && e != "power" {
			points = slices.Delete(points, kept, kept+1)
		}
		if e == "power" && r.kept != "" && !slices.Contains(points, r.kept) {
			points = append(points, r.kept)
		}
		if len(points) == 0 && r.odds(2, "cut") {
			points = r.points[len(r.points)-1:]
		}
		if len(points) == 1 && points[0] == r.kept && e != "power" {
			points = nil
		}
		stored := []string{"no", "yes", r.waits(e)}[r.n(2, "stored")]
		blocked := ""
		if e == "load" && r.yes("blocked") {
			blocked, r.blocked = ", blocked-by: [stand, prop]", true
		}
		if r.odds(5, "told") {
			blocked += ", before-isolate: [sign]"
			r.asksOff = true
		}
		if e == "air" && !r.legal && r.odds(3, "contained") { // live at the start and the end, with nothing round it
			blocked += ", contained-by: [gauge, cage]"
		}
		fmt.Fprintf(b, "  %s: { name: %s, kind: %s, points: %s, stored: %s%s%s }\n", e, e, kind, list(points), stored, blocked, r.only())
	}
}

// letOut draws how what is stored goes: by hand or by waiting.
func (r *randomManual) letOut(e string, add func(format string, args ...any)) {
	if e == "load" || r.yes("by hand") {
		add("[c](release:%s)", e)
		return
	}
	for range 1 + r.n(2, "waits") {
		add("[](hold:wait-%s)", e)
	}
}

// waits draws how long what an energy stores takes: 100 s · ln(360/60) is 179 s,
// to 5 V it is 428 s.
func (r *randomManual) waits(e string) string {
	if e == "power" && r.yes("computed") {
		return r.one([]string{"{ capacitance: 1000 µF, resistance: 100 kΩ }", "{ capacitance: 2000 µF, resistance: 110 kΩ }"}, "charge")
	}
	return r.one([]string{"{ wait: 5 min }", "{ wait: 9 min }", "{ wait: 11 min }"}, "maker")
}

func (r *randomManual) drawParts(b *strings.Builder) {
	b.WriteString("parts:\n")
	all := []string{"lid", "base", "hose", "pipe", "pump"}
	for i, p := range all[:2+r.n(3, "parts")] {
		kind, carries, alike := "part", "", ""
		if p == "hose" || p == "pipe" {
			kind = "line"
			if r.yes("carries") {
				carries = ", carries: " + r.one([]string{"oil", "oil", r.energies[0]}, "what")
			}
			if r.yes("alike") {
				alike, r.alike = ", alike: hoses", true
			}
		}
		under := ""
		if i > 0 && r.yes("under") {
			over := r.one(r.parts, "over")
			under = fmt.Sprintf(", under: [%s]", over)
			if r.under == nil {
				r.under = map[string]string{}
			}
			r.under[p] = over
		}
		guards := ""
		if r.odds(3, "guards") {
			guards = ", guards: " + list(r.some(r.energies, "guarded"))
		}
		held := []string{}
		for _, f := range []string{"bolt: 2", "nut: 1", "clip: 1"} {
			if r.odds(3, "held") {
				held = append(held, f)
			}
		}
		if r.odds(5, "freed") {
			guards += r.freedBy()
		}
		fmt.Fprintf(b, "  %s: { name: %s, kind: %s%s, prove-dead: %s%s, held-by: {%s}, renew-with: new-%s%s%s%s }\n",
			p, p, kind, under, list(r.some(r.energies, "dead")), guards, strings.Join(held, ", "), p, carries, alike, r.only())
		r.parts = append(r.parts, p)
		if kind == "line" {
			r.lines = append(r.lines, p)
		}
	}
}

// freedBy draws what frees a part. In a job that is right it is a fastener that
// no refit tightens too early, and of one part, so that one slip is told once.
func (r *randomManual) freedBy() string {
	if !r.legal {
		return ", freed-by: " + list(r.some([]string{"nut", "screw", "clip"}, "freeing"))
	}
	if r.loosens {
		return ""
	}
	r.loosens = true
	return ", freed-by: [screw]"
}

func (r *randomManual) registers() {
	r.files["register/tools.yaml"] = "stand: { name: stand, kind: aid }\nprop: { name: prop, kind: aid }\ngauge: { name: gauge, kind: aid }\ncage: { name: cage, kind: aid }\ntester: { name: tester, kind: tester }\nproving-unit: { name: unit, kind: aid }\n"
	r.files["register/hazards.yaml"] = `shock: { name: shock, nature: a, harm: death, consequence: b, avoid: [c], of: power }
jet: { name: jet, nature: a, harm: death, consequence: b, avoid: [c], of: air }
crush: { name: crush, nature: a, harm: death, consequence: b, avoid: [c], of: load }
`
	r.files["register/holds.yaml"] = `wait-power: { name: wait, kind: wait, for: 5 min, of: power }
wait-air: { name: wait, kind: wait, for: 5 min, of: air }
dead-power: { name: volts, kind: measure, what: volts, limit: at most 5 V dc, of: power, with: tester, proved-on: proving-unit }
dead-badly: { name: volts, kind: measure, what: volts, limit: at most 5 V dc, of: power, with: tester }
zero: { name: zero, kind: measure, what: gauge, limit: at most 0 bar }
zero-air: { name: zero, kind: measure, what: gauge, limit: at most 0 bar, of: air }
half-air: { name: half, kind: measure, what: gauge, limit: at most 3 bar, of: air }
look-load: { name: load, kind: look, what: load, good: down, of: load }
leak: { name: leak, kind: look, what: joint, good: dry, of: oil, looks-for: leak }
ask: { name: ask, kind: ask, what: state, answers: { good: clean, worn: scored } }
leak-air: { name: leak, kind: look, what: joint, good: dry, of: air, looks-for: leak }
sign: { name: sign, kind: sign, by: boss }
`
	r.holds = []string{"wait-power", "wait-air", "dead-power", "dead-badly", "zero", "zero-air", "half-air", "look-load", "leak", "leak-air", "sign"}
	r.files["register/supplies.yaml"] = "new-bolt: { name: new bolt }\nnew-lid: { name: new lid }\nnew-base: { name: new base }\nnew-hose: { name: new hose }\nnew-pipe: { name: new pipe }\nnew-pump: { name: new pump }\noil-can: { name: oil, unit: L }\n"
	r.files["register/roles.yaml"] = "boss: { name: Boss }\n"
}

var stateWords = map[string][]string{
	"power": {"live", "isolated", "locked", "released", "dead"}, "air": {"live", "isolated", "locked", "released", "dead"},
	"load": {"live", "isolated", "locked", "released", "dead"}, "valve": {"locked"}, "plug": {"live", "isolated", "locked"},
	"oil": {"full", "low", "unbled"}, "stand": {"placed"}, "relief": {"altered"}, "bolt": {"loose", "tight"}, "screw": {"loose"},
}

// general draws a procedure for no machine: it may leave a tool in place and
// takes holds that mean nothing to it.
func (r *randomManual) general() {
	var b strings.Builder
	b.WriteString("---\ntitle: General\nleaves: { stand: placed }\n---\n\n## Work\n\n")
	for range 1 + r.n(4, "steps") {
		b.WriteString("1. " + r.one([]string{
			"[p](place:stand)", "[p](place:prop)", "[c](clear:stand)", "[](optional:) [p](place:stand)", "[](hold:wait-power)",
			"[](hold:leak)", "Look. [](pause:)", "[i](if-not:zero) [c](clear:prop)", "[](hold:zero)",
		}, "general step") + "\n")
	}
	r.files["procedures/general.md"] = b.String()
}

// states draws a line of expects or leaves.
func (r *randomManual) states(what string) string {
	if !r.odds(2, what) {
		return ""
	}
	names := append([]string{"plug", "oil", "stand", "relief", "bolt", "screw"}, r.energies...)
	names = append(names, r.parts...)
	var out []string
	used := map[string]bool{}
	for range 1 + r.n(2, "lines") {
		n := r.one(names, "thing")
		if used[n] {
			continue
		}
		used[n] = true
		words := stateWords[n]
		if words == nil {
			words = []string{"off", "on"}
		}
		out = append(out, n+": "+r.one(words, "word"))
	}
	return fmt.Sprintf("%s: { %s }\n", what, strings.Join(out, ", "))
}

// procedure draws a job that is nearly right, and then spoils it.
func (r *randomManual) procedure(id string, calls []string) {
	var b strings.Builder
	b.WriteString("---\ntitle: " + id + "\nfor: rig\n")
	if r.odds(3, "crew") {
		b.WriteString("people: 2\n")
	}
	b.WriteString(r.states("expects"))
	b.WriteString(r.states("leaves"))
	if r.yes("supplies") {
		b.WriteString("supplies: [new-bolt: 2, oil-can: 2 L, new-lid: 1]\n")
	}
	b.WriteString("---\n")
	phases := []string{"Safe", "Strip", "Refit", "Back"}
	for i, name := range phases {
		fmt.Fprintf(&b, "\n## %s\n\n", name)
		if r.odds(8, "never") {
			b.WriteString("[Never](pause:never)\n\n")
		}
		if len(r.options) > 0 && r.odds(8, "lead") {
			fmt.Fprintf(&b, "[For](when:%s)\n\n", r.one(r.options, "lead option"))
		}
		for k, s := range r.spoil(r.steps(i, calls), calls) {
			fmt.Fprintf(&b, "%d. %s\n", k+1, s)
		}
	}
	r.files["procedures/"+id+".md"] = b.String()
}

// steps draws the steps of one phase as they should be.
func (r *randomManual) steps(phase int, calls []string) []string {
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	switch phase {
	case 0:
		for _, e := range r.energies {
			if r.odds(4, "skip energy") {
				continue
			}
			add("[a](isolate:%s) [b](lock:%s)", e, e)
			if e == "load" && r.yes("by stand") {
				add("[p](place:stand)")
			} else {
				r.letOut(e, add)
			}
			add("[d](prove:%s) [](hold:%s)", e, map[string]string{"power": "dead-power", "air": r.one([]string{"zero-air", "zero-air", "half-air", "zero"}, "zero"), "load": "look-load"}[e])
		}
	case 1:
		for _, p := range r.parts {
			if r.odds(4, "skip part") {
				continue
			}
			if r.alike && r.yes("mark") {
				add("[m](mark:hoses)")
			}
			add("[o](%s:%s) %s", []string{"remove", "renew", "disconnect"}[r.n(2, "off")], p, r.hazards())
			if contains(r.lines, p) && r.yes("cap") {
				add("[c](cap:%s)", p)
			}
		}
		if r.yes("drain") {
			add("[d](drain:oil)")
		}
		if r.yes("alter") {
			add("[a](alter:relief)")
		}
		if r.yes("place") {
			add("[a](place:gauge)")
		}
	case 2:
		switch r.n(3, "refit") {
		case 0:
			add("[r](reverse:strip)")
		case 1:
			add("[r](reverse:strip#%s)", r.one(r.parts, "as far as"))
			add("[r](reverse:strip)")
		case 2:
			add("[r](reverse:strip!%s)", r.one(r.parts, "but"))
			add("[r](reverse:strip)")
		default:
			for i := len(r.parts) - 1; i >= 0; i-- {
				add("[r](refit:%s)", r.parts[i])
				add("[b](tighten:bolt) [n](tighten:nut) [c](tighten:clip)")
			}
			add("[c](clear:gauge) [r](reset:relief)")
		}
		add("[f](fill:oil)")
		add("[l](loosen:screw) [b](bleed:oil)")
		add("[dry](dry:oil)")
		add("[](hold:leak)")
	case 3:
		for _, e := range r.energies {
			if r.odds(3, "ask") {
				add("[](hold:sign)")
			}
			add("[u](unlock:%s)", e)
			add("[v](restore:%s)", e)
		}
		if r.odds(3, "look again") {
			add("[](hold:leak)")
		}
		if r.yes("clear") {
			add("[s](clear:stand)")
		}
	}
	if len(calls) > 0 && r.odds(3, "call") {
		add("[x](do:%s)", r.one(calls, "callee"))
	}
	return out
}

func (r *randomManual) hazards() string {
	if r.odds(3, "no hazard") {
		return ""
	}
	return "[](hazard:shock) [](hazard:jet) [](hazard:crush)"
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// spoil drops, doubles, swaps, adds and conditions steps.
func (r *randomManual) spoil(steps []string, calls []string) []string {
	var out []string
	for _, s := range steps {
		switch (r.n(15, "spoil") + 7) % 16 {
		case 0:
		case 1:
			out = append(out, s, s)
		case 2:
			out = append(out, s, r.randomAct(calls))
		case 3:
			out = append(out, r.condition()+" "+s)
		case 4:
			out = append(out, s+" [](pause:)")
		case 5:
			out = append(out, s+"\n\n   1. "+r.randomAct(calls)+"\n   2. "+r.condition()+" "+r.randomAct(calls))
		case 6:
			if len(out) > 0 {
				out[len(out)-1], s = s, out[len(out)-1]
			}
			out = append(out, s)
		default:
			out = append(out, s)
		}
	}
	if len(out) == 0 {
		out = append(out, "Words.")
	}
	return out
}

func (r *randomManual) condition() string {
	switch k := r.n(5, "condition"); {
	case k < 2 && len(r.options) > 0:
		return fmt.Sprintf("[w](when:%s%s)", []string{"", "!"}[r.n(1, "not")], r.one(r.options, "option"))
	case k == 2:
		return "[](optional:)"
	case k == 3:
		return r.one([]string{"[i](if-not:dead-power)", "[i](if-not:zero-air)"}, "failed")
	case k == 4:
		return fmt.Sprintf("[i](if:ask=%s)", []string{"good", "worn"}[r.n(1, "answer")])
	}
	return "[i](if-not:zero)"
}

func (r *randomManual) randomAct(calls []string) string {
	kinds := []string{"isolate", "lock", "release", "prove", "unlock", "restore", "test-live", "remove", "refit", "renew", "cap", "loosen", "tighten", "tighten#", "mark", "place", "clear", "alter", "reset", "drain", "fill", "bleed", "dry", "hold", "again", "do", "ask", "point"}
	switch k := r.one(kinds, "act"); k {
	case "isolate", "lock", "release", "prove", "unlock", "restore":
		return fmt.Sprintf("[x](%s:%s)", k, r.one(r.energies, "energy"))
	case "point":
		return fmt.Sprintf("[x](%s:%s)", []string{"isolate", "lock", "unlock", "restore"}[r.n(3, "point act")], r.one(r.points, "point"))
	case "test-live":
		return fmt.Sprintf("[x](test-live:%s) [](hazard:shock) [](hold:sign) %s", r.one(r.energies, "energy"), r.one([]string{"[](people:2)", "[](people:2)", ""}, "people"))
	case "remove", "refit", "renew", "cap":
		return fmt.Sprintf("[x](%s:%s) %s", k, r.one(r.parts, "part"), r.hazards())
	case "loosen", "tighten":
		return fmt.Sprintf("[x](%s:%s)", k, r.one([]string{"bolt", "nut", "clip", "screw"}, "fastener"))
	case "tighten#":
		return fmt.Sprintf("[x](tighten:%s#%s)", r.one([]string{"bolt", "nut", "clip"}, "fastener"), r.one(r.parts, "part"))
	case "mark":
		if r.alike {
			return "[x](mark:hoses)"
		}
	case "place", "clear":
		return fmt.Sprintf("[x](%s:%s)", k, r.one([]string{"stand", "prop", "gauge", "cage"}, "tool"))
	case "alter", "reset":
		return fmt.Sprintf("[x](%s:relief)", k)
	case "drain", "fill", "dry":
		return fmt.Sprintf("[x](%s:oil)", k)
	case "bleed":
		return fmt.Sprintf("[x](bleed:oil) [y](loosen:%s) %s", r.one([]string{"bolt", "nut", "screw"}, "fastener"), r.hazards())
	case "hold":
		return fmt.Sprintf("[](hold:%s)", r.one(r.holds, "hold"))
	case "again":
		return fmt.Sprintf("[](again:%s)", r.one([]string{"dead-power", "zero", "zero-air"}, "hold"))
	case "ask":
		return "[](hold:ask)"
	case "do":
		if len(calls) > 0 {
			return fmt.Sprintf("[x](do:%s)", r.one(calls, "callee"))
		}
	}
	return "Words only."
}
