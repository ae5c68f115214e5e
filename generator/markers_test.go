package generator_test

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// decimals is a manual with parted numbers in every place that pages write.
func decimals(language string) map[string]string {
	return map[string]string{
		"shop.yaml": "title: Werk\nlanguage: " + language + "\nshow-units: { torque: [N·m, lbf·ft] }\n",
		"register/tools.yaml": `
wrench: { name: "wrench 5.5 to 27.5 N·m", kind: torque-wrench, range: 5.5 to 27.5 N·m, length: 380.5 mm }
foot: { name: foot, kind: spanner, fits: [13 mm], adds: 45.5 mm }
`,
		"register/holds.yaml":    "gap: { name: gap, kind: measure, what: the gap, limit: 0.15 to 1.5 mm }\n",
		"register/supplies.yaml": "oil: { name: oil, unit: L }\n",
		"machines/rig.yaml": `
name: Rig
energies:
  main: { name: main, kind: electric, voltage: 48.5 V dc, points: [] }
parts:
  lid: { name: lid, held-by: { bolt: 2 }, mass: 12.5 kg }
fasteners:
  bolt: { name: bolt, thread: M8x1.25, class: 8.8, across-flats: 13 mm, torque: 22.5 N·m }
fluids:
  lube: { name: lube, supply: oil, capacity: 1.5 L }
settings:
  stop: { name: stop, value: 2.0 ± 0.5 mm }
  mode: { name: mode, value: release 2.1 }
`,
		"procedures/lid.md": `---
title: Lid
for: rig
tools: [wrench, foot]
holds: [gap]
supplies: [oil: 2.5 L]
---
## Strip

1. [Take off](remove:lid) the lid with the [](tool:foot). It weighs 12.5 kg.

## Refit

1. [Refit in reverse](reverse:strip) with the [](tool:wrench) and the [](tool:foot).
2. [Measure](hold:gap) the gap.
3. Wipe up with the [](supply:oil).
`,
	}
}

// Pages write what the manual's fields say with the marker of their language,
// workings too, and with its signs for direct and alternating (common practice, no
// source). Names, threads, classes and what the shop typed in its own text
// stay, and so does what scripts read.
func TestAmountsAreWrittenAsTheLanguageParts(t *testing.T) {
	t.Parallel()
	stays := map[string][]string{
		"machines/rig.html":   {"M8x1.25", "8.8", "release 2.1"},
		"procedures/lid.html": {`data-low="0.15"`, `data-high="1.5"`, "It weighs 12.5 kg"},
		"tools/wrench.html":   {"<h1>wrench 5.5 to 27.5 N·m</h1>"},
	}
	written := map[string][]string{
		"machines/rig.html":        {"22,5 N·m", "48,5 V dc", "12,5 kg", "2,0 ± 0,5 mm", "1,5 L", "16,6 lbf·ft"},
		"procedures/lid.html":      {"0,15", "1,5 mm", "22,5 N·m", "2,5 L", "22,5 N·m · 380,5 mm/(380,5 mm + 45,5 mm)"},
		"tools/wrench.html":        {"5,5", "27,5 N·m ("},
		"machines/rig.torque.html": {"22,5 N·m/(0,20 · 8 mm)"},
	}
	for _, tag := range []string{"de", "es", "es-MX", "de-CH", "en"} {
		comma := tag == "de" || tag == "es"
		all := unparted(pages(t, smallSite(t, decimals(tag))))
		for name, texts := range stays {
			for _, text := range texts {
				if !bytes.Contains(all[name], []byte(text)) {
					t.Errorf("%s: %s has no %s", tag, name, text)
				}
			}
		}
		for name, texts := range written {
			for _, text := range texts {
				if !comma {
					text = pointed(text)
				}
				if tag != "en" {
					text = strings.Replace(text, "V dc", "V DC", 1)
				}
				if !bytes.Contains(all[name], []byte(text)) {
					t.Errorf("%s: %s has no %s", tag, name, text)
				}
			}
		}
		if got := bytes.Contains(all["procedures/lid.html"], []byte(" data-comma>")); got != comma {
			t.Errorf("%s: the scripts are told of a comma: %v", tag, got)
		}
	}
}

// What is typed at a blank is read with a comma and with a point in every
// language. What could be 1.5 as well as 1500 is neither, and both are offered.
func TestABlankIsReadWithCommaAndPoint(t *testing.T) {
	t.Parallel()
	for tag, says := range map[string]struct{ twice, offered string }{
		"de": {"1.500", "Schreiben Sie 1,500 oder 1500"}, "es": {"1.500", "Escriba 1,500 o 1500"}, "en": {"1,500", "Write 1.500 or 1500"},
	} {
		site := smallSite(t, decimals(tag))
		ctx, complaints := browser(t)
		work(t, ctx, "file://"+filepath.Join(site, "procedures", "lid.html"))
		verdict := func(typed string) string {
			js[any](t, ctx, `type(document.querySelector('.reading'), '`+typed+`'); 0`)
			return js[string](t, ctx, `document.querySelector('.reading').getAttribute('aria-invalid') + ' ' + document.querySelector('.hold .verdict').textContent`)
		}
		for _, typed := range []string{"0,15", "0.15", "1,5", "1.5", " 1,49 ", "0,500", "0.500"} {
			if got := verdict(typed); !strings.HasPrefix(got, "false") {
				t.Errorf("%s: %q is out of 0.15 to 1.5: %s", tag, typed, got)
			}
		}
		for _, typed := range []string{"0,149", "1.51", "15", "1,5 mm", "1.5.0"} {
			if got := verdict(typed); !strings.HasPrefix(got, "true") {
				t.Errorf("%s: %q is within 0.15 to 1.5: %s", tag, typed, got)
			}
		}
		if got := verdict(says.twice); !strings.HasPrefix(got, "true") || !strings.Contains(got, says.offered) {
			t.Errorf("%s: of %q it says %q", tag, says.twice, got)
		}
		if got := js[string](t, ctx, `JSON.stringify(baybinder.record(baybinder.page).holds.flatMap((h) => h.values || []))`); !strings.Contains(got, `"typed":"`+says.twice+`","value":null`) {
			t.Errorf("%s: the record has %s", tag, got)
		}
		verdict("1,25")
		if got := js[string](t, ctx, `JSON.stringify(baybinder.record(baybinder.page).holds.flatMap((h) => h.values || []))`); !strings.Contains(got, `"typed":"1,25","value":1.25`) {
			t.Errorf("%s: the record has %s", tag, got)
		}
		if said := complaints(); len(said) > 0 {
			t.Errorf("%s: %v", tag, said)
		}
		must(t, chromedp.Do(ctx, chromedp.Navigate("about:blank")))
	}
}
