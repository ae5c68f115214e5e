package generator_test

import (
	"encoding/json"
	"fmt"
	"net/http/httptest"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"baybinder/generator/command/browse"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
)

// TestTwoTabsDoNotFight works on one job in two tabs, from file: and over
// browse: each sees what the other ticked, none loses a tick, and a tab that
// has not heard of the other's tick yet does not write over it.
func TestTwoTabsDoNotFight(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	server := httptest.NewServer(browse.Handler(site))
	defer server.Close()
	ctx, _ := browser(t)
	for _, at := range []string{"file://" + filepath.ToSlash(site), server.URL} {
		address := at + "/procedures/isolate-tug-traction.html"
		other, done := chromedp.NewContext(ctx)
		defer done()
		work(t, ctx, address)
		work(t, other, address)
		js[any](t, ctx, `tick('1.1'); 0`)
		heard := func(n int) string {
			return fmt.Sprintf(`until(() => strip().includes('Done %d of')).then(strip)`, n)
		}
		says(t, other, heard(1), "Done 1 of")
		says(t, other, `document.querySelector('.at-hand').textContent`, "another tab")
		js[any](t, other, `tick('1.2'); 0`)
		says(t, ctx, heard(2), "Done 2 of")
		// a tab that is deaf: it hears of the other's tick only when it writes
		js[any](t, other, `window.baybinder.page.taken = ((real) => function (job) { if (window.deaf) return; real.call(this, job); })(window.baybinder.page.taken); window.deaf = true;
			var arrived = new Promise((done) => addEventListener('storage', (e) => { if ((e.newValue || '').split('"done"').length === 4) done(0); }, true)); 0`)
		js[any](t, ctx, `tick('1.3'); 0`)
		js[any](t, other, `arrived`)
		if got := js[string](t, other, `strip()`); !strings.Contains(got, "Done 2 of") {
			t.Errorf("%s: the deaf tab has heard: %s", at, got)
		}
		js[any](t, other, `window.deaf = false; tick('1.4'); 0`)
		says(t, other, `strip()`, "Done 4 of")
		says(t, ctx, heard(4), "Done 4 of")
		work(t, ctx, address)
		says(t, ctx, `strip()`, "Done 4 of")
		says(t, ctx, `strip()`, "gaps: ")
	}
}

