package generator_test

import (
	"context"
	"encoding/json"
	"net/http/httptest"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"baybinder/generator/command/browse"
)

// age makes every job of the browser's store days older.
const age = `var age = (days) => { for (const key of Object.keys(localStorage).filter((k) => /^baybinder(-job)?:/.test(k))) {
	const job = JSON.parse(localStorage.getItem(key)), by = days * 86400000;
	job.started -= by; job.saved -= by; job.seen -= by; for (const s of Object.values(job.steps)) s.at -= by;
	localStorage.setItem(key, JSON.stringify(job)); } };
	var asked = () => { const d = document.querySelector('dialog[open]'); return d ? d.querySelector('.title').textContent : ''; };
	var done = () => document.querySelectorAll('.step.is-done').length;
	var kept = () => Object.keys(localStorage).filter((k) => /^baybinder(-job)?:/.test(k)).length;
	var answer = (words) => { press(document.querySelector('dialog[open]'), words); return Promise.resolve(); };
	var named = (words) => { const f = document.getElementById('worker'); f.focus(); type(f, words); f.dispatchEvent(new Event('change')); }; 0`

// bayPage opens a page with the words of this file.
func bayPage(t *testing.T, ctx context.Context, address string) {
	t.Helper()
	work(t, ctx, address)
	js[any](t, ctx, age)
}

func is[T comparable](t *testing.T, ctx context.Context, expression string, want T) {
	t.Helper()
	if got := js[T](t, ctx, expression); got != want {
		t.Errorf("%s is %v, want %v", expression, got, want)
	}
}

