// Package atomicfile writes files beside their places and moves them there: one, or several that change all or none.
package atomicfile

import (
	"errors"
	"os"
	"path/filepath"

	"baybinder/generator/base/finding"
)

// Write puts a file of a folder in another's place, whole or not at all. Of a
// symbolic link the file that it leads to is replaced, and the link stays.
func Write(root, name string, data []byte) error {
	p, err := prepare(root, name, data)
	if err != nil {
		return err
	}
	return p.commit()
}

// Create puts a file where there is none yet, whole or not at all, and makes
// the folders that it stands in.
func Create(root, name string, data []byte) error {
	if _, err := os.Lstat(full(root, name)); err == nil {
		return finding.Refuse("there is a file %s already", name)
	}
	if err := os.MkdirAll(filepath.Dir(full(root, name)), 0o755); err != nil {
		return err
	}
	p, err := begin(full(root, name), data, 0o644)
	if err != nil {
		return err
	}
	return p.commit()
}

// Change is what becomes of a file: other bytes, another path, or both.
type Change struct {
	Path string
	To   string // the path that it moves to; "" where it stays
	Was  []byte
	Now  []byte
}

// WriteAll makes all changes, or none. Every new file is written beside its
// place first; then they are put there, each whole. Where one cannot be, those
// that were are put back. A run that is killed between two of them leaves some
// files as they are to be and some as they were, and none in between.
func WriteAll(root string, changes []Change) error {
	ready, err := prepareAll(root, changes)
	if err != nil {
		return err
	}
	for i, p := range ready {
		if err := p.commit(); err != nil {
			for _, rest := range ready[i:] {
				rest.discard()
			}
			return errors.Join(err, putBack(root, changes[:i]))
		}
	}
	for i, c := range changes {
		if c.To == "" {
			continue
		}
		if err := os.Remove(full(root, c.Path)); err != nil {
			return errors.Join(err, putBack(root, changes[i:]), putBack(root, changes[:i]))
		}
	}
	return nil
}

func prepareAll(root string, changes []Change) ([]pending, error) {
	var ready []pending
	for _, c := range changes {
		p, err := prepareChange(root, c)
		if err != nil {
			for _, done := range ready {
				done.discard()
			}
			return nil, err
		}
		ready = append(ready, p)
	}
	return ready, nil
}

func prepareChange(root string, c Change) (pending, error) {
	if c.To == "" {
		return prepare(root, c.Path, c.Now)
	}
	if _, err := os.Lstat(full(root, c.To)); err == nil {
		return nil, finding.Refuse("there is a file %s already", c.To)
	}
	info, err := os.Stat(full(root, c.Path))
	if err != nil {
		return nil, err
	}
	return begin(full(root, c.To), c.Now, info.Mode().Perm())
}

// putBack undoes changes that were made.
func putBack(root string, made []Change) error {
	var all []error
	for _, c := range made {
		if c.To == "" {
			all = append(all, Write(root, c.Path, c.Was))
			continue
		}
		if _, err := os.Lstat(full(root, c.Path)); err != nil {
			all = append(all, os.WriteFile(full(root, c.Path), c.Was, 0o644))
		}
		all = append(all, os.Remove(full(root, c.To)))
	}
	return errors.Join(all...)
}

func full(root, name string) string { return filepath.Join(root, filepath.FromSlash(name)) }

// prepare writes what is to stand in a file's place beside it.
func prepare(root, name string, data []byte) (pending, error) {
	at, err := filepath.EvalSymlinks(full(root, name))
	if err != nil {
		return nil, err
	}
	info, err := os.Stat(at)
	if err != nil {
		return nil, err
	}
	return begin(at, data, info.Mode().Perm())
}

// pending is a file that is written and not yet in its place.
type pending interface {
	commit() error
	discard()
}
