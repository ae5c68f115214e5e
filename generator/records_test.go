package generator_test

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Known: SEEN, DERIVED.

// played is a job that is clicked through on the demo's pages.
type played struct {
	procedure, unit, worker string
	start                   string            // by the clock at the bay
	before                  map[string]string // what is done before a step is ticked, in the page's script
	skip                    []string          // steps that are left out at first, and ticked at the end
	said                    map[string]string // what is wrong with a step
	reload                  string            // the page is reloaded before this step
	file                    string            // its name in content/records
}

// theReadings types values into the blanks of a step's hold.
func theReadings(step string, values ...string) string {
	list, _ := json.Marshal(values)
	return fmt.Sprintf(`{ const f = step('%s').querySelectorAll('.reading'); %s.forEach((v, i) => type(f[i], v)); }`, step, list)
}

// demoJobs are the jobs of content/records. To play them anew, on the pages as
// they are now: go test ./generator -run WholeJobs -update
var demoJobs = []played{
	{
		procedure: "isolate-tug-traction", unit: "112", worker: "G.M.", start: "2026-04-29T13:10:00+02:00", file: "tug-112-isolate-2026-04-29",
		before: map[string]string{
			"3.1":   `later(11)`,
			"4.3":   theReadings("4.3", "5.7", "3.6", "2.1") + `press(step('4.3'), 'Measure again'); later(12); ` + theReadings("4.3", "1,1", "0.7", "0.4") + `press(step('4.3'), 'Tester proved before and after')`,
			"4.4.1": `later(11)`, // a reading was too high: its branch is worked through
			"4.4.2": theReadings("4.4.2", "0.2", "0.1", "0.1") + `press(step('4.4.2'), 'Tester proved before and after')`,
		},
		said: map[string]string{
			"1.2": "The floor behind bay 3 slopes. The tug creeps there with the brake on.",
			"4.3": "19 min after the plug came out there were still 5.7 V. One of the two discharge resistors is open; the charge falls half as fast.",
		},
		reload: "2.3",
	},
	{
		procedure: "drive-off-and-stop-test", unit: "112", worker: "D.S.", start: "2026-04-30T08:05:00+02:00", file: "tug-112-stop-test-2026-04-30",
		before: map[string]string{"3.4": theReadings("3.4", "1.62")},
	},
	{
		procedure: "drive-off-and-stop-test", unit: "34", worker: "F.T.", start: "2025-08-18T14:30:00+02:00", file: "tug-34-stop-test-2025-08-18",
		before: map[string]string{"3.4": theReadings("3.4", "2.3") + `press(step('3.4'), 'Measure again'); later(25); ` + theReadings("3.4", "1.9")},
		skip:   []string{"2.4"},
	},
	{
		procedure: "drive-off-and-stop-test", unit: "112", worker: "D.S.", start: "2025-11-12T09:20:00+01:00", file: "tug-112-stop-test-2025-11-12",
		before: map[string]string{"3.4": theReadings("3.4", "1.75")},
		said:   map[string]string{"3.4": "The floor scale ends at 1.8 m. A longer stop is guessed."},
	},
}

// clockAt makes the page's clock stand at a time, however long the machine takes;
// later(n) moves it n minutes on.
const clockAt = `{ let jump = 0; Date.now = () => %d + jump;
	window.later = (n) => { jump += n * 60000; window.baybinder.page.beat(); }; }`

// setClock gives every page that is opened from now on a clock that begins at a
// time, in milliseconds since 1970.
func setClock(t *testing.T, ctx context.Context, ms int64) {
	t.Helper()
	_, err := chromedp.Call(ctx, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: fmt.Sprintf(clockAt, ms)})
	must(t, err)
}

// play clicks through a whole job and returns the record that the page saves.
func play(t *testing.T, site string, j played) string {
	t.Helper()
	ctx, complaints := browser(t)
	start, err := time.Parse(time.RFC3339, j.start)
	must(t, err)
	_, err = chromedp.Call(ctx, emulation.SetTimezoneOverride, emulation.SetTimezoneOverrideParams{TimezoneID: "Europe/Madrid"})
	must(t, err)
	setClock(t, ctx, start.UnixMilli())
	file := "file://" + filepath.Join(site, "procedures", j.procedure+".html")
	work(t, ctx, file)
	js[any](t, ctx, fmt.Sprintf(`type(document.getElementById('unit-serial'), '%s'); press(document.querySelector('.choose'), 'Use this number'); type(document.getElementById('worker'), '%s'); 0`, j.unit, j.worker))
	var numbers []string
	must(t, json.Unmarshal([]byte(js[string](t, ctx, `JSON.stringify(baybinder.page.steps.map((s) => s.number))`)), &numbers))
	for _, n := range append(numbers, j.skip...) {
		if n == j.reload && n != "" {
			setClock(t, ctx, js[int64](t, ctx, `Date.now()`)+60_000)
			work(t, ctx, file) // the power was out for a minute
		}
		if !js[bool](t, ctx, `!step('`+n+`').querySelector(':scope > .row > .tick').disabled`) {
			continue // not on this unit, or not needed
		}
		if do := j.before[n]; do != "" {
			js[any](t, ctx, do+`; 0`)
		}
		if words := j.said[n]; words != "" {
			quoted, _ := json.Marshal(words)
			js[any](t, ctx, `press(step('`+n+`'), 'This step is wrong'); document.querySelector('dialog textarea').value = `+string(quoted)+`; press(document.querySelector('dialog'), 'Keep it'); 0`)
		}
		if i := slices.Index(j.skip, n); i >= 0 {
			j.skip[i] = "" // the first time it is passed over
			j.skip = append(j.skip[:i:i], j.skip[i+1:]...)
			continue
		}
		js[any](t, ctx, `later(1); tick('`+n+`'); 0`)
	}
	text := savedRecord(t, ctx)
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
	return text
}