// TestLastWeeksTicksAreNotTodays: a job older than a shift, or another
// person's, is asked about, and until then nothing is shown as done.
func TestLastWeeksTicksAreNotTodays(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	bayPage(t, ctx, address+"?unit=112")
	js[any](t, ctx, `localStorage.clear(); named('A. V.'); tick('1.1'); tick('1.2'); 0`)
	bayPage(t, ctx, address) // the same day: no question
	is(t, ctx, `asked()`, "")
	is(t, ctx, `done()`, 2)

	day := js[string](t, ctx, `age(7); window.baybinder.day(Date.now() - 7 * 86400000)`)
	bayPage(t, ctx, address)
	is(t, ctx, `asked()`, "Go on with A. V.'s job on unit 112 of "+day+", or begin a new one?")
	is(t, ctx, `done()`, 0)
	says(t, ctx, `strip()`, "Done 0 of")
	is(t, ctx, `getComputedStyle(document.querySelector('.resume')).display`, "block")
	js[any](t, ctx, `answer('Cancel').then(() => { tick('1.3'); return 0; })`) // nothing is marked while it is open
	is(t, ctx, `done()`, 0)
	says(t, ctx, `asked()`, "A. V.'s job on unit 112")
	is(t, ctx, `kept()`, 1)
	js[any](t, ctx, `answer('Go on with it')`)
	is(t, ctx, `done()`, 2)
	js[any](t, ctx, `tick('1.3'); 0`)
	bayPage(t, ctx, address) // it is this shift's now
	is(t, ctx, `asked() + done()`, "3")

	js[any](t, ctx, `age(1); 0`)
	bayPage(t, ctx, address)
	js[any](t, ctx, `answer('Begin a new job')`)
	is(t, ctx, `done()`, 0)
	js[any](t, ctx, `tick('1.1'); 0`)
	is(t, ctx, `kept()`, 2)
	bayPage(t, ctx, address+"?unit=112") // both are open: which one?
	says(t, ctx, `asked()`, "Go on with one of these jobs")
	is(t, ctx, `done()`, 0)
	js[any](t, ctx, `answer('Cancel').then(() => press(document.querySelector('.resume'), [...document.querySelectorAll('.resume button')][0].textContent))`)
	is(t, ctx, `done()`, 1) // the last changed comes first
	is(t, ctx, `document.querySelector('.resume').hidden`, true)

	js[any](t, ctx, `named('A. V.'); named('G. M.'); 0`) // another person
	says(t, ctx, `asked()`, "or begin a new one?")
	js[any](t, ctx, `answer('Cancel')`)
	is(t, ctx, `document.getElementById('worker').value + window.baybinder.page.job.worker`, "A. V.A. V.")
	js[any](t, ctx, `document.activeElement.blur(); named('a.v.'); 0`) // the same one
	is(t, ctx, `asked()`, "")
	js[any](t, ctx, `named('G. M.'); 0`)
	js[any](t, ctx, `answer('Begin a new job')`)
	is(t, ctx, `done() + window.baybinder.page.job.worker`, "0G. M.")
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// firstVersion is a job as the first version of the page kept it, under the
// procedure alone.
const firstVersion = `{"version":1,"shop":"SHOP","procedure":"isolate-tug-traction","revision":"REVISION","fingerprint":"","unit":{"serial":"112","options":[]},"worker":"A. V.",
	"started":STARTED,"saved":SAVED,"steps":{"s1-1":{"state":"done","at":SAVED},"s1-2":{"state":"done","at":SAVED}},"holds":{},"gaps":[],"notes":[],"clock":[],"seen":SAVED,"closed":{}}`

// TestAJobOfTheFirstVersionIsTakenOver: what stood half done under the old key
// is there, and is gone on with; a damaged one is put aside, also where only
// its depth is damaged.
func TestAJobOfTheFirstVersionIsTakenOver(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	bayPage(t, ctx, address)
	text, err := json.Marshal(firstVersion)
	must(t, err)
	put := `localStorage.clear(); var own = window.baybinder.page, old = ` + string(text) + `.replace('SHOP', own.shop).replace('REVISION', own.revision).replaceAll('SAVED', Date.now() - 60000).replace('STARTED', Date.now() - 3600000);
		var first = 'baybinder:' + own.shop + ':' + own.procedure;`
	js[any](t, ctx, put+`localStorage.setItem(first, old); 0`)
	bayPage(t, ctx, address)
	is(t, ctx, `asked() + done()`, "2")
	is(t, ctx, `window.baybinder.page.job.worker`, "A. V.")
	js[any](t, ctx, `tick('1.3'); 0`)
	bayPage(t, ctx, address)
	is(t, ctx, `asked() + done()`, "3")
	is(t, ctx, `kept()`, 1)
	js[any](t, ctx, `age(3); 0`)
	bayPage(t, ctx, address)
	says(t, ctx, `asked()`, "A. V.'s job on unit 112")
	js[any](t, ctx, `answer('Begin a new job')`)
	js[any](t, ctx, `tick('1.1'); 0`)
	is(t, ctx, `kept()`, 2)

	for _, bad := range []string{`'{"version":1,'`, `'null'`, `'[]'`, `old.replace('"s1-1":{', '"s1-1":{"state":7},"x":{')`, `old.replace('"holds":{}', '"holds":{"s1-1/x":{"values":[{}]}}')`,
		`old.replace('"gaps":[]', '"gaps":[{"step":"1.1"}]')`, `old.replace('"unit":{', '"unit":{"options":7},"x":{')`, `old.replace('"options":[]', '"options":[1]')`} {
		js[any](t, ctx, put+`localStorage.setItem(first, `+bad+`); 0`)
		bayPage(t, ctx, address)
		says(t, ctx, `document.querySelector('.trouble').textContent`, "damaged")
		is(t, ctx, `asked() + done()`, "0")
		js[any](t, ctx, `tick('1.1'); 0`)
		is(t, ctx, `done()`, 1)
		is(t, ctx, `Object.keys(localStorage).filter((k) => k.endsWith(':damaged')).length`, 1)
	}
}

// TestEachUnitHasItsJob works on two units by turns, from the folder and over
// the program's own server: neither wipes the other, and the front page lists
// both and leads to each.
func TestEachUnitHasItsJob(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	server := httptest.NewServer(browse.Handler(site))
	defer server.Close()
	ctx, _ := browser(t)
	for _, at := range []string{"file://" + filepath.ToSlash(site), server.URL} {
		address := at + "/procedures/isolate-tug-traction.html"
		bayPage(t, ctx, at+"/index.html")
		says(t, ctx, `document.getElementById('open-jobs').textContent`, "No job is")
		bayPage(t, ctx, address+"?unit=112")
		js[any](t, ctx, `tick('1.1'); 0`)
		bayPage(t, ctx, address+"?unit=117")
		is(t, ctx, `asked() + done()`, "0")
		js[any](t, ctx, `tick('1.1'); tick('1.2'); 0`)
		bayPage(t, ctx, address+"?unit=112")
		is(t, ctx, `asked() + done()`, "1")
		js[any](t, ctx, `press(document.querySelector('.unit'), 'Another unit'); 0`) // and back again
		js[any](t, ctx, `[...document.querySelectorAll('.choose button')].at(-1).click(); 0`)
		is(t, ctx, `document.querySelector('.choose') === null && done() === 1`, true)
		js[any](t, ctx, `press(document.querySelector('.unit'), 'Another unit'); type(document.getElementById('unit-serial'), '118'); press(document.querySelector('.choose'), 'Use this number'); 0`)
		js[any](t, ctx, `answer('Cancel')`)
		is(t, ctx, `document.querySelector('.choose') === null && done() === 1`, true)
		js[any](t, ctx, `press(document.querySelector('.unit'), 'Another unit'); type(document.getElementById('unit-serial'), '118'); press(document.querySelector('.choose'), 'Use this number'); 0`)
		js[any](t, ctx, `answer('Change the unit')`)
		is(t, ctx, `location.search + done()`, "?unit=1180")

		bayPage(t, ctx, at+"/index.html")
		is(t, ctx, `document.querySelectorAll('#open-jobs li').length`, 2)
		says(t, ctx, `document.querySelector('#open-jobs li').textContent`, "unit 117") // the last changed first
		must(t, chromedp.Do(ctx, chromedp.Click(`#open-jobs li:nth-child(2) a`), chromedp.WaitReady(`.job-strip`), chromedp.Evaluate[chromedp.Void](bayHelpers)))
		says(t, ctx, `location.search`, "unit=112&job=")
		says(t, ctx, `strip()`, "Done 1 of")
	}
}

// TestACalledProcedureBelongsToItsJob: ticks of a procedure that a step calls
// are that job's, and no other's; the page leads back to the step.
func TestACalledProcedureBelongsToItsJob(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "replace-contactor-panel.html")
	bayPage(t, ctx, address+"?unit=112")
	js[any](t, ctx, `localStorage.clear(); named('A. V.'); 0`)
	call := js[string](t, ctx, `var link = document.querySelector('.call a'), of = link.closest('li.step'); link.addEventListener('click', (e) => e.preventDefault()); link.click(); link.href`)
	id := js[string](t, ctx, `of.id`)
	if !strings.Contains(call, "unit=112") || !strings.Contains(call, "from=replace-contactor-panel.html~") {
		t.Fatalf("the call leads to %s", call)
	}
	bayPage(t, ctx, call)
	says(t, ctx, `document.querySelector('.called-from').textContent`, "Back to step")
	is(t, ctx, `window.baybinder.page.job.worker`, "A. V.")
	js[any](t, ctx, `tick(window.baybinder.page.steps[0].number); 0`)
	is(t, ctx, `done()`, 1)
	bayPage(t, ctx, call)
	is(t, ctx, `asked() + done()`, "1")
	back := js[string](t, ctx, `document.querySelector('.called-from a').href`)
	if !strings.Contains(back, "replace-contactor-panel.html?unit=112&job=") || !strings.HasSuffix(back, "#"+id) {
		t.Errorf("the way back is %s", back)
	}
	bayPage(t, ctx, back)
	says(t, ctx, `document.querySelector('.call').textContent`, "steps done: 1")
	bayPage(t, ctx, call)
	bayPage(t, ctx, back)
	is(t, ctx, `asked() + window.baybinder.page.job.worker`, "A. V.")

	bayPage(t, ctx, address+"?unit=113") // another job calls the same procedure
	other := js[string](t, ctx, `document.querySelector('.call a').href`)
	bayPage(t, ctx, other)
	is(t, ctx, `asked() + done()`, "0")
}

