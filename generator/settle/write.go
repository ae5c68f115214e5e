//go:build !windows

package settle

import (
	"os"
	"path/filepath"

	"github.com/google/renameio/v2"
)

// writeFile puts a file in another's place, whole or not at all. Of a symbolic
// link the file that it leads to is replaced, and the link stays.
func writeFile(root, name string, data []byte) error {
	full, err := filepath.EvalSymlinks(filepath.Join(root, filepath.FromSlash(name)))
	if err != nil {
		return err
	}
	info, err := os.Stat(full)
	if err != nil {
		return err
	}
	return renameio.WriteFile(full, data, info.Mode().Perm())
}
