package generator_test

import (
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	cdppage "github.com/chromedp/cdproto/page"
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
// presses, and at a wait until it is over. It goes along from page to page with
// what it has counted so far, kept.
const handle = `{
	const now = Date.now, clock = performance.now.bind(performance);
	const byKeys = kept.keyboard, calls = kept.calls, played = new Set(kept.played);
	let passed = kept.passed, clicks = 0, wanted = null, read = null, stood = null;
	window.scrolled = kept.scrolled;
	window.followed = kept.followed;
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
	const leading = (link) => ({ press: link, leads: /([a-z0-9-]+)\.html/.exec(link.getAttribute('href'))[1] });
	const what = () => {
		const p = page(), serial = document.getElementById('unit-serial'), before = document.querySelector('.before .fetch .press[aria-pressed=false]');
		if (serial && !serial.value) return { field: serial, words: '112' };
		if (serial) return { press: [...document.querySelectorAll('.choose button')][0] };
		if (!p.job.worker) return { field: p.worker, words: 'A. V.' };
		if (byKeys && before && before.checkVisibility() && !read) { read = p; return { press: p.go }; }
		if (before && before.checkVisibility()) { readAll([document.querySelector('.before')]); return { press: before }; }
		const s = p.current;
		if (s) {
			if (read !== s) readAll(s.boxes);
			read = s;
			const call = s.text.querySelector(':scope > .call > a'), own = p.procedure + '/' + p.job.started + '/' + s.id;
			if (calls && call && !played.has(own)) { played.add(own); return { ...leading(call), calls: true }; }
			for (const h of s.holds.filter((h) => h.open)) { const next = ofHold(h); if (next) return { ...next, work: true }; }
			return { press: s.tick, work: true };
		}
		const row = p.closeOut.rows.find((r) => r.applies && !r.at && r.tick.checkVisibility());
		if (row) return { press: row.tick, work: true };
		const save = p.close.querySelector('.press');
		if (!p.from) return { press: save, last: true };
		return { press: save, leads: p.from.page.split('.')[0] };
	};
	window.next = () => {
		passed += 800;
		if (stood !== null) window.followed += Math.abs(scrollY - stood); // by the page, where the eye must follow
		const n = what(), e = n.press || n.field;
		bring(e);
		window.target = e;
		const r = e.getBoundingClientRect();
		stood = scrollY;
		const so = { keyboard: byKeys, calls: calls, passed: passed, scrolled: window.scrolled, followed: window.followed, played: [...played] };
		return JSON.stringify({ Kept: so, X: r.left + r.width / 2, Y: r.top + r.height / 2, Words: n.words || '', Last: Boolean(n.last), Leads: n.leads || '', Calls: Boolean(n.calls), Work: Boolean(n.work), Clicks: clicks, Focused: e === document.activeElement, What: page().procedure + ' ' + (page().current ? page().current.number : '') + ' ' + (e.ariaLabel || e.textContent) });
	};
}`

// soFar is what the technician has counted, and who it is.
type soFar struct {
	Keyboard bool     `json:"keyboard"`
	Calls    bool     `json:"calls"`
	Passed   float64  `json:"passed"`
	Scrolled float64  `json:"scrolled"`
	Followed float64  `json:"followed"`
	Played   []string `json:"played"`
}

// install puts the technician on each page that is opened from now on. The
// record is not saved to the disk.
func (k soFar) install(t *testing.T, ctx context.Context, before cdppage.ScriptIdentifier) cdppage.ScriptIdentifier {
	t.Helper()
	if before != "" {
		_, err := chromedp.Call(ctx, cdppage.RemoveScriptToEvaluateOnNewDocument, cdppage.RemoveScriptToEvaluateOnNewDocumentParams{Identifier: before})
		must(t, err)
	}
	text, err := json.Marshal(k)
	must(t, err)
	out, err := chromedp.Call(ctx, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{
		Source: `{ const kept = ` + string(text) + `;` + handle + `} HTMLAnchorElement.prototype.click = function () {};`})
	must(t, err)
	return out.Identifier
}

// move is one thing that the hand does.
type move struct {
	X, Y float64
	// Kept goes along to the next page.
	Kept  soFar
	Words string
	Last  bool
	// Leads is the procedure whose page the press leads to; "" where it stays.
	Leads string
	// Calls: it leads to what a step calls, and not back.
	Calls bool
	// Work: a step, a hold or a line of the close-out asks for it.
	Work   bool
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

// byKeyboard goes to the target with Tab, and presses Space on it, or Enter on a link.
func byKeyboard(t *testing.T, ctx context.Context, m move) (tabs int) {
	t.Helper()
	for !js[bool](t, ctx, `document.activeElement === target`) {
		if tabs++; tabs > 60 {
			t.Fatalf("60 presses of Tab do not lead to %s; the focus is on %s", m.What, js[string](t, ctx, `document.activeElement.outerHTML.slice(0, 200)`))
		}
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(kb.Tab)))
	}
	switch {
	case m.Words != "":
	case js[bool](t, ctx, `target.matches('a')`):
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(kb.Enter)))
	default:
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(" ")))
	}
	return tabs
}

// toll is what a job took of the hand.
type toll struct {
	presses, tabs  int
	ways, calls    int     // presses from a page to another, and procedures that steps performed
	work           int     // presses that a step, a hold or a line of the close-out asks for
	byHand, byPage float64 // windows of scrolling
}