// TestTheWayBackSavesTheRecord: one press at the end of a called procedure saves
// its record, whole, and leads back to the step that called it, from the folder
// and served. A procedure for any machine has the job's unit in its record.
func TestTheWayBackSavesTheRecord(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		ctx, _ := browser(t)
		address := at + "/procedures/replace-contactor-panel.html"
		bayPage(t, ctx, address+"?unit=112")
		js[any](t, ctx, `localStorage.clear(); named('A. V.'); 0`)
		call := js[string](t, ctx, `document.querySelectorAll('.call > a')[1].href`)
		if words := js[string](t, ctx, `document.querySelectorAll('.call > a')[1].closest('.text').querySelector('p a').href`); words != call {
			t.Errorf("the words of the step lead to %s, the link beside them to %s", words, call)
		}
		bayPage(t, ctx, call)
		is(t, ctx, `document.querySelector('.before').matches('.is-ready')`, true)
		js[any](t, ctx, `for (const s of baybinder.page.steps) baybinder.page.setStep(s, 'done', {}); 0`)
		record := savedBy(t, ctx, `press(document.querySelector('.job-end'), 'Save, and back to step 5.1'); 0`)
		must(t, chromedp.Do(ctx, chromedp.WaitReady(`body:has(#bay[data-procedure="replace-contactor-panel"]) .job-strip`)))
		is(t, ctx, `baybinder.page.job.worker + location.hash`, "A. V.#s5-1")
		var got struct {
			Procedure, Worker string
			Unit              struct{ Serial string }
			Steps             []struct{ State string }
		}
		must(t, json.Unmarshal([]byte(record), &got))
		if got.Procedure != "tighten-a-joint" || got.Worker != "A. V." || got.Unit.Serial != "112" || len(got.Steps) != 15 || got.Steps[14].State != "done" {
			t.Errorf("the record is %s", record)
		}
		says(t, ctx, `document.querySelectorAll('.call')[1].textContent`, "Done ")
	})
}

