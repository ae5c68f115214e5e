package settle

import (
	"errors"
	"os"
	"path/filepath"
)

// writeFile puts a file in another's place. The library that does it elsewhere
// does not promise it to be whole or not at all here, and is not there.
func writeFile(root, name string, data []byte) error {
	full, err := filepath.EvalSymlinks(filepath.Join(root, filepath.FromSlash(name)))
	if err != nil {
		return err
	}
	file, err := os.CreateTemp(filepath.Dir(full), ".settle-*")
	if err != nil {
		return err
	}
	_, err = file.Write(data)
	err = errors.Join(err, file.Sync(), file.Close())
	if err == nil {
		err = os.Rename(file.Name(), full)
	}
	if err != nil {
		_ = os.Remove(file.Name())
	}
	return err
}
