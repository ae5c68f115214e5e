package walk_test

import (
	"encoding/json"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: DERIVED.

// solved is on how many machines the solver judges the walk; a run that has the
// time takes 200, more than a minute's work on a machine that is busy.
var (
	solved     = flag.Int("solved", 40, "machines that the solver judges the walk on")
	solverSeed = flag.Uint64("solver-seed", firstMachines, "from which they are drawn")
)

// firstMachines draws the machines that a test run judges each time.
const firstMachines = 147

// toSolve is a machine of at most six things, for the solver and for the
// program.
type toSolve struct {
	Facts  string `json:"facts"`
	Length int    `json:"length"`
	Seed   int    `json:"seed"`

	yaml     string
	energies []string
}

// drawing draws a machine.
type drawing struct {
	*rand.Rand
	facts, energies, points, parts, fasteners, settings strings.Builder
	toSolve
}

func (d *drawing) odds(n int) bool { return d.IntN(n) == 0 }

func (d *drawing) fact(format string, args ...any) { fmt.Fprintf(&d.facts, format+". ", args...) }

// some draws which of a list, and states a fact of each.
func (d *drawing) some(of []string, odds int, format, about string) string {
	var out []string
	for _, x := range of {
		if d.odds(odds) {
			out = append(out, x)
			d.fact(format, about, x)
		}
	}
	return "[" + strings.Join(out, ", ") + "]"
}

func (d *drawing) energy(id string, points []string) {
	d.fact("energy(%s)", id)
	mine := points[:1+d.IntN(len(points))]
	if d.odds(3) {
		mine = points[len(points)-1:]
	}
	for _, p := range mine {
		d.fact("cuts(%s,%s)", p, id)
	}
	stored := "no"
	if !d.odds(3) {
		stored = "yes"
		d.fact("stored(%s)", id)
	}
	d.toSolve.energies = append(d.toSolve.energies, id)
	fmt.Fprintf(&d.energies, "  %s: { name: %s, kind: pressure, pressure: 8 bar, points: [%s], stored: %s }\n", id, id, strings.Join(mine, ", "), stored)
}

func (d *drawing) part(i int, id string, over []string) {
	d.fact("part(%s)", id)
	kind, held := "part", ""
	if d.odds(3) {
		kind = "line"
		d.fact("line(%s)", id)
	}
	if !d.odds(3) {
		held = fmt.Sprintf(", held-by: { bolt-%s: 2 }", id)
		d.fact("held(%s)", id)
		fmt.Fprintf(&d.fasteners, "  bolt-%s: { name: bolt %d }\n", id, i)
	}
	under := d.some(over, 2, "under(%s,%s)", id)
	dead := d.some(d.toSolve.energies, 2, "dead_for(%s,%s)", id)
	guards := d.some(d.toSolve.energies, 3, "guards(%s,%s)", id)
	fmt.Fprintf(&d.parts, "  %s: { name: piece %d, kind: %s, under: %s, prove-dead: %s, guards: %s%s }\n", id, i, kind, under, dead, guards, held)
}

// drawToSolve draws a machine of one or two energies and up to four other
// things.
func drawToSolve(r *rand.Rand) toSolve {
	d := &drawing{Rand: r}
	points := []string{"valve", "cock"}[:1+d.IntN(2)]
	for _, p := range points {
		lock := "no"
		if !d.odds(4) {
			lock = "yes"
			d.fact("lockable(%s)", p)
		}
		fmt.Fprintf(&d.points, "  %s: { name: %s, lock: %s }\n", p, p, lock)
	}
	for _, e := range []string{"air", "water"}[:1+d.IntN(2)] {
		d.energy(e, points)
	}
	parts := []string{"lid", "pump", "hose"}[:1+d.IntN(3)]
	for i, p := range parts {
		d.part(i, p, parts[:i])
	}
	d.fact("target(%s)", parts[d.IntN(len(parts))])
	things := len(d.toSolve.energies) + len(parts)
	if d.odds(2) && things < 6 {
		d.fact("tool(stand)")
		things++
	}
	if d.odds(2) && things < 6 {
		d.fact("setting(relief)")
		d.settings.WriteString("settings: { relief: { name: relief } }\n")
		things++
	}
	d.yaml = "name: Rig\npoints:\n" + d.points.String() + "energies:\n" + d.energies.String() + "parts:\n" + d.parts.String()
	if d.fasteners.Len() > 0 {
		d.yaml += "fasteners:\n" + d.fasteners.String()
	}
	d.yaml += d.settings.String()
	d.Facts, d.Length, d.Seed = d.facts.String(), 12+4*things, 1+d.IntN(1<<16)
	return d.toSolve
}

// act is what the solver names: a verb, what it acts on, at which moment.
type act struct {
	verb, on string
	moment   int
}

var atomOf = regexp.MustCompile(`^(do|unsafe|sayable)\((\w+),(\w+),(\d+)\)$`)

// plan is what the solver found for a machine: the acts in order, and what it
// says of each act at each moment.
type plan struct {
	acts    []act
	sayable []act
	unsafe  map[act]bool
}

func planOf(t *testing.T, atoms []string) plan {
	p := plan{unsafe: map[act]bool{}}
	for _, atom := range atoms {
		m := atomOf.FindStringSubmatch(atom)
		if m == nil {
			t.Fatalf("the solver says %q", atom)
		}
		moment, err := strconv.Atoi(m[4])
		if err != nil {
			t.Fatal(err)
		}
		a := act{m[2], m[3], moment}
		switch m[1] {
		case "do":
			p.acts = append(p.acts, a)
		case "unsafe":
			p.unsafe[a] = true
		default:
			p.sayable = append(p.sayable, a)
		}
	}
	slices.SortFunc(p.acts, func(a, b act) int { return a.moment - b.moment })
	slices.SortFunc(p.sayable, func(a, b act) int { return strings.Compare(fmt.Sprint(a), fmt.Sprint(b)) })
	return p
}

// sentence is the step that does an act.
func (s toSolve) sentence(a act) string {
	jets := ""
	for _, e := range s.energies {
		jets += fmt.Sprintf(" [](hazard:jet-%s)", e)
	}
	switch a.verb {
	case "loosen", "tighten":
		return fmt.Sprintf("[x](%s:bolt-%s)", a.verb, a.on) + jets
	case "remove", "refit":
		return fmt.Sprintf("[x](%s:%s)", a.verb, a.on) + jets
	case "prove":
		return fmt.Sprintf("[x](prove:%s) [](hold:zero-%s)", a.on, a.on)
	case "pause":
		return "Stop. [](pause:)"
	}
	return fmt.Sprintf("[x](%s:%s)", a.verb, a.on)
}

func (s toSolve) procedure(acts []act) string {
	var b strings.Builder
	b.WriteString("---\ntitle: Job\nfor: rig\n---\n\n## Work\n\n")
	for i, a := range acts {
		fmt.Fprintf(&b, "%d. %s\n", i+1, s.sentence(a))
	}
	return b.String()
}

// files are the manual of the machine without its procedures.
func (s toSolve) files() map[string]string {
	var holds, hazards strings.Builder
	for _, e := range s.energies {
		fmt.Fprintf(&holds, "zero-%s: { name: zero, kind: measure, what: gauge, limit: at most 0.1 bar, of: %s }\n", e, e)
		fmt.Fprintf(&hazards, "jet-%s: { name: jet, nature: a, harm: death, consequence: b, avoid: [c], of: %s }\n", e, e)
	}
	return map[string]string{
		"shop.yaml": "title: Shop\n", "machines/rig.yaml": s.yaml,
		"register/holds.yaml": holds.String(), "register/hazards.yaml": hazards.String(),
		"register/tools.yaml": "stand: { name: stand, kind: aid }\n",
	}
}

// solve asks the npm package clingo-wasm 0.5.0, an unrelated solver of answer
// sets, for a plan on each machine.
func solve(t *testing.T, machines []toSolve) [][]string {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, "clingo-wasm"))
	needed.Judge(t, err == nil, "clingo-wasm")
	acts, err := os.ReadFile(filepath.Join("testdata", "acts.lp"))
	if err != nil {
		t.Fatal(err)
	}
	asked, err := json.Marshal(map[string]any{"acts": string(acts), "machines": machines})
	if err != nil {
		t.Fatal(err)
	}
	name, answer := filepath.Join(t.TempDir(), "machines.json"), filepath.Join(t.TempDir(), "plans.json")
	if err := os.WriteFile(name, asked, 0o600); err != nil {
		t.Fatal(err)
	}
	if said, err := exec.Command("node", filepath.Join("testdata", "plans.cjs"), folder, name, answer).CombinedOutput(); err != nil {
		t.Fatalf("clingo did not run: %v\n%s", err, said)
	}
	var plans [][]string
	data, err := os.ReadFile(answer)
	if err != nil || json.Unmarshal(data, &plans) != nil || len(plans) != len(machines) {
		t.Fatalf("clingo answered %d of %d machines: %v", len(plans), len(machines), err)
	}
	return plans
}