// TestARecordIsGoneOnWithElsewhere saves a half-done job, takes the record to
// a browser that has never seen it, and goes on; the record written there says
// the same. What is no record of this page changes nothing.
func TestARecordIsGoneOnWithElsewhere(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	bayPage(t, ctx, address+"?unit=112")
	js[any](t, ctx, `localStorage.clear(); named('A. V.'); for (const n of ['1.1', '1.2', '1.3', '2.1']) tick(n);
		{ const f = step('4.3').querySelectorAll('.reading'); type(f[0], '6,1'); type(f[1], '3'); press(step('4.3'), 'Measure again'); type(f[1], '0.4'); } press(step('4.3'), 'Tester proved before and after');
		window.baybinder.page.change((job) => job.notes.push({ step: '1.2', id: step('1.2').id, at: Date.now(), words: 'It slopes.' })); 0`)
	const plain = `(() => { const r = window.baybinder.record(window.baybinder.page); delete r.saved; return JSON.stringify(r); })()`
	want, text := js[string](t, ctx, plain), savedRecord(t, ctx)
	quoted, err := json.Marshal(text)
	must(t, err)
	open := `{ const f = document.getElementById('open-record'), d = new DataTransfer(); d.items.add(new File([%], 'record.json')); f.files = d.files; var told = new Promise((done) => { const o = new MutationObserver(() => done(0)); for (const e of document.querySelectorAll('#bay > .live, .at-hand > .trouble[role=status]')) o.observe(e, { childList: true }); }); f.dispatchEvent(new Event('change')); } told`
	js[any](t, ctx, `localStorage.clear(); 0`)
	bayPage(t, ctx, address)
	is(t, ctx, `done()`, 0)
	for _, bad := range []string{`''`, `'{'`, `'null'`, `'{"record":1}'`, `'{"record":2}'`, string(quoted) + `.replace('isolate-tug-traction', 'isolate-press')`, string(quoted) + `.replace(/"started": "[^"]*"/, '"started": "soon"')`} {
		js[any](t, ctx, strings.Replace(open, "%", bad, 1))
		is(t, ctx, `done() + kept()`, 0)
		is(t, ctx, `document.querySelectorAll('.at-hand .trouble:not([hidden])').length`, 1)
	}
	js[any](t, ctx, strings.Replace(open, "%", string(quoted), 1))
	is(t, ctx, plain, want)
	bayPage(t, ctx, address)
	is(t, ctx, plain, want)
	js[any](t, ctx, `tick('2.2'); 0`)
	js[any](t, ctx, strings.Replace(open, "%", string(quoted), 1)) // here it is newer
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "newer state")
	is(t, ctx, `done()`, 5)
	is(t, ctx, `kept()`, 1)
}

