//go:build unix

package generator_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"baybinder/generator"
)

// BenchmarkGrowth builds manuals in which one thing grows and all else stays, and
// prints the exponent by which the processor time of the program itself grows
// with it: 1 is as much as there is more of it. What the disk takes does not count.
// Run it with
//
//	go test ./generator -run '^$' -bench Growth -benchtime 1x
func BenchmarkGrowth(b *testing.B) {
	for _, g := range growths {
		b.Run(g.what, func(b *testing.B) {
			for b.Loop() {
				g.cost(b, g.from) // what is made once is made
				small, large := g.cost(b, g.from), g.cost(b, g.to)
				b.ReportMetric(math.Log(large/small)/math.Log(float64(g.to)/float64(g.from)), "exponent")
				b.ReportMetric(large, "s")
			}
		})
	}
}

// growth is a manual with n of something.
type growth struct {
	what     string
	from, to int
	files    func(n int) map[string]string
}

// TestWorkGrowsNoFasterThanTheManual counts the pieces of memory that a build
// asks for, which no other program and no clock changes.
func TestWorkGrowsNoFasterThanTheManual(t *testing.T) {
	for _, g := range growths {
		pieces := func(n int) float64 {
			o, build := g.builder(t, n), 0
			return testing.AllocsPerRun(1, func() {
				build++
				g.build(t, o, build)
			})
		}
		n := g.from / 10
		one, two, four := pieces(n), pieces(2*n), pieces(4*n)
		most := 1.2
		if wide[g.what] {
			most = 2
		}
		if exponent := math.Log2((four - two) / (two - one)); exponent > most {
			t.Errorf("%s: the work grows with the power %.2f: %.0f pieces for %d, %.0f for %d, %.0f for %d", g.what, exponent, one, n, two, 2*n, four, 4*n)
		}
	}
}

// wide are those of which the pages themselves grow faster: the readings name all
// that performs a procedure, through others too, and each step after which parts
// are off says which.
var wide = map[string]bool{"call chain": true, "call chain, each twice": true, "parts": true}

// cost is the processor time of a build, in seconds.
func (g growth) cost(b *testing.B, n int) float64 {
	b.Helper()
	o := g.builder(b, n)
	before := processorTime(b)
	g.build(b, o, 1)
	return (processorTime(b) - before).Seconds()
}

// builder writes the manual, and says how it is built.
func (g growth) builder(t testing.TB, n int) generator.Options {
	t.Helper()
	top, files := t.TempDir(), g.files(n)
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Shop of the test\n"
	}
	for name, text := range files {
		full := filepath.Join(top, "manual", filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, []byte(text), 0o644))
	}
	return generator.Options{Manual: filepath.Join(top, "manual"), To: top, Today: demoDay}
}

// build builds into folders of its own: what stands already costs otherwise.
func (g growth) build(t testing.TB, o generator.Options, turn int) {
	t.Helper()
	o.To, o.Readings = filepath.Join(o.To, fmt.Sprint("site-", turn)), filepath.Join(o.To, fmt.Sprint("readings-", turn))
	r, err := generator.Build(o)
	must(t, err)
	if r.Stopped() {
		t.Fatalf("%s: %s: %s [%s]", g.what, r.Findings[0].At.Path(), r.Findings[0].Message, r.Findings[0].Code)
	}
}

func processorTime(b *testing.B) time.Duration {
	b.Helper()
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		b.Fatal(err)
	}
	return time.Duration(used.Utime.Nano())
}

// times is what f makes of 0 to n-1, one after another.
func times(n int, f func(i int) string) string {
	var out strings.Builder
	for i := range n {
		out.WriteString(f(i))
	}
	return out.String()
}

func aProcedure(front, body string) string {
	return "---\ntitle: A job\n" + front + "---\n" + body
}

const aRig = "name: Rig\npoints: { switch: { name: main switch, where: left side } }\nenergies: { supply: { name: supply, kind: electric, voltage: 24 V dc, points: [switch] } }\n"

