package generator_test

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// A whole job takes fewer presses than the first number, and less scrolling by
// hand and by the page together than the second, in heights of the window: it
// took 97 and 120 on the first page of this kind. Called procedures are ticked
// at their steps, as on that page: each that is played on its own page is a job
// of its own, with its own presses. A field that has the keyboard already is typed into
// without a press. The way with Tab from one thing to the next is told apart.
const (
	mostPresses, mostScreens = 70, 25
	mostTabs                 = 40
)

// handle plays a technician: next says what the hand does next, with the place
// of it in the window. What is read and what is pressed is first brought
// between the strips, and the way there is counted. Time goes by between two
// presses, and at a wait until it is over.
const handle = `{
	const now = Date.now, clock = performance.now.bind(performance);
	const byKeys = window.keyboard;
	let passed = 0, clicks = 0, wanted = null, read = null;
	window.scrolled = window.followed = 0;
	let stood = scrollY;
	Date.now = () => now() + passed;
	performance.now = () => clock() + passed;
	addEventListener('click', () => { clicks++; if (wanted && clicks >= wanted.n) wanted.done(0); }, true);
	window.clicked = (n) => new Promise((done) => { wanted = { n: n, done: done }; if (clicks >= n) done(0); });
	const page = () => baybinder.page;
	const show = (high, low) => {
		const { top, bottom } = page().clear(), by = high < top ? high - top : Math.max(0, Math.min(low - bottom, high - top));
		scrollBy({ top: by, behavior: 'instant' });
		window.scrolled += Math.abs(by);
	};
	const bring = (e) => { const r = e.getBoundingClientRect(); show(r.top, r.bottom); };
	const readAll = (boxes) => { bring(boxes[0]); const last = boxes.at(-1).getBoundingClientRect(), { bottom } = page().clear(); if (last.bottom > bottom) { scrollBy({ top: last.bottom - bottom, behavior: 'instant' }); window.scrolled += last.bottom - bottom; } };
	const middle = (h) => String(h.data.low && h.data.high ? (Number(h.data.low) + Number(h.data.high)) / 2 : h.data.low || h.data.high || 0);
	// of a hold: what is still to be touched or typed
	const ofHold = (h) => {
		const empty = (h.fields || []).find((f) => !f.field.value), place = (h.places || []).find((p) => p.press.getAttribute('aria-pressed') === 'false');
		if (h.kind === 'wait') { if (h.until === null) return { press: h.start }; passed += h.until - Date.now() + 1000; page().beat(); page().show(); return null; }
		if (empty) return { field: empty.field, words: middle(h) };
		if (place) return { press: place.press };
		if (h.kind === 'measure') return { press: h.proved };
		if (h.kind === 'look') return { press: h.yes };
		if (h.kind === 'ask') return { press: h.choices[0].press };
		if (h.kind === 'note') return { field: h.field, words: 'seen' };
		return h.field.value ? { press: h.put } : { field: h.field, words: 'F. T.' };
	};
	const what = () => {
		const p = page(), serial = document.getElementById('unit-serial'), before = document.querySelector('.before .fetch .press[aria-pressed=false]');
		if (serial && !serial.value) return { field: serial, words: '112' };
		if (serial) return { press: [...document.querySelectorAll('.choose button')][0] };
		if (!p.job.worker) return { field: p.worker, words: 'A. V.' };
		if (byKeys && before && !read) { read = p; return { press: p.go }; }
		if (before) { readAll([document.querySelector('.before')]); return { press: before }; }
		const s = p.current;
		if (s) {
			if (read !== s) readAll(s.boxes);
			read = s;
			for (const h of s.holds.filter((h) => h.open)) { const next = ofHold(h); if (next) return next; }
			return { press: s.tick };
		}
		const row = p.closeOut.rows.find((r) => r.applies && !r.at && r.tick.checkVisibility());
		if (row) return { press: row.tick };
		return { press: p.close.querySelector('button'), last: true };
	};
	window.next = () => {
		passed += 800;
		window.followed += Math.abs(scrollY - stood); // by the page, where the eye must follow
		const n = what(), e = n.press || n.field;
		bring(e);
		window.target = e;
		const r = e.getBoundingClientRect();
		stood = scrollY;
		return JSON.stringify({ X: r.left + r.width / 2, Y: r.top + r.height / 2, Words: n.words || '', Last: Boolean(n.last), Clicks: clicks, Focused: e === document.activeElement, What: (page().current ? page().current.number : '') + ' ' + (e.ariaLabel || e.textContent) });
	};
}`