// TestAFailedHoldAndItsBranch: to tick a step whose hold failed and to do what
// the manual says for then is no gap. It is one where the branch is left out,
// where the hold is not met when it is taken anew, and where there is no branch.
func TestAFailedHoldAndItsBranch(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	bay := func(name string) {
		t.Helper()
		work(t, ctx, "file://"+filepath.Join(site, "procedures", name+".html"))
		js[any](t, ctx, `localStorage.clear(); 0`)
		work(t, ctx, "file://"+filepath.Join(site, "procedures", name+".html")+"?unit=112")
		js[any](t, ctx, `const real = Date.now; let jump = 0; Date.now = () => real() + jump; var later = (n) => { jump += n * 60000; window.baybinder.page.beat(); };
			var upTo = (n) => { for (const s of window.baybinder.page.steps) { if (s.number === n) return; if (s.applies && !s.waiting) { tick(s.number); later(11); } } };
			var read = (n, ...v) => { step(n).querySelectorAll('.reading').forEach((f, i) => type(f, v[i])); };
			var proved = (n) => press(step(n), 'Tester proved before and after');
			var gaps = () => window.baybinder.page.job.gaps.map((g) => g.step + ' past ' + g.unticked.join(' ') + '/' + g.keys.map((k) => k.split('/')[1]).join(' ')).join('; ');
			var stands = () => [...document.querySelectorAll('.standing dd')].filter((e) => e.textContent.includes('80 V traction circuit')).map((e) => e.previousElementSibling.textContent.split(':')[0]).join(', ');
			var doubt = () => String(Boolean(document.querySelector('.job-strip .doubt'))); 0`)
	}
	is := func(expression, want string) {
		t.Helper()
		if got := js[string](t, ctx, expression); got != want {
			t.Errorf("%s is %q, want %q", expression, got, want)
		}
	}
	failed := func() {
		t.Helper()
		bay("isolate-tug-traction")
		js[any](t, ctx, `upTo('4.3'); 0`)
		is(`gaps() + doubt()`, "false")
		js[any](t, ctx, `read('4.3', '6.1', '3.9', '0.2'); tick('4.3'); 0`)
		is(`gaps()`, "")
		is(`doubt()`, "true") // it is not dead yet
		is(`stands()`, "released")
		says(t, ctx, `state('4.3')`, "Its limit is not met: step 4.4 is next.")
	}

	failed()
	js[any](t, ctx, `later(11); tick('4.4.1'); read('4.4.2', '0.4', '0.3', '0.2'); proved('4.4.2'); tick('4.4.2'); tick('4.4'); tick('4.6'); 0`)
	is(`gaps()`, "")
	is(`doubt()`, "false")
	is(`stands()`, "dead")
	if got := js[string](t, ctx, `state('4.3')`); strings.Contains(got, "not met") {
		t.Errorf("what is done is still asked for: %s", got)
	}

	failed() // the branch is left out
	js[any](t, ctx, `tick('4.6'); 0`)
	is(`gaps()`, "4.6 past 4.4.1 4.4.2 4.4/traction-dead")
	is(`doubt()`, "true")

	failed() // taken anew, still too high
	js[any](t, ctx, `later(11); tick('4.4.1'); read('4.4.2', '5.4', '0.3', '0.2'); proved('4.4.2'); tick('4.4.2'); 0`)
	is(`gaps()`, "4.4.2 past /traction-dead")
	js[any](t, ctx, `tick('4.4'); tick('4.6'); 0`)
	is(`gaps()`, "4.4.2 past /traction-dead; 4.6 past /traction-dead")

	failed() // taken anew, the tester not proved
	js[any](t, ctx, `later(11); tick('4.4.1'); read('4.4.2', '0.4', '0.3', '0.2'); tick('4.4.2'); 0`)
	is(`gaps()`, "4.4.2 past /traction-dead")

	bay("isolate-tug-traction") // nothing was read: there is nothing to branch on
	js[any](t, ctx, `upTo('4.3'); tick('4.3'); 0`)
	is(`gaps()`, "4.3 past /traction-dead")

	bay("drive-off-and-stop-test") // a hold without a branch
	js[any](t, ctx, `upTo('3.4'); read('3.4', '2.3'); tick('3.4'); 0`)
	is(`gaps()`, "3.4 past /stop-distance")

	bay("renew-hitch-pin-and-bush") // two branches, and none of them takes the hold anew
	js[any](t, ctx, `var at = (id) => window.baybinder.page.steps.filter((s) => s.holds.some((h) => h.id === id))[0].number, hitch = at('hitch-bore');
		upTo(hitch); read(hitch, '31', '31', '31', '31'); var before = gaps(); tick(hitch); 0`)
	is(`before === gaps() ? '' : gaps()`, "")
	js[any](t, ctx, `var branch = window.baybinder.page.steps.filter((s) => s.outcomes.includes('if-not:hitch-bore')).map((s) => s.number);
		for (const s of window.baybinder.page.steps) if (!s.settled) { for (const h of s.holds) if (h.kind === 'look') h.set({ good: true }); tick(s.number); } 0`)
	if n := js[int](t, ctx, `branch.length`); n < 2 {
		t.Errorf("the demo has %d branches of the hold: the test looks at nothing", n)
	}
	if got := js[string](t, ctx, `gaps()`); strings.Contains(got, "hitch-bore") {
		t.Errorf("both branches are done: %s", got)
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// TestAFullStoreAtTheBay fills the browser's store for real.
func TestAFullStoreAtTheBay(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.Join(site, "procedures", "isolate-tug-traction.html"))
	js[any](t, ctx, `tick('1.1'); { let size = 1 << 20, n = 0; while (size >= 1) { try { localStorage.setItem('other-' + n++, 'x'.repeat(size)); } catch { size = Math.floor(size / 2); } } } 0`)
	js[any](t, ctx, `tick('1.2'); tick('1.3'); 0`)
	says(t, ctx, `document.querySelector('.trouble').textContent`, "no room left")
	says(t, ctx, `strip()`, "Done 3 of")
	text := savedRecord(t, ctx)
	if n := strings.Count(text, `"state": "done"`); n != 3 {
		t.Errorf("the record has %d of 3 ticks", n)
	}
	js[any](t, ctx, `Object.keys(localStorage).filter((k) => k.startsWith('other-')).forEach((k) => localStorage.removeItem(k)); tick('1.4'); 0`)
	if got := js[string](t, ctx, `document.querySelector('.trouble').textContent`); got != "" {
		t.Errorf("the store has room again, the page says %q", got)
	}
	work(t, ctx, "file://"+filepath.Join(site, "procedures", "isolate-tug-traction.html"))
	says(t, ctx, `strip()`, "Done 4 of")
}

// TestOverBrowse works a piece of a job over the program's own server: ticks
// stay over a reload, the search finds.
func TestOverBrowse(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	server := httptest.NewServer(browse.Handler(site))
	defer server.Close()
	ctx, _ := browser(t)
	address := server.URL + "/procedures/isolate-tug-traction.html"
	work(t, ctx, address+"?unit=112")
	says(t, ctx, `document.querySelector('.unit').textContent`, "112")
	js[any](t, ctx, `tick('1.1'); tick('1.2'); 0`)
	work(t, ctx, address)
	says(t, ctx, `strip()`, "Done 2 of")
	says(t, ctx, `location.search`, "?unit=112")
	got := js[string](t, ctx, `window.baybinder.find('../', 'contactor panel', 3).then((r) => r.hits.map((h) => h.address).join(' '))`)
	if !strings.Contains(got, "replace-contactor-panel") {
		t.Errorf("over browse the search finds %q", got)
	}
}

// controls are what is touched at the bay: buttons, fields, folds, tabs. Links
// within a sentence are read, and may be as high as their line (WCAG 2.2,
// 2.5.8, exception "inline").
const controls = `JSON.stringify([...document.querySelectorAll('button, summary, input, textarea, select, .tabs a, .phases a, .shop, .hits a, .skip:focus')]
	.filter((e) => e.checkVisibility() && !e.hidden && !e.closest('[hidden]'))
	.map((e) => { const target = e.type === 'checkbox' ? e.closest('label') || e : e, r = target.getBoundingClientRect(); return { what: e.tagName + ' ' + e.className + ' ' + (e.textContent || e.ariaLabel || '').slice(0, 40), w: r.width, h: r.height }; })
	.filter((x) => x.w < 44 || x.h < 43.9))`

// TestTargetsAtTheBay measures every control of bay pages, at a desk and on a
// telephone, also of the dialog.
func TestTargetsAtTheBay(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	for _, width := range []int64{1280, 390} {
		for _, name := range []string{"isolate-tug-traction", "replace-contactor-panel", "check-press-guard", "set-safety-catches"} {
			work(t, ctx, "file://"+filepath.Join(site, "procedures", name+".html"))
			resize(t, ctx, width, 900)
			js[any](t, ctx, `document.querySelectorAll('details').forEach((d) => { d.open = true; }); press(document.querySelector('.more'), 'This step is wrong'); 0`)
			if n := js[int](t, ctx, `document.querySelectorAll('button').length`); n < 20 {
				t.Errorf("%s at %d px: only %d buttons", name, width, n)
			}
			var small []struct {
				What string
				W, H float64
			}
			must(t, json.Unmarshal([]byte(js[string](t, ctx, controls)), &small))
			for _, s := range small {
				t.Errorf("%s at %d px: %s is %.0f × %.0f px", name, width, strings.Join(strings.Fields(s.What), " "), s.W, s.H)
			}
		}
	}
}

// TestAJobByKeyboard works a whole job with Tab, Space and figures: the focus
// goes through the page in its order, and is seen where it is.
func TestAJobByKeyboard(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.Join(site, "procedures", "isolate-press.html"))
	type focus struct {
		What, Step        string
		Pressed, Outlined bool
	}
	const at = `(() => { const e = document.activeElement, s = getComputedStyle(e);
		return JSON.stringify({ What: e.classList.contains('tick') ? 'tick' : e.classList.contains('reading') ? 'reading' : e.tagName === 'BODY' ? 'body' : e.textContent,
			Step: (e.closest('li.step') || { dataset: {} }).dataset.step || '', Pressed: e.getAttribute('aria-pressed') === 'true', Outlined: s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 }); })()`
	key := func(k string) {
		t.Helper()
		must(t, chromedp.Do(ctx, chromedp.KeyEvent(k)))
	}
	ticked, typed, last := 0, 0, ""
	for moved := false; ; {
		if !moved {
			key(kb.Tab)
		}
		moved = false
		var f focus
		must(t, json.Unmarshal([]byte(js[string](t, ctx, at)), &f))
		if f.What == "body" {
			break
		}
		if !f.Outlined {
			t.Errorf("the focus on %q of step %s is not seen", f.What, f.Step)
		}
		switch {
		case f.What == "tick" && f.Step != "" && !f.Pressed:
			js[any](t, ctx, `calm(); 0`)
			key(" ")
			moved = true // the focus goes to the next step by itself
			ticked++
			last = f.Step
		case f.What == "reading":
			key("0")
			typed++
		}
	}
	steps := js[int](t, ctx, `window.baybinder.page.steps.filter((s) => s.applies).length`)
	done := js[int](t, ctx, `window.baybinder.page.steps.filter((s) => s.state === 'done').length`)
	if done < steps-1 || ticked == 0 || typed == 0 {
		t.Errorf("by keyboard %d of %d steps are ticked (%d presses, %d readings, the last at %s)", done, steps, ticked, typed, last)
	}
}

