// Package bigmanual writes manuals for benchmarks and tests: of any size from a seed, the same seed giving the same files, and a manual as it was begun.
package bigmanual

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
)

// The measure of design.md: what each procedure has, and the registers.
const (
	steps   = 30
	tools   = 500
	hazards = 200
	levels  = 4 // a call goes one level down, so calls are at most this deep
)

// Write writes a manual of n procedures below a folder. Every procedure has 30
// steps, 6 tools, 3 hazards, 2 holds and, above the lowest level, 2 calls.
func Write(folder string, n int, seed uint64) error {
	w := &writer{folder: folder, n: n, r: rand.New(rand.NewPCG(seed, 1))}
	w.file("shop.yaml", "title: A large manual, all values invented\nemergency: Call for help.\nlocks: { tool: padlock, each: person }\n")
	w.registers()
	w.file("machines/rig.yaml", machine)
	for i := range n {
		w.procedure(i)
	}
	return w.err
}

const machine = `name: Test rig
options: { cab: Cab, crane: Crane }
points: { main-switch: { name: main switch, where: left side, lock: yes } }
energies: { supply: { name: supply, kind: electric, voltage: 400 V ac, points: [main-switch], stored: yes } }
parts:
  lid: { name: lid, held-by: { lid-bolt: 4 }, guards: [supply], prove-dead: [supply] }
  pump: { name: pump, under: [lid], held-by: { pump-bolt: 4 }, prove-dead: [supply] }
fasteners:
  lid-bolt: { name: lid bolt, thread: M6, class: 8.8, across-flats: 10 mm, torque: 9 N·m }
  pump-bolt: { name: pump bolt, thread: M8, class: 8.8, across-flats: 13 mm, torque: 22 N·m }
`

type writer struct {
	folder string
	n      int
	r      *rand.Rand
	err    error
}

func (w *writer) file(name, text string) {
	if w.err != nil {
		return
	}
	full := filepath.Join(w.folder, filepath.FromSlash(name))
	if w.err = os.MkdirAll(filepath.Dir(full), 0o755); w.err == nil {
		w.err = os.WriteFile(full, []byte(text), 0o644)
	}
}

func (w *writer) registers() {
	var t, h strings.Builder
	for i := range tools {
		fmt.Fprintf(&t, "tool-%d: { name: tool number %d, kind: other, kept: \"shelf %d\" }\n", i, i, i%40)
	}
	t.WriteString("socket-10: { name: 10 mm socket, kind: socket, fits: [10 mm], kept: chest }\n")
	t.WriteString("socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm], kept: chest }\n")
	t.WriteString("wrench: { name: torque wrench, kind: torque-wrench, range: 5 to 40 N·m, kept: crib }\n")
	t.WriteString("padlock: { name: padlock, kind: lock, kept: crib }\n")
	t.WriteString("tester: { name: tester, kind: tester, kept: crib }\nproving-unit: { name: proving unit, kind: tester, kept: crib }\n")
	for i := range hazards {
		fmt.Fprintf(&h, "hazard-%d:\n  name: hazard number %d\n  nature: Something can move.\n  harm: %s\n  consequence: A hand is hurt.\n  avoid: [Keep clear., Use the guard.]\n  symbol: W024\n",
			i, i, []string{"serious-injury", "minor-injury", "damage"}[i%3])
	}
	h.WriteString("shock: { name: shock, nature: The rig is live., harm: death, consequence: It kills., avoid: [Prove it dead.], symbol: W012, of: supply }\n")
	w.file("register/tools.yaml", t.String())
	w.file("register/hazards.yaml", h.String())
	w.file("register/holds.yaml", `settle: { name: settling, kind: wait, for: 10 min, of: supply, why: It runs down. }
dead: { name: supply voltage, kind: measure, of: supply, what: between the terminals, limit: at most 5 V ac, with: tester, proved-on: proving-unit, if-not: Stop. }
`)
}

// id is the name of a procedure.
func id(i int) string { return fmt.Sprintf("job-%05d", i) }

