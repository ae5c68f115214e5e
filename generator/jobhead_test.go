package generator_test

import (
	"path/filepath"
	"strings"
	"testing"
)

// seen counts the elements that a reader sees.
const seen = `var seen = (selector, words) => [...document.querySelectorAll(selector)].filter((e) => e.checkVisibility() && (!words || e.textContent.includes(words))).length; 0`

// TestAConditionIsSaidOnce: what every step asks of the unit stands at the head
// alone, and a paragraph that says only that is not printed beside it. Once the
// unit is chosen, what is not of it is gone, and each phase says what was left out.
func TestAConditionIsSaidOnce(t *testing.T) {
	site := demoSite(t)
	ctx, _ := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "replace-contactor-panel.html")
	work(t, ctx, page)
	js[any](t, ctx, seen)
	for words, want := range map[string]int{"Only with: Lithium pack": 1, "On lithium tugs only": 0} {
		if got := js[int](t, ctx, `document.getElementById('main').textContent.split('`+words+`').length - 1`); got != want {
			t.Errorf("%q stands %d times, want %d", words, got, want)
		}
	}
	if js[int](t, ctx, `seen('.phase .when[data-of-unit]')`) == 0 {
		t.Fatal("no step of the page asks for anything else of the unit")
	}
	for unit, gone := range map[string]string{"112": "3.8", "140": "3.7"} { // panel mod 0, mod 3
		work(t, ctx, page+"?unit="+unit)
		js[any](t, ctx, seen)
		if got := js[int](t, ctx, `seen('.phase .when[data-of-unit]')`); got != 0 {
			t.Errorf("unit %s: %d conditions on the unit are still asked", unit, got)
		}
		if js[bool](t, ctx, `step('`+gone+`').checkVisibility()`) {
			t.Errorf("unit %s: step %s is still there", unit, gone)
		}
		says(t, ctx, `step('3.1').closest('.phase').querySelector('.left-out').textContent`, "left out: "+gone)
	}
	work(t, ctx, page+"?unit=112#"+js[string](t, ctx, `step('3.8').id`))
	if !js[bool](t, ctx, `step('3.8').checkVisibility()`) {
		t.Error("a link to a step that was left out leads nowhere")
	}
}

// TestTheHeadOfAJob: the unit, who works and the way in come first; the way in
// asks for the unit, leads to the step in hand and says where that is; what is
// fetched is ticked and folds; saving stands behind the steps.
func TestTheHeadOfAJob(t *testing.T) {
	site := demoSite(t)
	ctx, complaints := browser(t)
	page := "file://" + filepath.Join(site, "procedures", "isolate-tug-traction.html")
	work(t, ctx, page)
	js[any](t, ctx, `var go = document.querySelector('.press.large'); go.click(); 0`)
	says(t, ctx, `go.textContent + document.querySelector('.at-hand').textContent + document.activeElement.id`, "BeginChoose the unit first")
	says(t, ctx, `document.activeElement.id`, "unit-serial")
	work(t, ctx, page+"?unit=112")
	for _, size := range [][2]int64{{1366, 768}, {390, 844}} {
		resize(t, ctx, size[0], size[1])
		js[any](t, ctx, `scrollTo(0, 0); document.querySelector('.press.large').dispatchEvent(new MouseEvent('click', { detail: 1 })); 0`)
		if got := js[string](t, ctx, inSight); got != "" {
			t.Errorf("at %d px: %s", size[0], got)
		}
	}
	js[any](t, ctx, `document.querySelector('.press.large').click(); 0`) // as with a key
	is(t, ctx, `document.activeElement.textContent`, "All of it is here")
	first := js[string](t, ctx, `[...document.querySelectorAll('#main h1, #main .unit, #worker, .press.large, .before, .phase, .job-end')].map((e) => e.tagName === 'H1' ? 'title' : e.id === 'worker' ? 'who' : e.classList.contains('large') ? 'begin' : e.classList[0]).join(' ')`)
	if !strings.HasPrefix(first, "title unit who begin before phase") || !strings.HasSuffix(first, "phase job-end") {
		t.Errorf("the page's order is %s", first)
	}

	js[any](t, ctx, `var things = [...document.querySelectorAll('.got input')]; things[0].click(); 0`)
	says(t, ctx, `document.querySelector('.before > h2').textContent`, "1 of ")
	js[any](t, ctx, `things.slice(1).forEach((x) => x.click()); tick('1.1'); 0`)
	work(t, ctx, page)
	js[any](t, ctx, seen)
	if len(js[string](t, ctx, `document.querySelector('.before > h2 small').textContent`)) == 0 || js[int](t, ctx, `seen('.before .fetch')`) != 0 {
		t.Error("what was fetched is not folded after a reload")
	}
	says(t, ctx, `document.querySelector('.press.large').textContent`, "Go on at 1.2")
	js[any](t, ctx, `press(document.querySelector('.before'), 'Show'); 0`)
	if js[int](t, ctx, `seen('.before .fetch')`) == 0 {
		t.Error("the fold does not open")
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}