// TestWholeJobsAreReadBack clicks through whole jobs on the demo: the unit,
// ticks, a wait with the clock moved, a reading out of its limit, a reload in
// the middle, a step passed over, what is wrong with a step, the record. The
// saved files are put into a copy of the manual, and the program reads them.
func TestWholeJobsAreReadBack(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	from := filepath.Join(t.TempDir(), "manual")
	must(t, os.CopyFS(from, os.DirFS("../content")))
	must(t, os.RemoveAll(filepath.Join(from, "records")))
	must(t, os.MkdirAll(filepath.Join(from, "records"), 0o755))
	for _, j := range demoJobs {
		text := play(t, site, j)
		schemaTakes(t, text)
		must(t, os.WriteFile(filepath.Join(from, "records", j.file+".json"), []byte(text), 0o644))
		if *update {
			must(t, os.MkdirAll("../content/records", 0o755))
			must(t, os.WriteFile(filepath.Join("..", "content", "records", j.file+".json"), []byte(text), 0o644))
		}
	}
	to := filepath.Join(t.TempDir(), "site")
	r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
	must(t, err)
	for _, f := range r.Findings {
		t.Errorf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
	}
	if len(r.Manual.Jobs) != len(demoJobs) {
		t.Fatalf("%d jobs are read back of %d", len(r.Manual.Jobs), len(demoJobs))
	}
	isolated, stopped := jobNamed(r.Manual, demoJobs[0].file), jobNamed(r.Manual, demoJobs[2].file)
	if isolated.Unit.Serial != "112" || isolated.Worker != "G.M." || isolated.To.ID != "isolate-tug-traction" || isolated.Day().String() != "2026-04-29" || len(isolated.Clock) != 0 {
		t.Errorf("%+v", isolated)
	}
	if h := holdOf(isolated, "traction-dead"); !h.Met || *h.Values[0].Value != 1.1 || h.Values[0].Typed != "1,1" || *h.Failed[0].Values[0].Value != 5.7 || *h.High != 5 || h.Low != nil || !*h.Proved {
		t.Errorf("%+v", h)
	}
	chargeFell(t, isolated)
	if h := holdOf(isolated, "traction-wait"); !h.Met || h.Until.Sub(h.From) != 10*time.Minute {
		t.Errorf("%+v", h)
	}
	if len(isolated.Gaps) != 0 || len(isolated.Notes) != 2 {
		t.Errorf("gaps %v, notes %v", isolated.Gaps, isolated.Notes)
	}
	if len(stopped.Gaps) != 1 || stopped.Gaps[0].Step != "2.5" || strings.Join(stopped.Gaps[0].Unticked, " ") != "2.4" {
		t.Errorf("gaps %+v", stopped.Gaps)
	}
	if h := holdOf(stopped, "stop-distance"); *h.Values[0].Value != 1.9 || *h.Failed[0].Values[0].Value != 2.3 {
		t.Errorf("%+v", h)
	}
	names := strings.Fields("A.V. B.K. C.N. D.S. E.R. F.T. G.M. H.P.")
	for name, data := range pages(t, to) {
		for _, who := range names {
			if strings.Contains(string(data), who) {
				t.Errorf("%s names %s", name, who)
			}
		}
	}
}

// chargeFell holds the readings of a job against V = V0·e^(−t/RC) from when the
// plug came out: with one of the two resistors of 36 kΩ open, as the note at
// that step says, 12 mF fall from 80 V to these.
func chargeFell(t *testing.T, j *model.Job) {
	t.Helper()
	i := slices.IndexFunc(j.Steps, func(s model.JobStep) bool { return s.Number == "2.1" })
	h := holdOf(j, "traction-dead")
	for _, read := range []struct {
		at    time.Time
		value float64
	}{{h.Failed[0].At, *h.Failed[0].Values[0].Value}, {h.At, *h.Values[0].Value}} {
		left := 80 * math.Exp(-read.at.Sub(j.Steps[i].At).Seconds()/(36e3*12e-3))
		if math.Abs(read.value-left) > 0.1 {
			t.Errorf("%g V were read, and %.2f V are left", read.value, left)
		}
	}
}

func jobNamed(m *model.Manual, name string) *model.Job {
	for _, j := range m.Jobs {
		if j.Name == name {
			return j
		}
	}
	return nil
}

