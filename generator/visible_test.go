package generator_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"baybinder/generator"
)

// everyHold is a manual with a hold of every kind, twice where a second state
// can stand beside the first, and with blocks of code.
var everyHold = map[string]string{
	"shop.yaml":           "title: Shop of every hold\n",
	"register/roles.yaml": "fitter: { name: fitter }\nforeman: { name: foreman }\n",
	"register/tools.yaml": "gauge: { name: feeler gauge, kind: other }\n",
	"register/holds.yaml": `settle: { name: settling, kind: wait, for: 10 min, why: The oil runs down. }
gap: { name: gap, kind: measure, what: gap of the jaw, limit: 0.3 to 0.5 mm, at: [left, right], with: gauge, if-not: Set it anew., tries: 1, call: foreman }
clean: { name: clean, kind: look, what: the bed of the jaw, good: clean, if-not: Wipe it and look again. }
which: { name: which jaw, kind: ask, answers: { short: the short jaw, long: the long jaw } }
number: { name: number, kind: note, what: the number on the jaw }
word: { name: word of the foreman, kind: sign, by: foreman }
second: { name: second look, kind: check, by: fitter, how: apart }
seen: { name: seen, kind: witness, by: foreman }
`,
	"machines/rig.yaml": "name: rig\n",
	"procedures/every-hold.md": "---\ntitle: Every hold\nfor: rig\nneeds: [fitter]\npeople: 2\ntools: [gauge]\nholds: [settle, gap, clean, which, number, word, second, seen]\n---\n\n## Stops\n\n" +
		"1. Let the oil run down.\n2. [Wait](hold:settle).\n3. [Measure](hold:gap).\n4. [Look](hold:clean).\n5. [Answer](hold:which).\n6. [Write it down](hold:number).\n" +
		"7. [Have it signed](hold:word).\n8. [Have it checked](hold:second).\n9. [Have it seen](hold:seen).\n" +
		"10. Read the log.\n\n    ```fault-log\n    10:42:07 ERROR pump lost pressure 0x1F\n    10:42:09 ok cleared\n    ```\n\n11. Set the values.\n\n    ```json\n    { \"gap\": 0.4, \"side\": \"left\" }\n    ```\n\n12. Close the lid.\n",
}

// unseen looks at every text and field within the steps: it must have a box,
// be painted, lie within its step, and not be cut to nothing by what holds it.
// What may be hidden is named here, and nothing else is.
const unseen = `(() => {
	const print = matchMedia('print').matches, out = [];
	const may = (e) => {
		if (e.closest('[hidden]')) return true; // the script says that it has no use now
		const fold = e.closest('details:not([open])');
		if (fold && !(e.closest('summary') && e.closest('summary').parentElement === fold)) return true;
		if (print) return Boolean(e.closest('.more, .controls .press, .controls .quiet, .stand') || e.closest('.clock') && !e.closest('.is-waiting, .is-met'));
		return Boolean(e.closest('.on-paper, .is-on-paper, .stand')); // a blank to write on; the rail says where things stand
	};
	const cut = (e, r) => {
		for (let a = e.parentElement; a && a !== document.body; a = a.parentElement) {
			const s = getComputedStyle(a), b = a.getBoundingClientRect();
			if (s.overflow === 'visible') continue;
			if (b.width < 20 || b.height < 8 || Math.min(r.right, b.right) <= Math.max(r.left, b.left) || Math.min(r.bottom, b.bottom) <= Math.max(r.top, b.top)) return true;
		}
		return false;
	};
	const look = (e, r, what) => {
		if (may(e)) return;
		const step = e.closest('li.step'), box = step.getBoundingClientRect(), name = step.dataset.step + ' ' + e.tagName + '.' + e.className + ' ' + what.slice(0, 40);
		if (!e.checkVisibility({ opacityProperty: true, visibilityProperty: true })) out.push(name + ' is not shown');
		else if (r.width < 2 || r.height < 6) out.push(name + ' has the size ' + r.width + ' x ' + r.height);
		else if (cut(e, r)) out.push(name + ' is cut off');
		else if (r.top < box.top - 1 || r.bottom > box.bottom + 1 || r.right < 1 || r.left > innerWidth) out.push(name + ' lies outside of its step');
	};
	let seen = 0;
	for (const step of document.querySelectorAll('li.step')) {
		const texts = document.createTreeWalker(step, NodeFilter.SHOW_TEXT);
		while (texts.nextNode()) {
			const n = texts.currentNode;
			if (!n.data.trim()) continue;
			const range = document.createRange();
			range.selectNodeContents(n);
			look(n.parentElement, range.getBoundingClientRect(), n.data.trim());
			seen++;
		}
		for (const e of step.querySelectorAll('input, button, textarea, .square, img, svg')) look(e, e.getBoundingClientRect(), '');
		for (const h of step.querySelectorAll('.hold')) {
			const s = getComputedStyle(h);
			if (s.display !== 'block' || s.position !== 'static') out.push(h.dataset.hold + ' is laid out as ' + s.display + ', ' + s.position);
		}
	}
	if (seen < 50) out.push('only ' + seen + ' texts: the test looks in the wrong place');
	return JSON.stringify(out);
})()`

