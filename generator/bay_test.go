package generator_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"

	"baybinder/generator/read/record"
)

// js runs an expression in the page and returns its value.
func js[T any](t testing.TB, ctx context.Context, expression string) T {
	t.Helper()
	v, err := chromedp.Run(ctx, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	if err != nil {
		t.Fatalf("%s: %v", expression, err)
	}
	return v
}

// resize gives the window a size in CSS pixels, and waits until the page has it: the
// browser answers before the page is laid out anew, and tells the width before the
// page's own listeners know. A frame tells them before it calls back.
func resize(t testing.TB, ctx context.Context, width, height int64) {
	t.Helper()
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(width, height)))
	js[any](t, ctx, fmt.Sprintf(`new Promise((done) => { const look = () => {
		if (innerWidth !== %d || innerHeight !== %d) return;
		removeEventListener('resize', look);
		requestAnimationFrame(() => requestAnimationFrame(() => done(0)));
	}; addEventListener('resize', look); look(); })`, width, height))
}

// bayHelpers are short words for what a technician does.
const bayHelpers = `
var step = (n) => document.querySelector('li.step[data-step="' + n + '"]');
var calm = () => { window.baybinder.page.pressedAt = -Infinity; }; // more than 700 ms go by
var tick = (n) => { calm(); step(n).querySelector(':scope > .row > .tick').click(); };
var state = (n) => step(n).querySelector(':scope > .row .state').textContent;
var press = (within, words) => [...within.querySelectorAll('button')].find((b) => b.textContent === words).click();
var type = (field, words) => { field.value = words; field.dispatchEvent(new Event('input')); };
var strip = () => document.querySelector('.job-strip summary').textContent;
var until = (is) => new Promise((done) => { const look = () => { if (is()) { o.disconnect(); done(0); } }, o = new MutationObserver(look); o.observe(document, { subtree: true, childList: true, attributes: true, characterData: true }); look(); });
`

func work(t *testing.T, ctx context.Context, address string) {
	t.Helper()
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(1280, 900), chromedp.Navigate(address)))
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](bayHelpers)))
}

func says(t *testing.T, ctx context.Context, expression, want string) {
	t.Helper()
	if got := js[string](t, ctx, expression); !strings.Contains(got, want) {
		t.Errorf("%s says %q, want %q in it", expression, got, want)
	}
}