// TestWhatIsSaidFollowsTheUnit: once the unit is chosen, what is made dead,
// where things stand and the hand-over are of that unit. The tug's file says
// which energy a unit has: 80 V only with lithium, 48 V only with lead-acid.
func TestWhatIsSaidFollowsTheUnit(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	const dead = `[...document.querySelectorAll('.before li')].filter((e) => / V dc/.test(e.textContent) && e.checkVisibility()).map((e) => e.textContent.slice(0, 4)).join()`
	const strange = `[...document.querySelectorAll('.stand li, .hand-over li, .final li, .job-strip li')].filter((e) => !e.hidden && e.textContent.includes(%s)).length`
	bayPage(t, ctx, address)
	is(t, ctx, dead, "80 V,48 V")
	both := js[int](t, ctx, strings.Replace(strange, "%s", "'48 V'", 1))
	if both == 0 {
		t.Fatal("nothing is said of the 48 V circuit: the test looks at nothing")
	}
	for unit, want := range map[string][2]string{"112": {"80 V", "48 V"}, "7": {"48 V", "80 V"}} {
		bayPage(t, ctx, address+"?unit="+unit)
		js[any](t, ctx, `for (const s of window.baybinder.page.steps) if (s.applies) window.baybinder.page.setStep(s, 'done', {}); 0`)
		is(t, ctx, dead, want[0])
		is(t, ctx, strings.Replace(strange, "%s", "'"+want[1]+"'", 1), 0)
		is(t, ctx, `[...document.querySelectorAll('details.stand:has(.how-many)')].filter((d) => Number(d.querySelector('.how-many').textContent) !== [...d.querySelectorAll('li')].filter((e) => !e.hidden && !e.matches('.none-here')).length).length`, 0)
		js[any](t, ctx, `localStorage.clear(); 0`)
	}
}

// TestTroubleIsToldWhereTheHandIs: what goes wrong far down a page is said
// within the window, and is gone when it is solved or seen.
func TestTroubleIsToldWhereTheHandIs(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	const inSight = `(() => { const e = document.querySelector('.at-hand .trouble:not([hidden])'); if (!e) return 'nothing is said'; const r = e.getBoundingClientRect();
		return r.top >= 0 && r.bottom <= innerHeight && r.height > 20 && e.contains(document.elementFromPoint(r.left + 20, r.top + 12)) ? e.textContent : 'out of sight at ' + r.top; })()`
	for _, width := range []int64{1366, 390} {
		for range 2 { // the second time with nothing kept
			bayPage(t, ctx, "file://"+filepath.Join(site, "procedures", "isolate-tug-traction.html"))
			js[any](t, ctx, `localStorage.clear(); 0`)
		}
		show(t, ctx, "", width)
		const down = `step('4.6').scrollIntoView(); new Promise((d) => requestAnimationFrame(() => requestAnimationFrame(() => d(0))))`
		js[any](t, ctx, `tick('1.1'); 0`)
		js[any](t, ctx, down)
		says(t, ctx, inSight, "Choose the unit first")
		js[any](t, ctx, `type(document.getElementById('unit-serial'), '999'); press(document.querySelector('.choose'), 'Use this number'); 0`)
		js[any](t, ctx, down)
		says(t, ctx, inSight, "no unit 999")
		js[any](t, ctx, `type(document.getElementById('unit-serial'), '112'); press(document.querySelector('.choose'), 'Use this number'); 0`)
		is(t, ctx, inSight, "nothing is said")

		js[any](t, ctx, `var put = Storage.prototype.setItem; Storage.prototype.setItem = () => { throw new DOMException('x', 'QuotaExceededError') }; tick('1.2'); 0`)
		js[any](t, ctx, down)
		says(t, ctx, inSight, "no room left")
		js[any](t, ctx, `Storage.prototype.setItem = put; tick('1.3'); 0`)
		is(t, ctx, inSight, "nothing is said")

		js[any](t, ctx, `var other = JSON.parse(localStorage.getItem(window.baybinder.page.store.key)); other.saved += 1000; other.worker = 'G. M.'; other.stamps.worker = other.saved;
			dispatchEvent(new StorageEvent('storage', { key: window.baybinder.page.store.key, newValue: JSON.stringify(other) })); 0`)
		js[any](t, ctx, down)
		says(t, ctx, inSight, "another tab")
		js[any](t, ctx, `press(document.querySelector('.at-hand'), 'Seen'); 0`)
		is(t, ctx, inSight, "nothing is said")
	}
}
