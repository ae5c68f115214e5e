package generator_test

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
)

// What is found in a shop is told in its language: in the report, in SARIF and
// on the writer's list. Where the language tells no findings they are English,
// and the page says so.
func TestAShopIsToldInItsLanguage(t *testing.T) {
	t.Parallel()
	for lang, want := range map[string]struct{ said, report, page string }{
		"en":    {"there is no tool trowel", "mend: ", "there is no tool trowel"},
		"es":    {"no existe: la herramienta trowel", "qué hacer: ", "no existe: la herramienta trowel"},
		"es-MX": {"no existe: la herramienta trowel", "qué hacer: ", "no existe: la herramienta trowel"},
		"de":    {"nicht vorhanden: Werkzeug trowel", "Abhilfe: ", "nicht vorhanden: Werkzeug trowel"},
		"fr":    {"there is no tool trowel", "mend: ", `<span lang="en">there is no tool trowel</span>`},
	} {
		manual, site := t.TempDir(), t.TempDir()
		for name, text := range map[string]string{
			"shop.yaml":           "title: S\nlanguage: " + lang + "\n",
			"procedures/plant.md": "---\ntitle: P\nstatus: draft\n---\n## A\n\n1. [x](tool:trowel) y.\n",
			"procedures/water.md": "---\ntitle: W\n---\n## A\n\n1. Water it.\n",
		} {
			if err := os.MkdirAll(filepath.Dir(filepath.Join(manual, name)), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(manual, name), []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		r, err := generator.Build(generator.Options{Manual: manual, To: site, Today: model.Date{Year: 2026, Month: 11, Day: 25}, Preview: true})
		if err != nil {
			t.Fatal(err)
		}
		var report, sarif bytes.Buffer
		if err := finding.Text(&report, r.Findings, finding.TextOptions{Tongue: r.Tongue()}); err != nil {
			t.Fatal(err)
		}
		if err := finding.SARIF(&sarif, r.Findings, check.Catalogue(), r.Tongue()); err != nil {
			t.Fatal(err)
		}
		page, err := os.ReadFile(filepath.Join(site, "snags.html"))
		if err != nil {
			t.Fatal(err)
		}
		for where, has := range map[string]bool{
			"the report": strings.Contains(report.String(), want.said) && strings.Contains(report.String(), want.report),
			"SARIF":      strings.Contains(sarif.String(), want.said),
			"the list":   strings.Contains(string(page), want.page) && strings.Contains(string(page), `<span lang="en">`) == (lang == "fr"),
		} {
			if !has {
				t.Errorf("%s: %s does not say %q:\n%s", lang, where, want.said, report.String())
			}
		}
	}
}
