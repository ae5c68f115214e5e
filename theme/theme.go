// Package theme is the look of the site: templates, styles, signs and words. A page's template takes the page's values and decides nothing.
//
// The templates are the *.qtpl files; `go generate ./theme` makes the Go code
// from them, and a test says when that was forgotten.
package theme

import (
	"bytes"
	"embed"
	"encoding/json"
	"io/fs"

	"baybinder/generator/language/shape"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles scripts
var files embed.FS

// lean leaves out what only a reader of the source needs: how far a line is
// moved in, and lines that are comments. No script has a text of several lines.
func lean(data []byte) []byte {
	var out bytes.Buffer
	for line := range bytes.Lines(data) {
		if line = bytes.TrimLeft(line, " "); len(line) > 1 && !bytes.HasPrefix(line, []byte("//")) {
			out.Write(line)
		}
	}
	return out.Bytes()
}

// Files are the files that a site gets whose pages speak these languages, by
// path in its theme folder.
func Files(spoken ...*shape.Language) (map[string][]byte, error) {
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
			data, err := fs.ReadFile(part, name)
			out[name] = lean(data)
			return err
		})
		if err != nil {
			return nil, err
		}
	}
	for _, l := range spoken {
		table, err := json.Marshal(&l.Bay)
		if err != nil {
			return nil, err
		}
		out["words-"+l.Code+".js"] = []byte("'use strict';\nwindow.baybinder = { words: " + string(table) + " };\n")
	}
	return out, nil
}