// callees are two procedures one level below procedure i.
func (w *writer) callees(i int) []int {
	size := max(1, w.n/levels)
	level := min(i/size, levels-1)
	if level == 0 {
		return nil
	}
	low := (level - 1) * size
	return []int{low + w.r.IntN(size), low + w.r.IntN(size)}
}

func (w *writer) procedure(i int) {
	var body strings.Builder
	use := w.pick(tools, 6)
	risk := w.pick(hazards, 3)
	calls := w.callees(i)
	if len(calls) == 2 && calls[0] == calls[1] {
		calls = calls[:1]
	}
	fmt.Fprintf(&body, "---\ntitle: Job number %d on the test rig\nsummary: An invented job that fills a page.\nfor: rig\n", i)
	fmt.Fprintf(&body, "hazards: [%s, shock]\n", list("hazard-", risk))
	fmt.Fprintf(&body, "tools: [%s, socket-10, socket-13, wrench]\nholds: [settle, dead]\n---\n", list("tool-", use))
	body.WriteString("Perform this when the counter says so. It has as many words as a usual job has.\n\n")
	prepare(&body, calls)
	body.WriteString("## Make safe\n\n")
	body.WriteString("1. [Switch the rig off](isolate:supply) at the main switch. [](time:2min)\n2. [Put your lock on it](lock:supply). [](time:1min)\n")
	body.WriteString("3. [Wait 10 min](hold:settle). [](time:1min)\n4. [Prove the supply dead](prove:supply). [Measure between the terminals](hold:dead). Mind [the shock](hazard:shock). [](time:3min)\n\n## Work\n\n")
	body.WriteString("1. [Take the lid off](remove:lid) with the [](tool:socket-10). [](time:4min)\n2. [Lift the pump out](remove:pump) with the [](tool:socket-13). [](time:6min)\n")
	w.plain(&body, use, risk, steps-10-len(calls))
	body.WriteString("\n## Refit\n\n1. [Put the pump back](refit:pump); [tighten its bolts](tighten:pump-bolt) with the [](tool:socket-13) and the [](tool:wrench). [](time:6min)\n")
	body.WriteString("2. [Put the lid back](refit:lid); [tighten its bolts](tighten:lid-bolt) with the [](tool:socket-10) and the [](tool:wrench). [](time:4min)\n")
	body.WriteString("3. [Take the lock off](unlock:supply). [](time:1min)\n4. [Switch the rig on](restore:supply). [](time:1min)\n")
	w.file(fmt.Sprintf("procedures/area-%02d/%s.md", i%50, id(i)), body.String())
}

// prepare writes the calls, each a whole job that leaves the rig as it was.
func prepare(body *strings.Builder, calls []int) {
	if len(calls) == 0 {
		return
	}
	body.WriteString("## Prepare\n\n")
	for i, c := range calls {
		fmt.Fprintf(body, "%d. [Perform the job before it](do:%s). [](time:1min)\n", i+1, id(c))
	}
	body.WriteString("\n")
}

// plain writes n steps between strip and refit, which use all tools and meet
// all hazards.
func (w *writer) plain(body *strings.Builder, use, risk []int, n int) {
	for s := range n {
		switch {
		case s < len(use):
			fmt.Fprintf(body, "%d. Clean the seat number %d with the [](tool:tool-%d) and look at both edges. [](time:3min)\n", s+3, s, use[s])
		case s < len(use)+len(risk):
			fmt.Fprintf(body, "%d. Turn the shaft by hand. Mind [what moves](hazard:hazard-%d). [](time:2min)\n", s+3, risk[s-len(use)])
		default:
			fmt.Fprintf(body, "%d. Look at the joint number %d; it is dry, and **no** thread is bare. [](time:2min)\n", s+3, s)
		}
	}
}

// pick draws k different numbers below n, in order.
func (w *writer) pick(n, k int) []int {
	seen := map[int]bool{}
	var out []int
	for len(out) < k {
		if i := w.r.IntN(n); !seen[i] {
			seen[i] = true
			out = append(out, i)
		}
	}
	return out
}

func list(prefix string, numbers []int) string {
	var out []string
	for _, n := range numbers {
		out = append(out, fmt.Sprint(prefix, n))
	}
	return strings.Join(out, ", ")
}
