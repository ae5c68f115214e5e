// Package handbook is the manual on writing a manual: a manual in the format
// that it teaches, built by the program like any other.
//
// The chapters are the files in manual/. Fenced code in them is an example, and
// says by its first line what it is: a file of the reader's manual (its path
// stands behind the language, a plus behind that adds to the file), or commands
// (sh). Taken in order, from an empty folder, every example works; a test does
// so. The reference of fields, link kinds and findings is made from the program's
// own tables (reference.go), so that it cannot say anything else.
package handbook

import (
	"embed"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

//go:embed manual
var files embed.FS

const root = "manual"

// Texts are the files of the handbook's manual: path → text.
func Texts() map[string]string {
	texts := reference()
	err := fs.WalkDir(files, root, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := files.ReadFile(name)
		texts[strings.TrimPrefix(name, root+"/")] = string(data)
		return err
	})
	if err != nil {
		panic(err) // embedded files can be read
	}
	return texts
}

// Write writes the handbook's manual into a folder.
func Write(folder string) error {
	for name, text := range Texts() {
		file := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}
