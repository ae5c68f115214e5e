// Package casefile reads the manuals that a case holds, a text archive with a folder for each.
package casefile

import (
	"strings"

	"golang.org/x/tools/txtar"
)

// Part is a folder of a case, such as one of its manuals: path → text. "" is the
// whole of it. A file whose name says "without its last line end" has none.
func Part(a *txtar.Archive, folder string) map[string]string {
	files := map[string]string{}
	for _, f := range a.Files {
		if name, in := strings.CutPrefix(f.Name, folder); in {
			name, cut := strings.CutSuffix(name, " without its last line end")
			if files[name] = string(f.Data); cut {
				files[name] = strings.TrimSuffix(files[name], "\n")
			}
		}
	}
	return files
}
