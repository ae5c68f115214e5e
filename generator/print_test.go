package generator_test

import (
	"context"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"unicode"

	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// printed prints the open page and returns the PDF's file and its pages as
// text with all white space made one.
func printed(t *testing.T, ctx context.Context, width, height float64) (string, []string) {
	t.Helper()
	_, err := exec.LookPath("pdftotext")
	needs(t, err == nil, "pdftotext")
	out, err := chromedp.Call(ctx, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PaperWidth: width, PaperHeight: height, PrintBackground: new(true)})
	must(t, err)
	file := filepath.Join(t.TempDir(), "card.pdf")
	must(t, os.WriteFile(file, out.Data, 0o644))
	text, err := exec.Command("pdftotext", "-layout", file, "-").Output()
	must(t, err)
	pages := strings.Split(strings.TrimSuffix(string(text), "\f"), "\f")
	for i := range pages {
		pages[i] = squeezed(pages[i])
	}
	return file, pages
}

// squeezed leaves letters only: a line that wraps is no difference.
func squeezed(text string) string { return strings.Join(strings.Fields(text), "") }

// onOnePage says that some page holds all the texts.
func onOnePage(pages, texts []string) bool {
	for _, p := range pages {
		all := true
		for _, x := range texts {
			all = all && strings.Contains(p, squeezed(x))
		}
		if all {
			return true
		}
	}
	return false
}

// TestPrintedCard prints job cards on A4 and Letter and reads them back: every
// caution whole on one page, every hold whole on one page; on every page its
// number, the machine and revision, the words on printed copies.
func TestPrintedCard(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	for _, paper := range []struct {
		name          string
		width, height float64
	}{{"A4", 8.27, 11.69}, {"Letter", 8.5, 11}} {
		for _, name := range []string{"isolate-tug-traction", "replace-contactor-panel", "charge-accumulator", "hand-over-open-job", "isolate-compressor.es"} {
			must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", name+".html"))))
			const texts = `JSON.stringify([...document.querySelectorAll(%)].map((b) => [...b.querySelectorAll('.band, .say > p, .avoid li, .in-short, .title, .limit, .if-not')].filter((e) => e.checkVisibility()).map((e) => e.textContent)))`
			var boxes [][]string
			for _, kind := range []string{`'.safety'`, `'.hold'`} {
				var list [][]string
				must(t, json.Unmarshal([]byte(js[string](t, ctx, strings.Replace(texts, "%", kind, 1))), &list))
				boxes = append(boxes, list...)
			}
			plate := js[string](t, ctx, `[...document.querySelectorAll('.plate li')].map((e) => e.textContent).join('|')`)
			_, pages := printed(t, ctx, paper.width, paper.height)
			for _, b := range boxes {
				if !onOnePage(pages, b) {
					t.Errorf("%s on %s: not whole on one page: %q", name, paper.name, b)
				}
			}
			for i, p := range pages {
				if want := strconv.Itoa(i+1) + "/" + strconv.Itoa(len(pages)); !strings.Contains(p, want) {
					t.Errorf("%s on %s: page %d is not numbered %s", name, paper.name, i+1, want)
				}
				for _, want := range append(strings.Split(plate, "|"), copyMayBeOld[js[string](t, ctx, `document.documentElement.lang`)]) {
					if !strings.Contains(p, squeezed(want)) {
						t.Errorf("%s on %s: page %d does not say %q", name, paper.name, i+1, want)
					}
				}
			}
			t.Logf("%s on %s: %d pages, %d boxes and holds", name, paper.name, len(pages), len(boxes))
		}
	}
}

// TestAStepIsPrintedWhole: no side parts a step from its measurement, from what
// is performed there or from its picture, and a machine's torque card is one side.
func TestAStepIsPrintedWhole(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	looked := 0
	for _, name := range []string{"replace-contactor-panel", "replace-valve-plate", "isolate-tug-traction"} {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", name+".html"))))
		const rows = `JSON.stringify([...document.querySelectorAll('.row')].filter((r) => r.querySelector('.hold, .call, .sequence, .fastened')).map((r) => [...r.querySelectorAll('.text > p:not(.state), .hold .title, .hold .limit, .call, .fastened p')].map((e) => e.textContent).filter(Boolean)))`
		var steps [][]string
		must(t, json.Unmarshal([]byte(js[string](t, ctx, rows)), &steps))
		_, pages := printed(t, ctx, 8.27, 11.69)
		for _, s := range steps {
			looked++
			if !onOnePage(pages, s) {
				t.Errorf("%s: a step is parted: %q", name, s)
			}
		}
	}
	if looked < 30 {
		t.Errorf("only %d steps were looked at", looked)
	}
	cards, err := filepath.Glob(filepath.Join(site, "machines", "*.torque.html"))
	must(t, err)
	for _, card := range cards {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+card)))
		for _, paper := range [][2]float64{{8.27, 11.69}, {8.5, 11}} { // A4, Letter
			if _, pages := printed(t, ctx, paper[0], paper[1]); len(pages) != 1 {
				t.Errorf("%s has %d sides on paper of %v in", filepath.Base(card), len(pages), paper)
			}
		}
	}
}

