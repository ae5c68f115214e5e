package walk_test

import (
	"fmt"
	"slices"
	"strings"
)

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
		if e == "load" && len(points) == 0 && blocked == "" && r.yes("warm") {
			kind = "heat" // it warms up again by itself
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