var growths = []growth{
	{"steps", 2000, 16000, func(n int) map[string]string {
		return map[string]string{"procedures/a.md": aProcedure("", "## Work\n\n"+times(n, func(i int) string { return fmt.Sprintf("%d. Look at the joint. [](time:2min)\n", i+1) }))}
	}},
	{"phases", 500, 4000, func(n int) map[string]string {
		return map[string]string{"procedures/a.md": aProcedure("", times(n, func(i int) string { return fmt.Sprintf("## Work %d\n\n1. Look at the joint. [](time:2min)\n\n", i) }))}
	}},
	{"acts", 1000, 8000, func(n int) map[string]string {
		return map[string]string{
			"machines/rig.yaml": aRig,
			"procedures/a.md": aProcedure("for: rig\n", "## Work\n\n"+times(n/2, func(i int) string {
				return fmt.Sprintf("%d. [Switch it off](isolate:supply).\n%d. [Switch it on](restore:supply).\n", 2*i+1, 2*i+2)
			})),
		}
	}},
	{"links of a step", 1000, 8000, func(n int) map[string]string {
		return map[string]string{
			"procedures/b.md": aProcedure("", "## Work\n\n1. Look.\n"),
			"procedures/a.md": aProcedure("", "## Work\n\n1. Look at "+times(n, func(int) string { return "[it](see:b), " })+"and all.\n"),
		}
	}},
	{"call chain", 200, 1600, func(n int) map[string]string { return callChain(n, 1) }},
	{"call chain, each twice", 200, 1600, func(n int) map[string]string { return callChain(n, 2) }},
	{"options", 100, 800, func(n int) map[string]string {
		return map[string]string{
			"machines/rig.yaml": aRig + "options:\n" + times(n, func(i int) string { return fmt.Sprintf("  o-%d: Option %d\n", i, i) }),
			"procedures/a.md":   aProcedure("for: rig\n", "## Work\n\n"+times(n, func(i int) string { return fmt.Sprintf("%d. [With option %d](when:o-%d), look at it.\n", i+1, i, i) })),
		}
	}},
	{"takings of a hold", 500, 4000, func(n int) map[string]string {
		return map[string]string{
			"register/holds.yaml": "dry: { name: joint, kind: look, what: the joint, good: dry }\n",
			"procedures/a.md": aProcedure("holds: [dry]\n", "## Work\n\n"+times(n/2, func(i int) string {
				return fmt.Sprintf("%d. [Look at the joint](hold:dry).\n%d. [Where it is not dry](if-not:dry), wipe it.\n", 2*i+1, 2*i+2)
			})),
		}
	}},
	{"answers", 500, 4000, func(n int) map[string]string {
		return map[string]string{
			"register/holds.yaml": "seat: { name: state of the seat, kind: ask, answers: { good: clean, worn: scored } }\n",
			"procedures/a.md": aProcedure("holds: [seat]\n", "## Work\n\n"+times(n/3, func(i int) string {
				return fmt.Sprintf("%d. [Look at the seat](hold:seat).\n%d. [Where it is scored](if:seat=worn), polish it.\n%d. [Where it is clean](if:seat=good), wipe it.\n", 3*i+1, 3*i+2, 3*i+3)
			})),
		}
	}},
	{"parts", 100, 800, func(n int) map[string]string {
		return map[string]string{
			"machines/rig.yaml": aRig + "parts:\n" + times(n, func(i int) string { return fmt.Sprintf("  p-%d: { name: part %d }\n", i, i) }),
			"procedures/a.md": aProcedure("for: rig\n", "## Strip\n\n"+times(n, func(i int) string { return fmt.Sprintf("%d. [Take part %d off](remove:p-%d).\n", i+1, i, i) })+
				"\n## Refit\n\n1. [In reverse](reverse:strip).\n"),
		}
	}},
	{"entries of an order", 200, 1600, func(n int) map[string]string {
		return map[string]string{
			"machines/rig.yaml": aRig + "orders:\n  wheels: [" + strings.TrimSuffix(times(n, func(i int) string { return fmt.Sprintf("wheel %d, ", i) }), ", ") + "]\n",
			"procedures/a.md":   aProcedure("for: rig\n", "## Work\n\n1. [At each wheel](each:wheels):\n   1. Look at it.\n   2. Look again.\n"),
		}
	}},
	{"procedures, read by 20", 100, 1600, func(n int) map[string]string { return readers(20, n) }},
	{"people, of 20 procedures", 100, 1600, func(n int) map[string]string { return readers(n, 20) }},
	{"translations", 100, 1600, func(n int) map[string]string {
		files := map[string]string{"shop.yaml": "title: Shop of the test\nlanguage: en\nalso: [es]\n"}
		for i := range n {
			files[fmt.Sprintf("procedures/job-%d.md", i)] = aProcedure("", "## Work\n\n1. Look at the joint.\n")
			files[fmt.Sprintf("procedures/job-%d.es.md", i)] = "---\ntitle: Trabajo\n---\n## Trabajo\n\n1. Mire la junta.\n"
		}
		return files
	}},
	{"tools of the register", 400, 3200, func(n int) map[string]string {
		return map[string]string{
			"register/tools.yaml": times(n, func(i int) string { return fmt.Sprintf("t-%d: { name: tool %d, kind: other, kept: chest }\n", i, i) }),
			"procedures/a.md": aProcedure("tools: ["+strings.TrimSuffix(times(n, func(i int) string { return fmt.Sprintf("t-%d, ", i) }), ", ")+"]\n",
				"## Work\n\n"+times(n, func(i int) string { return fmt.Sprintf("%d. Use the [](tool:t-%d).\n", i+1, i) })),
		}
	}},
	{"revisions", 400, 3200, func(n int) map[string]string {
		files := map[string]string{"revisions.csv": "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\n"}
		for i := range n {
			files[fmt.Sprintf("procedures/job-%d.md", i)] = aProcedure("", "## Work\n\n1. Look at the joint.\n")
			files["revisions.csv"] += fmt.Sprintf("job-%d,1,2026-01-02,9-0123456789abcdef,First issue.,,,,,reread\n", i)
		}
		return files
	}},
}

