package generator_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"baybinder/generator"
	"baybinder/generator/derive/slips"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
)

// Known: SEEN, DERIVED.

func procedureOf(t *testing.T, r *generator.Result, id string) *model.Procedure {
	t.Helper()
	for _, p := range r.Manual.Procedures {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("the demo has no %s", id)
	return nil
}

// The scenario of the demo names one step that is easily forgotten: the
// earthing clip of the separator (its table of procedures, C-03).
func TestTheEarthingClipIsEasilyMissed(t *testing.T) {
	t.Parallel()
	r := demo(t)
	p := procedureOf(t, r, "replace-separator")
	for _, it := range slips.Of(p, r.Walks.Of(p)) {
		if it.Number() == "4.3" {
			if !it.Easily() || !it.Small || !it.Hidden || !it.After {
				t.Errorf("the earthing clip is not easily missed: %+v", it.Flags)
			}
			return
		}
	}
	t.Error("step 4.3 is no item")
}

// TestSignsOfASmallJob reads the signs of a job that is written for it, by
// hand, one step for each.
func TestSignsOfASmallJob(t *testing.T) {
	t.Parallel()
	r := built(t, map[string]string{
		"shop.yaml":               "title: x\n",
		"register/tools.yaml":     "spanner: { name: spanner, kind: other }\nlamp: { name: lamp, kind: other }\nstand: { name: stand, kind: other }\nwrench: { name: wrench, kind: torque-wrench, range: 5 to 40 N·m }\nsocket: { name: socket, kind: socket, fits: [10 mm] }\n",
		"register/holds.yaml":     "settle: { name: settling, kind: wait, for: 5 min }\n",
		"machines/rig.yaml":       "name: rig\nparts:\n  lid: { name: lid, held-by: { bolt: 4 } }\n  clip: { name: earthing clip, kind: wire, under: [lid] }\nfasteners: { bolt: { name: bolt, thread: M6, across-flats: 10 mm, torque: 9 N·m } }\n",
		"procedures/small-job.md": "---\ntitle: A small job\nfor: rig\ntools: [spanner, lamp, stand: 2, wrench, socket]\nholds: [settle]\n---\n\n## Strip\n\n1. [Place the stands](place:stand).\n2. [Take the lid off](remove:lid) with the [](tool:socket).\n3. [Free the clip](disconnect:clip) with the [](tool:spanner).\n\n## Refit\n\n1. [Clip the clip on](connect:clip) with the [](tool:spanner).\n2. [Wait](hold:settle).\n3. Look in with the [](tool:lamp).\n4. [Put the lid on](refit:lid); [tighten its bolts](tighten:bolt) with [](tool:socket) and [](tool:wrench).\n5. [Take the stands away](clear:stand).\n",
	})
	p := procedureOf(t, r, "small-job")
	want := map[string]slips.Flags{
		"1.1": {Repeats: true},                                              // two stands
		"1.2": {Different: true},                                            // socket between stand and spanner
		"1.3": {Small: true},                                                // a clip
		"2.1": {Small: true, Hidden: true},                                  // the lid covers it; it is the goal itself
		"2.2": {After: true, Different: true},                               // by hand between spanner and lamp
		"2.3": {After: true, Follows: true, Different: true},                // behind the wait
		"2.4": {After: true, Repeats: true, NoTrace: true, Different: true}, // four bolts, no mark
		"2.5": {After: true, Repeats: true},
	}
	for _, it := range slips.Of(p, r.Walks.Of(p)) {
		if it.Flags != want[it.Number()] {
			t.Errorf("step %s: %+v, want %+v", it.Number(), it.Flags, want[it.Number()])
		}
		delete(want, it.Number())
	}
	for n := range want {
		t.Errorf("step %s is no item", n)
	}
}

// built builds a manual of a few files.
func built(t *testing.T, files map[string]string) *generator.Result {
	t.Helper()
	folder := t.TempDir()
	for name, text := range files {
		full := filepath.Join(folder, filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, []byte(text), 0o644))
	}
	r, err := generator.Build(generator.Options{Manual: folder, To: filepath.Join(t.TempDir(), "site"), Today: demoDay})
	must(t, err)
	for _, f := range r.Findings {
		t.Logf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
	}
	return r
}

// What the links of a procedure's own steps take off, place, alter or drain,
// and what does not stand so at its end, is counted in its close-out list;
// nothing that stands open at the end is.
func TestCloseOutCountsWhatWasOpened(t *testing.T) {
	t.Parallel()
	r := demo(t)
	s := procedure.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, nil, demoDay, false)))
	counted := 0
	for _, p := range s.Shown {
		open := map[string]bool{}
		for _, x := range r.Walks.Stand(p, nil) {
			open[x.Thing.Base().ID] = true
		}
		list := s.Procedure(p).CloseOut
		has := func(id string) bool {
			return slices.ContainsFunc(list.Rows, func(row procedure.CloseRow) bool {
				_, rest, _ := strings.Cut(row.Key, ":")
				rest, _, _ = strings.Cut(rest, "#")
				return rest == id
			})
		}
		for _, st := range p.Steps {
			for _, l := range st.Links {
				switch l.Kind.Name {
				case "remove", "disconnect", "renew", "place", "alter", "drain":
				default:
					continue
				}
				counted++
				if id := l.To.Base().ID; open[id] == has(id) {
					t.Errorf("%s, step %s: %s: open at the end %v, in the close-out list %v", p.ID, st.Number, l.Address, open[id], has(id))
				}
			}
		}
	}
	if counted < 50 {
		t.Errorf("only %d acts were looked at", counted)
	}
}