// TestTwoPersonSteps: a step for two people shows the words of each post, and
// asks who calls.
func TestTwoPersonSteps(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.Join(site, "procedures", "set-safety-catches.html"))
	for _, want := range []string{"2 people at once", "at the control column, hand on the buttons", "in front of the hoist, in sight of both sides", "Agree who calls"} {
		says(t, ctx, `step('5.3').querySelector('.tags').textContent`, want)
	}
}

// TestFirstAidIsOneTouchAway: on every kind of page the strip is in the window
// wherever it is scrolled to, and one touch opens what to do.
func TestFirstAidIsOneTouchAway(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	const look = `(async () => {
		const strip = document.querySelector('.emergency summary'), aid = document.querySelector('.emergency .aid'), out = [];
		for (const y of [0, document.documentElement.scrollHeight / 2, document.documentElement.scrollHeight]) {
			scrollTo(0, y);
			await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
			const r = strip.getBoundingClientRect();
			if (r.top < 0 || r.bottom > innerHeight + 1 || r.height < 44) out.push('at ' + y + ' the strip is at ' + r.top + ' to ' + r.bottom);
			const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
			if (!hit || !strip.contains(hit)) out.push('at ' + y + ' something lies over the strip');
		}
		if (aid.checkVisibility()) out.push('it is open already');
		strip.click();
		if (!aid.checkVisibility() || aid.textContent.trim().length < 20) out.push('a touch shows nothing');
		strip.click();
		if (aid.checkVisibility()) out.push('a second touch does not shut it');
		return out.join('; ');
	})()`
	for _, name := range append([]string{"machines/air-compressor.torque.html", "machines/air-compressor.fluids.html", "supplies/separator-element.html"}, pageKinds...) {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, filepath.FromSlash(name)))))
		for _, width := range []int64{1280, 390} {
			resize(t, ctx, width, 900)
			if got := js[string](t, ctx, look); got != "" {
				t.Errorf("%s at %d px: %s", name, width, got)
			}
		}
	}
}