// callChain are procedures of which each performs the one before it, so often. The
// first drains and fills, and takes a part off and puts it on.
func callChain(n, often int) map[string]string {
	files := map[string]string{
		"machines/rig.yaml": aRig + "parts: { lid: { name: lid } }\nfluids: { oil: { name: oil, capacity: 2 L } }\n",
		"procedures/job-0.md": aProcedure("for: rig\n", "## Work\n\n1. [Drain the oil](drain:oil).\n2. [Take the lid off](remove:lid).\n"+
			"3. [Put the lid on](refit:lid).\n4. [Fill the oil in](fill:oil).\n"),
	}
	for i := 1; i < n; i++ {
		files[fmt.Sprintf("procedures/job-%d.md", i)] = aProcedure("for: rig\n", "## Work\n\n"+
			times(often, func(k int) string { return fmt.Sprintf("%d. [First](do:job-%d).\n", k+1, i-1) }))
	}
	return files
}

// readers are people who have a plan with all procedures, and have read them.
func readers(people, procedures int) map[string]string {
	var all []string
	files := map[string]string{}
	for i := range procedures {
		all = append(all, fmt.Sprintf("job-%d", i))
		files[fmt.Sprintf("procedures/job-%d.md", i)] = aProcedure("", "## Work\n\n1. Look at the joint.\n")
	}
	files["readings/plans/all.yaml"] = "title: All\nread: [" + strings.Join(all, ", ") + "]\nwithin: 12 months\n"
	files["readings/people.csv"] = "person,name,roles,started,plans\n" + times(people, func(i int) string { return fmt.Sprintf("p-%d,P %d,,2026-01-02,all\n", i, i) })
	return files
}