// TestAJobAtTheBay works through a whole job on the demo, from file: the unit,
// ticks, a gap, a wait with the clock moved, a reading out of limit, a reload
// in the middle, and the record.
func TestAJobAtTheBay(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	work(t, ctx, page)
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](`type(document.getElementById('unit-serial'), '999'); press(document.querySelector('.choose'), 'Use this number')`)))
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "no unit 999")
	js[any](t, ctx, `type(document.getElementById('unit-serial'), '112'); press(document.querySelector('.choose'), 'Use this number'); 0`)
	says(t, ctx, `location.search`, "?unit=112")
	says(t, ctx, `state('4.5')`, "Not on this unit")
	says(t, ctx, `state('3.1')`, "")

	for _, n := range []string{"1.1", "1.2", "1.3", "1.4", "2.1", "2.2", "2.3", "2.4"} {
		js[any](t, ctx, `tick('`+n+`'); 0`)
	}
	says(t, ctx, `strip()`, "Done 8 of")
	says(t, ctx, `document.querySelector('.job-strip .now').textContent`, "service plug")
	js[any](t, ctx, `tick('3.1'); 0`) // 2.5 is unticked, the wait has not begun
	says(t, ctx, `state('3.1')`, "before 2.5")
	says(t, ctx, `state('3.1')`, "stop still open")
	says(t, ctx, `strip()`, "gaps: 1")
	js[any](t, ctx, `tick('3.1'); 0`)
	says(t, ctx, `document.querySelector('dialog[open]').textContent`, "Take the tick back?")
	js[any](t, ctx, `press(document.querySelector('dialog'), 'Take back'); 0`)
	js[any](t, ctx, `tick('2.5'); 0`)
	says(t, ctx, `step('3.1').querySelector('.clock').textContent`, "Not before")

	work(t, ctx, page) // the power was out
	says(t, ctx, `strip()`, "Done 9 of")
	says(t, ctx, `strip()`, "gaps: 1")
	says(t, ctx, `location.search`, "?unit=112")
	says(t, ctx, `step('3.1').querySelector('.clock').textContent`, "Not before")
	js[any](t, ctx, `{ const real = Date.now; Date.now = () => real() + 11 * 60000; bay = window.baybinder.page; bay.beat(); 0 }`)
	says(t, ctx, `step('3.1').querySelector('.clock').textContent`, "was over at")
	js[any](t, ctx, `tick('3.1'); tick('4.1'); tick('4.2'); 0`)
	if got := js[string](t, ctx, `strip()`); strings.Contains(got, "gaps: 2") {
		t.Errorf("a wait that is over counts as a gap: %s", got)
	}

	js[any](t, ctx, `var f = step('4.3').querySelectorAll('.reading'); type(f[0], '3,9'); type(f[1], '6.1'); type(f[2], '0.2'); 0`)
	says(t, ctx, `step('4.3').querySelector('.verdict').textContent`, "Out of the limit")
	if !js[bool](t, ctx, `step('4.3').querySelector('.hold').classList.contains('is-out') && getComputedStyle(step('4.3').querySelector('.hold .if-not')).borderTopWidth === '3px'`) {
		t.Error("what to do if it is not met is not opened")
	}
	if js[bool](t, ctx, `step('4.4').classList.contains('is-not-here')`) {
		t.Error("the branch of the failed hold is shut")
	}
	js[any](t, ctx, `press(step('4.3'), 'Measure again'); f.forEach((x) => type(x, '0.4')); press(step('4.3'), 'Tester proved before and after'); 0`)
	says(t, ctx, `step('4.3').querySelector('.verdict').textContent`, "Within the limit")
	says(t, ctx, `[...step('4.3').querySelectorAll('button')].map((b) => b.textContent).join()`, "This step is wrong")
	if js[bool](t, ctx, `[...step('4.3').querySelectorAll('button')].some((b) => b.textContent === 'Does not apply')`) {
		t.Error("a safety step can be skipped")
	}
	js[any](t, ctx, `press(step('1.2'), 'This step is wrong'); 0`)
	js[any](t, ctx, `document.querySelector('dialog textarea').value = 'The floor slopes there.'; press(document.querySelector('dialog'), 'Keep it'); 0`)
	says(t, ctx, `state('1.2')`, "The floor slopes there.")
	js[any](t, ctx, `type(document.getElementById('worker'), 'A.V.'); 0`)

	text := savedRecord(t, ctx)
	for _, want := range []string{`"serial": "112"`, `"value": 6.1`, `"unticked": [`, "The floor slopes there.", `"does not apply"`} {
		if (want != `"does not apply"`) != strings.Contains(text, want) {
			t.Errorf("the record: %s is wrong in\n%s", want, text)
		}
	}
	schemaTakes(t, text)

	js[any](t, ctx, `press(document.querySelector('.job-end'), 'Start again'); 0`)
	if got := js[int](t, ctx, `document.querySelectorAll('.step.is-done').length`); got == 0 {
		t.Error("start again does not ask")
	}
	js[any](t, ctx, `press(document.querySelector('dialog'), 'Start again'); 0`)
	says(t, ctx, `strip()`, "Done 0 of")
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// savedRecord presses the button that saves, and reads what was saved.
func savedRecord(t *testing.T, ctx context.Context) string {
	t.Helper()
	return savedBy(t, ctx, `press(document.querySelector('.job-end'), 'Save the record'); 0`)
}

// savedBy is the record that something in the page saves.
func savedBy(t *testing.T, ctx context.Context, how string) string {
	t.Helper()
	to := t.TempDir()
	_, err := chromedp.Call(ctx, cdpbrowser.SetDownloadBehavior, cdpbrowser.SetDownloadBehaviorParams{
		BrowserContextID: chromedp.FromContext(ctx).BrowserContextID,
		Behavior:         cdpbrowser.SetDownloadBehaviorBehaviorAllowAndName, DownloadPath: to, EventsEnabled: new(true)})
	must(t, err)
	progress := chromedp.Events(ctx, cdpbrowser.DownloadProgress)
	js[any](t, ctx, how)
	for e, err := range progress {
		must(t, err)
		if e.State == cdpbrowser.DownloadProgressStateCompleted {
			data, err := os.ReadFile(filepath.Join(to, e.GUID))
			must(t, err)
			return string(data)
		}
	}
	t.Fatal("no record was saved")
	return ""
}

