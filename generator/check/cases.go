package check

import (
	"embed"
	"io/fs"
	"strings"

	"golang.org/x/tools/txtar"
)

// Cases: for each code at least one manual in which it is found and the same
// manual mended, as text archives. A name is the code, a dot and what is
// special: "syntax.table.txtar". Inside, bad/ and good/ are the two manuals,
// and want says what is found in the bad one: file:line:column: code.
//
//go:embed cases
var caseFiles embed.FS

// caseNamed is one case by its file's name.
func caseNamed(name string) (*txtar.Archive, error) {
	data, err := fs.ReadFile(caseFiles, "cases/"+name)
	if err != nil {
		return nil, err
	}
	return txtar.Parse(data), nil
}

// part is a folder of a case, such as one of its manuals: path → text.
func part(a *txtar.Archive, folder string) map[string]string {
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
