package walk_test

import (
	"fmt"
	"slices"
	"strings"
	"sync/atomic"
	"testing"

	"gonum.org/v1/gonum/graph/simple"
	"gonum.org/v1/gonum/graph/topo"
	"pgregory.net/rapid"

	"baybinder/generator/base/draws"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: SEEN.

// job is a procedure as a list of acts, so that single ones can be taken out.
type job struct {
	safe, strip, refit, back []string
}

func (j job) text() string {
	var b strings.Builder
	b.WriteString("---\ntitle: Job\nfor: rig\nsupplies: [new-bolt: 99, oil-can: 99 L, new-lid: 1, new-base: 1, new-hose: 1, new-pipe: 1, new-pump: 1]\n---\n")
	for _, ph := range []struct {
		name  string
		steps []string
	}{{"Safe", j.safe}, {"Strip", j.strip}, {"Refit", j.refit}, {"Back", j.back}} {
		fmt.Fprintf(&b, "\n## %s\n\n", ph.name)
		if len(ph.steps) == 0 {
			b.WriteString("1. Nothing here.\n")
		}
		for i, s := range ph.steps {
			fmt.Fprintf(&b, "%d. %s\n", i+1, s)
		}
	}
	return b.String()
}

// drawJob draws a machine and a legal job on it: made safe, stripped in a legal
// order, refitted in reverse, brought back.
func drawJob(t *rapid.T) (*randomManual, job) {
	r := &randomManual{t: t, files: map[string]string{}, stored: map[string]bool{}, legal: true}
	r.files["shop.yaml"] = "title: Shop\n"
	r.machine()
	r.spare()
	r.registers()
	var j job
	if r.asksOff {
		j.safe = append(j.safe, "[](hold:sign)")
	}
	for _, e := range r.energies {
		j.safe = append(j.safe, r.madeSafe(e)...)
	}
	if r.alike {
		j.strip = append(j.strip, "[m](mark:hoses)")
	}
	if r.loosens {
		j.strip = append(j.strip, "[l](loosen:screw)")
	}
	j.strip = append(j.strip, r.strip()...)
	j.refit = []string{"[r](reverse:strip)", "[f](fill:oil)", "[b](bleed:oil)", "[d](dry:oil)", "[](hold:leak)"}
	if r.asksOn {
		j.back = append(j.back, "[](hold:sign)")
	}
	for _, e := range r.energies {
		j.back = append(j.back, fmt.Sprintf("[u](unlock:%s)", e))
	}
	for _, e := range r.energies {
		j.back = append(j.back, fmt.Sprintf("[v](restore:%s)", e))
	}
	j.back = append(j.back, "[](hold:leak)")
	if contains(r.energies, "load") && r.blocked {
		j.back = append(j.back, "[s](clear:stand)")
	}
	return r, j
}

func (r *randomManual) madeSafe(e string) []string {
	out := []string{fmt.Sprintf("[i](isolate:%s)", e), fmt.Sprintf("[l](lock:%s)", e)}
	switch {
	case e == "load" && r.blocked:
		out = append(out, "[p](place:stand)")
	case e == "power" && r.yes("by waiting"):
		out = append(out, slices.Repeat([]string{"[](hold:wait-power)"}, 4)...) // 20 min: as long as any that is drawn
	default:
		out = append(out, fmt.Sprintf("[r](release:%s)", e))
	}
	return append(out, fmt.Sprintf("[p](prove:%s) [](hold:%s)", e, map[string]string{"power": "dead-power", "air": "zero-air", "load": "look-load"}[e]))
}

// strip draws the parts in an order in which what is over another comes off
// first.
func (r *randomManual) strip() []string {
	const warned = "[](hazard:shock) [](hazard:jet) [](hazard:crush)"
	left := append([]string{}, r.parts...)
	off := map[string]bool{}
	var out []string
	for len(left) > 0 {
		var free []string
		for _, p := range left {
			if over := r.under[p]; over == "" || off[over] {
				free = append(free, p)
			}
		}
		p := r.one(free, "next off")
		off[p] = true
		left = remove(left, p)
		out = append(out, fmt.Sprintf("[o](%s:%s) %s", []string{"remove", "renew"}[r.n(1, "off")], p, warned))
		if contains(r.lines, p) {
			out = append(out, fmt.Sprintf("[c](cap:%s)", p))
		}
		if r.odds(4, "setting") && !off["relief"] {
			off["relief"] = true
			out = append(out, "[a](alter:relief)")
		}
		if r.odds(4, "tool") && !off["gauge"] {
			off["gauge"] = true
			out = append(out, "[g](place:gauge)")
		}
	}
	return out
}

func remove(list []string, s string) []string {
	var out []string
	for _, x := range list {
		if x != s {
			out = append(out, x)
		}
	}
	return out
}

func (r *randomManual) bound(t *rapid.T, j job) *model.Manual {
	r.files["procedures/job.md"] = j.text()
	m, found := bind.Manual(source.FromText(r.files))
	readable(t, r.files, found)
	return m
}

// A legal strip, and the refit that follows from it, leave the machine as it
// was: nothing is found, nothing stands otherwise, and the derived order is a
// topological order of what lies under what, last off first on.
func TestRefitLeavesMachineAsItWas(t *testing.T) {
	draws.Check(t, 400, firstSeed, func(t *rapid.T) {
		r, j := drawJob(t)
		m := r.bound(t, j)
		res := walk.All(m)
		p := m.Procedures[0]
		found := res.Of(p).Findings
		if slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Code == "never-applies" }) {
			return // parts of no unit: there may be nothing to take back
		}
		for _, f := range found {
			t.Fatalf("%s: %s\n%s", placed(f), f.Message, show(r.files))
		}
		if s := res.Stand(p, nil); len(s) > 0 {
			t.Fatalf("%s is left %s\n%s", s[0].Label(), s[0].Word, show(r.files))
		}
		refitOrder(t, m, res.Of(p).Reversals[0].Steps)
	})
}