// tried is one procedure: the plan as far as a moment, then one more act, and
// whether that act is unsafe. The whole plan has none more.
type tried struct {
	acts   []act
	unsafe bool
}

// tries are the whole plan, and some of what could be said at its moments: as
// many unsafe acts as safe ones.
func (p plan) tries(r *rand.Rand, each int) []tried {
	out := []tried{{acts: p.acts}}
	left := map[bool]int{true: each, false: each}
	for _, i := range r.Perm(len(p.sayable)) {
		a := p.sayable[i]
		if a.moment > len(p.acts) || left[p.unsafe[a]] == 0 {
			continue
		}
		left[p.unsafe[a]]--
		out = append(out, tried{append(slices.Clone(p.acts[:a.moment]), a), p.unsafe[a]})
	}
	return out
}

// TestTheSolverAgrees: the table of acts stands once more as a planning problem
// in testdata/acts.lp. On every machine each plan that the solver finds walks
// clean, and of every act at every moment of it the walk says what the solver
// says.
func TestTheSolverAgrees(t *testing.T) {
	count, each := *solved, 12
	r := rand.New(rand.NewPCG(1910, *solverSeed))
	machines := make([]toSolve, count)
	for i := range machines {
		machines[i] = drawToSolve(r)
	}
	planned, judged, unsafe := 0, 0, 0
	for i, atoms := range solve(t, machines) {
		if atoms == nil {
			continue
		}
		planned++
		all := planOf(t, atoms).tries(r, each)
		machines[i].judge(t, all)
		judged += len(all)
		for _, x := range all {
			if x.unsafe {
				unsafe++
			}
		}
	}
	t.Logf("%d plans, %d acts judged, %d of them unsafe", planned, judged, unsafe)
	if *solverSeed != firstMachines {
		return // how often a draw shows something is asked where the draws are the same each time
	}
	if planned < count*9/10 || unsafe < judged/3 {
		t.Errorf("of %d machines %d have a plan; of %d acts %d are unsafe", count, planned, judged, unsafe)
	}
}

