package generator_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// jobStates are states of a job on the page of every hold, each after the one
// before it.
var jobStates = []struct{ name, how string }{
	{"a wait runs, and holds are not met", `tick('1.1'); { const f = step('1.3').querySelectorAll('.reading'); type(f[0], '0.4'); type(f[1], '0.9'); } baybinder.page.steps[3].holds[0].no.click(); 0`},
	{"ticked past open holds, and troubles", `tick('1.2'); tick('1.3'); tick('1.5'); baybinder.page.folds.forEach((f) => f.turn(true)); baybinder.page.say('There is no room left for ticks.'); baybinder.page.warn('This job was changed in another tab.', 'tab'); 0`},
	{"a question", `baybinder.page.startAgain(); 0`},
	{"all is done", `answer('Cancel').then(() => { for (const s of baybinder.page.steps) if (s.applies && s.state !== 'done') tick(s.number); })`},
}

// jobViews are the screens on which each state is judged: those of the bay, a
// window of 1,280 px at 200 and 400 %, and what a reader may have set.
var jobViews = []struct {
	name           string
	width          int64
	feature, value string
}{
	{"1366 px", 1366, "prefers-color-scheme", "light"}, {"390 px", 390, "prefers-color-scheme", "light"}, {"320 px, or 400 %", 320, "prefers-color-scheme", "light"},
	{"200 %", 640, "prefers-color-scheme", "light"}, {"the dark", 1366, "prefers-color-scheme", "dark"}, {"forced colours", 1366, "forced-colors", "active"},
	{"reduced motion", 390, "prefers-reduced-motion", "reduce"},
}

// TestEveryStateIsAccessible judges a job in its states by axe-core: on every
// screen nothing is found, and nothing is wider than the window.
func TestEveryStateIsAccessible(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile(npmTool(t, "axe-core/axe.min.js"))
	must(t, err)
	address := "file://" + filepath.ToSlash(filepath.Join(smallSite(t, everyHold), "procedures", "every-hold.html"))
	ctx, _ := browser(t)
	bayPage(t, ctx, address)
	must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](string(axe))))
	js[any](t, ctx, `named('A. V.'); 0`)
	for _, state := range jobStates {
		js[any](t, ctx, state.how)
		for _, view := range jobViews {
			emulate(t, ctx, "", view.feature, view.value)
			asHighAsItIs(t, ctx, view.width)
			for _, f := range runAxe(t, ctx, rulesOn("", view.value)) {
				t.Errorf("%s, %s: %s: %s\n%s", state.name, view.name, f.ID, f.Help, f.Nodes[0].HTML)
			}
			sideways(t, ctx, state.name, view.name)
		}
	}
}