// schemaTakes judges a record by the published schema with ajv 8, and shows it
// a record that it must refuse.
func schemaTakes(t *testing.T, text string) {
	t.Helper()
	npmTool(t, "ajv/package.json")
	const judge = `const Ajv=require('ajv/dist/2020').default,a=new Ajv({strict:true});require('ajv-formats').default(a);
const v=a.compile(JSON.parse(process.argv[1]));console.log(v(JSON.parse(process.argv[2]))?'good':JSON.stringify(v.errors))`
	ask := func(text string) string {
		command := exec.Command("node", "-e", judge, string(record.Schema), text)
		command.Dir = filepath.Join("..", ".ci")
		out, err := command.CombinedOutput()
		if err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		return strings.TrimSpace(string(out))
	}
	if got := ask(text); got != "good" {
		t.Errorf("the schema refuses the saved record: %s", got)
	}
	var bad map[string]any
	must(t, json.Unmarshal([]byte(text), &bad))
	delete(bad, "gaps")
	without, err := json.Marshal(bad)
	must(t, err)
	if ask(string(without)) == "good" {
		t.Error("the schema takes a record without its gaps")
	}
}

// TestBadInputAtTheBay: a damaged store, a full store, a clock set back and
// another revision are each said in words, and no tick is lost.
func TestBadInputAtTheBay(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	work(t, ctx, page)
	js[any](t, ctx, `tick('1.1'); var key = window.baybinder.page.store.key; 0`)

	js[any](t, ctx, `var put = Storage.prototype.setItem; Storage.prototype.setItem = () => { throw new DOMException('x', 'QuotaExceededError') }; tick('1.2'); 0`)
	says(t, ctx, `document.querySelector('.trouble').textContent`, "no room left")
	says(t, ctx, `strip()`, "Done 2 of")
	js[any](t, ctx, `Storage.prototype.setItem = put; tick('1.3'); 0`)
	says(t, ctx, `JSON.parse(localStorage.getItem(key)).steps['`+js[string](t, ctx, `step('1.2').id`)+`'].state`, "done")

	js[any](t, ctx, `{ const job = JSON.parse(localStorage.getItem(key)); job.revision = 'zz'; job.seen = Date.now() + 30 * 60000; localStorage.setItem(key, JSON.stringify(job)); 0 }`)
	work(t, ctx, page)
	says(t, ctx, `strip()`, "Done 3 of")
	says(t, ctx, `JSON.stringify(window.baybinder.page.job.clock)`, `"back":30`)
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "set back by 30 min")
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "revision zz")

	js[any](t, ctx, `var other = JSON.parse(localStorage.getItem(window.baybinder.page.store.key)); other.saved += 1000; delete other.steps[step('1.3').id]; other.stamps['steps/' + step('1.3').id] = other.saved;
		dispatchEvent(new StorageEvent('storage', { key: window.baybinder.page.store.key, newValue: JSON.stringify(other) })); 0`)
	says(t, ctx, `document.querySelector('.at-hand').textContent`, "another tab")
	says(t, ctx, `strip()`, "Done 2 of")

	key := js[string](t, ctx, `window.baybinder.page.store.key`)
	js[any](t, ctx, `localStorage.setItem('`+key+`', '{"version":1,"steps":'); 0`)
	work(t, ctx, page)
	says(t, ctx, `document.querySelector('.trouble').textContent`, "damaged")
	says(t, ctx, `strip()`, "Done 0 of")
	says(t, ctx, `localStorage.getItem('`+key+`:damaged')`, `"version":1`)
}

