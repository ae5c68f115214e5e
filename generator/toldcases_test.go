package generator_test

import (
	"maps"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Everything that the cases of the rules find is told in every language that
// tells findings, whole, and no value in it is a phrase of the program: such a
// phrase would stand in English in the middle of another language.
func TestWhatCasesFindIsTold(t *testing.T) {
	t.Parallel()
	told := map[string]bool{}
	for _, name := range caseFiles(t) {
		for _, files := range manualsOf(t, name) {
			text := strings.Join(slices.Collect(maps.Values(files)), "\n")
			for _, f := range foundIn(files) {
				told[f.Code] = true
				for _, phrase := range phrasesIn(f, text) {
					t.Errorf("%s: %s: %q in %q is a phrase of the program: make it finding.Say", filepath.Base(name), f.Code, phrase, f.Message)
				}
				for _, l := range language.All() {
					if said := l.Findings.Tell(f); said.Lang != l.Findings.Lang {
						t.Errorf("%s: %s: not told in %s: %q, %q", filepath.Base(name), f.Code, l.Code, f.Message, f.Mend)
					}
				}
			}
		}
	}
	if len(told) < 100 {
		t.Errorf("the cases find %d kinds of faults only", len(told))
	}
}

// caseFiles are the cases of the rules and of the walk.
func caseFiles(t *testing.T) []string {
	t.Helper()
	rules, err := filepath.Glob("check/cases/*.txtar")
	walks, also := filepath.Glob("prove/walk/testdata/*.txtar")
	if err != nil || also != nil || len(rules) < 100 || len(walks) < 100 {
		t.Fatalf("%d and %d cases: %v, %v", len(rules), len(walks), err, also)
	}
	return slices.Concat(rules, walks)
}

// manualsOf are the manuals of a case; those of the walk stand in a shop that
// they share.
func manualsOf(t *testing.T, name string) []map[string]string {
	t.Helper()
	archive, err := txtar.ParseFile(name)
	if err != nil {
		t.Fatal(err)
	}
	manuals := map[string]map[string]string{"bad": {"shop.yaml": "title: Test shop\n"}, "good": {"shop.yaml": "title: Test shop\n"}}
	if strings.HasPrefix(name, "prove/") {
		tree, err := source.Read("prove/walk/testdata/shop")
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range tree.Files {
			manuals["bad"][f.Path], manuals["good"][f.Path] = f.Text, f.Text
		}
	}
	for _, f := range archive.Files {
		if side, path, _ := strings.Cut(f.Name, "/"); manuals[side] != nil {
			manuals[side][path] = string(f.Data)
		}
	}
	return []map[string]string{manuals["bad"], manuals["good"]}
}

func foundIn(files map[string]string) []finding.Finding {
	m, unbound := bind.Manual(source.FromText(files))
	context := &check.Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}}
	return slices.Concat(unbound, walk.All(m).Findings(m), check.Run(context))
}

// phrase is two words one after the other.
var phrase = regexp.MustCompile(`\pL{2,} \pL{2,}`)

// formats are words of the files themselves, which are the same in every
// language, and what the reader of JSON says.
var formats = regexp.MustCompile(`^at (most|least) \d|^not yet, in hand, done|^invalid character`)

// phrasesIn are the values of a finding that are no words of its manual. It quotes
// numbers with the point, where the manual may have a comma.
func phrasesIn(f finding.Finding, manual string) []string {
	var out []string
	manual = pointed(strings.ToLower(manual + "\n" + strings.ReplaceAll(manual, "-", " "))) // an id is a name where there is none
	look := func(text string) {
		plain := pointed(strings.ToLower(strings.Trim(text, `"!`)))
		if phrase.MatchString(text) && !strings.Contains(manual, plain) && !formats.MatchString(plain) {
			out = append(out, text)
		}
	}
	values(f.Says, look)
	values(f.Asks, look)
	for _, r := range f.Related {
		values(r.Says, look)
	}
	return out
}

// values goes through the texts in words, however deep.
func values(v any, look func(string)) {
	switch v := v.(type) {
	case finding.Words:
		for _, x := range v.Values {
			values(x, look)
		}
	case finding.List:
		for _, x := range v.Items {
			values(x, look)
		}
	case finding.Spoken:
	case finding.Sayer:
		values(v.Says(), look)
	default:
		if x := reflect.ValueOf(v); x.Kind() == reflect.String {
			look(x.String())
		} else if e, is := v.(error); is {
			look(e.Error())
		}
	}
}
