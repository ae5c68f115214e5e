package generator_test

import (
	"maps"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/command/browse"
	"baybinder/generator/command/collect"
	"baybinder/generator/model"
)

// lidManual is a manual with one short job, in two languages.
var lidManual = map[string]string{
	"shop.yaml": "title: Shop of the lid\nalso: [es]\n", "shop.es.yaml": "title: Taller de la tapa\n",
	"machines/rig.yaml":              "name: rig\nparts: { lid: { name: lid } }\n",
	"procedures/close-the-lid.md":    "---\ntitle: Close the lid\nfor: rig\n---\n\n## Close\n\n1. Close the lid.\n2. Press it down.\n",
	"procedures/close-the-lid.es.md": "---\ntitle: Cerrar la tapa\n---\n\n## Cerrar\n\n1. Cierre la tapa.\n2. Apriétela.\n",
}

// TestFromPageToManual works a job on pages that browse --collect serves: the
// finished record goes into the manual without a file being carried, and the
// next build shows it. A device of the network types the code once; a job in
// its middle, a page of the folder, and a page whose server has gone save a
// file as ever.
func TestFromPageToManual(t *testing.T) {
	t.Parallel()
	manual, site := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, text := range lidManual {
		full := filepath.Join(manual, filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, []byte(text), 0o644))
	}
	build := func() {
		t.Helper()
		r, err := generator.Build(generator.Options{Manual: manual, To: site, Today: model.DateOf(time.Now())}) // the browser's day
		must(t, err)
		for _, f := range r.Findings {
			if f.At.Path() != "" && strings.HasPrefix(f.At.Path(), "records/") || r.Errors() > 0 {
				t.Errorf("%s: %s", f.At.Path(), f.Message)
			}
		}
	}
	build()
	takes, err := collect.New(manual, &collect.Devices{Now: time.Now}, func(w finding.Words) { t.Log(w) })
	must(t, err)
	handler := browse.Guard(browse.Loopback, takes.Wrap(browse.Handler(site)), collect.RecordsAt, collect.DeviceAt)
	far := false // the browser is on another machine of the network
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if far {
			r.RemoteAddr = "192.0.2.7:4711"
		}
		handler.ServeHTTP(w, r)
	}))
	defer server.Close()
	kept := func() map[string]string {
		t.Helper()
		out := map[string]string{}
		files, err := filepath.Glob(filepath.Join(manual, "records", "*"))
		must(t, err)
		for _, f := range files {
			data, err := os.ReadFile(f)
			must(t, err)
			out[filepath.Base(f)] = string(data)
		}
		return out
	}
	const said = `baybinder.page.live.textContent + baybinder.page.notice.textContent`
	const toFile = `var files = 0; HTMLAnchorElement.prototype.click = function () { files++; }; 0`
	ctx, _ := browser(t)
	page := server.URL + "/procedures/close-the-lid.html"

	bayPage(t, ctx, page)
	js[any](t, ctx, toFile)
	js[any](t, ctx, `named('A. V.'); tick('1.1'); press(document.querySelector('.job-end'), 'Save the record'); 0`)
	is(t, ctx, `files`, 1) // it is not finished
	js[any](t, ctx, `tick('1.2'); press(document.querySelector('.job-end'), 'Save the record'); until(() => (`+said+`).includes('kept with the manual'))`)
	is(t, ctx, `files + String(Boolean(baybinder.page.job.ended))`, "1true")
	first := kept()
	if len(first) != 1 {
		t.Fatalf("the manual has %d records", len(first))
	}
	for name, text := range first {
		schemaTakes(t, text)
		build()
		shown, err := os.ReadFile(filepath.Join(site, "records", strings.TrimSuffix(name, ".json")+".html"))
		must(t, err)
		if !strings.Contains(string(shown), "Press it down.") {
			t.Errorf("the page of %s does not show its steps", name)
		}
	}

	far = true
	ctx, _ = browser(t) // another device
	bayPage(t, ctx, server.URL+"/procedures/close-the-lid.es.html")
	js[any](t, ctx, toFile+`; named('C. N.'); tick('1.1'); tick('1.2'); document.querySelector('.job-end button').click(); until(asked)`)
	says(t, ctx, `asked()`, "Escriba el código")
	enter := func(code string) {
		t.Helper()
		js[any](t, ctx, `var old = document.querySelector('dialog[open]'); old.querySelector('textarea').value = '`+code+`'; old.querySelector('button').click(); 0`)
	}
	enter("1234567")
	js[any](t, ctx, `until(() => asked() && document.querySelector('dialog[open]') !== old)`)
	says(t, ctx, `asked()`, "no es correcto")
	if n := len(kept()); n != 1 {
		t.Errorf("with a wrong code there are %d records", n)
	}
	enter(takes.Code())
	js[any](t, ctx, `until(() => (`+said+`).includes('guardado con el manual'))`)
	second := maps.Clone(kept())
	if len(second) != 2 {
		t.Errorf("the manual has %d records", len(second))
	}
	bayPage(t, ctx, server.URL+"/procedures/close-the-lid.html?job=none") // the code is typed once
	js[any](t, ctx, toFile+`; named('C. N.'); tick('1.1'); tick('1.2'); document.querySelector('.job-end button').click(); until(() => (`+said+`).includes('kept with'))`)
	is(t, ctx, `asked() + files`, "0")
	if n := len(kept()); n != 3 {
		t.Errorf("the manual has %d records", n)
	}
	for name, text := range first {
		if kept()[name] != text {
			t.Errorf("%s was written over", name)
		}
	}

	bayPage(t, ctx, page)
	js[any](t, ctx, toFile+`; press(document.querySelector('.job-end'), 'Start again'); press(document.querySelector('dialog'), 'Start again'); until(() => !asked())`)
	js[any](t, ctx, `tick('1.1'); tick('1.2'); 0`)
	server.CloseClientConnections()
	server.Close()
	js[any](t, ctx, `document.querySelector('.job-end button').click(); until(() => (`+said+`).includes('could not be kept'))`)
	is(t, ctx, `files`, 1)
}

// TestPagesOfTheFolderSendNothing: a page of the published folder has no leave
// to send, and no script that would.
func TestPagesOfTheFolderSendNothing(t *testing.T) {
	t.Parallel()
	ctx, complaints := browser(t)
	bayPage(t, ctx, "file://"+filepath.ToSlash(filepath.Join(demoSite(t), "procedures", "isolate-press.html")))
	says(t, ctx, `fetch('https://example.org/').then(() => 'sent', (e) => e.name)`, "TypeError")
	is(t, ctx, `document.querySelectorAll('script[data-token]').length`, 0)
	for _, c := range complaints() {
		if strings.Contains(c, "request to") {
			t.Errorf("the browser says: %s", c)
		}
	}
}
