// Package theme is the look of the site: templates, styles, signs and words. A page's template takes the page's values and decides nothing.
//
// The templates are the *.qtpl files; `go generate ./theme` makes the Go code
// from them, and a test says when that was forgotten.
//
// What is ticked stands in the browser's own store (Web Storage). Tried by hand
// on 2026-11-30, pages opened from a folder and pages served: Chromium, and
// Firefox ESR 153.8 of Debian. Both keep one store for all pages of a folder:
// the front page lists the jobs of every procedure, a called procedure knows who
// works, and two tabs hear of each other. A browser may give each file of a
// folder a store of its own; then the front page says that each page knows its
// jobs alone.
package theme

import (
	"bytes"
	"embed"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/css"
	"github.com/tdewolff/minify/v2/js"

	"baybinder/generator/language/shape"
	"baybinder/generator/language/words"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles/baybinder/*.css styles/readings/*.css scripts/*.js
var files embed.FS

// components are the styles of one thing each, in the order in which a later
// one may say something else than an earlier one: what the paper, the dark and
// narrow screens change comes last.
var components = []string{
	"base", "sheet", "title", "before", "steps", "code", "safety", "holds", "end", "lists", "cards", "emergency", "bay", "rail", "jobs",
	"readable", "plot", "timeline", "said", "labels", "uses", "short", "narrow", "work", "print",
	"paper", "paper-steps", "paper-safety", "paper-holds", "paper-end", "dark", "calm", "forced",
}

// ofReadings are the styles, beside those, of plans and of the pages that name
// people.
var ofReadings = []string{"plans", "marks", "matrix", "exercise", "narrow", "print", "open", "sign"}

// strict is the line with which each script begins; of several in one file the
// first counts.
const strict = "'use strict';\n"

// inOne are the scripts as one file.
func inOne() ([]byte, error) {
	data, err := joined("scripts/%s.js", scripts)()
	return append([]byte(strict), bytes.ReplaceAll(data, []byte(strict), nil)...), err
}

// scripts are the scripts in the order in which they rest on each other. Pages
// get them as one file, which a browser reads once: many files are larger, for
// what they have in common is packed in each of them again.
var scripts = []string{
	"pieces", "caution", "search", "language", "merge", "store", "jobs", "unit", "holds", "steps", "closeout", "before", "record", "rail", "bay",
}

// joined is one file of several, in their order: pattern has %s for a name.
func joined(pattern string, names []string) func() ([]byte, error) {
	return func() ([]byte, error) {
		var out []byte
		for _, name := range names {
			data, err := files.ReadFile(fmt.Sprintf(pattern, name))
			if err != nil {
				return nil, err
			}
			out = append(out, data...)
		}
		return out, nil
	}
}

// Files are the files that a site gets whose pages speak these languages, by
// path in its theme folder, without what only a reader of the source needs.
func Files(spoken ...*shape.Language) (map[string][]byte, error) {
	small := minify.New()
	small.AddFunc("css", css.Minify)
	small.AddFunc("js", js.Minify)
	out := map[string][]byte{}
	put := func(name, kind string, read func() ([]byte, error)) error {
		data, err := read()
		if err != nil {
			return err
		}
		out[name], err = small.Bytes(kind, data)
		return err
	}
	err := errors.Join(
		put("baybinder.css", "css", joined("styles/baybinder/%s.css", components)),
		put("readings.css", "css", joined("styles/readings/%s.css", ofReadings)),
		put("baybinder.js", "js", inOne),
	)
	if err != nil {
		return nil, err
	}
	out["baybinder.js"] = wordUsed.ReplaceAllFunc(out["baybinder.js"], func(used []byte) []byte {
		if short, is := shortNames[string(used[1:])]; is {
			return []byte("." + short)
		}
		return used
	})
	return out, tables(out, spoken)
}

// wordUsed is a word's name where a script uses it.
var wordUsed = regexp.MustCompile(`\.[A-Z]\w+\b`)

// shortNames are what the words' names become in what is sent: as they are
// written they would be a twentieth of what a page loads. They are A to Z, then
// A0, B0 and so on, in the order of the fields; spread counts in the same way.
var shortNames = func() map[string]string {
	out := map[string]string{}
	for i, f := range spokenWords {
		out[f.Name] = string(rune('A' + i%26))
		if i >= 26 {
			out[f.Name] += strconv.Itoa(i/26 - 1)
		}
	}
	return out
}()

// spokenWords are the fields with the words that the scripts say.
var spokenWords = reflect.VisibleFields(reflect.TypeFor[words.Bay]())

// spread gives the words of a list, a line each, their short names.
const spread = `.split('\n').forEach((words, i) => { window.baybinder.words[String.fromCharCode(65 + i % 26) + (i < 26 ? '' : (i - i % 26) / 26 - 1)] = words; });
`

// tables are the words that the scripts say, a file a language.
func tables(out map[string][]byte, spoken []*shape.Language) error {
	for _, l := range spoken {
		var list []string
		for _, f := range spokenWords {
			list = append(list, reflect.ValueOf(l.Bay).FieldByIndex(f.Index).String())
		}
		text, err := json.Marshal(strings.Join(list, "\n"))
		if err != nil {
			return err
		}
		out["words-"+l.Code+".js"] = []byte(strict + "window.baybinder = { words: {} };\n" + string(text) + spread)
	}
	return nil
}
