package schema

import (
	"os"
	"path"
	"path/filepath"

	"baybinder/generator/base/finding"
)

// Write writes all schemas into a manual's folder, in place of those that are
// there, and returns what it wrote as paths inside the folder.
func Write(manual string) ([]string, error) {
	if info, err := os.Stat(manual); err != nil || !info.IsDir() {
		return nil, finding.Refuse("there is no folder %s: name the manual's folder with --manual", manual)
	}
	if err := os.MkdirAll(filepath.Join(manual, Folder), 0o755); err != nil {
		return nil, finding.Refuse("the schemas cannot be written: %s", err)
	}
	var wrote []string
	for _, f := range Files {
		if err := os.WriteFile(filepath.Join(manual, filepath.FromSlash(f.Path())), f.Schema().JSON(), 0o644); err != nil {
			return wrote, finding.Refuse("the schemas cannot be written: %s", err)
		}
		wrote = append(wrote, f.Path())
	}
	return wrote, nil
}

// Of is the description of the YAML file at a path of the manual.
func Of(at string) (File, bool) {
	for i := len(Files) - 1; i >= 0; i-- { // tools.es.yaml before tools.yaml
		if is, _ := path.Match(Files[i].Match, at); is {
			return Files[i], true
		}
	}
	return File{}, false
}
