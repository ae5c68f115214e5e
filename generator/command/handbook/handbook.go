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
	"regexp"
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

// Example is fenced code of a chapter.
type Example struct {
	Chapter string // its file
	Path    string // of the file that it is, "" for commands
	More    bool   // it stands at the end of the file that is there
	Text    string
}

var fence = regexp.MustCompile("(?ms)^( *)```(\\w+)(?: (\\S+))?( \\+)?\n(.*?)^ *```$")

// Examples are those of all chapters, in the order in which they are read.
func Examples() []Example {
	var out []Example
	entries, err := files.ReadDir(root + "/procedures/chapters")
	if err != nil {
		panic(err)
	}
	for _, e := range entries {
		data, err := files.ReadFile(root + "/procedures/chapters/" + e.Name())
		if err != nil {
			panic(err)
		}
		for _, m := range fence.FindAllStringSubmatch(string(data), -1) {
			out = append(out, Example{e.Name(), m[3], m[4] != "", outdented(m[5], m[1])})
		}
	}
	return out
}

// outdented is a text without the indent of its fence.
func outdented(text, indent string) string {
	var b strings.Builder
	for line := range strings.Lines(text) {
		b.WriteString(strings.TrimPrefix(line, indent))
	}
	return b.String()
}
