package generator_test

import (
	"encoding/json"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// payloads are texts that would run, fetch or break out where one is taken for
// more than a text.
var payloads = []string{
	`</title><script>window.ran=1</script>`, `"><img src=x onerror=window.ran=1>`, `' onmouseover='window.ran=1`, `javascript:window.ran=1`,
	`<svg onload=window.ran=1>`, `</script><script src=//elsewhere.example/x.js></script>`, `{{7*7}}${7*7}`, `]]><!-- --!><iframe srcdoc="<script>parent.ran=1</script>">`,
	`<style>*{background:url(//elsewhere.example/x)}</style>`, `<base href=//elsewhere.example/>`, `<meta http-equiv=refresh content=0;url=//elsewhere.example/>`,
}

// TestPayloads writes payloads into every text of a small manual and opens each
// of its pages, with its script at work: none runs, nothing is asked for from
// elsewhere, the browser complains of nothing, and each is there to be read.
func TestPayloads(t *testing.T) {
	t.Parallel()
	n := 0
	text := func() string { // the next payload, as YAML and JSON write it
		quoted, err := json.Marshal(payloads[n%len(payloads)])
		must(t, err)
		n++
		return string(quoted)
	}
	in := func(template string) string {
		for strings.Contains(template, "TEXT") {
			template = strings.Replace(template, "TEXT", text(), 1)
		}
		return template
	}
	site := smallSite(t, map[string]string{
		"shop.yaml":              in("title: TEXT\nnotice: TEXT\nemergency: TEXT\n"),
		"register/roles.yaml":    in("fitter: { name: TEXT }\n"),
		"register/tools.yaml":    in("gauge: { name: TEXT, kind: other, kept: TEXT }\n"),
		"register/supplies.yaml": in("oil: { name: TEXT, unit: L }\n"),
		"register/hazards.yaml":  in("jet: { name: TEXT, nature: TEXT, harm: death, consequence: TEXT, avoid: [TEXT, TEXT] }\n"),
		"register/holds.yaml": in("gap: { name: TEXT, kind: measure, what: TEXT, limit: 0.3 to 0.5 mm, with: gauge, if-not: TEXT }\nclean: { name: TEXT, kind: look, what: TEXT, good: TEXT, if-not: TEXT }\n" +
			"which: { name: TEXT, kind: ask, answers: { short: TEXT, long: TEXT } }\nword: { name: TEXT, kind: sign, by: fitter }\n"),
		"machines/rig.yaml":   in("name: TEXT\noptions: { cab: TEXT }\nparts: { lid: { name: TEXT } }\n"),
		"procedures/job-1.md": in("---\ntitle: TEXT\nsummary: TEXT\nfor: rig\nneeds: [fitter]\ntools: [gauge]\nhazards: [jet]\nholds: [gap, clean, which, word]\n---\n\n## Work\n\n1. Keep the [gauge](tool:gauge) away from the [jet](hazard:jet): `<script>window.ran=1</script>`.\n2. [Measure](hold:gap).\n3. [Look](hold:clean).\n4. [Answer](hold:which).\n5. [Sign](hold:word).\n"),
		"procedures/job-2.md": in("---\ntitle: TEXT\nfor: rig\nneeds: [fitter]\n---\n\n## Work\n\n1. Do [it](do:job-1).\n"),
	})
	ctx, complaints := browser(t)
	read := 0
	for name, data := range pages(t, site) {
		if path.Ext(name) != ".html" {
			continue
		}
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.ToSlash(filepath.Join(site, name)))))
		if js[bool](t, ctx, `'ran' in window || document.querySelector('iframe, base, img[src=x], svg[onload], [onmouseover]') !== null`) {
			t.Errorf("%s: a payload is more than a text:\n%.2000s", name, data)
		}
		for _, p := range payloads {
			read += strings.Count(js[string](t, ctx, `document.documentElement.textContent`), p)
		}
	}
	if read < 50 {
		t.Errorf("the payloads are read %d times: the test looks at nothing", read)
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}
