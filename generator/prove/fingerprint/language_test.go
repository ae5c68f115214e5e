package fingerprint

import (
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/language"
	"baybinder/generator/model"
)

var english = &language.Default().Readings.Changes

// What changed is told in the words of the page's language, the manual's own
// words as they are.
func TestChangesAreSaidInTheLanguage(t *testing.T) {
	files := maps.Clone(press)
	edit{"register/holds.yaml", "for: 10 min", "for: 12 min"}.in(t, files)
	edit{"machines/press.yaml", "22 N·m", "24 N·m"}.in(t, files)
	edit{"procedures/lid.md", "7. Tell the foreman.", "7. Tell the driver.\n8. Go home."}.in(t, files)
	edit{"procedures/sweep.md", "the bay", "the whole bay"}.in(t, files)
	before, now := formOf(t, press, "lid"), formOf(t, files, "lid")
	want := []string{
		"paso 1.2: parada wait, para: 12 min; antes, 10 min",
		"paso 1.3: desmontar lid, sujeta por lid bolt par: 24 N·m; antes, 22 N·m",
		"paso 1.7: dice “Tell the driver.”; antes, “Tell the foreman.”",
		"paso 1.8 es nuevo: dice “Go home.”",
		"cambió lo que realiza: sweep",
	}
	if got := Changes(before, now, &language.Of("es").Readings.Changes); !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	for _, l := range language.All() {
		if told := Changes(before, now, &l.Readings.Changes); len(told) != len(want) {
			t.Errorf("%s tells of %d changes, not of %d", l.Code, len(told), len(want))
		}
	}
}

var fieldWritten = regexp.MustCompile(`(?:field|source|line|states)\((?:1, )?(?:before\+)?"([a-z- ]+)"`)

// Every kind of link and every field that a form has is called something: what
// has no word would stand in the format's own.
func TestEveryTermIsCalledSomething(t *testing.T) {
	var terms []string
	for _, k := range model.Kinds {
		if !k.Silent { // else it is no line of a form
			terms = append(terms, k.Name)
		}
	}
	for _, name := range []string{"fields.go", "form.go"} {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		found := fieldWritten.FindAllStringSubmatch(string(text), -1)
		if len(found) < 5 {
			t.Fatalf("%s writes %d fields: the test looks at nothing", name, len(found))
		}
		for _, f := range found {
			terms = append(terms, strings.Fields(f[1])...)
		}
	}
	for _, term := range terms {
		if english.Terms[term] == "" && !slices.Contains([]string{"link", "to"}, term) {
			t.Errorf("%q is called nothing", term)
		}
	}
}