// wholeJob clicks a whole job through, with what it calls on its own pages where
// calls is so.
func wholeJob(t *testing.T, ctx context.Context, address string, width, height int64, keyboard, calls bool, press hand) (out toll) {
	t.Helper()
	script := soFar{Keyboard: keyboard, Calls: calls, Played: []string{}}.install(t, ctx, "")
	bayPage(t, ctx, address)
	resize(t, ctx, width, height)
	for {
		var m move
		must(t, json.Unmarshal([]byte(js[string](t, ctx, `next()`)), &m))
		if m.Leads != "" {
			script = m.Kept.install(t, ctx, script)
		}
		if m.Words == "" || !m.Focused {
			out.tabs += press(t, ctx, m)
			out.presses++
			if m.Work {
				out.work++
			}
		}
		switch {
		case m.Leads != "":
			must(t, chromedp.Do(ctx, chromedp.WaitReady(`body:has(#bay[data-procedure="`+m.Leads+`"]) .job-strip`)))
			js[any](t, ctx, `new Promise((done) => { if (document.readyState === 'complete') done(0); else addEventListener('load', () => done(0)); })`)
			out.ways++
			if m.Calls {
				out.calls++
			}
		case m.Words == "":
			js[any](t, ctx, fmt.Sprintf(`clicked(%d)`, m.Clicks+1))
		default:
			_, err := chromedp.Call(ctx, input.InsertText, input.InsertTextParams{Text: m.Words})
			must(t, err)
		}
		if m.Last {
			break
		}
	}
	is(t, ctx, `JSON.stringify([Boolean(baybinder.page.job.ended), baybinder.page.job.gaps.length])`, "[true,0]")
	out.byHand, out.byPage = js[float64](t, ctx, `scrolled / innerHeight`), js[float64](t, ctx, `followed / innerHeight`)
	t.Logf("%d presses, %d of Tab, %.1f windows of scrolling by hand and %.1f by the page", out.presses, out.tabs, out.byHand, out.byPage)
	return out
}

// allHands is whether each hand plays at each place.
var allHands = flag.Bool("all-hands", false, "a whole job is played by each hand both from the folder and served, not by some here and the others there")

// TestAWholeJobInFewPresses clicks a whole job through on the longest procedure
// of the demo, at a desk and on a telephone, by mouse, by touch and with the
// keyboard alone, from the folder and served: few presses, little scrolling.
func TestAWholeJobInFewPresses(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		served := !strings.HasPrefix(at, "file:")
		for i, c := range []struct {
			name          string
			width, height int64
			hand          hand
		}{
			{"mouse at a desk", 1366, 768, byMouse}, {"touch at a desk", 1366, 768, byTouch}, {"touch on a telephone", 390, 844, byTouch},
			{"keyboard at a desk", 1366, 768, byKeyboard}, {"keyboard on a telephone", 390, 844, byKeyboard},
		} {
			if !*allHands && served == (i%2 == 0) {
				continue
			}
			t.Run(c.name, func(t *testing.T) {
				ctx, _ := browser(t)
				got := wholeJob(t, ctx, at+"/procedures/replace-contactor-panel.html", c.width, c.height, strings.HasPrefix(c.name, "keyboard"), false, c.hand)
				if screens := got.byHand + got.byPage; got.presses >= mostPresses || screens >= mostScreens || got.tabs >= mostTabs {
					t.Errorf("%d presses, %d of Tab, %.1f windows of scrolling: not below %d, %d and %d", got.presses, got.tabs, screens, mostPresses, mostTabs, mostScreens)
				}
			})
		}
	})
}

// TestWhatAStepCallsAsksNothingTwice plays the same job with every procedure
// that its steps call on that procedure's own page. Unit, person and kit are
// known from the job: one press leads there, one back, and what else is pressed
// is a step, a hold, or the beginning and the end of the job itself. Its 124
// steps alone are more presses than a job without called pages may take; the
// scrolling by hand stays within the same number.
func TestWhatAStepCallsAsksNothingTwice(t *testing.T) {
	t.Parallel()
	eachPlace(t, func(t *testing.T, at string) {
		keyboard := !strings.HasPrefix(at, "file:")                             // each place by one hand: the other test changes both
		width, height, press, start := int64(390), int64(844), hand(byTouch), 5 // unit and its press, person, what is fetched, the record
		if keyboard {
			width, height, press, start = 1366, 768, byKeyboard, 6 // what is read before it is brought to by a press
		}
		ctx, _ := browser(t)
		got := wholeJob(t, ctx, at+"/procedures/replace-contactor-panel.html", width, height, keyboard, true, press)
		if got.calls != 6 || got.ways != 2*got.calls || got.presses-got.work-got.ways > start {
			t.Errorf("%d presses: %d are work, %d lead to %d called procedures and back", got.presses, got.work, got.ways, got.calls)
		}
		if got.byHand >= mostScreens || got.tabs >= mostTabs+2*got.calls {
			t.Errorf("%.1f windows of scrolling by hand, %d presses of Tab", got.byHand, got.tabs)
		}
		is(t, ctx, `Object.keys(localStorage).filter((k) => k.startsWith('baybinder-job:')).map((k) => JSON.parse(localStorage.getItem(k))).filter((j) => j.ended && j.worker === 'A. V.' && j.unit.serial === '112').length`, 7)
	})
}
