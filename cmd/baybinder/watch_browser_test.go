package main

import (
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/chromedp/chromedp"

	"baybinder/generator/base/needed"
	"baybinder/generator/bigmanual"
)

// tab is a page in headless Chromium.
type tab struct {
	t   *testing.T
	ctx context.Context
}

// chromium is the one browser of all tests; chromiumEnds ends it.
var (
	chromiumEnds = func() {}
	chromium     = sync.OnceValues(func() (context.Context, error) {
		path, err := exec.LookPath("chromium-headless-shell")
		if err != nil {
			return nil, err
		}
		options := append(chromedp.DefaultExecAllocatorOptions[:],
			chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU,
			chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true),
			chromedp.Flag("disable-sync", true), chromedp.Flag("disable-quic", true),
			chromedp.Flag("force-gpu-mem-available-mb", "0"))
		alloc, stop := chromedp.NewExecAllocator(context.Background(), options...)
		ctx, cancel := chromedp.NewContext(alloc)
		chromiumEnds = func() { cancel(); stop() }
		return ctx, chromedp.Do(ctx)
	})
)

// openBrowser opens a window of the browser that shares nothing with others.
func openBrowser(t *testing.T) tab {
	t.Helper()
	_, err := exec.LookPath("chromium-headless-shell")
	needs(t, err == nil, "chromium-headless-shell")
	all, err := chromium()
	do(t, err)
	ctx, closed := chromedp.NewContext(all, chromedp.WithNewBrowserContext())
	t.Cleanup(closed)
	do(t, chromedp.Do(ctx))
	return tab{t, ctx}
}

// needs skips a test where a tool is missing, and fails it in CI: a judge that
// never ran proves nothing.
func needs(t *testing.T, ok bool, what string) {
	t.Helper()
	needed.Judge(t, ok, what)
}

func (b tab) open(address string, width int64) {
	b.t.Helper()
	do(b.t, chromedp.Do(b.ctx, chromedp.EmulateViewport(width, 800), chromedp.Navigate(address)))
}

// look is asked in a page when something in it has changed, once for all that
// changes in a frame, and now and then, for a change that a page tells nobody,
// such as of a field's text.
const look = `new Promise(done => {
	let asked = false, over = false;
	const look = () => {
		if (over) return; // a press moves the focus, which asks once more
		asked = false;
		let is = false;
		try { is = EXPRESSION } catch {}
		if (!is) return;
		over = true;
		changes.disconnect();
		clearInterval(times);
		for (const e of events) removeEventListener(e, soon, true);
		done(true);
	};
	const soon = () => { if (!asked) requestAnimationFrame(look); asked = true; };
	const changes = new MutationObserver(soon), times = setInterval(soon, 250);
	const events = ["scroll", "resize", "hashchange", "focus", "load", "transitionend", "animationend"];
	for (const e of events) addEventListener(e, soon, true);
	changes.observe(document, {subtree: true, childList: true, attributes: true, characterData: true});
	look();
})`

// is waits in the page until an expression is true, however long that takes.
// Where another page comes meanwhile, it waits there.
func (b tab) is(expression string) {
	b.t.Helper()
	wait := strings.Replace(look, "EXPRESSION", expression, 1)
	for {
		yes, err := chromedp.Run(b.ctx, chromedp.Evaluate[bool](wait, chromedp.EvalAwaitPromise))
		if err == nil && yes {
			return
		}
		do(b.t, b.ctx.Err())
	}
}

func (b tab) get(expression string) string {
	b.t.Helper()
	text, err := chromedp.Run(b.ctx, chromedp.Evaluate[string](expression, chromedp.EvalAwaitPromise))
	do(b.t, err)
	return text
}

func (b tab) run(script string) {
	b.t.Helper()
	do(b.t, chromedp.Do(b.ctx, chromedp.Evaluate[chromedp.Void](script)))
}

// accessible judges the box of news by axe-core, with the contrast of WCAG 2.2
// level AAA (7:1). The page under it is judged where pages are: the box lies
// over parts of it, wherever it was scrolled to.
func (b tab) accessible(axe string) {
	b.t.Helper()
	b.run(axe)
	var found []struct {
		ID, Help string
		Nodes    []struct{ HTML string }
	}
	text := b.get(`axe.run(document.querySelector(".watch-news"), {preload: false, resultTypes: ["violations"], selectors: false, runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
		rules: {"color-contrast-enhanced": {enabled: true}}}).then(r => JSON.stringify(r.violations))`)
	do(b.t, json.Unmarshal([]byte(text), &found))
	for _, f := range found {
		b.t.Errorf("%s: %s\n%s", f.ID, f.Help, f.Nodes[0].HTML)
	}
}

// inView is true of a step that can be read: it is not under the strips at the
// head and the foot of the window.
const inView = `(() => { const r = document.querySelector(":target").getBoundingClientRect();
	return r.top > 60 && r.bottom < document.querySelector(".emergency").getBoundingClientRect().top })()`

// listens is true once the page has had its first news: only then it is told
// which step was written.
const listens = `document.querySelector(".watch-news")?.ariaBusy === "false"`

// keepNews keeps what the box says from now on: what a page was told before it
// was told something else is in it, whenever it came.
const keepNews = `window.news = []; new MutationObserver(() => { const now = document.querySelector(".watch-news").textContent; if (now) window.news.push(now) }).observe(document.querySelector(".watch-news"), {childList: true});`