// TestAHoldIsSeenInEveryState puts a hold of every kind into every state that
// it has, and looks at a desk, on a telephone, in the short view and on paper.
func TestAHoldIsSeenInEveryState(t *testing.T) {
	t.Parallel()
	site := smallSite(t, everyHold)
	ctx, complaints := browser(t)
	address := "file://" + filepath.ToSlash(filepath.Join(site, "procedures", "every-hold.html"))
	work(t, ctx, address)
	if n := js[int](t, ctx, `new Set([...document.querySelectorAll('.hold')].map((h) => h.dataset.kind)).size`); n != 8 {
		t.Fatalf("%d of 8 kinds of holds are on the page", n)
	}
	js[any](t, ctx, `{ const real = Date.now; window.jump = 0; Date.now = () => real() + window.jump; } var own = window.baybinder.page;
		var hold = (id) => own.steps.flatMap((s) => s.holds).find((h) => h.id === id); var read = (...v) => hold('gap').fields.forEach((f, i) => type(f.field, v[i])); 0`)
	for _, state := range []struct{ name, script string }{
		{"nothing begun", `0`},
		{"the wait runs, half a reading, answers", `tick('1.1'); read('0.4', ''); press(step('1.5'), 'short: the short jaw'); type(step('1.6').querySelector('textarea'), 'J 7'); 0`},
		{"the wait is over, what was met", `window.jump = 11 * 60000; own.beat(); read('0.3', '0.5'); press(step('1.4'), 'It is good');
			for (const n of ['1.7', '1.8', '1.9']) { type(step(n).querySelector('.controls input'), 'G. M.'); press(step(n), 'Sign with the time now'); } 0`},
		{"a reading that is no number", `read('0.4', 'x'); 0`},
		{"failed", `read('0.4', '0.6'); press(step('1.4'), 'It is not good'); 0`},
		{"failed twice, another's name", `press(step('1.3'), 'Measure again'); read('0.9', '0.8'); type(document.getElementById('worker'), 'G. M.'); press(step('1.8'), 'Take back');
			type(step('1.8').querySelector('.controls input'), 'G. M.'); press(step('1.8'), 'Sign with the time now'); 0`},
		{"done with gaps, one in hand, skipped", `tick('1.2'); tick('1.9'); own.take(own.steps[3]); own.setStep(own.steps[9], 'skipped', { reason: 'no log' }); own.setStep(own.steps[10], 'skipped', { reason: 'set' }); 0`},
		{"all done", `for (const s of own.steps) own.setStep(s, 'done', {}); 0`},
	} {
		js[any](t, ctx, state.script)
		for _, view := range []struct {
			name, media string
			width       int64
		}{{"a desk", "", 1366}, {"a telephone", "", 390}, {"paper", "print", 718}} {
			show(t, ctx, view.media, view.width)
			for _, short := range []string{"false", "true"} {
				js[any](t, ctx, `document.body.classList.toggle('is-short', `+short+`); own.folds.forEach((f) => f.turn(true)); 0`)
				var found []string
				must(t, json.Unmarshal([]byte(js[string](t, ctx, unseen)), &found))
				for _, f := range found {
					t.Errorf("%s, on %s, short view %s: %s", state.name, view.name, short, f)
				}
			}
		}
		show(t, ctx, "", 1366)
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// smallSite builds a manual of a few files that has no errors.
func smallSite(t *testing.T, files map[string]string) string {
	t.Helper()
	folder, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, text := range files {
		full := filepath.Join(folder, filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, []byte(text), 0o644))
	}
	r, err := generator.Build(generator.Options{Manual: folder, To: to, Today: demoDay})
	must(t, err)
	if r.Errors() > 0 {
		for _, f := range r.Findings {
			t.Errorf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
		}
		t.FailNow()
	}
	return to
}

// show sets what the page is shown on.
func show(t *testing.T, ctx context.Context, media string, width int64) {
	t.Helper()
	resize(t, ctx, width, 900)
	_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: media})
	must(t, err)
}

