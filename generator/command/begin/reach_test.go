package begin

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/graph/simple"
	"gonum.org/v1/gonum/graph/topo"
	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// In a shop whose registers have what it takes, the procedure is right as it is
// written, even where it is issued; and every part that is in the way, on any
// unit, comes off in its turn.
func TestReachAnyPartOfAnyMachine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		files := drawShop(t)
		if rapid.Bool().Draw(t, "Spanish") {
			files["shop.yaml"] += "language: es\n"
		}
		before, _ := bind.Manual(source.FromText(files))
		machine := before.Machines[0]
		part := rapid.SampledFrom(machine.Parts).Draw(t, "to")
		if !anyUnit(machine, conditionOf(part.OnlyWith)) {
			t.Skip("no unit has it")
		}
		folder := write(t, files)
		defer os.RemoveAll(folder)
		n := New{Manual: folder, ID: "to-it", Machine: machine.ID, Part: part.ID}
		r, err := Reach(n)
		if err != nil {
			t.Fatal(err)
		}
		text := read(t, folder, r.Path)
		if len(r.Missing) > 0 {
			t.Fatalf("missing: %q\n%s", r.Missing, text)
		}
		files[r.Path] = issued(worked(text))
		m, found := everything(files)
		for _, f := range found {
			line, _ := f.At.LineCol()
			t.Fatalf("%s:%d: %s [%s]\n%s\n%s", f.At.Path(), line, f.Message, f.Code, text, files["machines/rig.yaml"])
		}
		wantWayFree(t, m.Procedures[0], m.Machines[0], part.ID)
	})
}

// worked is a procedure whose blanks somebody wrote over.
func worked(text string) string {
	return strings.NewReplacer("Say here what is done", "Change the seal", " Say here what shows it.", "",
		"Diga aquí qué se hace", "Cambie la junta", " Diga aquí qué lo muestra.", "").Replace(text)
}

// everything is a manual and all that is found in it.
func everything(files map[string]string) (*model.Manual, []finding.Finding) {
	m, found := bind.Manual(source.FromText(files))
	found = slices.Concat(found, walk.All(m).Findings(m), check.Run(&check.Context{Manual: m, Today: days[0]}))
	return m, finding.Sort(found)
}

// issued is the text of a procedure without its line status:.
func issued(text string) string {
	before, after, is := strings.Cut(text, "\nstatus: draft")
	if !is {
		panic("it is no draft")
	}
	_, after, _ = strings.Cut(after, "\n")
	return before + "\n" + after
}

// wantWayFree goes through the steps in every world that has the part: what is
// over it there, directly or through others, has come off, and nothing came off
// before what it is under.
func wantWayFree(t *rapid.T, p *model.Procedure, machine *model.Machine, id string) {
	to := machine.Find(id).(*model.Part)
	for _, options := range worlds(machine) {
		if !conditionOf(to.OnlyWith).hold(options) {
			continue
		}
		off := map[*model.Part]bool{}
		for _, s := range p.Steps {
			for _, l := range s.Links {
				part, is := l.To.(*model.Part)
				if !is || l.Kind.Act != model.Remove || !applies(s, options) || !conditionOf(part.OnlyWith).hold(options) {
					continue
				}
				if inWay := over(part, options); !subset(inWay, off) {
					t.Fatalf("with %v the %s comes off before what it is under", options, part.ID)
				}
				off[part] = true
			}
		}
		if inWay := over(to, options); !subset(inWay, off) {
			t.Fatalf("with %v something of %v is in the way of %s\n%s", options, model.IDs(inWay), id, p.File.Text)
		}
	}
}

// over is what a part is directly or indirectly under on a unit.
func over(p *model.Part, options []string) []*model.Part {
	var out []*model.Part
	for _, u := range p.Under {
		if conditionOf(u.To.OnlyWith).hold(options) {
			out = append(append(out, u.To), over(u.To, options)...)
		}
	}
	return out
}

func subset(list []*model.Part, of map[*model.Part]bool) bool {
	return !slices.ContainsFunc(list, func(p *model.Part) bool { return !of[p] })
}

func applies(s *model.Step, options []string) bool {
	for _, l := range slices.Concat(s.Links, leadLinks(s)) {
		if l.Is("when") && slices.Contains(options, l.ID) == l.Not {
			return false
		}
	}
	return true
}

func leadLinks(s *model.Step) []*model.Link {
	if s.Phase.Lead == nil {
		return nil
	}
	return s.Phase.Lead.Links
}