// TestTheBoxSpeaksTheShopsLanguage is an error and its mend in a Spanish shop.
func TestTheBoxSpeaksTheShopsLanguage(t *testing.T) {
	t.Parallel()
	b := openBrowser(t)
	w := startWatch(t, fstest.MapFS{
		"shop.yaml":       {Data: []byte("title: Taller\nlanguage: es\n")},
		"procedures/a.md": {Data: []byte("---\ntitle: Limpiar\n---\n## Trabajo\n\n1. Limpie el banco. [](time:2min)\n")},
	})
	b.open(w.url+"procedures/a.html", 390)
	b.is(`document.querySelector(".watch-news")?.textContent === ""`)
	w.replace("procedures/a.md", "[](time:2min)", "[](tool:none)")
	b.is(`document.querySelector(".watch-news header p")?.textContent === "Esta es la última página buena" && document.querySelector(".watch-news section").lang === "es" &&
		document.querySelector(".watch-news button").textContent === "Cerrar" && [...document.querySelectorAll(".watch-news pre span")].map((s) => s.lang).join() === "es"`)
	w.replace("procedures/a.md", "el banco. [](tool:none)", "el banco"+strings.Repeat(" de al lado", 7)+".")
	b.is(`document.querySelector(".watch-news header p")?.textContent === "Lo que encontró la última comprobación"`) // too long
}

// TestTheOpenPageFollowsTheWriter is a writer's hour with the demo manual: the
// program watches, a browser shows one of its pages.
func TestTheOpenPageFollowsTheWriter(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile(filepath.Join("..", "..", ".ci", "node_modules", "axe-core", "axe.min.js"))
	needs(t, err == nil, "axe-core")
	b := openBrowser(t)
	manual := t.TempDir()
	do(t, bigmanual.Begun("../../content", manual))
	w := startWatch(t, os.DirFS(manual))
	b.open(w.url+"procedures/isolate-tug-traction.html", 1280)
	b.is(`document.querySelectorAll("li.step .tick").length > 10 && ` + listens)
	b.run(`for (const n of ["1.1", "1.2"]) { window.baybinder.page.pressedAt = -Infinity; document.querySelector('li.step[data-step="' + n + '"] .tick').click(); } // as if more than 700 ms went by`)
	b.run(`window.old = true`)

	const page = "procedures/tug/isolate-tug-traction.md"
	const far = "Look at the leads of the [two-pole tester](tool:two-pole-tester); both are whole."
	w.replace(page, far, "Look at both leads of the [two-pole tester](tool:two-pole-tester); both are whole.")
	b.is(`!window.old && document.getElementById("s4-1").textContent.includes("Look at both leads") && location.hash === "#s4-1" && ` + inView)
	b.is(`document.querySelectorAll("li.step.is-done").length === 2 && document.querySelector('li.step[data-step="1.2"] .tick').ariaPressed === "true"`)
	b.is(listens)
	b.run(`window.old = true; scrollTo(0, 300); ` + keepNews)
	w.built(2) // what is behind the page that came first: the open page is the same
	w.replace("procedures/press/isolate-press.md", "summary: Park and block", "summary: First park and block")
	w.built(3) // another page

	// An error: its finding over the page that stays.
	const wrong = "Look at all leads of the [two-pole tester](tool:no-such-tester); both are whole."
	w.replace(page, "Look at both leads of the [two-pole tester](tool:two-pole-tester); both are whole.", wrong)
	b.is(`window.old && scrollY === 300 && window.news.length === 1 && document.querySelector('.watch-news pre')?.textContent.includes("no-such-tester") && document.getElementById("s4-1").textContent.includes("Look at both leads")`)
	for _, width := range []int64{1280, 390} {
		do(t, chromedp.Do(b.ctx, chromedp.EmulateViewport(width, 800)))
		b.is(`(() => { const box = document.querySelector(".watch-news section").getBoundingClientRect();
			const strip = document.querySelector(".emergency summary").getBoundingClientRect();
			return box.height <= innerHeight * .4 && box.bottom <= innerHeight && box.left >= 0 && box.right <= innerWidth &&
				!!document.elementFromPoint(strip.left + 20, strip.top + 20).closest(".emergency") &&
				!!document.elementFromPoint(box.left + 20, box.bottom - 20).closest(".watch-news") })()`)
		b.run(`document.querySelector(".emergency details").open = true`)
		b.is(`(() => { const aid = document.querySelector(".emergency .aid").getBoundingClientRect();
			return !!document.elementFromPoint(aid.left + 20, aid.bottom - 30).closest(".emergency") })()`)
		b.run(`document.querySelector(".emergency details").open = false`)
		b.accessible(string(axe))
	}
	do(t, chromedp.Do(b.ctx, chromedp.EmulateViewport(1280, 800)))

	// Closed, it stays closed, until something else is found.
	b.run(`document.querySelector(".watch-news button").click()`)
	b.is(`document.querySelector(".watch-news").textContent === ""`)
	do(t, chromedp.Do(b.ctx, chromedp.Reload()))
	b.is(listens)
	b.run(keepNews)
	w.replace(page, "no-such-tester", "no-such-thing")
	b.is(`document.querySelector(".watch-news").textContent.includes("no-such-thing") && window.news.length === 1`)

	// The mend removes it; the page is what it was, and is not loaded anew.
	b.run(`window.old = true`)
	w.replace(page, "Look at all leads of the [two-pole tester](tool:no-such-thing); both are whole.", "Look at both leads of the [two-pole tester](tool:two-pole-tester); both are whole.")
	b.is(`window.old && document.querySelector(".watch-news").textContent === ""`)
	w.built(4) // what is behind it, so that no build takes in the next edit unasked

	// A new step at the end, an hour after the first edit.
	w.replace(page, "\n## Prove\n", "\n6. Wait for the watcher's word.\n\n## Prove\n")
	b.is(`!window.old && location.hash === "#s3-2" && document.querySelectorAll("li.step.is-done").length === 2 && ` + inView)
}