// TestBeforeYouStart reads the first box of two pages by hand from the demo's
// files: every role, with the step that brings it where the front matter has
// it not; one place for each thing to fetch; first aid for every hazard.
func TestBeforeYouStart(t *testing.T) {
	t.Parallel()
	r := demo(t)
	s := procedure.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, nil, demoDay, false)))
	for _, p := range s.Shown {
		v := s.Procedure(p)
		items := map[string]string{}
		for _, shelf := range v.Before.Shelves {
			for _, it := range shelf.Items {
				if was, twice := items[it.Address]; twice {
					t.Errorf("%s: %s is fetched from %s and from %s", p.ID, it.Name, was, shelf.Place)
				}
				items[it.Address] = shelf.Place
			}
		}
		listed := map[string]bool{}
		for _, role := range p.Needs {
			listed[role.To.Label()] = true
		}
		for _, who := range v.Before.Who {
			if listed[who.Name] != (who.Note == "") {
				t.Errorf("%s: %s is listed: %v, the page says it comes from step %q", p.ID, who.Name, listed[who.Name], who.Note)
			}
			delete(listed, who.Name)
		}
		for name := range listed {
			t.Errorf("%s: the page does not name %s", p.ID, name)
		}
		for _, h := range p.Hazards {
			if h.To.Harm != "damage" && !slices.ContainsFunc(v.FirstAid, func(a page.Aid) bool { return a.Hazard == h.To.Label() && a.Text != "" }) {
				t.Errorf("%s: no first aid for %s", p.ID, h.To.Label())
			}
		}
	}
}