// move is one thing that the hand does.
type move struct {
	X, Y   float64
	Words  string
	Last   bool
	Clicks int
	// Focused: it is a field, and has the keyboard already.
	Focused bool
	What    string
}

// hand is a way to press what a move names.
type hand func(t *testing.T, ctx context.Context, m move) (tabs int)

func byMouse(t *testing.T, ctx context.Context, m move) int {
	t.Helper()
	must(t, chromedp.Do(ctx, chromedp.MouseClickXY(m.X, m.Y)))
	return 0
}

func byTouch(t *testing.T, ctx context.Context, m move) int {
	t.Helper()
	_, err := chromedp.Call(ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchStart, TouchPoints: []*input.TouchPoint{{X: m.X, Y: m.Y}}})
	must(t, err)
	_, err = chromedp.Call(ctx, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchEnd, TouchPoints: []*input.TouchPoint{}})
	must(t, err)
	return 0
}

// byKeyboard goes to the target with Tab, and presses Space on it.
func byKeyboard(t *testing.T, ctx context.Context, m move) (tabs int) {
	t.Helper()
	for !js[bool](t, ctx, `document.activeElement === target`) {
		if tabs++; tabs > 60 {
			t.Fatalf("60 presses of Tab do not lead to %s; the focus is on %s", m.What, js[string](t, ctx, `document.activeElement.outerHTML.slice(0, 200)`))
		}
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(kb.Tab)))
	}
	if m.Words == "" {
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(" ")))
	}
	return tabs
}

// TestAWholeJobInFewPresses clicks a whole job through on the longest procedure
// of the demo, at a desk and on a telephone, by mouse, by touch and with the
// keyboard alone, from the folder and served: few presses, little scrolling.
func TestAWholeJobInFewPresses(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		for _, c := range []struct {
			name          string
			width, height int64
			hand          hand
		}{
			{"mouse at a desk", 1366, 768, byMouse}, {"touch at a desk", 1366, 768, byTouch}, {"touch on a telephone", 390, 844, byTouch},
			{"keyboard at a desk", 1366, 768, byKeyboard}, {"keyboard on a telephone", 390, 844, byKeyboard},
		} {
			t.Run(c.name, func(t *testing.T) {
				ctx, _ := browser(t)
				bayPage(t, ctx, at+"/procedures/replace-contactor-panel.html")
				resize(t, ctx, c.width, c.height)
				js[any](t, ctx, fmt.Sprintf(`window.keyboard = %v; 0`, strings.HasPrefix(c.name, "keyboard")))
				js[any](t, ctx, handle+`; HTMLAnchorElement.prototype.click = function () {}; 0`) // the record is not saved to the disk
				presses, tabs := 0, 0
				for {
					var m move
					must(t, json.Unmarshal([]byte(js[string](t, ctx, `next()`)), &m))
					if m.Words == "" || !m.Focused {
						tabs += c.hand(t, ctx, m)
						presses++
					}
					if m.Words == "" {
						js[any](t, ctx, fmt.Sprintf(`clicked(%d)`, m.Clicks+1))
					} else {
						_, err := chromedp.Call(ctx, input.InsertText, input.InsertTextParams{Text: m.Words})
						must(t, err)
					}
					if m.Last {
						break
					}
				}
				byHand, byPage := js[float64](t, ctx, `scrolled / innerHeight`), js[float64](t, ctx, `followed / innerHeight`)
				screens := byHand + byPage
				t.Logf("%d presses, %d of Tab, %.1f windows of scrolling by hand and %.1f by the page", presses, tabs, byHand, byPage)
				if presses >= mostPresses || screens >= mostScreens || tabs >= mostTabs {
					t.Errorf("%d presses, %d of Tab, %.1f windows of scrolling: not below %d, %d and %d", presses, tabs, screens, mostPresses, mostTabs, mostScreens)
				}
				is(t, ctx, `JSON.stringify([Boolean(baybinder.page.job.ended), baybinder.page.job.gaps.length])`, "[true,0]")
			})
		}
	})
}
