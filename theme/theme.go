// Package theme is the look of the site: templates, styles, signs and words. A page's template takes the page's values and decides nothing.
//
// The templates are the *.qtpl files; `go generate ./theme` makes the Go code
// from them, and a test says when that was forgotten.
package theme

import (
	"bytes"
	"embed"
	"encoding/json"
	"errors"
	"io/fs"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/css"
	"github.com/tdewolff/minify/v2/js"

	"baybinder/generator/language/shape"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles scripts
var files embed.FS

// scripts are the scripts in the order in which they rest on each other. Pages
// get them as one file, which a browser reads once: many files are larger, for
// what they have in common is packed in each of them again.
var scripts = []string{"pieces", "search", "language", "store", "jobs", "unit", "holds", "steps", "closeout", "before", "record", "rail", "bay"}

// Files are the files that a site gets whose pages speak these languages, by
// path in its theme folder, without what only a reader of the source needs.
func Files(spoken ...*shape.Language) (map[string][]byte, error) {
	small := minify.New()
	small.AddFunc("css", css.Minify)
	small.AddFunc("js", js.Minify)
	var whole bytes.Buffer
	for _, name := range scripts {
		data, err := fs.ReadFile(files, "scripts/"+name+".js")
		if err != nil {
			return nil, err
		}
		whole.Write(data)
	}
	script, err := small.Bytes("js", whole.Bytes())
	if err != nil {
		return nil, err
	}
	out := map[string][]byte{"baybinder.js": script}
	return out, errors.Join(styles(out, small), tables(out, spoken))
}

func styles(out map[string][]byte, small *minify.M) error {
	all, err := fs.ReadDir(files, "styles")
	if err != nil {
		return err
	}
	for _, d := range all {
		data, err := fs.ReadFile(files, "styles/"+d.Name())
		if err != nil {
			return err
		}
		if out[d.Name()], err = small.Bytes("css", data); err != nil {
			return err
		}
	}
	return nil
}

// tables are the words that the scripts say, a file a language.
func tables(out map[string][]byte, spoken []*shape.Language) error {
	for _, l := range spoken {
		table, err := json.Marshal(&l.Bay)
		if err != nil {
			return err
		}
		out["words-"+l.Code+".js"] = []byte("'use strict';\nwindow.baybinder = { words: " + string(table) + " };\n")
	}
	return nil
}
