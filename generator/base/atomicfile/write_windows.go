package atomicfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// The library that does it elsewhere does not promise a file to be whole or
// not at all here, and is not there.
type pendingFile struct{ from, to string }

func (p pendingFile) commit() error {
	err := Move(p.from, p.to)
	if err != nil {
		p.discard()
	}
	return err
}

func (p pendingFile) discard() { _ = os.Remove(p.from) }

// begin writes data beside a path.
func begin(at string, data []byte, _ fs.FileMode) (pending, error) {
	file, err := os.CreateTemp(filepath.Dir(at), ".baybinder-*")
	if err != nil {
		return nil, err
	}
	_, err = file.Write(data)
	if err = errors.Join(err, file.Sync(), file.Close()); err != nil {
		_ = os.Remove(file.Name())
		return nil, err
	}
	return pendingFile{file.Name(), at}, nil
}
