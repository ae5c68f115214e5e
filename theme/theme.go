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
	"path"
	"strings"

	"baybinder/generator/language/shape"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles/*.css styles/baybinder/*.css scripts/*.js
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

// components are the styles of one thing each, in the order in which a later
// one may say something else than an earlier one: what the paper, the dark and
// narrow screens change comes last.
var components = []string{
	"base", "sheet", "title", "before", "steps", "code", "safety", "holds", "end", "lists", "cards", "emergency", "bay", "rail", "jobs",
	"readable", "plot", "timeline", "said", "labels", "short", "narrow", "print", "dark", "calm", "forced",
}

// style is the style of every page: that of all its components.
func style() ([]byte, error) {
	var out []byte
	for _, name := range components {
		data, err := files.ReadFile("styles/baybinder/" + name + ".css")
		if err != nil {
			return nil, err
		}
		out = append(out, data...)
	}
	return out, nil
}

// joined puts the lines of a style together where no space is needed between
// them.
func joined(style []byte) []byte {
	var out bytes.Buffer
	for line := range bytes.Lines(style) {
		if line = bytes.TrimSpace(line); len(line) == 0 {
			continue
		}
		out.Write(line)
		if !bytes.ContainsAny(line[len(line)-1:], ";{},") {
			out.WriteByte('\n')
		}
	}
	return out.Bytes()
}

// Files are the files that a site gets whose pages speak these languages, by
// path in its theme folder.
func Files(spoken ...*shape.Language) (map[string][]byte, error) {
	all, err := style()
	if err != nil {
		return nil, err
	}
	out := map[string][]byte{"baybinder.css": joined(lean(all))}
	for _, pattern := range []string{"styles/*.css", "scripts/*.js"} {
		names, err := fs.Glob(files, pattern)
		if err != nil {
			return nil, err
		}
		for _, name := range names {
			data, err := files.ReadFile(name)
			if err != nil {
				return nil, err
			}
			data = lean(data)
			if strings.HasSuffix(name, ".css") {
				data = joined(data)
			}
			out[path.Base(name)] = data
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