// refitOrder compares the derived order with a topological sort of the order
// in which parts must go on.
func refitOrder(t *rapid.T, m *model.Manual, steps []walk.Derived) {
	g := simple.NewDirectedGraph()
	ids := map[*model.Part]int64{}
	var derived []int64
	for _, d := range steps {
		p, is := d.Thing.(*model.Part)
		if !is || d.Verb != model.Refit {
			continue
		}
		ids[p] = int64(len(derived))
		derived = append(derived, ids[p])
		g.AddNode(simple.Node(ids[p]))
	}
	for p, id := range ids {
		for _, over := range p.Under {
			if to, off := ids[over.To]; off {
				g.SetEdge(simple.Edge{F: simple.Node(id), T: simple.Node(to)}) // what is under goes on first
			}
		}
	}
	sorted, err := topo.SortStabilized(g, nil)
	if err != nil {
		t.Fatal(err)
	}
	place := map[int64]int{}
	for i, id := range derived {
		place[id] = i
	}
	if len(sorted) != len(derived) {
		t.Fatalf("%d parts are refitted, %d came off", len(derived), len(sorted))
	}
	for edges := g.Edges(); edges.Next(); {
		e := edges.Edge()
		if place[e.From().ID()] > place[e.To().ID()] {
			t.Fatal("a part goes on over one that is still off")
		}
	}
	for i := 1; i < len(derived); i++ { // the derived order is one that the sort allows
		if !g.HasEdgeFromTo(derived[i-1], derived[i]) {
			g.SetEdge(simple.Edge{F: simple.Node(derived[i-1]), T: simple.Node(derived[i])})
		}
	}
	if sorted, err = topo.Sort(g); err != nil {
		t.Fatal("the derived order is no topological order")
	}
	for i, n := range sorted {
		if n.ID() != derived[i] {
			t.Fatal("the derived order is not the sorted one")
		}
	}
}

// Every single deletion, swap of neighbours and doubling of an act of a legal
// job that the reference finds unsafe is found, with at most three findings.
func TestMutationsAreFound(t *testing.T) {
	var unsafe, found atomic.Int64
	draws.Check(t, 20, firstSeed, func(t *rapid.T) {
		r, j := drawJob(t)
		r.files["procedures/job.md"] = j.text()
		bound := bind.All(source.FromText(r.files))
		readable(t, r.files, bound.Findings)
		m := bound.Manual
		p := m.Procedures[0]
		for _, mutant := range mutants(j) {
			r.files["procedures/job.md"] = mutant.job.text()
			readable(t, r.files, bound.Again(p, position.NewFile("procedures/job.md", r.files["procedures/job.md"])))
			want, _, whole := referenceWalk(m, p, map[*model.Link]bool{})
			if !whole || len(want) == 0 {
				continue
			}
			unsafe.Add(1)
			all := walk.All(m).Of(p).Findings
			if len(foundBy(all)) == 0 {
				t.Fatalf("%s is not found: %v\n%s", mutant.what, want, show(r.files))
			}
			found.Add(1)
			list := errorsOnly(all)
			if len(list) > 3 {
				for _, f := range list {
					t.Logf("%s: %s", placed(f), f.Message)
				}
				t.Fatalf("%s gives %d findings\n%s", mutant.what, len(list), show(r.files))
			}
		}
	})
	t.Logf("%d of %d unsafe mutants found", found.Load(), unsafe.Load())
}

func errorsOnly(list []finding.Finding) []finding.Finding {
	var out []finding.Finding
	for _, f := range list {
		if f.Level == finding.Error {
			out = append(out, f)
		}
	}
	return out
}

type mutant struct {
	what string
	job  job
}

func mutants(j job) []mutant {
	var out []mutant
	phases := []*[]string{&j.safe, &j.strip, &j.refit, &j.back}
	for _, ph := range phases {
		whole := *ph
		for i, s := range whole {
			change := func(what string, steps ...string) {
				*ph = append(append(append([]string{}, whole[:i]...), steps...), whole[i+1:]...)
				out = append(out, mutant{what + " " + s, j})
				*ph = whole
			}
			change("deleting")
			change("doubling", s, s)
			if i+1 < len(whole) {
				*ph = append([]string{}, whole...)
				(*ph)[i], (*ph)[i+1] = whole[i+1], s
				out = append(out, mutant{"swapping " + s + " with the next", j})
				*ph = whole
			}
		}
	}
	return out
}