// worlds are the sets of options that units have.
func worlds(m *model.Machine) [][]string {
	var out [][]string
	if len(m.Units) > 0 {
		for _, u := range m.Units {
			out = append(out, u.Options)
		}
		return out
	}
	for bits := range 1 << len(m.Options) {
		var options []string
		for i, o := range m.Options {
			if bits&(1<<i) != 0 {
				options = append(options, o.Key)
			}
		}
		if !slices.ContainsFunc(m.OnlyOneOf, func(group []string) bool { return shared(group, options) > 1 }) {
			out = append(out, options)
		}
	}
	return out
}

// The order of the strip is a topological order, as a graph library sees it:
// the same parts, nothing before what it is under, of those that are free the
// first in the file; and where there is no order, there is none here either.
func TestStripOrderIsTopological(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		machine, g := drawGraph(t)
		to := int64(rapid.IntRange(0, len(machine.Parts)-1).Draw(t, "to"))
		above := simple.NewDirectedGraph()
		for n := range g.Nodes().Len() {
			if id := int64(n); topo.PathExistsIn(g, g.Node(id), g.Node(to)) {
				above.AddNode(simple.Node(id))
			}
		}
		for e := range edges(g) {
			if above.Node(e[0]) != nil && above.Node(e[1]) != nil {
				above.SetEdge(simple.Edge{F: simple.Node(e[0]), T: simple.Node(e[1])})
			}
		}
		_, unorderable := topo.Sort(above)
		w, err := findWay(machine, machine.Parts[to])
		if (err != nil) != (unorderable != nil) {
			t.Fatalf("it says %v, and the library %v", err, unorderable)
		}
		if err != nil {
			return
		}
		for _, p := range w.off {
			if next := firstFree(above); machine.Parts[next] != p {
				t.Fatalf("%s comes off where it is the turn of %s", p.ID, machine.Parts[next].ID)
			}
			above.RemoveNode(int64(slices.Index(machine.Parts, p)))
		}
		if above.Nodes().Len() != 1 || above.Node(to) == nil {
			t.Fatalf("%d parts are left, and it should be the one that is reached", above.Nodes().Len())
		}
	})
}

// firstFree is the lowest node with nothing over it.
func firstFree(g *simple.DirectedGraph) int64 {
	best := int64(-1)
	for nodes := g.Nodes(); nodes.Next(); {
		if id := nodes.Node().ID(); g.To(id).Len() == 0 && (best < 0 || id < best) {
			best = id
		}
	}
	return best
}

func edges(g *simple.DirectedGraph) func(yield func([2]int64) bool) {
	return func(yield func([2]int64) bool) {
		for it := g.Edges(); it.Next(); {
			if !yield([2]int64{it.Edge().From().ID(), it.Edge().To().ID()}) {
				return
			}
		}
	}
}

// drawGraph is a machine of parts that are under each other anyhow, in rings
// too, and the same as a graph: from what is over to what is under.
func drawGraph(t *rapid.T) (*model.Machine, *simple.DirectedGraph) {
	m, g := &model.Machine{}, simple.NewDirectedGraph()
	n := rapid.IntRange(1, 8).Draw(t, "parts")
	for i := range n {
		m.Parts = append(m.Parts, &model.Part{Thing: model.Thing{Entry: model.Entry{ID: fmt.Sprintf("pod-%d", i)}}})
		g.AddNode(simple.Node(i))
	}
	for range rapid.IntRange(0, 2*n).Draw(t, "edges") {
		from, to := rapid.IntRange(0, n-1).Draw(t, "over"), rapid.IntRange(0, n-1).Draw(t, "under")
		if from == to || g.HasEdgeFromTo(int64(from), int64(to)) {
			continue
		}
		g.SetEdge(simple.Edge{F: simple.Node(from), T: simple.Node(to)})
		m.Parts[to].Under = append(m.Parts[to].Under, model.Ref[model.Part]{To: m.Parts[from]})
		m.Parts[from].Over = append(m.Parts[from].Over, m.Parts[to])
	}
	return m, g
}