// queries are those of the trade's list that the demo has, with the page that
// must be among the first three.
var queries = []struct{ query, page string }{
	{"P1A01", "read-tug-fault-codes"}, {"u1003", "read-tug-fault-codes"},
	{"battery out", "lead-acid-battery-out-and-in"}, {"battery out", "lithium-pack-out-and-in"}, {"wheel loose", "change-drive-wheel"},
	{"hub play", "grease-steer-hubs"}, {"hitch knock", "renew-hitch-pin-and-bush"}, {"oil under tug", "change-drive-unit-oil"},
	{"press drops", "replace-ram-seal"}, {"gas bottle press", "charge-accumulator"}, {"relief", "set-relief-valve"}, {"seal leaking ram", "replace-ram-seal"},
	{"compressor will not build pressure", "replace-valve-plate"}, {"oil in air", "replace-separator"}, {"safety valve", "test-receiver"},
	{"rope stretched", "replace-carriage-ropes"}, {"catch sticks", "set-safety-catches"}, {"end of shift", "hand-over-open-job"},
	{"torque", "tighten-a-joint"}, {"count tools", "return-to-service"}, {"acid in eye", "water-lead-acid-battery"},
	{"contcator", "replace-contactor-panel"}, {"seperator", "replace-separator"}, {"replacing ropes", "replace-carriage-ropes"}, {"T-06", "replace-contactor-panel"}, {"112", "delivery-tug"},
	{"contacter", "replace-contactor-panel"}, {"contactr", "replace-contactor-panel"}, {"9 Nm", "grease-steer-hubs"}, // the only step that says it
}

func TestSearchFinds(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "search.html"))))
	for _, q := range queries {
		quoted, _ := json.Marshal(q.query)
		got := js[string](t, ctx, `window.baybinder.find('', `+string(quoted)+`, 3).then((r) => r.hits.map((h) => h.address).join(' '))`)
		if !strings.Contains(got, "/"+q.page+".html") {
			t.Errorf("%q finds %s, not %s", q.query, got, q.page)
		}
	}
	is(t, ctx, `window.baybinder.find('', 'emergency', 3).then((r) => r.hits[0].address)`, "index.html#emergency")
	is(t, ctx, `window.baybinder.find('', '112', 3).then((r) => r.hits[0].address)`, "machines/delivery-tug.html?unit=112")
	for _, nowhere := range []string{"xqzvw", "constructor", "constructor constructor"} { // every object has a constructor
		if got := js[string](t, ctx, `window.baybinder.find('', '`+nowhere+`', 3).then((r) => JSON.stringify(r.hits), String)`); got != "[]" {
			t.Errorf("%q, which is nowhere, finds %s", nowhere, got)
		}
	}
	js[any](t, ctx, `var f = document.querySelector('#search input'); f.value = 'contactor'; f.dispatchEvent(new Event('input')); new Promise((done) => new MutationObserver(() => done(0)).observe(document.querySelector('#search .hits'), { childList: true }))`)
	says(t, ctx, `document.querySelector('#search .hits').textContent`, "contactor panel")
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// TestASlipFindsThePage misspells every word of twelve titles at each place by
// one letter, left out and changed: where the word itself finds its page among
// the first three, 95 of 100 misspelt ones do too. The rest are other words, as
// "ring" for "bring", or as near to another.
func TestASlipFindsThePage(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "search.html"))))
	const run = `(async () => {
		const pages = PAGES, out = { slips: 0, found: 0, missed: [] };
		const finds = async (word, page) => (await window.baybinder.find('', word, 3)).hits.some((h) => h.address.endsWith('/' + page + '.html'));
		for (const [page, title] of Object.entries(pages)) for (const word of title.toLowerCase().split(/[^a-z]+/).filter((w) => w.length > 3)) {
			if (!await finds(word, page)) continue;
			for (let i = 0; i < word.length; i++) for (const slip of [word.slice(0, i) + word.slice(i + 1), word.slice(0, i) + (word[i] === 'k' ? 'w' : 'k') + word.slice(i + 1)]) {
				if (slip === word || slip.length < 4) continue;
				out.slips++;
				if (await finds(slip, page)) out.found++; else out.missed.push(slip + ' for ' + word);
			}
		}
		return JSON.stringify(out);
	})()`
	r, pages := demo(t), map[string]string{}
	for _, p := range r.Manual.Procedures[:12] {
		pages[p.ID] = p.Title
	}
	list, err := json.Marshal(pages)
	must(t, err)
	var got struct {
		Slips, Found int
		Missed       []string
	}
	must(t, json.Unmarshal([]byte(js[string](t, ctx, strings.Replace(run, "PAGES", string(list), 1))), &got))
	t.Logf("%d of %d slips find the page (%.1f %%)", got.Found, got.Slips, 100*float64(got.Found)/float64(got.Slips))
	if got.Found*100 < got.Slips*95 {
		t.Errorf("they are too few; missed: %q", got.Missed)
	}
	if got.Slips < 200 {
		t.Errorf("only %d slips were tried", got.Slips)
	}
}
