// Package theme is the look of the site: templates, styles, signs and words. A page's template takes the page's values and decides nothing.
//
// The templates are the *.qtpl files; `go generate ./theme` makes the Go code
// from them, and a test says when that was forgotten.
package theme

import (
	"embed"
	"encoding/json"
	"io/fs"

	"baybinder/generator/language/words"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles scripts
var files embed.FS

// Files are the files that every site gets, by path in its theme folder.
func Files() (map[string][]byte, error) {
	out := map[string][]byte{}
	for _, folder := range []string{"styles", "scripts"} {
		part, err := fs.Sub(files, folder)
		if err != nil {
			return nil, err
		}
		err = fs.WalkDir(part, ".", func(name string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() {
				return err
			}
			out[name], err = fs.ReadFile(part, name)
			return err
		})
		if err != nil {
			return nil, err
		}
	}
	for _, language := range []string{"en", "es"} {
		table, err := json.Marshal(words.BayIn(language))
		if err != nil {
			return nil, err
		}
		out["words-"+language+".js"] = []byte("'use strict';\nwindow.baybinder = { words: " + string(table) + " };\n")
	}
	return out, nil
}
