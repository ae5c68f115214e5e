package generator_test

import (
	"context"
	"encoding/json"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// Known: SEEN, DERIVED.

// TestLanguageSwitch: the switch stays on the step, the ticks and the unit are
// of one job, and without a script it leads to the other page.
func TestLanguageSwitch(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "isolate-compressor.html")
	work(t, ctx, page)
	js[any](t, ctx, `type(document.getElementById('unit-serial'), '425'); press(document.querySelector('.choose'), 'Use this number'); tick('1.1'); 0`)
	js[any](t, ctx, `step('2.2').scrollIntoView(); 0`)
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](`document.querySelector('.languages a').click()`), chromedp.WaitReady(`html[lang=es] .job-strip`)))
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](bayHelpers)))
	says(t, ctx, `location.pathname`, "/isolate-compressor.es.html")
	says(t, ctx, `location.search + location.hash`, "?unit=425&job=")
	says(t, ctx, `location.hash`, "#s2-")
	if !js[bool](t, ctx, `{ const b = step('2.2').getBoundingClientRect(); b.bottom > 0 && b.top < innerHeight }`) {
		t.Error("the step that was read is not in the window")
	}
	says(t, ctx, `strip()`, "Hechos 1 de")
	says(t, ctx, `state('1.1')`, "Hecho")
	js[any](t, ctx, `tick('1.2'); 0`)
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](`document.querySelector('.languages a').click()`), chromedp.WaitReady(`html[lang=en] .job-strip`)))
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](bayHelpers)))
	says(t, ctx, `strip()`, "Done 2 of")
	says(t, ctx, `document.querySelector('.unit').textContent`, "Unit 425")

	js[any](t, ctx, `scrollTo(0, 0); document.querySelector('.languages a').dispatchEvent(new Event('focus')); 0`)
	if hash := js[string](t, ctx, `document.querySelector('.languages a').hash`); hash != "" {
		t.Errorf("from the top of the page the switch leads to %s", hash)
	}
	_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	must(t, err)
	must(t, chromedp.Do(ctx, chromedp.Navigate(page), chromedp.Click(`.languages a`), chromedp.WaitReady(`html[lang=es]`)))
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// english are common English words that are no Spanish ones, from the list of
// stop words of Snowball's English stemmer.
var english = regexp.MustCompile(`(?i)\b(the|and|of|with|is|at|by|from|this|that|your|after|before)\b`)

// TestTranslatedPage: what a reader of Spanish meets is Spanish, or marked as
// English for a screen reader; both pages name each other.
func TestTranslatedPage(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	for _, name := range []string{"isolate-compressor", "restore-compressor"} {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", name+".es.html"))))
		const foreign = `document.querySelectorAll('[lang=en]').length`
		if js[int](t, ctx, foreign) < 3 {
			t.Errorf("%s: nothing is marked as English: the test looks at nothing", name)
		}
		text := js[string](t, ctx, `document.querySelectorAll('body [lang=en], script').forEach((e) => e.remove()); document.body.textContent + [...document.querySelectorAll('[aria-label]')].map((e) => e.ariaLabel).join(' ')`)
		if words := english.FindAllString(text, -1); len(words) > 0 {
			t.Errorf("%s.es: English words that are not marked: %v", name, words)
		}
		if strings.ContainsAny(text, "\ue000\ue001") {
			t.Errorf("%s.es: a sign of the program stands in the page", name)
		}
		says(t, ctx, `document.querySelector('.safety .band').textContent`, "ADVERTENCIA")
		const named = `[...document.querySelectorAll('.phase > h2')].filter((h) => ![...document.querySelectorAll('.time-line svg text')].some((x) => h.textContent.includes(x.textContent))).length + [...document.querySelectorAll('.phase > h2')].length * 100`
		if got := js[int](t, ctx, named); got < 100 || got%100 != 0 {
			t.Errorf("%s.es: %d phases, of which the time line does not name %d in the page's language", name, got/100, got%100)
		}
		says(t, ctx, `document.documentElement.lang`, "es")
	}
	all := pages(t, site)
	for _, page := range []string{"procedures/isolate-compressor.html", "procedures/isolate-compressor.es.html"} {
		var languages []string
		for _, e := range elements(t, all[page]) {
			if e.tag == "link" && e.attr["rel"] == "alternate" {
				languages = append(languages, e.attr["hreflang"]+" "+e.attr["href"])
			}
		}
		if want := []string{"en ../procedures/isolate-compressor.html", "es ../procedures/isolate-compressor.es.html"}; !slices.Equal(languages, want) {
			t.Errorf("%s names %q, want %q", page, languages, want)
		}
	}
	if strings.Contains(string(all["procedures/isolate-press.html"]), "hreflang") {
		t.Error("a page that nobody has translated offers a language")
	}
}