// What the registers lack is said, and makes no procedure that seems right.
func TestReachTellsWhatIsMissing(t *testing.T) {
	for name, c := range map[string]struct{ file, without, with, want string }{
		"a measurement":             {"register/holds.yaml", "proved-on: tester, ", "", "kind measure with of: mains"},
		"a limit that is safe":      {"register/holds.yaml", "at most 5 V dc", "at most 90 V dc", "kind measure with of: mains"},
		"a measurement of dc":       {"register/holds.yaml", "at most 5 V dc", "at most 5 V ac", "kind measure with of: mains"},
		"a wait that is long":       {"register/holds.yaml", "for: 10 min", "for: 10 s", "a wait of mains"},
		"a hazard":                  {"register/hazards.yaml", "of: mains, ", "", "a hazard with of: mains"},
		"a hazard that says it all": {"register/hazards.yaml", "nature: It kills., ", "", "a hazard with of: mains"},
		"a socket":                  {"register/tools.yaml", "fits: [13 mm]", "fits: [14 mm]", "fits the bolt"},
		"a wrench":                  {"register/tools.yaml", "range: 20 to 100 N·m", "range: 30 to 200 N·m", "torque wrench for the 22 N·m"},
		"an angle gauge":            {"register/tools.yaml", "kind: angle-gauge", "kind: aid", "angle-gauge for the nut"},
		"lifting gear":              {"register/tools.yaml", "kind: lifting", "kind: aid", "lifting gear"},
		"an amount":                 {"machines/rig.yaml", ", capacity: 4 L", "", "how much oil"},
		"a name that is no verb":    {"machines/rig.yaml", "name: lid,", "name: the suitable lid,", "can be read in two ways"},
	} {
		t.Run(name, func(t *testing.T) {
			files := fullShop()
			if !strings.Contains(files[c.file], c.without) {
				t.Fatalf("%s does not hold %q", c.file, c.without)
			}
			folder := write(t, files)
			n := New{Manual: folder, ID: "all-there", Machine: "rig", Part: "core"}
			if r, err := Reach(n); err != nil || len(r.Missing) > 0 {
				t.Fatalf("with everything there: %v, %v", r, err)
			}
			files[c.file] = strings.ReplaceAll(files[c.file], c.without, c.with)
			n.Manual, n.ID = write(t, files), "less"
			r, err := Reach(n)
			if err != nil {
				t.Fatal(err)
			}
			text := read(t, n.Manual, r.Path)
			if len(r.Missing) == 0 || !strings.Contains(fmt.Sprint(r.Missing), c.want) || !strings.Contains(text, "# - "+r.Missing[0].String()) {
				t.Errorf("it misses %q, and it should be %q\n%s", r.Missing, c.want, text)
			}
			if !strings.Contains(text, "\nstatus: draft") {
				t.Errorf("it is no draft:\n%s", text)
			}
		})
	}
}

// What a random machine seldom has is right too.
func TestReachOnSeldomMachines(t *testing.T) {
	chain := "parts:\n  core: { under: [pod-11] }\n  pod-0: { held-by: { bolt: 1 } }\n"
	for i := 1; i < 12; i++ {
		chain += fmt.Sprintf("  pod-%d: { under: [pod-%d], held-by: { bolt: 1 } }\n", i, i-1)
	}
	bolt := "fasteners: { bolt: { across-flats: 13 mm, torque: 22 N·m } }\n"
	for name, c := range map[string]struct{ rig, tools, want string }{
		"more than nine steps": {chain + bolt, "", "\n12. [Take the pod 11 off](remove:pod-11). It is held by 1 × [bolt](fastener:bolt). Use the [13 mm socket](tool:socket).\n\n    [When"},
		"a point on units that have none of its energies": {
			"options: { a: a, b: b }\npoints: { tap: { lock: yes } }\nenergies:\n  x: { kind: pressure, points: [tap], only-with: a }\n" +
				"  y: { kind: pressure, points: [tap], only-with: b }\nparts: { core: { prove-dead: [x, y] } }\n", "", "(restore:tap)",
		},
		"a fluid of lines on different units": {
			"options: { a: a }\nparts:\n  core: { under: [pipe-a, pipe-b] }\n  pipe-a: { kind: line, carries: oil, only-with: a }\n" +
				"  pipe-b: { kind: line, carries: oil }\nfluids: { oil: { bleed: yes } }\n", "", "[Fill up the oil](fill:oil)",
		},
		"an adapter before a socket": {
			"parts:\n  core: { under: [lid] }\n  lid: { held-by: { bolt: 1 } }\n" + bolt,
			"crow: { name: crow-foot, kind: socket, fits: [13 mm], adds: 400 mm }\nplain: { name: plain, kind: spanner, fits: [13 mm] }\n" +
				"set: { name: set, kind: torque-wrench, range: 20 to 100 N·m, length: 400 mm }\n", "Use the [plain](tool:plain)",
		},
		"an adapter alone, behind which the wrench is set lower": {
			"parts:\n  core: { under: [lid] }\n  lid: { held-by: { bolt: 1 } }\n" + bolt,
			"crow: { name: crow-foot, kind: socket, fits: [13 mm], adds: 400 mm }\nlow: { name: low wrench, kind: torque-wrench, range: 2 to 12 N·m, length: 400 mm }\n",
			"(tool:low)",
		},
		"a load that its prop holds, and no point": {
			"energies: { boom: { kind: gravity, points: [], stored: yes, blocked-by: [socket] } }\nparts: { core: { prove-dead: [boom] } }\n", "",
			"[Prove the boom dead](prove:boom): [push](hold:push).\n\n## Work\n\n1. Say here what is done at the [core](part:core).\n\n## Return\n\n1. [Take the 13 mm socket away](clear:socket).\n",
		},
		"nothing in the way and nothing to cut": {"parts: { core: {} }\n", "", "## Work"},
	} {
		t.Run(name, func(t *testing.T) {
			files := fullShop()
			files["machines/rig.yaml"] = "name: Rig\n" + c.rig
			if c.tools != "" {
				files["register/tools.yaml"] = c.tools + "padlock: { name: padlock, kind: lock }\ntester: { name: tester, kind: tester }\n"
			}
			files["register/hazards.yaml"], files["register/holds.yaml"] = "", ""
			if strings.Contains(c.rig, "  y:") {
				files["register/holds.yaml"] = "flat-x: { name: gauge, kind: look, of: x, what: the gauge, good: zero }\nflat-y: { name: gauge, kind: look, of: y, what: the gauge, good: zero }\n"
			}
			if strings.Contains(c.rig, "boom:") {
				files["register/holds.yaml"] = "push: { name: push, kind: check, of: boom, by: foreman }\n"
			}
			files["register/supplies.yaml"] = ""
			folder := write(t, files)
			r, err := Reach(New{Manual: folder, ID: "to-it", Machine: "rig", Part: "core"})
			if err != nil {
				t.Fatal(err)
			}
			text := read(t, folder, r.Path)
			files[r.Path] = issued(worked(text))
			_, found := everything(files)
			if len(r.Missing) > 0 || len(found) > 0 || !strings.Contains(text, c.want) {
				t.Errorf("it misses %q, %d are found, and it should hold %s:\n%s", r.Missing, len(found), c.want, text)
			}
		})
	}
}

