package generator_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
	"baybinder/generator/model"
)

// TestAHandOverIsTyped: at a stopping place the lock numbers and both names are
// typed, stay over a reload, and stand in the record, which the program reads
// back; the one who takes over works from then on. Nobody hands over to himself.
func TestAHandOverIsTyped(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	ctx, complaints := browser(t)
	address := "file://" + filepath.Join(site, "procedures", "replace-separator.html")
	bayPage(t, ctx, address)
	js[any](t, ctx, `localStorage.clear(); named('C.N.'); tick('1.1'); 0`)
	const pause = `var over = window.baybinder.page.steps.filter((s) => s.handOver)[0], box = over.element.querySelector('.hand-over'); 0`
	js[any](t, ctx, pause)
	js[any](t, ctx, `type(over.handOver.fields.locks, '17, 18'); type(over.handOver.fields.from, 'C.N.'); type(over.handOver.fields.to, 'c. n.'); press(box, 'Hand over with the time now'); 0`)
	says(t, ctx, `box.textContent`, "two people")
	is(t, ctx, `window.baybinder.page.job.worker`, "C.N.")
	bayPage(t, ctx, address)
	js[any](t, ctx, pause)
	is(t, ctx, `over.handOver.fields.locks.value + '/' + over.handOver.fields.from.value`, "17, 18/C.N.")
	js[any](t, ctx, `type(over.handOver.fields.to, 'F.T.'); press(box, 'Hand over with the time now'); 0`)
	says(t, ctx, `box.textContent`, "Handed over by C.N. to F.T., ")
	is(t, ctx, `document.getElementById('worker').value`, "F.T.")
	js[any](t, ctx, `press(box, 'Take back'); 0`)
	is(t, ctx, `document.getElementById('worker').value`, "C.N.")
	js[any](t, ctx, `press(box, 'Hand over with the time now'); 0`)
	bayPage(t, ctx, address)
	js[any](t, ctx, pause)
	says(t, ctx, `box.textContent`, "Handed over by C.N. to F.T., ")
	text := savedRecord(t, ctx)
	schemaTakes(t, text)
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
	var saved struct {
		HandOvers []struct{ Step, From, To, Locks string }
	}
	must(t, json.Unmarshal([]byte(text), &saved))
	if h := saved.HandOvers; len(h) != 1 || h[0].From != "C.N." || h[0].To != "F.T." || h[0].Locks != "17, 18" || h[0].Step != js[string](t, ctx, `over.number`) {
		t.Fatalf("the record says %+v", h)
	}
	readBack(t, text)
}

// TestAHandOverSaysWhatIsNotProved: what the next shift finds stands there as
// the procedure has it. Where a step before it is open, or a stop proved
// nothing, the hand-over and the list of that step say so above it, and no
// longer once it is mended.
func TestAHandOverSaysWhatIsNotProved(t *testing.T) {
	t.Parallel()
	site := smallSite(t, map[string]string{
		"shop.yaml":           "title: Shop of one gap\n",
		"register/tools.yaml": "gauge: { name: feeler gauge, kind: other }\n",
		"register/holds.yaml": "gap: { name: gap, kind: measure, what: gap of the jaw, limit: 0.3 to 0.5 mm, with: gauge, if-not: Set it anew. }\n",
		"machines/rig.yaml":   "name: rig\nparts:\n  jaw: { name: jaw }\n",
		"procedures/jaw.md":   "---\ntitle: Jaw off and on\nfor: rig\ntools: [gauge]\nholds: [gap]\n---\n\n## Off\n\n1. Take the [jaw](remove:jaw) off.\n2. [Measure](hold:gap).\n3. Wipe the bed. [A place to stop](pause:).\n\n## On\n\n1. Put the [jaw](refit:jaw) on.\n",
	})
	ctx, _ := browser(t)
	bayPage(t, ctx, "file://"+filepath.ToSlash(filepath.Join(site, "procedures", "jaw.html")))
	const doubts = `[...step('1.3').querySelectorAll('.doubt')].map((p) => p.closest('.stand, .hand-over').className + ':' + !p.hidden + p.textContent.includes('a stop is still open')).join()`
	js[any](t, ctx, `localStorage.clear(); step('1.3').querySelectorAll('.stand').forEach((d) => { d.open = true; }); 0`)
	is(t, ctx, doubts, "hand-over:falsefalse") // nothing is begun
	js[any](t, ctx, `tick('1.1'); 0`)
	is(t, ctx, doubts, "hand-over:truetrue")
	js[any](t, ctx, `type(step('1.2').querySelector('.reading'), '0.9'); tick('1.2'); tick('1.3'); 0`)
	is(t, ctx, doubts, "hand-over:truetrue") // ticked past a limit that is not met
	js[any](t, ctx, `window.baybinder.page.change((job) => { job.gaps = []; }); press(step('1.2'), 'Measure again'); type(step('1.2').querySelector('.reading'), '0.4'); 0`)
	is(t, ctx, doubts, "hand-over:falsefalse")
}

// readBack puts a record with a hand-over into a copy of the manual: the site
// says where it was, and names nobody; the readings say who.
func readBack(t *testing.T, text string) {
	t.Helper()
	from, to := filepath.Join(t.TempDir(), "manual"), t.TempDir()
	must(t, bigmanual.Begun("../content", from))
	must(t, os.Mkdir(filepath.Join(from, "records"), 0o755))
	must(t, os.WriteFile(filepath.Join(from, "records", "handed.json"), []byte(text), 0o644))
	r, err := generator.Build(generator.Options{Manual: from, To: filepath.Join(to, "site"), Readings: filepath.Join(to, "readings"), Today: model.Date{Year: 9000, Month: 1, Day: 1}})
	must(t, err)
	for _, f := range r.Findings {
		if f.At.Path() == "records/handed.json" {
			t.Errorf("%s [%s]", f.Message, f.Code)
		}
	}
	for folder, named := range map[string]bool{"site": false, "readings": true} {
		page, err := os.ReadFile(filepath.Join(to, folder, "records", "handed.html"))
		must(t, err)
		if !strings.Contains(string(page), "Lock numbers: 17, 18.") || strings.Contains(string(page), "From C.N. to F.T.") != named {
			t.Errorf("the %s does not say the hand-over as it should", folder)
		}
	}
}