// spanishStates are what a technician does on a Spanish page, so that each word
// that the script can say is said: each is shown, and then read.
var spanishStates = []string{
	`type(document.getElementById('unit-serial'), '9999'); press(document.querySelector('.choose'), 'Usar este número'); 0`,
	`type(document.getElementById('unit-serial'), '425'); press(document.querySelector('.choose'), 'Usar este número'); 0`,
	`named('A. V.'); tick('1.1'); tick('1.4'); baybinder.page.take(baybinder.page.steps[1]); 0`,
	`step('1.2').querySelector('.more').open = true; baybinder.page.steps.find((s) => s.number === '1.2').wrong(); 0`,
	`answer('Cancelar').then(() => { const s = baybinder.page.steps.find((s) => !s.guarded && !s.settled); s.skip(); })`,
	`answer('Cancelar').then(() => baybinder.page.folds.forEach((f) => f.turn(true)))`,
	`for (const f of document.querySelectorAll('.reading')) type(f, '99'); for (const f of document.querySelectorAll('.hold .words')) type(f, 'x'); 0`,
	`for (const f of document.querySelectorAll('.reading')) type(f, 'x'); 0`,
	`for (const h of baybinder.page.steps.flatMap((s) => s.holds)) { if (h.no) h.no.click(); if (h.put) h.put.click(); if (h.start) h.start.click(); } 0`,
	`for (const s of baybinder.page.steps) if (s.applies && s.state !== 'done') tick(s.number); 0`,
	`{ const real = Date.now; Date.now = () => real() + 3 * 3600000; baybinder.page.beat(); baybinder.page.show(); } 0`,
	`for (const s of baybinder.page.steps.filter((s) => s.handOver)) { type(s.handOver.fields.from, 'A'); s.handOver.signed(); type(s.handOver.fields.to, 'B'); s.handOver.signed(); } 0`,
	`for (const r of baybinder.page.closeOut.rows) { calm(); r.press(); } 0`,
	`for (const word of ['NoStore', 'FullStore', 'DamagedStore']) baybinder.page.warn(baybinder.words[word]); baybinder.page.clockBack(90000); baybinder.page.taken(null); 0`,
	`baybinder.page.job.revision = 'X'; baybinder.page.job.steps.gone = { state: 'done', at: 1 }; baybinder.page.meetRevision(); 0`,
	`window.print = () => {}; baybinder.printSummary(baybinder.page); baybinder.reopen(baybinder.page, '{}'); baybinder.page.startAgain(); 0`,
	`answer('Cancelar').then(() => baybinder.page.chooser.ask([{ key: 'x', job: baybinder.page.job }, { key: 'y', job: baybinder.page.job }]))`,
	`baybinder.page.chooser.ask([{ key: 'x', job: baybinder.page.job }]); 0`,
}

// TestEveryStateOfASpanishPageIsSpanish plays a job on a Spanish page through
// its states and its troubles, and reads the whole page after each: its texts,
// its fields' names, its questions.
func TestEveryStateOfASpanishPageIsSpanish(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	for _, name := range []string{"isolate-compressor", "restore-compressor"} {
		bayPage(t, ctx, "file://"+filepath.Join(site, "procedures", name+".es.html"))
		for _, state := range spanishStates {
			js[any](t, ctx, state)
			text := js[string](t, ctx, `{ const copy = document.body.cloneNode(true); copy.querySelectorAll('[lang=en], script').forEach((e) => e.remove());
				copy.textContent + [...copy.querySelectorAll('[aria-label], [title], [placeholder]')].map((e) => [e.ariaLabel, e.title, e.placeholder].join(' ')).join(' '); }`)
			if words := english.FindAllString(text, -1); len(words) > 0 {
				t.Errorf("%s, after %.60s: English words: %v", name, state, words)
			}
			if len(text) < 2000 {
				t.Errorf("%s, after %.60s: only %d letters: the test looks at nothing", name, state, len(text))
			}
		}
	}
}

