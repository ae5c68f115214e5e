package generator_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"baybinder/generator/base/needed"
	"baybinder/generator/model"
)

// Known: SEEN.

// The browser tests open the demo manual's site in headless Chromium, from
// file: addresses, as a shop PC without a network does.

// demoDay is the scenario's day: the demo is judged as of it.
var demoDay = model.Date{Year: 2026, Month: time.May, Day: 4}

// needs skips a test where a tool is missing, and fails it in CI: a judge that
// never ran proves nothing.
func needs(t testing.TB, ok bool, what string) {
	t.Helper()
	needed.Judge(t, ok, what)
}

// npmTool is a file of the test tools in .ci/node_modules.
func npmTool(t *testing.T, name string) string {
	t.Helper()
	full, err := filepath.Abs(filepath.Join("..", ".ci", "node_modules", filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(full)
	needs(t, err == nil, name)
	return full
}

// browser opens a window in the browser; what it complains of is in the slice
// that complaints returns.
func browser(t testing.TB) (ctx context.Context, complaints func() []string) {
	t.Helper()
	ctx = window(t)
	var mu sync.Mutex
	var said []string
	must(t, chromedp.Listen(ctx, func(event any) {
		mu.Lock()
		defer mu.Unlock()
		switch e := event.(type) {
		case *log.EventEntryAdded:
			said = append(said, e.Entry.Text)
		case *runtime.EventExceptionThrown:
			said = append(said, e.ExceptionDetails.Text)
		case *network.EventRequestWillBeSent:
			if !strings.HasPrefix(e.Request.URL, "file:") && !strings.HasPrefix(e.Request.URL, "about:") {
				said = append(said, "request to "+e.Request.URL)
			}
		}
	}))
	_, err := chromedp.Call(ctx, log.Enable, cdp.Empty{})
	must(t, err)
	_, err = chromedp.Call(ctx, network.Enable, network.EnableParams{})
	must(t, err)
	return ctx, func() []string {
		mu.Lock()
		defer mu.Unlock()
		return said
	}
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// pageKinds is one page of every kind.
var pageKinds = []string{
	"index.html", "search.html", "labels.html", "snags.html", "machines/index.html", "machines/delivery-tug.html", "tools/index.html", "supplies/index.html",
	"hazards/index.html", "holds/index.html", "roles/index.html", "procedures/isolate-tug-traction.html",
	"procedures/replace-contactor-panel.html", "tools/two-pole-tester.html", "hazards/traction-charge.html",
	"holds/traction-dead.html", "roles/foreman.html", "procedures/drive-off-and-stop-test.html", "records/tug-112-isolate-2026-04-29.html", "plans/press-work.html", "procedures/isolate-compressor.es.html",
}

// axeFinding is one violation that axe-core tells.
type axeFinding struct {
	ID    string
	Help  string
	Nodes []struct{ HTML string }
}

// Of what axe-core judges: all of WCAG 2.2 A and AA, and what is about colours.
const (
	allRules    = `["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]`
	colourRules = `["cat.color"]`
)

// rulesOn are the rules by which a screen or paper is judged beside a light screen of
// the same width: what is dark differs in its colours (TestTheDarkIsColours of the
// theme); paper is never dark.
func rulesOn(media, scheme string) string {
	if media == "" && scheme == "dark" {
		return colourRules
	}
	return allRules
}

// runAxe judges the open page, in which axe-core is loaded, by some of its rules,
// and by the contrast of level AAA (7:1), which the design asks for.
func runAxe(t *testing.T, ctx context.Context, rules string) []axeFinding {
	t.Helper()
	run := `axe.run(document, {preload: false, resultTypes: ["violations"], selectors: false, runOnly: ` + rules + `,
		rules: {"color-contrast-enhanced": {enabled: true}, "target-size": {enabled: true}}}).then(r => JSON.stringify(r.violations))`
	out, err := chromedp.Run(ctx, chromedp.Evaluate[string](run, chromedp.EvalAwaitPromise))
	must(t, err)
	var found []axeFinding
	if err := json.Unmarshal([]byte(out), &found); err != nil {
		t.Fatal(err)
	}
	return found
}

// TestPagesAreAccessible judges one page of every kind with axe-core 4.14, on
// a desk screen, at phone width, as it is printed, and on a dark desk screen.
func TestPagesAreAccessible(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile(npmTool(t, "axe-core/axe.min.js"))
	if err != nil {
		t.Fatal(err)
	}
	judgeAll(t, string(axe), demoSite(t), pageKinds)
}

// views are the ways in which every page is judged. No script of a page acts on
// a width or a medium once only: one that is shown otherwise is as if it were
// loaded so.
var views = []struct {
	name  string
	width int64
	media string
	dark  string
}{{"1280 px", 1280, "", "light"}, {"390 px", 390, "", "light"}, {"print", 794, "print", "dark"}, {"1280 px in the dark", 1280, "", "dark"}}

// judgeAll judges pages of a site by axe-core and by their width, each loaded
// once for all views, some pages at once in windows of their own.
func judgeAll(t *testing.T, axe, site string, kinds []string) {
	t.Helper()
	for part := range slices.Chunk(kinds, (len(kinds)+1)/2) {
		t.Run(part[0], func(t *testing.T) {
			t.Parallel()
			ctx, complaints := browser(t)
			for _, page := range part {
				open(t, ctx, filepath.Join(site, filepath.FromSlash(page)), views[0].width)
				must(t, chromedp.Do(ctx, chromedp.Evaluate[chromedp.Void](axe)))
				for _, view := range views {
					emulate(t, ctx, view.media, "prefers-color-scheme", view.dark)
					asHighAsItIs(t, ctx, view.width)
					for _, f := range runAxe(t, ctx, rulesOn(view.media, view.dark)) {
						if f.ID == "target-size" && view.media == "print" {
							continue // nobody points at paper
						}
						t.Errorf("%s at %s: %s: %s\n%s", page, view.name, f.ID, f.Help, f.Nodes[0].HTML)
					}
					sideways(t, ctx, page, view.name)
				}
				emulate(t, ctx, "", "prefers-color-scheme", "light")
				resize(t, ctx, 320, 900) // 1280 px at 400 % (WCAG 2.2, 1.4.10)
				sideways(t, ctx, page, "320 px")
			}
			for _, c := range complaints() {
				t.Errorf("the browser says: %s", c)
			}
		})
	}
}

// emulate makes the browser be of a medium, "" for the screen, with a media
// feature.
func emulate(t *testing.T, ctx context.Context, media, feature, value string) {
	t.Helper()
	_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Media: media, Features: []*emulation.MediaFeature{{Name: feature, Value: value}},
	})
	must(t, err)
}

// open opens a page in a window that is as high as the page: what the sticky
// strip at the foot covers until one scrolls is not a fault of its targets.
func open(t *testing.T, ctx context.Context, file string, width int64) {
	t.Helper()
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(width, 900), chromedp.Navigate("file://"+file)))
	asHighAsItIs(t, ctx, width)
}