// A guard comes off while its energy is locked and not yet proved, with its
// hazard; the proof follows behind it.
func TestAGuardComesOffBeforeTheProof(t *testing.T) {
	folder := write(t, fullShop())
	r, err := Reach(New{Manual: folder, ID: "core", Machine: "rig", Part: "core"})
	if err != nil {
		t.Fatal(err)
	}
	text := read(t, folder, r.Path)
	at := 0
	for _, step := range []string{"lock:plug", "hold:mains-wait", "## Strip", "remove:lid", "hazard:shock", "prove:mains", "mark:pipes",
		"disconnect:pipe-a", "cap:pipe-a", "disconnect:pipe-b", "## Work", "reverse:strip", "dry:oil", "fill:oil", "bleed:oil",
		"unlock:plug", "restore:mains", "hold:seat", "hold:release"} {
		i := strings.Index(text[at:], step)
		if i < 0 {
			t.Fatalf("%s is not there, or too early:\n%s", step, text)
		}
		at += i
	}
	if got := model.IDs(r.Off); !slices.Equal(got, []string{"lid", "pipe-a", "pipe-b"}) {
		t.Errorf("off are %v", got)
	}
}

func TestReachRefuses(t *testing.T) {
	files := fullShop()
	files["machines/ring.yaml"] = "name: Ring\nparts:\n  a: { under: [b] }\n  b: { under: [a] }\n  c: { only-with: x }\noptions: { x: x }\nunits: [{ serials: 1 to 2 }]\n"
	files["machines/bare.yaml"] = "name: Bare\n"
	folder := write(t, files)
	for _, c := range []struct{ machine, part, want string }{
		{"", "core", "name the machine with --for"},
		{"rig", "cores", "did you mean core?"},
		{"rig", "mains", "its parts are core, lid"},
		{"bare", "core", "it has no parts"},
		{"ring", "a", "under each other"},
		{"ring", "c", "no unit of ring has the c"},
		{"rigs", "core", "did you mean rig?"},
	} {
		_, err := Reach(New{Manual: folder, ID: "new", Machine: c.machine, Part: c.part})
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s of %q: %v, want %s", c.part, c.machine, err, c.want)
		}
	}
	if _, err := os.Stat(filepath.Join(folder, "procedures")); err == nil {
		t.Error("something was written")
	}
}

func write(t interface{ Fatal(...any) }, files map[string]string) string {
	folder, err := os.MkdirTemp("", "reach")
	if err != nil {
		t.Fatal(err)
	}
	if c, is := t.(interface{ Cleanup(func()) }); is {
		c.Cleanup(func() { os.RemoveAll(folder) })
	}
	for name, text := range files {
		full := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return folder
}

func read(t interface{ Fatal(...any) }, folder, name string) string {
	text, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}