// TestNoWordOfTheBayIsLeftInEnglish compares the tables of words that the
// scripts have: what is the same in both languages holds no word of English.
func TestNoWordOfTheBayIsLeftInEnglish(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	table := func(page string) map[string]string {
		t.Helper()
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", page))))
		var words map[string]string
		must(t, json.Unmarshal([]byte(js[string](t, ctx, `JSON.stringify(baybinder.words)`)), &words))
		return words
	}
	en, es := table("isolate-compressor.html"), table("isolate-compressor.es.html")
	if len(en) != len(es) || len(en) < 100 {
		t.Errorf("%d words in English, %d in Spanish", len(en), len(es))
	}
	for key, words := range es {
		if found := english.FindAllString(words, -1); len(found) > 0 || words == en[key] && strings.Contains(words, " ") {
			t.Errorf("%s: %q", key, words)
		}
	}
}

// TestTheCalendarIsSpanish: units that have no symbol are words of the page's
// language.
func TestTheCalendarIsSpanish(t *testing.T) {
	t.Parallel()
	all := unparted(pages(t, smallSite(t, map[string]string{
		"shop.yaml": "title: Taller\nlanguage: es\nreview-every: 12 months\n", "register/roles.yaml": "a: { name: Prensa, renew-every: 1 year }\n",
		"register/tools.yaml": "t: { name: llave, kind: torque-wrench, range: 5 to 25 N·m, calibration: { every: 6 months, last: 2026-01-05 } }\n",
		"procedures/x.md":     "---\ntitle: Prensa\nneeds: [a]\ntools: [t]\n---\n\n## Trabajo\n\n1. Use la [](tool:t). [](role:a)\n",
	})))
	for page, want := range map[string]string{"roles/a.html": "1 año", "tools/t.html": "2026-01-05 + 6 meses"} {
		if text := string(all[page]); !strings.Contains(text, want) || strings.Contains(text, "month") || strings.Contains(text, "1 year") {
			t.Errorf("%s does not say %q, or says it in English", page, want)
		}
	}
}

// TestSearchInSpanish: forms of one word find the page by the Spanish stem
// (vaciar, vaciado; candado, candados), with and without accents.
func TestSearchInSpanish(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "search.html"))))
	for query, want := range map[string]string{
		"vaciar depósito": "isolate-compressor.es", "vaciando el deposito": "isolate-compressor.es", "candado": "isolate-compressor.es",
		"presiones": "isolate-compressor.es", "desbloquear compresor": "restore-compressor.es", "secciondor": "isolate-compressor.es",
		"blow down": "isolate-compressor.html",
	} {
		got := js[string](t, ctx, `window.baybinder.find('', "`+query+`", 3).then((r) => r.hits.map((h) => h.address).join(' '))`)
		if !strings.Contains(got, "/"+want) {
			t.Errorf("%q finds %s, not %s", query, got, want)
		}
	}
	const first = `window.baybinder.find('', "G-03", 9).then((r) => r.hits.map((h) => h.address).find((a) => a.includes('isolate-compressor')))`
	says(t, ctx, first, "isolate-compressor.html")
	js[any](t, ctx, `document.documentElement.lang = 'es'; 0`)
	says(t, ctx, first, "isolate-compressor.es.html")
}

// TestReflow: at 200 % zoom of a window of 1280 px, and at 320 px (WCAG 2.2,
// 1.4.4 and 1.4.10), nothing needs to be moved sideways.
func TestReflow(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	for _, view := range []struct {
		name  string
		width int64
		scale float64
	}{{"200 %", 640, 2}, {"320 px", 320, 1}} {
		for _, page := range pageKinds {
			file := "file://" + filepath.Join(site, filepath.FromSlash(page))
			must(t, chromedp.Do(ctx, chromedp.EmulateViewport(view.width, 450, chromedp.EmulateScale(view.scale)), chromedp.Navigate(file)))
			sideways(t, ctx, page, view.name)
		}
	}
}

func style(t *testing.T, ctx context.Context, selector, property string) string {
	t.Helper()
	return js[string](t, ctx, `getComputedStyle(document.querySelector('`+selector+`')).`+property)
}

