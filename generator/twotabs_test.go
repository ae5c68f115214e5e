package generator_test

import (
	"context"
	"fmt"
	"net/http/httptest"
	"path/filepath"
	"sync"
	"testing"

	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"baybinder/generator/command/browse"
)

// blind makes a page hear of other tabs only when it is told to: what they
// write is kept from it, and what it reads from the store is as it was when the
// page became blind. So are two tabs that write in the same instant: neither
// can know of the other's mark.
const blind = `{
	const real = Storage.prototype.getItem, heard = [];
	let old = null;
	const add = window.addEventListener;
	window.addEventListener = (kind, f, o) => add.call(window, kind, kind === 'storage' ? (e) => (old ? heard.push(() => f(e)) : f(e)) : f, o);
	Storage.prototype.getItem = function (key) { return old ? (key in old ? old[key] : null) : real.call(this, key); };
	window.shut = () => { old = { ...localStorage }; };
	window.arrived = (n) => new Promise((done) => { const look = () => heard.length >= n ? done(0) : add.call(window, 'storage', look, { once: true }); look(); });
	window.opened = () => { old = null; for (const f of heard.splice(0)) f(); };
}`

// bothTabs opens a page in two tabs of one browser.
func bothTabs(t *testing.T, address string) (a, b context.Context) {
	t.Helper()
	a, _ = browser(t)
	b, done := chromedp.NewContext(a)
	t.Cleanup(done)
	must(t, chromedp.Do(b))
	for _, tab := range []context.Context{a, b} {
		_, err := chromedp.Call(tab, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: blind})
		must(t, err)
		bayPage(t, tab, address)
	}
	return a, b
}

// atOnce runs an expression in each of two tabs at the same time.
func atOnce(t *testing.T, a, b context.Context, inA, inB string) {
	t.Helper()
	var both sync.WaitGroup
	both.Go(func() { js[any](t, a, inA) })
	both.Go(func() { js[any](t, b, inB) })
	both.Wait()
}

// eachPlace are the demo's site opened from its folder, and served.
func eachPlace(t *testing.T, f func(t *testing.T, at string)) {
	t.Helper()
	site := demoSite(t)
	server := httptest.NewServer(browse.Handler(site))
	t.Cleanup(server.Close)
	t.Run("folder", func(t *testing.T) { f(t, "file://"+filepath.ToSlash(site)) })
	t.Run("served", func(t *testing.T) { f(t, server.URL) })
}

// TestTwoTabsInTheSameInstant: two tabs of one job mark in the same instant,
// neither knowing of the other's mark. Nothing is lost: not a tick, not a
// reading, not one that was taken back, in either tab or in the store.
func TestTwoTabsInTheSameInstant(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		a, b := bothTabs(t, at+"/procedures/isolate-tug-traction.html?unit=112")
		js[any](t, a, `tick('1.1'); tick('1.2'); 0`)
		js[any](t, b, `until(() => done() === 2)`)
		for _, tab := range []context.Context{a, b} {
			js[any](t, tab, `shut(); 0`)
		}
		js[any](t, a, `tick('1.3'); tick('1.4'); baybinder.page.setStep(baybinder.page.steps[0], '', {}); 0`)
		js[any](t, b, `tick('2.1'); tick('2.2'); var f = step('4.3').querySelectorAll('.reading'); type(f[0], '0.4'); 0`)
		js[any](t, a, `arrived(3).then(opened)`)
		js[any](t, b, `arrived(3).then(opened)`)
		const all = `baybinder.page.steps.filter((s) => s.state === 'done').map((s) => s.number).join(' ') + ' ' + step('4.3').querySelector('.reading').value`
		for name, tab := range map[string]context.Context{"first": a, "second": b} {
			js[any](t, tab, `until(() => done() === 5 && step('4.3').querySelector('.reading').value)`)
			if got := js[string](t, tab, all); got != "1.2 1.3 1.4 2.1 2.2 0.4" {
				t.Errorf("the %s tab has %s", name, got)
			}
		}
		bayPage(t, a, at+"/procedures/isolate-tug-traction.html?unit=112")
		is(t, a, all, "1.2 1.3 1.4 2.1 2.2 0.4")
	})
}

// TestTwoTabsBeginInTheSameInstant: two tabs in which nothing is marked yet
// begin their job in the same instant. It is one job, and has both marks.
func TestTwoTabsBeginInTheSameInstant(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		a, b := bothTabs(t, at+"/procedures/isolate-tug-traction.html?unit=112")
		for _, tab := range []context.Context{a, b} {
			js[any](t, tab, `shut(); Date.now = () => `+fixedNow+`; 0`)
		}
		js[any](t, a, `tick('1.1'); 0`)
		js[any](t, b, `tick('1.2'); 0`)
		js[any](t, a, `arrived(1).then(opened)`)
		js[any](t, b, `arrived(1).then(opened)`)
		for _, tab := range []context.Context{a, b} {
			js[any](t, tab, `until(() => done() === 2)`)
			js[any](t, tab, `new Promise((done) => { const look = () => (kept() === 1 ? done(0) : addEventListener('storage', look, { once: true })); look(); })`)
		}
		js[any](t, b, `tick('1.3'); 0`)
		js[any](t, a, `until(() => done() === 3)`)
		is(t, a, `kept()`, 1)
	})
}

// fixedNow is a moment for both tabs, later than both were opened: the machine
// may be slow between them.
const fixedNow = `1990000000000`

// TestTicksRace ticks in two tabs at the same time, as fast as they can, with
// nothing in between: each tick of both is in both.
func TestTicksRace(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		a, b := bothTabs(t, at+"/procedures/replace-contactor-panel.html?unit=112")
		js[any](t, a, `tick(baybinder.page.steps.find((s) => s.applies).number); 0`)
		js[any](t, b, `until(() => done() === 1)`)
		// Each tab has its half of all steps: which are still to be done, the other may have changed already.
		const every = `(async () => { for (const s of baybinder.page.steps.filter((s) => s.applies).filter((_, i) => i %% 2 === %d)) {
			if (s.state !== 'done') tick(s.number);
			await new Promise((done) => { const c = new MessageChannel(); c.port1.onmessage = done; c.port2.postMessage(0); });
		} })()`
		n := js[int](t, a, `baybinder.page.steps.filter((s) => s.applies && !s.waiting).length`)
		if n < 30 {
			t.Fatalf("only %d steps", n)
		}
		atOnce(t, a, b, fmt.Sprintf(every, 0), fmt.Sprintf(every, 1))
		for _, tab := range []context.Context{a, b} {
			js[any](t, tab, `until(() => baybinder.page.steps.every((s) => !s.applies || s.waiting || s.state === 'done'))`)
		}
		is(t, a, `kept()`, 1)
	})
}
