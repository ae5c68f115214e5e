package check

import (
	"embed"
	"io/fs"

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
