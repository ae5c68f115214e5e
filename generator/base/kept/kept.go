// Package kept keeps what one run worked out for the next one, in a folder of the user's own. What is damaged, missing or not to be written only costs time.
package kept

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// Most is how many bytes a folder holds at most: what was put there first is
// taken away first.
const Most = 64 << 20

// Store is a folder in which values are found by what they were made from. A nil
// Store holds nothing.
type Store struct {
	folder  string
	program [sha256.Size]byte
}

// Open is the store in a folder, which is made when something is put there.
// program is what makes the values: those of another one are not found.
func Open(folder string, program []byte) *Store {
	return &Store{folder, sha256.Sum256(program)}
}

// file is where the value of a key is.
func (s *Store) file(key []byte) string {
	sum := sha256.Sum256(slices.Concat(s.program[:], key))
	return filepath.Join(s.folder, hex.EncodeToString(sum[:]))
}

// Get is the value of a key; nil where there is none that is whole.
func (s *Store) Get(key []byte) []byte {
	if s == nil {
		return nil
	}
	data, err := os.ReadFile(s.file(key))
	if err != nil || len(data) < sha256.Size {
		return nil
	}
	value := data[sha256.Size:]
	if sum := sha256.Sum256(value); !bytes.Equal(sum[:], data[:sha256.Size]) {
		return nil
	}
	return value
}

// Put keeps the value of a key. The error is for nobody but a test: what cannot
// be kept is worked out again.
func (s *Store) Put(key, value []byte) error {
	if s == nil || len(value)+sha256.Size > Most {
		return nil
	}
	if err := s.own(); err != nil {
		return err
	}
	sum := sha256.Sum256(value)
	if err := s.write(s.file(key), slices.Concat(sum[:], value)); err != nil {
		return err
	}
	return s.prune()
}

// own makes the folder, for nobody but the user. It fails where the folder is
// somebody else's.
func (s *Store) own() error {
	if err := os.MkdirAll(s.folder, 0o700); err != nil {
		return err
	}
	return os.Chmod(s.folder, 0o700)
}

// write puts a file in its place whole.
func (s *Store) write(name string, data []byte) error {
	f, err := os.CreateTemp(s.folder, "new-*")
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err = errors.Join(err, f.Close()); err == nil {
		err = os.Rename(f.Name(), name)
	}
	if err != nil {
		_ = os.Remove(f.Name())
	}
	return err
}

// prune takes away what was put there first until the folder holds no more than
// it may, and what a killed run left half written with it in its turn.
func (s *Store) prune() error {
	entries, err := os.ReadDir(s.folder)
	if err != nil {
		return err
	}
	var files []fs.FileInfo
	total := int64(0)
	for _, e := range entries {
		if info, err := e.Info(); err == nil && info.Mode().IsRegular() {
			files = append(files, info)
			total += info.Size()
		}
	}
	slices.SortFunc(files, func(a, b fs.FileInfo) int { return a.ModTime().Compare(b.ModTime()) })
	for i := 0; total > Most; i++ {
		if err := os.Remove(filepath.Join(s.folder, files[i].Name())); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		total -= files[i].Size()
	}
	return nil
}