func holdOf(j *model.Job, id string) *model.JobHold {
	for i := range j.Holds {
		if j.Holds[i].Hold == id {
			return &j.Holds[i]
		}
	}
	return &model.JobHold{}
}

// TestDemoRecords: the demo's records are free of findings on its day and later,
// and one of a later day does not count yet.
func TestDemoRecords(t *testing.T) {
	t.Parallel()
	for day, want := range map[model.Date]int{demoDay: 4, {Year: 2026, Month: time.November, Day: 25}: 4, {Year: 2026, Month: time.April, Day: 1}: 2} {
		to := filepath.Join(t.TempDir(), "site")
		r, err := generator.Build(generator.Options{Manual: "../content", To: to, Today: day})
		must(t, err)
		for _, f := range r.Findings {
			if strings.HasPrefix(f.At.Path(), "records/") || day == demoDay {
				t.Errorf("%s: %s: %s [%s]", day, f.At.Path(), f.Message, f.Code)
			}
		}
		got := 0
		for name := range maps.Keys(pages(t, to)) {
			if strings.HasPrefix(name, "records/") && path.Ext(name) == ".html" {
				got++
			}
		}
		if got != want {
			t.Errorf("%s: %d records have a page, want %d", day, got, want)
		}
	}
}

// TestHostileRecord: whatever stands in a record, it is words on the page: no
// element, no address and no attribute comes of it, and every page still leads.
func TestHostileRecord(t *testing.T) {
	t.Parallel()
	const hostile = `</blockquote><script src=x>alert(1)</script><img src=x onerror=alert(1)> "' onclick="x" {{7*7}} ${x} <!-- javascript:alert(1) & ` + "\u202e"
	quoted, err := json.Marshal(hostile)
	must(t, err)
	word := string(quoted)
	record := `{ "record": 1, "shop": WORD, "procedure": "sweep", "title": WORD, "revision": WORD, "fingerprint": WORD,
  "unit": { "serial": WORD, "options": [WORD] }, "worker": WORD, "started": "2026-04-29T08:00:00Z", "saved": "2026-04-29T09:00:00Z",
  "steps": [{ "step": "1.1", "id": WORD, "words": WORD, "state": "does not apply", "at": "2026-04-29T08:00:00Z", "reason": WORD }],
  "holds": [
    { "step": "1.1", "hold": WORD, "kind": "measure", "met": false, "unit": WORD, "values": [{ "where": WORD, "typed": WORD, "value": 1 }, { "where": "x", "typed": "2", "value": 2 }],
      "failed": [{ "at": "2026-04-29T08:00:00Z", "values": [{ "where": WORD, "typed": WORD, "value": null }] }] },
    { "step": "1.1", "hold": WORD, "kind": "note", "met": true, "words": WORD, "answer": WORD, "signed": { "name": WORD, "at": "2026-04-29T08:00:00Z" } }],
  "gaps": [{ "step": "1.1", "at": "2026-04-29T08:00:00Z", "unticked": ["1.1"], "holds": [WORD] }],
  "notes": [{ "step": "1.1", "at": "2026-04-29T08:00:00Z", "words": WORD }], "clock": [{ "at": "2026-04-29T08:00:00Z", "back": 3 }] }`
	from, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, text := range map[string]string{
		"shop.yaml": "title: Shop\n", "procedures/sweep.md": "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep.\n",
		"records/a.json": strings.ReplaceAll(record, "WORD", word),
	} {
		must(t, os.MkdirAll(filepath.Dir(filepath.Join(from, name)), 0o755))
		must(t, os.WriteFile(filepath.Join(from, name), []byte(text), 0o644))
	}
	r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
	must(t, err)
	for _, f := range r.Findings {
		if f.Level == finding.Error && f.Code != "record-disagrees" {
			t.Errorf("%s [%s]", f.Message, f.Code)
		}
	}
	if r.Errors() > 0 { // what was typed is not the value: told, and then shown without it
		must(t, os.WriteFile(filepath.Join(from, "records", "a.json"), []byte(strings.ReplaceAll(strings.ReplaceAll(record, `"typed": WORD, "value": 1`, `"typed": "1", "value": 1`), "WORD", word)), 0o644))
		r, err = generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
		must(t, err)
	}
	site := pages(t, to)
	if r.Errors() > 0 || site["records/a.html"] == nil {
		t.Fatal("the record stops the build", r.Findings)
	}
	seen := 0
	var files []string
	for name, data := range site {
		if path.Ext(name) != ".html" {
			continue
		}
		files = append(files, filepath.Join(to, filepath.FromSlash(name)))
		seen += strings.Count(string(data), "alert(1)")
		for _, e := range elements(t, data) {
			if e.tag == "img" || e.attr["onerror"] != "" || e.attr["onclick"] != "" || strings.HasPrefix(e.attr["href"], "javascript:") || e.tag == "script" && !strings.Contains(e.attr["src"], "theme/") {
				t.Errorf("%s: %v", name, e)
			}
		}
	}
	if seen < 20 {
		t.Errorf("the words stand on the pages %d times: the test looks at nothing", seen)
	}
	for _, f := range htmlValidate(t, files) {
		t.Error(f)
	}
}
