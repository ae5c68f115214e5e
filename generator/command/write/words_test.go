package write

import (
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/language"
	"baybinder/generator/language/words"
	"baybinder/generator/offers"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// The script says every word of the table and no other; each refusal and each
// group of choices has its word.
func TestScriptAndTableAgree(t *testing.T) {
	t.Parallel()
	text := script()
	wanted := map[string]bool{"Lang": true, "FileChanged": true, "Missing": true, "Values": true, "Examples": true, "NotSaved": true}
	for _, m := range regexp.MustCompile(`\bw\.([A-Z]\w+)|why: "(\w+)"`).FindAllStringSubmatch(string(text), -1) {
		wanted[m[1]+m[2]] = true
	}
	for _, why := range []refusal{noStep, noWords, tooLong, noPlace, notEmpty, cannotNow, noPage, noPicture, badID, idTaken} {
		wanted[why.Error()] = true
	}
	for _, group := range []string{"ComesOff", "InTheWay", "MakesSafe", "StopsHere", "DueNow", "StillOpen", "OtherWork", "NotYet", "Cautions", "Stops", "Tools", "Conditions", "More", "LeaveSo", "IfNot", "IfAnswer", "TakeAgain", "MayBeLeftOut", "GoodPause", "FoundAs", "AsLeftBy", "AsFoundIn"} {
		wanted[group] = true
	}
	delete(wanted, "RefitLead") // the language's own speech
	delete(wanted, "Often")
	table := reflect.TypeFor[words.Write]()
	for i := range table.NumField() {
		if name := table.Field(i).Name; !wanted[name] {
			t.Errorf("nothing says %s", name)
		}
		delete(wanted, table.Field(i).Name)
	}
	for name := range wanted {
		t.Errorf("no table has %s", name)
	}
}

// Every list, every field of a form and every value that can be chosen has its
// words in each language.
func TestFormsHaveWords(t *testing.T) {
	t.Parallel()
	for _, l := range language.All() {
		for in, asked := range forms {
			if l.Write.Entries[in] == "" || slices.Contains(sections, in) && l.Write.Lists[in] == "" {
				t.Errorf("%s: no words for %s", l.Code, in)
			}
			for _, a := range asked {
				if l.Write.Fields[a.key] == "" {
					t.Errorf("%s: no words for the field %s", l.Code, a.key)
				}
				if a.sort != "one" || a.of != "" {
					continue
				}
				b := bench{Bench: &offers.Bench{Bound: bind.All(source.FromText(map[string]string{"shop.yaml": "title: Shop\nlanguage: " + l.Code + "\n"}))}}
				list := values(b, in, a.key)
				if len(list) == 0 {
					t.Errorf("%s of %s takes no values", a.key, in)
				}
				for _, o := range list {
					if o.Label == "" {
						t.Errorf("%s: no words for %s of %s", l.Code, o.ID, in)
					}
				}
			}
		}
	}
}

// What was pasted keeps its words, tabs and lines; no control goes into a file.
func TestNoControlIsWritten(t *testing.T) {
	t.Parallel()
	if got := cleaned("a\x1b[2Jb\x00c\x7fd\u0085e\r\nf\tg \x08"); got != "a[2Jbcde\nf\tg" {
		t.Errorf("%q", got)
	}
}

// An id of a name is one that a file can have on Windows too, of at most 64
// characters, and nobody's yet.
func TestFreeID(t *testing.T) {
	long := strings.Repeat("a", 70)
	taken := map[string]bool{"seat": true, "seat-2": true, long[:64]: true}
	for id, want := range map[string]string{"": "part", "lid": "lid", "seat": "seat-3", "con": "con-2", "com1": "com1-2", long: long[:62] + "-2"} {
		if got := free(id, "part", taken); got != want {
			t.Errorf("%q becomes %q, want %q", id, got, want)
		}
	}
}
