package atomicfile

import (
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
)

// New writes a file that is not there, whole or not at all; where there is one it
// stays, and the error is fs.ErrExist.
func New(name string, data []byte, mode fs.FileMode) error {
	root, err := os.OpenRoot(filepath.Dir(name))
	if err != nil {
		return err
	}
	defer root.Close()
	return NewIn(root, filepath.Base(name), data, mode)
}

// NewIn is New for a path in a folder that no link leads out of.
func NewIn(root *os.Root, name string, data []byte, mode fs.FileMode) error {
	if _, err := root.Lstat(name); err == nil {
		return &fs.PathError{Op: "open", Path: name, Err: fs.ErrExist}
	}
	aside := path.Join(path.Dir(name), "."+path.Base(name)+".new")
	_ = root.Remove(aside) // of a run that was killed
	defer func() { _ = root.Remove(aside) }()
	if err := fill(root, aside, data, mode); err != nil {
		return err
	}
	err := root.Link(aside, name)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	return move(root, aside, name, mode)
}

// fill makes a file and writes it, to the disk too.
func fill(root *os.Root, name string, data []byte, mode fs.FileMode) error {
	f, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	if _, err = f.Write(data); err == nil {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

// move puts a file into its place where the file system knows no second name for
// a file: the place is taken first, so that nobody else's file stands there. A
// run that is killed in between leaves an empty one.
func move(root *os.Root, aside, name string, mode fs.FileMode) error {
	if err := fill(root, name, nil, mode); err != nil {
		return err
	}
	err := root.Rename(aside, name)
	if err != nil {
		_ = root.Remove(name)
	}
	return err
}