// TestTheCardIsShort prints the longest jobs and the daily checks on A4: so many
// sides at most, what to do in an emergency on the first, and nothing that is
// the writer's.
func TestTheCardIsShort(t *testing.T) {
	site := demoSite(t)
	ctx, _ := browser(t)
	for name, most := range map[string]int{"replace-contactor-panel": 7, "replace-contactor-panel.html?unit=112": 7, "test-receiver": 7, "grease-steer-hubs": 7, "tug-walk-round": 2, "check-hoist-daily": 2} {
		file, query, _ := strings.Cut(strings.Replace(name, ".html", "", 1), "?")
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", file+".html")+"?"+query)))
		aid := js[string](t, ctx, `[...document.querySelectorAll('.emergency dd, .aid-line')].map((e) => e.textContent).join('|')`)
		writers := js[string](t, ctx, `[document.querySelector('.checked'), ...document.querySelectorAll('.time-line > p, .around h2')].map((e) => e.textContent).join('|')`)
		_, pages := printed(t, ctx, 8.27, 11.69)
		if len(pages) > most {
			t.Errorf("%s has %d sides, %d are allowed", name, len(pages), most)
		}
		for _, x := range strings.Split(aid, "|") {
			if !strings.Contains(strings.ReplaceAll(pages[0], "\u00ad", ""), squeezed(x)) && !onOnePage(pages[:1], strings.FieldsFunc(x, func(r rune) bool { return !unicode.IsLetter(r) })) {
				t.Errorf("%s: the first side does not say %q", name, x)
			}
		}
		for _, x := range strings.Split(writers, "|") {
			if onOnePage(pages, []string{x}) {
				t.Errorf("%s: the card says %q", name, x)
			}
		}
		t.Logf("%s: %d sides", name, len(pages))
	}
}

// copyMayBeOld is what stands on every printed page, by language.
var copyMayBeOld = map[string]string{"en": "A printed copy may be out of date", "es": "Una copia impresa puede"}

// TestCodeOnTheCard decodes the printed code with an outside decoder, jsQR.
func TestCodeOnTheCard(t *testing.T) {
	t.Parallel()
	npmTool(t, "jsqr/package.json")
	npmTool(t, "pngjs/package.json")
	site := demoSite(t)
	ctx, _ := browser(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(site, "procedures", "isolate-tug-traction.html"))))
	file, _ := printed(t, ctx, 8.27, 11.69)
	picture := strings.TrimSuffix(file, ".pdf")
	must(t, exec.Command("pdftoppm", "-png", "-r", "150", "-f", "1", "-l", "1", "-singlefile", file, picture).Run())
	const decoder = `const {PNG}=require('pngjs'),p=PNG.sync.read(require('fs').readFileSync(process.argv[1]));
const c=require('jsqr')(new Uint8ClampedArray(p.data),p.width,p.height);console.log(c?c.data:'no code')`
	command := exec.Command("node", "-e", decoder, picture+".png")
	command.Dir = filepath.Join("..", ".ci")
	out, err := command.CombinedOutput()
	if err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	if got := strings.TrimSpace(string(out)); got != "http://shop-pc.example/manual/procedures/isolate-tug-traction.html" {
		t.Errorf("the printed code says %q", got)
	}
}

// TestShortViewKeeps compares what both views show: every caution, hold,
// value and wait of the full view stands in the short one.
func TestShortViewKeeps(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, _ := browser(t)
	const shown = `JSON.stringify([...document.querySelectorAll('.safety, .hold, .text > p, .fastened li, .tags li, .intro p, .because p, .prose p, .pause')]
		.filter((e) => e.checkVisibility()).map((e) => e.textContent).filter((x, i, all) => all.indexOf(x) === i))`
	const kept = `[...document.querySelectorAll('.safety, .hold')].every((e) => e.checkVisibility())`
	less := 0
	files, err := filepath.Glob(filepath.Join(site, "procedures", "*.html"))
	must(t, err)
	for _, file := range files {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+file)))
		var full, short []string
		must(t, json.Unmarshal([]byte(js[string](t, ctx, shown)), &full))
		js[any](t, ctx, `[...document.querySelectorAll('button')].find((b) => b.textContent === (document.documentElement.lang === 'es' ? 'Vista corta' : 'Short view')).click(); 0`)
		must(t, json.Unmarshal([]byte(js[string](t, ctx, shown)), &short))
		if !js[bool](t, ctx, kept) {
			t.Errorf("%s: the short view hides a caution or a hold", filepath.Base(file))
		}
		if f, s := amounts(full), amounts(short); f != s {
			t.Errorf("%s: amounts of the full view:\n%s\nof the short one:\n%s", filepath.Base(file), f, s)
		}
		less += len(full) - len(short)
	}
	if less == 0 {
		t.Error("the short view is no shorter: the test looks at nothing")
	}
}
