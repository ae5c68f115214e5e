package generator_test

import (
	"encoding/json"
	"fmt"
	"path/filepath"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// inSight says what of the step in hand is not in sight: its cautions, its row
// with its first hold, its tick. A step that is higher than the window begins
// at its top. What covers it is asked of the browser.
const inSight = `(() => {
	const page = baybinder.page, s = page.current, out = [];
	if (!s) return '';
	const head = document.querySelector('.at-hand'), foot = document.querySelector('.emergency').getBoundingClientRect().top;
	const top = getComputedStyle(head).position === 'sticky' ? Math.max(0, head.getBoundingClientRect().bottom) : 0;
	const boxes = [...s.element.querySelectorAll(':scope > .safety'), s.row, s.tick, ...s.holds.slice(0, 1).map((h) => h.element)].map((e) => e.getBoundingClientRect());
	const high = Math.min(...boxes.map((b) => b.top)), low = Math.max(...boxes.map((b) => b.bottom));
	if (high < top - 1) out.push('begins at ' + high + ', the strip ends at ' + top);
	if (low > foot + 1 && high > top + 12) out.push('ends at ' + low + ' behind ' + foot + ', and begins at ' + high);
	if (low <= foot) {
		const t = s.tick.getBoundingClientRect(), hit = document.elementFromPoint(t.left + t.width / 2, t.top + t.height / 2);
		if (hit !== s.tick) out.push('its tick is covered');
		window.whole = (window.whole || 0) + 1;
	}
	return out.length ? 'step ' + s.number + ' ' + out.join('; ') : '';
})()`

// mustFit is what of a step in hand must stand in the window together: its
// caution, its sentence, its tick and the first thing to press or fill in.
const mustFit = `(() => {
	const page = baybinder.page, s = page.current;
	if (!s) return '';
	const { top, bottom } = page.clear(), field = s.holds.filter((h) => h.open).map((h) => h.element.querySelector('input, textarea, button')).find((e) => e && e.checkVisibility());
	const low = Math.max(...[s.text.querySelector(':scope > p:not([class])'), s.tick, field].filter(Boolean).map((e) => e.getBoundingClientRect().bottom)), high = s.boxes[0].getBoundingClientRect().top;
	return low - high > bottom - top ? 'step ' + s.number + ' takes ' + Math.round(low - high) + ' px of ' + (bottom - top) : '';
})()`

// TestTheStepInHandIsInSight ticks whole jobs step by step: after each tick the
// whole next step stands clear of the strips, at a desk and on a telephone, its
// caution never pushes what is to be filled in out of the window, and what is
// done is folded and opens.
func TestTheStepInHandIsInSight(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	for _, size := range [][2]int64{{1366, 768}, {390, 844}} {
		for _, name := range []string{"isolate-tug-traction", "replace-contactor-panel"} {
			address := "file://" + filepath.Join(site, "procedures", name+".html") + "?unit=112"
			bayPage(t, ctx, address)
			js[any](t, ctx, `localStorage.clear(); 0`)
			bayPage(t, ctx, address)
			resize(t, ctx, size[0], size[1])
			var found []string
			must(t, json.Unmarshal([]byte(js[string](t, ctx, `(async () => { const out = []; window.whole = 0;
				while (baybinder.page.current) {
					tick(baybinder.page.current.number);
					await new Promise((d) => requestAnimationFrame(() => requestAnimationFrame(d)));
					out.push(`+inSight+`, `+mustFit+`);
				}
				return JSON.stringify(out.filter(Boolean)); })()`)), &found))
			for _, f := range found {
				t.Errorf("%s at %d px: %s", name, size[0], f)
			}
			if n := js[int](t, ctx, `whole`); n < 8 {
				t.Errorf("%s at %d px: only %d steps fit the window", name, size[0], n)
			}
			is(t, ctx, `document.querySelectorAll('.is-folded').length > 0 && [...document.querySelectorAll('.is-folded')].every((e) => !e.checkVisibility() && !e.matches('.is-gap'))`, true)
			js[any](t, ctx, `for (const b of document.querySelectorAll('.folded:not([hidden]) .quiet')) b.click(); 0`)
			is(t, ctx, `document.querySelectorAll('.is-folded').length`, 0)
			const cut = `(() => { const m = baybinder.page.steps[0].more; m.open = true; return [...m.querySelectorAll('button')].map((b) => [b, b.getBoundingClientRect()])
				.filter(([b, r]) => r.left < 0 || r.right > innerWidth || r.width < 80 || b.scrollWidth > b.clientWidth + 1).length; })()`
			is(t, ctx, cut, 0) // what a step's menu offers is whole
		}
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// TestASecondPressDoesNothing presses with the browser's own mouse and keys: a
// second press at the same place, and a key that is held, tick nothing more.
func TestASecondPressDoesNothing(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "isolate-press.html")
	bayPage(t, ctx, address)
	js[any](t, ctx, `performance.now = () => 5000; baybinder.page.lead(300); 0`) // no time goes by between two presses
	var at [2]float64
	must(t, json.Unmarshal([]byte(js[string](t, ctx, `{ const r = baybinder.page.current.tick.getBoundingClientRect(); JSON.stringify([r.left + r.width / 2, r.top + r.height / 2]) }`)), &at))
	press := func() {
		must(t, chromedp.Do(ctx, chromedp.MouseClickXY(at[0], at[1])))
	}
	press()
	is(t, ctx, `done()`, 1)
	press()
	is(t, ctx, `done()`, 1)
	is(t, ctx, `asked()`, "")
	js[any](t, ctx, `performance.now = () => 5650; 0`)
	press()
	is(t, ctx, `done()`, 1)
	js[any](t, ctx, `performance.now = () => 9000; baybinder.page.current.tick.focus(); 0`)
	key := func(kind input.DispatchKeyEventType, held bool) {
		t.Helper()
		_, err := chromedp.Call(ctx, input.DispatchKeyEvent, input.DispatchKeyEventParams{Type: kind, Key: "Enter", Code: "Enter", Text: "\r", WindowsVirtualKeyCode: 13, AutoRepeat: new(held)})
		must(t, err)
	}
	key(input.DispatchKeyEventTypeKeyDown, false)
	is(t, ctx, `done()`, 2)
	for n := range 3 { // the key is held for seconds
		js[any](t, ctx, fmt.Sprintf(`performance.now = () => %d; baybinder.page.current.tick.focus(); 0`, 10000+1000*n))
		key(input.DispatchKeyEventTypeKeyDown, true)
	}
	key(input.DispatchKeyEventTypeKeyUp, false)
	is(t, ctx, `done()`, 2)
}

// TestWhatComesUpStandsInTheOrderOfTheSteps: the second person of 2.1, the hasp of
// 2.2, the wait of 3.1; later the tester of 4.1, the watcher of 4.2, the wait.
func TestWhatComesUpStandsInTheOrderOfTheSteps(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	bayPage(t, ctx, "file://"+filepath.ToSlash(filepath.Join(demoSite(t), "procedures", "isolate-tug-traction.html"))+"?unit=112")
	const coming = `[...document.querySelectorAll('.coming a')].map((a) => a.textContent).join(' ')`
	is(t, ctx, coming, "2.1 2.2 3.1")
	js[any](t, ctx, `for (const n of ['1.1', '1.2', '1.3', '1.4', '2.1', '2.2']) tick(n); 0`)
	is(t, ctx, coming, "3.1 4.1 4.2")
}

// TestATickPastSomethingOpenLooksOtherwise: a step that was ticked before its
// hold does not look like one that was met, and stays so.
func TestATickPastSomethingOpenLooksOtherwise(t *testing.T) {
	t.Parallel()
	site := smallSite(t, everyHold)
	ctx, _ := browser(t)
	bayPage(t, ctx, "file://"+filepath.ToSlash(filepath.Join(site, "procedures", "every-hold.html")))
	const look = `(n) => { const s = getComputedStyle(step(n).querySelector('.tick')); return s.backgroundColor + s.borderStyle; }`
	js[any](t, ctx, `tick('1.1'); tick('1.2'); window.baybinder.page.folds.forEach((f) => f.turn(true)); 0`)
	is(t, ctx, `(`+look+`)('1.1') !== (`+look+`)('1.2')`, true)
	js[any](t, ctx, `{ const real = Date.now; Date.now = () => real() + 3600000; } window.baybinder.page.beat(); window.baybinder.page.show(); 0`)
	is(t, ctx, `step('1.2').querySelector('.hold').classList.contains('is-met')`, true)
	is(t, ctx, `(`+look+`)('1.1') !== (`+look+`)('1.2')`, true)
	is(t, ctx, `step('1.2').matches('.is-folded')`, false)
}

// TestNoCautionIsDropped: before every step of every page the same hazards
// stand on the screen and on paper as the manual asks for, whole where they are
// first met in a phase, then with how to avoid them.
func TestNoCautionIsDropped(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	const look = `(() => { let seen = 0, told = 0; const out = [];
		for (const phase of document.querySelectorAll('.phase')) {
			const met = new Set();
			for (const box of phase.querySelectorAll('.safety')) {
				const step = box.parentElement, name = (step.dataset.step || phase.id) + ': ';
				const all = new Set([...box.querySelectorAll('.message .hazard')].map((a) => a.href)), shown = new Set([...box.querySelectorAll('.hazard')].filter((a) => a.checkVisibility()).map((a) => a.href));
				if (all.size === 0 || all.size !== shown.size) out.push(name + all.size + ' hazards, ' + shown.size + ' are shown');
				for (const m of box.querySelectorAll('.message')) {
					seen++;
					const href = m.querySelector('.hazard').href, short = [...box.querySelectorAll('.in-short')].find((p) => p.querySelector('a').href === href);
					if (!m.checkVisibility()) {
						told++;
						if (!met.has(href)) out.push(name + m.textContent.slice(0, 30) + ' was never whole in this phase');
						for (const a of m.querySelectorAll('.avoid li')) if (!short || !short.textContent.includes(a.textContent)) out.push(name + 'does not say: ' + a.textContent);
					} else met.add(href);
				}
				for (const g of box.querySelectorAll('.wear a')) if (!g.checkVisibility()) out.push(name + 'gear is not shown');
			}
		}
		return JSON.stringify({ seen, told, out }); })()`
	files, err := filepath.Glob(filepath.Join(site, "procedures", "*.html"))
	must(t, err)
	seen, told := 0, 0
	for _, file := range files {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+file)))
		for _, media := range []string{"", "print"} {
			show(t, ctx, media, 1366)
			var got struct {
				Seen, Told int
				Out        []string
			}
			must(t, json.Unmarshal([]byte(js[string](t, ctx, look)), &got))
			seen, told = seen+got.Seen, told+got.Told
			for _, o := range got.Out {
				t.Errorf("%s, %q: %s", filepath.Base(file), media, o)
			}
		}
	}
	if seen < 100 || told < 10 {
		t.Errorf("%d messages, %d in one line: the test looks at nothing", seen, told)
	}
}
