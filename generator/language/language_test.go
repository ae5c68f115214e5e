package language

import (
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// Every field of a language is filled, but for those that it says it lacks, and
// texts take the same values in every language.
func TestEveryLanguageIsWhole(t *testing.T) {
	for _, l := range All() {
		for _, why := range faults(l) {
			t.Errorf("%s: %s", l.Code, why)
		}
	}
}

// faults are what is empty in a language, or takes other values than English.
func faults(l *shape.Language) []string {
	c := &comparison{}
	english, here := reflect.ValueOf(Default()).Elem(), reflect.ValueOf(l).Elem()
	for i := range here.NumField() {
		name := here.Type().Field(i).Name
		lacks := slices.Contains(l.Lacks, name)
		switch {
		case name == "Lacks", name == "Findings": // the tables have a test of their own
		case lacks && slices.Contains([]string{"Signs", "Speech", "Procedure", "Stem"}, name):
			c.say("%s is said to be lacking, and pages cannot do without it", name)
		case lacks && !here.Field(i).IsZero():
			c.say("%s is there, and said to be lacking", name)
		case !lacks:
			c.value(name, english.Field(i), here.Field(i))
		}
	}
	return c.found
}

type comparison struct{ found []string }

func (c *comparison) say(format, name string) {
	c.found = append(c.found, strings.Replace(format, "%s", name, 1))
}

func (c *comparison) value(name string, english, here reflect.Value) {
	if here.Kind() != reflect.Bool && (here.IsZero() || here.Kind() == reflect.Map && here.Len() == 0) {
		c.say("%s is empty", name)
		return
	}
	switch here.Kind() {
	case reflect.Struct:
		for i := range here.NumField() {
			if f := here.Type().Field(i); f.Tag.Get("may") != "empty" {
				c.value(name+"."+f.Name, english.Field(i), here.Field(i))
			}
		}
	case reflect.String:
		if name != "Procedure" && !slices.Equal(values(english.String()), values(here.String())) {
			c.say("%s takes other values than in English", name)
		}
	case reflect.Map:
		if here.Type() != reflect.TypeFor[shape.Set]() && here.Type() != reflect.TypeFor[shape.Spelled]() {
			c.keys(name, english, here)
		}
	}
}

// keys compares maps from what the program means to words.
func (c *comparison) keys(name string, english, here reflect.Value) {
	for _, key := range english.MapKeys() {
		switch word := here.MapIndex(key); {
		case !word.IsValid() || word.IsZero():
			c.say("%s is empty", name+"["+key.String()+"]")
		}
	}
	for _, key := range here.MapKeys() {
		if !english.MapIndex(key).IsValid() {
			c.say("%s is not in English", name+"["+key.String()+"]")
		}
	}
}

var verb, hole = regexp.MustCompile(`%[.0-9]*[sdf]`), regexp.MustCompile(`\{\d\}`)

// values are what is filled into a text: in order where it has no numbers.
func values(text string) []string {
	holes := hole.FindAllString(text, -1)
	slices.Sort(holes)
	return slices.Concat(verb.FindAllString(text, -1), holes)
}

// The test above sees what is missing.
func TestAnEmptyFieldIsNamed(t *testing.T) {
	for want, spoil := range map[string]func(l *shape.Language){
		"Words.Danger is empty":                                       func(l *shape.Language) { l.Words.Danger = "" },
		"Words.Revision takes other values than in English":           func(l *shape.Language) { l.Words.Revision = "%s" },
		"Bay.JobOn takes other values than in English":                func(l *shape.Language) { l.Bay.JobOn = "{0}" },
		"Grammar.Verbs is empty":                                      func(l *shape.Language) { l.Grammar.Verbs = nil },
		"Signs[W012] is empty":                                        func(l *shape.Language) { l.Signs = without(l.Signs, "W012") },
		"Stem is empty":                                               func(l *shape.Language) { l.Stem = nil },
		"Signs is said to be lacking, and pages cannot do without it": func(l *shape.Language) { l.Lacks = append(slices.Clone(l.Lacks), "Signs") },
		"Vague is there, and said to be lacking":                      func(l *shape.Language) { l.Lacks = append(slices.Clone(l.Lacks), "Vague") },
	} {
		l := *Known("es")
		spoil(&l)
		if got := faults(&l); !slices.Equal(got, []string{want}) {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func without(names map[string]string, key string) map[string]string {
	out := map[string]string{}
	for k, v := range names {
		if k != key {
			out[k] = v
		}
	}
	return out
}

// Every kind that the format has is said.
func TestEveryKindHasWords(t *testing.T) {
	for _, of := range []any{model.Tool{}, model.Hold{}, model.Energy{}} {
		field, _ := reflect.TypeOf(of).FieldByName("Kind")
		for kind := range strings.FieldsSeq(field.Tag.Get("one")) {
			for _, l := range All() {
				if l.Words.Kinds[kind] == "" {
					t.Errorf("%s: no words for the kind %s of a %T", l.Code, kind, of)
				}
			}
		}
	}
}

// Tags are those of RFC 5646; which language is near which is said by Unicode
// CLDR, as golang.org/x/text has it.
func TestTheLanguageOfATag(t *testing.T) {
	for tag, want := range map[string][2]string{ // serves, known
		"en": {"en", "en"}, "en-GB": {"en", "en"}, "EN": {"en", "en"}, "es": {"es", "es"}, "es-MX": {"es", "es"}, "es-419": {"es", "es"}, "ES-mx": {"es", "es"},
		"de": {"de", "de"}, "de-AT": {"de", "de"}, "gsw": {"de", ""}, "lb": {"de", ""}, "fr": {"en", ""}, "": {"en", ""}, "est": {"en", ""}, "zz-??": {"en", ""},
	} {
		known := ""
		if l := Known(tag); l != nil {
			known = l.Code
		}
		if got := [2]string{Of(tag).Code, known}; got != want {
			t.Errorf("%q: served by %q, known %q; want %q", tag, got[0], got[1], want)
		}
	}
}

func TestTag(t *testing.T) {
	for text, want := range map[string]string{"ES-mx": "es-MX", "es-419": "es-419", "EN": "en", "zh-hant-tw": "zh-Hant-TW", "fr": "fr", "": "?", "e s": "?", "../x": "?", "es-": "?", "x": "?"} {
		got, ok := Tag(text)
		if !ok {
			got = "?"
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestSignNumber(t *testing.T) {
	for name, want := range map[string]string{"electricity": "W012", "Electricidad": "W012", "": "", "a toad": ""} {
		if got := SignNumber(name); got != want {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
}

// What a page says of the language that findings are told in is so.
func TestFindingsAreToldInWhatPagesSay(t *testing.T) {
	for _, l := range All() {
		told := l.Findings.Lang
		if told == "" {
			told = Default().Code
		}
		if l.Write.Told != told {
			t.Errorf("%s: findings are told in %q, pages say %q", l.Code, told, l.Write.Told)
		}
	}
}

// A folder that has a language and no line in all would serve nobody.
func TestEveryFolderWithALanguageIsListed(t *testing.T) {
	files, err := filepath.Glob("*/*.go")
	if err != nil || len(files) < 30 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	code := regexp.MustCompile(`(?s)\nvar Language = shape\.Language\{.*?\n\tCode:\s*"([^"]+)"`)
	found := 0
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if m := code.FindSubmatch(data); m != nil {
			found++
			if !slices.ContainsFunc(All(), func(l *shape.Language) bool { return l.Code == string(m[1]) }) {
				t.Errorf("%s has the language %s, and all of language.go does not", name, m[1])
			}
		}
	}
	if found != len(All()) {
		t.Errorf("%d folders have a language, and %d are listed", found, len(All()))
	}
}

// neverSaid are the acts for which no word is looked for: their words say too
// many other things (comprobar and prüfen are said of far more than prove), or, as
// with a mark, what is done by them is seen.
var neverSaid = strings.Fields("test-live mark renew alter reset dry reverse do")

func TestEveryActHasAVerb(t *testing.T) {
	for _, k := range model.Kinds {
		if k.Act == model.NoAct || slices.Contains(neverSaid, k.Name) {
			continue
		}
		for _, l := range All() {
			if !slices.ContainsFunc(l.Verbs.Said, func(v shape.Verb) bool { return v.Kind == k.Name }) {
				t.Errorf("%s: no verb for %s: an act that is said in words only is not seen", l.Code, k.Name)
			}
		}
	}
}

// How numbers are parted: ISO 80000-1 leaves it to the language; that Spain,
// Argentina, Germany and Austria write the comma, Mexico, Puerto Rico and
// Switzerland the point, from memory.
//
// Known: FROM MEMORY.
func TestMarkerGoesByTheLanguageAndItsRegion(t *testing.T) {
	for tag, want := range map[string]quantity.Marker{
		"": quantity.Point, "en": quantity.Point, "en-GB": quantity.Point,
		"es": quantity.Comma, "es-ES": quantity.Comma, "es-AR": quantity.Comma, "es-MX": quantity.Point, "es-PR": quantity.Point,
		"de": quantity.Comma, "de-AT": quantity.Comma, "de-CH": quantity.Point, "fr": quantity.Comma,
	} {
		if got := Marker(tag); got != want {
			t.Errorf("%q: %v, want %v", tag, got, want)
		}
	}
}

// How the numbers up to ninety-nine are written out, from memory.
func TestNumbersAreSpelled(t *testing.T) {
	for tag, spelled := range map[string]map[string]int{
		"en": {"two": 2, "twelve": 12, "twenty": 20, "twenty one": 21, "thirty": 30, "forty five": 45, "ninety nine": 99},
		"es": {"una": 1, "dos": 2, "once": 11, "veinte": 20, "veintidós": 22, "veintiséis": 26, "treinta": 30, "cuarenta y cinco": 45, "noventa y nueve": 99},
		"de": {"eine": 1, "zwei": 2, "elf": 11, "zwanzig": 20, "einundzwanzig": 21, "sechsundzwanzig": 26, "dreißig": 30, "fünfundvierzig": 45, "siebenundsiebzig": 77, "neunundneunzig": 99},
	} {
		numbers := Known(tag).Numbers
		if n := len(slices.Compact(slices.Sorted(maps.Values(numbers.Spelled)))); n != 99 {
			t.Errorf("%s: %d numbers", tag, n)
		}
		for word, n := range spelled {
			if numbers.Spelled[word] != n {
				t.Errorf("%s: %q is %d", tag, word, numbers.Spelled[word])
			}
		}
	}
}
