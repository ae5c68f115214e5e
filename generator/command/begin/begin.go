// Package begin writes what a writer starts from: a small manual of invented entries, a procedure with every section in it, or one that reaches a part.
//
// The texts are the files in manual/ and procedure.md. What reaches a part is
// worked out from the machine's file: what comes off (way.go), what is made
// dead (cut.go) and with which tools (toolroom.go); phases.go writes it. It never writes over a
// file, and what it wrote before it failed it takes away again.
//
// # Decided where the format is silent
//
// What it writes is always a draft: the work is blank and nobody has walked it. Every energy met
// is proved dead, also one that is only guarded. What the registers lack is written into it as
// missing. A begin that was killed can be run again: a folder that holds some of what it writes,
// each file whole or its beginning, and nothing else, is written to the end.
package begin

import (
	"embed"
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/command/schema"
)

//go:embed all:manual
var templates embed.FS

const templateRoot = "manual"

// Manual writes a new manual into a folder that is empty or not there yet. It
// returns the files that it wrote, as paths inside the folder.
func Manual(folder string) ([]string, error) {
	texts, err := manualTexts()
	if err != nil {
		return nil, finding.Refuse("the manual could not be written: %s", err)
	}
	if !brokenOff(folder, texts) {
		if err := mustBeEmpty(folder); err != nil {
			return nil, err
		}
	}
	w := &writer{root: folder}
	for _, name := range slices.Sorted(maps.Keys(texts)) {
		if err == nil {
			err = w.write(name, texts[name])
		}
	}
	if err != nil {
		w.undo()
		return nil, finding.Refuse("the manual could not be written: %s", err)
	}
	return w.files, nil
}

// Bare begins a manual in an empty folder with nothing but the shop's name: who
// writes it by choosing fills it. A folder that holds something stays as it is.
func Bare(folder, title string) error {
	if _, err := os.Stat(folder); err != nil || mustBeEmpty(folder) != nil {
		return nil
	}
	w := &writer{root: folder}
	err := w.write("shop.yaml", "title: "+yamlText(title)+"\n")
	if err != nil {
		w.undo()
		return finding.Refuse("the manual could not be written: %s", err)
	}
	return nil
}

// manualTexts are the files of a new manual: the templates, the schemas, and in
// each YAML file the line by which an editor finds its schema.
func manualTexts() (map[string]string, error) {
	texts := map[string]string{}
	for _, f := range schema.Files {
		texts[f.Path()] = string(f.Schema().JSON())
	}
	return texts, fs.WalkDir(templates, templateRoot, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := templates.ReadFile(name)
		name = strings.TrimPrefix(name, templateRoot+"/")
		if described, is := schema.Of(name); is {
			text = append([]byte(described.Setting(name)+"\n"), text...)
		}
		texts[name] = string(text)
		return err
	})
}

// brokenOff says that a folder holds what a killed begin left, and nothing else:
// some of the texts, each whole or its beginning, and not all of them.
func brokenOff(folder string, texts map[string]string) bool {
	whole := 0
	err := filepath.WalkDir(folder, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(folder, full)
		name := filepath.ToSlash(rel)
		switch text, is := texts[name]; {
		case err != nil:
			return err
		case is && begins(full, text):
			if info, err := d.Info(); err == nil && info.Size() == int64(len(text)) {
				whole++
			}
		case !strings.HasPrefix(name, "."):
			return errAnothers
		}
		return nil
	})
	return err == nil && whole > 0 && whole < len(texts)
}

var errAnothers = errors.New("this is another's file")

// begins says that a plain file holds the beginning of a text, or all of it.
func begins(full, text string) bool {
	info, err := os.Lstat(full)
	if err != nil || !info.Mode().IsRegular() || info.Size() > int64(len(text)) {
		return false
	}
	data, err := os.ReadFile(full)
	return err == nil && strings.HasPrefix(text, string(data))
}

// mustBeEmpty refuses a folder that holds anything. Hidden files do not count:
// a folder that was just put under version control has some.
func mustBeEmpty(folder string) error {
	entries, err := os.ReadDir(folder)
	info, statErr := os.Stat(folder)
	switch {
	case errors.Is(statErr, fs.ErrNotExist):
		return nil
	case statErr == nil && !info.IsDir():
		return finding.Refuse("%s is a file, not a folder: name another with --manual", folder)
	case err != nil:
		return finding.Refuse("the folder cannot be read: %s", err)
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			return finding.Refuse("%s is not empty (it holds %s), and nothing in it is written over: name another folder with --manual, or write a procedure into this one with baybinder begin procedure", folder, e.Name())
		}
	}
	return nil
}

// writer writes new files below a folder, and can take them away again.
type writer struct {
	root  string
	files []string // written, as paths inside the folder
	made  []string // folders and files that were not there, in the order of making
}

// write writes a file, unless there is one: a hidden file that was there
// before stays as it is. What a killed run began is written to its end.
func (w *writer) write(name, text string) error {
	full := filepath.Join(w.root, filepath.FromSlash(name))
	if begins(full, text) {
		w.files = append(w.files, name)
		return os.WriteFile(full, []byte(text), 0o644)
	}
	if strings.HasPrefix(name, ".") {
		if _, err := os.Lstat(full); err == nil {
			return nil
		}
	}
	if err := w.folder(filepath.Dir(full)); err != nil {
		return err
	}
	if err := atomicfile.New(full, []byte(text), 0o644); err != nil {
		return err
	}
	w.made = append(w.made, full)
	w.files = append(w.files, name)
	return nil
}

// folder makes a folder and those above it, one by one, to know which are new.
func (w *writer) folder(dir string) error {
	if info, err := os.Stat(dir); err == nil && info.IsDir() {
		return nil
	}
	if above := filepath.Dir(dir); above != dir {
		if err := w.folder(above); err != nil {
			return err
		}
	}
	err := os.Mkdir(dir, 0o755)
	if err == nil {
		w.made = append(w.made, dir)
	}
	return err
}

// undo takes away what was made, last first. What cannot be taken away was
// used by someone else meanwhile, and stays.
func (w *writer) undo() {
	for i := len(w.made) - 1; i >= 0; i-- {
		_ = os.Remove(w.made[i])
	}
}