// TestTheMovesAreWhereThingsStand plays the moves that the script plays, of
// every page of the demo: after each step they come to the list of that step,
// which is the walk's own, and at the end to the list at the page's end.
func TestTheMovesAreWhereThingsStand(t *testing.T) {
	t.Parallel()
	r := demo(t)
	s := procedure.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, nil, demoDay, false)))
	looked := 0
	for _, p := range s.Shown {
		v, there := s.Procedure(p), map[int]bool{}
		play := func(at, moves string, want []procedure.Stood) {
			for _, m := range strings.Fields(moves) {
				n, err := strconv.Atoi(strings.Trim(m, "-?"))
				must(t, err)
				there[n] = !strings.HasPrefix(m, "-")
			}
			var got []procedure.Stood
			for n, is := range there {
				if is {
					got = append(got, v.Stood[n])
				}
			}
			if len(got) != len(want) || slices.ContainsFunc(want, func(x procedure.Stood) bool { return !slices.Contains(got, x) }) {
				t.Errorf("%s, %s: the moves come to %v, and it is %v", p.ID, at, got, want)
			}
			looked += len(want)
		}
		var step func(v *procedure.Step)
		step = func(v *procedure.Step) {
			for i := range v.Subs {
				step(&v.Subs[i])
			}
			play(v.Number, v.Moves, v.Stand)
		}
		for n, at := range s.Walks.StandAtStart(p) {
			if n == 0 && v.StoodAtStart == "" {
				t.Errorf("%s: the page does not say that it is found with %v", p.ID, at.Thing)
			}
		}
		for _, m := range strings.Fields(v.StoodAtStart) {
			n, err := strconv.Atoi(strings.Trim(m, "?"))
			must(t, err)
			there[n] = true
		}
		for _, ph := range v.Phases {
			for _, part := range ph.Parts {
				if part.Step != nil {
					step(part.Step)
				}
			}
		}
		play("the end", "", v.Stand)
	}
	if looked < 500 {
		t.Errorf("only %d lines were compared: the test looks at nothing", looked)
	}
}
