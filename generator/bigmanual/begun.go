package bigmanual

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// Begun copies a manual as it was before anything of it was issued, and before
// anybody read or did anything: what is issued, learned and done later moves no
// test that works on the copy.
func Begun(from, to string) error {
	return filepath.WalkDir(from, func(full string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(from, full)
		if err != nil {
			return err
		}
		name := filepath.ToSlash(rel)
		into := filepath.Join(to, rel)
		switch {
		case name == "revisions", name == "records":
			return filepath.SkipDir
		case d.IsDir():
			return os.MkdirAll(into, 0o755)
		case name == "revisions.csv", strings.HasPrefix(name, "readings/") && strings.HasSuffix(name, ".csv"):
			return nil
		}
		data, err := os.ReadFile(full)
		if err != nil {
			return err
		}
		return os.WriteFile(into, data, 0o644)
	})
}