// The separator's lid and its bolts, as the machine file and the procedure say
// them: eight bolts, off in 2.2, tight in the derived step that refits the lid.
func TestCloseOutOfTheSeparator(t *testing.T) {
	t.Parallel()
	r := demo(t)
	s := procedure.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, nil, demoDay, false)))
	list := s.Procedure(procedureOf(t, r, "replace-separator")).CloseOut
	var got []string
	for _, row := range list.Rows {
		if strings.Contains(row.What, "lid bolt") || row.What == "earthing clip" || row.What == "compressor isolator" {
			got = append(got, fmt.Sprint(row.What, ": ", row.State, " ", page.Unworked(row.Count), " ", row.Opened.Name, " ", row.Closed.Name, " ", row.Missed))
		}
	}
	want := []string{"earthing clip: on  2.4 4.3 true", "lid bolt at the separator lid: tight 8 2.2 4.6.2 false", "compressor isolator: locks off, live 2 1.1 5.2 false"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// TestCloseOutAtTheBay sees the lid and its bolts closed, by one press, reloads,
// and finds both lines in the record; the strip has the counts: the cap of the scavenge line is one of the
// thirteen.
func TestCloseOutAtTheBay(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "replace-separator.html")
	work(t, ctx, address)
	row := `document.querySelector('tr[data-key="fastener:lid-bolt#separator-lid"]')`
	says(t, ctx, row+`.textContent`, "not ticked yet")
	says(t, ctx, `strip()`, "easily missed: 0 of 3")
	says(t, ctx, `strip()`, "seen closed: 0 of 12")
	const lid = `document.querySelector('tr[data-key="part:separator-lid"] .tick')`
	is(t, ctx, row+`.querySelector('.tick').checkVisibility()`, false)
	says(t, ctx, lid+`.getAttribute('aria-label')`, "lid bolt")
	js[any](t, ctx, `tick('4.6.2'); calm(); `+lid+`.click(); 0`)
	says(t, ctx, `strip()`, "easily missed: 1 of 3")
	work(t, ctx, address)
	says(t, ctx, `strip()`, "seen closed: 2 of 12")
	says(t, ctx, lid+`.textContent`, "✓")
	if got := js[string](t, ctx, row+`.textContent`); strings.Contains(got, "not ticked") {
		t.Errorf("the line does not see the tick of its step: %s", got)
	}
	text := savedRecord(t, ctx)
	for _, key := range []string{"part:separator-lid", "fastener:lid-bolt#separator-lid"} {
		if !strings.Contains(text, `"key": "`+key+`"`) {
			t.Errorf("the record has no line %s of the close-out list:\n%s", key, text)
		}
	}
	schemaTakes(t, text)
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](`press(document.querySelector('.job-end'), 'Start again'); press(document.querySelector('dialog'), 'Start again')`)))
	says(t, ctx, `strip()`, "seen closed: 0 of 12")
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// A cap comes out again when its line is connected: the refit that follows from
// the strip says so where the cap is in, and the close-out list counts it. The
// pipe is capped on units with a cab alone, the lead's end is taped on all, the
// hose has no cap.
func TestACapIsTakenOutAgain(t *testing.T) {
	r := built(t, map[string]string{
		"shop.yaml":         "title: x\n",
		"machines/rig.yaml": "name: rig\noptions: { cab: Cab }\nparts:\n  pipe: { name: pipe, kind: line }\n  hose: { name: hose, kind: line }\n  lead: { name: lead, kind: wire }\n",
		"procedures/job.md": "---\ntitle: Job\nfor: rig\n---\n\n## Strip\n\n1. [Disconnect the pipe](disconnect:pipe).\n2. [With a cab](when:cab), [cap it](cap:pipe).\n3. [Disconnect the hose](disconnect:hose).\n4. [Free the lead](disconnect:lead), [tape its end](cap:lead).\n\n## Refit\n\n1. [In reverse](reverse:strip).\n",
	})
	p := procedureOf(t, r, "job")
	v := procedure.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, nil, demoDay, false))).Procedure(p)
	var derived []string
	for _, ph := range v.Phases {
		for _, d := range ph.Parts[len(ph.Parts)-1].Step.Derived {
			derived = append(derived, d.Text+": "+d.Uncap)
		}
	}
	if want := []string{
		"Connect and secure the lead: Take the insulation off its end first", "Connect the hose: ",
		"Connect the pipe: Take the cap out first (on units with Cab)",
	}; !slices.Equal(derived, want) {
		t.Errorf("the refit says %q, want %q", derived, want)
	}
	var rows []string
	for _, row := range v.CloseOut.Rows {
		rows = append(rows, strings.Join([]string{row.Key, row.What, row.State, row.When, row.Opened.Name, row.Closed.Name}, "|"))
	}
	if want := []string{
		"part:pipe|pipe|on||1.1|2.1.3", "cap:pipe|cap: pipe|taken out|on units with Cab|1.2|2.1.3",
		"part:hose|hose|on||1.3|2.1.2",
		"part:lead|lead|on||1.4|2.1.1", "cap:lead|insulation on the end: lead|taken off||1.4|2.1.1",
	}; !slices.Equal(rows, want) {
		t.Errorf("the close-out list has\n%s\nwant\n%s", strings.Join(rows, "\n"), strings.Join(want, "\n"))
	}
}
