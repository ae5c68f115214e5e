package ledger

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Union has version control keep both sides' new rows of a file, where the
// folder says such things: it adds the file's line to .gitattributes.
func Union(folder, name string) error {
	attributes := filepath.Join(folder, ".gitattributes")
	text, err := os.ReadFile(attributes)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return err
	}
	line := name + " merge=union"
	if slices.Contains(strings.Split(strings.ReplaceAll(string(text), "\r\n", "\n"), "\n"), line) {
		return nil
	}
	added := line + "\n"
	if n := len(text); n > 0 && text[n-1] != '\n' {
		added = "\n" + added
	}
	f, err := os.OpenFile(attributes, os.O_WRONLY|os.O_APPEND, 0o644)
	if err != nil {
		return err
	}
	_, err = f.WriteString(added)
	return errors.Join(err, f.Close())
}
