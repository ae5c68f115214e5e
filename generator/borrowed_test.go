package generator_test

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
)

// A shop that writes in a language which the program does not speak has the
// nearest's words, each marked; a tag with a region has the words of its
// language, and nothing marked but what nobody translated.
func TestBorrowedWordsAreMarked(t *testing.T) {
	t.Parallel()
	site := smallSite(t, map[string]string{
		"shop.yaml":             "title: Atelier\nlanguage: fr\nalso: [ES-mx]\nemergency: Appelez le 112.\n",
		"register/tools.yaml":   "cle: { name: clé de 13, kind: spanner, kept: coffre }\n",
		"procedures/a.md":       "---\ntitle: Changer\ntools: [cle]\n---\n## Travail\n\n1. Prenez la [clé](tool:cle).\n",
		"procedures/a.es-MX.md": "---\ntitle: Cambiar\n---\n## Trabajo\n\n1. Tome la [llave](tool:cle).\n",
	})
	all := pages(t, site)
	for name, page := range all {
		if bytes.ContainsAny(page, "\ue000\ue001\ue002") {
			t.Errorf("%s has signs that are private to the program", name)
		}
		if strings.HasSuffix(name, ".html") && name != "procedures/a.es-MX.html" && !bytes.Contains(page, []byte(`<span lang="en">`)) {
			t.Errorf("%s borrows nothing", name)
		}
	}
	for name, texts := range map[string][]string{
		"procedures/a.html":       {`<html lang="fr"`, `<span lang="en">Fetch</span>`, `<h1>Changer</h1>`, `words-en.js`},
		"procedures/a.es-MX.html": {`<html lang="es-MX">`, `>Traer</h2>`, `<span lang="fr">coffre</span>`, `words-es.js`},
		"index.html":              {`<html lang="fr"`, `<span lang="en">Tools</span>`},
		"theme/words-en.js":       {`"Cancel\n`},
		"theme/words-es.js":       {`"Cancelar\n`},
	} {
		for _, text := range texts {
			if !bytes.Contains(all[name], []byte(text)) {
				t.Errorf("%s has no %s", name, text)
			}
		}
	}
	if bytes.Contains(all["procedures/a.es-MX.html"], []byte(`lang="en"`)) {
		t.Error("the Spanish page borrows from English")
	}
}

// A third language is one folder: a shop that writes in it has its words on
// every page and in its scripts.
func TestAThirdLanguage(t *testing.T) {
	t.Parallel()
	all := unparted(pages(t, smallSite(t, map[string]string{
		"shop.yaml":                 "title: Werkstatt\nlanguage: de-AT\n",
		"machines/presse.yaml":      "name: Presse\noptions: { tisch: Tisch }\nunits:\n  - { serials: 1 to 4, options: [] }\n  - { serials: 5, options: [tisch] }\n",
		"readings/plans/start.yaml": "title: Einstieg\nread: [a]\nwithin: 14 days\n",
		"register/tools.yaml":       "tuch: { name: Putztuch, kind: aid, kept: Schrank }\n",
		"procedures/a.md":           "---\ntitle: Wischen\ntools: [tuch]\n---\n## Arbeit\n\n1. Nehmen Sie das [Putztuch](tool:tuch).\n",
	})))
	for name, texts := range map[string][]string{
		"procedures/a.html":    {`<html lang="de-AT" data-comma>`, `>Bevor Sie anfangen</h2>`, `words-de.js`},
		"machines/presse.html": {`1 bis 4`, `>5<`},
		"plans/start.html":     {`Frist ab dem Beginn: 14 Tage`},
		"tools/index.html":     {`Nach Art`, `Hilfsmittel`},
		"theme/words-de.js":    {`"Abbrechen\n`},
	} {
		for _, text := range texts {
			if !bytes.Contains(all[name], []byte(text)) {
				t.Errorf("%s has no %s", name, text)
			}
		}
	}
	for name, page := range all {
		if strings.HasSuffix(name, ".html") && (bytes.Contains(page, []byte("<span lang=")) || english.Match(spokenText(page))) {
			t.Errorf("%s is not in German: %s", name, english.Find(spokenText(page)))
		}
	}
}

var unspoken = regexp.MustCompile(`(?s)<style.*?</style>|<script.*?</script>|<[^>]*>`)

// spokenText is the text of a page.
func spokenText(page []byte) []byte { return unspoken.ReplaceAll(page, []byte(" ")) }