// TestForcedColours: with the system's own colours the signal words keep
// theirs (ANSI Z535.1 orange as the theme has it), a hold and the emergency strip
// keep a frame, and signs keep their ground.
func TestForcedColours(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	emulate(t, ctx, "", "forced-colors", "active")
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", "isolate-compressor.es.html"))))
	if !js[bool](t, ctx, `matchMedia('(forced-colors: active)').matches`) {
		t.Fatal("the browser does not force colours")
	}
	if got := style(t, ctx, ".safety.warning .band", "backgroundColor"); got != "rgb(255, 130, 0)" {
		t.Errorf("the band of a warning is %s", got)
	}
	if got := style(t, ctx, ".hold", "borderTopWidth"); got != "6px" {
		t.Errorf("the frame of a hold is %s", got)
	}
	if got := style(t, ctx, "svg.sign", "forcedColorAdjust"); got != "none" {
		t.Errorf("the colours of signs are %s", got)
	}
	if got := style(t, ctx, ".emergency", "borderTopStyle"); got != "solid" {
		t.Errorf("the frame of the emergency strip is %s", got)
	}
	if got := style(t, ctx, ".tabs a", "backgroundColor"); got == "rgb(239, 237, 228)" {
		t.Error("the theme's colour stands where the system's should")
	}
}

// TestDark: the screen is dark where the reader asks for it, paper is not, the
// colours of a warning stay, and signs and drawings stand on white.
func TestDark(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "isolate-compressor.html")
	emulate(t, ctx, "", "prefers-color-scheme", "dark")
	must(t, chromedp.Do(ctx, chromedp.Navigate(page)))
	for _, c := range []struct{ selector, property, want string }{
		{".sheet", "backgroundColor", "rgb(20, 23, 26)"}, {".safety.warning .band", "backgroundColor", "rgb(255, 130, 0)"},
		{".safety.warning .band", "color", "rgb(0, 0, 0)"}, {".safety svg.sign", "backgroundColor", "rgb(255, 255, 255)"},
		{"img.picture", "backgroundColor", "rgb(255, 255, 255)"},
	} {
		if got := style(t, ctx, c.selector, c.property); got != c.want {
			t.Errorf("%s of %s is %s, want %s", c.property, c.selector, got, c.want)
		}
	}
	emulate(t, ctx, "print", "prefers-color-scheme", "dark")
	if got := style(t, ctx, ".sheet", "backgroundColor"); got != "rgb(255, 255, 255)" {
		t.Errorf("paper is %s", got)
	}
	if got := style(t, ctx, ".sheet", "color"); got != "rgb(23, 25, 28)" {
		t.Errorf("ink on paper is %s", got)
	}
}

// TestKeyboardOnly goes through a page with Tab, ticks with the space bar and
// changes the language with Enter; what has the focus can be seen.
func TestKeyboardOnly(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	work(t, ctx, "file://"+filepath.Join(site, "procedures", "isolate-compressor.html"))
	tab := func(selector string) {
		t.Helper()
		for range 80 {
			must(t, chromedp.Do(ctx, chromedp.KeyEvent("\t")))
			if js[bool](t, ctx, `document.activeElement.matches('`+selector+`')`) {
				if !js[bool](t, ctx, `{ const s = getComputedStyle(document.activeElement), b = document.activeElement.getBoundingClientRect();
					s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 && b.top >= 0 && b.bottom <= innerHeight }`) {
					t.Errorf("%s has the focus and it cannot be seen", selector)
				}
				return
			}
		}
		t.Fatalf("Tab does not reach %s", selector)
	}
	tab(".skip")
	tab(".find input")
	tab(".languages a")
	tab("#unit-serial")
	tab(".tick")
	must(t, chromedp.Do(ctx, chromedp.KeyEvent(" ")))
	says(t, ctx, `strip()`, "Done 1 of")
	is(t, ctx, `document.activeElement.matches('#s1-2 .tick')`, true) // the focus goes on by itself
	for range 80 {                                                    // back to the switch
		must(t, chromedp.Do(ctx, chromedp.KeyEvent("\t", chromedp.KeyModifiers(2*4))))
		if js[bool](t, ctx, `document.activeElement.matches('.languages a')`) {
			break
		}
	}
	must(t, chromedp.Do(ctx, chromedp.KeyEvent("\r"), chromedp.WaitReady(`html[lang=es] .job-strip`)))
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](bayHelpers)))
	says(t, ctx, `strip()`, "Hechos 1 de")
}