// judge walks what was tried and compares: no finding before the last act, one
// at the last act where it is unsafe, none at the end of a whole plan.
func (s toSolve) judge(t *testing.T, all []tried) {
	t.Helper()
	files := s.files()
	for i, x := range all {
		files[fmt.Sprintf("procedures/t%03d.md", i)] = s.procedure(x.acts)
	}
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%s: %s\n%s", found[0].At.Path(), found[0].Message, show(s.files()))
	}
	res := walk.All(m)
	for i, p := range m.Procedures {
		x := all[i]
		last := p.Phases[0].Steps[len(x.acts)-1]
		var told []string
		for _, f := range res.Of(p).Findings {
			if i > 0 && (strings.HasPrefix(f.Code, "left-") || f.Code == "state-mismatch") || f.Level != finding.Error {
				continue // a plan that breaks off leaves things as they are
			}
			if f.At.Start < last.At.Start {
				t.Errorf("told before the act in question: %s: %s\n%s%s", f.Code, f.Message, s.yaml, s.procedure(x.acts))
				return
			}
			told = append(told, f.Code+": "+f.Message)
		}
		if (len(told) > 0) != x.unsafe {
			t.Errorf("unsafe for the solver: %t; the walk: %q\n%s%s", x.unsafe, told, s.yaml, s.procedure(x.acts))
			return
		}
	}
}
