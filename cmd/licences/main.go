// Command licences writes the licence of every module whose code is in a program,
// with its name and version, for the system that GOOS and GOARCH say:
//
//	go run ./cmd/licences ./cmd/baybinder > LICENSES.txt
//
// It ends with 1, and says why, where a module has no licence, one that is not
// known, or one that asks for more than that its text goes with the program.
package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "licences: which package?")
		os.Exit(2)
	}
	text, err := all(os.Args[1])
	if err != nil {
		fmt.Fprintln(os.Stderr, "licences:", err)
		os.Exit(1)
	}
	os.Stdout.WriteString(text)
}

// all is the licences of a program: its own, that of Go, then those of its
// modules by their paths.
func all(program string) (string, error) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return "", err
	}
	modules, err := inside(program)
	if err != nil {
		return "", err
	}
	library := module{Path: "Go and its library", Version: runtime.Version(), Dir: strings.TrimSpace(string(root))}
	modules = slices.Insert(modules, 1, library) // behind the program's own
	var out strings.Builder
	var faults []error
	for _, m := range modules {
		text, err := m.licence()
		faults = append(faults, err)
		out.WriteString(text)
	}
	return out.String(), errors.Join(faults...)
}

// module is what the program's list of its packages says of one.
type module struct {
	Path, Version, Dir string
	Main               bool
}

// inside are the modules whose packages the program is made of: its own, then the
// others by their paths.
func inside(program string) ([]module, error) {
	list := exec.Command("go", "list", "-deps", "-json=Module", program)
	list.Stderr = os.Stderr
	told, err := list.Output()
	if err != nil {
		return nil, err
	}
	var modules []module
	for d := json.NewDecoder(strings.NewReader(string(told))); ; {
		var p struct{ Module *module }
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		if p.Module != nil && !slices.Contains(modules, *p.Module) {
			modules = append(modules, *p.Module)
		}
	}
	slices.SortFunc(modules, func(a, b module) int {
		switch {
		case a.Main:
			return -1
		case b.Main:
			return 1
		}
		return strings.Compare(a.Path, b.Path)
	})
	return modules, nil
}

// licence is what a module's files say of its licence, each known and free.
func (m module) licence() (string, error) {
	var out strings.Builder
	var faults []error
	fmt.Fprintf(&out, "== %s %s\n", m.Path, m.Version)
	files := m.files("LICEN[CS]E*", "COPYING*")
	if len(files) == 0 {
		return "", fmt.Errorf("%s has no licence", m.Path)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			return "", err
		}
		ids, err := Free(text)
		if err != nil {
			faults = append(faults, fmt.Errorf("%s, %s: %w", m.Path, filepath.Base(file), err))
		}
		fmt.Fprintf(&out, "%s: %s\n\n%s\n\n", filepath.Base(file), strings.Join(ids, ", "), strings.TrimSpace(string(text)))
	}
	for _, file := range m.files("NOTICE*", "PATENTS*", "AUTHORS*") {
		text, err := os.ReadFile(file)
		if err != nil {
			return "", err
		}
		fmt.Fprintf(&out, "%s\n\n%s\n\n", filepath.Base(file), strings.TrimSpace(string(text)))
	}
	return out.String(), errors.Join(faults...)
}

// files are the module's plain files of such names.
func (m module) files(patterns ...string) []string {
	var out []string
	for _, pattern := range patterns {
		found, _ := filepath.Glob(filepath.Join(m.Dir, pattern))
		for _, file := range found {
			if i, err := os.Stat(file); err == nil && i.Mode().IsRegular() && filepath.Ext(file) != ".go" {
				out = append(out, file)
			}
		}
	}
	return out
}