// asHighAsItIs makes the window as high as the page is at a width.
func asHighAsItIs(t *testing.T, ctx context.Context, width int64) {
	t.Helper()
	resize(t, ctx, width, 900)
	resize(t, ctx, width, js[int64](t, ctx, `document.documentElement.scrollHeight`))
}

// sideways tells of a page that is wider than its window.
func sideways(t *testing.T, ctx context.Context, page, view string) {
	t.Helper()
	wide, err := chromedp.Run(ctx, chromedp.Evaluate[bool](`document.documentElement.scrollWidth > window.innerWidth + 1`))
	must(t, err)
	if wide {
		t.Errorf("%s at %s is wider than its window", page, view)
	}
}

// TestAxeObjects shows axe-core a page with a known fault: it must object.
func TestAxeObjects(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile(npmTool(t, "axe-core/axe.min.js"))
	if err != nil {
		t.Fatal(err)
	}
	bad := filepath.Join(t.TempDir(), "bad.html")
	text := `<!DOCTYPE html><html lang="en"><title>x</title><main><h1>x</h1><p style="color:#777;background:#fff">grey</p><p style="color:#666;background:#fff">less grey</p><img src="x.png"></main>`
	if err := os.WriteFile(bad, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	ctx, _ := browser(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+bad), chromedp.Evaluate[chromedp.Void](string(axe))))
	found := fmt.Sprint(runAxe(t, ctx, allRules))
	for _, id := range []string{"color-contrast ", "color-contrast-enhanced", "image-alt"} {
		if !strings.Contains(found, id) {
			t.Errorf("axe-core does not see %s: %s", id, found)
		}
	}
}
