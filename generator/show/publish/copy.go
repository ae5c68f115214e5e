package publish

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
)

// Copy writes a file of the new site from what open gives, piece by piece: a
// film need not fit into memory. As with Put, what is as it was in the last site
// is the same file in both.
func (s *Site) Copy(name string, open func() (io.ReadCloser, error)) error {
	full := filepath.Join(s.staging, filepath.FromSlash(name))
	if err := s.mark(name, filepath.Dir(full)); err != nil {
		return err
	}
	if last := filepath.Join(s.to, filepath.FromSlash(name)); reads(last, open) && os.Link(last, full) == nil {
		return nil
	}
	from, err := open()
	if err != nil {
		return err
	}
	defer from.Close()
	to, err := os.OpenFile(full, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = io.Copy(to, from)
	return errors.Join(err, to.Close())
}

// reads says whether a plain file holds what open gives, and no more.
func reads(name string, open func() (io.ReadCloser, error)) bool {
	info, err := os.Lstat(name)
	if err != nil || !info.Mode().IsRegular() {
		return false
	}
	old, err := os.Open(name)
	if err != nil {
		return false
	}
	defer old.Close()
	fresh, err := open()
	if err != nil {
		return false
	}
	defer fresh.Close()
	return same(old, fresh)
}

func same(a, b io.Reader) bool {
	x, y := make([]byte, 64<<10), make([]byte, 64<<10)
	for {
		n, errA := io.ReadFull(a, x)
		m, errB := io.ReadFull(b, y)
		if !bytes.Equal(x[:n], y[:m]) {
			return false
		}
		if errA != nil || errB != nil {
			return ended(errA) && ended(errB)
		}
	}
}

func ended(err error) bool { return err == io.EOF || err == io.ErrUnexpectedEOF }
