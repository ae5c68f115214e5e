package generator_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"baybinder/generator/language"
)

// What is asked here of the page is common practice, no source.

// atTheBay are the two screens that the bay's page is looked at on: the shop's
// PC and a telephone.
var atTheBay = []struct{ width, height int64 }{{1366, 768}, {390, 844}}

// toSight are words for what the eye and the hand reach: within the window, clear
// of the strips, and with nothing on it.
const toSight = `
var inSight = (e) => {
	const r = e.getBoundingClientRect(), top = document.elementFromPoint((r.left + r.right) / 2, (r.top + r.bottom) / 2);
	return r.height > 0 && r.top >= 0 && r.bottom <= innerHeight - document.querySelector('.emergency').offsetHeight + 1 && (e === top || e.contains(top));
};
0`

// sixReadings is a manual with a hold of six readings.
func sixReadings() map[string]string {
	files := maps.Clone(everyHold)
	files["register/holds.yaml"] = strings.Replace(files["register/holds.yaml"], "at: [left, right]", "at: [left front, left middle, left back, right front, right middle, right back]", 1)
	return files
}

// TestTheVerdictIsInSight types into each of six readings what is out of the
// limit, and then what is within: the field and what came of it are in sight.
func TestTheVerdictIsInSight(t *testing.T) {
	t.Parallel()
	address := "file://" + filepath.ToSlash(filepath.Join(smallSite(t, sixReadings()), "procedures", "every-hold.html"))
	for _, on := range atTheBay {
		ctx, _ := browser(t)
		work(t, ctx, address)
		resize(t, ctx, on.width, on.height)
		js[any](t, ctx, toSight)
		js[any](t, ctx, `tick('1.1'); tick('1.2'); var gap = window.baybinder.page.steps[2].holds[0];
			var into = (i, words) => { gap.fields[i].field.focus(); type(gap.fields[i].field, words); return [gap.verdict, gap.fields[i].field].every(inSight) ? gap.verdict.textContent : 'out of sight'; }; 0`)
		for i := range 6 {
			says(t, ctx, fmt.Sprintf(`into(%d, '0.9')`, i), "Out of the limit")
			js[any](t, ctx, fmt.Sprintf(`type(gap.fields[%d].field, ''); scrollTo(0, 0); window.baybinder.page.lead(innerHeight / 2); 0`, i))
		}
		for i := range 5 {
			js[any](t, ctx, fmt.Sprintf(`into(%d, '0.4'); 0`, i))
		}
		says(t, ctx, `into(5, '0.4')`, "Within the limit")
	}
}

// TestTheRailKeepsItsButtons: however much stands open, and while a wait runs,
// what can be pressed in the rail is in sight.
func TestTheRailKeepsItsButtons(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	for _, on := range atTheBay {
		ctx, _ := browser(t)
		work(t, ctx, "file://"+filepath.Join(site, "procedures", "lead-acid-battery-out-and-in.html")+"?unit=12")
		resize(t, ctx, on.width, on.height)
		js[any](t, ctx, toSight)
		js[any](t, ctx, `var p = window.baybinder.page; p.strip.open = true; p.lead(400); var hidden = () => JSON.stringify([...p.rail.body.querySelectorAll('.presses button')].filter((b) => !b.hidden && !inSight(b)).map((b) => b.textContent)); 0`)
		for js[bool](t, ctx, `Boolean(p.current)`) {
			is(t, ctx, `hidden() + ' at ' + p.current.number`, `[] at `+js[string](t, ctx, `p.current.number`))
			js[any](t, ctx, `{ const n = p.current.number; tick(n); } 0`)
		}
		// four waits at once, each with what it stands on
		js[any](t, ctx, `p.waits = () => Array(4).fill({ ...p.steps[1].holds[0], title: 'Wait 15 min: wait for the gas', step: p.steps[1], until: Date.now() + 60000, met: false }); p.rail.running = ''; p.show(); 0`)
		is(t, ctx, `hidden()`, "[]")
	}
}

