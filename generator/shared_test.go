package generator_test

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/command/issue"
	"baybinder/generator/model"
)

// What all tests of this package share, each made when the first one asks for
// it: one browser, in which each test has a window with stores of its own, and
// the demo's site, which nobody changes.

// TestMain ends the browser and takes the shared folders away.
func TestMain(m *testing.M) {
	code := m.Run()
	for _, last := range afterwards {
		last()
	}
	os.Exit(code)
}

// afterwards is what is done when all tests have ended. It is added to by what
// is made once.
var (
	afterwards   []func()
	afterwardsMu sync.Mutex
)

func atEnd(f func()) {
	afterwardsMu.Lock()
	defer afterwardsMu.Unlock()
	afterwards = append(afterwards, f)
}

// builtDemo is the demo as it is published on its day.
type builtDemo struct {
	site   string
	people string // the readings, which name people
	result *generator.Result
	err    error
}

var theDemo = sync.OnceValue(func() (d builtDemo) {
	top, err := os.MkdirTemp("", "demo")
	if err != nil {
		return builtDemo{err: err}
	}
	atEnd(func() { _ = os.RemoveAll(top) })
	d.site, d.people = filepath.Join(top, "site"), filepath.Join(top, "people")
	d.result, d.err = generator.Build(generator.Options{Manual: "../content", To: d.site, Readings: d.people, Today: demoDay})
	return d
})

// demo is the demo manual as it was checked on its day.
func demo(t testing.TB) *generator.Result {
	t.Helper()
	must(t, theDemo().err)
	return theDemo().result
}

// demoSite is the demo's site. It is everybody's: who changes a site builds one.
func demoSite(t testing.TB) string {
	t.Helper()
	for _, f := range demo(t).Findings {
		line, col := f.At.LineCol()
		t.Errorf("%s:%d:%d: %s [%s]", f.At.Path(), line, col, f.Message, f.Code)
	}
	return theDemo().site
}

// demoAgain builds the demo's site into a folder of the test's own.
func demoAgain(t testing.TB) string {
	t.Helper()
	to := filepath.Join(t.TempDir(), "site")
	_, err := generator.Build(generator.Options{Manual: "../content", To: to, Today: demoDay})
	must(t, err)
	return to
}

// chromium is the one browser; nothing is open in it but what tests open. Nobody
// looks at its pixels: it has no memory to paint them in, which is a fifth of its work.
var chromium = sync.OnceValues(func() (context.Context, error) {
	path, err := exec.LookPath("chromium-headless-shell")
	if err != nil {
		return nil, err
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-sync", true), chromedp.Flag("disable-quic", true),
		chromedp.Flag("force-gpu-mem-available-mb", "0"),
		chromedp.Flag("force-color-profile", "srgb"))
	alloc, stop := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, cancel := chromedp.NewContext(alloc)
	atEnd(func() { cancel(); stop() })
	if err := chromedp.Do(ctx); err != nil {
		return nil, fmt.Errorf("chromium does not start: %w", err)
	}
	return ctx, nil
})

// window opens a window of the browser that shares no store with any other. It
// has the keyboard, as the only window of a screen has.
func window(t testing.TB) context.Context {
	t.Helper()
	_, err := exec.LookPath("chromium-headless-shell")
	needs(t, err == nil, "chromium-headless-shell")
	all, err := chromium()
	must(t, err)
	ctx, closed := chromedp.NewContext(all, chromedp.WithNewBrowserContext())
	t.Cleanup(closed)
	must(t, chromedp.Do(ctx))
	_, err = chromedp.Call(ctx, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
	must(t, err)
	return ctx
}

// issueNow issues what an order names, as the command does whose questions are
// answered.
func issueNow(m *model.Manual, found []finding.Finding, o issue.Order) ([]*issue.Issued, error) {
	list, err := issue.Prepare(m, found, o)
	if err == nil {
		err = issue.Settle(list, o.Readers)
	}
	if err != nil {
		return nil, err
	}
	return list, issue.Write(list, o)
}