// TestARunningWaitIsPrintedWhole prints a page on which a wait runs: its words
// and from when on work may go on stand on one sheet, inside the step's frame.
func TestARunningWaitIsPrintedWhole(t *testing.T) {
	t.Parallel()
	site := smallSite(t, everyHold)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.ToSlash(filepath.Join(site, "procedures", "every-hold.html")))
	js[any](t, ctx, `tick('1.1'); 0`)
	var texts []string
	must(t, json.Unmarshal([]byte(js[string](t, ctx, `JSON.stringify([step('1.2').querySelector('.hold .title').textContent, step('1.2').querySelector('.clock span').textContent, 'The oil runs down.'])`)), &texts))
	_, pages := printed(t, ctx, 8.27, 11.69)
	if !onOnePage(pages, texts) {
		t.Errorf("not on one sheet: %q", texts)
	}
	if strings.Contains(strings.Join(pages, ""), "10:00Not") || strings.Contains(strings.Join(pages, ""), "9:59Not") {
		t.Error("the paper says how long was left when it was printed")
	}
	var code []string
	must(t, json.Unmarshal([]byte(js[string](t, ctx, `JSON.stringify(document.querySelector('.listing').textContent.trim().split('\n'))`)), &code))
	if !onOnePage(pages, code) {
		t.Errorf("the log is not printed: %q", code)
	}
}

// TestTheRecordOnPaperDoesNotCountDown prints the record while a wait runs: it
// says from when on work may go on, not how long that still was at the printer.
// A reading out of its limit is said to be so before it is taken again, too.
func TestTheRecordOnPaperDoesNotCountDown(t *testing.T) {
	t.Parallel()
	site := smallSite(t, everyHold)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.ToSlash(filepath.Join(site, "procedures", "every-hold.html")))
	const row = `(() => { baybinder.printSummary(baybinder.page); return [...document.querySelectorAll('.record-sheet tr')].find((r) => r.cells[0].textContent === '%s').cells[3].textContent; })()`
	ofWait, ofGap := fmt.Sprintf(row, "1.2"), fmt.Sprintf(row, "1.3")
	until := js[string](t, ctx, `window.print = () => {}; tick('1.1'); baybinder.clock(baybinder.page.job.steps[step('1.1').id].at + 600000)`)
	is(t, ctx, ofWait, "Not before "+until+".")
	js[any](t, ctx, `{ const real = Date.now; Date.now = () => real() + 700000; baybinder.page.beat(); } 0`)
	is(t, ctx, ofWait, "The wait was over at "+until+".")
	js[any](t, ctx, `type(step('1.3').querySelector('.reading'), '0.7'); 0`)
	is(t, ctx, ofGap, "left 0.7 mm (Out of the limit.)")
	js[any](t, ctx, `press(step('1.3'), 'Measure again'); type(step('1.3').querySelector('.reading'), '0.4'); 0`)
	is(t, ctx, ofGap, "left 0.7 mm (Out of the limit.); left 0.4 mm")
}
