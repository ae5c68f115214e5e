package atomicfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// New writes a file that is not there, whole or not at all; where there is one it
// stays, and the error is fs.ErrExist. Only a file system without links can be
// left with a part of it, by a run that is killed.
func New(name string, data []byte, mode fs.FileMode) error {
	if _, err := os.Lstat(name); err == nil {
		return &fs.PathError{Op: "open", Path: name, Err: fs.ErrExist}
	}
	beside := filepath.Join(filepath.Dir(name), "."+filepath.Base(name)+".new")
	_ = os.Remove(beside) // of a run that was killed
	defer os.Remove(beside)
	if err := fill(beside, data, mode); err != nil {
		return err
	}
	err := os.Link(beside, name)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	if err = fill(name, data, mode); err != nil && !errors.Is(err, fs.ErrExist) {
		_ = os.Remove(name)
	}
	return err
}

// fill makes a file and writes it.
func fill(name string, data []byte, mode fs.FileMode) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Close())
}
