package walk_test

import (
	"fmt"
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
