// Package theme is the look of the site: templates, styles, signs and words. A page's template takes the page's values and decides nothing.
//
// The templates are the *.qtpl files; `go generate ./theme` makes the Go code
// from them, and a test says when that was forgotten.
package theme

import (
	"embed"
	"io/fs"
)

//go:generate go tool qtc -dir=. -skipLineComments

//go:embed styles
var files embed.FS

// Files are the files that every site gets, by path in its theme folder.
func Files() (map[string][]byte, error) {
	out := map[string][]byte{}
	styles, err := fs.Sub(files, "styles")
	if err != nil {
		return nil, err
	}
	err = fs.WalkDir(styles, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		out[name], err = fs.ReadFile(styles, name)
		return err
	})
	return out, err
}
