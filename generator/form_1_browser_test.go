package generator_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"baybinder/generator"
	"baybinder/generator/command/issue"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

// openSaved gives the page a saved record's file, and waits until it has told
// what became of it.
const openSaved = `{ const f = document.getElementById('open-record'), d = new DataTransfer(); d.items.add(new File([%], 'record.json')); f.files = d.files;
	var told = new Promise((done) => { const o = new MutationObserver(() => done(0)); for (const e of document.querySelectorAll('#bay > .live, .at-hand > .trouble[role=status]')) o.observe(e, { childList: true }); });
	f.dispatchEvent(new Event('change')); } told`

// A half-done job of testdata/form-1, saved by the program whose fingerprints were
// of the first form, is gone on with on today's page: nothing of it is lost, its
// rest is done, and what is saved is read back as the same job.
func TestAHalfDoneJobOfTheFirstFormIsGoneOnWith(t *testing.T) {
	t.Parallel()
	from := filepath.Join(t.TempDir(), "manual")
	must(t, os.CopyFS(from, os.DirFS("testdata/form-1")))
	day := func(text string) model.Date {
		d, _ := model.ParseDate(text)
		return d
	}
	build := func(on string) (string, *generator.Result) {
		to := filepath.Join(t.TempDir(), "site")
		r, err := generator.Build(generator.Options{Manual: from, To: to, Today: day(on)})
		must(t, err)
		if r.Errors() > 0 {
			t.Fatal(r.Findings)
		}
		return to, r
	}
	half, err := os.ReadFile(filepath.Join(from, "records", "lid-job-half-2026-02-12.json"))
	must(t, err)
	quoted, err := json.Marshal(string(half))
	must(t, err)

	site, _ := build("2026-03-01")
	ctx, complaints := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "lid-job.html")
	bayPage(t, ctx, page)
	is(t, ctx, `done()`, 0)
	js[any](t, ctx, strings.Replace(openSaved, "%", string(quoted), 1))
	is(t, ctx, `done()`, 2)
	is(t, ctx, `window.baybinder.page.job.worker`, "First trainee")
	is(t, ctx, `JSON.stringify(window.baybinder.page.job.unit.options)`, `["cab"]`)
	is(t, ctx, `window.baybinder.page.job.notes.map((n) => n.step + n.words).join()`, "1.2The stand rocks.")
	says(t, ctx, `strip()`, "Step 1.3 · Done 2 of ")
	bayPage(t, ctx, page) // it is kept
	is(t, ctx, `done()`, 2)
	js[any](t, ctx, `tick('1.3'); tick('1.4'); tick('1.5'); 0`)
	is(t, ctx, `done()`, 5)
	text := savedRecord(t, ctx)
	schemaTakes(t, text)
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}

	must(t, os.WriteFile(filepath.Join(from, "records", "lid-job-later.json"), []byte(text), 0o644))
	_, r := build("9000-01-01")
	for _, f := range r.Findings {
		if strings.HasPrefix(f.At.Path(), "records/") {
			t.Errorf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
		}
	}
	jobs := record.Counted(r.Manual.Jobs, day("9000-01-01"))
	began, err := time.Parse(time.RFC3339, "2026-02-12T08:00:00+01:00")
	must(t, err)
	if len(r.Manual.Jobs) != 2 || len(jobs) != 1 || jobs[0].Name != "lid-job-later" || !jobs[0].Started.Equal(began) || len(jobs[0].Notes) != 1 {
		t.Errorf("%d files are %d jobs: %+v", len(r.Manual.Jobs), len(jobs), jobs)
	}
	must(t, os.Remove(filepath.Join(from, "records", "lid-job-later.json")))

	// A revision came between: what was done stays, and the page says so.
	file := filepath.Join(from, "procedures", "press", "lid-job.md")
	source, err := os.ReadFile(file)
	must(t, err)
	must(t, os.WriteFile(file, []byte(strings.Replace(string(source), "Go round", "Go round once", 1)), 0o644))
	r, err = generator.Check(generator.Options{Manual: from, Today: day("2026-03-02")})
	must(t, err)
	_, err = issueNow(r.Manual, r.Findings, issue.Order{Folder: from, Procedures: []string{"lid-job"}, Date: day("2026-03-02"), Reason: "Once.", Readers: "tell"})
	must(t, err)
	site, _ = build("2026-03-03")
	js[any](t, ctx, `localStorage.clear(); 0`)
	bayPage(t, ctx, "file://"+filepath.Join(site, "procedures", "lid-job.html"))
	js[any](t, ctx, strings.Replace(openSaved, "%", string(quoted), 1))
	is(t, ctx, `done()`, 2)
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "revision")
}