// TestTheSafeAnswerHasTheFocus: a key pressed by mistake takes nothing back.
func TestTheSafeAnswerHasTheFocus(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.Join(demoSite(t), "procedures", "isolate-tug-traction.html")+"?unit=112")
	js[any](t, ctx, `tick('1.1'); var p = window.baybinder.page; 0`)
	for _, ask := range []string{`tick('1.1')`, `p.startAgain()`, `p.chooseUnit({ serial: '3', options: ['lead-acid'] })`} {
		js[any](t, ctx, ask+`; 0`)
		is(t, ctx, `document.activeElement.closest('dialog') ? document.activeElement.textContent : ''`, "Cancel")
		must(t, chromedp.Do(ctx, chromedp.KeyEvent("\r")))
		is(t, ctx, `document.querySelector('dialog') === null`, true)
		is(t, ctx, `step('1.1').classList.contains('is-done') ? p.job.unit.serial : ''`, "112")
	}
}

// TestTabsStandInOneRow: the four tabs and what opens the others, with the words of
// each language, stand in one row of every window from the narrowest on (320 px;
// WCAG 2.2, 1.4.10), and the others that it opens stand in the window.
func TestTabsStandInOneRow(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(320, 700), chromedp.Navigate("file://"+filepath.Join(demoSite(t), "index.html"))))
	for _, l := range language.All() {
		names, err := json.Marshal([]string{l.Words.Machines, l.Words.Tools, l.Words.Supplies, l.Words.Hazards, l.Words.More})
		must(t, err)
		js[int](t, ctx, `[...document.querySelectorAll('.tabs a, .others summary')].map((e, i) => { e.textContent = `+string(names)+`[i]; }).length`)
		for _, width := range []int64{320, 360, 390, 432, 433, 480, 576, 577, 640, 704, 705, 768, 769, 1280} {
			resize(t, ctx, width, 700)
			row := js[struct{ Rows, Beyond int }](t, ctx, `(() => {
				const others = document.querySelector('.others'), ends = [...document.querySelectorAll('.tabs a, .others summary')].map((e) => Math.round(e.getBoundingClientRect().bottom));
				others.open = true;
				const list = others.querySelector('ul').getBoundingClientRect(), beyond = Math.max(0, list.right - document.documentElement.clientWidth, -list.left);
				others.open = false;
				return { Rows: new Set(ends).size, Beyond: Math.ceil(beyond) };
			})()`)
			if row.Rows != 1 || row.Beyond > 0 {
				t.Errorf("in %s at %d px the tabs stand in %d rows, and the others %d px out of the window", l.Code, width, row.Rows, row.Beyond)
			}
		}
	}
}

// TestANumberIsClearOfItsSentence: the longest numbers of steps do not stand on
// what the step says.
func TestANumberIsClearOfItsSentence(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	for _, on := range atTheBay {
		work(t, ctx, "file://"+filepath.Join(demoSite(t), "procedures", "replace-contactor-panel.html")+"?unit=112")
		resize(t, ctx, on.width, on.height)
		for _, n := range []string{"3.10", "6.11", "7.4.2"} {
			if gap := js[float64](t, ctx, `{ const s = window.baybinder.page.steps.find((x) => x.number === '`+n+`'), words = document.createRange(), number = document.createRange();
				window.baybinder.page.take(s); number.selectNodeContents(s.row.querySelector('.num')); words.selectNodeContents(s.text.querySelector(':scope > p:not(.when)'));
				const first = [...words.getClientRects()].filter((r) => r.width > 2).sort((a, b) => a.top - b.top)[0]; first.left - number.getBoundingClientRect().right; }`); gap < 3 {
				t.Errorf("at %d px the sentence of %s begins %.0f px behind its number", on.width, n, gap)
			}
		}
	}
}

// TestWhatWasNotedIsPrintedWhole: a note longer than its field is not cut off on
// paper, and nothing on paper asks to be pressed.
func TestWhatWasNotedIsPrintedWhole(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.ToSlash(filepath.Join(smallSite(t, everyHold), "procedures", "every-hold.html")))
	const noted = "current limit 320 A, ramp 1.2 s, pre-charge 300 ms, regeneration 40 %, creep 6 km/h, horn on, panel number 0417, the last line"
	js[any](t, ctx, `tick('1.1'); tick('1.2'); type(step('1.6').querySelector('textarea'), '`+noted+`'); type(step('1.7').querySelector('.controls input'), 'G. M.'); press(step('1.7'), 'Sign with the time now'); 0`)
	_, pages := printed(t, ctx, 8.27, 11.69)
	text := squeezed(strings.Join(pages, ""))
	if !strings.Contains(text, squeezed(noted)) || strings.Contains(text, squeezed("Take back")) || strings.Contains(text, squeezed("1.1 to 1.2 done")) {
		t.Errorf("the paper has: %s", text)
	}
}
